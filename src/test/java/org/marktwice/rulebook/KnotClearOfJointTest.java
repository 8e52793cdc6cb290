package org.marktwice.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;
import static org.marktwice.rulebook.Upright.Lie.FACE_1_END_2_DOWN;
import static org.marktwice.rulebook.Upright.Lie.FACE_2_END_2_DOWN;
import static org.marktwice.rulebook.Upright.board;
import static org.marktwice.rulebook.Upright.job;
import static org.marktwice.rulebook.Upright.knot;
import static org.marktwice.rulebook.Upright.lay;
import static org.marktwice.timber.Surface.FACE_1;
import static org.marktwice.timber.Surface.FACE_2;

import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Trim;
import org.marktwice.rulebook.Finding.Subject;
import org.marktwice.timber.Knot;
import org.marktwice.timber.Surface;

class KnotClearOfJointTest {
    private final Rule rule = new KnotClearOfJoint();

    /** A knot of radius 5 ends at x + 5, the housing begins at 202: 197 − x of clearance, 10 wanted. */
    @ParameterizedTest
    @CsvSource({
        "100, 97, SOUND, 1",
        "186.9, 10.1, SOUND, 1",
        "187.1, 9.9, CLOSE, 0.99",
        "190, 7, CLOSE, 0.7",
        "191.9, 5.1, CLOSE, 0.51",
        "192.1, 4.9, WRONG, 0",
        "196, 1, WRONG, 0",
        "197.5, 0, WRONG, 0",
        "211, 0, WRONG, 0",
        "240, 15, SOUND, 1",
    })
    void aKnotKeepsItsMargin(double x, double clearance, Verdict verdict, double credit) {
        Situations given = lay(job(board("A", knot("k1", x, 5))), "A", FACE_1_END_2_DOWN);

        Finding found = given.about("A", rule);

        assertThat(found.verdict()).isEqualTo(verdict);
        assertThat(found.credit()).isCloseTo(credit, within(0.006));
        assertThat(Objects.requireNonNull(found.measured()).value()).isCloseTo(clearance, within(0.05));
        assertThat(found.measured().limit()).isEqualTo(10);
        assertThat(found.subject()).isEqualTo(new Subject("A", "upright-left", "left-housing"));
        assertThat(found.step()).isEqualTo(2);
        assertThat(found.evidence().knots()).containsExactly("k1");
    }

    /** Radius 8: margin 16, at 12 mm three quarters of it. Radius 3: margin 10, at 9 mm nine tenths. The big one counts. */
    @Test
    void theWorstKnotIsTheOneWithLeastOfItsOwnMarginNotTheNearest() {
        Knot big = knot("big", 202 - 12 - 8, 8);
        Knot small = knot("small", 220 + 9 + 3, 3);
        Situations given = lay(job(board("A", big, small)), "A", FACE_1_END_2_DOWN);

        Finding found = given.about("A", rule);

        assertThat(found.evidence().knots()).containsExactly("big");
        assertThat(found.credit()).isCloseTo(0.75, within(0.005));
        assertThat(Objects.requireNonNull(found.measured()).limit()).isEqualTo(16);
    }

    /**
     * Slip 14: a knot judged on one surface though it goes through. It leans 30° and comes out on the outside, face-2, at
     * x 173.8 ± 10, 18 mm short of the housing; but on the inside, face-1, its middle is at x 205, in the housing. Face
     * over the housing lies in face-2, to z 6: there the flank is at x 194.2, 7.8 · sin 30° = 3.9 mm square to it.
     */
    @ParameterizedTest
    @CsvSource({"FACE_1_END_2_DOWN, 0", "FACE_2_END_2_DOWN, 3.9"})
    void slip14AKnotThatGoesThroughIsJudgedAsABodyNotOnOneSurface(Upright.Lie lie, double clearance) {
        double start = 205 - 98 / Math.tan(Math.toRadians(30));
        Knot leaning = new Knot("k1", start, 90, 30, 80, 5, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);
        Situations given = lay(job(board("A", leaning)), "A", lie);

        Finding found = given.about("A", rule);

        assertThat(found.verdict()).isEqualTo(Verdict.WRONG);
        assertThat(Objects.requireNonNull(found.measured()).value()).isCloseTo(clearance, within(0.1));
        assertThat(found.says().key()).isEqualTo(clearance == 0 ? "says.wrong-in-through" : "says.wrong-through");
        assertThat(found.evidence().surfaces()).containsExactlyInAnyOrder(FACE_1, FACE_2);
        assertThat(given.told(found)).contains("goes right through");
    }

