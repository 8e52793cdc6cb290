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
            List<Box> boxes = boxes(drawing, joint, part);
            if (!boxes.isEmpty()) cuts.add(new Cut(joint.id(), boxes));
        }
        return List.copyOf(cuts);
    }

    private static List<Box> boxes(Drawing drawing, Joint joint, Part part) {
        Part in = drawing.part(joint.in()).orElseThrow();
        Part takes = drawing.part(joint.takes()).orElseThrow();
        if (joint instanceof Joint.Dowelled dowelled) {
            return Dowelling.of(dowelled, in, takes).orElseThrow().holes(part);
        }
        boolean loses = part.equals(in);
        return drawing.overlap(joint)
                .map(overlap -> share(joint, in, takes, overlap, loses))
                .orElse(List.of());
    }

    /** @param loses whether the share of the part that the joint is cut into is wanted, or that of the part it takes */
    private static List<Box> share(Joint joint, Part in, Part takes, Box overlap, boolean loses) {
        if (joint instanceof Joint.ThroughHousing || joint instanceof Joint.Rebate) {
            return loses ? List.of(overlap) : List.of();
        }
        if (joint instanceof Joint.StoppedHousing stopped) {
            Box stop = towards(overlap, stopped.at(), stopped.mm());
            return loses ? overlap.less(stop, Drawing.TOLERANCE) : List.of(stop);
        }
        if (joint instanceof Joint.Halving halving) {
            Direction from = loses ? halving.from() : halving.from().opposite();
            return List.of(towards(overlap, from, overlap.extent(from.axis()) / 2));
        }
        if (joint instanceof Joint.Bridle) {
            // across both lengths: the thickness, or of square stock whichever side it is
            return thirds(overlap, 3 - in.length().ordinal() - takes.length().ordinal(), loses);
        }
        if (joint instanceof Joint.MortiseTenon tenoned) {
            Mortising mortising = new Mortising(tenoned, in, takes, overlap);
            return loses ? mortising.mortise() : mortising.shoulders();
        }
        return List.of();
    }

    /** So much of a box as lies within a distance of its side that looks in a direction. */
    private static Box towards(Box box, Direction side, double mm) {
        int axis = side.axis();
        return side.sign() > 0
                ? box.with(axis, box.max(axis) - mm, box.max(axis))
                : box.with(axis, box.min(axis), box.min(axis) + mm);
    }

    private static List<Box> thirds(Box box, int axis, boolean middle) {
        double low = box.min(axis) + box.extent(axis) / 3;
        double high = box.max(axis) - box.extent(axis) / 3;
        if (middle) return List.of(box.with(axis, low, high));
        return List.of(box.with(axis, box.min(axis), low), box.with(axis, high, box.max(axis)));
    }
}
