package org.marktwice.view.bench;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.NoninvertibleTransformException;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import org.marktwice.picture.SurfaceFrame;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;

/**
 * A surface as one view shows it. Both projections are parallel, so that a surface is always laid flat on the view by one
 * affine map, and everything that is pointed at or drawn goes through it.
 *
 * @param frame the surface laid on its page, in millimetres, never mirrored
 * @param toView from the page to the view's pixels
 */
public record Patch(SurfaceFrame frame, AffineTransform toView) {
    public Patch {
        toView = new AffineTransform(toView);
    }

    public Surface surface() {
        return frame.surface();
    }

    /** From the surface's own coordinates to the view's pixels. */
    public AffineTransform surfaceToView() {
        AffineTransform map = new AffineTransform(toView);
        map.concatenate(frame.toPage());
        return map;
    }

    public Point2D toView(double u, double v) {
        return toView.transform(frame.toPage(u, v), null);
    }

    public Point2D toView(SurfacePoint at) {
        return toView(at.u(), at.v());
    }

    /** Pixels a millimetre, the mean of both ways. */
    public double scale() {
        return Math.sqrt(Math.abs(toView.getDeterminant()));
    }

    public Shape outline() {
        return new Path2D.Double(new Rectangle2D.Double(0, 0, frame.width(), frame.height()), toView);
    }

    /** The surface's point under a pixel; empty beside the surface, or where it is seen edge on. */
    public Optional<SurfacePoint> at(Point2D pixel) {
        return onPlane(pixel)
                .filter(p -> p.u() >= 0 && p.v() >= 0 && p.u() <= frame.width() && p.v() <= frame.height());
    }

    /** The nearest of the surface's coordinates to a pixel, however far away that is. */
    public Optional<SurfacePoint> nearest(Point2D pixel) {
        return onPlane(pixel)
                .map(p -> new SurfacePoint(surface(), clamp(p.u(), frame.width()), clamp(p.v(), frame.height())));
    }

    private Optional<SurfacePoint> onPlane(Point2D pixel) {
        try {
            return Optional.of(frame.toSurface(toView.inverseTransform(pixel, null)));
        } catch (NoninvertibleTransformException seenEdgeOn) {
            return Optional.empty();
        }
    }

    private static double clamp(double value, double extent) {
        return Math.max(0, Math.min(extent, value));
    }
}
