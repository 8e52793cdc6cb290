package org.marktwice.picture;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.joml.Vector3d;
import org.joml.Vector3dc;
import org.marktwice.timber.Box;

/**
 * The edges of solids as they are drawn in a view, in the view's millimetres: what is seen, and what is hidden behind
 * something and not already covered by a line that is seen.
 *
 * <p>An edge from a along e is hidden at s where the ray {@code a + s·e + t·d}, t above 0, to the eye runs through a box.
 * For one box these (s, t) are a convex polygon, cut out by the box's six planes; its extent along s is what it hides.
 */
record Linework(List<Piece> seen, List<Piece> hidden) {
    /** A box hides nothing by merely touching, millimetres. */
    private static final double TOUCH = 0.01;
    /** So far beside an edge one looks past it, millimetres. */
    private static final double BESIDE = 0.03;
    /**
     * What hides an edge begins so far before it, millimetres. Beside the line of an inner corner one is inside the wood that
     * meets there, up to BESIDE deep; towards an isometric eye that is left again within 0.042, as every face seen faces the eye.
     */
    private static final double BEFORE = 0.08;
    /** Drawn pieces shorter than this are left out, millimetres. */
    private static final double SHORTEST = 0.05;

    /** @param part the id of the part whose edge it is */
    record Piece(String part, Line2D.Double line) {}

    static Linework of(List<PartSolid> solids, JobView view) {
        List<Box> boxes = solids.stream().flatMap(s -> s.boxes().stream()).toList();
        List<Piece> seen = new ArrayList<>();
        List<Piece> hidden = new ArrayList<>();
        for (PartSolid solid : solids) {
            for (PartSolid.Edge edge : solid.edges()) {
                Point2D.Double a = view.project(edge.from());
                Point2D.Double b = view.project(edge.to());
                double length = a.distance(b);
                if (length < SHORTEST) continue;
                List<double[]> covered = covered(edge, boxes, view.towards());
                add(seen, solid, a, b, Spans.complement(covered));
                add(hidden, solid, a, b, covered);
            }
        }
        return new Linework(once(seen), Spans.notOn(hidden, seen));
    }

    /** Edges of one part that fall together in the view, once: a line drawn twice looks heavier. */
    private static List<Piece> once(List<Piece> pieces) {
        Map<String, List<Piece>> byPart = new LinkedHashMap<>();
        for (Piece p : pieces)
            byPart.computeIfAbsent(p.part(), k -> new ArrayList<>()).add(p);
        return byPart.values().stream()
                .flatMap(own -> Spans.notOn(own, List.of()).stream())
                .toList();
    }

    private static void add(List<Piece> to, PartSolid solid, Point2D.Double a, Point2D.Double b, List<double[]> spans) {
        for (double[] s : spans) {
            Line2D.Double line = new Line2D.Double(
                    a.x + (b.x - a.x) * s[0],
                    a.y + (b.y - a.y) * s[0],
                    a.x + (b.x - a.x) * s[1],
                    a.y + (b.y - a.y) * s[1]);
            if (line.getP1().distance(line.getP2()) >= SHORTEST)
                to.add(new Piece(solid.part().id(), line));
        }
    }

    /**
     * What of an edge is hidden: both what lies just beside it on the one hand and what lies just beside it on the other. An
     * edge behind the seam of two boxes is so behind one of them on either hand.
     */
    private static List<double[]> covered(PartSolid.Edge edge, List<Box> boxes, Vector3dc eye) {
        Vector3d along = edge.to().sub(edge.from(), new Vector3d());
        Vector3d aside = along.cross(eye, new Vector3d()).normalize(BESIDE);
        List<double[]> left = covered(edge.from().add(aside, new Vector3d()), along, boxes, eye);
        List<double[]> right = covered(edge.from().sub(aside, new Vector3d()), along, boxes, eye);
        return Spans.common(left, right);
    }

    private static List<double[]> covered(Vector3dc from, Vector3dc along, List<Box> boxes, Vector3dc eye) {
        List<double[]> out = new ArrayList<>();
        for (Box box : boxes) {
            double[] span = covers(box, from, along, eye);
            if (span != null) out.add(span);
        }
        return Spans.union(out);
    }

    /** The range of s in 0..1 that a box hides; null for none. */
    private static double @org.jspecify.annotations.Nullable [] covers(Box box, Vector3dc a, Vector3dc e, Vector3dc d) {
        double far = 1e6;
        List<double[]> polygon = List.of(
                new double[] {0, BEFORE}, new double[] {1, BEFORE}, new double[] {1, far}, new double[] {0, far});
        for (int axis = 0; axis < 3 && !polygon.isEmpty(); axis++) {
            double low = box.min(axis) + TOUCH - a.get(axis);
            double high = box.max(axis) - TOUCH - a.get(axis);
            if (low >= high) return null;
            polygon = keep(polygon, e.get(axis), d.get(axis), low);
            polygon = keep(polygon, -e.get(axis), -d.get(axis), -high);
        }
        double from = 1;
        double to = 0;
        for (double[] p : polygon) {
            from = Math.min(from, p[0]);
            to = Math.max(to, p[0]);
        }
        return to > from + 1e-9 ? new double[] {from, to} : null;
    }

