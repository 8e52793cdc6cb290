package org.marktwice.fit;

import java.util.Random;

/**
 * How finely a hand reads the rule and strikes a line: standard deviations in millimetres, and the seed that its errors
 * come from. Each step has its own errors, whatever was done before it.
 *
 * @param reading of a distance read off the rule
 * @param striking of a line at either end of it
 */
public record Hand(double reading, double striking, long seed) {
    /** Reads and strikes without error. */
    public static final Hand EXACT = new Hand(0, 0, 0);

    /** No error is larger than so many standard deviations: beyond that a careful hand looks again. */
    private static final double MOST = 2.5;

    /** A design choice: a steel rule read to about 0.2 mm, a line struck to about 0.1 mm of its tick. */
    public static Hand careful(long seed) {
        return new Hand(0.2, 0.1, seed);
    }

    /** @param reading in the reading; @param near at the arris that the stock bears on; @param far at the other end */
    record Slip(double reading, double near, double far) {
        static final Slip NONE = new Slip(0, 0, 0);
    }

    /** What goes astray at a step, millimetres. */
    Slip at(int step) {
        if (reading == 0 && striking == 0) return Slip.NONE;
        Random random = new Random(mixed(mixed(seed) + step));
        return new Slip(reading * error(random), striking * error(random), striking * error(random));
    }

    /** Spreads neighbouring numbers over all 64 bits, as they would else begin alike (Stafford's variant 13 of MurmurHash3's finish). */
    private static long mixed(long number) {
        long z = (number ^ (number >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }

    private static double error(Random random) {
        return Math.max(-MOST, Math.min(MOST, random.nextGaussian()));
    }
}
