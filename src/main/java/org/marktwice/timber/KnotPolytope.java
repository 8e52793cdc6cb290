package org.marktwice.timber;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Set;
import org.joml.Vector3d;
import org.joml.Vector3dc;

/**
 * The corners of the polytope that stands for a knot's body inside its board.
 *
 * <p>A polytope is inscribed in the cone and the cylinder, so that its flanks run through generators of the true body.
 * Each of its facets is clipped by the board's six planes (Sutherland and Hodgman, "Reentrant polygon clipping", CACM
 * 17(1), 1974); what is left of them, with the corners of the board that lie in the knot, spans the clipped body.
 *
 * <p>The generators that lie farthest towards each of the six planes are always among those taken. A knot that only
 * grazes a surface therefore goes into it exactly as deep, and as far along it, as the true body does.
 */
final class KnotPolytope {
    /** Generators for each millimetre of radius: neighbours are 0.2 mm apart, which keeps every error under 0.05 mm. */
    private static final double GENERATORS_PER_MM = 32;

    private static final int LEAST_GENERATORS = 96;
    private static final int MOST_GENERATORS = 1280;
    private static final double SAME_ANGLE = 1e-9;

    private final Knot knot;
    private final Vector3dc origin;
    private final Vector3dc along;
    private final double from;
    private final Vector3d p = new Vector3d();
    private final Vector3d q = new Vector3d();
    private final double[] size;
    private final Corners corners = new Corners();

    private KnotPolytope(Knot knot, Vector3dc origin, double from, Size size) {
        this.knot = knot;
        this.origin = origin;
        this.from = from;
        this.along = knot.direction();
        this.size = new double[] {size.length(), size.width(), size.thickness()};
        Vector3d helper = new Vector3d().setComponent(along.minComponent(), 1);
        along.cross(helper, p).normalize();
        along.cross(p, q).normalize();
    }

    /**
     * The corners of the knot's body inside the board, as x, y, z after one another.
     *
     * @param origin where the branch starts, in the board's frame
     * @param from the distance along the branch from which on it is wanted; 0 for the whole of it
     */
    static double[] corners(Knot knot, Vector3dc origin, double from, Size size) {
        return new KnotPolytope(knot, origin, from, size).clipped();
    }

    private double[] clipped() {
        double end = Math.min(knot.endsAt(), farthest());
        if (!(end > from)) return new double[0];
        double[] angles = angles(knot.radius(end));
        double cone = Math.max(from, Math.min(knot.coneLength(), end));
        double[] first = ring(angles, from);
        double[] neck = cone > from ? ring(angles, cone) : first;
        double[] last = end > cone ? ring(angles, end) : neck;
        FacetClipper clipper = new FacetClipper(size, angles.length);
        for (int i = 0; i < angles.length; i++) {
            int j = (i + 1) % angles.length;
            if (neck != first) {
                clipper.start().add(first, i).add(neck, i).add(neck, j).add(first, j);
                corners.addAll(clipper.clip());
            }
            if (last != neck) {
                clipper.start().add(neck, i).add(last, i).add(last, j).add(neck, j);
                corners.addAll(clipper.clip());
            }
        }
        addEnd(clipper, last, angles.length);
        if (from > 0) addEnd(clipper, first, angles.length);
        addBoardCorners();
        return corners.toArray();
    }

    private void addEnd(FacetClipper clipper, double[] ring, int count) {
        clipper.start();
        for (int i = 0; i < count; i++) clipper.add(ring, i);
        corners.addAll(clipper.clip());
    }

    /** The distance along the branch of a plane across it that lies beyond the whole board. */
    private double farthest() {
        double far = 0;
        for (int axis = 0; axis < 3; axis++) {
            double low = -origin.get(axis) * along.get(axis);
            double high = (size[axis] - origin.get(axis)) * along.get(axis);
            far += Math.max(low, high);
        }
        return far > 0 ? far + 1 : far;
    }

    /** The angles of the generators about the branch, rising: evenly spread, and those nearest to each plane. */
    private double[] angles(double radius) {
        int even = (int) Math.ceil(Math.max(LEAST_GENERATORS, Math.min(radius * GENERATORS_PER_MM, MOST_GENERATORS)));
        double[] all = new double[even + 6];
        for (int i = 0; i < even; i++) all[i] = 2 * Math.PI * i / even;
        int count = even;
        for (int axis = 0; axis < 3; axis++) {
            if (Math.hypot(p.get(axis), q.get(axis)) < SAME_ANGLE) continue;
            double towards = Math.atan2(q.get(axis), p.get(axis));
            all[count++] = turn(towards);
            all[count++] = turn(towards + Math.PI);
        }
        Arrays.sort(all, 0, count);
        int kept = 1;
        for (int i = 1; i < count; i++) {
            if (all[i] - all[kept - 1] > SAME_ANGLE && 2 * Math.PI - all[i] > SAME_ANGLE) all[kept++] = all[i];
        }
        return Arrays.copyOf(all, kept);
    }

    private static double turn(double angle) {
        return angle < 0 ? angle + 2 * Math.PI : angle;
    }

    private double[] ring(double[] angles, double s) {
        double r = knot.radius(s);
        double[] points = new double[3 * angles.length];
        for (int i = 0; i < angles.length; i++) {
            double c = r * Math.cos(angles[i]);
            double k = r * Math.sin(angles[i]);
            for (int axis = 0; axis < 3; axis++) {
                points[3 * i + axis] = origin.get(axis) + s * along.get(axis) + c * p.get(axis) + k * q.get(axis);
            }
        }
        return points;
    }

    private void addBoardCorners() {
        for (int corner = 0; corner < 8; corner++) {
            Vector3d at = new Vector3d(
                    (corner & 1) == 0 ? 0 : size[0], (corner & 2) == 0 ? 0 : size[1], (corner & 4) == 0 ? 0 : size[2]);
            if (holds(knot, origin, along, from, at)) corners.add(at.x, at.y, at.z);
        }
    }

    /** Whether a point lies in the true, unclipped body; computed without the polytope. */
    static boolean holds(Knot knot, Vector3dc origin, Vector3dc along, double from, Vector3dc point) {
        Vector3d away = point.sub(origin, new Vector3d());
        double s = away.dot(along);
        if (s < from || s > knot.endsAt()) return false;
        double r = knot.radius(s);
        return away.lengthSquared() - s * s <= r * r;
    }

    /** Corners in the order they came, each once: neighbouring facets share theirs. */
    private static final class Corners {
        /** Corners closer than this, in millimetres, are one. */
        private static final double GRID = 1e-6;

        private record Cell(long x, long y, long z) {}

        private final Set<Cell> seen = new HashSet<>();
        private double[] values = new double[3 * 256];
        private int count;

        void addAll(FacetClipper.Polygon polygon) {
            for (int i = 0; i < polygon.count; i++) {
                add(polygon.at[3 * i], polygon.at[3 * i + 1], polygon.at[3 * i + 2]);
            }
        }

        void add(double x, double y, double z) {
            if (!seen.add(new Cell(Math.round(x / GRID), Math.round(y / GRID), Math.round(z / GRID)))) return;
            if (values.length < count + 3) values = Arrays.copyOf(values, 2 * values.length);
            values[count++] = x;
            values[count++] = y;
            values[count++] = z;
        }

        double[] toArray() {
            return Arrays.copyOf(values, count);
        }
    }
}
