package org.marktwice.rulebook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.marktwice.bench.Action;
import org.marktwice.bench.Tool;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Placing;
import org.marktwice.scenario.Scenario;
import org.marktwice.scenario.Stage;
import org.marktwice.timber.Board;
import org.marktwice.timber.Box;
import org.marktwice.timber.KnotBody;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;
import org.marktwice.timber.Trace;

/** What a careful hand does to one board that has its place: prove, mark, name, measure, turn. */
final class BoardWork {
    /** A clearance within this of its margin is measured before the turn is settled, millimetres. */
    private static final double NEAR = 10;

    private final Placing placing;
    private final Board board;
    private final Surface side;
    private final Surface edge;

    /** An action that only wants its time, in seconds. */
    interface Step {
        Action at(double t);
    }

    private BoardWork(Placing placing, Surface side, Surface edge) {
        this.placing = placing;
        this.board = placing.board();
        this.side = side;
        this.edge = edge;
    }

    /** The steps for this board, as far as the scenario's stages ask for them. */
    static List<Step> on(Placing placing, Scenario scenario) {
        Part part = placing.part();
        Surface side = looking(placing, part.faceSide()).orElse(Surface.FACE_1);
        Surface edge = looking(placing, part.faceEdge()).orElse(Surface.EDGE_1);
        BoardWork work = new BoardWork(placing, side, edge);
        List<Step> steps = new ArrayList<>();
        if (part.takesMarks() && scenario.stages().contains(Stage.FACES)) steps.addAll(work.prove());
        if (part.takesMarks() && scenario.stages().contains(Stage.FACES)) steps.addAll(work.mark());
        if (scenario.stages().contains(Stage.NAMES)) steps.add(work.name());
        if (scenario.stages().contains(Stage.TURNS)) {
            steps.addAll(work.measure(scenario));
            steps.add(work.turn());
        }
        return steps;
    }

    /** The room that a name takes along the grain, millimetres. */
    private static final double NAME = 60;
    /** And a long one so much for each letter. */
    private static final double LETTER = 6.8;
    /** The marks stand in the middle of their arris, and take so much on either side. */
    private static final double MARKS = 26;

    private static Optional<Surface> looking(Placing placing, List<Direction> wanted) {
        return wanted.stream()
                .map(placing.turn()::looking)
                .filter(placing.board()::isDressed)
                .findFirst();
    }

    private List<Step> prove() {
        String id = board.id();
        double middle = Math.rint(board.size().length() / 2);
        return List.of(
                t -> new Action.Test(t, id, Tool.STRAIGHT_EDGE, side, middle),
                t -> new Action.Test(t, id, Tool.STRAIGHT_EDGE, side, null),
                t -> new Action.Test(t, id, Tool.WINDING_STICKS, side, null),
                t -> new Action.Test(t, id, Tool.STRAIGHT_EDGE, edge, null),
                t -> new Action.Test(t, id, Tool.TRY_SQUARE, edge, middle));
    }

    private List<Step> mark() {
        return List.of(
                t -> new Action.FaceSide(t, board.id(), side, edge),
                t -> new Action.FaceEdge(t, board.id(), edge, side));
    }

    private Step turn() {
        return t -> new Action.Turning(
                t, board.id(), placing.turn().named(), placing.surplus() > 0 ? placing.trim() : null);
    }

    /** The name goes as near the middle as leaves it clear of every cut, and of the marks where there is room for both. */
    private Step name() {
        double v = Math.rint(board.vExtent(side) / 2);
        double middle =
                Math.rint((placing.partInBoard().min(0) + placing.partInBoard().max(0)) / 2);
        double own = Math.max(NAME, LETTER * placing.part().name().length());
        double u = places(middle, own)
                .filter(at -> Math.abs(at - board.size().length() / 2) > own / 2 + MARKS)
                .findFirst()
                .or(() -> places(middle, NAME).findFirst())
                .orElse(middle);
        return t -> new Action.Name(t, board.id(), placing.part().id(), new SurfacePoint(side, u, v));
    }

    /** Where a name is clear of every cut by a hand's breadth of pencil, the nearest to the middle first. */
    private Stream<Double> places(double middle, double wide) {
        double half = wide / 2;
        return Stream.iterate(0, i -> i + 1)
                .limit((long) Math.max(1, placing.partInBoard().extent(0) / 2 - half))
                .flatMap(i -> Stream.of(middle + i, middle - i))
                .filter(at -> placing.cuts().stream()
                        .flatMap(c -> c.boxes().stream())
                        .noneMatch(b -> b.min(0) < at + half && b.max(0) > at - half));
    }

    /** From each knot that lies near its margin to the edge of the joint it is near to. */
    private List<Step> measure(Scenario scenario) {
        List<Step> steps = new ArrayList<>();
        for (KnotBody body : board.bodies()) {
            double margin = scenario.practice().knotMargin().of(body.knot());
            List<Box> boxes =
                    placing.cuts().stream().flatMap(c -> c.boxes().stream()).toList();
            for (Box box : boxes) {
                if (Math.abs(body.clearance(box) - margin) > NEAR) continue;
                trace(body).ifPresent(trace -> steps.add(measure(trace, box)));
            }
        }
        return steps;
    }

    private Step measure(Trace trace, Box cut) {
        SurfacePoint knot = new SurfacePoint(
                trace.surface(), read(trace.middle().u()), read(trace.middle().v()));
        int axis = trace.surface().uAxis();
        double middle = (cut.min(axis) + cut.max(axis)) / 2;
        double joint = read(knot.u() < middle ? cut.min(axis) : cut.max(axis));
        return t -> new Action.Measure(t, board.id(), knot, new SurfacePoint(trace.surface(), joint, knot.v()));
    }

    /** A steel rule is read to half a millimetre. */
    private static double read(double mm) {
        return Math.rint(mm * 2) / 2;
    }

    private Optional<Trace> trace(KnotBody body) {
        return body.traces().stream()
                .filter(trace -> !trace.surface().isEnd())
                .min(Comparator.comparing(trace -> trace.surface() != side));
    }
}
