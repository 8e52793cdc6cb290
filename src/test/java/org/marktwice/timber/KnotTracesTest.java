package org.marktwice.timber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.marktwice.timber.Boards.knot;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.joml.Vector3d;
import org.joml.Vector3dc;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/** Where knots come through: outlines against conics cut by JTS, and against the true body's edge found by bisection. */
class KnotTracesTest {
    private static final GeometryFactory JTS = new GeometryFactory();
    private static final double FAR = 1e5;
    private static final int RAYS = 1440;
    private static final Size SIZE = new Size(300, 120, 18);

    /** EN 844-9's oval knots, by geometry: the section of a cylinder is 1/sin(lean) as long as wide. */
    @ParameterizedTest
    @CsvSource({"90, 1", "80, 1.015", "70, 1.064", "60, 1.155", "45, 1.414", "30, 2", "150, 2"})
    void cylinderOnAFlatSawnFaceIsAsLongAsItsLeanMakesIt(double lean, double ratio) {
        KnotBody body = Boards.body(new Size(900, 120, 18), new Pith(60, -60), knot(450, 90, lean, 45, 6));
        for (Surface face : List.of(Surface.FACE_1, Surface.FACE_2)) {
            Trace trace = body.trace(face).orElseThrow();
            assertThat(trace.length() / trace.width()).isCloseTo(ratio, within(0.002));
            assertThat(trace.width()).isCloseTo(12, within(0.01));
            assertThat(trace.area()).isCloseTo(Math.PI * 36 / Math.sin(Math.toRadians(lean)), within(0.2));
        }
    }

    @Test
    void liveWhereTheBranchWasAliveAndDeadBeyond() {
        Board board = Boards.timber(SIZE, new Pith(60, -50), knot(150, 90, 90, 10, 8));
        assertThat(board.traces(Surface.FACE_2)).extracting(Trace::live).containsExactly(true);
        assertThat(board.traces(Surface.FACE_1)).extracting(Trace::live).containsExactly(false);
    }

    @Test
    void aSpikeKnotShowsOnBothSurfacesOfItsArris() {
        KnotBody body = Boards.body(SIZE, new Pith(118, -60), knot(150, 90, 90, 30, 8));
        assertThat(body.traces())
                .extracting(Trace::surface)
                .containsExactly(Surface.FACE_1, Surface.FACE_2, Surface.EDGE_2);
        Trace edge = body.trace(Surface.EDGE_2).orElseThrow();
        assertThat(edge.length()).isCloseTo(2 * Math.sqrt(60), within(0.01));
        assertThat(edge.width()).isEqualTo(18);
    }

    @Test
    void anEndFlushWithTheFaceShowsItsDisc() {
        KnotBody body = Boards.body(SIZE, new Pith(60, -60), knot(150, 90, 90, 30, 8, 78));
        assertThat(body.trace(Surface.FACE_1).orElseThrow().area()).isCloseTo(Math.PI * 64, within(0.2));
        KnotBody shorter = Boards.body(SIZE, new Pith(60, -60), knot(150, 90, 90, 30, 8, 77.9));
        assertThat(shorter.trace(Surface.FACE_1)).isEmpty();
        assertThat(shorter.trace(Surface.FACE_2)).isPresent();
    }

    @Test
    void outlinesAreConvexCounterClockwiseAndDescribedByTheirFigures() {
        Random random = new Random(21);
        int seen = 0;
        for (int round = 0; round < 300; round++) {
            KnotScene scene = KnotScene.of(random);
            for (Trace trace : scene.body().traces()) {
                Polygon polygon = polygon(trace);
                Geometry hull = polygon.convexHull();
                assertThat(Orientation.isCCW(polygon.getCoordinates()))
                        .as("%s", scene)
                        .isTrue();
                assertThat(hull.getArea()).as("convex: %s", scene).isCloseTo(polygon.getArea(), within(1e-6));
                assertThat(trace.area()).isCloseTo(polygon.getArea(), within(1e-6));
                assertThat(trace.length())
                        .isCloseTo(polygon.getEnvelopeInternal().getWidth(), within(1e-9));
                assertThat(trace.width())
                        .isCloseTo(polygon.getEnvelopeInternal().getHeight(), within(1e-9));
                assertThat(rectangle(scene.size(), trace.surface()).buffer(1e-6).covers(polygon))
                        .as("on its surface: %s", scene)
                        .isTrue();
                seen++;
            }
        }
        assertThat(seen).isGreaterThan(300);
    }

