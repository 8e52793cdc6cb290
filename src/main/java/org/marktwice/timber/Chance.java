package org.marktwice.timber;

/**
 * Chance that comes out the same from the same seed, on every machine and with every version of Java: SplitMix64, a
 * 64-bit generator that can be split (G. L. Steele, D. Lea, C. H. Flood, "Fast splittable pseudorandom number
 * generators", OOPSLA 2014). Only whole-number steps and the four rules of arithmetic are used, which are exact everywhere.
 */
public final class Chance {
    private static final long GOLDEN_GAMMA = 0x9e3779b97f4a7c15L;
    private static final double UNIT = 0x1p-53;

    private final long gamma;
    private long state;

    private Chance(long state, long gamma) {
        this.state = state;
        this.gamma = gamma;
    }

    public static Chance of(long seed) {
        return new Chance(seed, GOLDEN_GAMMA);
    }

    /** Another chance that has nothing to do with what is still to come of this one. */
    public Chance split() {
        long seed = bits();
        return new Chance(seed, gamma(step()));
    }

    private long step() {
        state += gamma;
        return state;
    }

    /** Sixty-four of them. */
    public long bits() {
        long z = step();
        z = (z ^ (z >>> 30)) * 0xbf58476d1ce4e5b9L;
        z = (z ^ (z >>> 27)) * 0x94d049bb133111ebL;
        return z ^ (z >>> 31);
    }

    /** Odd, and with enough changes between neighbouring bits. */
    private static long gamma(long seed) {
        long z = (seed ^ (seed >>> 33)) * 0xff51afd7ed558ccdL;
        z = (z ^ (z >>> 33)) * 0xc4ceb9fe1a85ec53L;
        z = (z ^ (z >>> 33)) | 1;
        return Long.bitCount(z ^ (z >>> 1)) < 24 ? z ^ 0xaaaaaaaaaaaaaaaaL : z;
    }

    /** From 0, below 1. */
    public double share() {
        return (bits() >>> 11) * UNIT;
    }

    /** Evenly between the two. */
    public double between(double least, double most) {
        return least + share() * (most - least);
    }

    /** Evenly between the two, in tenths. */
    public double tenths(double least, double most) {
        return tenth(between(least, most));
    }

    /** Evenly from one whole number to the other, both among them. */
    public int whole(int least, int most) {
        return least + (int) (share() * (most - least + 1));
    }

    /** True in this share of all cases. */
    public boolean with(double share) {
        return share() < share;
    }

    /** The nearest tenth, as it is written in decimals; of two the even one. */
    public static double tenth(double value) {
        // + 0.0: no negative zero
        return StrictMath.rint(value * 10) / 10 + 0.0;
    }
}
