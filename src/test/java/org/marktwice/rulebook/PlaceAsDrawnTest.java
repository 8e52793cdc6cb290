package org.marktwice.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.marktwice.bench.Action;

class PlaceAsDrawnTest {
    private final Rule rule = new PlaceAsDrawn();

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

    /** The housing of the left upright is drawn 80 from the bottom; the size tolerance is 1 mm. */
    @ParameterizedTest
    @CsvSource({
        "80.4, SOUND, says.sound",
        "79.6, SOUND, says.sound",
        "80.8, CLOSE, says.close",
        "83, WRONG, says.wrong",
        "90, WRONG, says.wrong-ten",
        "70, WRONG, says.wrong-ten",
        "86, WRONG, says.wrong",
    })
    void aLineIsHeldAgainstTheDrawing(double at, Verdict verdict, String says) {
        SetJob job = SetJob.porchShelf();
        Action.Line first = job.measured("A", 1);
        Finding finding =
                job.lines("A", l -> l.equals(first) ? SetJob.at(l, at) : l).about("A", rule);

        assertThat(finding.verdict()).isEqualTo(verdict);
        if (verdict != Verdict.SOUND) {
            assertThat(finding.says().key()).isEqualTo(says);
            assertThat(SetJob.figure(finding)).isEqualTo(Math.abs(at - 80), within(1e-6));
            assertThat(finding.subject().joint()).isEqualTo("left-housing");
        }
    }

    /** Drawn 97 from the bottom and set out 79. */
    @Test
    void exchangedFiguresAreRecognised() {
        SetJob job = SetJob.porchShelf();
        Action.Line trim = job.measured("D", 0);
        Finding finding =
                job.lines("D", l -> l.equals(trim) ? SetJob.at(l, 467) : l).about("D", rule);

        assertThat(finding.says().key()).isEqualTo("says.wrong-swapped");
        assertThat(job.told(finding))
                .isEqualTo(
                        "A line on board D lies 9 mm from where the drawing has it: 467 mm from end 1, and not 476 mm."
                                + " Two figures were exchanged. → Strike it 476 mm from end 1.");
    }
}
