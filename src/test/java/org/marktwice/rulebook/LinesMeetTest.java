package org.marktwice.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.marktwice.bench.Action;
import org.marktwice.timber.Shape;
import org.marktwice.timber.Surface;

class LinesMeetTest {
    private final Rule rule = new LinesMeet();

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

    /** The first line squared from a back edge that tapers by so much in 306: at the far arris of 120 mm it misses. */
    @ParameterizedTest
    @CsvSource({"0.5, SOUND", "1, CLOSE", "3, WRONG"})
    void aLineFromATaperedEdgeMissesTheOneFromAMarkedSurface(double taper, Verdict verdict) {
        SetJob job = SetJob.porchShelf(new Shape(0, 0, 0, taper, 0, Map.of()), 18);
        // face 2 is squared from the back edge, the edges are carried on from face 1
        Finding finding = job.lines("A", l -> l.on() == Surface.FACE_2 ? SetJob.square(l, Surface.EDGE_2) : l)
                .about("A", rule);

        assertThat(finding.verdict()).isEqualTo(verdict);
        assertThat(SetJob.figure(finding)).isEqualTo(120 * taper / 306, within(0.03));
    }

    @Test
    void alineNotYetCarriedRoundIsOpen() {
        assertThat(SetJob.porchShelf()
                        .without(a -> a instanceof Action.Line l && l.on() == Surface.EDGE_2)
                        .about("A", rule)
                        .verdict())
                .isEqualTo(Verdict.OPEN);
    }
}
