package org.marktwice.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.marktwice.bench.Action;
import org.marktwice.timber.Surface;

class GoesTogetherTest {
    private final Rule rule = new GoesTogether();

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

    /**
     * The upper housing on the right is 10 mm too high and keeps its width, so that the whole right upright is forced off
     * its place: the other joints have all the room that they need, and blame goes where it belongs.
     */
    @Test
    void aJointForcedByAnotherIsNotCalledTooTight() {
        SetJob job = SetJob.twoShelves();
        List<Finding> findings =
                job.lines("B", l -> isAt(l, 200) ? SetJob.at(l, 210) : l).judgedBy(rule);

        assertThat(findings).extracting(f -> f.says().key()).contains("says.wrong-place");
        List<Finding> forced = findings.stream()
                .filter(f -> f.verdict() != Verdict.SOUND && !f.says().key().equals("says.wrong-place"))
                .toList();
        assertThat(forced).isNotEmpty().allSatisfy(f -> {
            assertThat(f.says().key()).isEqualTo("says.wrong-forced");
            assertThat(job.told(f))
                    .contains("has room enough by itself")
                    .contains("other joints")
                    .contains("the housing for the Upper shelf");
        });
    }

    /** A housing too narrow stays to blame for itself, wherever the other joints hold its parts. */
    @Test
    void aJointTooTightByItselfIsCalledSoThoughAnotherIsOutToo() {
        SetJob job = SetJob.twoShelves();
        Finding lowerLeft = job.lines("B", l -> isAt(l, 200) ? SetJob.at(l, 204) : l)
                .lines("A", l -> l.mate() != null ? SetJob.at(l, 16.4) : l)
                .judgedBy(rule)
                .get(0);

        assertThat(lowerLeft.says().key()).isIn("says.wrong-tight", "says.close");
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

    private static boolean isAt(Action.Line l, double at) {
        return l.at() != null && l.at() == at;
    }

    private static boolean isHousing(Action.Line l) {
        return l.on() == Surface.FACE_1 && l.at() != null && l.at() == 80;
    }
}
