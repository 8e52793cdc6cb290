package org.marktwice.drawing;

import java.util.ArrayList;
import java.util.List;
import org.marktwice.timber.Box;

/** How each kind of joint shares out the overlap of its two parts. */
final class Cuts {
    private Cuts() {}

    static List<Cut> of(Drawing drawing, Part part) {
        List<Cut> cuts = new ArrayList<>();
        for (Joint joint : drawing.joints(part)) {
            List<Box> boxes = drawing.overlap(joint)
                    .map(overlap -> share(joint, overlap, joint.in().equals(part.id())))
                    .orElse(List.of());
            if (!boxes.isEmpty()) cuts.add(new Cut(joint.id(), boxes));
        }
        return List.copyOf(cuts);
    }

    private static List<Box> share(Joint joint, Box overlap, boolean in) {
        if (joint instanceof Joint.Halving halving) {
            return List.of(half(overlap, in ? halving.from() : halving.from().opposite()));
        }
        return in && !(joint instanceof Joint.Butt) ? List.of(overlap) : List.of();
    }

    /** The half of a box that lies towards a direction. */
    private static Box half(Box box, Direction towards) {
        int axis = towards.axis();
        double middle = (box.min(axis) + box.max(axis)) / 2;
        return towards.sign() > 0 ? box.with(axis, middle, box.max(axis)) : box.with(axis, box.min(axis), middle);
    }
}
