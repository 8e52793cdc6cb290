package org.marktwice.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.marktwice.bench.Action;
import org.marktwice.timber.Surface;

class GoesTogetherTest {
    private final Rule rule = new GoesTogether();

    @Test
    void whatACarefulHandDoesIsSound() {
        assertThat(SetJob.porchShelf().judgedBy(rule))
                .isNotEmpty()
                .extracting(Finding::verdict)
                .containsOnly(Verdict.SOUND);
    }

    @Test
    void beforeABoardLiesAnywhereItIsOpen() {
        assertThat(SetJob.porchShelf().unturned().judgedBy(rule))
                .isNotEmpty()
                .extracting(Finding::verdict)
                .containsOnly(Verdict.OPEN);
    }

    @Test
    void beforeAnythingIsStruckItIsOpen() {
        assertThat(SetJob.porchShelf().blank().judgedBy(rule))
                .isNotEmpty()
                .extracting(Finding::verdict)
                .containsOnly(Verdict.OPEN);
    }

    @Test
    void aHousingInTheWrongPlaceIsWrong() {
        SetJob job = SetJob.porchShelf();
        Action.Line first = job.measured("A", 1);
        SetJob out = job.lines("A", l -> l.equals(first) ? SetJob.at(l, 90) : l);
        Finding finding = out.judgedBy(rule).get(0);

        assertThat(finding.verdict()).isEqualTo(Verdict.WRONG);
        assertThat(finding.subject()).isEqualTo(new Finding.Subject("A", "upright-left", "left-housing"));
        assertThat(out.told(finding))
                .startsWith("The housing for the Shelf lies 10 mm along board A from where the drawing has it");
        assertThat(out.judgedBy(rule).get(1).verdict()).isEqualTo(Verdict.SOUND);
    }

    /** The shelf is 18 thick: half of what the housing is too narrow clashes on either side. */
    @ParameterizedTest
    @CsvSource({"17.6, SOUND", "16.6, CLOSE", "15, WRONG"})
    void aHousingTooNarrowDoesNotGoTogether(double wide, Verdict verdict) {
        Finding finding = SetJob.porchShelf()
                .lines("A", l -> l.mate() != null ? SetJob.at(l, wide) : l)
                .judgedBy(rule)
                .get(0);

        assertThat(finding.verdict()).isEqualTo(verdict);
    }

    @Test
    void linesOnTheFarFaceWouldBeCutOnTheWrongSide() {
        SetJob job = SetJob.porchShelf()
                .lines(
                        "A",
                        l -> l.on() == Surface.FACE_1 && l != null && l.at() == null || isHousing(l)
                                ? new Action.Line(
                                        l.t(),
                                        l.board(),
                                        Surface.FACE_2,
                                        l.square(),
                                        l.from(),
                                        l.at(),
                                        l.mate(),
                                        l.with())
                                : l);
        Finding finding = job.judgedBy(rule).get(0);

        assertThat(finding.verdict()).isEqualTo(Verdict.WRONG);
        assertThat(finding.says().key()).isEqualTo("says.wrong-side");
    }

    private static boolean isHousing(Action.Line l) {
        return l.on() == Surface.FACE_1 && l.at() != null && l.at() == 80;
    }
}
