package org.marktwice.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.marktwice.bench.Action;

class SquarenessTest {
    private final Rule rule = new Squareness();

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
    @CsvSource({"80.5, SOUND", "84, WRONG"})
    void aHousingHigherThanItsMateThrowsTheJobOutOfSquare(double at, Verdict verdict) {
        SetJob job = SetJob.porchShelf();
        Action.Line first = job.measured("B", 1);
        Finding finding = job.lines("B", l -> l.equals(first) ? SetJob.at(l, at) : l)
                .judgedBy(rule)
                .get(0);
        double up = at - 80;

        assertThat(finding.verdict()).isEqualTo(verdict);
        assertThat(SetJob.figure(finding))
                .isEqualTo(Math.abs(Math.hypot(500, 300 + up) - Math.hypot(500, 300 - up)), within(0.01));
    }
}
