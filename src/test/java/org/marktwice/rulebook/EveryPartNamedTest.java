package org.marktwice.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.marktwice.Fixtures.board;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.marktwice.Fixtures;
import org.marktwice.bench.Reason;
import org.marktwice.drawing.JobAxis;
import org.marktwice.drawing.Overall;
import org.marktwice.drawing.Part;
import org.marktwice.rulebook.Finding.Measured;
import org.marktwice.rulebook.Finding.Subject;
import org.marktwice.timber.Board;

class EveryPartNamedTest {
    private static final Board SHELF = board("S").size(480, 120, 18).board();
    private final Rule rule = new EveryPartNamed();

    @Test
    void eachPartHasItsOwnFinding() {
        Situations given = Situations.porchShelf(board("A").board(), board("B").board(), SHELF)
                .names("A", "upright-left")
                .names("S", "shelf");

        assertThat(given.judgedBy(rule))
                .extracting(Finding::subject, Finding::verdict, Finding::step)
                .containsExactly(
                        tuple(Subject.boardAs("A", "upright-left"), Verdict.SOUND, 1),
                        tuple(Subject.part("upright-right"), Verdict.OPEN, null),
                        tuple(Subject.boardAs("S", "shelf"), Verdict.SOUND, 2));
    }

    /** Board A has a knot in the housing whichever way it is turned, so that board B serves better. */
    @Test
    void ofTwoBoardsWithOneNameTheBetterIsToBeKept() {
        Board knotty = board("A")
                .knots(Fixtures.knot("k1", 89, 90, 90), Fixtures.knot("k2", 211, 90, 90))
                .board();
        Situations given = Situations.porchShelf(knotty, board("B").board(), SHELF)
                .names("B", "upright-left")
                .names("A", "upright-left");

        Finding found = given.judgedBy(rule).get(0);

        assertThat(found.verdict()).isEqualTo(Verdict.WRONG);
        assertThat(found.step()).isEqualTo(2);
        assertThat(found.measured()).isEqualTo(new Measured(2, "count", 1));
        assertThat(given.told(found))
                .isEqualTo(
                        "Boards B and A are named Left upright; the part needs one."
                                + " → Keep board B as the Left upright, where it serves best, and give board A another name or set it aside.");
    }

    @Test
    void aNewNameReplacesTheOneBefore() {
        Situations given = Situations.porchShelf(board("A").board(), board("B").board(), SHELF)
                .names("A", "upright-left")
                .names("B", "upright-left")
                .names("B", "upright-right");

        assertThat(given.judgedBy(rule))
                .extracting(Finding::verdict)
                .containsExactly(Verdict.SOUND, Verdict.SOUND, Verdict.OPEN);
    }

    @Test
    void aBoardSetAsideSuppliesNothing() {
        Situations given = Situations.porchShelf(board("A").board(), board("B").board(), SHELF)
                .names("A", "upright-left")
                .setsAside("A", Reason.NOT_NEEDED);

        assertThat(given.judgedBy(rule).get(0).verdict()).isEqualTo(Verdict.OPEN);
    }

    /** Two uprights can be supplied, the shelf can't: no board is long enough. */
    @Test
    void aPartThatNothingOnTheRackServesMayWaitOnceTheRestIsSetAside() {
        Situations given = Situations.porchShelf(
                        board("A").board(), board("B").board(), board("C").board())
                .names("A", "upright-left")
                .names("B", "upright-right");
        assertThat(given.judgedBy(rule).get(2).verdict()).isEqualTo(Verdict.OPEN);

        Finding waits = given.setsAside("C", Reason.WRONG_SIZE).judgedBy(rule).get(2);

        assertThat(waits.verdict()).isEqualTo(Verdict.SOUND);
        assertThat(waits.step()).isEqualTo(3);
        assertThat(given.told(waits))
                .isEqualTo("Nothing left on the rack serves as the Shelf, and every board left over is set aside:"
                        + " this part waits for another board.");
    }

    @Test
    void settingEverythingAsideIsNoWayOut() {
        Situations given = Situations.porchShelf(board("A").board(), board("B").board(), SHELF);
        for (String each : List.of("A", "B", "S")) given.setsAside(each, Reason.NOT_NEEDED);

        assertThat(given.judgedBy(rule)).extracting(Finding::verdict).containsOnly(Verdict.OPEN);
    }

    @Test
    void sheetStuffIsNamedToo() {
        Part back = Fixtures.sheet("back", "Back")
                .size(300, 200, 6)
                .runs(JobAxis.ACROSS, JobAxis.HIGH)
                .part();
        Situations given = Situations.of(
                Fixtures.drawing(new Overall(300, 6, 200), List.of(back)),
                board("P").size(300, 200, 6).sheet().board());

        assertThat(given.judgedBy(rule)).extracting(Finding::verdict).containsExactly(Verdict.OPEN);
        assertThat(given.names("P", "back").judgedBy(rule))
                .extracting(Finding::verdict)
                .containsExactly(Verdict.SOUND);
    }
}
