package org.marktwice.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.marktwice.scenario.Practice;
import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;
import org.marktwice.timber.Trueness;

/**
 * How true a surface must be to take a mark. A design choice throughout: the trade says true, flat, straight and square,
 * and gives no figures.
 *
 * @param straight sag along the length, millimetres a metre
 * @param wind rise of the far corner, millimetres
 * @param square degrees off 90 between face side and face edge
 * @param poor how many times over a limit still counts as near it
 */
record TruenessLimits(double straight, double wind, double square, double poor) {
    static final TruenessLimits DEFAULT = new TruenessLimits(1, 1, 0.5, 1.5);

    /**
     * What one tool reads, against its limits.
     *
     * @param what along, across, wind or square
     * @param value the departure, 0 or more
     * @param limit up to here it is true
     * @param poor up to here it is near true
     */
    record Reading(String what, Surface on, double value, double limit, double poor) {
        String unit() {
            return what.equals("square") ? "degrees" : "mm";
        }

        boolean isTrue() {
            return value <= limit;
        }

        boolean isNear() {
            return value <= poor;
        }

        /** The share of its limit that it takes up. */
        double share() {
            return value / limit;
        }
    }

    /** What straight-edge and winding sticks read on a surface that is to be the face side. */
    List<Reading> ofSide(Board board, Surface side, Practice.CupRatio cup) {
        List<Reading> readings = new ArrayList<>();
        readings.add(along(board, side));
        across(board, side, cup).ifPresent(readings::add);
        double twist = Math.abs(Trueness.wind(board, side));
        readings.add(new Reading("wind", side, twist, wind, wind * poor));
        return readings;
    }

    /** What straight-edge and square read on a surface that is to be the face edge. */
    List<Reading> ofEdge(Board board, Surface edge, Surface side) {
        List<Reading> readings = new ArrayList<>();
        readings.add(along(board, edge));
        if (edge.adjoins(side)) {
            double off = Math.abs(Trueness.square(board, side, edge));
            readings.add(new Reading("square", edge, off, square, square * poor));
        }
        return readings;
    }

    private Reading along(Board board, Surface on) {
        double limit = straight * board.size().length() / 1000;
        return new Reading("along", on, Math.abs(Trueness.along(board, on)), limit, limit * poor);
    }

    /** Empty with a boxed heart, whose cup can't be told. The limits are the workshop's for cup. */
    private static Optional<Reading> across(Board board, Surface on, Practice.CupRatio cup) {
        double width = board.vExtent(on);
        return Trueness.across(board, on, board.size().length() / 2).stream()
                .mapToObj(gap -> new Reading("across", on, Math.abs(gap), cup.clearLimit(width), cup.poorLimit(width)))
                .findFirst();
    }
}
