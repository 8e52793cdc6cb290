package org.marktwice.timber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.Map;
import java.util.Random;
import org.joml.Vector3d;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What tools read, found again on the displaced surface by laying them there point by point. */
class TrueFormTest {
    private static final Size SIZE = new Size(420, 120, 24);

    private static Board any(long seed) {
        Random random = new Random(seed);
        Map<Surface, Double> out = new EnumMap<>(Surface.class);
        for (Surface s : Surface.values()) if (!s.isFace()) out.put(s, signed(random, 0.8));
        Shape shape = new Shape(
                signed(random, 1.5), signed(random, 1.5), signed(random, 2), signed(random, 1), signed(random, 1), out);
        Pith pith = new Pith(
                random.nextDouble() * 160 - 20,
                random.nextBoolean() ? -10 - random.nextDouble() * 60 : 34 + random.nextDouble() * 60);
        String species = random.nextBoolean() ? "scots-pine" : "american-beech";
        return Boards.timber(species, SIZE, 8 + random.nextInt(10), 6 + random.nextInt(14), pith, shape);
    }

    private static double signed(Random random, double most) {
        return (2 * random.nextDouble() - 1) * most;
    }

    private static Vector3d place(TrueForm form, Surface on, double u, double v) {
        Board board = form.board();
        return form.place(new SurfacePoint(on, u * board.uExtent(on), v * board.vExtent(on)), 1);
    }

    /** How far a point lies below the straight line between two others, seen along the surface's normal. */
    private static double below(Surface on, Vector3d from, Vector3d to, Vector3d at) {
        Vector3d line = new Vector3d(to).sub(from);
        double share = new Vector3d(at).sub(from).dot(line) / line.lengthSquared();
        return new Vector3d(from).fma(share, line).sub(at).dot(on.normal());
    }

