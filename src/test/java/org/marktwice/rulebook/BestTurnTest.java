package org.marktwice.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.marktwice.rulebook.Upright.Lie.FACE_1_END_2_DOWN;
import static org.marktwice.rulebook.Upright.Lie.FACE_2_END_2_DOWN;
import static org.marktwice.rulebook.Upright.board;
import static org.marktwice.rulebook.Upright.job;
import static org.marktwice.rulebook.Upright.knot;
import static org.marktwice.rulebook.Upright.lay;
import static org.marktwice.rulebook.Upright.turn;

import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.marktwice.drawing.Trim;
import org.marktwice.timber.Surface;

class BestTurnTest {
    private final Rule rule = new BestTurn();

    /**
     * With end-2 down a knot at x is 197 − x before the housing at 202–220, or x − 225 behind it; with end-1 down it is
     * 75 − x before the one at 80–98, or x − 103 behind it. Beyond 25 more doesn't count.
     */
    @ParameterizedTest
    @CsvSource({
        "150, FACE_1_END_2_DOWN, 25, 25, SOUND, 1, says.sound",
        "185, FACE_1_END_2_DOWN, 12, 25, CLOSE, 0.48, says.close",
        "185, FACE_2_END_1_DOWN, 25, 25, SOUND, 1, says.sound",
        "190, FACE_1_END_2_DOWN, 7, 25, WRONG, 0, says.wrong",
        "210, FACE_1_END_2_DOWN, 0, 25, WRONG, 0, says.wrong",
    })
    void theTurnAgainstTheBestOfThisBoard(
            double x, Upright.Lie lie, double chosen, double best, Verdict verdict, double credit, String says) {
        Situations given = lay(job(board("A", knot("k1", x, 5))), "A", lie);

        Finding found = given.about("A", rule);

        assertThat(found.verdict()).isEqualTo(verdict);
        assertThat(found.credit()).isCloseTo(credit, within(0.005));
        assertThat(Objects.requireNonNull(found.measured()).value()).isCloseTo(chosen, within(0.05));
        assertThat(found.measured().limit()).isCloseTo(best, within(0.05));
        assertThat(found.says().key()).isEqualTo(says);
        assertThat(given.told(found)).doesNotContain("{");
    }

    /** Slip 17: turned over from the one face to the other, where only end for end helps. */
    @Test
    void slip17TurnedOverWhereOnlyEndForEndHelps() {
        Situations given = lay(job(board("A", knot("k1", 210, 5))), "A", FACE_1_END_2_DOWN);
        turn(given, "A", FACE_2_END_2_DOWN, null);

        Finding found = given.about("A", rule);

        assertThat(found.verdict()).isEqualTo(Verdict.WRONG);
        assertThat(found.step()).isEqualTo(3);
        assertThat(given.told(found)).contains("Turn board A end for end: face 1 to the left, edge 1 to the front.");
    }

    /**
     * Knots at 85 and at x bar both ends; with end-2 down x has 197 − x, with end-1 down the one at 85 has nothing. Of a
     * board 306 long, off mm off end-1 add as much, up to 6; half a millimetre either way is as good.
     */
    @ParameterizedTest
    @CsvSource({
        "190, 6, SOUND, says.sound",
        "190, 5.6, SOUND, says.sound",
        "190, 4, CLOSE, says.close",
        "190, 2, WRONG, says.wrong",
        "195, 6, SOUND, says.sound-none-clear",
        "195, 3, CLOSE, says.close-none-clear",
        "195, 0, WRONG, says.wrong-none-clear",
    })
    void trimmingCountsToo(double x, double off, Verdict verdict, String says) {
        Situations given =
                job(board("A", 306, knot("k1", x, 5), knot("k2", 85, 5))).names("A", "upright-left");
        turn(given, "A", FACE_1_END_2_DOWN, new Trim(Surface.END_1, off));

        Finding found = given.about("A", rule);

        assertThat(found.verdict()).isEqualTo(verdict);
        assertThat(found.says().key()).isEqualTo(says);
        if (verdict != Verdict.SOUND) {
            assertThat(given.told(found)).contains("slide it along: 6 mm off end 1");
        }
    }

    @Test
    void withoutKnotsThereIsNothingToChooseAndBeforeTheTurnItIsOpen() {
        assertThat(lay(job(board("A")), "A", FACE_1_END_2_DOWN).judgedBy(rule)).isEmpty();
        assertThat(job(board("A", knot("k1", 150, 5)))
                        .names("A", "upright-left")
                        .about("A", rule)
                        .verdict())
                .isEqualTo(Verdict.OPEN);
    }
}
