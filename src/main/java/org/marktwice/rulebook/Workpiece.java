package org.marktwice.rulebook;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.marktwice.advice.Option;
import org.marktwice.bench.BoardState;
import org.marktwice.bench.Mark;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Placing;
import org.marktwice.drawing.Turn;
import org.marktwice.rulebook.Finding.Subject;
import org.marktwice.scenario.Stage;
import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;

/**
 * A board that is to be set out, with the part it is for.
 *
 * <p>Where the scenario asks for names these are the boards that carry a part's name and are not set aside: a board left
 * on the rack is not faulted for having no marks. Where it doesn't, every board that is not set aside is to be set out;
 * it is for the part it is named as, or, where the drawing has a single part, for that one.
 */
final class Workpiece {
    private final Situation situation;
    private final BoardState state;
    private final @Nullable Part part;
    private final Optional<Mark> faceSide;
    private final Optional<Mark> faceEdge;
    private @Nullable Optional<Laid> laid;
    private AsItIsMarked.@Nullable Ordered ordered;
    private @Nullable AsItIsMarked known;

    Workpiece(Situation situation, BoardState state, @Nullable Part part) {
        this.situation = situation;
        this.state = state;
        this.part = part;
        this.faceSide = first(state, Mark.Kind.FACE_SIDE);
        this.faceEdge = first(state, Mark.Kind.FACE_EDGE);
    }

    private static Optional<Mark> first(BoardState state, Mark.Kind kind) {
        for (Mark m : state.marks()) {
            if (m.kind() == kind) return Optional.of(m);
        }
        return Optional.empty();
    }

    static List<Workpiece> all(Situation situation) {
        return situation.workpieces();
    }

    /** Computed anew; nearly every rule asks for them. */
    static List<Workpiece> afresh(Situation situation) {
        boolean byName = situation.asks(Stage.NAMES);
        List<Workpiece> all = new ArrayList<>();
        for (BoardState board : situation.bench().boards()) {
            if (board.aside() != null) continue;
            Part part = partOf(situation, board);
            if (!byName || part != null) all.add(new Workpiece(situation, board, part));
        }
        return all;
    }

    /** The boards that take face marks: timber, for a part of timber that will not be rounded. */
    static List<Workpiece> toBeMarked(Situation situation) {
        return situation.toBeMarked();
    }

    /**
     * The parts that no board is for yet. A part that waits for a better rack is not among them: every board left was
     * set aside, and no more parts can be supplied clear than are supplied.
     */
    static List<Part> missing(Situation situation) {
        return situation.missing();
    }

    /** Computed anew; many rules ask for them. */
    static List<Part> missingAfresh(Situation situation) {
        List<Part> parts = situation.scenario().drawing().parts();
        List<Part> missing;
        if (situation.asks(Stage.NAMES)) {
            missing = parts.stream().filter(p -> !situation.bench().isNamed(p)).toList();
        } else {
            missing = parts.subList(Math.min(all(situation).size(), parts.size()), parts.size());
        }
        return missing.isEmpty() || waitsForBetterRack(situation, parts.size() - missing.size()) ? List.of() : missing;
    }

    /** The parts that have no board, though none is missing: the rack has none that will do. */
    static Set<String> waiting(Situation situation) {
        Set<String> waiting = new HashSet<>();
        for (Part part : situation.scenario().drawing().parts()) {
            if (!situation.bench().isNamed(part)) waiting.add(part.id());
        }
        if (!waiting.isEmpty()) missing(situation).forEach(p -> waiting.remove(p.id()));
        return waiting;
    }

    /** Whether a part is left empty for good: no board carries its name, and the rack has none for it. */
    static boolean waits(Situation situation, Part part) {
        if (!situation.asks(Stage.NAMES)) return false;
        List<Part> parts = situation.scenario().drawing().parts();
        long supplied = parts.stream().filter(situation.bench()::isNamed).count();
        return !situation.bench().isNamed(part) && waitsForBetterRack(situation, (int) supplied);
    }

    /** The parts that no board is for yet and whose board will take face marks. */
    static List<Part> missingMarked(Situation situation) {
        return situation.missing().stream().filter(Part::takesMarks).toList();
    }

