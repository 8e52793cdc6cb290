package org.marktwice.timber;

import org.joml.Vector3d;

/**
 * The distance between the convex hull of points and a box: the algorithm of E. G. Gilbert, D. W. Johnson and S. S.
 * Keerthi, "A fast procedure for computing the distance between complex objects in three-dimensional space", IEEE
 * Journal of Robotics and Automation 4(2), 1988, with the closest point of a simplex found region by region (C. Ericson,
 * "Real-Time Collision Detection", 2005, ch. 5.1).
 *
 * <p>It walks over the difference of the two bodies towards the origin. Each step gives the distance of a point of the
 * difference, which is an upper bound, and the distance of a plane before it, a lower bound; it stops when the two agree
 * to {@link #GAP}. One object serves one query.
 */
final class ConvexDistance {
    /** The two bounds agree when they are this close, in millimetres. */
    private static final double GAP = 1e-6;
    /** The bodies meet where they are no farther apart than this, in millimetres. */
    private static final double MEETS = 1e-9;
    /** A flat simplex holds no volume to be inside of: below this share of the volume its sides would span. */
    private static final double FLAT = 1e-12;

    private static final int MOST_STEPS = 128;

    private final Hull hull;
    private final Box box;

    /** The simplex: points of the difference, and where in the points and in which corner of the box they come from. */
    private final double[] wx = new double[4];

    private final double[] wy = new double[4];
    private final double[] wz = new double[4];
    private final int[] from = new int[4];
    private final int[] corner = new int[4];
    private final double[] weight = new double[4];
    private int count;

    /** The point of the simplex closest to the origin. */
    private double vx;

    private double vy;
    private double vz;

    /** The simplex' best face in a step: its corners' places in the simplex, their weights, and its closest point. */
    private final int[] bestAt = new int[4];

    private final double[] bestWeight = new double[4];
    private int bestCount;
    private double bestSquare;
    private double distance;

    ConvexDistance(Hull hull, Box box) {
        this.hull = hull;
        this.box = box;
        start();
    }

    /**
     * The distance in millimetres, 0 where the two meet; or, where it is sure to be at least {@code enough}, any figure
     * from there up.
     */
    double solve(double enough) {
        double square = vx * vx + vy * vy + vz * vz;
        for (int step = 0; step < MOST_STEPS && square > MEETS * MEETS; step++) {
            double length = Math.sqrt(square);
            int next = count;
            support(next, -vx, -vy, -vz);
            double lower = (vx * wx[next] + vy * wy[next] + vz * wz[next]) / length;
            if (length - lower <= GAP || isKnown(next)) break;
            if (lower >= enough) return lower;
            count++;
            closest();
            // No nearer: rounding has the last word, and the point before is as good as it gets.
            if (bestSquare >= square) {
                count--;
                break;
            }
            keepBest();
            square = vx * vx + vy * vy + vz * vz;
            if (bestCount == 4) square = 0;
        }
        distance = square > MEETS * MEETS ? Math.sqrt(square) : 0;
        return distance;
    }

    /** After {@link #solve}: the closest point of the hull. */
    Vector3d onHull() {
        Vector3d at = new Vector3d();
        for (int i = 0; i < count; i++) {
            int k = from[i];
            at.fma(weight[i], new Vector3d(hull.at(k), hull.at(k + 1), hull.at(k + 2)));
        }
        return at;
    }

    /** After {@link #solve}: the closest point of the box. */
    Vector3d onBox() {
        Vector3d hull = onHull();
        return distance == 0 ? hull : hull.sub(vx, vy, vz, new Vector3d());
    }

    private void start() {
        support(
                0,
                (box.min().x() + box.max().x()) / 2 - hull.middle(0),
                (box.min().y() + box.max().y()) / 2 - hull.middle(1),
                (box.min().z() + box.max().z()) / 2 - hull.middle(2));
        count = 1;
        weight[0] = 1;
        vx = wx[0];
        vy = wy[0];
        vz = wz[0];
    }

    /** Puts into place {@code at} the point of the difference that lies farthest in a direction. */
    private void support(int at, double dx, double dy, double dz) {
        int best = hull.farthest(dx, dy, dz);
        from[at] = best;
        corner[at] = (dx > 0 ? 0 : 1) | (dy > 0 ? 0 : 2) | (dz > 0 ? 0 : 4);
        wx[at] = hull.at(best) - (dx > 0 ? box.min().x() : box.max().x());
        wy[at] = hull.at(best + 1) - (dy > 0 ? box.min().y() : box.max().y());
        wz[at] = hull.at(best + 2) - (dz > 0 ? box.min().z() : box.max().z());
    }

    private boolean isKnown(int next) {
        for (int i = 0; i < next; i++) {
            if (from[i] == from[next] && corner[i] == corner[next]) return true;
        }
        return false;
    }

    /** Finds the face of the simplex closest to the origin. */
    private void closest() {
        bestSquare = Double.POSITIVE_INFINITY;
        switch (count) {
            case 2 -> segment(0, 1);
            case 3 -> triangle(0, 1, 2);
            default -> tetrahedron();
        }
    }

    /** Drops the corners of the simplex that the closest point does not rest on. */
    private void keepBest() {
        double x = 0;
        double y = 0;
        double z = 0;
        // The places rise, so nothing is overwritten before it is read.
        for (int i = 0; i < bestCount; i++) {
            int k = bestAt[i];
            wx[i] = wx[k];
            wy[i] = wy[k];
            wz[i] = wz[k];
            from[i] = from[k];
            corner[i] = corner[k];
            weight[i] = bestWeight[i];
            x += weight[i] * wx[i];
            y += weight[i] * wy[i];
            z += weight[i] * wz[i];
        }
        count = bestCount;
        vx = x;
        vy = y;
        vz = z;
    }

