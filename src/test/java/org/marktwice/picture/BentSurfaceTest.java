package org.marktwice.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.joml.Matrix3d;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.marktwice.timber.Board;
import org.marktwice.timber.Pith;
import org.marktwice.timber.Seasoned;
import org.marktwice.timber.Shape;
import org.marktwice.timber.Size;
import org.marktwice.timber.SpeciesTable;
import org.marktwice.timber.Stuff;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;
import org.marktwice.timber.TrueForm;

/** The views draw the board's true shape: where its surfaces go, and that they stay together. */
class BentSurfaceTest {
    private static final Size SIZE = new Size(300, 120, 18);
    private static final Rectangle2D AREA = new Rectangle2D.Double(20, 20, 760, 460);
    private static final Font FONT = new Font(Font.SANS_SERIF, Font.PLAIN, 12);

    private static Board board(double moisture, Shape shape) {
        return Board.of(new Board.Facts(
                "A",
                Stuff.TIMBER,
                SpeciesTable.byId("scots-pine").orElseThrow(),
                SIZE,
                14,
                moisture,
                EnumSet.allOf(Surface.class),
                new Pith(50, -40),
                2.5,
                List.of(),
                shape,
                7));
    }

    private static Board crooked() {
        return board(8, new Shape(0.8, -0.6, 1.2, 0.5, 0.3, Map.of(Surface.EDGE_1, -0.5, Surface.END_2, 0.4)));
    }

    private static FormShown shown(Board board, double times) {
        return new FormShown(TrueForm.now(board), times);
    }

    private static Isometric isometric(Board board, double times) {
        return Isometric.of(SIZE, new Matrix3d()).formed(shown(board, times)).fitted(AREA);
    }

    @Test
    void aTrueBoardLiesWhereItsBoxLies() {
        Board board = board(14, Shape.TRUE);
        Isometric plain = Isometric.fit(SIZE, new Matrix3d(), AREA);
        Isometric formed = isometric(board, 20);
        for (Surface s : Surface.values()) {
            SurfacePoint p = new SurfacePoint(s, 7, 5);
            assertThat(formed.project(p).distance(plain.project(p))).isLessThan(1e-6);
            assertThat(formed.bent(s)).isEmpty();
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 5, 20})
    void neighboursStayTogetherAlongTheirArris(double times) {
        Board board = crooked();
        Isometric view = isometric(board, times);
        for (int i = 0; i <= 10; i++) {
            double x = 30.0 * i;
            Point2D above = view.project(new SurfacePoint(Surface.FACE_1, x, 0));
            Point2D beside = view.project(new SurfacePoint(Surface.EDGE_1, x, 18));
            assertThat(above.distance(beside)).isLessThan(1e-9);
        }
    }

    /** In the isometric view a millimetre upright is drawn √(2/3) long. */
    @ParameterizedTest
    @ValueSource(doubles = {1, 4, 20})
    void bowHangsAsDeepInTheViewAsItIsTimesTheExaggeration(double times) {
        Board board = board(14, new Shape(0.8, 0, 0, 0, 0, Map.of()));
        Isometric view = isometric(board, times);
        Point2D a = view.project(new SurfacePoint(Surface.FACE_1, 0, 60));
        Point2D b = view.project(new SurfacePoint(Surface.FACE_1, 300, 60));
        Point2D middle = view.project(new SurfacePoint(Surface.FACE_1, 150, 60));
        double sag = middle.getY() - (a.getY() + b.getY()) / 2;
        assertThat(sag).isCloseTo(0.8 * times * Isometric.FACTOR * view.scale(), within(1e-6));
    }

    @Test
    void seenSquareOnTheEndsShowTheCupAndTheEdgesTheBow() {
        Board board = board(8, new Shape(0.8, 0, 0, 0, 0, Map.of()));
        Unrolled view = Unrolled.in(AREA, board, FONT, shown(board, 10));
        double cup = Seasoned.now(board).cup(Surface.FACE_1).orElseThrow();
        assertThat(deepest(view, Surface.END_1, 18))
                .isCloseTo(cup * 10 * view.scale(), within(0.02 * cup * 10 * view.scale()));
        Point2D a = view.project(new SurfacePoint(Surface.EDGE_1, 0, 18));
        Point2D b = view.project(new SurfacePoint(Surface.EDGE_1, 300, 18));
        Point2D middle = view.project(new SurfacePoint(Surface.EDGE_1, 150, 18));
        assertThat(middle.getY() - (a.getY() + b.getY()) / 2).isCloseTo(8 * view.scale(), within(1e-6));
    }

    /** How far the line of face-1 on an end hangs below its ends, pixels. */
    private static double deepest(Unrolled view, Surface end, double z) {
        Point2D a = view.project(new SurfacePoint(end, 0, z));
        Point2D b = view.project(new SurfacePoint(end, 120, z));
        double most = 0;
        for (int i = 1; i < 60; i++) {
            Point2D p = view.project(new SurfacePoint(end, 2.0 * i, z));
            double share = (p.getX() - a.getX()) / (b.getX() - a.getX());
            most = Math.max(most, p.getY() - (a.getY() + share * (b.getY() - a.getY())));
        }
        return most;
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 10, 20})
    void whateverTheExaggerationItAllStaysInTheArea(double times) {
        Board board = crooked();
        assertThat(AREA.contains(isometric(board, times).bounds())).isTrue();
        Rectangle2D room = new Rectangle2D.Double(18, 18, 764, 464);
        assertThat(room.contains(
                        Unrolled.in(AREA, board, FONT, shown(board, times)).bounds()))
                .isTrue();
    }

    /** Every point of the bent surface is painted, and in the wood's own colour there: the mark of a wrong patch would show. */
    @ParameterizedTest
    @ValueSource(doubles = {2, 10, 20})
    void patchesPutTheFigureWhereTheSurfaceIs(double times) {
        Board board = crooked();
        FigureCache cache = new FigureCache();
        SurfacePainter painter = new SurfacePainter(Figures.exact(cache), FONT);
        Isometric view = isometric(board, times);
        BufferedImage image = new BufferedImage(800, 500, BufferedImage.TYPE_INT_ARGB);
        Graphics2D g = image.createGraphics();
        new IsometricPainter(painter).paint(g, BoardPicture.of(board), view, Palette.LIGHT);
        g.dispose();
        BufferedImage flat = cache.image(board, Surface.FACE_1, view.scale());
        SurfaceFrame frame = SurfaceFrame.of(Surface.FACE_1, board);
        Random random = new Random(5);
        double off = 0;
        int tried = 400;
        for (int i = 0; i < tried; i++) {
            SurfacePoint p =
                    new SurfacePoint(Surface.FACE_1, 8 + random.nextDouble() * 284, 8 + random.nextDouble() * 104);
            Point2D on = view.project(p);
            Point2D.Double page = frame.toPage(p);
            int seen = image.getRGB((int) on.getX(), (int) on.getY());
            int drawn = flat.getRGB((int) (page.x / frame.width() * flat.getWidth()), (int)
                    (page.y / frame.height() * flat.getHeight()));
            assertThat(seen >>> 24).isEqualTo(255);
            off += Math.abs(((seen >> 8) & 255) - ((drawn >> 8) & 255));
        }
        cache.close();
        // Light and dark wood differ by 60 and more; half a pixel's shift by a few.
        assertThat(off / tried).isLessThan(16);
    }
}
