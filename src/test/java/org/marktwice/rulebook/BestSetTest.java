package org.marktwice.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.marktwice.rulebook.Upright.knot;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.marktwice.Fixtures;
import org.marktwice.bench.Reason;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Trim;
import org.marktwice.rulebook.Finding.Subject;
import org.marktwice.timber.Board;
import org.marktwice.timber.Knot;
import org.marktwice.timber.Surface;

/**
 * The porch shelf: two uprights, each with a housing 80–98 up, and a shelf without cuts. The uprights' boards are planed on
 * face-1 and edge-1 only, so that each has one turn in each upright: on the left end-2 is down (housing at x 202–220 of a
 * board of 300), on the right end-1 (x 80–98). A knot of radius 5 at 210 bars the left, one at 90 the right.
 */
class BestSetTest {
    private static final Knot BARS_LEFT = knot("k1", 210, 5);
    private static final Knot BARS_RIGHT = knot("k2", 90, 5);

    private final Rule rule = new BestSet();

    private static Board upright(String id, double length, Knot... knots) {
        return Fixtures.board(id)
                .size(length, 120, 18)
                .dressed(Surface.FACE_1, Surface.EDGE_1)
                .knots(knots)
                .board();
    }

    private static Board shelf() {
        return Fixtures.board("S").size(480, 120, 18).board();
    }

    private static Situations left(Situations given, String board, double offEnd1) {
        return given.names(board, "upright-left")
                .turns(
                        board,
                        Surface.FACE_1,
                        Direction.RIGHT,
                        Surface.EDGE_1,
                        Direction.FRONT,
                        new Trim(Surface.END_1, offEnd1));
    }

    private static Situations right(Situations given, String board) {
        return given.names(board, "upright-right")
                .turns(board, Surface.FACE_1, Direction.LEFT, Surface.EDGE_1, Direction.FRONT);
    }

    private static Situations shelf(Situations given) {
        return given.names("S", "shelf").turns("S", Surface.FACE_1, Direction.TOP, Surface.EDGE_1, Direction.FRONT);
    }

    private Finding judge(Situations given) {
        List<Finding> findings = given.judgedBy(rule);
        assertThat(findings).hasSize(1);
        assertThat(findings.get(0).subject()).isEqualTo(Subject.JOB);
        assertThat(given.told(findings.get(0))).doesNotContain("{");
        return findings.get(0);
    }

    @Test
    void everyBoardWhereItBelongsIsSound() {
        Situations given = Situations.porchShelf(upright("A", 300, BARS_RIGHT), upright("B", 300, BARS_LEFT), shelf());
        shelf(right(left(given, "A", 0), "B"));

        Finding found = judge(given);

        assertThat(found.verdict()).isEqualTo(Verdict.SOUND);
        assertThat(found.measured()).isEqualTo(new Finding.Measured(25, "mm", 25));
    }

    @Test
    void theTwoUprightsChangedAreWrongAndToBeSwapped() {
        Situations given = Situations.porchShelf(upright("A", 300, BARS_RIGHT), upright("B", 300, BARS_LEFT), shelf());
        shelf(right(left(given, "B", 0), "A"));

        Finding found = judge(given);

        assertThat(found.verdict()).isEqualTo(Verdict.WRONG);
        assertThat(found.measured()).isEqualTo(new Finding.Measured(1, "count", 3));
        assertThat(given.told(found))
                .isEqualTo("As they lie 1 part is clear; with these boards 3 could be."
                        + " → Swap board A and board B: board A belongs in the Left upright."
                        + " That gives 3 clear parts instead of 1, and 25 mm at the tightest place instead of 0 mm.");
    }

    /** B is spare and would be clear on the left, where A isn't. */
    @Test
    void aWorseBoardThanASpareOneIsToBeReplaced() {
        Situations given = Situations.porchShelf(
                upright("A", 300, BARS_LEFT), upright("B", 300), upright("C", 300, BARS_LEFT), shelf());
        shelf(right(left(given, "A", 0), "C"));

        Finding found = judge(given);

        assertThat(found.verdict()).isEqualTo(Verdict.WRONG);
        assertThat(given.told(found)).contains("→ Use board B for the Left upright instead of board A.");
    }

    /**
     * A is 312 long with its knot at 190: off mm off end-1 leave it 7 + off before the housing. 12 give 19, 6 give 13: clear,
     * but 13/19 of what there was.
     */
    @Test
    void allClearButTighterThanNeedBeIsClose() {
        Situations given =
                Situations.porchShelf(upright("A", 312, knot("k1", 190, 5), BARS_RIGHT), upright("B", 300), shelf());
        shelf(right(left(given, "A", 6), "B"));

        Finding found = judge(given);

        assertThat(found.verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(found.says().key()).isEqualTo("says.close-least");
        assertThat(found.credit()).isCloseTo(13.0 / 19, within(0.005));
        assertThat(Objects.requireNonNull(found.measured()).value()).isCloseTo(13, within(0.05));
        assertThat(given.told(found)).contains("Board A in the Left upright gains most, 6 mm");
    }

    /** The right upright has 12 at best, so the left one with 13 instead of 19 narrows the sum only: 50 of 56. */
    @Test
    void theSumIsComparedLast() {
        Board right = upright("B", 300, knot("k1", 63, 5));
        Situations given = Situations.porchShelf(upright("A", 312, knot("k1", 190, 5), BARS_RIGHT), right, shelf());
        shelf(right(left(given, "A", 6), "B"));

        Finding found = judge(given);

        assertThat(found.says().key()).isEqualTo("says.close-sum");
        assertThat(found.credit()).isCloseTo((13 + 12 + 25) / (19.0 + 12 + 25), within(0.005));
    }

    @Test
    void aPartLeftWithoutThoughABoardWasRefusedForItIsWrong() {
        Situations given = Situations.porchShelf(upright("A", 300, BARS_RIGHT), upright("B", 300, BARS_LEFT), shelf());
        shelf(right(given, "B")).setsAside("A", Reason.KNOT_IN_EVERY_TURN);

        Finding found = judge(given);

        assertThat(found.verdict()).isEqualTo(Verdict.WRONG);
        assertThat(found.measured()).isEqualTo(new Finding.Measured(2, "count", 3));
        assertThat(given.told(found)).contains("Use board A for the Left upright, which has no board.");
    }

    /** A is barred in both uprights: the model answer would lay it for want of another, but refusing it is as good. */
    @Test
    void noneClearsIsAnAnswer() {
        Situations given =
                Situations.porchShelf(upright("A", 300, BARS_LEFT, BARS_RIGHT), upright("B", 300, BARS_LEFT), shelf());
        shelf(right(given, "B")).setsAside("A", Reason.KNOT_IN_EVERY_TURN);

        assertThat(judge(given).verdict()).isEqualTo(Verdict.SOUND);
    }

    @Test
    void itIsOpenWhileAPartMayStillBeSupplied() {
        Situations given = Situations.porchShelf(upright("A", 300, BARS_RIGHT), upright("B", 300, BARS_LEFT), shelf());

        Finding empty = judge(given);
        Finding named = judge(shelf(right(given, "B")).names("A", "upright-left"));

        assertThat(empty.verdict()).isEqualTo(Verdict.OPEN);
        assertThat(given.told(empty)).startsWith("Still waiting for a board: 3 parts");
        assertThat(named.verdict()).isEqualTo(Verdict.OPEN);
    }

    @Test
    void whereNoBoardFitsAnyPartThereIsNothingToJudge() {
        assertThat(Situations.porchShelf(upright("A", 200)).judgedBy(rule)).isEmpty();
    }
}
