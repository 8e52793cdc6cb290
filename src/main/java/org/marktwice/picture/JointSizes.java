package org.marktwice.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.marktwice.drawing.Drawing;
import org.marktwice.drawing.JobAxis;
import org.marktwice.drawing.Joint;
import org.marktwice.drawing.Part;
import org.marktwice.timber.Box;

/** The main sizes of a joint, each once, and none that the job's overall sizes say already. */
final class JointSizes {
    private static final double SAME = 0.05;

    private final Drawing drawing;
    private final Joint joint;
    private final WorkingDrawing.Method method;
    private final Part in;
    private final Part takes;
    private final List<JointSize> out = new ArrayList<>();

    private JointSizes(Drawing drawing, Joint joint, WorkingDrawing.Method method) {
        this.drawing = drawing;
        this.joint = joint;
        this.method = method;
        this.in = drawing.part(joint.in()).orElseThrow();
        this.takes = drawing.part(joint.takes()).orElseThrow();
    }

    /** None for a butt, which takes nothing out of its parts. */
    static List<JointSize> of(Drawing drawing, Joint joint, WorkingDrawing.Method method) {
        JointSizes sizes = new JointSizes(drawing, joint, method);
        if (joint instanceof Joint.Dowelled dowelled) sizes.dowels(dowelled);
        else drawing.overlap(joint).ifPresent(sizes::cut);
        return List.copyOf(sizes.out);
    }

    private void cut(Box overlap) {
        if (joint instanceof Joint.ThroughHousing || joint instanceof Joint.StoppedHousing) housing(overlap);
        else if (joint instanceof Joint.Rebate) rebate(overlap);
        else if (joint instanceof Joint.Halving halving) halving(halving, overlap);
        else if (joint instanceof Joint.Bridle) bridle(overlap);
        else if (joint instanceof Joint.MortiseTenon) tenon(overlap);
    }

    /** Its profile shows when one looks along it: its width and its depth; where it stops shows across it. */
    private void housing(Box overlap) {
        int deep = axis(overlap, 1, in.thickness().ordinal());
        int beside = axis(overlap, 0, in.length().ordinal());
        int along = 3 - deep - beside;
        add(beside, overlap, along, overlap);
        add(deep, overlap, along, overlap);
        add(deep, in.box(), along, in.box());
        if (!(joint instanceof Joint.StoppedHousing stopped)) return;
        int over = stopped.at().axis();
        Box stop = stopped.at().sign() > 0
                ? overlap.with(over, overlap.max(over) - stopped.mm(), overlap.max(over))
                : overlap.with(over, overlap.min(over), overlap.min(over) + stopped.mm());
        add(over, stop, 3 - over - deep, stop);
    }

    private void rebate(Box overlap) {
        // of its three sides the longest is the one that it runs along
        int run = 0;
        for (int axis = 1; axis < 3; axis++) if (overlap.extent(axis) > overlap.extent(run)) run = axis;
        int deep = run == in.thickness().ordinal()
                ? in.width().ordinal()
                : in.thickness().ordinal();
        add(3 - run - deep, overlap, run, overlap);
        add(deep, overlap, run, overlap);
        add(deep, in.box(), run, in.box());
    }

    private void halving(Joint.Halving halving, Box overlap) {
        int across = halving.from().axis();
        faces(overlap, across);
        int looking = end(overlap);
        Box half = cuts(in).get(0);
        add(across, half, looking, half);
        // of wood that stands on edge only as much as the two share
        add(across, overlap, looking, overlap);
    }

    private void bridle(Box overlap) {
        int thirds = 3 - in.length().ordinal() - takes.length().ordinal();
        faces(overlap, thirds);
        int looking = end(overlap);
        Box slot = cuts(in).get(0);
        add(thirds, slot, looking, slot);
        add(thirds, in.box(), looking, in.box());
    }

    /** How far the joint runs over the faces of its parts. */
    private void faces(Box overlap, int looking) {
        for (int axis = 0; axis < 3; axis++) {
            if (axis != looking) add(axis, overlap, looking, overlap);
        }
    }

