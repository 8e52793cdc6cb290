package org.marktwice.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.marktwice.Fixtures;
import org.marktwice.bench.Action;
import org.marktwice.bench.Action.Datum;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Drawing;
import org.marktwice.drawing.JobAxis;
import org.marktwice.drawing.Joint;
import org.marktwice.drawing.Overall;
import org.marktwice.drawing.Part;
import org.marktwice.timber.Surface;

class OneDatumTest {
    private final Rule rule = new OneDatum();

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

    /** Two housings are needed to chain: the second is measured from the first. */
    private static SetJob twoShelves() {
        Part left = Fixtures.UPRIGHT_LEFT;
        Part right = Fixtures.UPRIGHT_RIGHT;
        Part upper = Fixtures.timber("upper", "Upper shelf")
                .size(476, 120, 18)
                .at(12, 0, 200)
                .runs(JobAxis.ACROSS, JobAxis.DEEP)
                .marks(List.of(Direction.TOP), List.of(Direction.FRONT))
                .part();
        Drawing drawing = Fixtures.drawing(
                new Overall(500, 120, 300),
                List.of(left, right, Fixtures.SHELF, upper),
                new Joint.ThroughHousing("l1", "upright-left", "shelf"),
                new Joint.ThroughHousing("r1", "upright-right", "shelf"),
                new Joint.ThroughHousing("l2", "upright-left", "upper"),
                new Joint.ThroughHousing("r2", "upright-right", "upper"));
        return SetJob.of(
                drawing,
                Fixtures.board("A").size(300, 120, 18).board(),
                Fixtures.board("B").size(300, 120, 18).board(),
                Fixtures.board("C").size(476, 120, 18).board(),
                Fixtures.board("D").size(476, 120, 18).board());
    }

    @Test
    void aHousingMeasuredFromTheOneBeforeItIsChained() {
        SetJob job = twoShelves();
        assertThat(job.verdicts(rule)).containsOnly(Verdict.SOUND);
        String board = SetJob.board(job.judgedBy(rule).get(0));
        int first = job.attempt().actions().indexOf(job.measured(board, 0)) + 1;
        double far = SetJob.at(job.measured(board, 1)) - SetJob.at(job.measured(board, 0));
        Action.Line second = job.measured(board, 1);
        SetJob chained = job.lines(
                board,
                l -> l.equals(second)
                        ? new Action.Line(
                                l.t(), l.board(), l.on(), l.square(), new Datum.Step(first), far, null, l.with())
                        : l);
        Finding finding = chained.about(board, rule);

        assertThat(finding.verdict()).isEqualTo(Verdict.WRONG);
        assertThat(SetJob.figure(finding)).isEqualTo(2);
        assertThat(chained.told(finding))
                .startsWith(
                        "On board " + board
                                + " 2 distances follow one from the other. Read to 0.5 mm each, the last line may be 1 mm out, and 0.7 mm is likely.");
    }

    @Test
    void distancesFromBothEndsAreNotOneDatum() {
        SetJob job = twoShelves();
        String board = SetJob.board(job.judgedBy(rule).get(0));
        Action.Line second = job.measured(board, 1);
        Surface end = ((Datum.End) second.from()).end();
        SetJob both = job.lines(
                board,
                l -> l.equals(second)
                        ? new Action.Line(
                                l.t(),
                                l.board(),
                                l.on(),
                                l.square(),
                                new Datum.End(end.opposite()),
                                300 - SetJob.at(l),
                                null,
                                l.with())
                        : l);

        assertThat(both.about(board, rule).says().key()).isEqualTo("says.wrong-ends");
    }

    /** The width of one housing from its own first line is no chain. */
    @Test
    void aWidthMeasuredWithinOneJointChainsNothing() {
        SetJob job = SetJob.porchShelf().lines("A", l -> l.mate() != null ? SetJob.at(l, 18) : l);

        assertThat(job.about("A", rule).verdict()).isEqualTo(Verdict.SOUND);
    }
}
