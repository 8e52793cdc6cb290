package org.marktwice.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Random;
import org.joml.Matrix3d;
import org.joml.Matrix4d;
import org.joml.Quaterniond;
import org.joml.Vector3d;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.marktwice.timber.Size;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;

class IsometricTest {
    private static final Size SIZE = new Size(312, 120, 18);
    private static final Rectangle2D AREA = new Rectangle2D.Double(40, 30, 920, 400);

    /** ISO 5456-3: two axes at 30° to the horizontal, one upright, all foreshortened alike by √(2/3). */
    @ParameterizedTest(name = "{0}")
    @CsvSource({"x, 1,0,0, -30", "y, 0,1,0, -150", "z, 0,0,1, -90"})
    void eachAxisIsDrawnAtItsAngleAndFactor(String axis, double x, double y, double z, double degreesOnScreen) {
        Isometric view = Isometric.of(SIZE, new Matrix3d());
        Point2D.Double o = view.project(new Vector3d());
        Point2D.Double p = view.project(new Vector3d(x, y, z));
        assertThat(p.distance(o)).isCloseTo(0.8165, within(1e-4));
        assertThat(Math.toDegrees(Math.atan2(p.y - o.y, p.x - o.x))).isCloseTo(degreesOnScreen, within(1e-9));
        assertThat(Isometric.FACTOR).isCloseTo(Math.sqrt(2.0 / 3.0), within(1e-12));
    }

