package org.marktwice.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.marktwice.Fixtures.board;
import static org.marktwice.timber.Surface.EDGE_1;
import static org.marktwice.timber.Surface.FACE_1;
import static org.marktwice.timber.Surface.FACE_2;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.marktwice.bench.Action;
import org.marktwice.bench.Tool;
import org.marktwice.rulebook.Finding.Measured;
import org.marktwice.timber.Shape;
import org.marktwice.timber.Surface;

class ProvedBeforeMarkedTest {
    private final Rule rule = new ProvedBeforeMarked();

    private static Situations given() {
        return Situations.porchShelf(
                        board("A")
                                .shape(new Shape(0.2, 0, 0.4, 0, 0, Map.of(EDGE_1, 0.3)))
                                .board(),
                        board("Z").board())
                .names("A", "upright-left");
    }

    /** Told in order: l = straight-edge along, c = across, w = winding sticks, q = square, S and E = the marks. */
    private static Situations doing(String order) {
        return doing(order, given());
    }

    private static Situations doing(String order, Situations given) {
        for (char what : order.toCharArray()) {
            switch (what) {
                case 'l' -> given.tests("A", Tool.STRAIGHT_EDGE, FACE_1);
                case 'c' -> given.tests("A", Tool.STRAIGHT_EDGE, FACE_1, 150);
                case 'w' -> given.tests("A", Tool.WINDING_STICKS, FACE_1);
                case 'q' -> given.tests("A", Tool.TRY_SQUARE, EDGE_1);
                case 'S' -> given.side("A", FACE_1, EDGE_1);
                case 'E' -> given.edge("A", EDGE_1, FACE_1);
                default -> throw new IllegalArgumentException(order);
            }
        }
        return given;
    }

    @ParameterizedTest(name = "{0} → {1}, {2} missing")
    @CsvSource({
        "lcwSqE, SOUND, 0, says.sound",
        "qwclSE, SOUND, 0, says.sound",
        "lcqSEw, CLOSE, 1, says.late",
        "lcwSE, CLOSE, 1, says.missing",
        "lwSqE, CLOSE, 1, says.missing",
        "cSqE, WRONG, 2, says.missing",
        "SElcwq, WRONG, 4, says.late",
        "SE, WRONG, 4, says.missing",
        "SEl, WRONG, 4, says.missing",
        "lcwS, OPEN, 0, says.open",
        "lcS, OPEN, 1, says.open",
        "S, WRONG, 3, says.missing",
        "E, OPEN, 1, says.open",
        "lcw, OPEN, 0, says.open",
    })
    void whatWasTriedBeforeTheMarkCounts(String order, Verdict verdict, int missing, String says) {
        Finding found = doing(order).about("A", rule);

        assertThat(found.verdict()).isEqualTo(verdict);
        assertThat(found.measured()).isEqualTo(new Measured(missing, "count", 0));
        assertThat(found.says().key()).isEqualTo(says);
        assertThat(found.credit()).isEqualTo(verdict == Verdict.SOUND ? 1 : verdict == Verdict.CLOSE ? 0.5 : 0);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "lcwSE|Board A was marked before it had been tried with the try-square. → A try-square on edge 1 would have shown 0.3 degrees off square.",
                "lcSqE|Board A was marked before it had been tried with the winding sticks. → Winding sticks on face 1 would have shown 0.4 mm.",
                "cwSqE|Board A was marked before it had been tried with the straight-edge along. → A straight-edge along face 1 would have shown 0.2 mm.",
                "lwSqE|Board A was marked before it had been tried with the straight-edge across. → A straight-edge across face 1 would have shown no light. Try it all the same, then mark.",
            })
    void itSaysWhatTheTrialWouldHaveShown(String order, String told) {
        Situations given = doing(order);

        assertThat(given.told(given.about("A", rule))).startsWith(told);
    }

    @ParameterizedTest(name = "without {0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "cwSqE|A straight-edge along face 1 would have shown no light.",
                "lwSqE|A straight-edge across face 1 would have shown no light.",
                "lcSqE|Winding sticks on face 1 would have shown no wind.",
                "lcwSE|A try-square on edge 1 would have shown no light.",
            })
    void onATrueBoardNothingWouldHaveShown(String order, String told) {
        Situations given = doing(
                order,
                Situations.porchShelf(board("A").board(), board("Z").board()).names("A", "upright-left"));

        assertThat(given.told(given.about("A", rule))).contains(told).doesNotContain("0 mm");
    }

    @ParameterizedTest(name = "stock on {0}: {1}")
    @CsvSource({"FACE_1, SOUND", "FACE_2, CLOSE"})
    void theSquareProvesTheEdgeOnlyFromTheFaceSide(Surface stock, Verdict verdict) {
        Situations given = doing("lcwS")
                .does(new Action.Test(9, "A", Tool.TRY_SQUARE, EDGE_1, 150.0, stock, null))
                .edge("A", EDGE_1, FACE_1);

        assertThat(given.about("A", rule).verdict()).isEqualTo(verdict);
    }

    @Test
    void aTrialOfAnotherSurfaceDoesNotCount() {
        Situations given = given().tests("A", Tool.STRAIGHT_EDGE, FACE_2)
                .tests("A", Tool.STRAIGHT_EDGE, FACE_2, 150)
                .tests("A", Tool.WINDING_STICKS, FACE_2)
                .marks("A", FACE_1, EDGE_1);

        assertThat(given.about("A", rule).measured()).isEqualTo(new Measured(4, "count", 0));
    }

    @Test
    void aMarkRubbedOutAndMadeAgainAfterTheTrialsIsProved() {
        Situations given = doing("SElcwq").rubsOut(2).rubsOut(3).marks("A", FACE_1, EDGE_1);

        assertThat(given.about("A", rule).verdict()).isEqualTo(Verdict.SOUND);
    }
}
