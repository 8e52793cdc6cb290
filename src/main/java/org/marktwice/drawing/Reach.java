package org.marktwice.drawing;

import org.marktwice.timber.Box;

/** How far an overlap reaches through a part along an axis. */
enum Reach {
    INSIDE,
    ONE_SIDE,
    THROUGH;

    static Reach of(Box overlap, Box part, int axis) {
        boolean low = overlap.min(axis) - part.min(axis) <= Drawing.TOLERANCE;
        boolean high = part.max(axis) - overlap.max(axis) <= Drawing.TOLERANCE;
        return low && high ? THROUGH : low || high ? ONE_SIDE : INSIDE;
    }
}
