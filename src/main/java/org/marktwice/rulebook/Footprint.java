package org.marktwice.rulebook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.marktwice.drawing.Placing;
import org.marktwice.timber.Board;
import org.marktwice.timber.Box;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;

/**
 * The room that a name takes on a surface, in the surface's own coordinates (millimetres).
 *
 * @param middle where it was written
 */
record Footprint(Board board, SurfacePoint middle, double u0, double u1, double v0, double v1) {
    /** A word in carpenter's pencil, along the grain and across: a design choice. */
    static final double LENGTH = 40;

    static final double HEIGHT = 15;

    /** How finely a better place is looked for, millimetres. */
    private static final double SEARCH_STEP = 5;

    /** More room than this around a name is no better, millimetres. */
    private static final double WELL_CLEAR = 20;

    /** On a surface too small for it a name is written smaller: what hangs over is cut off. */
    static Footprint of(Board board, SurfacePoint at) {
        Surface on = at.surface();
        return new Footprint(
                board,
                at,
                Math.max(0, at.u() - LENGTH / 2),
                Math.min(board.uExtent(on), at.u() + LENGTH / 2),
                Math.max(0, at.v() - HEIGHT / 2),
                Math.min(board.vExtent(on), at.v() + HEIGHT / 2));
    }

    /**
     * What would take the name off, or comes nearest to doing so.
     *
     * @param joint the joint whose cut it is; empty for what is trimmed off
     * @param gap between the name and the wood lost, below 0 where they overlap
     * @param takesMiddle whether the middle of the name goes with it
     */
    record Loss(String joint, double gap, boolean takesMiddle) {
        boolean isClear() {
            return gap >= 0;
        }

        private boolean isWorseThan(Loss other) {
            return takesMiddle == other.takesMiddle ? Double.compare(gap, other.gap) < 0 : takesMiddle;
        }
    }

    /** A piece of wood that goes. @param joint empty for what is trimmed off */
    record Lost(String joint, Box box) {
        /** What is trimmed off this board and cut out of it, in its frame. */
        static List<Lost> from(Placing placing) {
            List<Lost> lost = new ArrayList<>();
            Box whole = placing.board().size().box();
            double length = whole.max(0);
            double off1 = placing.off(Surface.END_1);
            double off2 = placing.off(Surface.END_2);
            if (off1 > 0) lost.add(new Lost("", whole.with(0, 0, off1)));
            if (off2 > 0) lost.add(new Lost("", whole.with(0, length - off2, length)));
            placing.cuts().forEach(cut -> cut.boxes().forEach(box -> lost.add(new Lost(cut.joint(), box))));
            return lost;
        }
    }

    /** The most harmful loss; where nothing at all is lost the gap is the surface's length. */
    Loss nearest(List<Lost> lost) {
        Loss worst = null;
        for (Lost l : lost) {
            Loss loss = loss(l.joint(), l.box());
            if (loss != null && (worst == null || loss.isWorseThan(worst))) worst = loss;
        }
        return worst == null ? new Loss("", board.uExtent(middle.surface()), false) : worst;
    }

    /** Null where the wood lost does not come through to this surface. */
    private @Nullable Loss loss(String joint, Box box) {
        Surface on = middle.surface();
        double inside = on.sign() > 0 ? board.size().along(on.axis()) - box.max(on.axis()) : box.min(on.axis());
        if (inside > Board.SIZE_TOLERANCE) return null;
        double along = apart(u0, u1, box.min(on.uAxis()), box.max(on.uAxis()));
        double across = apart(v0, v1, box.min(on.vAxis()), box.max(on.vAxis()));
        boolean takesMiddle = apart(middle.u(), middle.u(), box.min(on.uAxis()), box.max(on.uAxis())) <= 0
                && apart(middle.v(), middle.v(), box.min(on.vAxis()), box.max(on.vAxis())) <= 0;
        return new Loss(joint, Math.max(along, across), takesMiddle);
    }

    /** The distance between two stretches; below 0 where they overlap. */
    private static double apart(double from, double to, double otherFrom, double otherTo) {
        return Math.max(otherFrom - to, from - otherTo);
    }

    /** The place on a long surface, on a face where that goes, that keeps well clear in all these placings, near mid-length. */
    static Optional<SurfacePoint> clearest(Board board, List<Placing> placings) {
        List<Lost> lost = placings.stream().flatMap(p -> Lost.from(p).stream()).toList();
        double middle = board.size().length() / 2;
        return Stream.of(Surface.values())
                .filter(s -> !s.isEnd())
                .flatMap(s -> places(board, s))
                .map(at -> new Place(at, of(board, at).nearest(lost).gap()))
                .filter(p -> p.gap() >= 0)
                .max(Comparator.comparing((Place p) -> p.at().surface().isFace())
                        .thenComparingDouble(p -> Math.min(p.gap(), WELL_CLEAR))
                        .thenComparingDouble(p -> -Math.abs(p.at().u() - middle)))
                .map(Place::at);
    }

    private record Place(SurfacePoint at, double gap) {}

    private static Stream<SurfacePoint> places(Board board, Surface on) {
        double room = board.size().length() - LENGTH;
        int steps = (int) Math.max(0, Math.floor(room / SEARCH_STEP));
        return Stream.iterate(0, i -> i + 1)
                .limit(steps + 1L)
                .map(i -> new SurfacePoint(on, LENGTH / 2 + i * SEARCH_STEP, board.vExtent(on) / 2));
    }
}
