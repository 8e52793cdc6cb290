package org.marktwice.picture;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.joml.Vector3d;
import org.joml.Vector3dc;
import org.marktwice.drawing.Cut;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Drawing;
import org.marktwice.drawing.Joint;
import org.marktwice.drawing.Part;
import org.marktwice.timber.Box;

/** How far each part is drawn from its place when the job is drawn apart: away from its middle, and out of what it is let into. */
final class DrawnApart {
    private static final double SPREAD = 0.55;
    /** Parts that go no farther from each other than this are drawn out of each other besides, of the thickness. */
    private static final double LEAST = 1.5;

    private DrawnApart() {}

    /** By part, when the job is wholly apart. */
    static Map<String, Vector3dc> of(Drawing drawing) {
        Map<String, Vector3d> apart = new HashMap<>();
        Vector3dc middle = drawing.box().centre();
        for (Part part : drawing.parts()) {
            apart.put(part.id(), new Vector3d(part.box().centre()).sub(middle).mul(SPREAD));
        }
        for (Joint joint : drawing.joints()) {
            Part in = drawing.part(joint.in()).orElseThrow();
            Part takes = drawing.part(joint.takes()).orElseThrow();
            Vector3d one = apart.getOrDefault(in.id(), new Vector3d());
            Vector3d other = apart.getOrDefault(takes.id(), new Vector3d());
            Direction out = out(drawing, joint, in, takes);
            double least = LEAST * Math.min(in.size().thickness(), takes.size().thickness());
            double now = new Vector3d(other).sub(one).dot(out.unit());
            if (isClear(drawing, joint, in, takes, new Vector3d(other).sub(one)) || now >= least) continue;
            other.add(new Vector3d(out.unit()).mul(least - now));
        }
        Map<String, Vector3dc> all = new HashMap<>();
        apart.forEach(all::put);
        return all;
    }

    /** Whether the two are drawn so far from each other that neither reaches into the other's box. */
    private static boolean isClear(Drawing drawing, Joint joint, Part in, Part takes, Vector3dc by) {
        return in.box()
                .overlap(takes.box().moved(by.x(), by.y(), by.z()), Drawing.TOLERANCE)
                .isEmpty();
    }

    /** The way in which the one part comes out of the other, the shortest first. */
    private static Direction out(Drawing drawing, Joint joint, Part in, Part takes) {
        Direction best = Direction.TOP;
        double least = Double.POSITIVE_INFINITY;
        for (Direction d : Direction.values()) {
            double way = d.sign() > 0
                    ? in.box().max(d.axis()) - takes.box().min(d.axis())
                    : takes.box().max(d.axis()) - in.box().min(d.axis());
            if (way < least && comesOut(drawing, joint, in, takes, d)) {
                least = way;
                best = d;
            }
        }
        return best;
    }

    private static boolean comesOut(Drawing drawing, Joint joint, Part in, Part takes, Direction d) {
        List<Box> fixed = wood(drawing, joint, in);
        for (Box moving : wood(drawing, joint, takes)) {
            double far = 1e5;
            Box swept = d.sign() > 0
                    ? moving.with(d.axis(), moving.min(d.axis()), far)
                    : moving.with(d.axis(), -far, moving.max(d.axis()));
            if (fixed.stream().anyMatch(b -> b.overlap(swept, Drawing.TOLERANCE).isPresent())) return false;
        }
        return true;
    }

    private static List<Box> wood(Drawing drawing, Joint joint, Part part) {
        List<Cut> own = drawing.cuts(part).stream()
                .filter(c -> c.joint().equals(joint.id()))
                .toList();
        return PartSolid.of(part, own).boxes();
    }
}
