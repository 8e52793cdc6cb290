package org.marktwice.fit;

import org.marktwice.drawing.Joint;
import org.marktwice.timber.Box;

/**
 * Where the two parts of a joint bear on each other once it is cut and put together, as drawn, in the job's frame,
 * millimetres.
 *
 * @param kind how they meet there
 * @param axis the job axis square to it: 0 = X, 1 = Y, 2 = Z
 * @param inBelow whether the wood of the part that the joint is cut into lies on the lower side
 * @param flat where they bear, a box without thickness along the axis
 */
public record Seat(Joint joint, Kind kind, int axis, boolean inBelow, Box flat) {
    /** How two parts meet. */
    public enum Kind {
        /** Two surfaces that should touch. */
        TOUCHES,
        /** A row of dowels, whose holes should face each other. */
        PEGGED
    }

    /** Its place along its axis. */
    public double at() {
        return flat.min(axis);
    }
}
