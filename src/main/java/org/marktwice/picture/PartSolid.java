package org.marktwice.picture;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import org.joml.Vector3d;
import org.joml.Vector3dc;
import org.marktwice.drawing.Cut;
import org.marktwice.drawing.Drawing;
import org.marktwice.drawing.Joint;
import org.marktwice.drawing.Part;
import org.marktwice.timber.Box;

/**
 * A part less what its joints take out of it, in the job's frame: boxes that touch and don't overlap.
 *
 * @param edges the edges of the solid as a whole; where two of its boxes lie flush there is none
 */
record PartSolid(Part part, List<Box> boxes, List<Edge> edges) {
    private static final double FLAT = 1e-6;

    /** A straight edge along one axis. */
    record Edge(Vector3dc from, Vector3dc to) {}

    PartSolid {
        boxes = List.copyOf(boxes);
        edges = List.copyOf(edges);
    }

    static List<PartSolid> of(Drawing drawing) {
        return drawing.parts().stream().map(p -> of(p, drawing.cuts(p))).toList();
    }

    /** The parts without what is bored for dowels: bores are round, and are drawn as {@link Bores}. */
    static List<PartSolid> unbored(Drawing drawing) {
        return drawing.parts().stream().map(p -> unbored(drawing, p)).toList();
    }

    static PartSolid unbored(Drawing drawing, Part part) {
        return of(
                part,
                drawing.cuts(part).stream()
                        .filter(c -> !(drawing.joint(c.joint()).orElseThrow() instanceof Joint.Dowelled))
                        .toList());
    }

    static PartSolid of(Part part, List<Cut> cuts) {
        List<Box> boxes = List.of(part.box());
        for (Cut cut : cuts) {
            for (Box gone : cut.boxes()) boxes = less(boxes, gone);
        }
        return new PartSolid(part, boxes, edges(boxes));
    }

    /** As much of it as lies in a window. */
    PartSolid within(Box window) {
        List<Box> left =
                boxes.stream().flatMap(b -> b.overlap(window, FLAT).stream()).toList();
        return new PartSolid(part, left, edges(left));
    }

    PartSolid moved(Vector3dc by) {
        return changed(b -> b.moved(by.x(), by.y(), by.z()));
    }

    /** Its mirror image about the plane through the origin square to an axis. */
    PartSolid mirrored(int axis) {
        return changed(b -> b.with(axis, -b.max(axis), -b.min(axis)));
    }

    private PartSolid changed(UnaryOperator<Box> change) {
        List<Box> now = boxes.stream().map(change).toList();
        return new PartSolid(part, now, edges(now));
    }

    private static List<Box> less(List<Box> boxes, Box gone) {
        List<Box> out = new ArrayList<>();
        for (Box box : boxes) {
            if (box.overlap(gone, FLAT).isEmpty()) out.add(box);
            else around(box, gone, out);
        }
        return out;
    }

    /** What is left of a box on the six sides of what goes. */
    private static void around(Box box, Box gone, List<Box> out) {
        Box rest = box;
        for (int axis = 0; axis < 3; axis++) {
            double low = Math.max(rest.min(axis), gone.min(axis));
            double high = Math.min(rest.max(axis), gone.max(axis));
            if (low - rest.min(axis) > FLAT) out.add(rest.with(axis, rest.min(axis), low));
            if (rest.max(axis) - high > FLAT) out.add(rest.with(axis, high, rest.max(axis)));
            rest = rest.with(axis, low, high);
        }
    }

    /** The edges of boxes that touch, taken as one solid. */
    static List<Edge> edges(List<Box> boxes) {
        Grid grid = new Grid(boxes);
        List<Edge> out = new ArrayList<>();
        for (int axis = 0; axis < 3; axis++) grid.edges(axis, out);
        return out;
    }

    /** All of space in cells by the boxes' own coordinates; each is full or empty. */
    private static final class Grid {
        private final double[][] at = new double[3][];
        private final List<Box> boxes;

        Grid(List<Box> boxes) {
            this.boxes = boxes;
            for (int axis = 0; axis < 3; axis++) at[axis] = coordinates(boxes, axis);
        }

        boolean full(int[] cell) {
            Vector3d middle = new Vector3d();
            for (int axis = 0; axis < 3; axis++) {
                int i = cell[axis];
                if (i < 0 || i >= at[axis].length - 1) return false;
                middle.setComponent(axis, (at[axis][i] + at[axis][i + 1]) / 2);
            }
            return boxes.stream().anyMatch(b -> b.contains(middle, 0));
        }

        /** The edges along an axis, each as long as it runs on. */
        void edges(int axis, List<Edge> out) {
            int b = (axis + 1) % 3;
            int c = (axis + 2) % 3;
            for (int i = 0; i < at[b].length; i++) {
                for (int j = 0; j < at[c].length; j++) {
                    int start = -1;
                    for (int k = 0; k <= at[axis].length - 1; k++) {
                        boolean edge = k < at[axis].length - 1 && isEdge(axis, b, c, k, i, j);
                        if (edge && start < 0) start = k;
                        if (!edge && start >= 0) {
                            out.add(edge(axis, b, c, at[axis][start], at[axis][k], at[b][i], at[c][j]));
                            start = -1;
                        }
                    }
                }
            }
        }

        private static Edge edge(int axis, int b, int c, double from, double to, double atB, double atC) {
            Vector3d one = new Vector3d().setComponent(axis, from);
            one.setComponent(b, atB).setComponent(c, atC);
            return new Edge(one, new Vector3d(one).setComponent(axis, to));
        }

        /** Of the four cells round a line, one or three are full, or two that meet only in it. */
        private boolean isEdge(int axis, int b, int c, int k, int i, int j) {
            boolean[] round = new boolean[4];
            int count = 0;
            for (int q = 0; q < 4; q++) {
                int[] cell = new int[3];
                cell[axis] = k;
                cell[b] = i - (q & 1);
                cell[c] = j - (q >> 1);
                round[q] = full(cell);
                if (round[q]) count++;
            }
            return count == 1 || count == 3 || (count == 2 && round[0] == round[3]);
        }
    }

    /** The coordinates of all the boxes' sides along an axis, ascending, those that fall together once. */
    static double[] coordinates(Collection<Box> boxes, int axis) {
        TreeSet<Double> all = new TreeSet<>();
        for (Box b : boxes) {
            all.add(b.min(axis));
            all.add(b.max(axis));
        }
        List<Double> out = new ArrayList<>();
        for (double d : all) {
            if (out.isEmpty() || d - out.get(out.size() - 1) > FLAT) out.add(d);
        }
        return out.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
