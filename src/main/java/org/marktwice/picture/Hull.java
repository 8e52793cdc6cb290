package org.marktwice.picture;

import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Convex hulls in the plane, by Andrew's monotone chain (Information Processing Letters 9, 1979). */
public final class Hull {
    private Hull() {}

    /** The hull as a closed path. */
    public static Path2D.Double of(List<Point2D.Double> points) {
        List<Point2D.Double> sorted = points.stream()
                .sorted(Comparator.<Point2D.Double>comparingDouble(p -> p.x).thenComparingDouble(p -> p.y))
                .toList();
        List<Point2D.Double> ring = new ArrayList<>(chain(sorted));
        List<Point2D.Double> back = new ArrayList<>(sorted);
        java.util.Collections.reverse(back);
        ring.addAll(chain(back));
        Path2D.Double path = new Path2D.Double();
        for (int i = 0; i < ring.size(); i++) {
            if (i == 0) path.moveTo(ring.get(i).x, ring.get(i).y);
            else path.lineTo(ring.get(i).x, ring.get(i).y);
        }
        path.closePath();
        return path;
    }

    private static List<Point2D.Double> chain(List<Point2D.Double> sorted) {
        List<Point2D.Double> out = new ArrayList<>();
        for (Point2D.Double p : sorted) {
            while (out.size() >= 2 && turn(out.get(out.size() - 2), out.get(out.size() - 1), p) <= 0) {
                out.remove(out.size() - 1);
            }
            out.add(p);
        }
        out.remove(out.size() - 1);
        return out;
    }

    private static double turn(Point2D.Double a, Point2D.Double b, Point2D.Double c) {
        return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
    }
}
