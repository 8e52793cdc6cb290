package org.marktwice.view.bench;

import org.joml.Quaterniond;
import org.joml.Quaterniondc;

/**
 * A board on its way from one attitude to another: the shortest rotation between the two, eased at both ends.
 *
 * @param seconds how long it takes; 0 is at once
 */
record Motion(Quaterniondc from, Quaterniondc to, double seconds) {
    /** Below the quarter of a second that a turn may take at most. */
    static final double TURN = 0.22;

    Motion {
        from = new Quaterniond(from);
        to = new Quaterniond(to);
    }

    static Motion still(Quaterniondc at) {
        return new Motion(at, at, 0);
    }

    boolean isOver(double elapsed) {
        return elapsed >= seconds;
    }

    /** The attitude after so many seconds. */
    Quaterniond at(double elapsed) {
        return isOver(elapsed) ? new Quaterniond(to) : from.slerp(to, share(elapsed), new Quaterniond());
    }

    /** How much of the way is done after so many seconds, 0 to 1. */
    double share(double elapsed) {
        return isOver(elapsed) ? 1 : eased(Math.max(0, elapsed) / seconds);
    }

    /** Slow, quick, slow: 0 to 1 with no speed at either end. */
    static double eased(double share) {
        return share * share * (3 - 2 * share);
    }
}
