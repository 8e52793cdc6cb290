package org.marktwice.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.marktwice.rulebook.Upright.Lie.FACE_1_END_2_DOWN;
import static org.marktwice.rulebook.Upright.job;
import static org.marktwice.rulebook.Upright.lay;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.marktwice.Fixtures;
import org.marktwice.bench.Reason;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.JobAxis;
import org.marktwice.drawing.Joint;
import org.marktwice.drawing.Overall;
import org.marktwice.drawing.Part;
import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;

/**
 * The boards are 120 wide with the pith 2 mm under face-2, so that face-1 lies 20 from it, and shrink 4.0 % radially and
 * 7.7 % tangentially in all. By the stress-free map face-1 is hollow by a·(r·cos(k·θ) − 20), with r = √(60² + 20²),
 * θ = atan(60/20), a and b the ratios of the radial and tangential sizes and k = b/a.
 */
class CupWithinLimitTest {
    private final Rule rule = new CupWithinLimit();

    private static double hollow(double from, double to) {
        double a = (1 - 0.040 * (1 - to / 30)) / (1 - 0.040 * (1 - from / 30));
        double b = (1 - 0.077 * (1 - to / 30)) / (1 - 0.077 * (1 - from / 30));
        return a * (Math.hypot(60, 20) * Math.cos(b / a * Math.atan2(60, 20)) - 20);
    }

    private static Board board(String id, double from, double to) {
        return Fixtures.board(id).pith(60, -2).moisture(from, to).board();
    }

    /** The limits on 120 mm: 1.2 mm is 1 in 100, 1.6 mm 1 in 75; and 1 mm over the housing, which is as wide as the board. */
    @ParameterizedTest
    @CsvSource({
        "12, 12, 0, SOUND, says.sound-flat",
        "16, 10, 0.58, SOUND, says.sound",
        "16, 6, 0.98, SOUND, says.sound",
        "18, 6, 1.16, CLOSE, says.close-joint",
        "20, 6, 1.34, CLOSE, says.close",
        "22, 6, 1.52, CLOSE, says.close",
        "24, 6, 1.69, WRONG, says.wrong",
        "28, 6, 2.04, WRONG, says.wrong",
    })
    void cupOverTheWholeWidthAndOverTheJoint(double from, double to, double cup, Verdict verdict, String says) {
        Situations given = lay(job(board("A", from, to)), "A", FACE_1_END_2_DOWN);

        Finding found = given.about("A", rule);

        assertThat(hollow(from, to)).isCloseTo(cup, within(0.01));
        assertThat(Objects.requireNonNull(found.measured()).value()).isCloseTo(cup, within(0.02));
        assertThat(found.verdict()).isEqualTo(verdict);
        assertThat(found.says().key()).isEqualTo(says);
        assertThat(found.evidence().surfaces()).contains(Surface.FACE_1);
        if (verdict == Verdict.CLOSE) {
            assertThat(found.credit()).isCloseTo(found.measured().limit() / cup, within(0.02));
        }
        assertThat(given.told(found)).contains("oard A").doesNotContain("{");
    }

    /** Hollow by 1.16 mm over its 120 mm, too much for a housing; but in a rebate it meets its mate over 18 mm only. */
    @ParameterizedTest
    @EnumSource(names = {"FACE_1_END_2_DOWN", "FACE_1_END_1_DOWN"})
    void whatCountsAtAJointIsTheHollowOverItsOwnWidth(Upright.Lie lie) {
        Part back = Fixtures.timber("back", "Back")
                .size(300, 476, 18)
                .at(12, 102, 0)
                .runs(JobAxis.HIGH, JobAxis.ACROSS)
                .marks(List.of(Direction.FRONT), List.of(Direction.LEFT))
                .part();
        Situations given = Situations.of(
                Fixtures.drawing(
                        new Overall(488, 120, 300),
                        List.of(Fixtures.UPRIGHT_LEFT, back),
                        new Joint.Rebate("corner", "upright-left", "back")),
                board("A", 18, 6));

        assertThat(lay(given, "A", lie).about("A", rule).verdict()).isEqualTo(Verdict.SOUND);
    }

    @Test
    void aBoxedHeartIsCloseAndSaysToExpectACheck() {
        Board boxed = Fixtures.board("A").pith(60, 9).moisture(18, 6).board();
        Situations given = lay(job(boxed), "A", FACE_1_END_2_DOWN);

        Finding found = given.about("A", rule);

        assertThat(found.verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(given.told(found)).contains("expect a check");
    }

    @Test
    void aFlatterBoardIsNamedAndElseItIsToBeSetAside() {
        Situations withSpare = lay(job(board("A", 28, 6), Fixtures.board("B").board()), "A", FACE_1_END_2_DOWN);
        Situations alone = lay(job(board("A", 28, 6)), "A", FACE_1_END_2_DOWN);

        assertThat(withSpare.told(withSpare.about("A", rule))).contains("Use board B for the Left upright");
        assertThat(alone.told(alone.about("A", rule))).endsWith("→ Set board A aside as cupped and ask for another.");
    }

    @Test
    void aBoardSetAsideIsNotJudgedAndOneStillToBeTurnedIsOpen() {
        assertThat(job(board("A", 28, 6)).setsAside("A", Reason.CUPPED).judgedBy(rule))
                .isEmpty();
        assertThat(job(board("A", 12, 12))
                        .names("A", "upright-left")
                        .about("A", rule)
                        .verdict())
                .isEqualTo(Verdict.OPEN);
    }
}
