package org.marktwice.classroom;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.marktwice.drawing.Drawing;
import org.marktwice.drawing.JobAxis;
import org.marktwice.drawing.Joint;
import org.marktwice.drawing.Part;
import org.marktwice.fit.Rectangle;

/**
 * Something that is measured on a finished job, in millimetres.
 *
 * @param id the column in files
 * @param title what to measure
 * @param drawn what the drawing says; 0 for a gap
 */
public record Measure(String id, Kind kind, String title, double drawn) {

    public enum Kind {
        /** An overall size. */
        SIZE,
        /** How far a part lies from the end of those that it joins. */
        PLACE,
        /** One of a rectangle's two diagonals; what counts is how they differ. */
        DIAGONAL,
        /** A joint's widest gap that shows. */
        GAP
    }

    /** All that a drawing gives to measure: sizes, places, diagonals, gaps. */
    public static List<Measure> of(Drawing drawing) {
        List<Measure> all = new ArrayList<>();
        for (JobAxis axis : JobAxis.values()) {
            all.add(new Measure(
                    axis.id(),
                    Kind.SIZE,
                    "Overall " + axis.id(),
                    drawing.overall().along(axis)));
        }
        List<Rectangle> rectangles = Rectangle.drawn(drawing);
        Set<String> placed = new TreeSet<>();
        for (Rectangle rectangle : rectangles) {
            for (Part part : drawing.parts()) {
                if (placed.contains(part.id())) continue;
                place(drawing, rectangle, part).ifPresent(m -> {
                    placed.add(part.id());
                    all.add(m);
                });
            }
        }
        for (int i = 0; i < rectangles.size(); i++) diagonals(drawing, i + 1, rectangles.get(i), all);
        for (Joint joint : drawing.joints()) {
            String parts = name(drawing, joint.in()) + " and " + name(drawing, joint.takes());
            all.add(new Measure("gap-" + joint.id(), Kind.GAP, "Gap at the " + joint.noun() + " of " + parts, 0));
        }
        return all;
    }

    private static String name(Drawing drawing, String part) {
        return drawing.part(part).orElseThrow().name();
    }

    private static void diagonals(Drawing drawing, int number, Rectangle rectangle, List<Measure> all) {
        String of = name(drawing, rectangle.first()) + " and " + name(drawing, rectangle.second());
        all.add(new Measure(diagonal(number, 'a'), Kind.DIAGONAL, "One diagonal of " + of, rectangle.one()));
        all.add(new Measure(diagonal(number, 'b'), Kind.DIAGONAL, "Other diagonal of " + of, rectangle.other()));
    }

    /** @param which a or b */
    static String diagonal(int number, char which) {
        return "diagonal-" + number + "-" + which;
    }

    /** Of a part that joins both sides of the rectangle and stands off their low end. */
    private static Optional<Measure> place(Drawing drawing, Rectangle rectangle, Part part) {
        Part first = drawing.part(rectangle.first()).orElseThrow();
        Part second = drawing.part(rectangle.second()).orElseThrow();
        if (!joined(drawing, part, first) || !joined(drawing, part, second)) return Optional.empty();
        int axis = rectangle.along().ordinal();
        double off = part.box().min(axis) - first.box().min(axis);
        if (off <= Drawing.TOLERANCE) return Optional.empty();
        String from = switch (rectangle.along()) {
            case ACROSS -> "left";
            case DEEP -> "front";
            case HIGH -> "bottom";
        };
        return Optional.of(
                new Measure("place-" + part.id(), Kind.PLACE, part.name() + " from the " + from + " end", off));
    }

    private static boolean joined(Drawing drawing, Part a, Part b) {
        return drawing.joints(a).stream()
                .anyMatch(j -> j.in().equals(b.id()) || j.takes().equals(b.id()));
    }
}