    /** The same eye placed by a general library: in front on the left and above, at equal distances along the three axes. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
    void agreesWithJomlInAnyPose(int seed) {
        Random r = new Random(seed);
        Quaterniond turned = anyTurn(r);
        Matrix4d look = new Matrix4d().setLookAt(-500, -500, 500, 0, 0, 0, 0, 0, 1);
        Matrix4d whole = look.rotate(turned, new Matrix4d())
                .translate(-SIZE.length() / 2, -SIZE.width() / 2, -SIZE.thickness() / 2);
        Isometric view = Isometric.of(SIZE, new Matrix3d()).posed(turned);
        for (int i = 0; i < 50; i++) {
            Vector3d at = new Vector3d(400 * r.nextDouble(), 200 * r.nextDouble(), 50 * r.nextDouble());
            Vector3d expected = whole.transformPosition(at, new Vector3d());
            Point2D.Double p = view.project(at);
            assertThat(p.x).isCloseTo(expected.x, within(1e-9));
            assertThat(-p.y).isCloseTo(expected.y, within(1e-9));
        }
    }

    @Test
    void aBoardThatIsNotTurnedShowsFaceOneEdgeOneAndEndOne() {
        Isometric view = Isometric.of(SIZE, new Matrix3d());
        assertThat(view.visible()).containsExactlyInAnyOrder(Surface.FACE_1, Surface.EDGE_1, Surface.END_1);
        assertThat(view.facing(Surface.FACE_1)).isCloseTo(1 / Math.sqrt(3), within(1e-12));
        assertThat(view.facing(Surface.FACE_2)).isCloseTo(-1 / Math.sqrt(3), within(1e-12));
    }

    /** Law: what is seen at the place where a point is drawn is that point. */
    @ParameterizedTest
    @ValueSource(ints = {11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
    void pickingWhereAPointIsDrawnGivesThePoint(int seed) {
        Random r = new Random(seed);
        Isometric view = Isometric.of(SIZE, new Matrix3d())
                .posed(anyTurn(r))
                .scaled(0.3 + 3 * r.nextDouble())
                .centred(900 * r.nextDouble(), 500 * r.nextDouble());
        for (Surface s : view.visible()) {
            if (view.facing(s) < 0.02) continue;
            for (int i = 0; i < 40; i++) {
                SurfacePoint p = anyPoint(s, r);
                SurfacePoint seen = view.pick(view.project(p)).orElseThrow();
                assertThat(seen.surface()).isEqualTo(s);
                assertThat(seen.u()).isCloseTo(p.u(), within(1e-6));
                assertThat(seen.v()).isCloseTo(p.v(), within(1e-6));
            }
        }
    }

    @Test
    void besideTheBoardNothingIsPicked() {
        Isometric view = Isometric.fit(SIZE, new Matrix3d(), AREA);
        assertThat(view.pick(new Point2D.Double(AREA.getX() + 1, AREA.getY() + 1)))
                .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(ints = {21, 22, 23, 24, 25, 26})
    void noSurfaceThatIsSeenIsMirrored(int seed) {
        Isometric view = Isometric.of(SIZE, new Matrix3d()).posed(anyTurn(new Random(seed)));
        for (Surface s : view.visible()) {
            AffineTransform page = view.transform(s);
            page.concatenate(SurfaceFrame.of(s, SIZE).toSurface());
            assertThat(page.getDeterminant()).as(s.id()).isCloseTo(view.facing(s), within(1e-9));
        }
    }

    @ParameterizedTest
    @CsvSource({"920, 400", "300, 600", "1400, 90"})
    void aFittedBoardTouchesItsAreaAndStaysInIt(double width, double height) {
        Rectangle2D area = new Rectangle2D.Double(40, 30, width, height);
        Rectangle2D b = Isometric.fit(SIZE, new Matrix3d(), area).bounds();
        Rectangle2D room = new Rectangle2D.Double(
                area.getX() - 1e-6, area.getY() - 1e-6, area.getWidth() + 2e-6, area.getHeight() + 2e-6);
        assertThat(room.contains(b)).isTrue();
        assertThat(Math.max(b.getWidth() / width, b.getHeight() / height)).isCloseTo(1, within(1e-9));
    }

    @Test
    void rollingAndTurningEndForEndKeepsTheScaleOfASteadyView() {
        List<Matrix3d> poses = List.of(
                new Matrix3d(),
                new Matrix3d().rotateX(Math.PI / 2),
                new Matrix3d().rotateX(Math.PI),
                new Matrix3d().rotateZ(Math.PI),
                new Matrix3d().rotateY(Math.PI).rotateX(Math.PI / 2));
        assertThat(poses.stream()
                        .map(p -> Isometric.steady(SIZE, p, AREA).scale())
                        .map(s -> Math.round(s * 1e9)))
                .hasSize(5)
                .containsOnly(
                        Math.round(Isometric.steady(SIZE, new Matrix3d(), AREA).scale() * 1e9));
        for (Matrix3d pose : poses) {
            Rectangle2D b = Isometric.steady(SIZE, pose, AREA).bounds();
            assertThat(b.getWidth()).isLessThanOrEqualTo(AREA.getWidth() + 1e-6);
            assertThat(b.getHeight()).isLessThanOrEqualTo(AREA.getHeight() + 1e-6);
        }
    }

    @Test
    void aTiltMovesTheEyeAndNoTiltLeavesItIsometric() {
        Isometric view = Isometric.fit(SIZE, new Matrix3d(), AREA);
        assertThat(view.tilted(0, 0).facing(Surface.EDGE_1)).isCloseTo(view.facing(Surface.EDGE_1), within(1e-12));
        assertThat(view.tilted(0, 0.3).facing(Surface.FACE_1)).isGreaterThan(view.facing(Surface.FACE_1) + 0.1);
        assertThat(view.tilted(0.3, 0).facing(Surface.FACE_1)).isCloseTo(view.facing(Surface.FACE_1), within(1e-12));
    }

    static Quaterniond anyTurn(Random r) {
        return new Quaterniond(r.nextGaussian(), r.nextGaussian(), r.nextGaussian(), r.nextGaussian()).normalize();
    }

    static SurfacePoint anyPoint(Surface s, Random r) {
        double u = SIZE.along(s.uAxis());
        double v = SIZE.along(s.vAxis());
        return new SurfacePoint(s, u * (0.01 + 0.98 * r.nextDouble()), v * (0.01 + 0.98 * r.nextDouble()));
    }
}
