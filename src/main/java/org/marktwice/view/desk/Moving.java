package org.marktwice.view.desk;

import java.util.ArrayList;
import java.util.List;
import org.joml.Vector3dc;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.JobAxis;
import org.marktwice.drawing.Part;
import org.marktwice.scenario.Draft;
import org.marktwice.scenario.DraftPart;
import org.marktwice.scenario.DraftPart.Figure;

/** Moving a part about the job: to whole millimetres, and flush with another part where it comes near to that. */
final class Moving {
    private Moving() {}

    /**
     * @param by millimetres along the job's axes; 0 along an axis leaves it there
     * @param near how near to flush is flush, millimetres
     */
    static Draft moved(Draft draft, String partId, Vector3dc by, double near) {
        for (int i = 0; i < draft.parts().size(); i++) {
            DraftPart part = draft.parts().get(i);
            if (!part.id().equals(partId) || part.part().isEmpty()) continue;
            DraftPart moved = part;
            for (JobAxis axis : JobAxis.values()) {
                double step = by.get(axis.ordinal());
                if (step == 0) continue;
                moved = moved.with(Figure.at(axis), place(draft, part.part().get(), axis, step, near));
            }
            return draft.withPart(i, moved);
        }
        return draft;
    }

    private static double place(Draft draft, Part part, JobAxis axis, double step, double near) {
        int a = axis.ordinal();
        double extent = part.box().extent(a);
        double wanted = part.at().get(a) + step;
        double best = Math.rint(wanted);
        double nearest = near;
        for (double flush : planes(draft, part, a)) {
            for (double at : new double[] {flush, flush - extent}) {
                if (Math.abs(at - wanted) >= nearest) continue;
                nearest = Math.abs(at - wanted);
                best = at;
            }
        }
        // no negative zero, which would be written as such
        return Math.max(-Figure.FAR, Math.min(Figure.FAR, best)) + 0.0;
    }

    private static List<Double> planes(Draft draft, Part part, int axis) {
        List<Double> planes = new ArrayList<>(List.of(0.0));
        for (DraftPart other : draft.parts()) {
            if (other.id().equals(part.id())) continue;
            other.part().ifPresent(p -> {
                planes.add(p.box().min(axis));
                planes.add(p.box().max(axis));
            });
        }
        return planes;
    }

    /** A part's mirror image from left to right in the middle of the job, by its own name and under an id of its own. */
    static DraftPart opposite(Draft draft, DraftPart part) {
        String name = swapped(part.name());
        DraftPart other = part.withId(draft.freePartId(name.isEmpty() ? part.id() : name))
                .named(name)
                .marked(mirrored(part.faceSide()), mirrored(part.faceEdge()));
        if (part.part().isEmpty() || draft.drawn().isEmpty()) return other;
        Part drawn = part.part().get();
        double twice = 2 * draft.drawn().get().box().centre().x();
        return other.with(Figure.FROM_LEFT, twice - drawn.box().max(0) + 0.0);
    }

    private static List<Direction> mirrored(List<Direction> looks) {
        return looks.stream().map(d -> d.axis() == 0 ? d.opposite() : d).toList();
    }

    /** Left for right in a name. */
    private static String swapped(String name) {
        if (name.contains("Left")) return name.replace("Left", "Right");
        if (name.contains("Right")) return name.replace("Right", "Left");
        if (name.contains("left")) return name.replace("left", "right");
        if (name.contains("right")) return name.replace("right", "left");
        return name.isEmpty() ? "" : name + ", opposite";
    }
}
