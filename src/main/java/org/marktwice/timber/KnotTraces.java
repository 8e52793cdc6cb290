package org.marktwice.timber;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Where a knot's body comes through a surface: the hull of those of its corners that lie in the surface's plane. */
final class KnotTraces {
    /** Corners this near to the plane, in millimetres, lie in it. */
    private static final double IN_PLANE = 1e-7;
    /** Less than this, in square millimetres, is a touch and no trace. */
    private static final double LEAST_AREA = 1e-6;

    private KnotTraces() {}

    static Optional<Trace> trace(KnotBody body, double[] corners, Surface surface) {
        double plane = surface.sign() > 0 ? body.boardSize().along(surface.axis()) : 0;
        List<SurfacePoint> inPlane = new ArrayList<>();
        for (int k = 0; k < corners.length; k += 3) {
            if (Math.abs(corners[k + surface.axis()] - plane) > IN_PLANE) continue;
            inPlane.add(new SurfacePoint(surface, corners[k + surface.uAxis()], corners[k + surface.vAxis()]));
        }
        List<SurfacePoint> outline = hull(inPlane);
        if (outline.size() < 3) return Optional.empty();
        Section section = Section.of(outline);
        if (section.area < LEAST_AREA) return Optional.empty();
        SurfacePoint centroid = new SurfacePoint(surface, section.u, section.v);
        boolean live = body.knot().liveAt(body.along(centroid.in(body.boardSize())));
        return Optional.of(
                new Trace(body.knot().id(), surface, outline, section.length, section.width, section.area, live));
    }

    /**
     * The convex hull, counter-clockwise, without points on its sides (A. M. Andrew, "Another efficient algorithm for
     * convex hulls in two dimensions", Information Processing Letters 9(5), 1979).
     */
    private static List<SurfacePoint> hull(List<SurfacePoint> points) {
        List<SurfacePoint> sorted = points.stream()
                .sorted(Comparator.comparingDouble(SurfacePoint::u).thenComparingDouble(SurfacePoint::v))
                .toList();
        if (sorted.size() < 3) return sorted;
        List<SurfacePoint> hull = new ArrayList<>();
        sorted.forEach(p -> push(hull, p, 1));
        int lower = hull.size();
        for (int i = sorted.size() - 2; i >= 0; i--) push(hull, sorted.get(i), lower);
        hull.remove(hull.size() - 1);
        return hull;
    }

    /** Adds a point after taking back those that it makes lie inside; the first {@code fixed} points stay. */
    private static void push(List<SurfacePoint> hull, SurfacePoint point, int fixed) {
        while (hull.size() > fixed && turn(hull.get(hull.size() - 2), hull.get(hull.size() - 1), point) <= 0) {
            hull.remove(hull.size() - 1);
        }
        hull.add(point);
    }

    private static double turn(SurfacePoint a, SurfacePoint b, SurfacePoint c) {
        return (b.u() - a.u()) * (c.v() - a.v()) - (b.v() - a.v()) * (c.u() - a.u());
    }

    /** Area, centroid and extents of a polygon. */
    private record Section(double area, double u, double v, double length, double width) {
        static Section of(List<SurfacePoint> outline) {
            // About its first point, so that small outlines far from the board's corner keep their digits.
            SurfacePoint first = outline.get(0);
            double area = 0;
            double u = 0;
            double v = 0;
            for (int i = 1; i + 1 < outline.size(); i++) {
                SurfacePoint b = outline.get(i);
                SurfacePoint c = outline.get(i + 1);
                double part = turn(first, b, c) / 2;
                area += part;
                u += part * (b.u() + c.u() - 2 * first.u()) / 3;
                v += part * (b.v() + c.v() - 2 * first.v()) / 3;
            }
            double length = extent(outline.stream().mapToDouble(SurfacePoint::u).toArray());
            double width = extent(outline.stream().mapToDouble(SurfacePoint::v).toArray());
            return new Section(area, first.u() + u / area, first.v() + v / area, length, width);
        }

        private static double extent(double[] values) {
            double low = Double.POSITIVE_INFINITY;
            double high = Double.NEGATIVE_INFINITY;
            for (double value : values) {
                low = Math.min(low, value);
                high = Math.max(high, value);
            }
            return high - low;
        }
    }
}
