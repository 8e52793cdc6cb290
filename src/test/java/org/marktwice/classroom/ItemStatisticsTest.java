package org.marktwice.classroom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.math3.stat.correlation.PearsonsCorrelation;
import org.apache.commons.math3.stat.descriptive.moment.Variance;
import org.apache.commons.math3.stat.descriptive.rank.Percentile;
import org.apache.commons.math3.stat.descriptive.rank.Percentile.EstimationType;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Item statistics against a textbook's example, against published data, and against a statistics library. */
class ItemStatisticsTest {
    /**
     * Ten persons at five items: D. J. Denis, "Applied Univariate, Bivariate, and Multivariate Statistics" (Wiley), the
     * example of Cronbach's alpha; it prints alpha 0.633, the items' means and deviations, and 0.712 as the corrected
     * item-total correlation of the first item.
     */
    private static final double[][] TEXTBOOK = {
        {10, 12, 15, 11, 12},
        {12, 18, 12, 12, 1},
        {8, 16, 14, 14, 4},
        {6, 8, 16, 8, 6},
        {4, 7, 8, 7, 5},
        {6, 6, 3, 7, 3},
        {3, 4, 6, 5, 8},
        {7, 3, 7, 9, 9},
        {8, 9, 4, 10, 10},
        {9, 5, 6, 11, 12}
    };

    private static double[] column(double[][] scores, int j) {
        return Arrays.stream(scores).mapToDouble(row -> row[j]).toArray();
    }

    private static double[][] most(double[][] scores, double most) {
        return Arrays.stream(scores)
                .map(row -> Arrays.stream(row).map(v -> most).toArray())
                .toArray(double[][]::new);
    }

    @Test
    void theTextbooksAlphaAndItemsComeOut() {
        assertThat(ItemStatistics.alpha(TEXTBOOK)).hasValueCloseTo(0.633, within(0.0005));
        double[] means = {7.3, 8.8, 9.1, 9.4, 7.0};
        double[] deviations = {2.71006, 5.05085, 4.74810, 2.71621, 3.80058};
        for (int j = 0; j < 5; j++) {
            assertThat(ItemStatistics.mean(column(TEXTBOOK, j))).isEqualTo(means[j], within(1e-9));
            assertThat(Math.sqrt(ItemStatistics.variance(column(TEXTBOOK, j)))).isEqualTo(deviations[j], within(5e-6));
        }
        assertThat(ItemStatistics.discrimination(TEXTBOOK, most(TEXTBOOK, 20), 0))
                .hasValueCloseTo(0.712, within(0.0006));
    }

    /**
     * Section 6 of the Law School Admission Test, 1000 persons at five items, as published by R. D. Bock and M.
     * Lieberman, "Fitting a response model for n dichotomously scored items", Psychometrika 35 (1970). The figures that
     * are expected are those usually reported for it; data and figures from memory.
     */
    private static double[][] lawSchool() {
        Map<String, Integer> patterns = new LinkedHashMap<>();
        String counts = "00000:3 00001:6 00010:2 00011:11 00100:1 00101:1 00110:3 00111:4 01000:1 01001:8 01011:16"
                + " 01101:3 01110:2 01111:15 10000:10 10001:29 10010:14 10011:81 10100:3 10101:28 10110:15 10111:80"
                + " 11000:16 11001:56 11010:21 11011:173 11100:11 11101:61 11110:28 11111:298";
        for (String one : counts.split(" ")) patterns.put(one.substring(0, 5), Integer.parseInt(one.substring(6)));
        return patterns.entrySet().stream()
                .flatMap(e -> Stream.generate(() ->
                                e.getKey().chars().mapToDouble(c -> c - '0').toArray())
                        .limit(e.getValue()))
                .toArray(double[][]::new);
    }

