package org.marktwice.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.marktwice.bench.Action;
import org.marktwice.bench.CutAt;
import org.marktwice.bench.Cutter;
import org.marktwice.bench.Marker;
import org.marktwice.timber.Surface;

class CutInOrderTest {
    private static final Predicate<Action> GAUGED_A =
            a -> a instanceof Action.Gauge g && g.board().equals("A");
    private static final Predicate<Action> SHOULDERS_A =
            a -> a instanceof Action.Line l && l.board().equals("A") && l.on() == Surface.FACE_1;

    private final Rule rule = new CutInOrder();
    private final SetJob job = SetJob.porchShelf();

    /** The line that was struck from the mate; the one before it is where the board is cut to length or the lower shoulder. */
    private int upper() {
        return job.step(a -> SHOULDERS_A.test(a) && ((Action.Line) a).mate() != null, 0);
    }

    private int gauged() {
        return job.step(GAUGED_A, 0);
    }

    @Test
    void whereNothingIsCutThereIsNothingToJudge() {
        assertThat(job.judgedBy(rule)).isEmpty();
    }

    @Test
    void setOutThenSawnThenChiselledIsSound() {
        SetJob cut = job.cut("A", upper(), Cutter.SAW, CutAt.WASTE).cut("A", gauged(), Cutter.CHISEL, CutAt.WASTE);

        assertThat(cut.about("A", rule).verdict()).isEqualTo(Verdict.SOUND);
    }

    @Test
    void chiselledBeforeItIsSawnIsWrong() {
        SetJob cut = job.cut("A", gauged(), Cutter.CHISEL, CutAt.WASTE).cut("A", upper(), Cutter.SAW, CutAt.WASTE);

        assertThat(cut.about("A", rule).verdict()).isEqualTo(Verdict.WRONG);
        assertThat(cut.told(cut.about("A", rule)))
                .isEqualTo("On board A the chisel was at the housing for the Shelf before any saw:"
                        + " nothing severs the wood beside it."
                        + " → Saw to the lines first, then take out the rest with the chisel.");
    }

    @Test
    void cutBeforeAllIsSetOutIsWrong() {
        SetJob without = job.without(GAUGED_A);
        int upper = without.step(a -> SHOULDERS_A.test(a) && ((Action.Line) a).mate() != null, 0);

        Finding finding = without.cut("A", upper, Cutter.SAW, CutAt.WASTE).about("A", rule);

        assertThat(finding.verdict()).isEqualTo(Verdict.WRONG);
        assertThat(without.told(finding)).startsWith("Board A was cut before everything on it was set out.");
    }

    @Test
    void sawnToAPencilLineIsWrong() {
        SetJob pencil = job.lines(
                "A",
                l -> new Action.Line(l.t(), l.board(), l.on(), l.square(), l.from(), l.at(), l.mate(), Marker.PENCIL));
        SetJob cut = pencil.cut("A", upper(), Cutter.SAW, CutAt.WASTE);

        assertThat(cut.about("A", rule).verdict()).isEqualTo(Verdict.WRONG);
        assertThat(cut.told(cut.about("A", rule))).contains("there is no knife line there");
    }

    @Test
    void cutWithoutItsWasteShadedIsClose() {
        SetJob unshaded = job.without(a -> a instanceof Action.Waste);
        int upper = unshaded.step(a -> SHOULDERS_A.test(a) && ((Action.Line) a).mate() != null, 0);
        List<Finding> findings =
                unshaded.cut("A", upper, Cutter.SAW, CutAt.WASTE).judgedBy(rule);

        assertThat(findings).extracting(Finding::verdict).containsExactly(Verdict.CLOSE);
    }
}
