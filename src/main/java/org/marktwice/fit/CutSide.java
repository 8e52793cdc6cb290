package org.marktwice.fit;

import java.util.EnumSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.marktwice.timber.Box;
import org.marktwice.timber.Surface;

/**
 * A side of what comes off a board, to be marked so that saw, chisel or bit can follow it: the shoulder of a joint, the
 * bottom of a housing, the line at which the board is cut to length, the middle of a row of dowel holes. In the board's
 * frame, millimetres.
 *
 * @param joint the joint's id; null where the board is cut to length
 * @param axis the board axis square to it: 0 is marked with the square, 1 and 2 with the gauge
 * @param at its place along that axis
 * @param waste on which side of it the waste lies: +1 towards greater coordinates, −1 towards less, 0 on both, as about the
 *     middle of a hole
 * @param shows the surfaces on which it shows as a line
 * @param flat the side itself, a box without thickness along the axis
 */
public record CutSide(@Nullable String joint, int axis, double at, int waste, Set<Surface> shows, Box flat) {
    public CutSide {
        shows = shows.isEmpty() ? Set.of() : Set.copyOf(EnumSet.copyOf(shows));
    }

    /** Marked with the square, across the board. */
    public boolean isSquared() {
        return axis == 0;
    }

    /** Whether the board is cut to length here. */
    public boolean isEnd() {
        return joint == null;
    }
}