    private void offer(int a, double wa) {
        offer(wx[a] * wx[a] + wy[a] * wy[a] + wz[a] * wz[a], 1, a, wa, 0, 0, 0, 0);
    }

    private void offer(int a, double wa, int b, double wb) {
        double x = wa * wx[a] + wb * wx[b];
        double y = wa * wy[a] + wb * wy[b];
        double z = wa * wz[a] + wb * wz[b];
        offer(x * x + y * y + z * z, 2, a, wa, b, wb, 0, 0);
    }

    private void offer(double square, int size, int a, double wa, int b, double wb, int c, double wc) {
        if (square >= bestSquare) return;
        bestSquare = square;
        bestCount = size;
        bestAt[0] = a;
        bestAt[1] = b;
        bestAt[2] = c;
        bestWeight[0] = wa;
        bestWeight[1] = wb;
        bestWeight[2] = wc;
    }

    private void segment(int a, int b) {
        double ux = wx[b] - wx[a];
        double uy = wy[b] - wy[a];
        double uz = wz[b] - wz[a];
        double down = -(wx[a] * ux + wy[a] * uy + wz[a] * uz);
        double whole = ux * ux + uy * uy + uz * uz;
        if (down <= 0) offer(a, 1);
        else if (down >= whole) offer(b, 1);
        else offer(a, 1 - down / whole, b, down / whole);
    }

    private void triangle(int a, int b, int c) {
        double abx = wx[b] - wx[a];
        double aby = wy[b] - wy[a];
        double abz = wz[b] - wz[a];
        double acx = wx[c] - wx[a];
        double acy = wy[c] - wy[a];
        double acz = wz[c] - wz[a];
        double d1 = -(abx * wx[a] + aby * wy[a] + abz * wz[a]);
        double d2 = -(acx * wx[a] + acy * wy[a] + acz * wz[a]);
        double d3 = -(abx * wx[b] + aby * wy[b] + abz * wz[b]);
        double d4 = -(acx * wx[b] + acy * wy[b] + acz * wz[b]);
        double d5 = -(abx * wx[c] + aby * wy[c] + abz * wz[c]);
        double d6 = -(acx * wx[c] + acy * wy[c] + acz * wz[c]);
        double partC = d1 * d4 - d3 * d2;
        double partB = d5 * d2 - d1 * d6;
        double partA = d3 * d6 - d5 * d4;
        double whole = partA + partB + partC;
        if (partA > 0 && partB > 0 && partC > 0 && whole > 0) {
            double wa = partA / whole;
            double wb = partB / whole;
            double wc = partC / whole;
            double x = wa * wx[a] + wb * wx[b] + wc * wx[c];
            double y = wa * wy[a] + wb * wy[b] + wc * wy[c];
            double z = wa * wz[a] + wb * wz[b] + wc * wz[c];
            offer(x * x + y * y + z * z, 3, a, wa, b, wb, c, wc);
        } else {
            segment(a, b);
            segment(a, c);
            segment(b, c);
        }
    }

    private void tetrahedron() {
        double whole = volume(0, 1, 2, 3);
        double flat = FLAT * Math.pow(spread(), 3);
        // Shares of the volume that the origin spans with each face: all of one sign where it is inside.
        double a = originVolume(1, 3, 2);
        double b = originVolume(0, 2, 3);
        double c = originVolume(0, 3, 1);
        double d = originVolume(0, 1, 2);
        double sign = Math.signum(whole);
        boolean solid = Math.abs(whole) > flat;
        if (solid && a * sign >= 0 && b * sign >= 0 && c * sign >= 0 && d * sign >= 0) {
            double sum = a + b + c + d;
            offer(0, 4, 0, a / sum, 1, b / sum, 2, c / sum);
            bestAt[3] = 3;
            bestWeight[3] = d / sum;
            return;
        }
        if (!solid || a * sign < 0) triangle(1, 2, 3);
        if (!solid || b * sign < 0) triangle(0, 2, 3);
        if (!solid || c * sign < 0) triangle(0, 1, 3);
        if (!solid || d * sign < 0) triangle(0, 1, 2);
    }

    private double spread() {
        double most = 0;
        for (int i = 1; i < 4; i++) {
            most = Math.max(most, Math.abs(wx[i] - wx[0]) + Math.abs(wy[i] - wy[0]) + Math.abs(wz[i] - wz[0]));
        }
        return most;
    }

    /** Six times the signed volume over the triangle a, b, c with its top in d. */
    private double volume(int a, int b, int c, int d) {
        double ux = wx[b] - wx[a];
        double uy = wy[b] - wy[a];
        double uz = wz[b] - wz[a];
        double tx = wx[c] - wx[a];
        double ty = wy[c] - wy[a];
        double tz = wz[c] - wz[a];
        return (uy * tz - uz * ty) * (wx[d] - wx[a])
                + (uz * tx - ux * tz) * (wy[d] - wy[a])
                + (ux * ty - uy * tx) * (wz[d] - wz[a]);
    }

    /** Six times the signed volume over the triangle a, b, c with its top in the origin. */
    private double originVolume(int a, int b, int c) {
        double ux = wx[b] - wx[a];
        double uy = wy[b] - wy[a];
        double uz = wz[b] - wz[a];
        double tx = wx[c] - wx[a];
        double ty = wy[c] - wy[a];
        double tz = wz[c] - wz[a];
        return -((uy * tz - uz * ty) * wx[a] + (uz * tx - ux * tz) * wy[a] + (ux * ty - uy * tx) * wz[a]);
    }
}
