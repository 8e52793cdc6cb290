package org.marktwice.drawing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.joml.Vector3d;
import org.marktwice.timber.Box;
import org.marktwice.timber.Size;

/** Finds opposite parts: alike, and mirrored with all their cuts in a mid-plane of the job. */
final class Pairs {
    private Pairs() {}

    static List<Pair> of(Drawing drawing) {
        List<Pair> pairs = new ArrayList<>();
        List<Part> parts = drawing.parts();
        for (int i = 0; i < parts.size(); i++) {
            for (int j = i + 1; j < parts.size(); j++) {
                Part one = parts.get(i);
                Part other = parts.get(j);
                mirroredAlong(drawing, one, other).ifPresent(axis -> pairs.add(new Pair(one, other, axis)));
            }
        }
        return List.copyOf(pairs);
    }

    private static Optional<JobAxis> mirroredAlong(Drawing drawing, Part one, Part other) {
        if (!alike(one, other)) return Optional.empty();
        // opposite parts face each other, so their thickness is tried first
        return Arrays.asList(one.thickness(), one.width(), one.length()).stream()
                .filter(axis -> mirrored(drawing, one, other, axis))
                .findFirst();
    }

    private static boolean alike(Part one, Part other) {
        return one.stuff() == other.stuff()
                && one.length() == other.length()
                && one.width() == other.width()
                && same(one.size(), other.size());
    }

    private static boolean same(Size one, Size other) {
        for (int axis = 0; axis < 3; axis++) {
            if (Math.abs(one.along(axis) - other.along(axis)) > Drawing.TOLERANCE) return false;
        }
        return true;
    }

    private static boolean mirrored(Drawing drawing, Part one, Part other, JobAxis axis) {
        double middle = drawing.box().centre().get(axis.ordinal());
        if (!same(mirror(one.box(), axis, middle), other.box())) return false;
        List<Box> wanted = new ArrayList<>();
        for (Box box : boxes(drawing, one)) wanted.add(mirror(box, axis, middle));
        List<Box> found = boxes(drawing, other);
        return wanted.size() == found.size()
                && wanted.stream().allMatch(w -> found.stream().anyMatch(f -> same(w, f)))
                && found.stream().allMatch(f -> wanted.stream().anyMatch(w -> same(w, f)));
    }

    private static List<Box> boxes(Drawing drawing, Part part) {
        return drawing.cuts(part).stream().flatMap(c -> c.boxes().stream()).toList();
    }

    private static Box mirror(Box box, JobAxis along, double middle) {
        int axis = along.ordinal();
        return box.with(axis, 2 * middle - box.max(axis), 2 * middle - box.min(axis));
    }

    private static boolean same(Box one, Box other) {
        return one.min().distance(new Vector3d(other.min())) <= 2 * Drawing.TOLERANCE
                && one.max().distance(new Vector3d(other.max())) <= 2 * Drawing.TOLERANCE;
    }
}
