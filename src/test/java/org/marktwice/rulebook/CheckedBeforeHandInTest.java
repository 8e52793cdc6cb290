package org.marktwice.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.marktwice.bench.Action;
import org.marktwice.bench.Action.Datum;
import org.marktwice.bench.Marker;
import org.marktwice.timber.Surface;

class CheckedBeforeHandInTest {
    private final Rule rule = new CheckedBeforeHandIn();

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
    void handedInWithoutAMeasurementIsWrong() {
        SetJob job = SetJob.porchShelf()
                .without(a -> a instanceof Action.Measure m && m.board().equals("A"));

        assertThat(job.about("A", rule).verdict()).isEqualTo(Verdict.WRONG);
        assertThat(job.about("B", rule).verdict()).isEqualTo(Verdict.SOUND);
    }

    @Test
    void beforeTheHandInItIsStillOpen() {
        SetJob job = SetJob.porchShelf()
                .without(a -> a instanceof Action.Measure m && m.board().equals("A"))
                .notHandedIn();

        assertThat(job.about("A", rule).verdict()).isEqualTo(Verdict.OPEN);
    }

    @Test
    void measuredBeforeTheLastLineDoesNotCount() {
        SetJob job = SetJob.porchShelf()
                .with(t -> new Action.Line(
                        t,
                        "A",
                        Surface.FACE_1,
                        Surface.EDGE_1,
                        new Datum.End(Surface.END_1),
                        150.0,
                        null,
                        Marker.PENCIL));

        assertThat(job.about("A", rule).verdict()).isEqualTo(Verdict.WRONG);
    }
}
