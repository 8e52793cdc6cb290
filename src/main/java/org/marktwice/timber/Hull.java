package org.marktwice.timber;

/**
 * The convex hull of points, asked again and again which of them lies farthest in a direction. The points are parted into
 * bundles of near neighbours, each with the box around it, so that most are passed over without being looked at.
 */
final class Hull {
    /** As many points stay together. */
    private static final int BUNDLE = 12;
    /** A box counts for so much more than it is, as a share of its reach, that rounding never hides the farthest point. */
    private static final double SLACK = 1e-12;

    private final double[] points;
    /** Where each bundle begins in the points; the last entry is their end. */
    private final int[] begins;
    /** Of each bundle's box the middle and half the sizes: x, y, z, then their halves. */
    private final double[] boxes;

    private final double[] middle = new double[3];

    /** @param corners x, y, z of the points after one another, at least one point; the array is not kept */
    Hull(double[] corners) {
        points = corners.clone();
        int count = points.length / 3;
        int[] cuts = new int[count + 2];
        int bundles = part(0, count, cuts, 0);
        begins = new int[bundles + 1];
        for (int i = 0; i < bundles; i++) begins[i] = 3 * cuts[i];
        begins[bundles] = points.length;
        boxes = new double[6 * bundles];
        for (int i = 0; i < bundles; i++) around(i);
        for (int k = 0; k < points.length; k++) middle[k % 3] += points[k] / count;
    }

    /** The mean of the points, on one axis. */
    double middle(int axis) {
        return middle[axis];
    }

    /** A coordinate of a point. @param k as {@link #farthest} gives it, and one or two more for y and z */
    double at(int k) {
        return points[k];
    }

    /** Where the x of the point lies that is farthest in a direction of any length. */
    int farthest(double dx, double dy, double dz) {
        double ax = Math.abs(dx);
        double ay = Math.abs(dy);
        double az = Math.abs(dz);
        int likely = 0;
        double highest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < begins.length - 1; i++) {
            double reach = reach(i, dx, dy, dz, ax, ay, az);
            if (reach > highest) {
                highest = reach;
                likely = i;
            }
        }
        int best = farthestOf(likely, begins[likely], Double.NEGATIVE_INFINITY, dx, dy, dz);
        double most = along(best, dx, dy, dz);
        for (int i = 0; i < begins.length - 1; i++) {
            if (i == likely || reach(i, dx, dy, dz, ax, ay, az) <= most) continue;
            best = farthestOf(i, best, most, dx, dy, dz);
            most = along(best, dx, dy, dz);
        }
        return best;
    }

    /** No point of a bundle lies farther than this. */
    private double reach(int bundle, double dx, double dy, double dz, double ax, double ay, double az) {
        int b = 6 * bundle;
        double to = dx * boxes[b] + dy * boxes[b + 1] + dz * boxes[b + 2];
        double more = ax * boxes[b + 3] + ay * boxes[b + 4] + az * boxes[b + 5];
        return to + more + SLACK * (Math.abs(to) + more);
    }

    private int farthestOf(int bundle, int known, double least, double dx, double dy, double dz) {
        int best = known;
        double most = least;
        for (int k = begins[bundle]; k < begins[bundle + 1]; k += 3) {
            double along = along(k, dx, dy, dz);
            if (along > most) {
                most = along;
                best = k;
            }
        }
        return best;
    }

    private double along(int k, double dx, double dy, double dz) {
        return dx * points[k] + dy * points[k + 1] + dz * points[k + 2];
    }

    /** Parts the points from one to another into bundles; their beginnings are noted from {@code at} on. @return how far */
    private int part(int from, int to, int[] cuts, int at) {
        if (to - from <= BUNDLE) {
            cuts[at] = from;
            return at + 1;
        }
        int axis = widest(from, to);
        int half = (from + to) >>> 1;
        select(from, to - 1, half, axis);
        return part(half, to, cuts, part(from, half, cuts, at));
    }

    private int widest(int from, int to) {
        int widest = 0;
        double most = -1;
        for (int axis = 0; axis < 3; axis++) {
            double low = Double.POSITIVE_INFINITY;
            double high = Double.NEGATIVE_INFINITY;
            for (int i = from; i < to; i++) {
                low = Math.min(low, points[3 * i + axis]);
                high = Math.max(high, points[3 * i + axis]);
            }
            if (high - low > most) {
                most = high - low;
                widest = axis;
            }
        }
        return widest;
    }

    /** Moves the points about so that none before {@code half} lies beyond it on the axis (C. A. R. Hoare's FIND, 1961). */
    private void select(int first, int last, int half, int axis) {
        int low = first;
        int high = last;
        while (low < high) {
            double pivot = points[3 * half + axis];
            int i = low;
            int j = high;
            while (i <= j) {
                while (points[3 * i + axis] < pivot) i++;
                while (points[3 * j + axis] > pivot) j--;
                if (i <= j) swap(i++, j--);
            }
            if (j < half) low = i;
            if (half < i) high = j;
        }
    }

    private void swap(int i, int j) {
        for (int axis = 0; axis < 3; axis++) {
            double kept = points[3 * i + axis];
            points[3 * i + axis] = points[3 * j + axis];
            points[3 * j + axis] = kept;
        }
    }

    private void around(int bundle) {
        for (int axis = 0; axis < 3; axis++) {
            double low = Double.POSITIVE_INFINITY;
            double high = Double.NEGATIVE_INFINITY;
            for (int k = begins[bundle]; k < begins[bundle + 1]; k += 3) {
                low = Math.min(low, points[k + axis]);
                high = Math.max(high, points[k + axis]);
            }
            boxes[6 * bundle + axis] = (low + high) / 2;
            boxes[6 * bundle + 3 + axis] = (high - low) / 2;
        }
    }
}
