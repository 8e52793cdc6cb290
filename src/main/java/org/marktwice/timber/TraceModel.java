package org.marktwice.timber;

import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Where a knot would show on a surface, as the four readings of a {@link Showing}: quickly, for a fit that asks for it
 * thousands of times. The generators of the cone and the cylinder are cut with the surface's plane, and their outline is
 * clipped to the surface; where a generator doesn't reach the plane, the body itself is asked.
 */
final class TraceModel {
    private static final int GENERATORS = 48;
    /** No board is larger, millimetres. */
    private static final double FAR = 1e5;

    private final Pith pith;
    private final Size size;

    TraceModel(Pith pith, Size size) {
        this.pith = pith;
        this.size = size;
    }

    /** Empty where the knot doesn't show there. */
    Optional<double[]> readings(Knot knot, Surface surface) {
        Outline outline = outline(knot, surface);
        if (outline == null) {
            return body(knot).trace(surface).map(t -> Showing.of(t).readings());
        }
        return outline.clipped(size.along(surface.uAxis()), size.along(surface.vAxis()))
                .extents();
    }

    /** Where it would show if the surface had no end; empty where it runs beside it. */
    Optional<double[]> beyond(Knot knot, Surface surface) {
        Outline outline = outline(knot, surface);
        return outline == null ? Optional.empty() : outline.extents();
    }

    private KnotBody body(Knot knot) {
        return KnotBody.of(knot, size, pith);
    }

    /** Null where a generator doesn't reach the plane. */
    private @Nullable Outline outline(Knot knot, Surface surface) {
        double[] o = {knot.x(), pith.y(), pith.z()};
        double[] d = {
            knot.direction().x(), knot.direction().y(), knot.direction().z()
        };
        double[] p = square(d);
        double[] q = cross(d, p);
        double slope = Math.tan(Math.toRadians(knot.halfAngle()));
        double cone = knot.coneLength();
        int a = surface.axis();
        double far = (surface.sign() > 0 ? size.along(a) : 0) - o[a];
        double[] u = new double[GENERATORS];
        double[] v = new double[GENERATORS];
        for (int i = 0; i < GENERATORS; i++) {
            double angle = 2 * Math.PI * i / GENERATORS;
            double cos = Math.cos(angle);
            double sin = Math.sin(angle);
            double off = cos * p[a] + sin * q[a];
            double s = far / (d[a] + slope * off);
            double r = s * slope;
            if (!(s >= 0 && s <= cone)) {
                r = knot.maxRadius();
                s = (far - r * off) / d[a];
                if (!(s >= cone && s < FAR)) return null;
            }
            int ua = surface.uAxis();
            int va = surface.vAxis();
            u[i] = o[ua] + s * d[ua] + r * (cos * p[ua] + sin * q[ua]);
            v[i] = o[va] + s * d[va] + r * (cos * p[va] + sin * q[va]);
        }
        return new Outline(u, v, GENERATORS);
    }

    private static double[] square(double[] d) {
        int least = 0;
        for (int i = 1; i < 3; i++) if (Math.abs(d[i]) < Math.abs(d[least])) least = i;
        double[] helper = new double[3];
        helper[least] = 1;
        double[] p = cross(d, helper);
        double length = Math.sqrt(p[0] * p[0] + p[1] * p[1] + p[2] * p[2]);
        return new double[] {p[0] / length, p[1] / length, p[2] / length};
    }

    private static double[] cross(double[] a, double[] b) {
        return new double[] {a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]};
    }

    /** A polygon in a plane. */
    private record Outline(double[] u, double[] v, int count) {
        /** To {@code 0..width × 0..height}, side by side (Sutherland and Hodgman, 1974). */
        Outline clipped(double width, double height) {
            return half(true, 1, 0).half(true, -1, -width).half(false, 1, 0).half(false, -1, -height);
        }

        /** What of it has {@code sign · coordinate ≥ limit}. */
        private Outline half(boolean ofU, double sign, double limit) {
            double[] us = new double[2 * count + 2];
            double[] vs = new double[2 * count + 2];
            int n = 0;
            for (int i = 0; i < count; i++) {
                int j = (i + 1) % count;
                double here = sign * (ofU ? u[i] : v[i]) - limit;
                double there = sign * (ofU ? u[j] : v[j]) - limit;
                if (here >= 0) {
                    us[n] = u[i];
                    vs[n++] = v[i];
                }
                if ((here >= 0) != (there >= 0)) {
                    double share = here / (here - there);
                    us[n] = u[i] + share * (u[j] - u[i]);
                    vs[n++] = v[i] + share * (v[j] - v[i]);
                }
            }
            return new Outline(us, vs, n);
        }

        Optional<double[]> extents() {
            if (count < 3) return Optional.empty();
            double[] low = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY};
            double[] high = {Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY};
            for (int i = 0; i < count; i++) {
                low[0] = Math.min(low[0], u[i]);
                high[0] = Math.max(high[0], u[i]);
                low[1] = Math.min(low[1], v[i]);
                high[1] = Math.max(high[1], v[i]);
            }
            return Optional.of(
                    new double[] {(low[0] + high[0]) / 2, (low[1] + high[1]) / 2, high[0] - low[0], high[1] - low[1]});
        }
    }
}
