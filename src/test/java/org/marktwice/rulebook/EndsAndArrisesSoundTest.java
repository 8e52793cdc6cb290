package org.marktwice.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.marktwice.rulebook.Upright.Lie.FACE_1_END_2_DOWN;
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
import org.marktwice.timber.Knot;
import org.marktwice.timber.Surface;

class EndsAndArrisesSoundTest {
    private final Rule rule = new EndsAndArrisesSound();

    /** A dead knot of radius 5 reaches from x − 5 to x + 5; the finished ends are at 0 and 300, 10 mm are wanted. */
    @ParameterizedTest
    @CsvSource({
        "20, 15, SOUND, 1, end-1",
        "15.1, 10.1, SOUND, 1, end-1",
        "14.5, 9.5, CLOSE, 0.95, end-1",
        "10.1, 5.1, CLOSE, 0.51, end-1",
        "9, 4, WRONG, 0, end-1",
        "2, 0, WRONG, 0, end-1",
        "288, 7, CLOSE, 0.7, end-2",
    })
    void aDeadKnotKeepsItsMarginFromTheFinishedEnds(
            double x, double clearance, Verdict verdict, double credit, String end) {
        Situations given = lay(job(board("A", knot("k1", x, 5, 0))), "A", FACE_1_END_2_DOWN);

        Finding found = given.about("A", rule);

        assertThat(found.verdict()).isEqualTo(verdict);
        assertThat(found.credit()).isCloseTo(credit, within(0.006));
        assertThat(Objects.requireNonNull(found.measured()).value()).isCloseTo(clearance, within(0.05));
        assertThat(found.says().values()).containsEntry("end", Surface.of(end).orElseThrow());
        assertThat(given.told(found)).contains("knot 1");
    }

    /** Dead from 9 above face-2 it is dead in the upper half; from 18 on nothing of it is in the board. */
    @ParameterizedTest
    @CsvSource({"9, WRONG", "18,", "Infinity,"})
    void onlyTheDeadPartCounts(double deadFrom, Verdict verdict) {
        Situations given = lay(job(board("A", knot("k1", 7, 5, deadFrom))), "A", FACE_1_END_2_DOWN);

        assertThat(given.judgedBy(rule))
                .extracting(Finding::verdict)
                .isEqualTo(verdict == null ? java.util.List.of() : java.util.List.of(verdict));
    }

    /**
     * The board is 312 long. A knot from 16 to 26 keeps 16 from end-1 as it is; with 12 mm off end-1 it keeps 4, and 8 less
     * off would do: 6 mm less.
     */
    @Test
    void theEndIsTheFinishedOne() {
        Situations asItIs = job(board("A", 312, knot("k1", 21, 5, 0))).names("A", "upright-left");
        Situations trimmed = job(board("A", 312, knot("k1", 21, 5, 0))).names("A", "upright-left");

        Finding whole = turn(asItIs, "A", FACE_1_END_2_DOWN, null).about("A", rule);
        Finding short12 = turn(trimmed, "A", FACE_1_END_2_DOWN, new Trim(Surface.END_1, 12))
                .about("A", rule);

        assertThat(whole.verdict()).isEqualTo(Verdict.SOUND);
        assertThat(short12.verdict()).isEqualTo(Verdict.WRONG);
        assertThat(Objects.requireNonNull(short12.measured()).value()).isCloseTo(4, within(0.05));
        assertThat(trimmed.told(short12))
                .endsWith("→ Take at least 6 mm less off end 1 of board A, and as much more off the other end.");
    }

    /** A knot of radius 2 at x 4 lies whole within the 12 mm that come off. */
    @Test
    void aKnotThatIsTrimmedOffWholeIsNoFault() {
        Situations given = job(board("A", 312, knot("k1", 4, 2, 0))).names("A", "upright-left");

        assertThat(turn(given, "A", FACE_1_END_2_DOWN, new Trim(Surface.END_1, 12))
                        .judgedBy(rule))
                .isEmpty();
    }

    /** From the pith at (60, −80) straight to the arris of face-1 and edge-1 at (0, 18), half-way along. */
    @ParameterizedTest
    @CsvSource({"FACE_1, EDGE_1, WRONG", "FACE_1, EDGE_2, SOUND", "FACE_2, EDGE_1, SOUND", "EDGE_1, EDGE_2, SOUND"})
    void aDeadKnotAcrossTheMarkedArrisIsWrongAcrossAnotherItIsNot(Surface side, Surface edge, Verdict verdict) {
        double azimuth = Math.toDegrees(Math.atan2(98, -60));
        Knot across = new Knot("k1", 150, azimuth, 90, 80, 5, 60, Double.POSITIVE_INFINITY);
        Situations given = job(board("A", across));
        given.side("A", side, side.isFace() ? Surface.EDGE_1 : Surface.FACE_1);
        given.edge("A", edge, Surface.FACE_1);
        lay(given, "A", FACE_1_END_2_DOWN);

        Finding found = given.about("A", rule);

        assertThat(found.verdict()).isEqualTo(verdict);
        assertThat(found.says().key()).isEqualTo(verdict == Verdict.WRONG ? "says.wrong-arris" : "says.sound");
        assertThat(given.told(found)).doesNotContain("{");
    }

    @Test
    void anEndIsOpenUntilTheBoardIsTurned() {
        assertThat(job(board("A", knot("k1", 20, 5, 0)))
                        .names("A", "upright-left")
                        .about("A", rule)
                        .verdict())
                .isEqualTo(Verdict.OPEN);
        assertThat(job(board("A", knot("k1", 20, 5))).names("A", "upright-left").judgedBy(rule))
                .isEmpty();
    }
}
