package org.marktwice.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.marktwice.rulebook.Upright.Lie.FACE_1_END_1_DOWN;
import static org.marktwice.rulebook.Upright.Lie.FACE_1_END_2_DOWN;
import static org.marktwice.rulebook.Upright.board;
import static org.marktwice.rulebook.Upright.job;
import static org.marktwice.rulebook.Upright.knot;
import static org.marktwice.rulebook.Upright.lay;
import static org.marktwice.rulebook.Upright.turn;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.marktwice.rulebook.Finding.Subject;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;

class MeasuredWhenNearTest {
    private final Rule rule = new MeasuredWhenNear();

    /** The knot lies at 185 ± 5, 12 mm from the housing at 202–220: 2 mm from its margin of 10. */
    private static Situations near() {
        return job(board("A", knot("k1", 185, 5)));
    }

    private static SurfacePoint at(Surface surface, double u, double v) {
        return new SurfacePoint(surface, u, v);
    }

    @ParameterizedTest
    @CsvSource({
        "FACE_1, 190, 60, FACE_1, 202, 60, SOUND", // edge of the knot to the housing's first line
        "FACE_1, 202, 10, FACE_1, 185, 60, SOUND", // the other way round, and askew
        "FACE_2, 185, 60, FACE_2, 211, 60, SOUND", // on the back, to the middle of the housing
        "FACE_1, 185, 60, FACE_1, 300, 60, SOUND", // to the end that the housing is set off from
        "FACE_1, 192.9, 60, FACE_1, 199.1, 60, SOUND", // both read 3 mm off
        "FACE_1, 193.1, 60, FACE_1, 202, 60, WRONG", // more than 3 mm off the knot
        "FACE_1, 190, 60, FACE_1, 198.9, 60, WRONG", // more than 3 mm off the housing
        "FACE_1, 190, 60, FACE_1, 250, 60, WRONG", // to nowhere
        "FACE_1, 0, 60, FACE_1, 202, 60, WRONG", // the housing set off, but not the knot
        "EDGE_1, 185, 9, FACE_1, 202, 60, WRONG", // the knot doesn't come out on that edge
    })
    void aMeasurementRunsFromTheKnotToTheJointOrToAnEnd(
            Surface one, double u1, double v1, Surface other, double u2, double v2, Verdict verdict) {
        Situations given = near().measures("A", at(one, u1, v1), at(other, u2, v2));
        lay(given, "A", FACE_1_END_2_DOWN);

        Finding found = given.about("A", rule);

        assertThat(found.verdict()).isEqualTo(verdict);
        assertThat(found.subject()).isEqualTo(new Subject("A", "upright-left", "left-housing"));
        assertThat(given.told(found)).contains("is 12 mm from the housing for the Shelf");
    }

    /** 197 − x of clearance: within 10 mm of the margin of 10 it is near. */
    @ParameterizedTest
    @CsvSource({"176.9, 0", "177.1, 1", "187, 1", "196.9, 1", "210, 1"})
    void onlyWhatIsNearNeedsMeasuring(double x, int findings) {
        assertThat(lay(job(board("A", knot("k1", x, 5))), "A", FACE_1_END_2_DOWN)
                        .judgedBy(rule))
                .hasSize(findings);
    }

    @Test
    void measuredOnlyAfterTurningIsCloseUntilItIsTurnedAgain() {
        Situations given = lay(near(), "A", FACE_1_END_2_DOWN);
        given.measures("A", at(Surface.FACE_1, 190, 60), at(Surface.FACE_1, 202, 60));

        Finding late = given.about("A", rule);
        turn(given, "A", FACE_1_END_1_DOWN, null);
        Finding again = turn(given, "A", FACE_1_END_2_DOWN, null).about("A", rule);

        assertThat(late.verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(late.credit()).isEqualTo(0.5);
        assertThat(late.step()).isEqualTo(3);
        assertThat(again.verdict()).isEqualTo(Verdict.SOUND);
    }

    @Test
    void anotherKnotsMeasurementDoesNotTell() {
        Situations given = job(board("A", knot("k1", 185, 5), knot("k2", 240, 5)))
                .measures("A", at(Surface.FACE_1, 185, 60), at(Surface.FACE_1, 202, 60));
        lay(given, "A", FACE_1_END_2_DOWN);

        assertThat(given.judgedBy(rule))
                .extracting(f -> f.evidence().knots().get(0) + " " + f.verdict())
                .containsExactly("k1 SOUND", "k2 WRONG");
    }

    @Test
    void itIsOpenUntilTheBoardIsTurned() {
        assertThat(near().names("A", "upright-left").about("A", rule).verdict()).isEqualTo(Verdict.OPEN);
    }
}
