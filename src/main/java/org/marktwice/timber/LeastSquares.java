package org.marktwice.timber;

import java.util.Arrays;

/**
 * The least sum of squares of a few residuals of a few parameters, by damped steps of Gauss and Newton (K. Levenberg, "A
 * method for the solution of certain non-linear problems in least squares", 1944; D. W. Marquardt, 1963), with
 * differences for the slopes.
 */
final class LeastSquares {
    private static final int MOST_STEPS = 60;
    private static final double SAME = 1e-9;

    /** The residuals at a point; as many at every point. */
    @FunctionalInterface
    interface Residuals {
        double[] at(double[] point);
    }

    private final Residuals residuals;
    private final double[] steps;

    /** @param steps for the differences, one a parameter */
    LeastSquares(Residuals residuals, double[] steps) {
        this.residuals = residuals;
        this.steps = steps;
    }

    /** @param cost half the sum of squares */
    record Found(double[] point, double cost) {}

    Found from(double[] start) {
        double[] point = start.clone();
        double[] now = residuals.at(point);
        double cost = cost(now);
        double damping = 1e-3;
        for (int step = 0; step < MOST_STEPS && damping < 1e9; step++) {
            double[][] slopes = slopes(point);
            double[][] normal = normal(slopes);
            double[] down = downhill(slopes, now);
            double[] next = point.clone();
            double[] move = solve(damped(normal, damping), down);
            for (int i = 0; i < next.length; i++) next[i] += move[i];
            double[] there = residuals.at(next);
            double better = cost(there);
            if (!(better < cost)) {
                damping *= 10;
                continue;
            }
            boolean settled = cost - better <= SAME * (1 + cost);
            point = next;
            now = there;
            cost = better;
            damping = Math.max(1e-9, damping / 10);
            if (settled) break;
        }
        return new Found(point, cost);
    }

    private static double cost(double[] values) {
        return Arrays.stream(values).map(v -> v * v).sum() / 2;
    }

    /** By residual and parameter. */
    private double[][] slopes(double[] point) {
        return slopes(residuals, point, steps);
    }

    static double[][] slopes(Residuals of, double[] point, double[] steps) {
        double[][] slopes = new double[of.at(point).length][point.length];
        for (int j = 0; j < point.length; j++) {
            double[] moved = point.clone();
            moved[j] = point[j] + steps[j];
            double[] up = of.at(moved);
            moved[j] = point[j] - steps[j];
            double[] down = of.at(moved);
            for (int i = 0; i < slopes.length; i++) slopes[i][j] = (up[i] - down[i]) / (2 * steps[j]);
        }
        return slopes;
    }

    private static double[][] normal(double[][] slopes) {
        int n = slopes[0].length;
        double[][] normal = new double[n][n];
        for (double[] row : slopes) {
            for (int i = 0; i < n; i++) for (int j = 0; j < n; j++) normal[i][j] += row[i] * row[j];
        }
        return normal;
    }

    private static double[] downhill(double[][] slopes, double[] values) {
        double[] down = new double[slopes[0].length];
        for (int i = 0; i < values.length; i++) {
            for (int j = 0; j < down.length; j++) down[j] -= slopes[i][j] * values[i];
        }
        return down;
    }

    private static double[][] damped(double[][] normal, double damping) {
        double[][] damped = new double[normal.length][];
        for (int i = 0; i < normal.length; i++) {
            damped[i] = normal[i].clone();
            damped[i][i] += damping * Math.max(normal[i][i], SAME);
        }
        return damped;
    }

    /** How the parameters may vary together where the residuals are in units of their own spread: their covariances. */
    double[][] covariance(double[] point) {
        double[][] normal = damped(normal(slopes(point)), SAME);
        int n = point.length;
        double[][] inverse = new double[n][n];
        for (int j = 0; j < n; j++) {
            double[] unit = new double[n];
            unit[j] = 1;
            double[] column = solve(normal, unit);
            for (int i = 0; i < n; i++) inverse[i][j] = column[i];
        }
        return inverse;
    }

    /** By elimination; the matrix is symmetric and positive. */
    private static double[] solve(double[][] matrix, double[] right) {
        int n = right.length;
        double[][] a = new double[n][];
        for (int i = 0; i < n; i++) a[i] = matrix[i].clone();
        double[] b = right.clone();
        for (int k = 0; k < n; k++) {
            for (int i = k + 1; i < n; i++) {
                double factor = a[i][k] / a[k][k];
                for (int j = k; j < n; j++) a[i][j] -= factor * a[k][j];
                b[i] -= factor * b[k];
            }
        }
        for (int k = n - 1; k >= 0; k--) {
            for (int j = k + 1; j < n; j++) b[k] -= a[k][j] * b[j];
            b[k] /= a[k][k];
        }
        return b;
    }
}
