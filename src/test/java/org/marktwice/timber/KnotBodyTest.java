package org.marktwice.timber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.marktwice.timber.Boards.knot;

import java.util.Random;
import org.joml.Vector3d;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Knots whose clearance can be worked out on paper, and the awkward ones. */
class KnotBodyTest {
    private static final Size SIZE = new Size(300, 120, 18);
    /** Far below face-2; knots go straight up through the board and are cylinders there. */
    private static final Pith BELOW = new Pith(60, -60);

    private static KnotBody upright(double radius) {
        return Boards.body(SIZE, BELOW, knot(150, 90, 90, 30, radius));
    }

    @ParameterizedTest
    @CsvSource({
        "beside it along the grain, 170, 0, 0, 190, 120, 18, 12",
        "beside it across, 100, 80, 12, 200, 120, 18, 12",
        "at a corner, 156, 68, 0, 200, 120, 18, 2",
        "through it, 140, 0, 12, 160, 120, 18, 0",
        "just touching, 158, 0, 0, 200, 120, 18, 0",
        "inside it, 149, 59, 6, 151, 61, 12, 0",
        "the whole board, 0, 0, 0, 300, 120, 18, 0",
        "flat, 170, 0, 12, 170, 120, 18, 12",
        "a point, 150, 80, 9, 150, 80, 9, 12",
        "outside the board, 170, 0, 30, 190, 120, 40, 16.971"
    })
    void clearanceFromAnUprightCylinder(
            String where, double x0, double y0, double z0, double x1, double y1, double z1, double mm) {
        assertThat(upright(8).clearance(Box.of(x0, y0, z0, x1, y1, z1)))
                .as(where)
                .isCloseTo(mm, within(0.01));
    }

    /** A cone of half-angle 5 degrees that starts 40 below face-2 has the radius 58·tan 5° at face-1, 40·tan 5° at face-2. */
    @Test
    void coneIsWiderAtTheSurfaceFartherFromThePith() {
        KnotBody cone = Boards.body(SIZE, new Pith(60, -40), knot(150, 90, 90, 5, 20));
        double atFace1 = 58 * Math.tan(Math.toRadians(5));
        double atFace2 = 40 * Math.tan(Math.toRadians(5));
        assertThat(cone.clearance(Box.of(170, 0, 18, 190, 120, 18))).isCloseTo(20 - atFace1, within(0.01));
        assertThat(cone.clearance(Box.of(170, 0, 0, 190, 120, 0)))
                .as("square to the flank, which comes nearer farther up")
                .isCloseTo((20 - atFace2) * Math.cos(Math.toRadians(5)), within(0.01));
    }

    /**
     * At face-1 a cylinder that leans by l is shifted by height / tan(l) along the grain and r / sin(l) long. Leaning
     * towards the cut it is nearest there; leaning away, square to its flank farther down.
     */
    @ParameterizedTest
    @ValueSource(doubles = {30, 45, 60, 80, 120, 150})
    void leaningKnotComesNearerAtOneFace(double lean) {
        KnotBody body = Boards.body(new Size(900, 120, 18), BELOW, knot(450, 90, lean, 45, 6));
        double radians = Math.toRadians(lean);
        double front = 450 + 78 / Math.tan(radians) + 6 / Math.sin(radians);
        double expected = lean <= 90 ? 10 : 10 * Math.sin(radians);
        assertThat(body.clearance(Box.of(front + 10, 0, 18, front + 20, 120, 18)))
                .isCloseTo(expected, within(0.01));
    }

    @Test
    void onlyThePartInsideTheBoardCounts() {
        // The branch crosses the plane of edge-2 below the board: what lies there is not wood.
        KnotBody body = Boards.body(SIZE, new Pith(100, -60), knot(150, 90, 90, 30, 8));
        assertThat(body.clearance(Box.of(150, 60, -40, 160, 61, -30)))
                .isCloseTo(Math.hypot(100 - 8 - 61, 30), within(0.01));
    }

