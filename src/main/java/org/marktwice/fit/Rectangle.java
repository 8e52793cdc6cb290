package org.marktwice.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.joml.Vector3d;
import org.marktwice.drawing.Drawing;
import org.marktwice.drawing.JobAxis;
import org.marktwice.drawing.Joint;
import org.marktwice.drawing.Part;
import org.marktwice.timber.Box;

/**
 * A rectangle of the job, from the outer corners of two parallel parts that a third joins, with its two diagonals as they
 * come out, millimetres.
 *
 * @param one from the low end of the first part to the high end of the second
 * @param other the other diagonal
 */
public record Rectangle(String first, String second, JobAxis along, JobAxis across, double one, double other) {
    /** By how much the diagonals differ. */
    public double difference() {
        return Math.abs(one - other);
    }

    /** Whether the drawing has any. */
    public static boolean has(Drawing drawing) {
        List<Part> parts = drawing.parts();
        return parts.stream().anyMatch(a -> parts.stream().anyMatch(b -> a != b && isRectangle(drawing, a, b)));
    }

    static List<Rectangle> all(DryFit fit) {
        return all(fit.drawing(), part -> fit.box(part.id()).orElseThrow());
    }

    /** As drawn: the two diagonals are the same. */
    public static List<Rectangle> drawn(Drawing drawing) {
        return all(drawing, Part::box);
    }

    private static List<Rectangle> all(Drawing drawing, Function<Part, Box> box) {
        List<Rectangle> all = new ArrayList<>();
        List<Box> known = new ArrayList<>();
        List<Part> parts = drawing.parts();
        for (int i = 0; i < parts.size(); i++) {
            for (int j = i + 1; j < parts.size(); j++) {
                Part first = parts.get(i);
                Part second = parts.get(j);
                if (!isRectangle(drawing, first, second)) continue;
                Box outline = outline(first, second);
                if (known.stream().anyMatch(b -> same(b, outline))) continue;
                known.add(outline);
                all.add(of(box, first, second));
            }
        }
        return all;
    }

    /** Whether two parts of a length face each other and a third part joins them. */
    private static boolean isRectangle(Drawing drawing, Part first, Part second) {
        if (first.length() != second.length()) return false;
        int along = first.length().ordinal();
        boolean level = Math.abs(first.box().min(along) - second.box().min(along)) <= Drawing.TOLERANCE
                && Math.abs(first.box().max(along) - second.box().max(along)) <= Drawing.TOLERANCE;
        return level
                && apartAlong(first, second) >= 0
                && drawing.parts().stream().anyMatch(p -> joined(drawing, p, first) && joined(drawing, p, second));
    }

    private static boolean joined(Drawing drawing, Part a, Part b) {
        return drawing.joints().stream().anyMatch(j -> joins(j, a, b) || joins(j, b, a));
    }

    private static boolean joins(Joint joint, Part a, Part b) {
        return joint.in().equals(a.id()) && joint.takes().equals(b.id());
    }

    /** The only axis along which they lie apart; −1 where there is none or more than one. */
    private static int apartAlong(Part first, Part second) {
        int found = -1;
        for (int axis = 0; axis < 3; axis++) {
            boolean apart = first.box().max(axis) <= second.box().min(axis) + Drawing.TOLERANCE
                    || second.box().max(axis) <= first.box().min(axis) + Drawing.TOLERANCE;
            if (apart && found >= 0) return -1;
            if (apart) found = axis;
        }
        return found;
    }

    private static Box outline(Part first, Part second) {
        return new Box(
                first.box().min().min(second.box().min(), new Vector3d()),
                first.box().max().max(second.box().max(), new Vector3d()));
    }

    private static boolean same(Box a, Box b) {
        return a.min().distance(b.min()) <= Drawing.TOLERANCE && a.max().distance(b.max()) <= Drawing.TOLERANCE;
    }

    private static Rectangle of(Function<Part, Box> box, Part first, Part second) {
        int along = first.length().ordinal();
        int across = apartAlong(first, second);
        Box one = box.apply(first);
        Box two = box.apply(second);
        boolean firstIsLow = first.box().min(across) < second.box().min(across);
        Box low = firstIsLow ? one : two;
        Box high = firstIsLow ? two : one;
        double wide = high.max(across) - low.min(across);
        return new Rectangle(
                firstIsLow ? first.id() : second.id(),
                firstIsLow ? second.id() : first.id(),
                first.length(),
                JobAxis.values()[across],
                Math.hypot(wide, high.max(along) - low.min(along)),
                Math.hypot(wide, low.max(along) - high.min(along)));
    }
}