    /** Slip 17: a straight knot at 210 is in the housing either face up; end for end it is 205 − 98 = 107 away. */
    @ParameterizedTest
    @EnumSource(names = {"FACE_1_END_2_DOWN", "FACE_2_END_2_DOWN"})
    void slip17TurningOverDoesNotHelpWhereOnlyEndForEndDoes(Upright.Lie lie) {
        Situations given = lay(job(board("A", knot("k1", 210, 5))), "A", lie);

        Finding found = given.about("A", rule);

        assertThat(found.verdict()).isEqualTo(Verdict.WRONG);
        assertThat(given.told(found)).contains("end for end").endsWith("That keeps 107 mm clear.");
    }

    /** All 12 mm to spare come off end-2: the housing at 202, 7 mm from k1; off end-1 they move it to 214. k2 bars the other end. */
    @Test
    void slidingTheBoardAlongIsTheFirstRemedy() {
        Situations given = job(board("A", 312, knot("k1", 190, 5), knot("k2", 85, 5)))
                .names("A", "upright-left")
                .turns("A", FACE_1, Direction.RIGHT, Surface.EDGE_1, Direction.FRONT, new Trim(Surface.END_1, 0));

        Finding found = given.about("A", rule);

        assertThat(found.verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(given.told(found))
                .isEqualTo("Knot 1 of board A keeps only 7 mm from the housing for the Shelf; 10 mm is wanted."
                        + " → Leave it as it is turned and slide it along: 12 mm off end 1. That keeps 19 mm clear.");
    }

    /** Knots at 90 and 210 meet the housing whichever end is down; board B has none. */
    @Test
    void whereNoTurnClearsAnotherBoardIsNamedAndElseItIsToBeSetAside() {
        Knot[] hopeless = {knot("k1", 90, 5), knot("k2", 210, 5)};
        Situations withSpare = lay(job(board("A", hopeless), board("B")), "A", FACE_1_END_2_DOWN);
        Situations alone = lay(job(board("A", hopeless)), "A", FACE_2_END_2_DOWN);

        assertThat(withSpare.told(withSpare.about("A", rule)))
                .endsWith(
                        "→ No turn of board A will do. Use board B for the Left upright instead: no knot of it comes near.");
        assertThat(alone.told(alone.about("A", rule)))
                .endsWith("→ No turn of board A clears: set it aside and ask for another.");
    }

    @Test
    void aPartWaitsForItsBoardAndThenForItsTurn() {
        Situations given = job(board("A", knot("k1", 100, 5)));

        assertThat(given.judgedBy(rule))
                .extracting(Finding::subject, Finding::verdict)
                .containsExactly(tuple(Subject.part("upright-left"), Verdict.OPEN));
        assertThat(given.names("A", "upright-left").judgedBy(rule))
                .extracting(Finding::subject, Finding::verdict)
                .containsExactly(tuple(Subject.boardAs("A", "upright-left"), Verdict.OPEN));
    }

    @Test
    void aBoardWithoutKnotsAndAPartWithoutCutsGiveNothingToJudge() {
        Situations knotless = lay(job(board("A")), "A", FACE_1_END_2_DOWN);
        Situations uncut = job(board("A", 480, knot("k1", 12, 5)))
                .names("A", "shelf")
                .turns("A", FACE_1, Direction.TOP, Surface.EDGE_1, Direction.FRONT);

        assertThat(knotless.judgedBy(rule)).isEmpty();
        assertThat(uncut.judgedBy(rule)).isEmpty();
    }
}