    /** The body is cone ∩ cylinder ∩ the half-space before its end; each is cut by the plane on its own, and JTS intersects. */
    @Test
    void outlinesAgreeWithConicsIntersectedByJts() {
        Random random = new Random(22);
        int seen = 0;
        for (int round = 0; round < 600; round++) {
            KnotScene scene = KnotScene.of(random);
            for (Surface surface : Surface.values()) {
                double steep = Math.abs(scene.knot().direction().get(surface.axis()));
                // Otherwise the cone's section is no ellipse; those are left to the bisection.
                if (steep < Math.sin(Math.toRadians(scene.knot().halfAngle())) + 0.15) continue;
                Geometry expected = conics(scene, surface);
                if (expected.getArea() < 0.05) continue;
                Trace trace =
                        scene.body().trace(surface).orElseThrow(() -> new AssertionError(surface + " of " + scene));
                assertAgree(trace, expected, 0, scene);
                seen++;
            }
        }
        assertThat(seen).isGreaterThan(200);
    }

    private static Geometry conics(KnotScene scene, Surface surface) {
        Knot knot = scene.knot();
        Vector3dc d = knot.direction();
        int u = surface.uAxis();
        int v = surface.vAxis();
        int n = surface.axis();
        double plane = surface.sign() > 0 ? scene.size().along(n) : 0;
        Vector3d origin = new Vector3d(knot.x(), scene.pith().y(), scene.pith().z());
        double height = plane - origin.get(n);
        // The branch comes to this plane at s = height / d_n; the other nappe of the cone is no branch.
        double reach = height / d.get(n);
        if (reach <= 0) return JTS.createPolygon();
        double u0 = origin.get(u) + reach * d.get(u);
        double v0 = origin.get(v) + reach * d.get(v);
        double tan = Math.tan(Math.toRadians(knot.halfAngle()));
        List<Coordinate> cone = new ArrayList<>();
        List<Coordinate> cylinder = new ArrayList<>();
        for (int i = 0; i < 2880; i++) {
            double a = 2 * Math.PI * i / 2880;
            double du = Math.cos(a);
            double dv = Math.sin(a);
            // Along this ray s = reach + t·g, and the distance from the axis is t·q.
            double g = du * d.get(u) + dv * d.get(v);
            double q = Math.sqrt(1 - g * g);
            double t = tan * reach / (q - tan * g);
            cone.add(new Coordinate(u0 + t * du, v0 + t * dv));
            double r = knot.maxRadius() / q;
            cylinder.add(new Coordinate(u0 + r * du, v0 + r * dv));
        }
        Geometry section = closed(cone).intersection(closed(cylinder)).intersection(rectangle(scene.size(), surface));
        return Double.isInfinite(knot.endsAt())
                ? section
                : section.intersection(before(d, u, v, u0, v0, knot.endsAt() - reach));
    }

    /** Where {@code (p − p0)·(d_u, d_v) ≤ more}, as a polygon larger than any board. */
    private static Geometry before(Vector3dc d, int u, int v, double u0, double v0, double more) {
        double length = Math.hypot(d.get(u), d.get(v));
        if (length < 1e-9) return more >= 0 ? closed(square(u0, v0, 1, 0, FAR)) : JTS.createPolygon();
        return closed(square(u0, v0, d.get(u) / length, d.get(v) / length, more / length));
    }

