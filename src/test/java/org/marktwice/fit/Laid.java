package org.marktwice.fit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.marktwice.Fixtures;
import org.marktwice.bench.Action;
import org.marktwice.bench.Bench;
import org.marktwice.bench.CannotDo;
import org.marktwice.drawing.Drawing;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Placing;
import org.marktwice.drawing.Trim;
import org.marktwice.drawing.Turn;
import org.marktwice.scenario.Scenario;
import org.marktwice.timber.Board;
import org.marktwice.timber.Shape;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;

/** A job whose boards are named and turned: face-1 is the face side and edge-1 the face edge of each, and it is board A's, B's … turn by turn. */
final class Laid {
    private final Scenario scenario;
    private Bench bench;

    private Laid(Scenario scenario) {
        this.scenario = scenario;
        this.bench = Bench.of(scenario);
    }

    /** True boards of the parts' own sizes, so much longer. */
    static Laid true_(Drawing drawing, double longer) {
        List<Board> boards = new ArrayList<>();
        for (Part part : drawing.parts()) boards.add(board(boards.size(), part, longer, Shape.TRUE));
        return of(drawing, boards, longer / 3);
    }

    /** Boards of any shape, longer by anything up to 12 mm. */
    static Laid any(Drawing drawing, Random random) {
        List<Board> boards = new ArrayList<>();
        double longer = 12 * random.nextDouble();
        for (Part part : drawing.parts()) {
            Shape shape = new Shape(
                    random.nextDouble(),
                    random.nextDouble() / 2,
                    random.nextDouble(),
                    random.nextDouble(),
                    random.nextDouble() / 2,
                    Map.of(Surface.EDGE_2, random.nextDouble()));
            boards.add(board(boards.size(), part, longer, shape));
        }
        return of(drawing, boards, longer / 2);
    }

    private static Board board(int index, Part part, double longer, Shape shape) {
        return Fixtures.board(String.valueOf((char) ('A' + index)))
                .size(
                        part.size().length() + longer,
                        part.size().width(),
                        part.size().thickness())
                .shape(shape)
                .board();
    }

    /** @param trim what comes off end-1 of every board */
    static Laid of(Drawing drawing, List<Board> boards, double trim) {
        Laid laid = new Laid(Fixtures.scenario("test", drawing, boards));
        for (int i = 0; i < boards.size(); i++) {
            Part part = drawing.parts().get(i);
            Board board = boards.get(i);
            Turn turn = turn(part);
            laid.does(new Action.Name(1, board.id(), part.id(), new SurfacePoint(Surface.FACE_1, 1, 1)));
            laid.does(new Action.Turning(2, board.id(), turn.named(), new Trim(Surface.END_1, trim)));
        }
        return laid;
    }

    /** A part without marks lies any way that its length allows. */
    private static Turn turn(Part part) {
        if (!part.takesMarks()) return Turn.in(part, false).get(0);
        return Turn.facing(
                        Surface.FACE_1,
                        part.faceSide().get(0),
                        Surface.EDGE_1,
                        part.faceEdge().get(0))
                .orElseThrow();
    }

    Laid does(Action action) {
        try {
            bench = bench.after(action);
        } catch (CannotDo e) {
            throw new AssertionError("step " + (bench.steps() + 1) + ": " + e.getMessage(), e);
        }
        return this;
    }

    /** Every board set out as the drawing has it. */
    Laid setsOut() {
        for (Board board : scenario.boards()) setsOut(board.id());
        return this;
    }

    Laid setsOut(String board) {
        for (WorkedSettingOut.Timed step : WorkedSettingOut.steps(placing(board), boards(), bench.steps())) {
            does(step.at(3));
        }
        return this;
    }

    Map<String, String> boards() {
        Map<String, String> boards = new HashMap<>();
        for (int i = 0; i < scenario.boards().size(); i++) {
            boards.put(
                    scenario.drawing().parts().get(i).id(),
                    scenario.boards().get(i).id());
        }
        return boards;
    }

    Bench bench() {
        return bench;
    }

    Placing placing(String board) {
        return bench.placing(bench.board(board)).orElseThrow();
    }

    SetOut setOut(String board) {
        return SetOut.of(placing(board), bench.board(board), TrueLines.of(bench, bench.board(board)));
    }
}