    /** Whether every board was either named or set aside, and at least as many parts are supplied as can be supplied clear. */
    static boolean waitsForBetterRack(Situation situation, int supplied) {
        boolean allDecided = situation.bench().boards().stream()
                .allMatch(b -> b.setAside().isPresent() || partOf(situation, b) != null);
        return allDecided && supplied >= situation.modelAnswer().clear();
    }

    private static @Nullable Part partOf(Situation situation, BoardState board) {
        Optional<Part> named = situation.partOf(board);
        List<Part> parts = situation.scenario().drawing().parts();
        if (named.isEmpty() && !situation.asks(Stage.NAMES) && parts.size() == 1) return parts.get(0);
        return named.orElse(null);
    }

    Situation situation() {
        return situation;
    }

    BoardState state() {
        return state;
    }

    /** Null where nothing says which part it is for. */
    @Nullable
    Part part() {
        return part;
    }

    Board board() {
        return state.board();
    }

    Subject subject() {
        return Subject.boardAs(board().id(), part == null ? null : part.id());
    }

    boolean takesMarks() {
        return !board().isSheet() && (part == null || part.takesMarks());
    }

    /** The first face-side mark still on the board; a second one is another rule's business. */
    Optional<Mark> faceSide() {
        return faceSide;
    }

    /** The first face-edge mark still on the board. */
    Optional<Mark> faceEdge() {
        return faceEdge;
    }

    /** The step of the latest of the marks that count; null where there is none. */
    @Nullable
    Integer markedAt() {
        if (faceSide.isEmpty()) return faceEdge.map(Mark::step).orElse(null);
        int side = faceSide.get().step();
        return faceEdge.map(edge -> Math.max(side, edge.step())).orElse(side);
    }

    /**
     * What a rule finds that follows from part, marks and turn alone, and from no step but in what order these came: most
     * boards of a class are marked and turned in one of a few ways.
     */
    Finding asMarked(Rule rule, Function<Workpiece, Finding> by) {
        AsItIsMarked.Ordered as = ordered;
        AsItIsMarked findings = known;
        if (as == null || findings == null) {
            as = AsItIsMarked.Ordered.of(this);
            findings = situation.asItIsMarked(as.key());
            ordered = as;
            known = findings;
        }
        return findings.finding(rule, this, as, by);
    }

    /** Where a mark stands: mid-length, at the arris that it points at. */
    SurfacePoint placeOf(Mark mark) {
        Surface on = mark.on();
        double far =
                mark.towards().sign() > 0 ? board().size().along(mark.towards().axis()) : 0;
        double half = board().size().length() / 2;
        return mark.towards().isEnd()
                ? new SurfacePoint(on, far, board().vExtent(on) / 2)
                : new SurfacePoint(on, half, far);
    }

    /** How it would best lie in this turn, the trim being free; empty where it can't lie so in its part. */
    Optional<Option> best(Turn turn) {
        Part as = part;
        boolean can = as != null && situation.fits(board(), as) && turn.isIn(as, board().isSquare());
        return can && as != null ? Optional.of(situation.best(board(), as, turn)) : Optional.empty();
    }

    /** How it lies in the job as turned and trimmed; empty until it is turned so that it lies in its part. */
    Optional<Placing> placing() {
        return laid().map(Laid::placing);
    }

    /** The same with what follows from it. */
    Optional<Laid> laid() {
        Optional<Laid> found = laid;
        if (found == null) {
            found = placed().map(situation::laid);
            laid = found;
        }
        return found;
    }

    /** It as it lies; a board that is too short, or would be trimmed short, lies nowhere. */
    Optional<Place.Lying> lying() {
        BoardState.Turned turned = state.turn();
        if (turned == null) return Optional.empty();
        return laid().filter(
                        l -> l.placing().off(Surface.END_1) >= 0 && l.placing().off(Surface.END_2) >= 0)
                .map(l -> new Place.Lying(state, l, turned.step()));
    }

    private Optional<Placing> placed() {
        Part as = part;
        if (as == null || state.named().isPresent()) return situation.bench().placing(state);
        return state.turned()
                .filter(t -> t.turn().isIn(as, board().isSquare()))
                .map(t -> new Placing(situation.scenario().drawing(), as, board(), t.turn(), t.trimOrDefault()))
                .filter(p -> p.surplus() >= p.trim().mm());
    }
}
