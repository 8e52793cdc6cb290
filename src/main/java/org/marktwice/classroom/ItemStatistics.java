package org.marktwice.classroom;

import java.util.Arrays;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * The figures of classical test theory over a table of scores, a row a learner, a column an item; {@link Double#NaN}
 * where an item was not put to a learner. Variances and correlations are of the sample (n − 1). For the terms see any
 * textbook of educational measurement; alpha is from L. J. Cronbach, "Coefficient alpha and the internal structure of
 * tests", Psychometrika 16 (1951).
 */
public final class ItemStatistics {
    private ItemStatistics() {}

    public static double mean(double[] values) {
        return Arrays.stream(values).average().orElse(Double.NaN);
    }

    /** Of the sample; NaN for fewer than two values. */
    public static double variance(double[] values) {
        if (values.length < 2) return Double.NaN;
        double mean = mean(values);
        double sum = 0;
        for (double value : values) sum += (value - mean) * (value - mean);
        return sum / (values.length - 1);
    }

    /** The value below which a share of the values lies, between neighbours in proportion (the usual spreadsheet's way). */
    public static double quantile(double[] values, double share) {
        if (values.length == 0) return Double.NaN;
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        double at = share * (sorted.length - 1);
        int below = (int) Math.floor(at);
        int above = Math.min(below + 1, sorted.length - 1);
        return sorted[below] + (at - below) * (sorted[above] - sorted[below]);
    }

    /** Pearson's r; empty where one of the two doesn't vary, or there are fewer than two pairs. */
    public static OptionalDouble correlation(double[] x, double[] y) {
        if (x.length != y.length) throw new IllegalArgumentException("not pairs");
        double meanX = mean(x);
        double meanY = mean(y);
        double xx = 0;
        double yy = 0;
        double xy = 0;
        for (int i = 0; i < x.length; i++) {
            xx += (x[i] - meanX) * (x[i] - meanX);
            yy += (y[i] - meanY) * (y[i] - meanY);
            xy += (x[i] - meanX) * (y[i] - meanY);
        }
        if (x.length < 2 || constant(xx, x) || constant(yy, y)) return OptionalDouble.empty();
        return OptionalDouble.of(Math.max(-1, Math.min(1, xy / Math.sqrt(xx * yy))));
    }

    /** Whether the squares add up to no more than what rounding leaves of equal values. */
    private static boolean constant(double squares, double[] values) {
        double largest = 0;
        for (double value : values) largest = Math.max(largest, Math.abs(value));
        return squares <= values.length * Math.pow(largest * 1e-12, 2);
    }

    /**
     * How well one item tells the strong from the weak: the correlation of its scores with the same learners' scores on
     * the rest of the items. Where some items were not put to a learner, the rest counts as the share reached of what
     * could be reached.
     *
     * @param scores what each learner reached; NaN where the item was not put
     * @param most what each could have reached; 0 where the item was not put
     */
    public static OptionalDouble discrimination(double[][] scores, double[][] most, int item) {
        int[] put = IntStream.range(0, scores.length)
                .filter(i -> !Double.isNaN(scores[i][item]) && rest(most[i], item) > 0 && most[i][item] > 0)
                .toArray();
        double[] own = Arrays.stream(put)
                .mapToDouble(i -> scores[i][item] / most[i][item])
                .toArray();
        double[] others = Arrays.stream(put)
                .mapToDouble(i -> rest(scores[i], item) / rest(most[i], item))
                .toArray();
        return correlation(own, others);
    }

    private static double rest(double[] row, int item) {
        double sum = 0;
        for (int j = 0; j < row.length; j++) if (j != item && !Double.isNaN(row[j])) sum += row[j];
        return sum;
    }

    /** The items that were put to every learner. */
    public static int[] complete(double[][] scores) {
        if (scores.length == 0) return new int[0];
        return IntStream.range(0, scores[0].length)
                .filter(j -> Arrays.stream(scores).noneMatch(row -> Double.isNaN(row[j])))
                .toArray();
    }

    /**
     * Cronbach's alpha over the items that were put to every learner; empty with fewer than two learners or two such
     * items, or where the totals don't vary.
     */
    public static OptionalDouble alpha(double[][] scores) {
        int[] items = complete(scores);
        int k = items.length;
        if (k < 2 || scores.length < 2) return OptionalDouble.empty();
        double[] totals = Arrays.stream(scores)
                .mapToDouble(
                        row -> Arrays.stream(items).mapToDouble(j -> row[j]).sum())
                .toArray();
        double whole = variance(totals);
        if (constant(whole * (totals.length - 1), totals)) return OptionalDouble.empty();
        double parts = Arrays.stream(items)
                .mapToDouble(j -> variance(
                        Arrays.stream(scores).mapToDouble(row -> row[j]).toArray()))
                .sum();
        return OptionalDouble.of(k / (k - 1.0) * (1 - parts / whole));
    }
}
