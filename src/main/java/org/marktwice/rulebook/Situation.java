package org.marktwice.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.marktwice.advice.ModelAnswer;
import org.marktwice.advice.Option;
import org.marktwice.bench.Bench;
import org.marktwice.bench.BoardState;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Placing;
import org.marktwice.drawing.Turn;
import org.marktwice.fit.DryFit;
import org.marktwice.fit.SetOut;
import org.marktwice.fit.TrueLines;
import org.marktwice.rulebook.TruenessLimits.Reading;
import org.marktwice.scenario.Practice;
import org.marktwice.scenario.Scenario;
import org.marktwice.scenario.Stage;
import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;

/**
 * What the rules judge: a scenario and what has been done so far. What follows from the scenario alone (the model answer,
 * a board's best turn in a part, a turn's clearances) is computed once, when first asked for.
 */
public final class Situation {
    private final Bench bench;
    private final Workings workings;
    private final Map<String, SetOut> outs = new ConcurrentHashMap<>();
    private volatile @Nullable List<Workpiece> workpieces;
    private volatile @Nullable List<Workpiece> toBeMarked;
    private volatile @Nullable List<Place> places;
    private volatile @Nullable List<Part> missing;
    private volatile @Nullable Set<String> waiting;
    private volatile @Nullable List<SetBoard> setOut;
    private volatile @Nullable DryFit dryFit;

    private Situation(Bench bench, Workings workings) {
        this.bench = bench;
        this.workings = workings;
    }

    public static Situation of(Bench bench) {
        return new Situation(bench, new Workings(bench.scenario()));
    }

    /** The same scenario after other actions, without computing anew what follows from it alone. */
    public Situation at(Bench later) {
        if (!later.scenario().equals(scenario())) return of(later);
        return new Situation(later, workings);
    }

    List<Workpiece> workpieces() {
        List<Workpiece> known = workpieces;
        if (known == null) {
            known = Workpiece.afresh(this);
            workpieces = known;
        }
        return known;
    }

    List<Workpiece> toBeMarked() {
        List<Workpiece> known = toBeMarked;
        if (known == null) {
            known = workpieces().stream().filter(Workpiece::takesMarks).toList();
            toBeMarked = known;
        }
        return known;
    }

    List<Place> places() {
        List<Place> known = places;
        if (known == null) {
            known = Place.afresh(this);
            places = known;
        }
        return known;
    }

    List<Part> missing() {
        List<Part> known = missing;
        if (known == null) {
            known = Workpiece.missingAfresh(this);
            missing = known;
        }
        return known;
    }

    Set<String> waiting() {
        Set<String> known = waiting;
        if (known == null) {
            known = Workpiece.waiting(this);
            waiting = known;
        }
        return known;
    }

    public Bench bench() {
        return bench;
    }

    public Scenario scenario() {
        return bench.scenario();
    }

    public Practice practice() {
        return scenario().practice();
    }

    /** Whether the scenario asks for this stage. */
    public boolean asks(Stage stage) {
        return scenario().stages().contains(stage);
    }

    public ModelAnswer modelAnswer() {
        return workings.model();
    }

    /** The best turn and trim of a board in a part; empty where it can't serve there. */
    public Optional<Option> best(Board board, Part part) {
        return workings.best(board, part);
    }

    /** The turns in which the drawing and the planing let a board lie in a part. */
    public List<Turn> turns(Board board, Part part) {
        return workings.turns(board, part);
    }

    /** The best trim of a board that fits a part, turned so. */
    public Option best(Board board, Part part, Turn turn) {
        return workings.best(board, part, turn);
    }

    /** Whether a board has what a part needs in stuff, size and cup, knots apart. */
    public boolean fits(Board board, Part part) {
        return workings.fits(board, part);
    }

    /** The boards that lie in the job and on which something has to be marked, with what has been set out on them. */
    List<SetBoard> setOut() {
        List<SetBoard> known = setOut;
        if (known == null) {
            known = new ArrayList<>();
            for (Place place : Place.all(this)) {
                for (Place.Lying lying : place.lying()) {
                    SetOut out = setOut(lying.placing(), lying.state());
                    if (!out.marked().isEmpty()) known.add(new SetBoard(this, lying, out));
                }
            }
            known = List.copyOf(known);
            setOut = known;
        }
        return known;
    }

    /** A board that lies so, with what was struck on it. */
    private SetOut setOut(Placing lies, BoardState state) {
        SetOut known = outs.get(state.board().id());
        if (known == null || !known.placing().equals(lies)) {
            known = SetOut.of(lies, state, TrueLines.of(bench, state), workings.fit());
            outs.put(state.board().id(), known);
        }
        return known;
    }

    /** Whether the drawing has any rectangle whose diagonals can be compared. */
    boolean hasRectangles() {
        return workings.fit().hasRectangles();
    }

    /** The job as it would come out of what has been set out so far. */
    public DryFit dryFit() {
        DryFit known = dryFit;
        if (known == null) {
            known = DryFit.of(bench, workings.fit(), this::setOut);
            dryFit = known;
        }
        return known;
    }

    /** A board as it lies, judged as the model answer judges it. */
    public Option judged(Placing placing) {
        return laid(placing).judged();
    }

    /** What straight-edge and winding sticks read on a surface that is to be the face side. */
    List<Reading> readings(Board board, Surface side) {
        return workings.readings(board, side);
    }

    /** What straight-edge and square read on a surface that is to be the face edge. */
    List<Reading> readings(Board board, Surface edge, Surface side) {
        return workings.readings(board, edge, side);
    }

    /**
     * What a rule finds about a board that lies so, where nothing else of what was done matters but the step at which it
     * was laid: most learners lay a board in one of a few ways, and it is laid while its other marks are made.
     */
    List<Finding> asItLies(Rule rule, Place.Lying lying, Supplier<List<Finding>> found) {
        return asItLies(rule, lying, "", found);
    }

    /** @param more what else matters */
    List<Finding> asItLies(Rule rule, Place.Lying lying, Object more, Supplier<List<Finding>> found) {
        List<Finding> kept = lying.laid().findings(rule, more, found);
        List<Finding> now = new ArrayList<>(kept.size());
        for (Finding f : kept) now.add(f.at(lying.step()));
        return now;
    }

    /** What a rule finds that follows from how these boards lie alone. */
    List<Finding> asTheyLie(Rule rule, List<Laid> boards, Supplier<List<Finding>> found) {
        return workings.findings(rule, boards, found);
    }

    AsItIsMarked asItIsMarked(AsItIsMarked.Key key) {
        return workings.asItIsMarked(key);
    }

    /** What follows from how a board lies. */
    Laid laid(Placing placing) {
        return workings.laid(placing);
    }

    /** Each knot of a board as it lies against each cut of its part. */
    public List<Nearness> near(Placing placing) {
        return laid(placing).near();
    }

    /** The work of another hand that this seed makes. */
    public Faulty faulty(int seed) {
        return workings.faulty(seed);
    }

    /** The part that this board is named as; empty where it carries no name or is set aside. */
    public Optional<Part> partOf(BoardState board) {
        if (board.setAside().isPresent()) return Optional.empty();
        return board.named().flatMap(n -> scenario().drawing().part(n.part()));
    }
}
