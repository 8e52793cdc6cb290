package org.marktwice.picture;

/**
 * Smooth noise between −1 and 1 over a lattice in the board's frame, from hashed integers only, so that every machine
 * gives the same value.
 *
 * <p>A row along one axis is cheap: within a cell only the fraction along the row changes, so the lattice is read once a
 * cell and not once a point.
 */
final class ValueNoise {
    private final int seed;
    private final double[] perMm = new double[3];

    /** @param x the lattice's spacing along x, and so on, millimetres */
    ValueNoise(long seed, int salt, double x, double y, double z) {
        this.seed = mix((int) (seed ^ (seed >>> 32)) + salt * 0x9E3779B1);
        perMm[0] = 1 / x;
        perMm[1] = 1 / y;
        perMm[2] = 1 / z;
    }

    float at(double x, double y, double z) {
        float[] one = new float[1];
        row(0, x, 0, 1, y, z, one);
        return one[0];
    }

    /**
     * Fills {@code out[0..n)} along an axis.
     *
     * @param start the first point's coordinate along {@code axis}, millimetres
     * @param step from point to point, millimetres; may be below 0
     * @param b the fixed coordinate along the next axis in the cycle x, y, z; {@code c} along the one after
     */
    void row(int axis, double start, double step, int n, double b, double c, float[] out) {
        int second = axis == 2 ? 0 : axis + 1;
        int third = second == 2 ? 0 : second + 1;
        double q = b * perMm[second];
        double r = c * perMm[third];
        int j = (int) Math.floor(q);
        int k = (int) Math.floor(r);
        float fj = smooth((float) (q - j));
        float fk = smooth((float) (r - k));
        double p0 = start * perMm[axis];
        double dp = step * perMm[axis];
        int cell = Integer.MIN_VALUE;
        float low = 0;
        float rise = 0;
        for (int n0 = 0; n0 < n; n0++) {
            double p = p0 + n0 * dp;
            int at = (int) p;
            if (p < at) at--;
            if (at != cell) {
                float high = cell == at - 1 ? low + rise : plane(axis, second, third, at, j, k, fj, fk);
                low = high;
                rise = plane(axis, second, third, at + 1, j, k, fj, fk) - low;
                cell = at;
            }
            float t = (float) (p - at);
            out[n0] = low + rise * (t * t * (3 - 2 * t));
        }
    }

    private float plane(int axis, int second, int third, int i, int j, int k, float fj, float fk) {
        float a = corner(axis, second, third, i, j, k);
        float b = corner(axis, second, third, i, j + 1, k);
        float c = corner(axis, second, third, i, j, k + 1);
        float d = corner(axis, second, third, i, j + 1, k + 1);
        float ab = a + (b - a) * fj;
        float cd = c + (d - c) * fj;
        return ab + (cd - ab) * fk;
    }

    private static final int[] PRIME = {0x8DA6B343, 0xD8163841, 0xCB1AB31F};

    private float corner(int axis, int second, int third, int i, int j, int k) {
        int h = mix(seed ^ (i * PRIME[axis]) ^ (j * PRIME[second]) ^ (k * PRIME[third]));
        return (h >> 8) * (1f / (1 << 23));
    }

    private static float smooth(float t) {
        return t * t * (3 - 2 * t);
    }

    /** A well-stirred 32-bit value. */
    static int mix(int h) {
        h ^= h >>> 16;
        h *= 0x7FEB352D;
        h ^= h >>> 15;
        h *= 0x846CA68B;
        return h ^ (h >>> 16);
    }

    /** A value in [0, 1) from a seed, a salt and a counter. */
    static double unit(long seed, int salt, int n) {
        int h = mix(mix((int) (seed ^ (seed >>> 32)) + salt * 0x9E3779B1) ^ (n * 0x8DA6B343));
        return (h >>> 8) / (double) (1 << 24);
    }
}
