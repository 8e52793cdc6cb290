package org.marktwice.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GapsTest {
    private final Rule rule = new Gaps();

    @Test
    void whatACarefulHandDoesIsSound() {
        assertThat(SetJob.porchShelf().verdicts(rule)).containsOnly(Verdict.SOUND);
    }

    @Test
    void beforeABoardLiesAnywhereItIsOpen() {
        assertThat(SetJob.porchShelf().unturned().verdicts(rule)).containsOnly(Verdict.OPEN);
    }

    @Test
    void beforeAnythingIsStruckItIsOpen() {
        assertThat(SetJob.porchShelf().blank().verdicts(rule)).containsOnly(Verdict.OPEN);
    }

    /** The shelf is 18 thick, and gaps may be 1 mm. */
    @ParameterizedTest
    @CsvSource({"18.4, SOUND", "18.8, CLOSE", "19.5, WRONG"})
    void aHousingTooWideGapes(double wide, Verdict verdict) {
        SetJob job = SetJob.porchShelf().lines("A", l -> l.mate() != null ? SetJob.at(l, wide) : l);
        Finding finding = job.judgedBy(rule).get(0);

        assertThat(finding.verdict()).isEqualTo(verdict);
        assertThat(SetJob.figure(finding)).isEqualTo(wide - 18, within(1e-3));
        if (verdict == Verdict.WRONG) {
            assertThat(job.told(finding)).startsWith("The housing for the Shelf gapes by 1.5 mm; 1 mm is allowed.");
        }
    }
}
