package org.marktwice.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.marktwice.Fixtures;
import org.marktwice.bench.Action;
import org.marktwice.bench.Marker;
import org.marktwice.timber.Shape;
import org.marktwice.timber.Surface;

class StockOnReferenceTest {
    private final Rule rule = new StockOnReference();

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

    /** The upright tapers by 2 mm in 306: over its 120 mm a line squared from there is 0.8 mm out. */
    @Test
    void squaredFromATaperedBackEdgeALineIsOutByWhatTheTaperMakes() {
        SetJob job = SetJob.porchShelf(SetJob.tapered(), 18)
                .lines("A", l -> l.on() == Surface.FACE_1 ? SetJob.square(l, Surface.EDGE_2) : l);
        Finding finding = job.about("A", rule);

        assertThat(finding.verdict()).isEqualTo(Verdict.WRONG);
        assertThat(SetJob.figure(finding)).isEqualTo(120 * 2 / 306.0, within(0.02));
        assertThat(job.told(finding))
                .isEqualTo("Squared from edge 2, the line on face 1 of board A is 0.8 mm out of line across the board."
                        + " Of 12 lines 3 were struck from a surface that is not marked."
                        + " → Square it with the stock on edge 1.");
        assertThat(finding.evidence().surfaces()).contains(Surface.EDGE_2);
        assertThat(job.about("B", rule).verdict()).isEqualTo(Verdict.SOUND);
    }

    /** The bevel's stock on that edge puts its line as much out as a square's does. */
    @Test
    void aBevelIsHeldToTheMarkedSurfacesToo() {
        SetJob job = SetJob.porchShelf(SetJob.tapered(), 18)
                .with(t -> new Action.Bevel(
                        t,
                        "A",
                        Surface.FACE_1,
                        Surface.EDGE_2,
                        new Action.Datum.End(Surface.END_1),
                        200,
                        60,
                        Marker.PENCIL));
        Finding finding = job.about("A", rule);

        assertThat(finding.verdict()).isEqualTo(Verdict.WRONG);
        assertThat(SetJob.figure(finding)).isEqualTo(120 * 2 / 306.0, within(0.02));
        assertThat(job.told(finding))
                .startsWith(
                        "With the bevel's stock on edge 2, the line on face 1 of board A is 0.8 mm out across the board.")
                .endsWith("→ Bear the bevel's stock on edge 1.");
    }

    /** On a true board it does no harm, and is a bad habit. */
    @Test
    void whereItDoesNoHarmItIsClose() {
        SetJob job =
                SetJob.porchShelf().lines("A", l -> l.on() == Surface.FACE_1 ? SetJob.square(l, Surface.EDGE_2) : l);

        assertThat(job.about("A", rule).verdict()).isEqualTo(Verdict.CLOSE);
    }

    @Test
    void gaugedFromABackALineIsOutByWhatTheStuffIsThicker() {
        SetJob job = SetJob.of(
                        Fixtures.porchShelfDrawing(),
                        Fixtures.board("A")
                                .size(306, 120, 18)
                                .shape(new Shape(0, 0, 0, 0, 3, Map.of()))
                                .board(),
                        Fixtures.board("B").size(306, 120, 18).board(),
                        Fixtures.board("D").size(482, 120, 18).board())
                .gauges(
                        "A",
                        g -> new Action.Gauge(
                                g.t(), g.board(), g.on(), g.fence().opposite(), 18 - g.set()));
        Finding finding = job.about("A", rule);

        assertThat(finding.verdict()).isEqualTo(Verdict.WRONG);
        assertThat(finding.says().key()).isEqualTo("says.wrong-gauge");
        assertThat(SetJob.figure(finding)).isEqualTo(1.5, within(1e-6));
    }
}