    @Test
    void endsWhereItEnds() {
        Box cut = Box.of(100, 0, 12, 200, 120, 18);
        assertThat(Boards.body(SIZE, BELOW, knot(150, 90, 90, 30, 8, 65)).clearance(cut))
                .isCloseTo(7, within(0.01));
        assertThat(Boards.body(SIZE, BELOW, knot(150, 90, 90, 30, 8, 60)).isEmpty())
                .as("flush below")
                .isTrue();
        assertThat(Boards.body(SIZE, BELOW, knot(150, 90, 90, 30, 8, 20)).isEmpty())
                .isTrue();
        assertThat(Boards.body(SIZE, new Pith(60, -4), knot(150, 90, 90, 5, 8, 10))
                        .clearance(cut))
                .as("inside its cone")
                .isCloseTo(6, within(0.01));
    }

    @Test
    void aKnotOutsideTheBoardHasNoBody() {
        KnotBody aside = Boards.body(SIZE, BELOW, knot(150, 0, 90, 5, 8));
        assertThat(aside.isEmpty()).isTrue();
        assertThat(aside.traces()).isEmpty();
        assertThat(aside.bounds()).isEmpty();
        assertThat(aside.corners()).isEmpty();
        assertThat(aside.nearest(SIZE.box())).isEmpty();
        assertThat(aside.clearance(SIZE.box())).isInfinite();
        assertThat(aside.clearance(SIZE.box(), 25)).isEqualTo(25);
        assertThat(Boards.body(SIZE, BELOW, knot(150, 270, 90, 5, 8)).isEmpty())
                .as("downwards")
                .isTrue();
    }

    /** A cylinder alongside the board, its flank on edge-2: touching is outside, a little deeper is inside. */
    @ParameterizedTest
    @CsvSource({"8.1, true", "8, true", "7.999, false", "7.9, false"})
    void touchingIsOutside(double beyond, boolean empty) {
        KnotBody body = Boards.body(SIZE, new Pith(120 + beyond, -60), knot(150, 90, 90, 30, 8));
        assertThat(body.isEmpty()).isEqualTo(empty);
    }

    /** A graze is as long as the true body makes it: the chord of the circle at that depth. */
    @ParameterizedTest
    @ValueSource(doubles = {0.002, 0.01, 0.1})
    void grazingKnotReachesAsFarAsTheTrueBody(double deep) {
        double r = 15;
        KnotBody body = Boards.body(SIZE, new Pith(120 + r - deep, -60), knot(150, 90, 90, 30, r));
        double half = Math.sqrt(2 * r * deep - deep * deep);
        assertThat(body.clearance(Box.of(160, 0, 0, 170, 120, 18))).isCloseTo(10 - half, within(0.05));
        assertThat(body.clearance(Box.of(100, 100, 0, 200, 110, 18))).isCloseTo(10 - deep, within(1e-6));
    }

    @ParameterizedTest
    @CsvSource({"0, 250, END_2", "180, 50, END_1"})
    void aBranchAlongTheGrainComesOutAtTheEnd(double lean, double s, Surface end) {
        KnotBody body = Boards.body(SIZE, new Pith(60, 9), knot(50, 90, lean, 1, 100));
        assertThat(body.traces()).extracting(Trace::surface).containsExactly(end);
        double r = s * Math.tan(Math.toRadians(1));
        assertThat(body.traces().get(0).area()).isCloseTo(Math.PI * r * r, within(0.01 * r * r));
    }

    @Test
    void aHugeKnotIsTheWholeBoard() {
        Size small = new Size(60, 40, 18);
        KnotBody body = Boards.body(small, new Pith(20, -500), knot(30, 90, 90, 45, 400));
        assertThat(body.bounds()).hasValue(small.box());
        assertThat(body.traces())
                .hasSize(6)
                .allSatisfy(t -> assertThat(t.area())
                        .isEqualTo(small.along(t.surface().uAxis())
                                * small.along(t.surface().vAxis())));
        assertThat(body.clearance(Box.of(65, 0, 0, 70, 40, 18))).isEqualTo(5);
    }

    @Test
    void tinyKnotsAndVeryBluntOrSlenderConesKeepTheirMeasure() {
        Box cut = Box.of(170, 0, 0, 190, 120, 18);
        assertThat(Boards.body(SIZE, BELOW, knot(150, 90, 90, 30, 0.05)).clearance(cut))
                .isCloseTo(19.95, within(1e-4));
        assertThat(Boards.body(SIZE, BELOW, knot(150, 90, 90, 89.9, 8)).clearance(cut))
                .isCloseTo(12, within(0.01));
        assertThat(Boards.body(SIZE, BELOW, knot(150, 90, 90, 0.1, 8)).clearance(cut))
                .isCloseTo(20 - 78 * Math.tan(Math.toRadians(0.1)), within(0.01));
    }

