package org.marktwice.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.marktwice.Fixtures.UPRIGHT_LEFT;
import static org.marktwice.timber.Surface.EDGE_1;
import static org.marktwice.timber.Surface.END_1;
import static org.marktwice.timber.Surface.END_2;
import static org.marktwice.timber.Surface.FACE_1;

import java.util.List;
import java.util.Random;
import org.joml.Vector3d;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.marktwice.Fixtures;
import org.marktwice.timber.Board;
import org.marktwice.timber.Box;
import org.marktwice.timber.Surface;

class PlacingTest {
    private static final Drawing DRAWING = Fixtures.porchShelfDrawing();
    private static final Board A = Fixtures.porchShelfBoards().get(0);
    private static final Turn RIGHT_FRONT =
            Turn.facing(FACE_1, Direction.RIGHT, EDGE_1, Direction.FRONT).orElseThrow();

    private static Placing left(Board board, Turn turn, Trim trim) {
        return new Placing(DRAWING, UPRIGHT_LEFT, board, turn, trim);
    }

    @Test
    void theHousingOfTheDesignsExampleLies86FromEnd2() {
        // the shelf is 80 up, end-2 is at the bottom and loses the other 6 of the 12 mm to spare
        Placing placing = left(A, RIGHT_FRONT, new Trim(END_1, 6));
        Box housing = placing.cuts().get(0).boxes().get(0);

        assertThat(A.size().length() - housing.max(0)).isEqualTo(86, within(1e-9));
        assertThat(housing.extent(0)).isEqualTo(18, within(1e-9));
        // 6 mm deep from face-1, which looks to the shelf, and from edge to edge
        assertThat(housing.min(2)).isEqualTo(12, within(1e-9));
        assertThat(housing.max(2)).isEqualTo(18, within(1e-9));
        assertThat(housing.min(1)).isEqualTo(0, within(1e-9));
        assertThat(housing.max(1)).isEqualTo(120, within(1e-9));
    }

    @ParameterizedTest(name = "{1} mm off {0}: {2} off end-1, {3} off end-2, housing {4} from end-1")
    @CsvSource({
        "END_1, 0, 0, 12, 202", // 312 - 12 - 80 - 18
        "END_1, 6, 6, 6, 208",
        "END_1, 12, 12, 0, 214",
        "END_2, 0, 12, 0, 214",
        "END_2, 4.5, 7.5, 4.5, 209.5",
    })
    void whatComesOffOneEndMovesTheHousing(Surface end, double mm, double one, double two, double from) {
        Placing placing = left(A, RIGHT_FRONT, new Trim(end, mm));

        assertThat(placing.surplus()).isEqualTo(12, within(1e-9));
        assertThat(placing.off(END_1)).isEqualTo(one, within(1e-9));
        assertThat(placing.off(END_2)).isEqualTo(two, within(1e-9));
        assertThat(placing.partInBoard().min(0)).isEqualTo(one, within(1e-9));
        assertThat(placing.partInBoard().max(0)).isEqualTo(312 - two, within(1e-9));
        assertThat(placing.cuts().get(0).boxes().get(0).min(0)).isEqualTo(from, within(1e-9));
    }

    @Test
    void turnedEndForEndTheHousingIsMeasuredFromTheOtherEnd() {
        Turn other =
                Turn.facing(FACE_1, Direction.RIGHT, EDGE_1, Direction.BACK).orElseThrow();
        Box housing = left(A, other, new Trim(END_1, 6)).cuts().get(0).boxes().get(0);

        assertThat(housing.min(0)).isEqualTo(86, within(1e-9));
        assertThat(housing.max(2)).isEqualTo(18, within(1e-9));
    }

    @Test
    void turnedOverTheHousingLiesInTheOtherFace() {
        Turn over = Turn.facing(FACE_1, Direction.LEFT, EDGE_1, Direction.FRONT).orElseThrow();
        Box housing = left(A, over, Trim.ALL_OFF_END_2).cuts().get(0).boxes().get(0);

        assertThat(housing.min(2)).isEqualTo(0, within(1e-9));
        assertThat(housing.max(2)).isEqualTo(6, within(1e-9));
        assertThat(housing.min(0)).isEqualTo(80, within(1e-9));
    }

    @Test
    void aBoardALittleWiderAndThickerLiesCentred() {
        Board stout = Fixtures.board("S").size(300, 120.4, 18.2).board();
        Box part = left(stout, RIGHT_FRONT, Trim.ALL_OFF_END_2).partInBoard();

        assertThat(part.min(1)).isEqualTo(0.2, within(1e-9));
        assertThat(part.max(1)).isEqualTo(120.2, within(1e-9));
        assertThat(part.min(2)).isEqualTo(0.1, within(1e-9));
        assertThat(part.max(2)).isEqualTo(18.1, within(1e-9));
    }

    @Test
    void thereAndBackIsWhereOneStarted() {
        Random random = new Random(5);
        for (Part part : DRAWING.parts()) {
            Board board = Fixtures.board("L").size(480, 120, 18).board();
            for (Turn turn : Turn.in(part, false)) {
                Placing placing = new Placing(DRAWING, part, board, turn, new Trim(END_2, random.nextInt(4)));
                Vector3d point = new Vector3d(random.nextDouble(), random.nextDouble(), random.nextDouble()).mul(300);
                assertThat(placing.toBoard(placing.toJob(point)).distance(point))
                        .isLessThan(1e-9);
                assertThat(placing.toJob(placing.partInBoard())
                                .min()
                                .distance(part.box().min()))
                        .isLessThan(1e-9);
                assertThat(placing.toJob(placing.partInBoard())
                                .max()
                                .distance(part.box().max()))
                        .isLessThan(1e-9);
            }
        }
    }

    @Test
    void theCutsOfAllTurnsHaveTheVolumeThatIsDrawn() {
        for (Turn turn : Turn.in(UPRIGHT_LEFT, false)) {
            List<Cut> cuts = left(A, turn, Trim.ALL_OFF_END_2).cuts();
            assertThat(cuts).hasSize(1);
            assertThat(cuts.get(0).boxes().get(0).volume()).isEqualTo(6 * 120 * 18, within(1e-6));
        }
    }

    @Test
    void onlyEndsAreTrimmedAndNeverByLessThanNothing() {
        assertThatThrownBy(() -> new Trim(FACE_1, 3)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Trim(END_1, -1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Trim(END_1, Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }
}
