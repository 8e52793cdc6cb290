package org.marktwice.drawing;

import static org.marktwice.drawing.Refusals.refused;
import static org.marktwice.timber.Figures.mm;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.marktwice.timber.Board;
import org.marktwice.timber.Box;

/** Joints and overlaps belong together: every overlap has one joint, every joint an overlap of the shape its kind needs. */
final class JointChecks {
    private final Map<String, Part> parts = new HashMap<>();
    private final Map<Set<String>, String> joined = new HashMap<>();

    private JointChecks(List<Part> parts) {
        for (Part part : parts) this.parts.put(part.id(), part);
    }

    static void check(List<Part> parts, List<Joint> joints) throws DrawingRefused {
        JointChecks checks = new JointChecks(parts);
        Set<String> ids = new HashSet<>();
        for (int i = 0; i < joints.size(); i++) {
            String where = "joints[" + i + "]";
            Joint joint = joints.get(i);
            if (!ids.add(joint.id())) throw refused(where + ".id", "Two joints have the id \"%s\"", joint.id());
            checks.check(joint, where);
        }
        List<DrawingRefused> unjoined = checks.overlapsWithoutJoint(parts, parts);
        if (!unjoined.isEmpty()) throw unjoined.get(0);
    }

    /**
     * Everything that is wrong with the joints, and every overlap without one.
     *
     * @param all the parts by whose order places are told
     * @param parts those that can be joined
     * @param sound takes the joints that can be cut
     */
    static List<DrawingRefused> refusals(List<Part> all, List<Part> parts, List<Joint> joints, List<Joint> sound) {
        JointChecks checks = new JointChecks(parts);
        List<DrawingRefused> refusals = new ArrayList<>();
        Set<String> ids = new HashSet<>();
        for (int i = 0; i < joints.size(); i++) {
            String where = "joints[" + i + "]";
            Joint joint = joints.get(i);
            try {
                if (!ids.add(joint.id())) throw refused(where + ".id", "Two joints have the id \"%s\"", joint.id());
                checks.check(joint, where);
                sound.add(joint);
            } catch (DrawingRefused e) {
                refusals.add(e);
            }
        }
        if (!all.isEmpty()) refusals.addAll(checks.overlapsWithoutJoint(all, parts));
        return refusals;
    }

    private void check(Joint joint, String where) throws DrawingRefused {
        Part in = known(joint.in(), where + ".in");
        Part takes = known(joint.takes(), where + ".takes");
        if (in.id().equals(takes.id())) throw refused(where + ".takes", "%s cannot be joined to itself", in.name());
        String earlier = joined.putIfAbsent(Set.of(in.id(), takes.id()), joint.id());
        if (earlier != null) {
            throw refused(where, "%s and %s are joined by \"%s\" already", in.name(), takes.name(), earlier);
        }
        Optional<Box> overlap = in.box().overlap(takes.box(), Drawing.TOLERANCE);
        if (joint instanceof Joint.Butt) {
            touching("butt", in, takes, overlap, where);
        } else if (joint instanceof Joint.Dowelled dowelled) {
            touching("dowelled", in, takes, overlap, where);
            DowelChecks.check(dowelled, in, takes, where);
        } else if (overlap.isEmpty()) {
            throw refused(where, "%s and %s do not overlap: there is nothing to join", in.name(), takes.name());
        } else {
            cut(joint, in, takes, overlap.get(), where);
        }
    }

    private static void cut(Joint joint, Part in, Part takes, Box overlap, String where) throws DrawingRefused {
        if (joint instanceof Joint.ThroughHousing) {
            HousingChecks.through(in, overlap, "A through housing", where);
        } else if (joint instanceof Joint.StoppedHousing stopped) {
            HousingChecks.stopped(stopped, in, takes, overlap, where);
        } else if (joint instanceof Joint.Rebate) {
            rebate(in, overlap, where);
        } else if (joint instanceof Joint.Halving halving) {
            FrameChecks.halving(in, takes, overlap, halving.from(), where);
        } else if (joint instanceof Joint.Bridle) {
            FrameChecks.bridle(in, takes, overlap, where);
        } else if (joint instanceof Joint.MortiseTenon tenoned) {
            TenonChecks.check(new Mortising(tenoned, in, takes, overlap), where);
        }
    }

    private Part known(String id, String where) throws DrawingRefused {
        Part part = parts.get(id);
        if (part == null) throw refused(where, "There is no part \"%s\"", id);
        return part;
    }

    private List<DrawingRefused> overlapsWithoutJoint(List<Part> all, List<Part> parts) {
        List<DrawingRefused> found = new ArrayList<>();
        for (int j = 1; j < parts.size(); j++) {
            for (int i = 0; i < j; i++) {
                Part one = parts.get(i);
                Part other = parts.get(j);
                Optional<Box> overlap = one.box().overlap(other.box(), Drawing.TOLERANCE);
                if (overlap.isPresent() && !joined.containsKey(Set.of(one.id(), other.id()))) {
                    found.add(refused(
                            "parts[" + all.indexOf(other) + "]",
                            "%s and %s overlap by %s without a joint",
                            one.name(),
                            other.name(),
                            mm(overlap.get())));
                }
            }
        }
        return found;
    }

    private static void touching(String kind, Part in, Part takes, Optional<Box> overlap, String where)
            throws DrawingRefused {
        if (overlap.isPresent()) {
            throw refused(
                    where,
                    "%s and %s overlap by %s: the parts of a %s joint only touch",
                    in.name(),
                    takes.name(),
                    mm(overlap.get()),
                    kind);
        }
        if (Contact.of(in.box(), takes.box()).isEmpty()) {
            throw refused(where, "%s and %s do not touch", in.name(), takes.name());
        }
    }

    private static void rebate(Part in, Box overlap, String where) throws DrawingRefused {
        int sides = 0;
        for (int axis = 0; axis < 3; axis++) {
            if (Reach.of(overlap, in.box(), axis) == Reach.ONE_SIDE) sides++;
        }
        if (sides < 2) {
            throw refused(
                    where,
                    "A rebate lies at an end or along an edge of %s, in a corner of its section; this overlap of %s does not",
                    in.name(),
                    mm(overlap));
        }
        Reach through = Reach.of(overlap, in.box(), in.thickness().ordinal());
        boolean square = in.size().isSquare(Board.SIZE_TOLERANCE);
        if (through == Reach.THROUGH && !square) {
            throw refused(
                    where,
                    "A rebate is less deep than %s is thick; this overlap of %s goes right through its %s mm",
                    in.name(),
                    mm(overlap),
                    mm(in.size().thickness()));
        }
    }
}
