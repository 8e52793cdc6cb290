package org.marktwice.timber;

/**
 * A knot inside its board, judged roughly but in strict arithmetic, so that a choice that rests on it comes out the same on
 * every machine; {@link KnotBody} is exact, but not to the last bit. The branch is taken as balls strung along it, which
 * hold it wholly.
 */
public final class KnotReach {
    private static final double DEGREE = Math.PI / 180;
    /** Between two balls, millimetres. */
    private static final double STEP = 1;
    /** So much of a knot must lie this deep inside the board, in millimetres, to count as a knot of the board. */
    private static final double DEEP = 0.4;

    private static final double MOST_OF_IT = 0.8;

    private final Size size;
    private final double maxRadius;
    private final double start;
    private final double endsAt;
    private final double slope;
    private final double[] origin;
    private final double[] along;
    private final double from;
    private final double to;

    private KnotReach(Knot knot, Pith pith, Size size, double start) {
        this.size = size;
        maxRadius = knot.maxRadius();
        this.start = start;
        endsAt = knot.endsAt();
        slope = StrictMath.tan(knot.halfAngle() * DEGREE);
        origin = new double[] {knot.x(), pith.y(), pith.z()};
        double a = knot.azimuth() * DEGREE;
        double l = knot.lean() * DEGREE;
        along = new double[] {
            StrictMath.cos(l), StrictMath.sin(l) * StrictMath.cos(a), StrictMath.sin(l) * StrictMath.sin(a)
        };
        double low = start;
        double high = knot.endsAt();
        // Where the axis runs through the board's box grown by the radius: beyond, no part of the branch is inside.
        for (int axis = 0; axis < 3; axis++) {
            double near = -maxRadius - origin[axis];
            double far = size.along(axis) + maxRadius - origin[axis];
            if (StrictMath.abs(along[axis]) < 1e-9) {
                if (near > 0 || far < 0) high = -1;
                continue;
            }
            double one = near / along[axis];
            double other = far / along[axis];
            low = Math.max(low, Math.min(one, other));
            high = Math.min(high, Math.max(one, other));
        }
        from = low;
        to = high;
    }

    public static KnotReach of(Knot knot, Pith pith, Size size) {
        return new KnotReach(knot, pith, size, 0);
    }

    /** What of the knot is dead, and may fall out. */
    public static KnotReach ofDeadPart(Knot knot, Pith pith, Size size) {
        return new KnotReach(knot, pith, size, Math.max(0, knot.deadFrom()));
    }

    private double radius(double s) {
        return Math.min(s * slope, maxRadius);
    }

    private double at(double s, int axis) {
        return origin[axis] + s * along[axis];
    }

    /** How many balls there are, at even distances of at most a step; none where the branch misses the board. */
    private int balls() {
        return to < from ? 0 : (int) StrictMath.ceil((to - from) / STEP) + 1;
    }

    private double place(int ball, int balls) {
        return balls == 1 ? from : from + (to - from) * ball / (balls - 1);
    }

    /**
     * No more than the clearance of the knot from the box, millimetres, and hardly less: a bound from below. Infinite where
     * the branch misses the board.
     */
    public double gap(Box cut) {
        double least = Double.POSITIVE_INFINITY;
        int balls = balls();
        for (int i = 0; i < balls; i++) {
            double s = place(i, balls);
            least = Math.min(least, away(s, cut) - radius(s));
        }
        // Between two balls the branch is no more than half a step away from one, and hardly thicker.
        return Math.max(0, least - STEP / 2 * (1 + slope));
    }

    /**
     * No less than the clearance of the knot from a box in the board, millimetres, and hardly more: a bound from above.
     * Infinite where no ball that the branch holds wholly has its middle in the board.
     */
    public double reaches(Box cut) {
        double least = Double.POSITIVE_INFINITY;
        int balls = balls();
        for (int i = 0; i < balls; i++) {
            double s = place(i, balls);
            // a smaller ball lies in the cone wholly; one at the branch's beginning or end would stand out of it
            double r = radius(s) / StrictMath.sqrt(1 + slope * slope);
            if (s - r < start || s + r > endsAt || !inside(s)) continue;
            least = Math.min(least, away(s, cut) - r);
        }
        return Math.max(0, least);
    }

    /** How far the branch's middle is from a box there, millimetres. */
    private double away(double s, Box cut) {
        double square = 0;
        for (int axis = 0; axis < 3; axis++) {
            double p = at(s, axis);
            double off = Math.max(0, Math.max(cut.min(axis) - p, p - cut.max(axis)));
            square += off * off;
        }
        return StrictMath.sqrt(square);
    }

    private boolean inside(double s) {
        for (int axis = 0; axis < 3; axis++) {
            double p = at(s, axis);
            if (p < 0 || p > size.along(axis)) return false;
        }
        return true;
    }

    /** Whether the knot shows in the board for certain: some of its wood lies a little below the board's surfaces. */
    boolean isInside() {
        int balls = balls();
        double[][] across = across();
        for (int i = 0; i < balls; i++) {
            double s = place(i, balls);
            if (inside(s, 0, across[0])) return true;
            double r = MOST_OF_IT * radius(s);
            for (double[] direction : across) if (inside(s, r, direction) || inside(s, -r, direction)) return true;
        }
        return false;
    }

    private boolean inside(double s, double off, double[] direction) {
        for (int axis = 0; axis < 3; axis++) {
            double p = at(s, axis) + off * direction[axis];
            if (p < DEEP || p > size.along(axis) - DEEP) return false;
        }
        return true;
    }

    /** Four directions square to the branch, an eighth of a turn apart. */
    private double[][] across() {
        double[] helper = StrictMath.abs(along[0]) < 0.7 ? new double[] {1, 0, 0} : new double[] {0, 1, 0};
        double[] one = unit(cross(along, helper));
        double[] other = cross(along, one);
        double[][] all = {one, other, new double[3], new double[3]};
        double half = StrictMath.sqrt(0.5);
        for (int axis = 0; axis < 3; axis++) {
            all[2][axis] = half * (one[axis] + other[axis]);
            all[3][axis] = half * (one[axis] - other[axis]);
        }
        return all;
    }

    private static double[] cross(double[] a, double[] b) {
        return new double[] {a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]};
    }

    private static double[] unit(double[] v) {
        double length = StrictMath.sqrt(v[0] * v[0] + v[1] * v[1] + v[2] * v[2]);
        return new double[] {v[0] / length, v[1] / length, v[2] / length};
    }
}
