package org.marktwice.fit;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.marktwice.drawing.Joint;

/**
 * How a joint comes out, millimetres.
 *
 * @param state whether it can be put together at all
 * @param seats where its parts bear; empty unless it can be put together
 * @param in how the part was set out that it is cut into; null while there is no board for it
 * @param takes the same of the part that it takes
 */
public record JointFit(
        Joint joint,
        State state,
        List<SeatFit> seats,
        @Nullable Share in,
        @Nullable Share takes) {

    /** What a joint can come to. */
    public enum State {
        /** A part of it has no board yet that lies in the job. */
        NO_BOARD,
        /** Some of its lines have still to be struck. */
        NOT_SET_OUT,
        /** Its lines are on a surface on which the drawing has no cut: it would be cut on the wrong side. */
        WRONG_SIDE,
        /** It can be cut and put together; the figures say how well. */
        TOGETHER
    }

    /**
     * A seat as it comes out.
     *
     * @param tight how far the two parts are from each other where they come nearest; below 0 where they clash
     * @param wide the same where they are farthest apart
     * @param hidden whether it shows nowhere, as the bottom of a mortise, so that a gap there does no harm
     */
    public record SeatFit(Seat seat, double tight, double wide, boolean hidden) {}

    /**
     * A part's share in the joint as it was set out.
     *
     * @param off how far its shoulders lie from where the drawing has them, along the board; + towards end-2
     * @param missing how many of its sides have no line
     * @param misplaced how many of its sides have their line, or their shading, on a surface on which no cut comes out
     */
    public record Share(String board, double off, int missing, int misplaced) {}

    public JointFit {
        seats = List.copyOf(seats);
    }

    /** A gap that can be seen, and where. @param mm how wide it opens where it is widest */
    public record Gap(SeatFit at, double mm) {}

    /**
     * The widest gap that can be seen: where parts bear on both sides, as a shelf does in its housing, all the play is one
     * gap, since the part can be pushed to one side. Empty unless the joint can be put together.
     */
    public Optional<Gap> gap() {
        Gap widest = null;
        for (SeatFit s : seats) {
            if (s.hidden() || s.seat().kind() != Seat.Kind.TOUCHES) continue;
            double mm = Math.max(0, s.wide()) + play(s);
            if (widest == null || mm > widest.mm()) widest = new Gap(s, mm);
        }
        return Optional.ofNullable(widest);
    }

    /** What the opposite side of the same part adds. */
    private double play(SeatFit seat) {
        double least = Double.POSITIVE_INFINITY;
        for (SeatFit s : seats) {
            boolean opposite = s.seat().kind() == Seat.Kind.TOUCHES
                    && !s.hidden()
                    && s.seat().axis() == seat.seat().axis()
                    && s.seat().inBelow() != seat.seat().inBelow();
            if (opposite) least = Math.min(least, Math.max(0, s.tight()));
        }
        return least == Double.POSITIVE_INFINITY ? 0 : least;
    }

    /** The deepest that wood would have to go into wood; 0 where nothing clashes. */
    public double clash() {
        double deepest = 0;
        for (SeatFit s : seats) deepest = Math.max(deepest, -s.tight());
        return deepest;
    }

    /**
     * What of the clash is the joint's own: how deep wood would have to go into wood if nothing but this joint held its two
     * parts, so that each could be shifted to the middle of its play. 0 where there is room enough, and other joints force
     * the parts into each other.
     */
    public double ownClash() {
        return Math.max(0, seats.stream().mapToDouble(this::shifted).max().orElse(0));
    }

    /** How deep a seat clashes with its part in the middle between this seat and the one that bears the other way. */
    private double shifted(SeatFit seat) {
        return seats.stream()
                .filter(s -> s.seat().axis() == seat.seat().axis()
                        && s.seat().kind() == seat.seat().kind()
                        && s.seat().inBelow() != seat.seat().inBelow())
                .mapToDouble(s -> -(seat.tight() + s.tight()) / 2)
                .max()
                .orElse(-seat.tight());
    }

    /** How far the share that is farther out lies from where the drawing has it; empty while a part has no board. */
    public OptionalDouble off() {
        if (in == null || takes == null) return OptionalDouble.empty();
        return OptionalDouble.of(Math.abs(in.off()) >= Math.abs(takes.off()) ? in.off() : takes.off());
    }
}
