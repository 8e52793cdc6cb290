package org.marktwice.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.marktwice.Fixtures.board;
import static org.marktwice.drawing.Direction.BACK;
import static org.marktwice.drawing.Direction.FRONT;
import static org.marktwice.drawing.Direction.LEFT;
import static org.marktwice.timber.Surface.EDGE_1;
import static org.marktwice.timber.Surface.FACE_1;
import static org.marktwice.timber.Surface.FACE_2;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.marktwice.Fixtures;
import org.marktwice.drawing.Direction;
import org.marktwice.scenario.Stage;
import org.marktwice.timber.Board;

class MarksAsDrawnTest {
    private final Rule rule = new MarksAsDrawn();

    private static Situations marked(Board board) {
        return Situations.porchShelf(board, board("Z").board())
                .names("A", "upright-left")
                .marks("A", FACE_1, EDGE_1);
    }

    /** The left upright is drawn with its face side to the right and its face edge to the front. */
    @ParameterizedTest(name = "face 1 {0}, edge 1 {1} → {2}")
    @CsvSource({
        "RIGHT, FRONT, SOUND, says.sound",
        "LEFT, FRONT, WRONG, says.side",
        "RIGHT, BACK, WRONG, says.edge",
        "LEFT, BACK, WRONG, says.both",
    })
    void marksLookWhereTheDrawingWants(Direction side, Direction edge, Verdict verdict, String says) {
        Situations given = marked(board("A").board()).turns("A", FACE_1, side, EDGE_1, edge);

        Finding found = given.about("A", rule);

        assertThat(found.verdict()).isEqualTo(verdict);
        assertThat(found.says().key()).isEqualTo(says);
        assertThat(found.step()).isEqualTo(4);
    }

    @Test
    void itSaysHowToTurnTheBoardAndWhichEndThenComesToTheBottom() {
        Situations given = marked(board("A").board()).turns("A", FACE_1, LEFT, EDGE_1, FRONT);

        assertThat(given.told(given.about("A", rule)))
                .isEqualTo(
                        "The face side of board A, face 1, looks to the left; on the Left upright it should look to the right."
                                + " → Turn it so that face 1 looks to the right and edge 1 to the front; then end 2 lies at the bottom.");
    }

    /** Turned to suit its marks the knot at 211 mm would lie in the housing; as it is turned it is far from it. */
    @Test
    void whereTheTurnSuitsTheKnotsTheMarksAreToMove() {
        Board board = board("A").knots(Fixtures.knot("k1", 211, 90, 90)).board();
        Situations given = marked(board).turns("A", FACE_1, LEFT, EDGE_1, FRONT);

        assertThat(given.told(given.about("A", rule)))
                .endsWith("→ This turn suits the knots. Keep it, and move the marks: the face side on face 2,"
                        + " which looks to the right, and the face edge on edge 1, which looks to the front.");
    }

    @Test
    void whateverIsStillToBeDoneLeavesItOpen() {
        Situations named =
                Situations.porchShelf(board("A").board(), board("Z").board()).names("A", "upright-left");
        assertThat(named.about("A", rule).says().key()).isEqualTo("says.not-marked");

        Situations marked = named.marks("A", FACE_1, EDGE_1);
        assertThat(marked.about("A", rule).says().key()).isEqualTo("says.not-turned");
        assertThat(marked.judgedBy(rule)).extracting(Finding::verdict).containsOnly(Verdict.OPEN);
    }

    @Test
    void whereNoTurnsAreAskedForOnlyATurnedBoardIsJudged() {
        Situations given = marked(board("A").board()).asking(Stage.FACES, Stage.NAMES);

        assertThat(given.judgedBy(rule)).isEmpty();
        assertThat(given.turns("A", FACE_1, LEFT, EDGE_1, BACK).judgedBy(rule))
                .extracting(Finding::verdict)
                .containsExactly(Verdict.WRONG);
    }

    @Test
    void aSingleBoardForASinglePartNeedsNoName() {
        Situations given = Situations.of(Fixtures.oneRail())
                .asking(Stage.FACES, Stage.TURNS)
                .marks("A", FACE_2, EDGE_1)
                .turns("A", FACE_2, FRONT, EDGE_1, Direction.TOP);

        assertThat(given.about("A", rule).verdict()).isEqualTo(Verdict.SOUND);
    }
}
