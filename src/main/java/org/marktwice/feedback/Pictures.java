package org.marktwice.feedback;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.marktwice.advice.Option;
import org.marktwice.bench.Action;
import org.marktwice.bench.Bench;
import org.marktwice.bench.BoardState;
import org.marktwice.bench.Mark;
import org.marktwice.bench.ToolReading;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Placing;
import org.marktwice.picture.BoardPicture;
import org.marktwice.picture.Ink;
import org.marktwice.picture.Lie;
import org.marktwice.picture.Pointed;
import org.marktwice.picture.Struck;
import org.marktwice.rulebook.Verdict;
import org.marktwice.timber.Surface;

/** What mark sheet and replay show of a board: as the learner left it, and as the model answer has it. */
public final class Pictures {
    private Pictures() {}

    /** The board with all that was marked on it, its offcuts shaded and its cuts laid on where it is placed. */
    public static BoardPicture learners(Bench bench, BoardState state) {
        String written = state.named()
                .flatMap(n -> bench.scenario().drawing().part(n.part()))
                .map(Part::name)
                .orElse(null);
        BoardPicture plain = BoardPicture.of(state, written).struck(Struck.on(bench, state));
        return placed(bench, state).map(p -> laid(plain, p)).orElse(plain);
    }

    private static BoardPicture laid(BoardPicture picture, Placing placing) {
        return picture.offcutsOf(placing)
                .cuts(placing.cuts().stream()
                        .map(c -> new BoardPicture.LaidCut(c, false))
                        .toList());
    }

    public static Optional<Placing> placed(Bench bench, BoardState state) {
        return state.setAside().isPresent() ? Optional.empty() : bench.placing(state);
    }

    /** The board marked, turned and trimmed as the model answer has it. */
    public static BoardPicture model(Option option) {
        Placing placing = option.placing();
        BoardState state =
                new BoardState(placing.board(), marks(placing), null, null, null, List.of(), List.of(), List.of());
        return laid(BoardPicture.of(state, placing.part().name()), placing);
    }

    /** The marks that the drawing asks for on a board placed so, on the first of the allowed surfaces that is dressed. */
    private static List<Mark> marks(Placing placing) {
        List<Mark> marks = new ArrayList<>();
        Optional<Surface> side = dressed(placing, placing.part().faceSide());
        Optional<Surface> edge = dressed(placing, placing.part().faceEdge());
        if (placing.part().takesMarks()
                && side.isPresent()
                && edge.isPresent()
                && side.get().adjoins(edge.get())) {
            marks.add(new Mark(Mark.Kind.FACE_SIDE, side.get(), edge.get(), 0));
            marks.add(new Mark(Mark.Kind.FACE_EDGE, edge.get(), side.get(), 0));
        }
        return marks;
    }

    private static Optional<Surface> dressed(Placing placing, List<Direction> directions) {
        return directions.stream()
                .map(placing.turn()::looking)
                .filter(placing.board()::isDressed)
                .findFirst();
    }

    public static Lie lie(Placing placing) {
        return Lie.of(placing.turn(), placing.part());
    }

    /** How the learner's board lies: as it is placed, else face 1 up. */
    public static Lie lie(Bench bench, BoardState state) {
        return placed(bench, state).map(Pictures::lie).orElse(Lie.FIRST);
    }

    /** A board as it lies once a step is done: as it is placed, rolled so that what was done can be seen. */
    public static Lie lie(ReplayModel replay, int step) {
        Bench bench = replay.after(step);
        Lie lie = lie(bench, bench.board(replay.boardAt(step)));
        Optional<Surface> touched = step == 0 ? Optional.empty() : touched(replay.action(step));
        return touched.filter(s -> !s.isEnd() && !lie.shows(s))
                .map(lie::showing)
                .orElse(lie);
    }

    /**
     * The board in hand as a step left it: the rule where it was laid, the surface that was tried, and what shows the worst
     * finding that the step decided on this board.
     */
    public static BoardPicture after(ReplayModel replay, int step) {
        Bench bench = replay.after(step);
        String id = replay.boardAt(step);
        BoardPicture picture = learners(bench, bench.board(id));
        if (step == 0) return picture;
        Action action = replay.action(step);
        if (action instanceof Action.Measure m) {
            picture = picture.rule(new BoardPicture.LaidRule(m.from(), m.to(), ActionWords.mm(reading(m))));
        } else if (action instanceof Action.Test t) {
            picture = picture.pointed(new Pointed.AtSurface(t.on()));
        }
        BoardPicture plain = picture;
        return replay.decidedBy(step).stream()
                .filter(l -> l.verdict() != Verdict.SOUND && id.equals(l.board()))
                .findFirst()
                .map(l -> plain.evidence(l.finding().evidence(), Ink.of(l.verdict())))
                .orElse(plain);
    }

    private static double reading(Action.Measure measure) {
        Double reads = measure.reads();
        return reads != null ? reads : ToolReading.of(measure.from(), measure.to());
    }

    /** The surface that an action was done on; empty where it was none. */
    public static Optional<Surface> touched(Action action) {
        if (action instanceof Action.FaceSide a) return Optional.of(a.on());
        if (action instanceof Action.FaceEdge a) return Optional.of(a.on());
        if (action instanceof Action.Name a) return Optional.of(a.at().surface());
        if (action instanceof Action.Measure a) return Optional.of(a.from().surface());
        if (action instanceof Action.Test a) return Optional.of(a.on());
        if (action instanceof Action.Line a) return Optional.of(a.on());
        if (action instanceof Action.Bevel a) return Optional.of(a.on());
        if (action instanceof Action.Gauge a) return Optional.of(a.on());
        return Optional.empty();
    }

    /** How a board lies in the job, in words: which surfaces look where, and what comes off. */
    public static String placed(Placing placing) {
        StringBuilder words = new StringBuilder(placing.part().name());
        words.append(": ").append(ActionWords.facing(placing.turn().named()));
        for (Surface end : List.of(Surface.END_1, Surface.END_2)) {
            double off = placing.off(end);
            if (off > 0.05)
                words.append(", ")
                        .append(ActionWords.mm(Math.round(off * 10) / 10.0))
                        .append(" off ")
                        .append(end.spoken());
        }
        return words.toString();
    }

    /** How near the nearest knot comes to a cut, in words. */
    public static String clearance(Option option) {
        return option.nearest()
                .map(n -> "Nearest: " + SheetModel.knot(n.knot()) + ", " + SheetModel.fixed(n.clearance(), 1)
                        + " mm clear of the joint, " + SheetModel.fixed(n.margin(), 1) + " wanted")
                .orElse("No knot near a joint.");
    }
}
