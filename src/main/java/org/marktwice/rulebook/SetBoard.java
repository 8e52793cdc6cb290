package org.marktwice.rulebook;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.marktwice.bench.Action;
import org.marktwice.bench.Action.Datum;
import org.marktwice.bench.Mark;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Placing;
import org.marktwice.fit.SetOut;
import org.marktwice.fit.SetOut.Marked;
import org.marktwice.fit.TrueLine;
import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;

/** A board that lies in the job, with what has been set out on it. */
final class SetBoard {

    /** Lines no farther from each other than this are one line squared round, or struck twice; millimetres. */
    private static final double BESIDE = 1.5;

    private final Situation situation;
    private final Place.Lying lying;
    private final SetOut out;
    private final Set<Surface> references;
    private final List<Squared> squared = new ArrayList<>();

    SetBoard(Situation situation, Place.Lying lying, SetOut out) {
        this.situation = situation;
        this.lying = lying;
        this.out = out;
        this.references = bearing();
        for (TrueLine line : out.lines()) {
            if (action(line) instanceof Action.Line a) squared.add(new Squared(line, a));
        }
    }

    /** The boards on which something has to be marked, in the order of the drawing's parts. */
    static List<SetBoard> all(Situation situation) {
        return situation.setOut();
    }

    /**
     * What a rule finds about each board that has to be set out, and that nothing can be found yet where no board lies.
     *
     * @param open the key of the sentence for a part without a board
     */
    static List<Finding> judge(Situation situation, Rule rule, String open, Function<SetBoard, List<Finding>> by) {
        List<Finding> findings = new ArrayList<>();
        for (SetBoard board : all(situation)) findings.addAll(by.apply(board));
        for (Place place : Place.all(situation)) {
            boolean cut = !situation.scenario().drawing().cuts(place.part()).isEmpty();
            if (cut && place.isOpen()) findings.add(place.open(rule, open));
        }
        return findings;
    }

    Situation situation() {
        return situation;
    }

    Place.Lying lying() {
        return lying;
    }

    SetOut out() {
        return out;
    }

    String id() {
        return lying.board();
    }

    Board board() {
        return lying.state().board();
    }

    Placing placing() {
        return lying.placing();
    }

    Part part() {
        return placing().part();
    }

    Found found(Rule rule) {
        return Found.by(rule, lying.subject());
    }

    Found found(Rule rule, String joint) {
        return Found.by(rule, lying.subject(joint));
    }

    /** The joints for which something has to be marked here, in the drawing's order. */
    List<String> joints() {
        return out.joints();
    }

    /**
     * The surfaces that stock and fence may bear on: those that are marked; while none is, those that look where the
     * drawing wants the marks; every one of what takes no marks.
     */
    Set<Surface> references() {
        return references;
    }

    private Set<Surface> bearing() {
        if (board().isSheet() || !part().takesMarks()) return EnumSet.allOf(Surface.class);
        Set<Surface> all = EnumSet.noneOf(Surface.class);
        for (Mark mark : lying.state().marks()) all.add(mark.on());
        if (!all.isEmpty()) return all;
        part().faceSide().forEach(d -> all.add(placing().turn().looking(d)));
        part().faceEdge().forEach(d -> all.add(placing().turn().looking(d)));
        return all;
    }

    /** A reference surface on which a tool can bear that marks this surface. */
    Optional<Surface> reference(Surface on) {
        for (Surface s : references) {
            if (on.adjoins(s)) return Optional.of(s);
        }
        return Optional.empty();
    }

    /** The action that struck a line. */
    Action.OnBoard action(TrueLine line) {
        return (Action.OnBoard) situation.bench().action(line.step());
    }

    /** The lines squared across, oldest first. */
    List<Squared> squared() {
        return squared;
    }

    /** The steps of all lines at the place of a side's own, on any surface. */
    List<Integer> struckFor(Marked marked) {
        TrueLine own = marked.line();
        if (own == null) return List.of();
        List<Integer> steps = new ArrayList<>();
        for (TrueLine l : out.lines()) {
            if (l.axis() == own.axis() && Math.abs(l.middle() - own.middle()) <= BESIDE) steps.add(l.step());
        }
        return steps;
    }

    /** A line with the action that struck it. */
    record Squared(TrueLine line, Action.Line action) {
        /** Carried on from an earlier line at no distance, as when it is squared round. */
        boolean isCarriedOn() {
            Double at = action.at();
            return action.from() instanceof Datum.Step && at != null && at == 0;
        }
    }

    /** The end that a line is measured from in the end. */
    Surface end(Action.Line line) {
        if (line.from() instanceof Datum.End e) return e.end();
        Action earlier = situation.bench().action(((Datum.Step) line.from()).step());
        return earlier instanceof Action.Line l ? end(l) : Surface.END_1;
    }

    /** A point in the middle of a line. */
    static SurfacePoint middle(Board board, TrueLine line) {
        double half = board.size().along(line.runs()) / 2;
        return line.axis() == line.on().uAxis()
                ? new SurfacePoint(line.on(), line.middle(), half)
                : new SurfacePoint(line.on(), half, line.middle());
    }

    SurfacePoint middle(TrueLine line) {
        return middle(board(), line);
    }

    /** The last step that left a line on the board; 0 where there is none. */
    int lastLine() {
        return latest(out.lines());
    }

    /** The latest of these lines' steps. */
    static int latest(List<TrueLine> lines) {
        int latest = 0;
        for (TrueLine line : lines) latest = Math.max(latest, line.step());
        return latest;
    }
}
