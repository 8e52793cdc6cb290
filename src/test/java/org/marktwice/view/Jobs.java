package org.marktwice.view;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.joml.Vector3d;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Drawing;
import org.marktwice.drawing.DrawingRefused;
import org.marktwice.drawing.JobAxis;
import org.marktwice.drawing.Overall;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.PartStuff;
import org.marktwice.scenario.Practice;
import org.marktwice.scenario.Scenario;
import org.marktwice.scenario.Stage;
import org.marktwice.timber.Board;
import org.marktwice.timber.Pith;
import org.marktwice.timber.Shape;
import org.marktwice.timber.Size;
import org.marktwice.timber.Species;
import org.marktwice.timber.Stuff;
import org.marktwice.timber.Surface;

/** Small jobs for the tests of the screens. */
public final class Jobs {
    private Jobs() {}

    /** One planed board without knots, for one part without joints; undo granted. */
    public static Scenario oneBoard() {
        Size size = new Size(300, 120, 18);
        Part part = new Part(
                "shelf",
                "Shelf",
                PartStuff.TIMBER,
                size,
                new Vector3d(),
                JobAxis.ACROSS,
                JobAxis.DEEP,
                List.of(Direction.TOP),
                List.of(Direction.FRONT));
        Board board = Board.of(new Board.Facts(
                "A",
                Stuff.TIMBER,
                new Species("pine", "pine", 4, 8, "round figures for a test"),
                size,
                12,
                12,
                Set.of(Surface.values()),
                new Pith(60, -40),
                2.5,
                List.of(),
                Shape.TRUE,
                1));
        try {
            Drawing drawing = Drawing.of(new Overall(300, 120, 18), List.of(part), List.of());
            return new Scenario(
                    "one-board",
                    "One board",
                    1,
                    "One board.",
                    List.of(Stage.FACES),
                    granting(),
                    drawing,
                    List.of(board),
                    "");
        } catch (DrawingRefused e) {
            throw new IllegalStateException(e);
        }
    }

    private static Practice granting() {
        Practice d = Practice.DEFAULT;
        return new Practice(
                d.faceSide(),
                d.heartSide(),
                d.knotMargin(),
                d.cupRatio(),
                d.size(),
                d.gap(),
                Map.of(),
                d.guidance(),
                Set.of(Practice.Aid.UNDO));
    }
}
