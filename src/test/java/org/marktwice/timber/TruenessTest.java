package org.marktwice.timber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.marktwice.timber.Surface.EDGE_1;
import static org.marktwice.timber.Surface.EDGE_2;
import static org.marktwice.timber.Surface.END_1;
import static org.marktwice.timber.Surface.END_2;
import static org.marktwice.timber.Surface.FACE_1;
import static org.marktwice.timber.Surface.FACE_2;

import java.util.Map;
import org.joml.Vector2d;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class TruenessTest {
    private static final Size SIZE = new Size(300, 120, 18);

    /** At the moisture of its planing, so that machining alone shows. */
    private static Board machined(Shape shape) {
        return Boards.timber("scots-pine", SIZE, 12, 12, new Pith(60, -40), shape);
    }

    private static Shape shape(double bow, double spring, double twist) {
        return new Shape(bow, spring, twist, 0, 0, Map.of());
    }

    @Test
    void whatIsHollowOnOneSideIsRoundedOnTheOther() {
        Board board = machined(shape(0.8, -0.5, 0));
        assertThat(Trueness.along(board, FACE_1)).isEqualTo(0.8);
        assertThat(Trueness.along(board, FACE_2)).isEqualTo(-0.8);
        assertThat(Trueness.along(board, EDGE_1)).isEqualTo(-0.5);
        assertThat(Trueness.along(board, EDGE_2)).isEqualTo(0.5);
        assertThat(Trueness.along(board, END_1)).isZero();
    }

    @Test
    void windIsTheFourthCornersRiseOnBothFacesAndLessOnTheEdges() {
        Board board = machined(shape(0, 0, 1.2));
        assertThat(Trueness.wind(board, FACE_1)).isEqualTo(1.2);
        assertThat(Trueness.wind(board, FACE_2)).isEqualTo(1.2);
        assertThat(Trueness.wind(board, EDGE_1)).isCloseTo(1.2 * 18 / 120, within(1e-12));
        assertThat(Trueness.wind(board, END_2)).isZero();
    }

    @Test
    void straightEdgeAcrossShowsCupAtAnyPlace() {
        Board board = Boards.timber("scots-pine", SIZE, 16, 10, new Pith(60, -40), shape(0.8, 0, 0.6));
        double cup = Seasoned.now(board).cup(FACE_1).orElseThrow();
        assertThat(cup).isPositive();
        assertThat(Trueness.across(board, FACE_1, 20)).hasValue(cup);
        assertThat(Trueness.across(board, FACE_1, 280)).hasValue(cup);
        assertThat(Trueness.across(board, EDGE_1, 100).orElseThrow())
                .as("a narrow edge")
                .isCloseTo(0, within(0.02));
    }

    @Test
    void boxedHeartHasNoReadingAcrossAndKeepsTheMachining() {
        Board board = Boards.timber("scots-pine", SIZE, 16, 10, new Pith(60, 9), shape(0.8, 0, 0));
        assertThat(Trueness.across(board, FACE_1, 100)).isEmpty();
        assertThat(Trueness.departure(board, FACE_1)).isCloseTo(0.8, within(1e-3));
        assertThat(Trueness.square(board, FACE_1, EDGE_1)).isZero();
    }

    /** Interior angles between opposite planes add up to 180: what opens at face-1 closes at face-2. */
    @ParameterizedTest
    @CsvSource({
        "FACE_1, EDGE_1, 0.4",
        "EDGE_1, FACE_1, 0.4",
        "FACE_2, EDGE_1, -0.4",
        "FACE_1, EDGE_2, -0.7",
        "EDGE_2, FACE_2, 0.7",
        "FACE_1, END_1, 0.3",
        "FACE_2, END_1, -0.3",
        "FACE_1, END_2, 0",
        "EDGE_1, END_2, 0"
    })
    void outOfSquareIsReadFromEitherSideWithItsSign(Surface stock, Surface blade, double degrees) {
        Board board = machined(new Shape(0, 0, 0, 0, 0, Map.of(EDGE_1, 0.4, EDGE_2, -0.7, END_1, 0.3)));
        assertThat(Trueness.square(board, stock, blade)).isCloseTo(degrees, within(1e-9));
    }

    /** 0.6 mm in 300: atan(0.002) = 0.1146 degrees. */
    @ParameterizedTest
    @CsvSource({
        "EDGE_2, END_2, -0.1146",
        "EDGE_2, END_1, 0.1146",
        "EDGE_1, END_2, 0",
        "FACE_1, EDGE_2, 0",
        "FACE_2, END_2, -0.0573",
        "FACE_2, END_1, 0.0573",
        "FACE_1, END_1, 0"
    })
    void taperAndThickeningShowAtTheEnds(Surface stock, Surface blade, double degrees) {
        Board board = machined(new Shape(0, 0, 0, 0.6, 0.3, Map.of()));
        assertThat(Trueness.square(board, stock, blade)).isCloseTo(degrees, within(1e-4));
    }

    @Test
    void squareNeedsAnArris() {
        Board board = machined(Shape.TRUE);
        assertThatThrownBy(() -> Trueness.square(board, FACE_1, FACE_2))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("face-1 and face-2 share no arris");
    }

    /** Against the map itself: two short steps from the arris, moved, and the angle between them. */
    @ParameterizedTest
    @CsvSource({"FACE_1, EDGE_1", "FACE_1, EDGE_2", "FACE_2, EDGE_1", "FACE_2, EDGE_2"})
    void moistureOpensOrClosesTheRightAngleAtTheArris(Surface face, Surface edge) {
        Board board = Boards.timber("american-beech", SIZE, 18, 8, new Pith(30, -25), Shape.TRUE);
        Seasoned now = Seasoned.now(board);
        double y = edge == EDGE_1 ? 0 : 120;
        double z = face == FACE_1 ? 18 : 0;
        Vector2d arris = now.moved(y, z);
        Vector2d alongFace = now.moved(y - edge.sign() * 1e-5, z).sub(arris);
        Vector2d alongEdge = now.moved(y, z - face.sign() * 1e-5).sub(arris);
        double expected = Math.abs(Math.toDegrees(alongFace.angle(alongEdge))) - 90;
        assertThat(Math.abs(expected)).isGreaterThan(0.05);
        assertThat(Trueness.square(board, face, edge)).isCloseTo(expected, within(1e-3));
    }

    @ParameterizedTest
    @EnumSource(Surface.class)
    void trueBoardDepartsNowhere(Surface surface) {
        assertThat(Trueness.departure(machined(Shape.TRUE), surface)).isZero();
    }

    /** A bowed face lies between planes as far apart as its sag; a twisted one between planes half its rise apart. */
    @Test
    void departureOfOneFaultAlone() {
        assertThat(Trueness.departure(machined(shape(0.8, 0, 0)), FACE_2)).isCloseTo(0.8, within(1e-3));
        assertThat(Trueness.departure(machined(shape(0, 0.5, 0)), EDGE_2)).isCloseTo(0.5, within(1e-3));
        assertThat(Trueness.departure(machined(shape(0, 0, 1.0)), FACE_1)).isCloseTo(0.5, within(1e-3));
        assertThat(Trueness.departure(machined(new Shape(0, 0, 0, 2, 2, Map.of(EDGE_1, 3.0))), EDGE_1))
                .as("a plane out of place is still a plane")
                .isZero();
        Board cupped = Boards.timber("scots-pine", SIZE, 16, 8, new Pith(60, -40), Shape.TRUE);
        assertThat(Trueness.departure(cupped, FACE_1))
                .isCloseTo(Trueness.across(cupped, FACE_1, 0).orElseThrow(), within(2e-3));
    }

    /** Two hollows add up; a hollow and a round of the same depth make a saddle as deep as both. */
    @Test
    void bowAndCupTogetherDepartByBoth() {
        Pith pith = new Pith(60, -40);
        double cup = Seasoned.now(Boards.timber("scots-pine", SIZE, 16, 8, pith, Shape.TRUE))
                .cup(FACE_1)
                .orElseThrow();
        for (double bow : new double[] {0.5, -0.5}) {
            Board board = Boards.timber("scots-pine", SIZE, 16, 8, pith, shape(bow, 0, 0));
            assertThat(Trueness.departure(board, FACE_1)).isCloseTo(cup + 0.5, within(3e-3));
        }
    }

    @Test
    void departureIsNoMoreThanAnyTiltedPlaneLeaves() {
        Board board = Boards.timber("american-beech", SIZE, 16, 8, new Pith(20, -30), shape(0.4, 0, 0.9));
        double least = Trueness.departure(board, FACE_1);
        double[] across = Seasoned.now(board).profile(FACE_1, 13);
        double best = Double.POSITIVE_INFINITY;
        for (double p = -1.5; p <= 1.5; p += 0.01) {
            for (double q = -1.5; q <= 1.5; q += 0.01) best = Math.min(best, spread(across, p, q));
        }
        assertThat(least).isCloseTo(best, within(0.02)).isLessThanOrEqualTo(best + 1e-3);
    }

    private static double spread(double[] across, double p, double q) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int i = 0; i <= 16; i++) {
            double t = i / 16.0;
            for (int j = 0; j <= 12; j++) {
                double v = j / 12.0;
                double h = 0.9 * t * v - 0.4 * 4 * t * (1 - t) + across[j] - p * t - q * v;
                low = Math.min(low, h);
                high = Math.max(high, h);
            }
        }
        return high - low;
    }
}
