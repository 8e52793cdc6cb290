package org.marktwice.bench;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Trim;
import org.marktwice.drawing.Turn;
import org.marktwice.timber.Board;

/**
 * One board as the actions so far have left it. Everything carries the step that did it.
 *
 * @param marks face marks still on the board, oldest first; rubbed-out ones are gone
 * @param tests every tool tried on it, whether or not marks were rubbed out since
 * @param measurements every distance measured on it
 * @param struck lines, gauge lines and waste shading still on the board, and cuts
 */
public record BoardState(
        Board board,
        List<Mark> marks,
        @Nullable Named name,
        @Nullable Turned turn,
        @Nullable Aside aside,
        List<Done<Action.Test>> tests,
        List<Done<Action.Measure>> measurements,
        List<Done<? extends Action.OnBoard>> struck) {

    /** An action with its step. */
    public record Done<A extends Action>(int step, A action) {}

    public record Named(int step, String part, org.marktwice.timber.SurfacePoint at) {}

    /** @param trim as given; null where all the surplus comes off end-2 */
    public record Turned(int step, Turn turn, @Nullable Trim trim) {
        public Trim trimOrDefault() {
            return trim == null ? Trim.ALL_OFF_END_2 : trim;
        }
    }

    public record Aside(int step, Reason because) {}

    /** How the line of a step was cut; empty while it isn't. */
    public Optional<Action.Cut> cut(int line) {
        for (Done<? extends Action.OnBoard> done : struck) {
            if (done.action() instanceof Action.Cut cut && cut.step() == line) return Optional.of(cut);
        }
        return Optional.empty();
    }

    public BoardState {
        marks = Growing.of(marks);
        tests = Growing.of(tests);
        measurements = Growing.of(measurements);
        struck = Growing.of(struck);
    }

    public static BoardState fresh(Board board) {
        return new BoardState(board, List.of(), null, null, null, List.of(), List.of(), List.of());
    }

    BoardState marked(List<Mark> now) {
        return new BoardState(board, now, name, turn, aside, tests, measurements, struck);
    }

    BoardState placed(@Nullable Named newName, @Nullable Turned newTurn, @Nullable Aside newAside) {
        return new BoardState(board, marks, newName, newTurn, newAside, tests, measurements, struck);
    }

    BoardState tested(List<Done<Action.Test>> now) {
        return new BoardState(board, marks, name, turn, aside, now, measurements, struck);
    }

    BoardState measured(List<Done<Action.Measure>> now) {
        return new BoardState(board, marks, name, turn, aside, tests, now, struck);
    }

    BoardState struck(List<Done<? extends Action.OnBoard>> now) {
        return new BoardState(board, marks, name, turn, aside, tests, measurements, now);
    }

    public Stream<Mark> marks(Mark.Kind kind) {
        return marks.stream().filter(m -> m.kind() == kind);
    }

    /** The face-side mark, where there is exactly one. */
    public Optional<Mark> faceSide() {
        return only(Mark.Kind.FACE_SIDE);
    }

    /** The face-edge mark, where there is exactly one. */
    public Optional<Mark> faceEdge() {
        return only(Mark.Kind.FACE_EDGE);
    }

    private Optional<Mark> only(Mark.Kind kind) {
        Mark found = null;
        for (Mark m : marks) {
            if (m.kind() != kind) continue;
            if (found != null) return Optional.empty();
            found = m;
        }
        return Optional.ofNullable(found);
    }

    /** Whether it carries this part's name and is not set aside. */
    boolean isNamedAs(Part part) {
        return name != null && aside == null && name.part().equals(part.id());
    }

    public Optional<Named> named() {
        return Optional.ofNullable(name);
    }

    public Optional<Turned> turned() {
        return Optional.ofNullable(turn);
    }

    public Optional<Aside> setAside() {
        return Optional.ofNullable(aside);
    }
}
