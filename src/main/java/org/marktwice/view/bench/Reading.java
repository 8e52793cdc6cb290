package org.marktwice.view.bench;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.marktwice.bench.Action;
import org.marktwice.bench.BoardState;
import org.marktwice.bench.Mark;
import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;
import org.marktwice.timber.Trueness;

/** What the measuring tools read, in words. */
public final class Reading {
    /** Gaps below this can't be seen under a straight-edge, millimetres. */
    static final double SEEN = 0.05;

    /** Departures from square below this can't be seen at a try-square's blade, degrees. */
    static final double SEEN_ANGLE = 0.1;

    private Reading() {}

    /** A length as a steel rule is read: to the nearest half millimetre. */
    public static double toHalf(double mm) {
        return Math.round(mm * 2) / 2.0;
    }

    /** What the rule reads between two points of one surface, millimetres, to a half. */
    public static double rule(SurfacePoint from, SurfacePoint to) {
        return toHalf(Math.hypot(to.u() - from.u(), to.v() - from.v()));
    }

    /** A length in words, without a needless decimal: 86 mm, 15.5 mm. */
    public static String mm(double mm) {
        return number(mm) + " mm";
    }

    static String number(double mm) {
        double tenth = Math.round(mm * 10) / 10.0;
        return tenth == Math.rint(tenth)
                ? String.format(Locale.ROOT, "%.0f", tenth)
                : String.format(Locale.ROOT, "%.1f", tenth);
    }

    /** What a measurement came to. */
    public static String of(Action.Measure measure) {
        String on = measure.from().surface().spoken();
        return "rule, " + on + ": " + mm(rule(measure.from(), measure.to()));
    }

    /** What a tool reads where it was laid. */
    public static String of(BoardState state, Action.Test test) {
        return switch (test.with()) {
            case STRAIGHT_EDGE -> straightEdge(state.board(), test);
            case WINDING_STICKS -> windingSticks(state.board(), test.on());
            case TRY_SQUARE -> trySquare(state, test.on());
        };
    }

    private static String straightEdge(Board board, Action.Test test) {
        Surface on = test.on();
        Double at = test.at();
        if (at == null) {
            return "straight-edge along " + on.spoken() + ": "
                    + gap(Trueness.along(board, on), board.size().length());
        }
        OptionalDouble across = Trueness.across(board, on, at);
        String where = "straight-edge across " + on.spoken() + " at " + mm(at) + ": ";
        return where
                + (across.isPresent() ? gap(across.getAsDouble(), board.vExtent(on)) : "boxed heart, expect a check");
    }

    private static String gap(double gap, double over) {
        if (Math.abs(gap) < SEEN) return "no light under it";
        String shape = gap > 0 ? "hollow " : "rounded ";
        return shape + mm(Math.abs(gap)) + " (1 in " + Math.round(over / Math.abs(gap)) + ")";
    }

    private static String windingSticks(Board board, Surface on) {
        double wind = Trueness.wind(board, on);
        String lead = "winding sticks on " + on.spoken() + ": ";
        return lead + (Math.abs(wind) < SEEN ? "no wind" : "in wind by " + mm(Math.abs(wind)));
    }

    private static String trySquare(BoardState state, Surface on) {
        Surface stock = stockFor(state, on);
        double off = Trueness.square(state.board(), stock, on);
        String lead = "try-square, " + spoken(state, stock) + " to " + on.spoken() + ": ";
        if (Math.abs(off) < SEEN_ANGLE) return lead + "square";
        return lead + String.format(Locale.ROOT, "%.1f° %s than square", Math.abs(off), off > 0 ? "wider" : "narrower");
    }

    /** Where the square's stock bears to try a surface: the face side where it is marked and adjoins, else a face, else an edge. */
    static Surface stockFor(BoardState state, Surface on) {
        Optional<Surface> faceSide = state.faceSide().map(Mark::on).filter(on::adjoins);
        return faceSide.orElse(on.isFace() ? Surface.EDGE_1 : Surface.FACE_1);
    }

    private static String spoken(BoardState state, Surface surface) {
        boolean faceSide = state.faceSide().filter(m -> m.on() == surface).isPresent();
        return faceSide ? "face side" : surface.spoken();
    }
}
