package org.marktwice.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.marktwice.Fixtures.board;
import static org.marktwice.timber.Surface.EDGE_1;
import static org.marktwice.timber.Surface.EDGE_2;
import static org.marktwice.timber.Surface.FACE_1;
import static org.marktwice.timber.Surface.FACE_2;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.marktwice.rulebook.Finding.Measured;
import org.marktwice.scenario.Practice;
import org.marktwice.timber.Board;
import org.marktwice.timber.Shape;
import org.marktwice.timber.Surface;
import org.marktwice.timber.Trueness;

class MarkedSurfaceTrueTest {
    private final Rule rule = new MarkedSurfaceTrue();

    private static Situations marked(Board board) {
        return Situations.porchShelf(board, board("Z").board())
                .names(board.id(), "upright-left")
                .marks(board.id(), FACE_1, EDGE_1);
    }

    /** The board is 300 long, so that a sag of 0.3 mm is 1 mm a metre. */
    @ParameterizedTest(name = "bow {0}, spring {1}, twist {2}, edge {3}° off → {4}")
    @CsvSource({
        "0.30, 0, 0, 0, SOUND, says.sound",
        "-0.40, 0, 0, 0, CLOSE, says.along",
        "0.46, 0, 0, 0, WRONG, says.along",
        "0, -0.30, 0, 0, SOUND, says.sound",
        "0, 0.50, 0, 0, WRONG, says.along",
        "0, 0, 1.0, 0, SOUND, says.sound",
        "0, 0, -1.4, 0, CLOSE, says.wind",
        "0, 0, 1.6, 0, WRONG, says.wind",
        "0, 0, 0, 0.5, SOUND, says.sound",
        "0, 0, 0, -0.7, CLOSE, says.square",
        "0, 0, 0, 0.8, WRONG, says.square",
        "0.40, 0, 1.6, 0.1, WRONG, says.wind",
    })
    void theWorstReadingDecides(
            double bow, double spring, double twist, double offSquare, Verdict verdict, String says) {
        Board board = board("A")
                .shape(new Shape(bow, spring, twist, 0, 0, Map.of(EDGE_1, offSquare)))
                .board();

        Finding found = marked(board).about("A", rule);

        assertThat(found.verdict()).isEqualTo(verdict);
        assertThat(found.says().key()).isEqualTo(says);
        assertThat(found.credit()).isEqualTo(verdict == Verdict.SOUND ? 1 : verdict == Verdict.CLOSE ? 0.5 : 0);
    }

    /** The workshop's ratios are set about the cup that this board has. */
    @ParameterizedTest(name = "clear up to {0}, poor up to {1} of this cup → {2}")
    @CsvSource({"1.02, 1.5, SOUND", "0.9, 1.02, CLOSE", "0.7, 0.98, WRONG"})
    void theWorkshopSetsHowMuchCupIsTrue(double clear, double poor, Verdict verdict) {
        Board board = board("A").pith(60, -12).moisture(16, 11).board();
        double cup = Math.abs(Trueness.across(board, FACE_1, 150).orElseThrow());
        assertThat(cup).isGreaterThan(0.3);
        Situations given = marked(board)
                .practice(p -> new Practice(
                        p.faceSide(),
                        p.heartSide(),
                        p.knotMargin(),
                        new Practice.CupRatio(120 / (clear * cup), 120 / (poor * cup)),
                        p.size(),
                        p.gap(),
                        p.worth(),
                        p.guidance(),
                        p.aids()));

        Finding found = given.about("A", rule);

        assertThat(found.verdict()).isEqualTo(verdict);
        assertThat(found.measured()).isEqualTo(new Measured(cup, "mm", 120 / (120 / (clear * cup))));
    }

    @ParameterizedTest
    @CsvSource({"FACE_2, EDGE_1", "FACE_1, EDGE_2"})
    void aSawnSurfaceTakesNoMarkAndAPlanedOneIsNamedInstead(Surface side, Surface edge) {
        Situations given = Situations.porchShelf(
                        board("A").dressed(FACE_1, EDGE_1).board(), board("Z").board())
                .names("A", "upright-left")
                .marks("A", side, edge);

        Finding found = given.about("A", rule);

        Surface sawn = side == FACE_2 ? FACE_2 : EDGE_2;
        Surface planed = side == FACE_2 ? FACE_1 : EDGE_1;
        assertThat(found.verdict()).isEqualTo(Verdict.WRONG);
        assertThat(found.step()).isEqualTo(side == FACE_2 ? 2 : 3);
        assertThat(given.told(found))
                .startsWith(capital(sawn) + " of board A is marked, but it is still as sawn.")
                .endsWith("→ " + capital(planed) + " of board A is planed and true, and can be marked instead.");
    }

    private static String capital(Surface surface) {
        return Character.toUpperCase(surface.spoken().charAt(0))
                + surface.spoken().substring(1);
    }

    @Test
    void aTwistedBoardHasNothingBetterSoItIsToBePlaned() {
        Situations given =
                marked(board("A").shape(new Shape(0, 0, 2.5, 0, 0, Map.of())).board());

        assertThat(given.told(given.about("A", rule)))
                .isEqualTo(
                        "The winding sticks on face 1 of board A show 2.5 mm; up to 1 mm counts as out of wind here."
                                + " → Board A has no other surface that is true enough. Ask for face 1 to be planed, or choose another board.");
    }

    @Test
    void aFaceThatIsFarOutIsWrongBeforeTheEdgeIsMarkedAndATrueOneOpen() {
        Situations twisted = Situations.porchShelf(
                        board("A").shape(new Shape(0, 0, 2.5, 0, 0, Map.of())).board(),
                        board("B").board(),
                        board("Z").board())
                .names("A", "upright-left")
                .names("B", "upright-right")
                .side("A", FACE_1, EDGE_1)
                .side("B", FACE_1, EDGE_2);

        assertThat(twisted.about("A", rule).verdict()).isEqualTo(Verdict.WRONG);
        assertThat(twisted.about("B", rule).verdict()).isEqualTo(Verdict.OPEN);
    }
}
