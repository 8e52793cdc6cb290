package org.marktwice.fit;

import java.util.ArrayList;
import java.util.List;

/**
 * How far each part is moved along one axis when the job is put together: to where all seats are as nearly shut as they
 * can be. Wood gives way to no wood, so a clash counts far more than a gap. Where no seat holds a part along the axis, a
 * hand lays it flush, as drawn.
 */
final class Settling {
    /** How much more a clash counts than a gap. */
    private static final double CLASH = 1e4;
    /** How little a part's drawn place counts beside its seats. */
    private static final double DRAWN = 1e-7;
    /** The first part stays where it is, and the others come to it. */
    private static final double FIRST = 1e-4;

    private static final int ROUNDS = 60;

    private final List<Held> held = new ArrayList<>();
    private final double[] drawn;

    /** Between two parts: the gap is {@code open + moved[above] − moved[below]}; a peg is held from both sides. */
    private record Held(int below, int above, double open, boolean peg) {
        double gap(double[] moved) {
            return open + moved[above] - moved[below];
        }
    }

    /** @param drawn how far each part would be moved to lie as drawn, the seats apart */
    Settling(double[] drawn) {
        this.drawn = drawn.clone();
    }

    void seat(int below, int above, double open, boolean peg) {
        held.add(new Held(below, above, open, peg));
    }

    /** How far each part is moved. */
    double[] moved() {
        double[] moved = drawn.clone();
        boolean[] clashes = new boolean[held.size()];
        for (int round = 0; round < ROUNDS; round++) {
            moved = solved(clashes);
            boolean same = true;
            for (int i = 0; i < clashes.length; i++) {
                boolean now = !held.get(i).peg() && held.get(i).gap(moved) < 0;
                same &= now == clashes[i];
                clashes[i] = now;
            }
            if (same) break;
        }
        return moved;
    }

    /** Least squares by the normal equations; there are as many unknowns as parts. */
    private double[] solved(boolean[] clashes) {
        int n = drawn.length;
        double[][] a = new double[n][n + 1];
        for (int i = 0; i < n; i++) {
            double weight = i == 0 ? FIRST : DRAWN;
            a[i][i] += weight;
            a[i][n] += weight * drawn[i];
        }
        for (int k = 0; k < clashes.length; k++) {
            Held h = held.get(k);
            double weight = clashes[k] ? CLASH : 1;
            a[h.above()][h.above()] += weight;
            a[h.below()][h.below()] += weight;
            a[h.above()][h.below()] -= weight;
            a[h.below()][h.above()] -= weight;
            a[h.above()][n] -= weight * h.open();
            a[h.below()][n] += weight * h.open();
        }
        return eliminated(a);
    }

    /** Gauss with the largest pivot. */
    private static double[] eliminated(double[][] a) {
        int n = a.length;
        for (int col = 0; col < n; col++) {
            int best = col;
            for (int row = col + 1; row < n; row++) {
                if (Math.abs(a[row][col]) > Math.abs(a[best][col])) best = row;
            }
            double[] swap = a[col];
            a[col] = a[best];
            a[best] = swap;
            for (int row = 0; row < n; row++) {
                if (row == col) continue;
                double times = a[row][col] / a[col][col];
                for (int k = col; k <= n; k++) a[row][k] -= times * a[col][k];
            }
        }
        double[] out = new double[n];
        for (int i = 0; i < n; i++) out[i] = a[i][n] / a[i][i];
        return out;
    }
}
