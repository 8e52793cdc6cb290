package org.marktwice.timber;

/** Clips convex polygons in space by the six planes of the box {@code 0..size}; its two buffers are used again and again. */
final class FacetClipper {
    /** A polygon's corners as x, y, z after one another. */
    static final class Polygon {
        final double[] at;
        int count;

        private Polygon(int most) {
            at = new double[3 * most];
        }

        private void add(double x, double y, double z) {
            at[3 * count] = x;
            at[3 * count + 1] = y;
            at[3 * count + 2] = z;
            count++;
        }
    }

    private final double[] size;
    private Polygon polygon;
    private Polygon spare;

    /** @param most the most corners that a polygon will be given */
    FacetClipper(double[] size, int most) {
        this.size = size;
        // Each of the six planes adds at most one corner to a convex polygon; rounding may cost another.
        polygon = new Polygon(Math.max(most, 4) + 12);
        spare = new Polygon(Math.max(most, 4) + 12);
    }

    FacetClipper start() {
        polygon.count = 0;
        return this;
    }

    FacetClipper add(double x, double y, double z) {
        polygon.add(x, y, z);
        return this;
    }

    FacetClipper add(double[] points, int index) {
        return add(points[3 * index], points[3 * index + 1], points[3 * index + 2]);
    }

    /** What of the polygon lies in the box; empty where nothing does. Valid until the next start. */
    Polygon clip() {
        for (int axis = 0; axis < 3 && polygon.count > 0; axis++) {
            clip(axis, 0, 1);
            clip(axis, size[axis], -1);
        }
        return polygon;
    }

    /** Keeps the part where {@code sign · (coordinate − at) ≥ 0}. */
    private void clip(int axis, double at, int sign) {
        spare.count = 0;
        double[] from = polygon.at;
        for (int i = 0; i < polygon.count; i++) {
            int here = 3 * i;
            int next = 3 * (i + 1 == polygon.count ? 0 : i + 1);
            double inHere = sign * (from[here + axis] - at);
            double inNext = sign * (from[next + axis] - at);
            if (inHere >= 0) spare.add(from[here], from[here + 1], from[here + 2]);
            if ((inHere > 0 && inNext < 0) || (inHere < 0 && inNext > 0)) {
                cross(from, here, next, inHere / (inHere - inNext));
                // Exactly on the plane, so that a trace finds its corners by their coordinate.
                spare.at[3 * (spare.count - 1) + axis] = at;
            }
        }
        Polygon swap = polygon;
        polygon = spare;
        spare = swap;
    }

    private void cross(double[] from, int here, int next, double t) {
        spare.add(
                from[here] + t * (from[next] - from[here]),
                from[here + 1] + t * (from[next + 1] - from[here + 1]),
                from[here + 2] + t * (from[next + 2] - from[here + 2]));
    }
}
