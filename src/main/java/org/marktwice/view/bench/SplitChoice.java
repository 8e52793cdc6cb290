package org.marktwice.view.bench;

import java.util.List;
import org.marktwice.picture.Isometric;
import org.marktwice.timber.Board;
import org.marktwice.timber.Size;

/**
 * How the room is shared between the two views of the boards, so that these are as large as they can be.
 *
 * @param stacked the isometric view above the unrolled one; else beside it
 * @param share what the isometric view gets of the height, or of the width
 */
record SplitChoice(boolean stacked, double share) {
    /** What the panels take beside the views themselves, in pixels of the usual text size. */
    private static final double ISO_ACROSS = 90;

    private static final double ISO_DOWN = 150;
    private static final double FLAT_ACROSS = 400;
    private static final double FLAT_DOWN = 60;
    /** The unrolled board is measured on, and shows six surfaces in the room of one: its scale counts for more. */
    private static final double FLAT_COUNTS = 1.5;

    private static final double LEAST_SHARE = 0.36;
    private static final double MOST_SHARE = 0.64;

    /** @param textSize 1 is the usual size */
    static SplitChoice best(List<Board> boards, double width, double height, double textSize) {
        SplitChoice best = new SplitChoice(true, 0.5);
        double most = Double.NEGATIVE_INFINITY;
        for (boolean stacked : new boolean[] {true, false}) {
            for (double share = LEAST_SHARE; share <= MOST_SHARE; share += 0.01) {
                SplitChoice choice = new SplitChoice(stacked, share);
                double worth = choice.worth(boards, width / textSize, height / textSize);
                if (worth > most + 1e-9) {
                    most = worth;
                    best = choice;
                }
            }
        }
        return best;
    }

    /** The logarithms of all boards' scales in both views; the least there is where a view has no room at all. */
    private double worth(List<Board> boards, double width, double height) {
        double isoWidth = stacked ? width : width * share;
        double isoHeight = stacked ? height * share : height;
        double flatWidth = stacked ? width : width * (1 - share);
        double flatHeight = stacked ? height * (1 - share) : height;
        double together = 0;
        for (Board board : boards) {
            double iso = isometric(board.size(), isoWidth - ISO_ACROSS, isoHeight - ISO_DOWN);
            double flat = unrolled(board.size(), flatWidth - FLAT_ACROSS, flatHeight - FLAT_DOWN);
            if (iso <= 0 || flat <= 0) return Double.NEGATIVE_INFINITY;
            together += Math.log(iso) + FLAT_COUNTS * Math.log(flat);
        }
        return together;
    }

    /** Pixels a millimetre of a board that lies flat. */
    private static double isometric(Size s, double width, double height) {
        double across = (s.length() + s.width()) * Math.cos(Math.PI / 6);
        double down = (s.length() + s.width()) / 2 + s.thickness();
        return Math.min(width / across, height / down) / Isometric.FACTOR;
    }

    private static double unrolled(Size s, double width, double height) {
        return Math.min(width / (s.length() + s.width()), height / (2 * (s.width() + s.thickness())));
    }
}
