package org.marktwice.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.marktwice.bench.Action;

class WasteShownTest {
    private final Rule rule = new WasteShown();

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

    /** Between the upper line of the housing and where the board is cut off at its bottom. */
    @Test
    void shadedBesideTheCutItIsOnTheWrongSideOfTheLine() {
        SetJob job = SetJob.porchShelf();
        int trim = job.attempt().actions().indexOf(job.measured("A", 0)) + 1;
        SetJob beside =
                job.changing(a -> a instanceof Action.Waste w && w.board().equals("A")
                        ? new Action.Waste(w.t(), w.board(), w.joint(), w.between(), trim)
                        : a);
        Finding finding = beside.about("A", rule);

        assertThat(finding.verdict()).isEqualTo(Verdict.WRONG);
        assertThat(finding.subject().joint()).isEqualTo("left-housing");
        assertThat(beside.told(finding)).contains("is shaded on board A up to the line of step " + trim);
        assertThat(beside.about("B", rule).verdict()).isEqualTo(Verdict.SOUND);
    }

    @Test
    void shadedFromALineThatWasCarriedRoundItIsAsGood() {
        SetJob job = SetJob.porchShelf();
        SetJob carried =
                job.changing(a -> a instanceof Action.Waste w && w.board().equals("A")
                        ? new Action.Waste(w.t(), w.board(), w.joint(), w.between() + 1, w.and() + 1)
                        : a);

        assertThat(carried.about("A", rule).verdict()).isEqualTo(Verdict.SOUND);
    }

    @Test
    void linesFarFromTheDrawingAreItsOwnAllTheSame() {
        SetJob job = SetJob.porchShelf();
        Action.Line first = job.measured("A", 1);

        assertThat(job.lines("A", l -> l.equals(first) ? SetJob.at(l, 180) : l)
                        .about("A", rule)
                        .verdict())
                .isEqualTo(Verdict.SOUND);
    }
}
