package org.marktwice.drawing;

import java.util.List;
import org.joml.Vector3d;
import org.marktwice.timber.Box;
import org.marktwice.timber.Figures;

/** The overall size is the box around the parts, no more and no less. */
final class OverallCheck {
    private OverallCheck() {}

    static void check(Overall overall, List<Part> parts) throws DrawingRefused {
        Box box = around(parts);
        for (JobAxis axis : JobAxis.values()) {
            double said = overall.along(axis);
            double found = box.extent(axis.ordinal());
            if (!(Math.abs(said - found) <= Drawing.TOLERANCE)) {
                throw Refusals.refused(
                        "overall." + axis.id(),
                        "The parts together measure %s mm %s, but the overall size says %s mm",
                        Figures.mm(found),
                        axis.id(),
                        Figures.mm(said));
            }
        }
    }

    /** The overall size of these parts. */
    static Overall overall(List<Part> parts) {
        Box box = around(parts);
        return new Overall(box.extent(0), box.extent(1), box.extent(2));
    }

    /** @param parts one at least */
    static Box around(List<Part> parts) {
        Vector3d low = new Vector3d(parts.get(0).box().min());
        Vector3d high = new Vector3d(parts.get(0).box().max());
        for (Part part : parts) {
            low.min(part.box().min());
            high.max(part.box().max());
        }
        return new Box(low, high);
    }
}
