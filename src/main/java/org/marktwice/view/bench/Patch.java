package org.marktwice.view.bench;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.NoninvertibleTransformException;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.Optional;
import java.util.function.Function;
import org.marktwice.picture.SurfaceFrame;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;

/**
 * A surface as one view shows it. Both projections are parallel, so that a surface of a true board is laid flat on the view
 * by one affine map; the board's shape then bends it a little. Everything that is pointed at or drawn goes through here.
 *
 * @param frame the surface laid on its page, in millimetres, never mirrored
 * @param toView from the page of a true board's surface to the view's pixels
 * @param bent from the surface as it is bent to the view's pixels
 */
public record Patch(SurfaceFrame frame, AffineTransform toView, Function<SurfacePoint, Point2D.Double> bent) {
    /** Pointing is true to a hundredth of a pixel, and settles long before so many tries. */
    private static final double SETTLED = 0.01;

    private static final int TRIES = 40;
    private static final int SIDE = 16;

    public Patch {
        toView = new AffineTransform(toView);
    }

    /** A surface of a true board. */
    public static Patch flat(SurfaceFrame frame, AffineTransform toView) {
        AffineTransform map = new AffineTransform(toView);
        return new Patch(frame, map, p -> {
            Point2D.Double at = frame.toPage(p);
            map.transform(at, at);
            return at;
        });
    }

    public Surface surface() {
        return frame.surface();
    }

    /** From the surface's own coordinates to the view's pixels, the bend left out: good for distances. */
    public AffineTransform surfaceToView() {
        AffineTransform map = new AffineTransform(toView);
        map.concatenate(frame.toPage());
        return map;
    }

    public Point2D.Double toView(double u, double v) {
        return toView(new SurfacePoint(surface(), u, v));
    }

    public Point2D.Double toView(SurfacePoint at) {
        return bent.apply(at);
    }

    /** Pixels a millimetre, the mean of both ways. */
    public double scale() {
        return Math.sqrt(Math.abs(toView.getDeterminant()));
    }

    public Shape outline() {
        Path2D.Double path = new Path2D.Double();
        double[][] corners = {{0, 0}, {1, 0}, {1, 1}, {0, 1}, {0, 0}};
        for (int side = 0; side < 4; side++) {
            for (int i = 0; i < SIDE; i++) {
                double share = i / (double) SIDE;
                Point2D.Double p = toView(
                        frame.width() * (corners[side][0] + share * (corners[side + 1][0] - corners[side][0])),
                        frame.height() * (corners[side][1] + share * (corners[side + 1][1] - corners[side][1])));
                if (path.getCurrentPoint() == null) path.moveTo(p.x, p.y);
                else path.lineTo(p.x, p.y);
            }
        }
        path.closePath();
        return path;
    }

    /** The surface's point under a pixel; empty beside the surface, or where it is seen edge on. */
    public Optional<SurfacePoint> at(Point2D pixel) {
        return under(pixel).filter(p -> p.u() >= 0 && p.v() >= 0 && p.u() <= frame.width() && p.v() <= frame.height());
    }

    /** The nearest of the surface's coordinates to a pixel, however far away that is. */
    public Optional<SurfacePoint> nearest(Point2D pixel) {
        return under(pixel)
                .map(p -> new SurfacePoint(surface(), clamp(p.u(), frame.width()), clamp(p.v(), frame.height())));
    }

    /** Found on the flat map, and put right by as much as the bend puts it wrong, over and over. */
    private Optional<SurfacePoint> under(Point2D pixel) {
        try {
            Point2D.Double aim = new Point2D.Double(pixel.getX(), pixel.getY());
            SurfacePoint at = frame.toSurface(toView.inverseTransform(aim, null));
            for (int i = 0; i < TRIES; i++) {
                Point2D.Double shown = toView(at);
                double offX = pixel.getX() - shown.x;
                double offY = pixel.getY() - shown.y;
                if (Math.hypot(offX, offY) < SETTLED) break;
                aim.setLocation(aim.x + offX, aim.y + offY);
                at = frame.toSurface(toView.inverseTransform(aim, null));
            }
            return Optional.of(at);
        } catch (NoninvertibleTransformException seenEdgeOn) {
            return Optional.empty();
        }
    }

    private static double clamp(double value, double extent) {
        return Math.max(0, Math.min(extent, value));
    }
}
