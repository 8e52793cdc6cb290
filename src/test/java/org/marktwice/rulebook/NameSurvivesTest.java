package org.marktwice.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.marktwice.Fixtures.board;
import static org.marktwice.drawing.Direction.FRONT;
import static org.marktwice.drawing.Direction.RIGHT;
import static org.marktwice.timber.Surface.EDGE_1;
import static org.marktwice.timber.Surface.END_1;
import static org.marktwice.timber.Surface.FACE_1;

import java.util.Objects;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.marktwice.drawing.Trim;
import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;

class NameSurvivesTest {
    private static final Board LONG = board("A").size(330, 120, 18).board();
    private final Rule rule = new NameSurvives();

    private static Situations named(Surface on, double u, double v) {
        return Situations.porchShelf(LONG, board("Z").board()).names("A", "upright-left", new SurfacePoint(on, u, v));
    }

    /**
     * Turned so that end 2 is at the bottom, with 10 mm off end 1 and 20 mm off end 2: the housing opens on face 1, 80 to
     * 98 mm up, which is 212 to 230 mm from end 1. A name is 40 mm long and 15 mm high.
     */
    @ParameterizedTest(name = "on {0} at {1} → {3}")
    @CsvSource({
        "FACE_1, 100, 60, SOUND, says.sound, 70",
        "FACE_1, 192, 60, SOUND, says.sound, 0",
        "FACE_1, 195, 60, CLOSE, says.touches-cut, -3",
        "FACE_1, 220, 60, WRONG, says.in-cut, -28",
        "FACE_2, 220, 60, SOUND, says.sound, 70",
        "FACE_1, 5, 60, WRONG, says.on-waste, -10",
        "FACE_1, 25, 60, CLOSE, says.touches-waste, -5",
        "FACE_2, 325, 60, WRONG, says.on-waste, -20",
        "EDGE_1, 220, 15, WRONG, says.in-cut, -6",
        "END_1, 60, 9, WRONG, says.on-waste, -16.5",
    })
    void theNameStaysClearOfWhatIsCutAndTrimmed(
            Surface on, double u, double v, Verdict verdict, String says, double gap) {
        Situations given = named(on, u, v).turns("A", FACE_1, RIGHT, EDGE_1, FRONT, new Trim(END_1, 10));

        Finding found = given.about("A", rule);

        assertThat(found.verdict()).isEqualTo(verdict);
        assertThat(found.says().key()).isEqualTo(says);
        Finding.Measured measured = Objects.requireNonNull(found.measured());
        assertThat(measured.value()).isEqualTo(gap, Offset.offset(1e-9));
        assertThat(found.step()).isEqualTo(2);
        assertThat(found.evidence().points()).containsExactly(new SurfacePoint(on, u, v));
    }

    @Test
    void aPlaceThatStaysIsShownOnThisBoard() {
        Situations given = named(FACE_1, 220, 60).turns("A", FACE_1, RIGHT, EDGE_1, FRONT, new Trim(END_1, 10));

        assertThat(given.told(given.about("A", rule)))
                .isEqualTo("The name on face 1 of board A stands where the housing for the Shelf is cut."
                        + " → Write it on face 1, about 165 mm from end 1.");
    }

    @ParameterizedTest(name = "not yet turned, on {0} at {1} → {2}")
    @CsvSource({
        "FACE_1, 165, SOUND, says.any-turn",
        "FACE_1, 220, OPEN, says.open",
        "FACE_1, 2, OPEN, says.open",
    })
    void beforeTheBoardIsTurnedOnlyWhatEveryTurnComesToIsDecided(Surface on, double u, Verdict verdict, String says) {
        Finding found = named(on, u, 60).about("A", rule);

        assertThat(found.verdict()).isEqualTo(verdict);
        assertThat(found.says().key()).isEqualTo(says);
    }

    /** Nothing to spare and only one way to lie as marked: the housing is 202 to 220 mm from end 1. */
    @Test
    void theMarksMayLeaveNoTurnInWhichTheNameStays() {
        Situations given = Situations.porchShelf(board("A").board(), board("Z").board())
                .names("A", "upright-left", new SurfacePoint(FACE_1, 211, 60));
        assertThat(given.about("A", rule).verdict()).isEqualTo(Verdict.OPEN);

        Finding marked = given.marks("A", FACE_1, EDGE_1).about("A", rule);

        assertThat(marked.verdict()).isEqualTo(Verdict.WRONG);
        assertThat(marked.says().key()).isEqualTo("says.no-turn");
    }

    @Test
    void anEndThatIsNotTrimmedKeepsItsName() {
        Situations given = Situations.porchShelf(board("A").board(), board("Z").board())
                .names("A", "upright-left", new SurfacePoint(END_1, 60, 9))
                .turns("A", FACE_1, RIGHT, EDGE_1, FRONT);

        assertThat(given.about("A", rule).verdict()).isEqualTo(Verdict.SOUND);
    }
}
