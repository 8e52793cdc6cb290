package org.marktwice.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.marktwice.bench.Action;

class OverallSizesTest {
    private final Rule rule = new OverallSizes();

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

    /** The shelf is drawn 476 long, the job 500 across. */
    @ParameterizedTest
    @CsvSource({"476.8, SOUND, says.sound", "478, WRONG, says.wrong-large", "473, WRONG, says.wrong-small"})
    void aShelfOfTheWrongLengthMakesAJobOfTheWrongSize(double length, Verdict verdict, String says) {
        SetJob job = SetJob.porchShelf();
        Action.Line trim = job.measured("D", 0);
        SetJob out = job.lines("D", l -> l.equals(trim) ? SetJob.at(l, length) : l);

        assertThat(out.judgedBy(rule)).hasSize(3);
        Finding across = out.judgedBy(rule).get(0);
        assertThat(across.verdict()).isEqualTo(verdict);
        assertThat(across.says().key()).isEqualTo(says);
        assertThat(SetJob.figure(across)).isEqualTo(Math.abs(length - 476), within(1e-3));
    }

    @Test
    void theSentenceSaysWhereToLook() {
        SetJob job = SetJob.porchShelf();
        Action.Line trim = job.measured("D", 0);
        SetJob out = job.lines("D", l -> l.equals(trim) ? SetJob.at(l, 478) : l);

        assertThat(out.told(out.judgedBy(rule).get(0)))
                .isEqualTo("The job comes out 502 mm across, 2 mm more than the 500 mm that are drawn."
                        + " → Look for the 2 mm in the parts that lead through the job across:"
                        + " their lengths and the depths of their joints.");
    }
}
