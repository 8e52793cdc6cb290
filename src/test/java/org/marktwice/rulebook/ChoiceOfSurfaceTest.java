package org.marktwice.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.marktwice.Fixtures.board;
import static org.marktwice.Fixtures.timber;
import static org.marktwice.timber.Surface.EDGE_1;
import static org.marktwice.timber.Surface.EDGE_2;
import static org.marktwice.timber.Surface.FACE_1;
import static org.marktwice.timber.Surface.FACE_2;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.marktwice.Fixtures;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.JobAxis;
import org.marktwice.drawing.Overall;
import org.marktwice.drawing.Part;
import org.marktwice.scenario.Practice;
import org.marktwice.scenario.Stage;
import org.marktwice.timber.Board;
import org.marktwice.timber.Knot;
import org.marktwice.timber.Shape;
import org.marktwice.timber.Surface;

class ChoiceOfSurfaceTest {
    private final Rule rule = new ChoiceOfSurface();

    private static Situations bestOut(Board board, Surface side, Surface edge) {
        return Situations.porchShelf(board, board("Z").board())
                .faceSide(Practice.FaceSide.BEST_OUT)
                .names("A", "upright-left")
                .marks("A", side, edge);
    }

    /** From a pith 30 mm below face 2: it comes through both faces, wider on face 1. */
    private static Knot widening(double halfAngle) {
        return new Knot("k1", 150, 90, 90, halfAngle, 20, 200, Double.POSITIVE_INFINITY);
    }

    /** Comes through face 2 and ends within the board. */
    private static Knot endsInside(String id, double x) {
        return new Knot(id, x, 90, 90, 5.5, 8, 200, 85);
    }

    @ParameterizedTest(name = "half angle {0}, face side {1} → {2}")
    @CsvSource({
        "1, FACE_1, SOUND, says.cleanest",
        "3, FACE_1, CLOSE, says.nearly-cleanest",
        "3, FACE_2, SOUND, says.cleanest",
        "8, FACE_1, WRONG, says.larger",
    })
    void bestOutTakesTheSmallerKnots(double halfAngle, Surface side, Verdict verdict, String says) {
        Board board = board("A").pith(60, -30).knots(widening(halfAngle)).board();

        Finding found = bestOut(board, side, EDGE_1).about("A", rule);

        assertThat(found.verdict()).isEqualTo(verdict);
        assertThat(found.says().key()).isEqualTo(says);
    }

    @ParameterizedTest(name = "face side {0} → {1}")
    @CsvSource({"FACE_1, SOUND, says.clean", "FACE_2, WRONG, says.less-clean"})
    void bestOutTakesFewerKnots(Surface side, Verdict verdict, String says) {
        Board board =
                board("A").knots(endsInside("k1", 150), endsInside("k2", 160)).board();
        Situations given = bestOut(board, side, EDGE_1);

        Finding found = given.about("A", rule);

        assertThat(found.verdict()).isEqualTo(verdict);
        assertThat(found.says().key()).isEqualTo(says);
        if (verdict == Verdict.WRONG) {
            assertThat(given.told(found))
                    .isEqualTo(
                            "Face 2 of board A shows 2 knots, and face 1 no knots. This workshop's setting is \"best out\"."
                                    + " → Mark face 1: it can look as drawn, no knot comes nearer to a joint, and it shows none.");
            assertThat(found.measured()).isEqualTo(new Finding.Measured(2, "count", 0));
            assertThat(found.evidence().knots()).containsExactly("k1", "k2");
        }
    }

    /**
     * Only edge 1 is planed, so either face leaves one turn. With face 1 as the face side the housing lies 202–220 mm from
     * end 1, 12–18 mm up from face 2: 7 mm from the knot there, nearer than its margin.
     */
    @ParameterizedTest(name = "turns asked for: {0} → {1}")
    @CsvSource({"true, SOUND", "false, WRONG"})
    void aCleanerFaceThatBringsAKnotToTheJointDoesNotCount(boolean turnsAsked, Verdict verdict) {
        Board board = board("A")
                .dressed(FACE_1, FACE_2, EDGE_1)
                .knots(endsInside("k1", 211))
                .board();
        Situations given = bestOut(board, FACE_2, EDGE_1);
        if (!turnsAsked) given.asking(Stage.FACES, Stage.NAMES);

        assertThat(given.about("A", rule).verdict()).isEqualTo(verdict);
    }

    private static Situations post(double bow, Surface side, Surface edge) {
        Part post = timber("post", "Post")
                .size(300, 30, 30)
                .runs(JobAxis.HIGH, JobAxis.ACROSS)
                .marks(List.of(Direction.FRONT), List.of(Direction.RIGHT))
                .part();
        Board board = board("A")
                .size(300, 30, 30)
                .shape(new Shape(bow, 0, 0, 0, 0, Map.of()))
                .board();
        return Situations.of(
                        Fixtures.drawing(new Overall(30, 30, 300), List.of(post)),
                        board,
                        board("Z").board())
                .names("A", "post")
                .marks("A", side, edge);
    }

    @ParameterizedTest(name = "bow {0}, face side {1} → {2}")
    @CsvSource({
        "0.9, EDGE_1, SOUND, says.truest",
        "0.05, FACE_1, SOUND, says.truest",
        "0.25, FACE_1, CLOSE, says.nearly-truest",
        "0.9, FACE_1, WRONG, says.less-true",
    })
    void truestInTakesTheSurfaceThatDepartsLeast(double bow, Surface side, Verdict verdict, String says) {
        Finding found = post(bow, side, side == FACE_1 ? EDGE_1 : FACE_1).about("A", rule);

        assertThat(found.verdict()).isEqualTo(verdict);
        assertThat(found.says().key()).isEqualTo(says);
    }

    @Test
    void feedbackNamesTheSettingInForce() {
        Situations given = post(0.9, FACE_1, EDGE_1);

        assertThat(given.told(given.about("A", rule)))
                .isEqualTo("Face 1 of board A departs by 0.9 mm from a plane, and edge 1 by only 0 mm."
                        + " This workshop's setting is \"truest in\". → Mark edge 1: it can look as drawn, no knot comes nearer"
                        + " to a joint, and it departs by 0 mm instead of 0.9 mm.");
    }

    @ParameterizedTest(name = "face side {0} → {1}")
    @CsvSource({"FACE_1, SOUND, says.only", "FACE_2, WRONG, says.not-left"})
    void thePlaningMayLeaveOneSurfaceOnly(Surface side, Verdict verdict, String says) {
        Board board = board("A").dressed(FACE_1, EDGE_1, EDGE_2).board();

        Finding found = bestOut(board, side, EDGE_1).about("A", rule);

        assertThat(found.verdict()).isEqualTo(verdict);
        assertThat(found.says().key()).isEqualTo(says);
    }

    @Test
    void withoutAFaceSideOnABroadFaceItIsOpen() {
        Situations given = Situations.porchShelf(board("A").board(), board("Z").board())
                .names("A", "upright-left")
                .side("A", EDGE_1, FACE_1);

        assertThat(given.about("A", rule).verdict()).isEqualTo(Verdict.OPEN);
    }
}
