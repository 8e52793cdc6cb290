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

    /** This noise along one line direction, ready for many parallel rows. */
    Rows along(int axis, double start, double step, int n) {
        return new Rows(axis, start, step, n);
    }

    /** A row's points: where they lie in the lattice's cells is the same for every parallel row. */
    final class Rows {
        private final int axis;
        private final int second;
        private final int third;
        /** The first point of each run in one cell, and one past the last. */
        private final int[] runs;

        private final int[] cells;
        /** How far each point is across its cell, smoothed. */
        private final float[] share;

        /**
         * @param start the first point's coordinate along {@code axis}, millimetres
         * @param step from point to point, millimetres; may be below 0
         */
        private Rows(int axis, double start, double step, int n) {
            this.axis = axis;
            this.second = axis == 2 ? 0 : axis + 1;
            this.third = second == 2 ? 0 : second + 1;
            this.share = new float[n];
            int[] firsts = new int[n + 1];
            int[] at = new int[n];
            int count = 0;
            for (int i = 0; i < n; i++) {
                double p = (start + i * step) * perMm[axis];
                int cell = (int) Math.floor(p);
                share[i] = smooth((float) (p - cell));
                if (count == 0 || at[count - 1] != cell) {
                    firsts[count] = i;
                    at[count++] = cell;
                }
            }
            firsts[count] = n;
            this.runs = java.util.Arrays.copyOf(firsts, count + 1);
            this.cells = java.util.Arrays.copyOf(at, count);
        }

        /**
         * Adds the noise times {@code strength} to each point of {@code out}.
         *
         * @param b the fixed coordinate along the next axis in the cycle x, y, z; {@code c} along the one after
         */
        void addTo(float[] out, double b, double c, float strength) {
            double q = b * perMm[second];
            double r = c * perMm[third];
            int j = (int) Math.floor(q);
            int k = (int) Math.floor(r);
            float fj = smooth((float) (q - j));
            float fk = smooth((float) (r - k));
            float low = 0;
            float high = 0;
            for (int run = 0; run < cells.length; run++) {
                int cell = cells[run];
                int step = run == 0 ? 0 : cell - cells[run - 1];
                float before = low;
                low = step == 1 ? high : plane(axis, second, third, cell, j, k, fj, fk);
                high = step == -1 ? before : plane(axis, second, third, cell + 1, j, k, fj, fk);
                float base = strength * low;
                float rise = strength * (high - low);
                for (int i = runs[run]; i < runs[run + 1]; i++) out[i] += base + rise * share[i];
            }
        }
    }

    /** The noise at one point. */
    float at(double x, double y, double z) {
        double p = x * perMm[0];
        double q = y * perMm[1];
        double r = z * perMm[2];
        int i = (int) Math.floor(p);
        int j = (int) Math.floor(q);
        int k = (int) Math.floor(r);
        float fj = smooth((float) (q - j));
        float fk = smooth((float) (r - k));
        float low = plane(0, 1, 2, i, j, k, fj, fk);
        float high = plane(0, 1, 2, i + 1, j, k, fj, fk);
        return low + (high - low) * smooth((float) (p - i));
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
