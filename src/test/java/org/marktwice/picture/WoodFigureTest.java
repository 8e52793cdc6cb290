package org.marktwice.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Point2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.marktwice.timber.Board;
import org.marktwice.timber.Knot;
import org.marktwice.timber.Size;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;
import org.marktwice.timber.Trace;

class WoodFigureTest {
    /** A look in which clear wood is green and every part of a knot red, so that a pixel's share of knot can be read. */
    private static final WoodLook RED_KNOTS = new WoodLook(
            WoodLook.Rings.SOFTWOOD,
            0x00FF00,
            0x00FF00,
            0x00FF00,
            0x00FF00,
            80,
            0,
            0,
            0xFF0000,
            0xFF0000,
            0xFF0000,
            0xFF0000);

    static List<Arguments> boards() {
        List<Arguments> out = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            String species = Samples.SPECIES.get(i % Samples.SPECIES.size());
            out.add(Arguments.of(species, dressed(Samples.random(species, 300 + i))));
        }
        return out;
    }

    /** Planed all round: the saw's marks belong to a surface, not to the wood. */
    private static Board dressed(Board b) {
        Board.Facts f = b.facts();
        return Samples.board(
                f.id(),
                b.species().orElseThrow().id(),
                f.size(),
                b.pith().orElseThrow(),
                f.ringWidth(),
                f.knots(),
                f.seed(),
                Set.of(Surface.values()));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("boards")
    void atAnArrisTheTwoLongSurfacesShowTheSame(String species, Board board) {
        WoodFigure figure = WoodFigure.of(board);
        Size size = board.size();
        Random r = new Random(7);
        for (int i = 0; i < 400; i++) {
            double x = size.length() * r.nextDouble();
            Surface face = r.nextBoolean() ? Surface.FACE_1 : Surface.FACE_2;
            Surface edge = r.nextBoolean() ? Surface.EDGE_1 : Surface.EDGE_2;
            double y = edge.sign() > 0 ? size.width() : 0;
            double z = face.sign() > 0 ? size.thickness() : 0;
            assertThat(figure.argb(x, y, z, face)).isEqualTo(figure.argb(x, y, z, edge));
        }
    }

    /** End grain is a little darker: 0.95 of each channel, to the rounding. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("boards")
    void atAnEndTheEndGrainShowsTheSameRingsALittleDarker(String species, Board board) {
        WoodFigure figure = WoodFigure.of(board);
        Size size = board.size();
        for (int i = 0; i < 200; i++) {
            double y = size.width() * (i + 0.5) / 200;
            int face = figure.argb(0, y, size.thickness(), Surface.FACE_1);
            int end = figure.argb(0, y, size.thickness(), Surface.END_1);
            for (int shift = 0; shift <= 16; shift += 8) {
                assertThat((end >> shift) & 255).isCloseTo((int) (0.95 * ((face >> shift) & 255)), within(4));
            }
        }
    }

    /** Either side of an arris the pictures go on as smoothly as within a surface, and only in register. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("boards")
    void picturesOfNeighbouringSurfacesMeetAtTheArrisToThePixel(String species, Board board) {
        WoodFigure figure = WoodFigure.of(board);
        double scale = 6;
        List<BufferedImage> strips =
                Surface.LONG.stream().map(s -> figure.image(s, scale)).toList();
        for (int i = 0; i < 4; i++) {
            BufferedImage upper = strips.get(i);
            BufferedImage lower = strips.get((i + 1) % 4);
            double across = difference(upper, upper.getHeight() - 1, lower, 0, 0);
            double within = Math.max(
                    difference(upper, upper.getHeight() - 2, upper, upper.getHeight() - 1, 0),
                    difference(lower, 0, lower, 1, 0));
            assertThat(across).isLessThan(1.5 * within + 1.5);
        }
    }

    @Test
    void aPictureThatIsOutOfRegisterIsFound() {
        Board board = Samples.pine();
        BufferedImage face = WoodFigure.of(board).image(Surface.FACE_1, 6);
        BufferedImage edge = WoodFigure.of(board).image(Surface.EDGE_1, 6);
        double inRegister = difference(face, face.getHeight() - 1, edge, 0, 0);
        assertThat(difference(face, face.getHeight() - 1, edge, 0, 12)).isGreaterThan(2 * inRegister);
    }

    /** Mean difference of two rows' pixels, the second shifted by so many. */
    private static double difference(BufferedImage a, int rowA, BufferedImage b, int rowB, int shift) {
        int n = Math.min(a.getWidth(), b.getWidth()) - shift;
        double sum = 0;
        for (int x = 0; x < n; x++) sum += Pictures.difference(a.getRGB(x, rowA), b.getRGB(x + shift, rowB));
        return sum / n;
    }

    /** A pixel is the mean of the solid's points that it covers. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("boards")
    void aSurfacesPictureIsTheSolidsFigureThere(String species, Board board) {
        WoodFigure figure = WoodFigure.of(board);
        Random r = new Random(11);
        double scale = 5;
        for (Surface s : Surface.values()) {
            BufferedImage image = figure.image(s, scale);
            SurfaceFrame frame = SurfaceFrame.of(s, board);
            double px = frame.width() / image.getWidth();
            double py = frame.height() / image.getHeight();
            List<Double> off = new ArrayList<>();
            for (int i = 0; i < 60; i++) {
                int x = r.nextInt(image.getWidth());
                int y = r.nextInt(image.getHeight());
                off.add(Pictures.difference(image.getRGB(x, y), mean(figure, frame, x * px, y * py, px, py)));
            }
            off.sort(Double::compare);
            assertThat(off.get(30)).as("median on " + s).isLessThan(3.0);
            assertThat(off.get(56)).as("nineteen in twenty on " + s).isLessThan(12.0);
        }
    }

    private static int mean(WoodFigure figure, SurfaceFrame frame, double x, double y, double w, double h) {
        int n = 5;
        int[] sum = new int[3];
        for (int i = 0; i < n * n; i++) {
            double px = x + w * (i % n + 0.5) / n;
            double py = y + h * (i / n + 0.5) / n;
            SurfacePoint p = frame.toSurface(new Point2D.Double(px, py));
            int c = figure.argb(p);
            for (int k = 0; k < 3; k++) sum[k] += (c >> (8 * k)) & 255;
        }
        return sum[2] / (n * n) << 16 | sum[1] / (n * n) << 8 | sum[0] / (n * n);
    }

    @Test
    void asManyPixelsAreColouredAsAKnotAsItsTraceHasArea() {
        int compared = 0;
        for (long seed = 1; seed <= 12; seed++) {
            Board many = dressed(Samples.random("scots-pine", 500 + seed));
            for (Knot knot : many.knots()) {
                Board board = Samples.board(
                        "K",
                        "scots-pine",
                        many.size(),
                        many.pith().orElseThrow(),
                        2.4,
                        List.of(knot),
                        seed,
                        Set.of(Surface.values()));
                for (Trace trace : board.traces()) {
                    if (trace.area() < 12) continue;
                    double area = redArea(board, trace.surface());
                    assertThat(area)
                            .as("%s, seed %d", trace, seed)
                            .isCloseTo(trace.area(), within(0.01 * trace.area()));
                    compared++;
                }
            }
        }
        assertThat(compared).as("traces compared").isEqualTo(31);
    }

    /** Square millimetres of the surface whose pixels are more than half knot. */
    private static double redArea(Board board, Surface s) {
        BufferedImage image = WoodFigure.of(board, RED_KNOTS).image(s, 12);
        int[] pixels = Pictures.pixels(image);
        long red = Arrays.stream(pixels)
                .filter(c -> ((c >> 16) & 255) > ((c >> 8) & 255))
                .count();
        return red * board.uExtent(s) * board.vExtent(s) / pixels.length;
    }

    @Test
    void theSameSeedGivesTheSamePixelsAndAnotherSeedOthers() {
        Board pine = Samples.pine();
        BufferedImage once = WoodFigure.of(pine).image(Surface.FACE_1, 2);
        BufferedImage again = WoodFigure.of(Samples.pine()).image(Surface.FACE_1, 2);
        assertThat(Pictures.pixels(again)).isEqualTo(Pictures.pixels(once));
        Board other = Samples.board(
                "A",
                "scots-pine",
                pine.size(),
                pine.pith().orElseThrow(),
                2.4,
                pine.knots(),
                4712,
                pine.facts().dressed());
        assertThat(Pictures.meanDifference(WoodFigure.of(other).image(Surface.FACE_1, 2), once))
                .isGreaterThan(4);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("boards")
    void atTwiceTheScaleTheSameFigureIsSeenFiner(String species, Board board) {
        BufferedImage fine = WoodFigure.of(board).image(Surface.FACE_1, 4);
        BufferedImage coarse = WoodFigure.of(board).image(Surface.FACE_1, 2);
        assertThat(Pictures.meanDifference(Pictures.halved(fine), coarse)).isLessThan(4.0);
    }

    @Test
    void aDeadKnotHasADarkRimAndALiveOneIsLighter() {
        Board board = Samples.pine();
        WoodFigure figure = WoodFigure.of(board);
        double live = brightness(figure, board, "k2", Surface.FACE_1);
        double dead = brightness(figure, board, "k3", Surface.FACE_1);
        assertThat(dead).isLessThan(0.8 * live);
    }

    private static double brightness(WoodFigure figure, Board board, String knot, Surface s) {
        Trace trace = board.traces(s).stream()
                .filter(t -> t.knot().equals(knot))
                .findFirst()
                .orElseThrow();
        SurfacePoint m = trace.middle();
        double sum = 0;
        for (int i = 0; i < 200; i++) {
            double a = 2 * Math.PI * i / 200;
            int c = figure.argb(new SurfacePoint(
                    s, m.u() + 0.4 * trace.length() * Math.cos(a), m.v() + 0.4 * trace.width() * Math.sin(a)));
            sum += ((c >> 16) & 255) + ((c >> 8) & 255) + (c & 255);
        }
        return sum / 600;
    }
}
