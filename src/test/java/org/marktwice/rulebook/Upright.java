package org.marktwice.rulebook;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.marktwice.Fixtures;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Drawing;
import org.marktwice.drawing.Joint;
import org.marktwice.drawing.Overall;
import org.marktwice.drawing.Trim;
import org.marktwice.timber.Board;
import org.marktwice.timber.Knot;
import org.marktwice.timber.Surface;

/**
 * Figures that can be worked out in the head: the left upright of the porch shelf, 300 × 120 × 18, whose one cut is the
 * housing from 80 to 98 up, 6 deep in the face that looks right; and straight round knots, square to the face.
 *
 * <p>In a board of 300 the housing lies, by the turn, at x 202–220 or at x 80–98, and in face-1 (z 12–18) or in face-2
 * (z 0–6). What comes off end-1 of a longer board moves it up by as much where end-2 is at the bottom.
 */
final class Upright {
    /** A knot of radius 5 has this margin: the larger of 10 mm and its diameter. */
    static final double MARGIN = 10;

    private Upright() {}

    /** How the board may lie as the left upright. */
    enum Lie {
        /** End-2 at the bottom, face-1 to the right: the housing at x 202–220 in face-1. */
        FACE_1_END_2_DOWN(Surface.FACE_1, Direction.FRONT),
        /** End for end: the housing at x 80–98 in face-1. */
        FACE_1_END_1_DOWN(Surface.FACE_1, Direction.BACK),
        /** Face over, the ends as they were: the housing at x 202–220 in face-2. */
        FACE_2_END_2_DOWN(Surface.FACE_2, Direction.BACK),
        /** Both: the housing at x 80–98 in face-2. */
        FACE_2_END_1_DOWN(Surface.FACE_2, Direction.FRONT);

        private final Surface inside;
        private final Direction edge1;

        Lie(Surface inside, Direction edge1) {
            this.inside = inside;
            this.edge1 = edge1;
        }
    }

    /** The left upright and the shelf that it houses. */
    static Drawing drawing() {
        return Fixtures.drawing(
                new Overall(488, 120, 300),
                List.of(Fixtures.UPRIGHT_LEFT, Fixtures.SHELF),
                new Joint.ThroughHousing("left-housing", "upright-left", "shelf"));
    }

    /** The job with a board A as its upright to be. */
    static Situations job(Board... boards) {
        return Situations.of(drawing(), boards);
    }

    /** A cylinder through the board at y 60 from face to face, live. */
    static Knot knot(String id, double x, double radius) {
        return knot(id, x, radius, Double.POSITIVE_INFINITY);
    }

    /** The same, dead from so far above face-2. */
    static Knot knot(String id, double x, double radius, double deadFromFace2) {
        return new Knot(id, x, 90, 90, 80, radius, 80 + deadFromFace2, Double.POSITIVE_INFINITY);
    }

    static Board board(String id, Knot... knots) {
        return Fixtures.board(id).knots(knots).board();
    }

    static Board board(String id, double length, Knot... knots) {
        return Fixtures.board(id).size(length, 120, 18).knots(knots).board();
    }

    /** Two steps: named, then turned. */
    static Situations lay(Situations given, String board, Lie lie) {
        return turn(given.names(board, "upright-left"), board, lie, null);
    }

    static Situations turn(Situations given, String board, Lie lie, @Nullable Trim trim) {
        return given.turns(board, lie.inside, Direction.RIGHT, Surface.EDGE_1, lie.edge1, trim);
    }
}
