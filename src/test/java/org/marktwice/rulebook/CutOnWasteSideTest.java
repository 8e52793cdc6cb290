package org.marktwice.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.marktwice.bench.Action;
import org.marktwice.bench.CutAt;
import org.marktwice.bench.Cutter;
import org.marktwice.bench.Marker;
import org.marktwice.timber.Surface;

class CutOnWasteSideTest {
    private final Rule rule = new CutOnWasteSide();
    private final SetJob job = SetJob.porchShelf();

    /** The upper line of the housing in board A, on its face side. */
    private int shoulder() {
        return job.step(
                a -> a instanceof Action.Line l
                        && l.board().equals("A")
                        && l.on() == Surface.FACE_1
                        && l.mate() != null,
                0);
    }

    @Test
    void whereNothingIsCutThereIsNothingToJudge() {
        assertThat(job.judgedBy(rule)).isEmpty();
        assertThat(RuleBook.judge(job.situation()).notJudged()).contains("cut-on-waste-side");
    }

    /** A fine saw's kerf is 1 mm; a chisel set beyond its line takes half of one, our default. */
    @ParameterizedTest
    @CsvSource({
        "SAW, WASTE, SOUND, 0",
        "SAW, LINE, CLOSE, 0.5",
        "SAW, KEPT, WRONG, 1",
        "CHISEL, WASTE, SOUND, 0",
        "CHISEL, LINE, SOUND, 0",
        "CHISEL, KEPT, WRONG, 0.5"
    })
    void itIsHeldAgainstWhatItTakesOfTheWoodThatStays(Cutter with, CutAt side, Verdict verdict, double lost) {
        Finding finding = job.cut("A", shoulder(), with, side).about("A", rule);

        assertThat(finding.verdict()).isEqualTo(verdict);
        assertThat(SetJob.figure(finding)).isEqualTo(lost, within(1e-9));
    }

    @Test
    void theWorstOfSeveralIsTold() {
        SetJob cut = job.cut("A", shoulder(), Cutter.SAW, CutAt.WASTE).cut("A", shoulder() + 1, Cutter.SAW, CutAt.KEPT);
        Finding finding = cut.about("A", rule);

        assertThat(cut.judgedBy(rule)).as("of the other boards none was cut").hasSize(1);
        assertThat(cut.told(finding))
                .isEqualTo("On board A the saw runs in the wood that should stay, beside the line of step "
                        + (shoulder() + 1)
                        + ": 1 mm of it goes, and the joint is loose by that."
                        + " → Set the saw in the shaded waste, so that the line stays.");
    }

    @Test
    void aCutAtALineOfNothingIsWrong() {
        SetJob more = job.with(t -> new Action.Line(
                t,
                "A",
                Surface.FACE_1,
                Surface.EDGE_1,
                new Action.Datum.End(Surface.END_1),
                200.0,
                null,
                Marker.KNIFE));
        int line = more.step(a -> a instanceof Action.HandIn, 0) - 1;
        SetJob cut = more.cut("A", line, Cutter.SAW, CutAt.WASTE);

        assertThat(cut.about("A", rule).verdict()).isEqualTo(Verdict.WRONG);
        assertThat(cut.told(cut.about("A", rule))).contains("where the drawing has no cut");
    }
}
