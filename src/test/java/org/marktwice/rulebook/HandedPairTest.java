package org.marktwice.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.marktwice.Fixtures.board;
import static org.marktwice.Fixtures.timber;
import static org.marktwice.drawing.Direction.BACK;
import static org.marktwice.drawing.Direction.FRONT;
import static org.marktwice.drawing.Direction.LEFT;
import static org.marktwice.drawing.Direction.RIGHT;
import static org.marktwice.drawing.Direction.TOP;
import static org.marktwice.timber.Surface.EDGE_1;
import static org.marktwice.timber.Surface.EDGE_2;
import static org.marktwice.timber.Surface.FACE_1;
import static org.marktwice.timber.Surface.FACE_2;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.marktwice.Fixtures;
import org.marktwice.bench.Reason;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.JobAxis;
import org.marktwice.drawing.Overall;
import org.marktwice.rulebook.Finding.Subject;
import org.marktwice.scenario.Stage;

class HandedPairTest {
    private final Rule rule = new HandedPair();

    /** Both uprights marked on face 1 and edge 1. */
    private static Situations uprights() {
        return Situations.porchShelf(
                        board("A").board(), board("B").board(), board("Z").board())
                .names("A", "upright-left")
                .marks("A", FACE_1, EDGE_1)
                .names("B", "upright-right")
                .marks("B", FACE_1, EDGE_1);
    }

    /** As drawn: right and front, left and front. */
    @ParameterizedTest(name = "A looks {0} and {1}, B looks {2} and {3} → {4}")
    @CsvSource({
        "RIGHT, FRONT, LEFT, FRONT, SOUND, says.sound, B",
        "LEFT, BACK, RIGHT, BACK, SOUND, says.sound, B",
        "RIGHT, FRONT, RIGHT, FRONT, WRONG, says.alike-joint, B",
        "LEFT, FRONT, LEFT, FRONT, WRONG, says.alike-joint, A",
        "RIGHT, FRONT, LEFT, BACK, WRONG, says.alike, B",
        "RIGHT, FRONT, RIGHT, BACK, WRONG, says.not-mirrored, B",
    })
    void aPairIsMirrored(
            Direction oneLooks,
            Direction oneEdge,
            Direction otherLooks,
            Direction otherEdge,
            Verdict verdict,
            String says,
            String board) {
        Situations given = uprights()
                .turns("A", FACE_1, oneLooks, EDGE_1, oneEdge)
                .turns("B", FACE_1, otherLooks, EDGE_1, otherEdge);

        List<Finding> findings = given.judgedBy(rule);

        assertThat(findings).hasSize(1);
        Finding found = findings.get(0);
        assertThat(found.verdict()).isEqualTo(verdict);
        assertThat(found.says().key()).isEqualTo(says);
        assertThat(found.subject().board()).isEqualTo(board);
        assertThat(found.step()).isEqualTo(8);
        assertThat(given.told(found)).doesNotContain("{");
    }

    @Test
    void twoLeftsPutTheHousingOnTheOutside() {
        Situations given = uprights().turns("A", FACE_1, RIGHT, EDGE_1, FRONT).turns("B", FACE_1, RIGHT, EDGE_1, FRONT);

        Finding found = given.judgedBy(rule).get(0);

        assertThat(found.subject()).isEqualTo(Subject.boardAs("B", "upright-right"));
        assertThat(given.told(found))
                .isEqualTo(
                        "Board B, marked and turned like this, is made like the Left upright: with end 2 at the bottom and its"
                                + " face side to the right, the housing for the Shelf set out from the marks would open to the right,"
                                + " and the drawing wants it to open to the left. → Turn board B so that face 1 looks to the left and"
                                + " edge 1 to the front; then end 1 lies at the bottom.");
    }

    @Test
    void aSoundPairIsToldWithTheEndsAtTheBottom() {
        Situations given = uprights().turns("A", FACE_1, RIGHT, EDGE_1, FRONT).turns("B", FACE_1, LEFT, EDGE_1, FRONT);

        assertThat(given.told(given.judgedBy(rule).get(0)))
                .isEqualTo(
                        "Board A and board B are a pair: the face sides look to the right and to the left, the face edges"
                                + " to the front; end 2 of board A and end 1 of board B lie at the bottom.");
    }

    @Test
    void untilBothAreMarkedAndTurnedItIsOpen() {
        Situations given = uprights().turns("A", FACE_1, RIGHT, EDGE_1, FRONT);

        assertThat(given.judgedBy(rule)).extracting(Finding::verdict).containsExactly(Verdict.OPEN);
        assertThat(given.asking(Stage.FACES, Stage.NAMES).judgedBy(rule)).isEmpty();
    }

    /** Two rails, front and back, whose face edge may look either way. */
    @Test
    void whereTheDrawingLeavesTheChoiceTwoBoardsAsDrawnAreAPair() {
        Situations given = rails(List.of(BACK), List.of(FRONT))
                .turns("A", FACE_1, BACK, EDGE_1, TOP)
                .turns("B", FACE_2, FRONT, EDGE_2, TOP);

        Finding found = given.judgedBy(rule).get(0);

        assertThat(found.verdict()).isEqualTo(Verdict.SOUND);
        assertThat(found.says().key()).isEqualTo("says.as-drawn");
    }

    @Test
    void aPairThatTheDrawingDoesNotMarkAsMirroredIsNotJudged() {
        Situations given = rails(List.of(FRONT), List.of(FRONT));

        assertThat(given.judgedBy(rule)).isEmpty();
    }

    /** Where the rack has a board for only one of the two, "none clears" is an answer here too. */
    @Test
    void aPairOfWhichOneWaitsForABoardIsNothingToCompare() {
        Situations given = Situations.porchShelf(
                        board("A").board(),
                        board("C").size(200, 120, 18).board(),
                        board("S").size(476, 120, 18).board())
                .names("A", "upright-left")
                .names("S", "shelf");
        assertThat(given.judgedBy(rule)).extracting(Finding::verdict).containsExactly(Verdict.OPEN);

        Finding waits = given.setsAside("C", Reason.WRONG_SIZE).judgedBy(rule).get(0);

        assertThat(waits.verdict()).isEqualTo(Verdict.SOUND);
        assertThat(given.told(waits))
                .isEqualTo("The Left upright and the Right upright are to be a pair, but one of them waits for another"
                        + " board: there is nothing to compare yet.");
    }

    private static Situations rails(List<Direction> oneSide, List<Direction> otherSide) {
        List<Direction> either = List.of(TOP, Direction.BOTTOM);
        return Situations.of(
                        Fixtures.drawing(
                                new Overall(400, 200, 60),
                                List.of(
                                        timber("front", "Front rail")
                                                .size(400, 60, 20)
                                                .at(0, 0, 0)
                                                .runs(JobAxis.ACROSS, JobAxis.HIGH)
                                                .marks(oneSide, either)
                                                .part(),
                                        timber("back", "Back rail")
                                                .size(400, 60, 20)
                                                .at(0, 180, 0)
                                                .runs(JobAxis.ACROSS, JobAxis.HIGH)
                                                .marks(otherSide, either)
                                                .part())),
                        board("A").size(400, 60, 20).board(),
                        board("B").size(400, 60, 20).board())
                .names("A", "front")
                .marks("A", FACE_1, EDGE_1)
                .names("B", "back")
                .marks("B", FACE_2, EDGE_1);
    }
}