    /** The part of a convex polygon where {@code p·s + q·t ≥ r} (Sutherland and Hodgman, Comm. ACM 17, 1974). */
    private static List<double[]> keep(List<double[]> polygon, double p, double q, double r) {
        List<double[]> out = new ArrayList<>();
        for (int i = 0; i < polygon.size(); i++) {
            double[] a = polygon.get(i);
            double[] b = polygon.get((i + 1) % polygon.size());
            double inA = p * a[0] + q * a[1] - r;
            double inB = p * b[0] + q * b[1] - r;
            if (inA >= 0) out.add(a);
            if (inA >= 0 != inB >= 0) {
                double t = inA / (inA - inB);
                out.add(new double[] {a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t});
            }
        }
        return out;
    }

    /** Ranges on a line. */
    private static final class Spans {
        static List<double[]> union(List<double[]> spans) {
            List<double[]> sorted = new ArrayList<>(spans);
            sorted.sort(Comparator.comparingDouble(s -> s[0]));
            List<double[]> out = new ArrayList<>();
            for (double[] s : sorted) {
                double[] last = out.isEmpty() ? null : out.get(out.size() - 1);
                if (last != null && s[0] <= last[1] + 1e-6) last[1] = Math.max(last[1], s[1]);
                else out.add(s.clone());
            }
            return out;
        }

        /** What lies in both of two lists of united ranges. */
        static List<double[]> common(List<double[]> one, List<double[]> other) {
            List<double[]> out = new ArrayList<>();
            for (double[] a : one) {
                for (double[] b : other) {
                    double from = Math.max(a[0], b[0]);
                    double to = Math.min(a[1], b[1]);
                    if (to > from) out.add(new double[] {from, to});
                }
            }
            return out;
        }

        /** What of 0..1 is left. */
        static List<double[]> complement(List<double[]> united) {
            List<double[]> out = new ArrayList<>();
            double from = 0;
            for (double[] s : united) {
                if (s[0] > from) out.add(new double[] {from, s[0]});
                from = Math.max(from, s[1]);
            }
            if (from < 1) out.add(new double[] {from, 1});
            return out;
        }

        /** Pieces less what lies on others (hidden ones on those that are seen), and less what lies on an earlier one. */
        static List<Piece> notOn(List<Piece> pieces, List<Piece> others) {
            Map<String, List<double[]>> taken = new HashMap<>();
            for (Piece p : others) {
                Ray ray = Ray.of(p.line());
                taken.computeIfAbsent(ray.key(), k -> new ArrayList<>()).add(ray.span(p.line()));
            }
            List<Piece> out = new ArrayList<>();
            for (Piece p : pieces) {
                Ray ray = Ray.of(p.line());
                List<double[]> on = taken.computeIfAbsent(ray.key(), k -> new ArrayList<>());
                double[] own = ray.span(p.line());
                for (double[] left : less(own, union(on))) {
                    if (left[1] - left[0] >= SHORTEST) out.add(new Piece(p.part(), ray.line(left)));
                }
                on.add(own);
            }
            return List.copyOf(out);
        }

        private static List<double[]> less(double[] own, List<double[]> taken) {
            List<double[]> out = new ArrayList<>();
            double from = own[0];
            for (double[] t : taken) {
                if (t[1] <= from) continue;
                if (t[0] >= own[1]) break;
                if (t[0] > from) out.add(new double[] {from, t[0]});
                from = Math.max(from, t[1]);
            }
            if (from < own[1]) out.add(new double[] {from, own[1]});
            return out;
        }
    }

    /** The endless line a piece lies on: unit direction (right half-plane) and distance from the origin. */
    private record Ray(double dx, double dy, double off) {
        static Ray of(Line2D.Double l) {
            double length = Math.hypot(l.x2 - l.x1, l.y2 - l.y1);
            double dx = (l.x2 - l.x1) / length;
            double dy = (l.y2 - l.y1) / length;
            if (dx < -1e-9 || (Math.abs(dx) <= 1e-9 && dy < 0)) {
                dx = -dx;
                dy = -dy;
            }
            return new Ray(dx, dy, l.x1 * -dy + l.y1 * dx);
        }

        String key() {
            return Math.round(dx * 1e4) + " " + Math.round(dy * 1e4) + " " + Math.round(off * 20);
        }

        double[] span(Line2D.Double l) {
            double a = l.x1 * dx + l.y1 * dy;
            double b = l.x2 * dx + l.y2 * dy;
            return new double[] {Math.min(a, b), Math.max(a, b)};
        }

        Line2D.Double line(double[] s) {
            return new Line2D.Double(
                    s[0] * dx - off * dy, s[0] * dy + off * dx, s[1] * dx - off * dy, s[1] * dy + off * dx);
        }
    }
}
