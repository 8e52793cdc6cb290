package org.marktwice.drawing;

import static org.marktwice.drawing.Refusals.refused;
import static org.marktwice.timber.Figures.mm;

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
        checks.everyOverlapIsJoined(parts);
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
            butt(in, takes, overlap, where);
        } else if (overlap.isEmpty()) {
            throw refused(where, "%s and %s do not overlap: there is nothing to join", in.name(), takes.name());
        } else if (joint instanceof Joint.ThroughHousing) {
            throughHousing(in, overlap.get(), where);
        } else if (joint instanceof Joint.Rebate) {
            rebate(in, overlap.get(), where);
        } else if (joint instanceof Joint.Halving halving) {
            halving(in, takes, overlap.get(), halving.from(), where);
        }
    }

    private Part known(String id, String where) throws DrawingRefused {
        Part part = parts.get(id);
        if (part == null) throw refused(where, "There is no part \"%s\"", id);
        return part;
    }

    private void everyOverlapIsJoined(List<Part> all) throws DrawingRefused {
        for (int j = 1; j < all.size(); j++) {
            for (int i = 0; i < j; i++) {
                Part one = all.get(i);
                Part other = all.get(j);
                Optional<Box> overlap = one.box().overlap(other.box(), Drawing.TOLERANCE);
                if (overlap.isPresent() && !joined.containsKey(Set.of(one.id(), other.id()))) {
                    throw refused(
                            "parts[" + j + "]",
                            "%s and %s overlap by %s without a joint",
                            one.name(),
                            other.name(),
                            mm(overlap.get()));
                }
            }
        }
    }

    private static void butt(Part in, Part takes, Optional<Box> overlap, String where) throws DrawingRefused {
        if (overlap.isPresent()) {
            throw refused(
                    where,
                    "%s and %s overlap by %s: the parts of a butt joint only touch",
                    in.name(),
                    takes.name(),
                    mm(overlap.get()));
        }
        if (!touch(in.box(), takes.box())) {
            throw refused(where, "%s and %s do not touch", in.name(), takes.name());
        }
    }

    /** Whether two boxes that do not overlap share more than a line. */
    private static boolean touch(Box a, Box b) {
        int met = 0;
        for (int axis = 0; axis < 3; axis++) {
            double common = Math.min(a.max(axis), b.max(axis)) - Math.max(a.min(axis), b.min(axis));
            if (common < -Drawing.TOLERANCE) return false;
            if (common <= Drawing.TOLERANCE) met++;
        }
        return met == 1;
    }

    private static void throughHousing(Part in, Box overlap, String where) throws DrawingRefused {
        Box box = in.box();
        int deep = housingDepth(in, overlap);
        if (Reach.of(overlap, box, deep) != Reach.ONE_SIDE) {
            throw refused(
                    where,
                    "A housing lies in a face of %s and is less deep than its thickness of %s mm; this overlap is %s",
                    in.name(),
                    mm(in.size().thickness()),
                    mm(overlap));
        }
        int length = in.length().ordinal();
        int across = 3 - deep - length;
        Reach along = Reach.of(overlap, box, length);
        Reach over = Reach.of(overlap, box, across);
        // sheet stuff has no grain that a housing would have to run across
        boolean through = over == Reach.THROUGH || (in.stuff() == PartStuff.SHEET && along == Reach.THROUGH);
        if (!through) {
            throw refused(
                    where,
                    "A through housing runs from edge to edge of %s, which is %s mm; this overlap runs over %s mm",
                    in.name(),
                    mm(box.extent(across)),
                    mm(overlap.extent(across)));
        }
        Reach beside = over == Reach.THROUGH ? along : over;
        if (beside != Reach.INSIDE) {
            throw refused(
                    where,
                    "A housing has wood of %s on both sides; this overlap reaches its end, which makes it a rebate",
                    in.name());
        }
    }

    /** The axis along which a housing is deep: the thickness, or of square stock whichever the overlap enters from one side. */
    private static int housingDepth(Part in, Box overlap) {
        int thickness = in.thickness().ordinal();
        int width = in.width().ordinal();
        boolean square = in.size().isSquare(Board.SIZE_TOLERANCE);
        boolean fromWidth = Reach.of(overlap, in.box(), width) == Reach.ONE_SIDE;
        return square && fromWidth && Reach.of(overlap, in.box(), thickness) != Reach.ONE_SIDE ? width : thickness;
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
    }

    private static void halving(Part in, Part takes, Box overlap, Direction from, String where) throws DrawingRefused {
        for (Part part : new Part[] {in, takes}) {
            if (part.length().ordinal() == from.axis()) {
                throw refused(
                        where + ".from",
                        "The length of %s runs %s: a halving is shared across it",
                        part.name(),
                        part.length().id());
            }
        }
        open(in, overlap, from, where);
        open(takes, overlap, from.opposite(), where);
    }

    /** A halving can be sawn only where it comes out on the part's surface. */
    private static void open(Part part, Box overlap, Direction from, String where) throws DrawingRefused {
        Box box = part.box();
        int axis = from.axis();
        double beneath = from.sign() > 0 ? box.max(axis) - overlap.max(axis) : overlap.min(axis) - box.min(axis);
        if (beneath > Drawing.TOLERANCE) {
            throw refused(
                    where + ".from",
                    "The half that %s loses lies %s mm below its %s surface: it must come out there",
                    part.name(),
                    mm(beneath),
                    from.id());
        }
    }

    /** How far an overlap reaches through a part along an axis. */
    private enum Reach {
        INSIDE,
        ONE_SIDE,
        THROUGH;

        static Reach of(Box overlap, Box part, int axis) {
            boolean low = overlap.min(axis) - part.min(axis) <= Drawing.TOLERANCE;
            boolean high = part.max(axis) - overlap.max(axis) <= Drawing.TOLERANCE;
            return low && high ? THROUGH : low || high ? ONE_SIDE : INSIDE;
        }
    }
}
