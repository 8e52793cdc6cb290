package org.marktwice.scenario;

import java.util.ArrayList;
import java.util.List;
import org.marktwice.drawing.Cut;
import org.marktwice.drawing.Drawing;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Placing;
import org.marktwice.drawing.Trim;
import org.marktwice.drawing.Turn;
import org.marktwice.timber.Board;
import org.marktwice.timber.Box;
import org.marktwice.timber.Knot;
import org.marktwice.timber.KnotReach;
import org.marktwice.timber.Size;
import org.marktwice.timber.Surface;

/**
 * How many of a board's turns in a part are wrong, told roughly but in strict arithmetic, so that it comes out the same on
 * every machine. It errs on the safe side: a turn that it calls clear is clear.
 */
final class WrongTurns {
    /** What is taken off end-1, as shares of the surplus. */
    private static final double[] TRIMS = {0.5, 0, 1};

    /** A dead knot this far from an arris leaves it whole, millimetres. */
    private static final double AWAY_FROM_ARRIS = 1;

    private WrongTurns() {}

    /** The share of the allowed turns in which some knot is nearer to a cut than its margin, however the board is trimmed; 1 where no turn is allowed. */
    static double share(Drawing drawing, Practice practice, Board board, Part part) {
        List<Turn> turns = Turn.allowed(board, part);
        List<Reach> knots = new ArrayList<>();
        for (Knot knot : board.knots()) {
            knots.add(new Reach(
                    KnotReach.of(knot, board.pith().orElseThrow(), board.size()),
                    practice.knotMargin().of(knot)));
        }
        int wrong = 0;
        for (Turn turn : turns) if (!canBeClear(drawing, board, part, turn, knots)) wrong++;
        return turns.isEmpty() ? 1 : (double) wrong / turns.size();
    }

    /**
     * Whether the dead knots leave the board's long arrises alone, and keep their margin from both ends however it is
     * trimmed to the part's length.
     */
    static boolean isSound(Practice practice, Board board, Part part) {
        Size size = board.size();
        double surplus = Math.max(0, size.length() - part.size().length());
        Box all = size.box();
        List<Box> ends = List.of(all.with(0, 0, surplus), all.with(0, size.length() - surplus, size.length()));
        for (Knot knot : board.knots()) {
            KnotReach dead = KnotReach.ofDeadPart(knot, board.pith().orElseThrow(), size);
            double margin = practice.knotMargin().of(knot);
            for (Box end : ends) if (dead.gap(end) < margin) return false;
            for (double y : new double[] {0, size.width()}) {
                for (double z : new double[] {0, size.thickness()}) {
                    if (dead.gap(all.with(1, y, y).with(2, z, z)) < AWAY_FROM_ARRIS) return false;
                }
            }
        }
        return true;
    }

    private record Reach(KnotReach reach, double margin) {}

    private static boolean canBeClear(Drawing drawing, Board board, Part part, Turn turn, List<Reach> knots) {
        double surplus = board.size().length() - part.size().length();
        for (double share : TRIMS) {
            Placing placing = new Placing(drawing, part, board, turn, new Trim(Surface.END_1, surplus * share));
            if (isClear(placing.cuts(), knots)) return true;
        }
        return false;
    }

    private static boolean isClear(List<Cut> cuts, List<Reach> knots) {
        for (Reach knot : knots) {
            for (Cut cut : cuts) {
                for (Box box : cut.boxes()) if (knot.reach().gap(box) < knot.margin()) return false;
            }
        }
        return true;
    }
}
