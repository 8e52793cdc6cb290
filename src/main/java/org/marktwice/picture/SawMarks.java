package org.marktwice.picture;

/**
 * What a saw leaves on a surface: grooves a few millimetres apart, each as deep as its tooth stood out, with a lit lip, and
 * fine scratches between. A profile along the way of the saw, so that it can be averaged over a pixel of any size.
 */
final class SawMarks {
    /** From groove to groove, millimetres: what the timber was fed while the blade went round once, or a part of it. */
    private static final double PITCH = 2.9;
    /** A groove's half width, millimetres. */
    private static final double HALF = 0.42;

    private static final double GROOVE = -0.17;
    private static final double LIP = 0.08;
    private static final double SCRATCHES = 0.03;
    private static final double FINE = 0.05;
    /** Then it begins again, millimetres. */
    private static final double LENGTH = 1024;

    /** The profile's sum up to each step of {@link #FINE} millimetres. */
    private final float[] sum;

    SawMarks(long seed) {
        int n = (int) (LENGTH / FINE);
        double[] profile = new double[n];
        ValueNoise scratches = new ValueNoise(seed, 8, 0.55, 1, 1);
        for (int i = 0; i < n; i++) profile[i] = SCRATCHES * scratches.at(i * FINE, 0, 0);
        double at = 0;
        for (int groove = 0; at < LENGTH; groove++) {
            double depth = ValueNoise.unit(seed, 51, groove);
            cut(profile, at, 0.25 + 0.75 * depth * depth);
            at += PITCH * (0.72 + 0.56 * ValueNoise.unit(seed, 52, groove));
        }
        double mean = 0;
        for (double p : profile) mean += p / n;
        sum = new float[n + 1];
        double total = 0;
        for (int i = 0; i < n; i++) {
            total += profile[i] - mean;
            sum[i + 1] = (float) total;
        }
    }

    private static void cut(double[] profile, double at, double depth) {
        int reach = (int) Math.ceil(3 * HALF / FINE);
        int middle = (int) (at / FINE);
        for (int i = Math.max(0, middle - reach); i <= Math.min(profile.length - 1, middle + reach); i++) {
            double off = (i * FINE - at) / HALF;
            profile[i] += depth * (GROOVE * bump(off) + LIP * bump(off - 1.5));
        }
    }

    private static double bump(double t) {
        double c = Math.max(0, 1 - t * t);
        return c * c;
    }

    /** How much lighter the surface is there, averaged over so many millimetres of the profile. */
    float at(double place, double over) {
        double from = place - over / 2;
        double start = from - LENGTH * Math.floor(from / LENGTH);
        int a = (int) (start / FINE);
        int b = Math.min(sum.length - 1, Math.max(a + 1, (int) ((start + over) / FINE)));
        return a >= b ? 0 : (sum[b] - sum[a]) / (b - a);
    }
}
