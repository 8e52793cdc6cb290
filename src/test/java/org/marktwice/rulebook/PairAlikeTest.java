package org.marktwice.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.marktwice.bench.Action;

class PairAlikeTest {
    private final Rule rule = new PairAlike();

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

    @ParameterizedTest
    @CsvSource({"80.4, SOUND", "80.8, CLOSE", "82, WRONG", "78, WRONG"})
    void theTwoUprightsAreHeldAgainstEachOther(double at, Verdict verdict) {
        SetJob job = SetJob.porchShelf();
        Action.Line first = job.measured("B", 1);
        SetJob apart = job.lines("B", l -> l.equals(first) ? SetJob.at(l, at) : l);
        Finding finding = apart.judgedBy(rule).get(0);

        assertThat(apart.judgedBy(rule)).hasSize(1);
        assertThat(finding.verdict()).isEqualTo(verdict);
        assertThat(SetJob.figure(finding)).isEqualTo(Math.abs(at - 80), within(1e-6));
    }

    @Test
    void bothOutAlikeArePairedAllTheSame() {
        SetJob job = SetJob.porchShelf();
        Action.Line one = job.measured("A", 1);
        Action.Line other = job.measured("B", 1);
        SetJob both = job.lines("A", l -> l.equals(one) ? SetJob.at(l, 85) : l)
                .lines("B", l -> l.equals(other) ? SetJob.at(l, 85) : l);

        assertThat(both.judgedBy(rule)).extracting(Finding::verdict).containsOnly(Verdict.SOUND);
    }
}
