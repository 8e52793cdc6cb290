package org.marktwice.fit;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Drawing;
import org.marktwice.drawing.JobAxis;
import org.marktwice.drawing.Joint;
import org.marktwice.drawing.Part;
import org.marktwice.fit.ToleranceStack.Link;

/**
 * Finds the sizes that add up to an overall size: from a part that bounds the job on the low side, from seat to seat, to
 * one that bounds it on the high side, by as few parts as may be. Each size counts from where it is measured: lengths
 * from the part's low end, widths and thicknesses from its reference surface.
 */
final class Chain {
    private static final double FLAT = 1e-6;

    private final Drawing drawing;
    private final int axis;
    private final Tolerances tolerances;

    /** A place of a part along the axis, and how it was reached. */
    private record Node(Part part, double at) {}

    private Chain(Drawing drawing, JobAxis axis, Tolerances tolerances) {
        this.drawing = drawing;
        this.axis = axis.ordinal();
        this.tolerances = tolerances;
    }

    /** Empty where no chain of parts that bear on each other leads through the job. */
    static Optional<ToleranceStack> of(Drawing drawing, JobAxis axis, Tolerances tolerances) {
        return new Chain(drawing, axis, tolerances).found().map(ToleranceStack::new);
    }

    private Optional<List<Link>> found() {
        double low = drawing.box().min(axis);
        double high = drawing.box().max(axis);
        Map<Node, List<Link>> reached = new HashMap<>();
        Deque<Node> next = new ArrayDeque<>();
        for (Part part : drawing.parts()) {
            if (Math.abs(part.box().min(axis) - low) > FLAT) continue;
            Node start = new Node(part, low);
            reached.put(start, List.of());
            next.add(start);
        }
        List<Link> best = null;
        while (!next.isEmpty()) {
            Node node = next.poll();
            List<Link> so = reached.getOrDefault(node, List.of());
            if (Math.abs(node.part().box().max(axis) - high) <= FLAT) {
                List<Link> whole = and(so, between(node.part(), node.at(), high));
                if (best == null || whole.size() < best.size()) best = whole;
            }
            for (Seat seat : seats(node.part())) step(node, seat, so, reached, next);
        }
        return Optional.ofNullable(best);
    }

    private void step(Node node, Seat seat, List<Link> so, Map<Node, List<Link>> reached, Deque<Node> next) {
        String other = seat.joint().in().equals(node.part().id())
                ? seat.joint().takes()
                : seat.joint().in();
        Node there = new Node(drawing.part(other).orElseThrow(), seat.at());
        if (reached.containsKey(there)) return;
        reached.put(there, and(so, between(node.part(), node.at(), seat.at())));
        next.add(there);
    }

    private List<Seat> seats(Part part) {
        List<Seat> seats = new ArrayList<>();
        for (Joint joint : drawing.joints(part)) {
            for (Seat seat : Seats.of(drawing, joint)) {
                if (seat.axis() == axis && seat.kind() == Seat.Kind.TOUCHES) seats.add(seat);
            }
        }
        return seats;
    }

    private static List<Link> and(List<Link> some, List<Link> more) {
        List<Link> all = new ArrayList<>(some);
        all.addAll(more);
        return List.copyOf(all);
    }

    /** The sizes made on a part from one place to another. */
    private List<Link> between(Part part, double from, double to) {
        if (Math.abs(to - from) <= FLAT) return List.of();
        double datum = datum(part);
        List<Link> links = new ArrayList<>();
        if (Math.abs(from - datum) > FLAT) links.add(link(part, from, datum, from < datum ? +1 : -1));
        if (Math.abs(to - datum) > FLAT) links.add(link(part, to, datum, to > datum ? +1 : -1));
        return links;
    }

    private Link link(Part part, double at, double datum, int sign) {
        double size = Math.abs(at - datum);
        boolean whole = Math.abs(size - part.box().extent(axis)) <= FLAT;
        boolean along = part.length().ordinal() == axis;
        Link.Of of = along
                ? (whole ? Link.Of.LENGTH : Link.Of.SHOULDER)
                : !whole ? Link.Of.GAUGED : part.width().ordinal() == axis ? Link.Of.WIDTH : Link.Of.THICKNESS;
        return new Link(part.id(), of, size, tolerances.plusMinus(size), sign);
    }

    /** Where sizes of the part are measured from. */
    private double datum(Part part) {
        for (List<Direction> marks : List.of(part.faceSide(), part.faceEdge())) {
            for (Direction d : marks) {
                if (d.axis() == axis)
                    return d.sign() > 0 ? part.box().max(axis) : part.box().min(axis);
            }
        }
        return part.box().min(axis);
    }
}