    /** A great square on the near side of the line at {@code end} along (a, b). */
    private static List<Coordinate> square(double u0, double v0, double a, double b, double end) {
        return List.of(
                new Coordinate(u0 + a * end - b * FAR, v0 + b * end + a * FAR),
                new Coordinate(u0 - a * FAR - b * FAR, v0 - b * FAR + a * FAR),
                new Coordinate(u0 - a * FAR + b * FAR, v0 - b * FAR - a * FAR),
                new Coordinate(u0 + a * end + b * FAR, v0 + b * end - a * FAR));
    }

    /** All surfaces, also those that the branch runs along: the edge of the true body on rays from a point in the trace. */
    @Test
    void outlinesAgreeWithTheTrueBodysEdgeFoundByBisection() {
        Random random = new Random(23);
        int seen = 0;
        for (int round = 0; round < 300; round++) {
            KnotScene scene = KnotScene.of(random);
            for (Trace trace : scene.body().traces()) {
                if (trace.area() < 0.05) continue;
                Coordinate inside = polygon(trace).getCentroid().getCoordinate();
                assertThat(inPlane(scene, trace.surface(), inside.x, inside.y))
                        .as("%s", scene)
                        .isTrue();
                Polygon expected = bisected(scene, trace.surface(), inside);
                assertAgree(trace, expected, 2 * expected.getLength() / RAYS, scene);
                seen++;
            }
        }
        assertThat(seen).isGreaterThan(300);
    }

    private static Polygon bisected(KnotScene scene, Surface surface, Coordinate inside) {
        List<Coordinate> edge = new ArrayList<>();
        for (int i = 0; i < RAYS; i++) {
            double du = Math.cos(2 * Math.PI * i / RAYS);
            double dv = Math.sin(2 * Math.PI * i / RAYS);
            double in = 0;
            double out = 1000;
            while (out - in > 1e-7) {
                double middle = (in + out) / 2;
                if (inPlane(scene, surface, inside.x + middle * du, inside.y + middle * dv)) in = middle;
                else out = middle;
            }
            edge.add(new Coordinate(inside.x + in * du, inside.y + in * dv));
        }
        return closed(edge);
    }

    private static boolean inPlane(KnotScene scene, Surface surface, double u, double v) {
        Vector3dc at = new SurfacePoint(surface, u, v).in(scene.size());
        return scene.holds(at.x(), at.y(), at.z());
    }

    /** @param corners how far the expected outline may cut its own corners short, in millimetres */
    private static void assertAgree(Trace trace, Geometry expected, double corners, KnotScene scene) {
        Polygon polygon = polygon(trace);
        assertThat(polygon.symDifference(expected).getArea())
                .as("area between the outlines on %s of %s", trace.surface(), scene)
                .isLessThan(0.01 * expected.getLength());
        // Convex outlines that cover each other, once widened by a distance, are no farther apart (Hausdorff) than
        // that.
        assertThat(polygon.buffer(0.05).covers(expected))
                .as("reaches far enough on %s of %s", trace.surface(), scene)
                .isTrue();
        assertThat(expected.buffer(0.05 + corners).covers(polygon))
                .as("reaches no farther on %s of %s", trace.surface(), scene)
                .isTrue();
    }

    private static Polygon polygon(Trace trace) {
        return closed(
                trace.outline().stream().map(p -> new Coordinate(p.u(), p.v())).toList());
    }

    private static Polygon closed(List<Coordinate> points) {
        return JTS.createPolygon(
                Stream.concat(points.stream(), Stream.of(points.get(0))).toArray(Coordinate[]::new));
    }

    private static Polygon rectangle(Size size, Surface surface) {
        double u = size.along(surface.uAxis());
        double v = size.along(surface.vAxis());
        return closed(List.of(new Coordinate(0, 0), new Coordinate(u, 0), new Coordinate(u, v), new Coordinate(0, v)));
    }
}