    private void tenon(Box overlap) {
        int entering = takes.length().ordinal();
        int along = in.length().ordinal();
        int through = 3 - entering - along;
        List<Box> mortise = cuts(in);
        Box tenon = mortise.get(0);
        add(entering, tenon, through, tenon);
        if (tenon.extent(entering) < in.box().extent(entering) - SAME) add(entering, in.box(), through, in.box());
        add(along, tenon, through, tenon);
        double below = tenon.min(along) - overlap.min(along);
        double above = overlap.max(along) - tenon.max(along);
        // of a tenon in the middle one shoulder says all; one that is set in has its inset
        Box shoulder = below >= above - SAME
                ? overlap.with(along, overlap.min(along), tenon.min(along))
                : overlap.with(along, tenon.max(along), overlap.max(along));
        add(along, shoulder, through, tenon);
        if (mortise.size() > 1) add(entering, mortise.get(1), through, mortise.get(1));
        add(through, tenon, entering, tenon);
        add(through, in.box(), entering, in.box());
    }

    private void dowels(Joint.Dowelled dowelled) {
        List<Box> holes = cuts(in);
        List<Box> others = cuts(takes);
        Box first = holes.get(0);
        Optional<Box> second = holes.size() > 1 ? Optional.of(holes.get(1)) : Optional.empty();
        int across = Bores.along(first, others.get(0));
        int row = second.map(s -> apart(first, s)).orElse(across == 0 ? 1 : 0);
        int narrow = 3 - across - row;
        double low = Math.max(in.box().min(row), takes.box().min(row));
        double middle = first.centre().get(row);
        add(across, first, narrow, first);
        add(across, others.get(0), narrow, others.get(0));
        out.add(new JointSize(JobAxis.values()[row], low, middle, JobAxis.values()[across], first, mm(middle - low)));
        if (second.isPresent()) {
            double next = second.get().centre().get(row);
            out.add(new JointSize(
                    JobAxis.values()[row], middle, next, JobAxis.values()[across], first, mm(next - middle)));
        }
        double edge = Math.max(in.box().min(narrow), takes.box().min(narrow));
        double centre = first.centre().get(narrow);
        out.add(new JointSize(
                JobAxis.values()[narrow], edge, centre, JobAxis.values()[across], first, mm(centre - edge)));
        String bored = (holes.size() > 1 ? holes.size() + " × " : "") + "Ø"
                + mm(dowelled.dowels().diameter());
        out.add(new JointSize(
                JobAxis.values()[narrow],
                first.min(narrow),
                first.max(narrow),
                JobAxis.values()[across],
                first,
                bored));
    }

    private static int apart(Box one, Box other) {
        int most = 0;
        for (int axis = 0; axis < 3; axis++) {
            if (Math.abs(other.min(axis) - one.min(axis)) > Math.abs(other.min(most) - one.min(most))) most = axis;
        }
        return most;
    }

    private List<Box> cuts(Part part) {
        return Bores.cut(drawing, joint, part.id());
    }

    /** The axis along which an overlap reaches so many sides of the part it is cut into; the usual one where several do. */
    private int axis(Box overlap, int sides, int usual) {
        if (reached(overlap, in.box(), usual) == sides) return usual;
        for (int axis = 0; axis < 3; axis++) if (reached(overlap, in.box(), axis) == sides) return axis;
        return usual;
    }

    private static int reached(Box overlap, Box part, int axis) {
        return (overlap.min(axis) - part.min(axis) <= SAME ? 1 : 0)
                + (part.max(axis) - overlap.max(axis) <= SAME ? 1 : 0);
    }

    /** The length, of either part, along which one looks at the joint's end, and sees it where it comes out. */
    private int end(Box overlap) {
        for (Part part : List.of(takes, in)) {
            int axis = part.length().ordinal();
            boolean high =
                    JobView.along(JobAxis.values()[axis], method).towards().get(axis) > 0;
            Box all = drawing.box();
            double left = high ? all.max(axis) - overlap.max(axis) : overlap.min(axis) - all.min(axis);
            if (left <= SAME) return axis;
        }
        return takes.length().ordinal();
    }

    private void add(int axis, Box range, int looking, Box of) {
        double from = range.min(axis);
        double to = range.max(axis);
        Box all = drawing.box();
        boolean overall = Math.abs(from - all.min(axis)) < SAME && Math.abs(to - all.max(axis)) < SAME;
        boolean known = out.stream()
                .anyMatch(s ->
                        s.axis().ordinal() == axis && Math.abs(s.from() - from) < SAME && Math.abs(s.to() - to) < SAME);
        if (to - from < SAME || overall || known) return;
        out.add(new JointSize(JobAxis.values()[axis], from, to, JobAxis.values()[looking], of, mm(to - from)));
    }

    private static String mm(double length) {
        return Dimension.millimetres(length);
    }
}
