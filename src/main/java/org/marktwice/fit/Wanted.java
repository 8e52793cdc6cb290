package org.marktwice.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.marktwice.bench.Kept;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Placing;
import org.marktwice.timber.Box;

/**
 * What the drawing wants of a board that lies so, whatever lines are struck: the sides that have to be marked, and where it
 * bears in each seat of its joints. Safe for several threads.
 */
final class Wanted {
    private static final double FLAT = 1e-6;

    private final Placing placing;
    private final List<CutSide> sides;
    private final List<List<CutSide>> like;
    private final List<String> joints;
    private final Kept<Bears, Bearing> bearings = new Kept<>();

    private record Bears(Seat seat, boolean below) {
        @Override
        public boolean equals(@Nullable Object other) {
            // seats are found once for a drawing, so that the same one is the very same
            return other instanceof Bears b && seat == b.seat && below == b.below;
        }

        @Override
        public int hashCode() {
            return System.identityHashCode(seat) * 2 + (below ? 1 : 0);
        }
    }

    /**
     * Where a part bears in a seat.
     *
     * @param own the direction in which its own surface looks that bears here; empty where it is the side of a cut
     * @param flat the seat in the board's frame
     * @param axis the board axis square to it
     * @param at its middle along that axis
     * @param outwards which way along that axis the wood ends here: +1 towards greater coordinates
     */
    record Bearing(Optional<Direction> own, Box flat, int axis, double at, int outwards) {
        /** The side of the joint's cut that lies here. */
        boolean isAt(CutSide side) {
            return side.axis() == axis
                    && Math.abs(side.at() - at) < FLAT
                    && (side.waste() == outwards || side.waste() == 0);
        }
    }

    Wanted(Placing placing) {
        this.placing = placing;
        this.sides = CutSides.of(placing);
        this.like = sides.stream().map(this::like).toList();
        this.joints = sides.stream()
                .map(CutSide::joint)
                .filter(Objects::nonNull)
                .distinct()
                .toList();
    }

    /** The sides of the same joint along the same axis, from low to high. */
    private List<CutSide> like(CutSide side) {
        List<CutSide> same = new ArrayList<>();
        for (CutSide s : sides) {
            if (s.axis() == side.axis() && Objects.equals(side.joint(), s.joint())) same.add(s);
        }
        same.sort(Comparator.comparingDouble(CutSide::at));
        return List.copyOf(same);
    }

    /** By joint in the drawing's order, along each axis from low to high; the board's ends come first. */
    List<CutSide> sides() {
        return sides;
    }

    /** The sides of the same joint along the same axis as this one of all sides, from low to high. */
    List<CutSide> like(int side) {
        return like.get(side);
    }

    /** The joints for which something has to be marked, in the drawing's order. */
    List<String> joints() {
        return joints;
    }

    /** @param below whether the part's wood lies on the lower side of the seat */
    Bearing bearing(Seat seat, boolean below) {
        return bearings.of(new Bears(seat, below), () -> bearingAfresh(seat, below));
    }

    private Bearing bearingAfresh(Seat seat, boolean below) {
        int axis = boardAxis(placing, seat.axis());
        int outwards = placing.turn().along(axis).sign() * (below ? +1 : -1);
        double at = placing.toBoard(seat.flat().centre()).get(axis);
        return new Bearing(own(seat, below), placing.toBoard(seat.flat()), axis, at, outwards);
    }

    private Optional<Direction> own(Seat seat, boolean below) {
        Box box = placing.part().box();
        double side = below ? box.max(seat.axis()) : box.min(seat.axis());
        return seat.kind() == Seat.Kind.TOUCHES && Math.abs(side - seat.at()) < FLAT
                ? Optional.of(Direction.on(seat.axis(), below ? +1 : -1))
                : Optional.empty();
    }

    /** The board axis that lies along an axis of the job. */
    static int boardAxis(Placing placing, int jobAxis) {
        for (int axis = 0; axis < 3; axis++) {
            if (placing.turn().along(axis).axis() == jobAxis) return axis;
        }
        throw new IllegalStateException("every axis of the job has one of the board");
    }
}
