package org.marktwice.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.marktwice.bench.Action;
import org.marktwice.scenario.Proportions;

class DepthAsSetTest {
    private final Rule rule = new DepthAsSet();

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

    /** The housing is drawn 6 mm deep in 18; the size tolerance is 1 mm, and a quarter to a half of the thickness holds. */
    @ParameterizedTest
    @CsvSource({"6.4, SOUND", "6.8, CLOSE", "8, CLOSE", "9.4, WRONG", "4.8, CLOSE", "4, WRONG"})
    void aSettingIsHeldAgainstTheDrawing(double set, Verdict verdict) {
        Finding finding = SetJob.porchShelf()
                .gauges("A", g -> new Action.Gauge(g.t(), g.board(), g.on(), g.fence(), set))
                .about("A", rule);

        assertThat(finding.verdict()).isEqualTo(verdict);
        assertThat(SetJob.figure(finding)).isEqualTo(Math.abs(set - 6), within(1e-6));
    }

    @Test
    void aWorkshopWithItsOwnProportionsJudgesByThem() {
        Proportions u = Proportions.USUAL;
        Proportions strict = new Proportions(
                new Proportions.Range(0.3, 1.0 / 3, 0.4),
                u.stop(),
                u.rebate(),
                u.haunch(),
                u.stub(),
                u.dowel(),
                u.chisels());
        SetJob job = SetJob.porchShelf()
                .practice(p -> p.with(strict))
                .gauges("A", g -> new Action.Gauge(g.t(), g.board(), g.on(), g.fence(), 8));

        Finding finding = job.about("A", rule);

        assertThat(finding.verdict()).isEqualTo(Verdict.WRONG);
        assertThat(job.told(finding))
                .contains(
                        "At 8 mm deep it isn't as strong as it should be: this workshop takes 5.4 mm to 7.2 mm here.");
    }

    @Test
    void gaugedFromTheBackItIsWrongWhateverItComesTo() {
        SetJob job = SetJob.porchShelf()
                .gauges(
                        "A",
                        g -> new Action.Gauge(
                                g.t(), g.board(), g.on(), g.fence().opposite(), 12));
        Finding finding = job.about("A", rule);

        assertThat(finding.verdict()).isEqualTo(Verdict.WRONG);
        assertThat(job.told(finding))
                .isEqualTo(
                        "The housing for the Shelf was gauged on board A with the fence on face 2, which is not marked."
                                + " Its line is 0 mm out here, and steps by whatever the stuff is thicker or thinner than drawn."
                                + " → Set the gauge to 6 mm and run its fence along face 1.");
    }
}
