package org.marktwice.timber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MoistureTest {
    /** Wood Handbook eq. 4-9. */
    @Test
    void sugarMapleShrinksTangentially5point94PercentTo12Percent() {
        Species maple = SpeciesTable.byId("sugar-maple").orElseThrow();
        assertThat(Moisture.shrinkage(maple.tangential(), 12)).isCloseTo(5.94, within(0.005));
    }

    @ParameterizedTest
    @CsvSource({"0, 9.9", "15, 4.95", "30, 0", "45, 0"})
    void shrinkageRunsFromAllAtOvenDryToNoneAboveThirtyPercent(double moisture, double percent) {
        assertThat(Moisture.shrinkage(9.9, moisture)).isCloseTo(percent, within(1e-12));
    }

    @Test
    void ratioIsOfTheTwoSizes() {
        assertThat(Moisture.ratio(7.7, 30, 12)).isCloseTo(1 - 0.0462, within(1e-12));
        assertThat(Moisture.ratio(7.7, 18, 9) * Moisture.ratio(7.7, 9, 18)).isCloseTo(1, within(1e-12));
        assertThat(Moisture.ratio(7.7, 9, 18)).as("swelling").isGreaterThan(1);
        assertThat(Moisture.ratio(7.7, 40, 31)).as("green").isEqualTo(1);
    }

    /** Wood Handbook ch. 13, worked example; species and starting size from memory. */
    @Test
    void boardOf232From8To11PercentGrows1point7() {
        double grown = Moisture.movement(232, 0.00245, 8, 11);
        assertThat(grown).isCloseTo(1.7, within(0.05));
        assertThat(232 + grown).isCloseTo(233.7, within(0.05));
    }

    @Test
    void coefficientAgreesWithTheRatioAboutTenPercent() {
        double exact = (Moisture.ratio(9.9, 10, 12) - 1) / 2;
        assertThat(Moisture.changeCoefficient(9.9)).isCloseTo(exact, within(1e-12));
    }
}
