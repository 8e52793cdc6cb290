package org.marktwice.picture;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.List;
import org.marktwice.bench.Mark;
import org.marktwice.timber.Arris;
import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;

/**
 * The two face marks as pencil paths. The face side carries one loop whose tail runs off at the arris; the face edge a V
 * whose point touches it. Both stand near the middle of the arris and close together, so that trimming doesn't take them.
 */
public final class FaceMarks {
    /** A mark's height where the surface has room for it, millimetres. */
    private static final double HEIGHT = 31;
    /** The greatest share of the surface's width, and of the arris' length, that a mark's height takes. */
    private static final double SHARE = 0.65;
    /** How far the two marks' points stand apart on the arris, as a share of the mark's height. */
    private static final double APART = 0.10;

    private FaceMarks() {}

    /** The mark in its surface's page frame (millimetres, {@link SurfaceFrame}); it touches the arris exactly. */
    public static Path2D.Double path(Mark mark, List<Mark> all, Board board) {
        SurfaceFrame frame = SurfaceFrame.of(mark.on(), board);
        double size = height(mark.on(), mark.towards(), board);
        Path2D.Double path = mark.kind() == Mark.Kind.FACE_SIDE ? loop() : vee();
        path.transform(AffineTransform.getScaleInstance(size, size));
        path.transform(onArris(frame, mark, shift(mark, all, size)));
        return path;
    }

    /** Where the tail or the point meets the arris, in the page frame. */
    public static Point2D.Double touch(Mark mark, List<Mark> all, Board board) {
        double size = height(mark.on(), mark.towards(), board);
        SurfaceFrame frame = SurfaceFrame.of(mark.on(), board);
        Point2D.Double p = new Point2D.Double();
        onArris(frame, mark, shift(mark, all, size)).transform(new Point2D.Double(0, 0), p);
        return p;
    }

    static double height(Surface on, Surface towards, Board board) {
        double away = board.size().along(towards.axis());
        double along = board.size().along(new Arris(on, towards).axis());
        return Math.min(HEIGHT, SHARE * Math.min(away, along));
    }

    /** One loop, its tail at (0, 0); x along the arris, y away from it, height 1. */
    private static Path2D.Double loop() {
        Path2D.Double p = new Path2D.Double();
        p.moveTo(-0.62, 0.30);
        p.curveTo(-0.36, 0.40, -0.02, 0.62, 0.02, 0.84);
        p.curveTo(0.04, 1.02, -0.22, 1.06, -0.30, 0.84);
        p.curveTo(-0.37, 0.62, -0.14, 0.26, 0, 0);
        return p;
    }

    /** A V on its point at (0, 0). */
    private static Path2D.Double vee() {
        Path2D.Double p = new Path2D.Double();
        p.moveTo(-0.27, 0.72);
        p.lineTo(0, 0);
        p.lineTo(0.29, 0.70);
        return p;
    }

    /** From the mark's own frame to the page: rotated, never mirrored. */
    private static AffineTransform onArris(SurfaceFrame frame, Mark mark, double shift) {
        boolean overV = mark.towards().axis() == mark.on().vAxis();
        boolean far = mark.towards().sign() > 0;
        double w = frame.width();
        double h = frame.height();
        AffineTransform t = new AffineTransform();
        if (overV) {
            boolean top = far == frame.vFlipped();
            t.translate(w / 2, top ? 0 : h);
            if (top) t.rotate(Math.PI);
            t.translate(top ? -shift : shift, 0);
        } else {
            boolean right = far != frame.uFlipped();
            t.translate(right ? w : 0, h / 2);
            t.rotate(right ? -Math.PI / 2 : Math.PI / 2);
            t.translate(shift, 0);
        }
        t.scale(1, -1);
        return t;
    }

    /** Apart from the other kind, and apart from earlier marks on the same surface. */
    private static double shift(Mark mark, List<Mark> all, double size) {
        int earlier = 0;
        for (Mark other : all) {
            if (other.equals(mark)) break;
            if (other.on() == mark.on()) earlier++;
        }
        double own = mark.kind() == Mark.Kind.FACE_SIDE ? -APART : APART;
        return size * (own + 1.5 * earlier);
    }
}
