package org.marktwice.timber;

import java.util.List;
import java.util.Locale;

/**
 * Where a knot breaks through a surface.
 *
 * @param knot the knot's id
 * @param outline the convex outline, counter-clockwise in the surface's own (u, v), without repeating the first point
 * @param length extent along the surface's first coordinate (along the grain, on long surfaces), millimetres
 * @param width extent along the second coordinate, millimetres
 * @param area square millimetres
 * @param live whether the branch is live (intergrown) where it comes through
 */
public record Trace(
        String knot,
        Surface surface,
        List<SurfacePoint> outline,
        double length,
        double width,
        double area,
        boolean live) {
    public Trace {
        outline = List.copyOf(outline);
    }

    /** The middle of the outline's extent. */
    public SurfacePoint middle() {
        double u0 = Double.POSITIVE_INFINITY;
        double v0 = Double.POSITIVE_INFINITY;
        for (SurfacePoint point : outline) {
            u0 = Math.min(u0, point.u());
            v0 = Math.min(v0, point.v());
        }
        return new SurfacePoint(surface, u0 + length / 2, v0 + width / 2);
    }

    /** Without the outline, which has hundreds of points. */
    @Override
    public String toString() {
        return String.format(
                Locale.ROOT, "trace of %s on %s, %.2f × %.2f, %.2f mm²", knot, surface.id(), length, width, area);
    }
}
