package org.marktwice.timber;

import java.util.List;
import java.util.Optional;

/**
 * The pith from points along one annual ring on the end grain: the middle of the circle that comes nearest to them. The
 * start is the circle of least algebraic distance (I. Kåsa, "A circle fitting procedure and its error analysis", 1976).
 */
public final class RingFit {
    /** A larger ring than this is too straight to tell where its middle lies, millimetres. */
    private static final double STRAIGHT = 2000;

    private RingFit() {}

    /** A point of the end grain in the board's (y, z). */
    public record Point(double y, double z) {}

    /** Empty where the points are fewer than three, or too nearly in a line. */
    public static Optional<Pith> pith(List<Point> points) {
        if (points.size() < 3) return Optional.empty();
        Optional<double[]> start = algebraic(points);
        if (start.isEmpty()) return Optional.empty();
        LeastSquares squares = new LeastSquares(p -> residuals(points, p), new double[] {1e-4, 1e-4, 1e-4});
        double[] circle = squares.from(start.get()).point();
        if (!(Math.abs(circle[2]) < STRAIGHT)) return Optional.empty();
        return Optional.of(new Pith(circle[0], circle[1]));
    }

    private static double[] residuals(List<Point> points, double[] circle) {
        return points.stream()
                .mapToDouble(p -> Math.hypot(p.y() - circle[0], p.z() - circle[1]) - circle[2])
                .toArray();
    }

    /** About the points' own middle: {@code 2a·y + 2b·z + c = y² + z²}. */
    private static Optional<double[]> algebraic(List<Point> points) {
        double my = points.stream().mapToDouble(Point::y).average().orElseThrow();
        double mz = points.stream().mapToDouble(Point::z).average().orElseThrow();
        double yy = 0;
        double yz = 0;
        double zz = 0;
        double ry = 0;
        double rz = 0;
        double square = 0;
        for (Point p : points) {
            double y = p.y() - my;
            double z = p.z() - mz;
            double r = y * y + z * z;
            yy += y * y;
            yz += y * z;
            zz += z * z;
            ry += r * y;
            rz += r * z;
            square += r;
        }
        double det = yy * zz - yz * yz;
        if (!(det > 1e-9 * square * square)) return Optional.empty();
        double a = (ry * zz - rz * yz) / (2 * det);
        double b = (rz * yy - ry * yz) / (2 * det);
        double radius = Math.sqrt(a * a + b * b + square / points.size());
        return radius < STRAIGHT ? Optional.of(new double[] {my + a, mz + b, radius}) : Optional.empty();
    }
}
