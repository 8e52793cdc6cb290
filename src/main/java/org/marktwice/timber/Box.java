package org.marktwice.timber;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.joml.Vector3d;
import org.joml.Vector3dc;

/**
 * A box with sides parallel to the axes of its frame (a board's or the job's), in millimetres. Never empty: each side is
 * at least 0 long, and a side of 0 is a flat box.
 */
public record Box(Vector3dc min, Vector3dc max) {
    /** @throws IllegalArgumentException where a least coordinate is above the greatest, or not a finite number */
    public Box {
        if (!(min.x() <= max.x() && min.y() <= max.y() && min.z() <= max.z()) || !min.isFinite() || !max.isFinite()) {
            throw new IllegalArgumentException("not a box: " + min + " to " + max);
        }
        min = new Vector3d(min);
        max = new Vector3d(max);
    }

    public static Box of(double x0, double y0, double z0, double x1, double y1, double z1) {
        return new Box(new Vector3d(x0, y0, z0), new Vector3d(x1, y1, z1));
    }

    /** The box between two corners, in whichever order these come. */
    public static Box between(Vector3dc a, Vector3dc b) {
        return new Box(a.min(b, new Vector3d()), a.max(b, new Vector3d()));
    }

    public double min(int axis) {
        return min.get(axis);
    }

    public double max(int axis) {
        return max.get(axis);
    }

    public double extent(int axis) {
        return max.get(axis) - min.get(axis);
    }

    public double volume() {
        return extent(0) * extent(1) * extent(2);
    }

    public Vector3dc centre() {
        return min.add(max, new Vector3d()).mul(0.5);
    }

    /** The common part, empty where there is none or it is thinner than {@code tolerance} along any axis. */
    public Optional<Box> overlap(Box other, double tolerance) {
        Vector3d low = min.max(other.min, new Vector3d());
        Vector3d high = max.min(other.max, new Vector3d());
        for (int axis = 0; axis < 3; axis++) {
            if (high.get(axis) - low.get(axis) <= tolerance) return Optional.empty();
        }
        return Optional.of(new Box(low, high));
    }

    /** This box with one side moved: the coordinate range along {@code axis} becomes {@code from..to}. */
    public Box with(int axis, double from, double to) {
        return new Box(new Vector3d(min).setComponent(axis, from), new Vector3d(max).setComponent(axis, to));
    }

    /**
     * What is left of this box where another takes its share out of it: up to six boxes that touch and don't overlap;
     * nothing where all of it goes. What is thinner than {@code tolerance} is not left standing.
     */
    public List<Box> less(Box gone, double tolerance) {
        if (overlap(gone, tolerance).isEmpty()) return List.of(this);
        List<Box> left = new ArrayList<>();
        Box rest = this;
        for (int axis = 0; axis < 3; axis++) {
            double low = Math.max(rest.min(axis), gone.min(axis));
            double high = Math.min(rest.max(axis), gone.max(axis));
            if (low - rest.min(axis) > tolerance) left.add(rest.with(axis, rest.min(axis), low));
            if (rest.max(axis) - high > tolerance) left.add(rest.with(axis, high, rest.max(axis)));
            rest = rest.with(axis, low, high);
        }
        return List.copyOf(left);
    }

    public Box moved(double dx, double dy, double dz) {
        return new Box(new Vector3d(min).add(dx, dy, dz), new Vector3d(max).add(dx, dy, dz));
    }

    public boolean contains(Vector3dc point, double tolerance) {
        for (int axis = 0; axis < 3; axis++) {
            double at = point.get(axis);
            if (at < min.get(axis) - tolerance || at > max.get(axis) + tolerance) return false;
        }
        return true;
    }
}
