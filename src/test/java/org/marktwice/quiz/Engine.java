package org.marktwice.quiz;

import java.util.List;
import org.joml.Vector3d;
import org.marktwice.bench.Action;
import org.marktwice.bench.Bench;
import org.marktwice.bench.CannotDo;
import org.marktwice.bench.Mark;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Drawing;
import org.marktwice.drawing.DrawingRefused;
import org.marktwice.drawing.JobAxis;
import org.marktwice.drawing.Overall;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.PartStuff;
import org.marktwice.picture.BoardPicture;
import org.marktwice.rulebook.RuleBook;
import org.marktwice.rulebook.Situation;
import org.marktwice.rulebook.Verdict;
import org.marktwice.scenario.Practice;
import org.marktwice.scenario.Scenario;
import org.marktwice.scenario.Stage;
import org.marktwice.timber.Board;
import org.marktwice.timber.Box;
import org.marktwice.timber.KnotBody;
import org.marktwice.timber.Size;

/** The rule book and the geometry, asked directly. */
final class Engine {
    private Engine() {}

    /** Whether two marks on a board are sound by the rules about marks. */
    static boolean areProper(Board board, Mark side, Mark edge) {
        Scenario scenario = marking(board);
        try {
            Bench bench = Bench.of(scenario)
                    .after(new Action.FaceSide(0, board.id(), side.on(), side.towards()))
                    .after(new Action.FaceEdge(1, board.id(), edge.on(), edge.towards()));
            Situation situation = Situation.of(bench);
            return List.of("marks-share-arris", "one-pair-of-marks").stream()
                    .flatMap(id -> RuleBook.rule(id).orElseThrow().judge(situation).stream())
                    .allMatch(f -> f.verdict() == Verdict.SOUND);
        } catch (CannotDo e) {
            return false;
        }
    }

    private static Scenario marking(Board board) {
        Size size = board.size();
        Part part = new Part(
                "part",
                "Part",
                PartStuff.TIMBER,
                size,
                new Vector3d(),
                JobAxis.ACROSS,
                JobAxis.DEEP,
                List.of(Direction.TOP),
                List.of(Direction.FRONT));
        try {
            Drawing drawing =
                    Drawing.of(new Overall(size.length(), size.width(), size.thickness()), List.of(part), List.of());
            return new Scenario(
                    "one", "One", 1, "", List.of(Stage.FACES), Practice.DEFAULT, drawing, List.of(board), "");
        } catch (DrawingRefused e) {
            throw new AssertionError(e);
        }
    }

    /**
     * Whether every knot keeps its margin from the cuts laid on a board, once the cuts come where a half turn of the board
     * brings them; the cuts are turned against the board instead.
     *
     * @param ends about the thickness
     * @param faces about the length
     */
    static boolean isClear(BoardPicture picture, boolean ends, boolean faces) {
        Size size = picture.board().size();
        for (KnotBody body : picture.board().bodies()) {
            double margin = Math.max(10, 2 * body.knot().maxRadius());
            for (BoardPicture.LaidCut laid : picture.cuts()) {
                for (Box box : laid.cut().boxes()) {
                    Box turned = box;
                    if (ends) turned = flipped(turned, 0, size);
                    if (ends != faces) turned = flipped(turned, 1, size);
                    if (faces) turned = flipped(turned, 2, size);
                    if (body.clearance(turned, margin) < margin) return false;
                }
            }
        }
        return true;
    }

    private static Box flipped(Box box, int axis, Size size) {
        return box.with(axis, size.along(axis) - box.max(axis), size.along(axis) - box.min(axis));
    }
}
