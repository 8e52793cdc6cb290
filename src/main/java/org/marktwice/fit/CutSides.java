package org.marktwice.fit;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.marktwice.drawing.Cut;
import org.marktwice.drawing.Joint;
import org.marktwice.drawing.Placing;
import org.marktwice.timber.Box;
import org.marktwice.timber.Surface;

/**
 * What has to be marked on a board that lies in the job so: the sides of its cuts that show on a surface, and where it is
 * cut to length. The bottom of a mortise shows nowhere: it is chopped to a depth set on the tool.
 */
public final class CutSides {
    /** Places that differ by no more than this are one, millimetres. */
    private static final double FLAT = 1e-6;

    private final Box part;
    private final List<CutSide> sides = new ArrayList<>();

    private CutSides(Box part) {
        this.part = part;
    }

    /** By joint in the drawing's order, along each axis from low to high; the board's ends come first. */
    public static List<CutSide> of(Placing placing) {
        CutSides all = new CutSides(placing.partInBoard());
        all.ends(placing);
        for (Cut cut : placing.cuts()) {
            boolean holes = placing.drawing().joint(cut.joint()).orElseThrow() instanceof Joint.Dowelled;
            if (holes) all.centres(cut);
            else all.sides(cut);
        }
        return List.copyOf(all.sides);
    }

    private void ends(Placing placing) {
        for (Surface end : new Surface[] {Surface.END_1, Surface.END_2}) {
            if (placing.off(end) <= FLAT) continue;
            double at = end == Surface.END_1 ? part.min(0) : part.max(0);
            sides.add(new CutSide(null, 0, at, end.sign(), Set.copyOf(Surface.LONG), part.with(0, at, at)));
        }
    }

    /** The middles of holes, on the surface that these are bored into. */
    private void centres(Cut cut) {
        for (int axis = 0; axis < 3; axis++) {
            TreeSet<Double> done = new TreeSet<>();
            for (Box hole : cut.boxes()) {
                Surface opens = opening(hole);
                double middle = (hole.min(axis) + hole.max(axis)) / 2;
                boolean known = done.stream().anyMatch(d -> Math.abs(d - middle) <= FLAT);
                if (opens.axis() == axis || known) continue;
                done.add(middle);
                sides.add(new CutSide(cut.joint(), axis, middle, 0, Set.of(opens), hole.with(axis, middle, middle)));
            }
        }
    }

    private Surface opening(Box hole) {
        for (Surface s : Surface.values()) {
            if (reaches(hole, s)) return s;
        }
        throw new IllegalStateException("a hole is bored from a surface");
    }

    private boolean reaches(Box box, Surface surface) {
        int axis = surface.axis();
        return surface.sign() > 0 ? part.max(axis) - box.max(axis) <= FLAT : box.min(axis) - part.min(axis) <= FLAT;
    }

    private void sides(Cut cut) {
        Cells cells = new Cells(cut.boxes());
        for (int axis = 0; axis < 3; axis++) {
            for (int i = 0; i < cells.at[axis].length; i++) {
                double at = cells.at[axis][i];
                if (at - part.min(axis) <= FLAT || part.max(axis) - at <= FLAT) continue;
                for (int waste : new int[] {+1, -1}) {
                    CutSide side = side(cut.joint(), cells, axis, i, waste);
                    if (side != null && !side.shows().isEmpty()) sides.add(side);
                }
            }
        }
    }

    /** The side in a plane that has the waste on this side of it and wood on the other; null where there is none. */
    private @Nullable CutSide side(String joint, Cells cells, int axis, int plane, int waste) {
        List<Box> bits = new ArrayList<>();
        for (Box cell : cells.full) {
            double face = waste > 0 ? cell.min(axis) : cell.max(axis);
            if (Math.abs(face - cells.at[axis][plane]) > FLAT) continue;
            double beyond = waste > 0 ? face - 2 * FLAT : face + 2 * FLAT;
            Box next = cell.with(axis, Math.min(face, beyond), Math.max(face, beyond));
            if (cells.full.stream().noneMatch(c -> c.contains(next.centre(), 0))) bits.add(cell.with(axis, face, face));
        }
        if (bits.isEmpty()) return null;
        Set<Surface> shows = EnumSet.noneOf(Surface.class);
        Box around = bits.get(0);
        for (Box bit : bits) {
            around = new Box(
                    around.min().min(bit.min(), new org.joml.Vector3d()),
                    around.max().max(bit.max(), new org.joml.Vector3d()));
            for (Surface s : Surface.values()) {
                if (s.axis() != axis && reaches(bit, s)) shows.add(s);
            }
        }
        return new CutSide(joint, axis, cells.at[axis][plane], waste, shows, around);
    }

    /** The boxes of a cut split along one another's sides, so that each cell is either all cut or not at all. */
    private static final class Cells {
        private final double[][] at = new double[3][];
        private final List<Box> full = new ArrayList<>();

        Cells(List<Box> boxes) {
            for (int axis = 0; axis < 3; axis++) at[axis] = places(boxes, axis);
            List<Box> split = boxes;
            for (int axis = 0; axis < 3; axis++) split = split(split, axis);
            full.addAll(split);
        }

        private List<Box> split(List<Box> boxes, int axis) {
            List<Box> out = new ArrayList<>();
            for (Box box : boxes) {
                double from = box.min(axis);
                for (double to : at[axis]) {
                    if (to <= from + FLAT || to > box.max(axis) + FLAT) continue;
                    out.add(box.with(axis, from, to));
                    from = to;
                }
            }
            return out;
        }

        private static double[] places(List<Box> boxes, int axis) {
            List<Double> out = new ArrayList<>();
            boxes.stream()
                    .flatMap(b -> List.of(b.min(axis), b.max(axis)).stream())
                    .sorted()
                    .forEach(d -> {
                        if (out.isEmpty() || d - out.get(out.size() - 1) > FLAT) out.add(d);
                    });
            return out.stream().mapToDouble(Double::doubleValue).toArray();
        }
    }
}