    @Test
    void thePublishedTestsFacilitiesCorrelationsAndAlphaComeOut() {
        double[][] scores = lawSchool();
        assertThat(scores).hasNumberOfRows(1000);
        double[] facilities = {0.924, 0.709, 0.553, 0.763, 0.870};
        double[] restCorrelations = {0.1128, 0.1532, 0.1728, 0.1444, 0.1216};
        for (int j = 0; j < 5; j++) {
            assertThat(ItemStatistics.mean(column(scores, j))).isEqualTo(facilities[j], within(1e-9));
            assertThat(ItemStatistics.discrimination(scores, most(scores, 1), j))
                    .hasValueCloseTo(restCorrelations[j], within(5e-5));
        }
        assertThat(ItemStatistics.alpha(scores)).hasValueCloseTo(0.295, within(5e-4));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void theLibraryAgrees(long seed) {
        Random random = new Random(seed);
        int n = 2 + random.nextInt(40);
        double[] x = random.doubles(n, -5, 20).toArray();
        double[] y = IntStream.range(0, n)
                .mapToDouble(i -> x[i] * (seed - 5) + random.nextGaussian() * 10)
                .toArray();

        assertThat(ItemStatistics.correlation(x, y))
                .hasValueCloseTo(new PearsonsCorrelation().correlation(x, y), within(1e-12));
        assertThat(ItemStatistics.variance(x)).isEqualTo(new Variance().evaluate(x), within(1e-10));
        Percentile percentile = new Percentile().withEstimationType(EstimationType.R_7);
        for (double share : new double[] {0.1, 0.25, 0.5, 0.75, 0.9, 1}) {
            assertThat(ItemStatistics.quantile(x, share)).isEqualTo(percentile.evaluate(x, share * 100), within(1e-9));
        }
    }

    /** Alpha by another road: k·c̄ / (v̄ + (k−1)·c̄), with the library's variances and covariances. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void alphaIsThatOfTheCovariances(long seed) {
        Random random = new Random(seed);
        int k = 2 + random.nextInt(6);
        double[][] scores = new double[5 + random.nextInt(20)][k];
        for (double[] row : scores) {
            double able = random.nextGaussian();
            for (int j = 0; j < k; j++) row[j] = able + random.nextGaussian();
        }
        var covariances = new org.apache.commons.math3.stat.correlation.Covariance(scores).getCovarianceMatrix();
        double variances = covariances.getTrace() / k;
        double all = 0;
        for (int i = 0; i < k; i++) for (int j = 0; j < k; j++) if (i != j) all += covariances.getEntry(i, j);
        double mean = all / (k * (k - 1));

        assertThat(ItemStatistics.alpha(scores))
                .hasValueCloseTo(k * mean / (variances + (k - 1) * mean), within(1e-10));
    }

    @Test
    void anItemThatWasNotPutToAllIsLeftOutOfAlpha() {
        double[][] holed = Arrays.stream(TEXTBOOK)
                .map(row -> IntStream.range(0, 6)
                        .mapToDouble(j -> j < 5 ? row[j] : Double.NaN)
                        .toArray())
                .toArray(double[][]::new);
        holed[3][5] = 7;

        assertThat(ItemStatistics.complete(holed)).containsExactly(0, 1, 2, 3, 4);
        assertThat(ItemStatistics.alpha(holed).orElseThrow())
                .isEqualTo(ItemStatistics.alpha(TEXTBOOK).orElseThrow(), within(1e-12));
    }

    @Test
    void whereNothingVariesThereIsNoTelling() {
        double[][] alike = {{0.1 + 0.2, 1}, {0.3, 1}, {0.3, 1}};
        assertThat(ItemStatistics.alpha(alike)).isEmpty();
        assertThat(ItemStatistics.discrimination(alike, most(alike, 1), 0)).isEmpty();
        assertThat(ItemStatistics.alpha(new double[][] {{1, 2}})).isEmpty();
        assertThat(ItemStatistics.alpha(new double[][] {{1}, {2}})).isEmpty();
        assertThat(ItemStatistics.alpha(new double[0][])).isEmpty();
        assertThat(ItemStatistics.correlation(new double[] {1}, new double[] {2}))
                .isEmpty();
        assertThat(ItemStatistics.quantile(new double[0], 0.5)).isNaN();
    }
}
