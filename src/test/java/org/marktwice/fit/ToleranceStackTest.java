package org.marktwice.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.marktwice.Fixtures;
import org.marktwice.drawing.AnyJoint;
import org.marktwice.drawing.Drawing;
import org.marktwice.drawing.JobAxis;
import org.marktwice.fit.ToleranceStack.Link;
import org.marktwice.fit.ToleranceStack.Link.Of;

/** Sizes that add up: at worst, likely, and tried out. */
class ToleranceStackTest {
    private static ToleranceStack stack(double... plusMinus) {
        return new ToleranceStack(Arrays.stream(plusMinus)
                .mapToObj(t -> new Link("p", Of.LENGTH, 100, t, +1))
                .toList());
    }

    /** Textbook statistics: Σt and √Σt². The first row is the figure of four links of ±1; 3-4-5 and 5-12-13 are exact roots. */
    @ParameterizedTest
    @CsvSource({"'1 1 1 1', 4, 2", "'3 4', 7, 5", "'5 12', 17, 13", "'0.5', 0.5, 0.5", "'2 3 6', 11, 7"})
    void worstIsTheSumAndLikelyTheRootOfTheSquares(String links, double worst, double likely) {
        ToleranceStack stack = stack(
                Stream.of(links.split(" ")).mapToDouble(Double::parseDouble).toArray());

        assertThat(stack.worst()).isEqualTo(worst, within(1e-12));
        assertThat(stack.likely()).isEqualTo(likely, within(1e-12));
    }

    /** A law: likely is never more than worst, nor less than the largest link. */
    @Test
    void likelyLiesBetweenTheLargestLinkAndTheWorst() {
        Random random = new Random(4);
        for (int i = 0; i < 200; i++) {
            double[] t = random.doubles(1 + random.nextInt(6), 0, 3).toArray();
            ToleranceStack stack = stack(t);
            assertThat(stack.likely()).isBetween(Arrays.stream(t).max().orElseThrow() - 1e-9, stack.worst() + 1e-9);
        }
    }

    /** Sums of normal errors are normal, σ = likely / 3; shares and quantiles from the usual table of the normal distribution. */
    @Test
    void aTrialAgreesWithTheNormalDistribution() {
        double sigma = 2.0 / 3;
        ToleranceStack.Trial trial = stack(1, 1, 1, 1).trial(40_000, 7);

        assertThat(trial.mean()).isEqualTo(0, within(0.02));
        assertThat(trial.deviation()).isEqualTo(sigma, within(0.01));
        assertThat(trial.within(2)).isEqualTo(0.9973, within(0.002));
        assertThat(trial.below(0.05)).isEqualTo(-1.6449 * sigma, within(0.02));
        assertThat(trial.below(0.5)).isEqualTo(0, within(0.02));
        assertThat(trial.below(0.9)).isEqualTo(1.2816 * sigma, within(0.02));
        // bars of 0.5 mm are 0.75 σ wide
        double[] shares = {0.01222, 0.98778 - 0.93319, 0.93319 - 0.77337, 0.77337 - 0.5};
        int[] bars = trial.bars(8, 2);
        for (int i = 0; i < 8; i++) {
            double expected = 40_000 * shares[Math.min(i, 7 - i)];
            assertThat((double) bars[i]).isEqualTo(expected, within(4 * Math.sqrt(expected)));
        }
        assertThat(IntStream.of(bars).sum()).isEqualTo(40_000);
    }

    @Test
    void aTrialIsTheSameForASeed() {
        assertThat(stack(1, 2).trial(500, 3).bars(11, 3))
                .isEqualTo(stack(1, 2).trial(500, 3).bars(11, 3));
        assertThat(stack(1, 2).trial(500, 3).bars(11, 3))
                .isNotEqualTo(stack(1, 2).trial(500, 4).bars(11, 3));
    }

    /** Through the porch shelf: what the housing leaves of the left upright, the shelf, what is left of the right one. */
    @Test
    void anOverallSizeIsTheSumOfWhatItIsMadeUpOf() {
        ToleranceStack across = ToleranceStack.of(Fixtures.porchShelfDrawing(), JobAxis.ACROSS, Tolerances.STANDARD)
                .orElseThrow();

        assertThat(across.nominal()).isEqualTo(500, within(1e-9));
        assertThat(across.links())
                .extracting(Link::part, Link::of, Link::size, Link::sign)
                .containsExactly(
                        tuple("upright-left", Of.THICKNESS, 18, +1),
                        tuple("upright-left", Of.GAUGED, 6, -1),
                        tuple("shelf", Of.LENGTH, 476, +1),
                        tuple("upright-right", Of.GAUGED, 6, -1),
                        tuple("upright-right", Of.THICKNESS, 18, +1));
        assertThat(across.worst()).isEqualTo(5);
        assertThat(across.likely()).isEqualTo(Math.sqrt(5), within(1e-12));
        assertThat(ToleranceStack.of(Fixtures.porchShelfDrawing(), JobAxis.HIGH, Tolerances.STRICT)
                        .orElseThrow()
                        .links())
                .hasSize(1);
    }

    private static org.assertj.core.groups.Tuple tuple(String part, Of of, double size, int sign) {
        return org.assertj.core.groups.Tuple.tuple(part, of, size, sign);
    }

    @ParameterizedTest
    @EnumSource(AnyJoint.Kind.class)
    void aChainAddsUpToTheSizeItIsFor(AnyJoint.Kind kind) {
        Random random = new Random(kind.ordinal());
        for (int i = 0; i < 20; i++) {
            Drawing drawing = AnyJoint.drawing(kind, random);
            for (JobAxis axis : JobAxis.values()) {
                ToleranceStack.of(drawing, axis, Tolerances.STANDARD)
                        .ifPresent(s -> assertThat(s.nominal())
                                .isEqualTo(drawing.overall().along(axis), within(0.02)));
            }
        }
    }

    @Test
    void presetsAreKnownByTheirIds() {
        assertThat(Tolerances.presets())
                .extracting(Tolerances::id)
                .isEqualTo(List.of(
                        "strict", "standard", "first-attempt", "iso-2768-f", "iso-2768-m", "iso-2768-c", "iso-2768-v"));
        assertThat(Tolerances.preset("iso-2768-m").orElseThrow().plusMinus(300)).isEqualTo(0.5);
        assertThat(Tolerances.preset("nothing")).isEmpty();
        assertThat(Tolerances.FIRST_ATTEMPT.plusMinus(7)).isEqualTo(2);
    }
}