    @Test
    void capEndsTheSearchEarlyAndChangesNothingBelowIt() {
        KnotBody body = upright(8);
        Box cut = Box.of(168, 70, 2, 190, 120, 7);
        double mm = body.clearance(cut);
        assertThat(body.clearance(cut, mm + 1)).isCloseTo(mm, within(1e-5));
        assertThat(body.clearance(cut, mm - 1)).isEqualTo(mm - 1);
        assertThat(body.clearance(cut, 0.5)).isEqualTo(0.5);
    }

    @Test
    void nearestPointsLieOnTheBodiesAndAsFarApartAsTheClearance() {
        KnotBody.Nearest nearest =
                upright(8).nearest(Box.of(170, 0, 12, 190, 50, 18)).orElseThrow();
        assertThat(nearest.mm()).isCloseTo(Math.hypot(20, 10) - 8, within(0.01));
        assertThat(nearest.onCut().distance(170, 50, nearest.onCut().z())).isLessThan(0.01);
        assertThat(nearest.onKnot().distance(nearest.onCut())).isCloseTo(nearest.mm(), within(1e-6));
        assertThat(Math.hypot(nearest.onKnot().x() - 150, nearest.onKnot().y() - 60))
                .isCloseTo(8, within(0.01));
    }

    @Test
    void whereTheyMeetTheNearestPointsAreOneInBoth() {
        Box cut = Box.of(152, 0, 6, 170, 120, 18);
        KnotBody.Nearest nearest = upright(8).nearest(cut).orElseThrow();
        assertThat(nearest.mm()).isZero();
        assertThat(nearest.onKnot()).isEqualTo(nearest.onCut());
        assertThat(cut.contains(nearest.onCut(), 1e-6)).isTrue();
        assertThat(Math.hypot(nearest.onKnot().x() - 150, nearest.onKnot().y() - 60))
                .isLessThanOrEqualTo(8 + 1e-6);
    }

    @Test
    void containsIsOfTheTrueBodyInsideTheBoard() {
        KnotBody body = upright(8);
        assertThat(body.contains(new Vector3d(157.99, 60, 9))).isTrue();
        assertThat(body.contains(new Vector3d(158.01, 60, 9))).isFalse();
        assertThat(body.contains(new Vector3d(150, 60, 18))).as("on a face").isTrue();
        assertThat(body.contains(new Vector3d(150, 60, 18.01)))
                .as("outside the board")
                .isFalse();
        assertThat(body.along(new Vector3d(155, 60, 18))).isCloseTo(78, within(1e-9));
    }

    @Test
    void noPithNoBranch() {
        assertThatThrownBy(() -> KnotBody.of(
                        knot(1, 2, 3, 4, 5),
                        Boards.sheet(new Size(100, 100, 12)).facts()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("board S has knots, but no pith");
    }

    /** The quick answer and the body's own never differ: axes along the board, beside it, grazing it, ending before it. */
    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13})
    void isInsideJustWhereItsBodyIsNotEmpty(long seed) {
        Random random = new Random(seed);
        int inside = 0;
        for (int i = 0; i < 2000; i++) {
            Pith pith = new Pith(KnotScene.between(random, -60, 180), KnotScene.between(random, -80, 100));
            double square = random.nextInt(3) * 90;
            Knot knot = knot(
                    KnotScene.between(random, -60, 360),
                    random.nextBoolean() ? square : KnotScene.between(random, 0, 360),
                    random.nextInt(4) == 0 ? square : KnotScene.between(random, 1, 179),
                    KnotScene.between(random, 0.1, 12),
                    KnotScene.between(random, 0.5, 12),
                    random.nextInt(3) == 0 ? KnotScene.between(random, 1, 90) : Double.POSITIVE_INFINITY);
            boolean has = !Boards.body(SIZE, pith, knot).isEmpty();
            assertThat(KnotBody.isInside(knot, Boards.timber(SIZE, pith).facts()))
                    .as("%s from %s", knot, pith)
                    .isEqualTo(has);
            if (has) inside++;
        }
        assertThat(inside).isBetween(150, 1850);
    }
}
