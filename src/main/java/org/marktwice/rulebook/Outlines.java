package org.marktwice.rulebook;

import java.util.List;
import org.marktwice.timber.SurfacePoint;

/** Distances to a knot's convex outline on its surface, millimetres. */
final class Outlines {
    private Outlines() {}

    /** From a point of the same surface to the outline: 0 within it. The outline runs counter-clockwise. */
    static double distance(SurfacePoint point, List<SurfacePoint> outline) {
        boolean inside = outline.size() > 2;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < outline.size(); i++) {
            SurfacePoint a = outline.get(i);
            SurfacePoint b = outline.get((i + 1) % outline.size());
            inside &= (b.u() - a.u()) * (point.v() - a.v()) - (b.v() - a.v()) * (point.u() - a.u()) >= 0;
            least = Math.min(least, toSegment(point, a, b));
        }
        return inside ? 0 : least;
    }

    private static double toSegment(SurfacePoint p, SurfacePoint a, SurfacePoint b) {
        double du = b.u() - a.u();
        double dv = b.v() - a.v();
        double length = du * du + dv * dv;
        double along = length > 0 ? ((p.u() - a.u()) * du + (p.v() - a.v()) * dv) / length : 0;
        double t = Math.max(0, Math.min(1, along));
        return Math.hypot(p.u() - a.u() - t * du, p.v() - a.v() - t * dv);
    }
}
