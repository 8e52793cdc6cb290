package org.marktwice.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.marktwice.rulebook.Upright.Lie.FACE_1_END_2_DOWN;
import static org.marktwice.rulebook.Upright.job;
import static org.marktwice.rulebook.Upright.lay;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.marktwice.Fixtures;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.JobAxis;
import org.marktwice.drawing.Joint;
import org.marktwice.drawing.Overall;
import org.marktwice.drawing.Part;
import org.marktwice.scenario.Practice;
import org.marktwice.scenario.Practice.HeartSide;
import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;

class HeartSideAsSetTest {
    private final Rule rule = new HeartSideAsSet();

    private static Situations set(Situations given, HeartSide side) {
        return given.practice(p -> new Practice(
                p.faceSide(),
                side,
                p.knotMargin(),
                p.cupRatio(),
                p.size(),
                p.gap(),
                p.worth(),
                p.guidance(),
                p.aids()));
    }

    private static Board pithUnderFace2() {
        return Fixtures.board("A").pith(60, -80).board();
    }

    /** The pith is under face-2, so that is the heart side. In the left upright the middle of the job is to the right. */
    @ParameterizedTest
    @CsvSource({
        "FACE_1_END_2_DOWN, AWAY, SOUND, says.sound-away",
        "FACE_1_END_1_DOWN, AWAY, SOUND, says.sound-away",
        "FACE_2_END_2_DOWN, AWAY, WRONG, says.wrong-away",
        "FACE_2_END_1_DOWN, TOWARDS, SOUND, says.sound-towards",
        "FACE_1_END_2_DOWN, TOWARDS, WRONG, says.wrong-towards",
    })
    void theHeartSideLooksAsSet(Upright.Lie lie, HeartSide side, Verdict verdict, String says) {
        Situations given = lay(set(job(pithUnderFace2()), side), "A", lie);

        Finding found = given.about("A", rule);

        assertThat(found.verdict()).isEqualTo(verdict);
        assertThat(found.says().key()).isEqualTo(says);
        assertThat(found.evidence().surfaces()).containsExactly(Surface.FACE_2);
        assertThat(given.told(found)).contains("heart side of board A is face 2");
    }

    /** Slip 13, hollow and heart side confused: the remedy shows the heart side where it should look. */
    @Test
    void slip13TheRemedyTurnsTheBoardOver() {
        Situations given = lay(set(job(pithUnderFace2()), HeartSide.TOWARDS), "A", FACE_1_END_2_DOWN);

        String told = given.told(given.about("A", rule));

        assertThat(told)
                .contains("The hollow side is the bark side")
                .contains("face over")
                .contains("face 1 to the left");
    }

    /** Only face-1 and edge-1 are planed, so that the face side can't be put on face-2. */
    @Test
    void whereTheDrawingAllowsNoSuchTurnAnotherBoardIsNeeded() {
        Board sawn = Fixtures.board("A")
                .pith(60, -80)
                .dressed(Surface.FACE_1, Surface.EDGE_1)
                .board();
        Situations given = lay(set(job(sawn), HeartSide.TOWARDS), "A", FACE_1_END_2_DOWN);

        assertThat(given.told(given.about("A", rule))).endsWith("Use another board.");
    }

    @ParameterizedTest
    @CsvSource({"60, -80, ANY", "-50, 9, AWAY"})
    void whereItIsLeftOpenOrTheBoardHasNoHeartSideThereIsNothingToJudge(double y, double z, HeartSide side) {
        Board board = Fixtures.board("A").pith(y, z).board();

        assertThat(lay(set(job(board), side), "A", FACE_1_END_2_DOWN).judgedBy(rule))
                .isEmpty();
        assertThat(set(job(board), side).names("A", "upright-left").judgedBy(rule))
                .isEmpty();
    }

    /** A shelf from 141 to 159 up lies across the middle of 300; one from 80 to 98 lies below it. */
    @ParameterizedTest
    @CsvSource({"141, false", "80, true"})
    void aPartAcrossTheMiddleHasNoInside(double up, boolean judged) {
        Part shelf = Fixtures.timber("shelf", "Shelf")
                .size(476, 120, 18)
                .at(12, 0, up)
                .runs(JobAxis.ACROSS, JobAxis.DEEP)
                .marks(List.of(Direction.TOP), List.of(Direction.FRONT))
                .part();
        Situations given = Situations.of(
                        Fixtures.drawing(
                                new Overall(488, 120, 300),
                                List.of(Fixtures.UPRIGHT_LEFT, shelf),
                                new Joint.ThroughHousing("left-housing", "upright-left", "shelf")),
                        Fixtures.board("S").size(480, 120, 18).board())
                .names("S", "shelf")
                .turns("S", Surface.FACE_1, Direction.TOP, Surface.EDGE_1, Direction.FRONT);

        assertThat(set(given, HeartSide.AWAY).judgedBy(rule)).hasSize(judged ? 1 : 0);
        if (judged) assertThat(given.about("S", rule).verdict()).isEqualTo(Verdict.SOUND);
    }

    @Test
    void itIsOpenUntilTheBoardIsTurned() {
        Situations given = set(job(pithUnderFace2()), HeartSide.AWAY).names("A", "upright-left");

        assertThat(given.about("A", rule).verdict()).isEqualTo(Verdict.OPEN);
    }
}