    /** What decides which surface is the truest: the least distance between planes that hold the displaced surface. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void departuresAreThoseOfTheDisplacedSurface(long seed) {
        TrueForm form = TrueForm.now(any(seed));
        for (Surface on : Surface.LONG) {
            double[] heights = new double[17 * 13];
            for (int i = 0; i < 17; i++) {
                for (int j = 0; j < 13; j++) {
                    double u = form.board().uExtent(on) * i / 16;
                    double v = form.board().vExtent(on) * j / 12;
                    heights[i * 13 + j] = form.out(new SurfacePoint(on, u, v));
                }
            }
            double departure = Trueness.departure(form.board(), on);
            assertThat(new LeastSpread(heights, 17, 13).solve())
                    .as("%s", on)
                    .isCloseTo(departure, within(0.01 + 0.01 * departure));
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void straightEdgesReadWhatTheDisplacedSurfaceGives(long seed) {
        TrueForm form = TrueForm.now(any(seed));
        for (Surface on : Surface.LONG) {
            double along = below(on, place(form, on, 0, 0.5), place(form, on, 1, 0.5), place(form, on, 0.5, 0.5));
            assertThat(along).as("along %s", on).isCloseTo(Trueness.along(form.board(), on), within(1e-5));
            double read = Trueness.across(form.board(), on, 100).orElseThrow();
            assertThat(deepest(form, on, 0.3))
                    .as("across %s", on)
                    .isCloseTo(read, within(0.004 + 0.01 * Math.abs(read)));
        }
    }

    private static double deepest(TrueForm form, Surface on, double u) {
        double deepest = 0;
        for (int i = 1; i < 200; i++) {
            double below = below(on, place(form, on, u, 0), place(form, on, u, 1), place(form, on, u, i / 200.0));
            if (Math.abs(below) > Math.abs(deepest)) deepest = below;
        }
        return deepest;
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void windingSticksReadTheRiseOfTheFarCorner(long seed) {
        TrueForm form = TrueForm.now(any(seed));
        Shape shape = form.board().shape();
        for (Surface on : Surface.LONG) {
            double rise = form.out(corner(on, 0, 0))
                    - form.out(corner(on, 1, 0))
                    - form.out(corner(on, 0, 1))
                    + form.out(corner(on, 1, 1));
            double seen = on == Surface.FACE_1 || on == Surface.EDGE_1 ? rise : -rise;
            assertThat(seen).as("%s of %s", on, shape).isCloseTo(Trueness.wind(form.board(), on), within(1e-9));
        }
    }

    private static SurfacePoint corner(Surface on, int u, int v) {
        return new SurfacePoint(on, u * SIZE.along(on.uAxis()), v * SIZE.along(on.vAxis()));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void trySquaresReadTheAngleBetweenTheDisplacedSurfaces(long seed) {
        Board board = any(seed);
        TrueForm form = TrueForm.now(board);
        for (Surface face : new Surface[] {Surface.FACE_1, Surface.FACE_2}) {
            for (Surface edge : new Surface[] {Surface.EDGE_1, Surface.EDGE_2}) {
                // Short steps from the middle of the arris, into either surface.
                double y = edge.sign() > 0 ? SIZE.width() : 0;
                double z = face.sign() > 0 ? SIZE.thickness() : 0;
                double step = 1e-4;
                Vector3d arris = gone(form, SIZE.length() / 2, y, z);
                Vector3d over =
                        gone(form, SIZE.length() / 2, y - edge.sign() * step, z).sub(arris);
                Vector3d down =
                        gone(form, SIZE.length() / 2, y, z - face.sign() * step).sub(arris);
                assertThat(Math.toDegrees(over.angle(down)) - 90)
                        .as("%s to %s", face, edge)
                        .isCloseTo(Trueness.square(board, face, edge), within(0.03));
            }
        }
    }

    private static Vector3d gone(TrueForm form, double x, double y, double z) {
        Vector3d at = new Vector3d(x, y, z);
        return form.displacement(at).add(at);
    }

    /** The ends are tried over their whole width, so that bow and spring, which curve near them, don't count. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void endsLeanAndTaperAsTheSquareReads(long seed) {
        Board any = any(seed);
        Shape machined = any.shape();
        Board board = Boards.timber(
                "scots-pine",
                SIZE,
                12,
                12,
                new Pith(60, -30),
                new Shape(0, 0, 0, machined.taper(), machined.thickening(), machined.outOfSquare()));
        TrueForm form = TrueForm.now(board);
        for (Surface end : new Surface[] {Surface.END_1, Surface.END_2}) {
            for (Surface face : new Surface[] {Surface.FACE_1, Surface.FACE_2}) {
                double x = end.sign() > 0 ? SIZE.length() : 0;
                double z = face.sign() > 0 ? SIZE.thickness() : 0;
                double y = SIZE.width() / 2;
                Vector3d arris = gone(form, x, y, z);
                Vector3d along = gone(form, SIZE.length() / 2, y, z).sub(arris);
                Vector3d down = gone(form, x, y, SIZE.thickness() - z).sub(arris);
                assertThat(Math.toDegrees(along.angle(down)) - 90)
                        .as("%s to %s", face, end)
                        .isCloseTo(Trueness.square(board, face, end), within(0.02));
            }
        }
    }

    @Test
    void theSizesHoldHalfWay() {
        TrueForm form = TrueForm.now(any(5));
        double width = gone(form, 210, 120, 12).distance(gone(form, 210, 0, 12));
        double thickness = gone(form, 210, 60, 24).distance(gone(form, 210, 60, 0));
        assertThat(width).isCloseTo(120, within(0.01));
        assertThat(thickness).isCloseTo(24, within(0.01));
    }

    @ParameterizedTest
    @EnumSource(Surface.class)
    void aTrueBoardIsItsBox(Surface surface) {
        Board board = Boards.timber("scots-pine", SIZE, 12, 12, new Pith(60, -30), Shape.TRUE);
        TrueForm form = TrueForm.now(board);
        SurfacePoint point = new SurfacePoint(surface, 20, 7);
        assertThat(form.place(point, 20).equals(new Vector3d(point.in(SIZE)), 1e-9))
                .isTrue();
        assertThat(form.greatest()).isCloseTo(0, within(1e-9));
    }

    @Test
    void whatIsShownLargerIsTheSameDepartureTakenManyTimes() {
        TrueForm form = TrueForm.now(any(3));
        SurfacePoint point = new SurfacePoint(Surface.FACE_1, 400, 10);
        Vector3d once = form.place(point, 1).sub(point.in(SIZE));
        Vector3d tenTimes = form.place(point, 10).sub(point.in(SIZE));
        assertThat(tenTimes.equals(once.mul(10), 1e-9)).isTrue();
        assertThat(once.length() / 10).isLessThanOrEqualTo(form.greatest());
    }

    @Test
    void aBoxedHeartHasItsMachiningAlone() {
        Board board = Boards.timber("scots-pine", SIZE, 16, 8, new Pith(60, 12), new Shape(0.9, 0, 0, 0, 0, Map.of()));
        TrueForm form = TrueForm.now(board);
        assertThat(Light.along(form, Surface.FACE_1).widest()).isCloseTo(0.9, within(1e-9));
        assertThat(Light.across(form, Surface.FACE_1, 60).widest()).isCloseTo(0, within(1e-9));
    }

    @Test
    void lightShowsUnderAHollowInTheMiddleAndBesideACrownAtTheEnds() {
        Board board =
                Boards.timber("scots-pine", SIZE, 16, 8, new Pith(60, -30), new Shape(-0.7, 0, 0, 0, 0, Map.of()));
        TrueForm form = TrueForm.now(board);
        Light across = Light.across(form, Surface.FACE_1, 200);
        assertThat(across.widest())
                .isCloseTo(Seasoned.now(board).cup(Surface.FACE_1).orElseThrow(), within(2e-3));
        assertThat(across.worst()).isCloseTo(0.5, within(0.03));
        assertThat(across.gaps().get(0)).isZero();
        Light along = Light.along(form, Surface.FACE_1);
        assertThat(along.widest()).isCloseTo(0.7, within(1e-3));
        assertThat(along.worst()).isZero();
        assertThat(along.gaps().get(24)).isZero();
    }

    /** The light's widest gap is what the tool reads, whatever the board. */
    @ParameterizedTest
    @ValueSource(longs = {21, 22, 23, 24, 25, 26})
    void lightAgreesWithTheReading(long seed) {
        TrueForm form = TrueForm.now(any(seed));
        for (Surface on : Surface.LONG) {
            double read = Math.abs(Trueness.across(form.board(), on, 0).orElseThrow());
            assertThat(Light.across(form, on, 50).widest()).isCloseTo(read, within(0.004 + 0.01 * read));
            assertThat(Light.along(form, on).widest())
                    .isCloseTo(Math.abs(Trueness.along(form.board(), on)), within(1e-9));
        }
    }

    @Test
    void anotherMoistureGivesThatMoisturesCup() {
        Board board = Boards.timber("american-beech", SIZE, 12, 12, new Pith(60, -30), Shape.TRUE);
        double settled = Light.across(TrueForm.at(board, 6), Surface.FACE_1, 0).widest();
        assertThat(settled).isCloseTo(Seasoned.of(board, 6).cup(Surface.FACE_1).orElseThrow(), within(0.01));
        assertThat(settled).isPositive();
    }
}
