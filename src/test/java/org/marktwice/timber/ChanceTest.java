package org.marktwice.timber;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ChanceTest {
    /** Java's own class of that kind uses the same published algorithm. */
    @ParameterizedTest
    @ValueSource(longs = {0, 1, -1, 7, Long.MIN_VALUE, 0x5DEECE66DL})
    void bitsAreThoseOfThePublishedGenerator(long seed) {
        Chance ours = Chance.of(seed);
        SplittableRandom theirs = new SplittableRandom(seed);
        for (int i = 0; i < 1000; i++) assertThat(ours.bits()).isEqualTo(theirs.nextLong());
        Chance split = ours.split();
        SplittableRandom theirSplit = theirs.split();
        for (int i = 0; i < 1000; i++) {
            assertThat(split.bits()).isEqualTo(theirSplit.nextLong());
            assertThat(ours.bits()).isEqualTo(theirs.nextLong());
        }
    }

    @Test
    void numbersKeepWithinTheirEndsAndReachThem() {
        Chance chance = Chance.of(3);
        int[] seen = new int[7];
        for (int i = 0; i < 7000; i++) {
            assertThat(chance.share()).isBetween(0.0, Math.nextDown(1.0));
            assertThat(chance.between(-2, 5)).isBetween(-2.0, 5.0);
            seen[chance.whole(-3, 3) + 3]++;
        }
        for (int count : seen) assertThat(count).isBetween(850, 1150);
    }

    @Test
    void sharesAreMet() {
        Chance chance = Chance.of(4);
        int hits = 0;
        for (int i = 0; i < 10_000; i++) if (chance.with(0.3)) hits++;
        assertThat(hits).isBetween(2800, 3200);
    }

    @ParameterizedTest
    @CsvSource({"0.04, 0.0", "-0.04, 0.0", "0.16, 0.2", "-3.27, -3.3", "12.3, 12.3", "0.25, 0.2"})
    void tenthsAreWrittenWithOneDecimal(double value, String text) {
        assertThat(Double.toString(Chance.tenth(value))).isEqualTo(text);
    }
}
