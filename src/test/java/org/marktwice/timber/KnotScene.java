package org.marktwice.timber;

import java.util.Random;
import org.joml.Vector3d;

/**
 * A knot in a board with a cut, drawn from a seed, and the knot's body written down a second time: whether a point lies
 * in it is all that the samples of the tests rely on.
 */
record KnotScene(Size size, Pith pith, Knot knot, Box cut) {
    static KnotScene of(Random random) {
        Size size = new Size(between(random, 100, 400), between(random, 30, 200), between(random, 10, 60));
        boolean inside = random.nextInt(6) == 0;
        double z = inside ? between(random, 0, size.thickness()) : -between(random, 0.5, 80);
        if (random.nextBoolean()) z = size.thickness() - z;
        Pith pith = new Pith(between(random, -20, size.width() + 20), z);
        // Towards a place in the board, so that most knots hit it: steep, leaning and lying ones.
        double toY = between(random, 0, size.width()) - pith.y();
        double toZ = between(random, 0, size.thickness()) - pith.z();
        double lean = random.nextInt(4) == 0 ? between(random, 1, 179) : between(random, 45, 135);
        boolean steep = random.nextInt(4) == 0;
        Knot knot = new Knot(
                "k",
                between(random, 0.1, 0.9) * size.length(),
                Math.toDegrees(Math.atan2(toZ, toY)),
                lean,
                steep ? between(random, 20, 85) : between(random, 2, 15),
                between(random, 1, 20),
                60,
                random.nextInt(3) == 0 ? between(random, 2, 120) : Double.POSITIVE_INFINITY);
        return new KnotScene(size, pith, knot, cut(random, size));
    }

    private static Box cut(Random random, Size size) {
        Vector3d one = new Vector3d();
        Vector3d other = new Vector3d();
        for (int axis = 0; axis < 3; axis++) {
            double extent = size.along(axis);
            one.setComponent(axis, between(random, -0.1, 1.1) * extent);
            other.setComponent(axis, random.nextInt(3) == 0 ? 0 : between(random, 0, 1) * extent);
        }
        return Box.between(one, other);
    }

    static double between(Random random, double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    KnotBody body() {
        return Boards.body(size, pith, knot);
    }

    boolean holds(double x, double y, double z) {
        return x >= 0
                && y >= 0
                && z >= 0
                && x <= size.length()
                && y <= size.width()
                && z <= size.thickness()
                && inBranch(x - knot.x(), y - pith.y(), z - pith.z());
    }

    private boolean inBranch(double x, double y, double z) {
        double azimuth = Math.toRadians(knot.azimuth());
        double lean = Math.toRadians(knot.lean());
        double dx = Math.cos(lean);
        double dy = Math.sin(lean) * Math.cos(azimuth);
        double dz = Math.sin(lean) * Math.sin(azimuth);
        double s = x * dx + y * dy + z * dz;
        double aside = new Vector3d(x - s * dx, y - s * dy, z - s * dz).length();
        return s >= 0
                && s <= knot.endsAt()
                && aside <= knot.maxRadius()
                && aside <= s * Math.tan(Math.toRadians(knot.halfAngle()));
    }

    /** A point of the branch, whether in the board or not. */
    Vector3d inBranch(Random random) {
        double s = between(random, 0, Math.min(knot.endsAt(), 500));
        double r = Math.min(knot.maxRadius(), s * Math.tan(Math.toRadians(knot.halfAngle())));
        Vector3d along = new Vector3d(knot.direction());
        Vector3d aside = new Vector3d(random.nextGaussian(), random.nextGaussian(), random.nextGaussian());
        aside.fma(-aside.dot(along), along).normalize(r * Math.sqrt(random.nextDouble()));
        return new Vector3d(knot.x(), pith.y(), pith.z()).fma(s, along).add(aside);
    }

    /** The point moved towards the axis into the branch, if it isn't in it, and then straight into the board; it may have left the branch again. */
    Vector3d drawnIn(Vector3d point) {
        Vector3d origin = new Vector3d(knot.x(), pith.y(), pith.z());
        Vector3d along = new Vector3d(knot.direction());
        Vector3d aside = point.sub(origin, new Vector3d());
        double s = Math.max(0, Math.min(aside.dot(along), knot.endsAt()));
        aside.fma(-aside.dot(along), along);
        double r = Math.min(knot.maxRadius(), s * Math.tan(Math.toRadians(knot.halfAngle())));
        if (aside.length() > r) aside.normalize(r * (1 - 1e-12));
        return origin.fma(s, along)
                .add(aside)
                .max(new Vector3d())
                .min(new Vector3d(size.length(), size.width(), size.thickness()));
    }

    static double distance(Box box, Vector3d point) {
        Vector3d nearest = point.max(box.min(), new Vector3d()).min(box.max());
        return nearest.distance(point);
    }
}
