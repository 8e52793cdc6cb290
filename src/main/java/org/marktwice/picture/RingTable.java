package org.marktwice.picture;

/**
 * The colour of the wood by its distance from the pith, filtered beforehand: level l is averaged over l quarters of a
 * pixel, so that a ring's edge is neither jagged nor blurred, however steeply the surface runs through the rings.
 *
 * <p>Packed as 0xDDRRGGBB, D being how thickly the vessels stand (255 = all of them).
 */
final class RingTable {
    static final int LEVELS = 8;
    /** Levels a pixel. */
    static final int PER_PIXEL = 4;

    private static final double VARIES = 0.28;
    /** A ring's edge is never sharper than this either way, millimetres: it keeps flat grain free of steps. */
    private static final double EDGE = 0.045;
    /** Distance over which the heartwood's tint comes in, millimetres. */
    private static final double HEART_EDGE = 3.5;

    final double from;
    final float perMm;
    /** Entries a level. */
    final int size;
    /** All levels, one after the other. */
    final int[] packed;

    /**
     * @param pixel a pixel's side, millimetres
     * @param from the least distance from the pith that is asked for, {@code to} the greatest, millimetres
     */
    RingTable(WoodLook look, long seed, double ringWidth, double from, double to, double pixel) {
        this.from = from;
        double fine = Math.max(0.01, Math.min(0.03, pixel / 8));
        this.perMm = (float) (1 / fine);
        int n = (int) Math.ceil((to - from) / fine) + 2;
        float[][] channels = fill(look, seed, ringWidth, fine, n);
        for (float[] c : channels) soften(c, (int) Math.round(EDGE / fine));
        this.size = n;
        this.packed = new int[LEVELS * n];
        for (int l = 0; l < LEVELS; l++) {
            filter(channels, (int) Math.round(l * pixel / PER_PIXEL / fine / 2), packed, l * n);
        }
    }

    private float[][] fill(WoodLook look, long seed, double ringWidth, double fine, int n) {
        float[][] out = new float[4][n];
        double heart = look.heartFrom() * (0.75 + 0.5 * ValueNoise.unit(seed, 31, 0));
        int year = 0;
        double begins = 0;
        Year now = new Year(look, seed, ringWidth, year);
        for (int i = 0; i < n; i++) {
            double r = Math.max(0, from + i * fine);
            while (r >= begins + now.width) {
                begins += now.width;
                now = new Year(look, seed, ringWidth, ++year);
            }
            double t = (r - begins) / now.width;
            double late = now.late(t);
            double sap = smooth((r - heart) / HEART_EDGE);
            int early = WoodLook.mixed(look.heartEarly(), look.sapEarly(), sap);
            int dark = WoodLook.mixed(look.heartLate(), look.sapLate(), sap);
            for (int c = 0; c < 3; c++) {
                int a = (early >> (8 * c)) & 255;
                int b = (dark >> (8 * c)) & 255;
                out[c][i] = (float) ((a + (b - a) * late) * now.tone);
            }
            out[3][i] = (float) (255 * now.vessels(t));
            if (r < 1.2) blot(out, i, look, smooth(r / 1.2));
        }
        return out;
    }

    /** The pith itself. */
    private static void blot(float[][] out, int i, WoodLook look, double share) {
        for (int c = 0; c < 3; c++) {
            float dark = (look.knotRim() >> (8 * c)) & 255;
            out[c][i] = (float) (dark + (out[c][i] - dark) * share);
        }
    }

    private static void soften(float[] channel, int half) {
        int n = channel.length;
        for (int times = 0; times < 2; times++) {
            double[] sum = sums(channel);
            for (int i = 0; i < n; i++) {
                int a = Math.max(0, i - half);
                int b = Math.min(n, i + half + 1);
                channel[i] = (float) ((sum[b] - sum[a]) / (b - a));
            }
        }
    }

    private static double[] sums(float[] channel) {
        double[] sum = new double[channel.length + 1];
        for (int i = 0; i < channel.length; i++) sum[i + 1] = sum[i] + channel[i];
        return sum;
    }

    private static void filter(float[][] channels, int half, int[] out, int from) {
        int n = channels[0].length;
        for (int c = 0; c < 4; c++) {
            double[] sum = sums(channels[c]);
            for (int i = 0; i < n; i++) {
                int a = Math.max(0, i - half);
                int b = Math.min(n, i + half + 1);
                out[from + i] |= Math.min(255, (int) Math.round((sum[b] - sum[a]) / (b - a))) << (8 * c);
            }
        }
    }

    private static double smooth(double t) {
        double c = Math.max(0, Math.min(1, t));
        return c * c * (3 - 2 * c);
    }

    /** One year's growth. */
    private static final class Year {
        private final WoodLook.Rings rings;
        final double width;
        final double tone;
        private final double depth;
        private final double share;

        Year(WoodLook look, long seed, double mean, int year) {
            this.rings = look.rings();
            double swing = 0.6 * ValueNoise.unit(seed, 11, year) + 0.4 * ValueNoise.unit(seed, 12, year / 4);
            this.width = mean * Math.max(1 - VARIES, Math.min(1 + VARIES, 1 + 1.6 * VARIES * (2 * swing - 1)));
            this.tone = 1 + 0.035 * (ValueNoise.unit(seed, 13, year) - 0.5);
            this.depth = 0.78 + 0.22 * ValueNoise.unit(seed, 14, year);
            this.share = 0.25 + 0.50 * ValueNoise.unit(seed, 15, year);
        }

        /** How dark, from 0 earlywood to 1 latewood, at the share t of the year. */
        double late(double t) {
            return switch (rings) {
                case SOFTWOOD -> {
                    double ramp = smooth((t - (1 - share)) / share);
                    double settle = smooth(t / 0.05);
                    yield depth * (ramp * (0.45 + 0.55 * ramp) + 0.06 * (1 - settle));
                }
                case RING_POROUS ->
                    depth * (smooth(1 - t / (0.25 + 0.25 * share)) * 0.95 + 0.22 * smooth((t - 0.5) * 2));
                case DIFFUSE -> depth * (0.30 * smooth(t) + 0.70 * smooth((t - 0.86) / 0.12));
            };
        }

        double vessels(double t) {
            return switch (rings) {
                case SOFTWOOD -> 0;
                case RING_POROUS -> 0.12 + 0.88 * smooth(1 - t / (0.3 + 0.2 * share));
                case DIFFUSE -> 0.85 - 0.5 * t;
            };
        }
    }
}
