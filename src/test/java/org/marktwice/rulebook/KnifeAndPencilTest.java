package org.marktwice.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.marktwice.bench.Action;
import org.marktwice.bench.Action.Datum;
import org.marktwice.bench.Marker;
import org.marktwice.timber.Surface;

class KnifeAndPencilTest {
    private final Rule rule = new KnifeAndPencil();

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

    private static Action.Line with(Action.Line l, Marker marker) {
        return new Action.Line(l.t(), l.board(), l.on(), l.square(), l.from(), l.at(), l.mate(), marker);
    }

    @Test
    void aShoulderInPencilIsWrong() {
        SetJob job = SetJob.porchShelf().lines("A", l -> l.mate() != null ? with(l, Marker.PENCIL) : l);
        Finding finding = job.about("A", rule);

        assertThat(finding.verdict()).isEqualTo(Verdict.WRONG);
        assertThat(job.told(finding))
                .startsWith("On board A 1 line that a saw or a chisel works to is only in pencil, on face 1 for one.");
    }

    @Test
    void aKnifeLineThatNothingIsCutToIsWrongAndAPencilLineIsNot() {
        for (Marker marker : Marker.values()) {
            Finding finding = SetJob.porchShelf()
                    .with(t -> new Action.Line(
                            t, "A", Surface.FACE_1, Surface.EDGE_1, new Datum.End(Surface.END_1), 150.0, null, marker))
                    .about("A", rule);

            assertThat(finding.verdict()).isEqualTo(marker == Marker.KNIFE ? Verdict.WRONG : Verdict.SOUND);
        }
    }
}
