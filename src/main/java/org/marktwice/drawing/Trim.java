package org.marktwice.drawing;

import org.marktwice.timber.Surface;

/** How much of a board that is longer than its part comes off at {@code end}, millimetres; the rest comes off the other end. */
public record Trim(Surface end, double mm) {
    /** All the surplus comes off end-2. */
    public static final Trim ALL_OFF_END_2 = new Trim(Surface.END_1, 0);

    /** @throws IllegalArgumentException where the surface is no end, or the amount is below 0 */
    public Trim {
        if (!end.isEnd() || !(mm >= 0)) throw new IllegalArgumentException(end.id() + ", " + mm);
    }

    /** What comes off end-1, of a surplus (millimetres). */
    public double offEnd1(double surplus) {
        return end == Surface.END_1 ? mm : surplus - mm;
    }
}
