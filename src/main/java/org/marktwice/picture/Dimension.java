package org.marktwice.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import org.marktwice.drawing.Drawing;
import org.marktwice.drawing.JobAxis;
import org.marktwice.drawing.Joint;
import org.marktwice.drawing.Part;
import org.marktwice.timber.Box;

/**
 * A size to be written on the working drawing, along one axis of the job.
 *
 * @param from millimetres from the job's left, front or bottom; {@code to} is farther
 * @param overall whether it is an overall size, which is never left out
 */
record Dimension(JobAxis axis, double from, double to, boolean overall) {
    private static final double SAME = 0.05;

    double length() {
        return to - from;
    }

    String text() {
        return millimetres(length());
    }

    /** Millimetres as they stand on a drawing: no unit, no needless zero. */
    static String millimetres(double mm) {
        String s = String.format(Locale.ROOT, "%.1f", mm);
        return s.endsWith(".0") ? s.substring(0, s.length() - 2) : s;
    }

    /** The three overall sizes, and where each joint begins along a part, from the bottom, left or front. */
    static List<Dimension> of(Drawing drawing) {
        List<Dimension> out = new ArrayList<>();
        Box all = box(drawing);
        for (JobAxis axis : JobAxis.values()) {
            out.add(new Dimension(axis, 0, all.extent(axis.ordinal()), true));
            for (double at : places(drawing, axis, all)) out.add(new Dimension(axis, 0, at, false));
        }
        return List.copyOf(out);
    }

    private static Box box(Drawing drawing) {
        return drawing.parts().stream()
                .map(Part::box)
                .reduce((a, b) -> new Box(
                        a.min().min(b.min(), new org.joml.Vector3d()), a.max().max(b.max(), new org.joml.Vector3d())))
                .orElseThrow();
    }

    /** Where others begin along parts that go on past them on both sides. */
    private static List<Double> places(Drawing drawing, JobAxis axis, Box all) {
        int a = axis.ordinal();
        TreeSet<Double> found = new TreeSet<>();
        for (Joint joint : drawing.joints()) {
            Part in = drawing.part(joint.in()).orElseThrow();
            Part takes = drawing.part(joint.takes()).orElseThrow();
            double from = Math.max(in.box().min(a), takes.box().min(a));
            double to = Math.min(in.box().max(a), takes.box().max(a));
            for (Part part : List.of(in, takes)) {
                boolean within = from - part.box().min(a) > SAME && part.box().max(a) - to > SAME;
                if (part.length() == axis && within) found.add(from - all.min(a));
            }
        }
        List<Double> out = new ArrayList<>();
        double extent = all.extent(a);
        for (double at : found) {
            boolean end = at < SAME || at > extent - SAME;
            if (!end && (out.isEmpty() || at - out.get(out.size() - 1) > SAME)) out.add(at);
        }
        return out;
    }
}
