package org.marktwice.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.joml.Vector3d;
import org.marktwice.drawing.Cut;
import org.marktwice.drawing.Drawing;
import org.marktwice.drawing.Joint;
import org.marktwice.drawing.Part;
import org.marktwice.timber.Box;

/**
 * Finds where a joint's two parts bear on each other. Space is split along all sides of both parts and of what is cut out
 * of them; wherever a cell of the one part's wood lies beside a cell of the other's, they bear.
 */
final class Seats {
    private static final double FLAT = 1e-6;

    private final Joint joint;
    private final Wood in;
    private final Wood takes;
    private final double[][] at = new double[3][];

    /** A part's box and what this joint takes out of it. */
    private record Wood(Box box, List<Box> gone) {
        boolean has(Vector3d point) {
            return box.contains(point, 0) && gone.stream().noneMatch(b -> b.contains(point, 0));
        }
    }

    private Seats(Joint joint, Wood in, Wood takes) {
        this.joint = joint;
        this.in = in;
        this.takes = takes;
        for (int axis = 0; axis < 3; axis++) at[axis] = places(axis);
    }

    /** By axis, from low to high. */
    static List<Seat> of(Drawing drawing, Joint joint) {
        Part in = drawing.part(joint.in()).orElseThrow();
        Part takes = drawing.part(joint.takes()).orElseThrow();
        List<Seat> all =
                new ArrayList<>(new Seats(joint, wood(drawing, joint, in), wood(drawing, joint, takes)).found());
        if (joint instanceof Joint.Dowelled) all.addAll(pegs(drawing, joint, in));
        return all;
    }

    private static Wood wood(Drawing drawing, Joint joint, Part part) {
        // the holes of dowels are no bearing surfaces
        return new Wood(part.box(), joint instanceof Joint.Dowelled ? List.of() : cut(drawing, joint, part));
    }

    private static List<Box> cut(Drawing drawing, Joint joint, Part part) {
        return drawing.cuts(part).stream()
                .filter(c -> c.joint().equals(joint.id()))
                .map(Cut::boxes)
                .flatMap(List::stream)
                .toList();
    }

    /** Dowels hold along both axes square to them. */
    private static List<Seat> pegs(Drawing drawing, Joint joint, Part in) {
        List<Seat> pegs = new ArrayList<>();
        for (Box hole : cut(drawing, joint, in)) {
            for (int axis = 0; axis < 3; axis++) {
                double middle = (hole.min(axis) + hole.max(axis)) / 2;
                if (!entersAlong(hole, in.box(), axis))
                    pegs.add(new Seat(joint, Seat.Kind.PEGGED, axis, true, hole.with(axis, middle, middle)));
            }
        }
        return pegs;
    }

    private static boolean entersAlong(Box hole, Box part, int axis) {
        return Math.abs(hole.min(axis) - part.min(axis)) < FLAT || Math.abs(part.max(axis) - hole.max(axis)) < FLAT;
    }

    private List<Seat> found() {
        Map<String, Seat> found = new TreeMap<>();
        int[] cells = {at[0].length - 1, at[1].length - 1, at[2].length - 1};
        for (int axis = 0; axis < 3; axis++) {
            for (int i = 0; i < cells[0]; i++) {
                for (int j = 0; j < cells[1]; j++) {
                    for (int k = 0; k < cells[2]; k++) {
                        Box cell = cell(i, j, k);
                        int which = new int[] {i, j, k}[axis];
                        if (which + 1 < cells[axis]) seat(axis, which, cell).ifPresent(s -> join(found, s));
                    }
                }
            }
        }
        return List.copyOf(found.values());
    }

    private Box cell(int i, int j, int k) {
        return Box.of(at[0][i], at[1][j], at[2][k], at[0][i + 1], at[1][j + 1], at[2][k + 1]);
    }

    /** The seat between a cell and the next one along an axis; empty where the two parts don't meet there. */
    private Optional<Seat> seat(int axis, int which, Box cell) {
        Vector3d low = new Vector3d(cell.centre());
        double beyond = (at[axis][which + 1] + at[axis][which + 2]) / 2;
        Vector3d high = new Vector3d(low).setComponent(axis, beyond);
        boolean inBelow = in.has(low) && takes.has(high);
        boolean inAbove = takes.has(low) && in.has(high);
        if (inBelow == inAbove) return Optional.empty();
        double plane = at[axis][which + 1];
        return Optional.of(new Seat(joint, Seat.Kind.TOUCHES, axis, inBelow, cell.with(axis, plane, plane)));
    }

    private void join(Map<String, Seat> found, Seat seat) {
        int plane = Arrays.binarySearch(at[seat.axis()], seat.at());
        String key = seat.axis() + " " + (char) ('0' + plane) + " " + seat.inBelow();
        found.merge(key, seat, (a, b) -> new Seat(joint, a.kind(), a.axis(), a.inBelow(), around(a.flat(), b.flat())));
    }

    private static Box around(Box a, Box b) {
        return new Box(a.min().min(b.min(), new Vector3d()), a.max().max(b.max(), new Vector3d()));
    }

    private double[] places(int axis) {
        List<Double> all = new ArrayList<>();
        for (Wood wood : List.of(in, takes)) {
            all.add(wood.box().min(axis));
            all.add(wood.box().max(axis));
            for (Box gone : wood.gone()) {
                all.add(gone.min(axis));
                all.add(gone.max(axis));
            }
        }
        List<Double> out = new ArrayList<>();
        all.stream().sorted().forEach(d -> {
            if (out.isEmpty() || d - out.get(out.size() - 1) > FLAT) out.add(d);
        });
        return out.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
