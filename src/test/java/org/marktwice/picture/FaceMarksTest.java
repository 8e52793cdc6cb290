package org.marktwice.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.marktwice.bench.Mark;
import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;

class FaceMarksTest {
    private final Board board = Samples.pine();

    static List<Arguments> everyPlace() {
        List<Arguments> out = new ArrayList<>();
        for (Mark.Kind kind : Mark.Kind.values()) {
            for (Surface on : Surface.LONG) {
                for (Surface towards : Surface.values()) {
                    if (on.adjoins(towards)) out.add(Arguments.of(kind, on, towards));
                }
            }
        }
        return out;
    }

    @ParameterizedTest(name = "{0} on {1} towards {2}")
    @MethodSource("everyPlace")
    void theTailOrThePointLiesOnTheArrisAndAllElseOnTheSurface(Mark.Kind kind, Surface on, Surface towards) {
        Mark mark = new Mark(kind, on, towards, 1);
        SurfaceFrame frame = SurfaceFrame.of(on, board);
        Point2D.Double touch = FaceMarks.touch(mark, List.of(mark), board);
        SurfacePoint at = frame.toSurface(touch);
        double arris = towards.sign() > 0 ? board.size().along(towards.axis()) : 0;
        assertThat(at.in(board.size()).get(towards.axis())).isCloseTo(arris, within(1e-9));

        List<Point2D.Double> points = points(FaceMarks.path(mark, List.of(mark), board));
        int touching = 0;
        for (Point2D.Double p : points) {
            double from = Math.abs(frame.toSurface(p).in(board.size()).get(towards.axis()) - arris);
            if (from < 1e-9) {
                touching++;
                assertThat(p.distance(touch)).isLessThan(1e-9);
            }
        }
        assertThat(touching).isEqualTo(1);
        Rectangle2D surface = new Rectangle2D.Double(-1e-9, -1e-9, frame.width() + 2e-9, frame.height() + 2e-9);
        assertThat(surface.contains(FaceMarks.path(mark, List.of(mark), board).getBounds2D()))
                .isTrue();
    }

    @ParameterizedTest(name = "{0} on {1} towards {2}")
    @MethodSource("everyPlace")
    void aFaceSidesTailIsItsLastPointAndAFaceEdgesPointItsMiddleOne(Mark.Kind kind, Surface on, Surface towards) {
        Mark mark = new Mark(kind, on, towards, 1);
        List<Point2D.Double> points = points(FaceMarks.path(mark, List.of(mark), board));
        Point2D.Double point = kind == Mark.Kind.FACE_EDGE ? points.get(1) : points.get(points.size() - 1);
        assertThat(point.distance(FaceMarks.touch(mark, List.of(mark), board))).isLessThan(1e-9);
        if (kind == Mark.Kind.FACE_EDGE) assertThat(points).hasSize(3);
    }

    /** The loop is written, not printed: on every surface it turns the same way round. */
    @ParameterizedTest(name = "{0} on {1} towards {2}")
    @MethodSource("everyPlace")
    void aMarkIsNeverMirrored(Mark.Kind kind, Surface on, Surface towards) {
        Mark mark = new Mark(kind, on, towards, 1);
        Mark same = new Mark(kind, Surface.FACE_1, Surface.EDGE_1, 1);
        assertThat(Math.signum(turns(FaceMarks.path(mark, List.of(mark), board))))
                .isEqualTo(Math.signum(turns(FaceMarks.path(same, List.of(same), board))));
    }

    @Test
    void theTwoMarksStandTogetherAtTheMiddleOfTheirArris() {
        Mark side = new Mark(Mark.Kind.FACE_SIDE, Surface.FACE_1, Surface.EDGE_1, 1);
        Mark edge = new Mark(Mark.Kind.FACE_EDGE, Surface.EDGE_1, Surface.FACE_1, 2);
        List<Mark> both = List.of(side, edge);
        double one = x(side, both);
        double other = x(edge, both);
        assertThat(Math.abs(one - other)).isBetween(1.0, 10.0);
        assertThat((one + other) / 2).isCloseTo(board.size().length() / 2, within(5.0));
    }

    @Test
    void aSecondMarkOnASurfaceStandsClearOfTheFirst() {
        Mark first = new Mark(Mark.Kind.FACE_SIDE, Surface.FACE_1, Surface.EDGE_1, 1);
        Mark second = new Mark(Mark.Kind.FACE_SIDE, Surface.FACE_1, Surface.EDGE_1, 2);
        List<Mark> both = List.of(first, second);
        assertThat(FaceMarks.path(first, both, board)
                        .getBounds2D()
                        .intersects(FaceMarks.path(second, both, board).getBounds2D()))
                .isFalse();
    }

    private double x(Mark mark, List<Mark> all) {
        SurfaceFrame frame = SurfaceFrame.of(mark.on(), board);
        return frame.toSurface(FaceMarks.touch(mark, all, board)).u();
    }

    private static List<Point2D.Double> points(Path2D path) {
        List<Point2D.Double> out = new ArrayList<>();
        double[] c = new double[6];
        for (PathIterator it = path.getPathIterator(null, 0.01); !it.isDone(); it.next()) {
            it.currentSegment(c);
            out.add(new Point2D.Double(c[0], c[1]));
        }
        return out;
    }

    /** Twice the area that the path goes round, signed by the way it goes. */
    private static double turns(Path2D path) {
        List<Point2D.Double> p = points(path);
        double sum = 0;
        for (int i = 0; i < p.size(); i++) {
            Point2D.Double a = p.get(i);
            Point2D.Double b = p.get((i + 1) % p.size());
            sum += a.x * b.y - b.x * a.y;
        }
        return sum;
    }
}
