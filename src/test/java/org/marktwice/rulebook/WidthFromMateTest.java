package org.marktwice.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.marktwice.timber.Shape;

class WidthFromMateTest {
    private final Rule rule = new WidthFromMate();

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

    /** The shelf is 17.6 mm thick where 18 is drawn. */
    private static SetJob thinShelf() {
        return SetJob.porchShelf(Shape.TRUE, 17.6);
    }

    @Test
    void struckFromTheMateItselfItIsSoundWhateverTheStuffMeasures() {
        assertThat(thinShelf().judgedBy(rule)).extracting(Finding::verdict).containsOnly(Verdict.SOUND);
    }

    @ParameterizedTest
    @CsvSource({
        "17.7, SOUND, says.sound",
        "18, CLOSE, says.close",
        "18.4, WRONG, says.wrong-wide",
        "16.8, WRONG, says.wrong-tight",
    })
    void measuredItIsHeldAgainstTheActualMate(double wide, Verdict verdict, String says) {
        Finding finding = thinShelf()
                .lines("A", l -> l.mate() != null ? SetJob.at(l, wide) : l)
                .about("A", rule);

        assertThat(finding.verdict()).isEqualTo(verdict);
        assertThat(finding.says().key()).isEqualTo(says);
        assertThat(SetJob.figure(finding)).isEqualTo(Math.abs(wide - 17.6), within(1e-6));
    }

    @Test
    void theSentenceNamesTheBoardAndWhatItMeasures() {
        SetJob job = thinShelf().lines("A", l -> l.mate() != null ? SetJob.at(l, 18.4) : l);

        assertThat(job.told(job.about("A", rule)))
                .isEqualTo("The housing for the Shelf is 18.4 mm wide on board A, but board D measures 17.6 mm:"
                        + " it will gape by 0.8 mm."
                        + " → Hold board D to the first line and strike the second one from it.");
    }
}
