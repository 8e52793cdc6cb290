package org.marktwice.timber;

import java.util.Optional;

/**
 * The class of a surface of joinery timber by its largest knot: EN 942:2007, limits from memory. A knot is measured square
 * to the board's length, and must be no larger than the class's limit in millimetres nor than the class's share of the
 * surface's width. Only sizes of knots are looked at: how many there are, dead knots, shakes and pockets are left out, and so
 * is the finest class, which bears next to no knots.
 */
public enum JoineryClass {
    J10(10, 30),
    J20(20, 30),
    J30(30, 30),
    J40(40, 40),
    J50(50, 50);

    /** Sizes are compared with this much slack, in millimetres: a knot's outline is known no better. */
    private static final double SLACK = 0.01;

    private final double largest;
    private final double percent;

    JoineryClass(double largest, double percent) {
        this.largest = largest;
        this.percent = percent;
    }

    /** The largest knot that a surface of this width may show, millimetres. */
    public double limit(double width) {
        return Math.min(largest, width * percent / 100);
    }

    /** The best class of a surface with a largest knot of this size on this width, in millimetres; empty where no class is met. */
    public static Optional<JoineryClass> of(double knot, double width) {
        for (JoineryClass one : values()) if (knot <= one.limit(width) + SLACK) return Optional.of(one);
        return Optional.empty();
    }

    /** The class of a long surface; empty where its knots are larger than any class allows, on ends, and for sheet stuff. */
    public static Optional<JoineryClass> of(Board board, Surface surface) {
        if (board.isSheet() || surface.isEnd()) return Optional.empty();
        return of(largestKnot(board, surface), board.vExtent(surface));
    }

    /** The size of the largest knot on a long surface, square to the board's length, millimetres; 0 where there is none. */
    public static double largestKnot(Board board, Surface surface) {
        return board.traces(surface).stream()
                .mapToDouble(t -> GradedKnot.of(board, t).size())
                .max()
                .orElse(0);
    }
}
