package org.marktwice.drawing;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A drawing in the making: as much of it as can be drawn, and everything that stands in the way of the rest, each with its
 * place. {@link Drawing} refuses at the first fault; a sketch goes on.
 */
public final class Sketch {
    private final Optional<Drawing> drawing;
    private final List<DrawingRefused> refusals;

    private Sketch(Optional<Drawing> drawing, List<DrawingRefused> refusals) {
        this.drawing = drawing;
        this.refusals = List.copyOf(refusals);
    }

    public static Sketch of(List<Part> parts, List<Joint> joints) {
        List<DrawingRefused> refusals = new ArrayList<>();
        List<Part> drawn = new ArrayList<>();
        Set<String> ids = new HashSet<>();
        for (int i = 0; i < parts.size(); i++) {
            Part part = parts.get(i);
            String where = "parts[" + i + "]";
            boolean known = !ids.add(part.id());
            if (known) refusals.add(Refusals.refused(where + ".id", "Two parts have the id \"%s\"", part.id()));
            Optional<DrawingRefused> fault = PartChecks.refusal(part, where);
            fault.ifPresent(refusals::add);
            if (!known && part.length() != part.width() && part.at().isFinite()) drawn.add(part);
        }
        List<Joint> sound = new ArrayList<>();
        refusals.addAll(JointChecks.refusals(parts, drawn, joints, sound));
        Optional<Drawing> drawing = drawn.isEmpty() ? Optional.empty() : Optional.of(Drawing.unchecked(drawn, sound));
        return new Sketch(drawing, refusals);
    }

    /** Why these two parts can't be joined so; empty where they can. */
    public static Optional<String> refusal(Joint joint, Part in, Part takes) {
        List<DrawingRefused> refusals =
                JointChecks.refusals(List.of(), List.of(in, takes), List.of(joint), new ArrayList<>());
        return refusals.stream().findFirst().map(r -> String.valueOf(r.getMessage()));
    }

    /** The parts that can be drawn, with the joints that can be cut; empty where there is no such part. */
    public Optional<Drawing> drawing() {
        return drawing;
    }

    /** What stands in the way, in the order of the drawing. */
    public List<DrawingRefused> refusals() {
        return refusals;
    }
}
