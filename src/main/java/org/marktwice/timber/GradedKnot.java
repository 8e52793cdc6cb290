package org.marktwice.timber;

/**
 * A knot's trace in the words and the measure of those who grade timber.
 *
 * @param size the extent of the trace square to the board's length, millimetres
 */
public record GradedKnot(Trace trace, KnotKind kind, KnotPlace place, double size) {
    public static GradedKnot of(Board board, Trace trace) {
        // Across the board is the second coordinate of the long surfaces, and the first of the ends.
        double size = trace.surface().isEnd() ? trace.length() : trace.width();
        return new GradedKnot(trace, KnotKind.of(trace), KnotPlace.of(board, trace), size);
    }

    /** {@code live round face knot}. */
    public String spoken() {
        return (trace.live() ? "live " : "dead ") + kind.id() + " " + place.spoken();
    }
}
