package org.marktwice.view.bench;

import java.util.Locale;
import java.util.OptionalDouble;
import org.marktwice.bench.Action;
import org.marktwice.bench.BoardState;
import org.marktwice.bench.ToolReading;
import org.marktwice.timber.Board;
import org.marktwice.timber.Pith;
import org.marktwice.timber.Seasoned;
import org.marktwice.timber.Surface;

/** What the measuring tools read, in words. */
public final class Reading {
    private Reading() {}

    /** To the nearest half millimetre. */
    public static double toHalf(double mm) {
        return Math.round(mm * 2) / 2.0;
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
        return "rule, " + on + ": " + mm(ToolReading.of(measure.from(), measure.to()));
    }

    /** What a tool reads where it was laid. */
    public static String of(BoardState state, Action.Test test) {
        return switch (test.with()) {
            case STRAIGHT_EDGE -> straightEdge(state, test);
            case WINDING_STICKS -> "winding sticks on " + test.on().spoken() + ": " + wind(value(state, test));
            case TRY_SQUARE -> trySquare(state, test);
            case END_GRAIN -> "end grain of " + test.on().spoken() + ": " + pith(state.board());
        };
    }

    /** What stands beside the tool where it lies: {@code hollow 0.6 mm}. */
    static String inShort(BoardState state, Action.Test test) {
        double reads = value(state, test);
        return switch (test.with()) {
            case STRAIGHT_EDGE -> {
                if (ToolReading.of(state, test).isEmpty()) yield "boxed heart";
                yield reads == 0 ? "no light" : (reads > 0 ? "hollow " : "rounded ") + mm(Math.abs(reads));
            }
            case WINDING_STICKS -> reads == 0 ? "no wind" : mm(Math.abs(reads)) + (reads > 0 ? " up" : " down");
            case TRY_SQUARE ->
                reads == 0 ? "no light" : mm(Math.abs(reads)) + (reads > 0 ? " at the heel" : " at the toe");
            case END_GRAIN -> "pith";
        };
    }

    private static double value(BoardState state, Action.Test test) {
        return ToolReading.of(state, test).orElse(0);
    }

    private static String straightEdge(BoardState state, Action.Test test) {
        Surface on = test.on();
        Double at = test.at();
        double over = at == null ? state.board().uExtent(on) : state.board().vExtent(on);
        String where = at == null ? " along " + on.spoken() : " across " + on.spoken() + " at " + mm(at);
        OptionalDouble gap = ToolReading.of(state, test);
        return "straight-edge" + where + ": "
                + (gap.isPresent() ? gap(gap.getAsDouble(), over) : "boxed heart, expect a check");
    }

    private static String gap(double gap, double over) {
        if (gap == 0) return "no light under it";
        String shape = gap > 0 ? "hollow " : "rounded ";
        return shape + mm(Math.abs(gap)) + " (1 in " + Math.round(over / Math.abs(gap)) + ")";
    }

    /** {@code the far corner is 0.8 mm up}. */
    static String wind(double rise) {
        return rise == 0 ? "no wind" : "the far corner is " + mm(Math.abs(rise)) + (rise > 0 ? " up" : " down");
    }

    private static String trySquare(BoardState state, Action.Test test) {
        Surface stock = ToolReading.stock(state, test);
        String lead = "try-square, " + spoken(state, stock) + " to " + test.on().spoken() + ": ";
        return lead + square(value(state, test), ToolReading.blade(state.board(), stock, test.on()));
    }

    /** {@code light at the heel, 0.2 mm over 18 mm}. */
    static String square(double gap, double over) {
        if (gap == 0) return "square, no light";
        return "light at the " + (gap > 0 ? "heel" : "toe") + ", " + mm(Math.abs(gap)) + " over " + mm(over);
    }

    /** {@code pith about 40 mm beyond face 2, 50 mm from edge 1; face 1 is the bark side}. */
    static String pith(Board board) {
        if (board.pith().isEmpty()) return "no pith: sheet stuff";
        Pith pith = board.pith().get();
        double past = beyond(pith.z(), board.size().thickness());
        String across = about(pith.y(), board.size().width());
        if (past == 0 && across.contains(" from ")) {
            return "the pith is in the board, " + mm(ToolReading.byEye(pith.z())) + " from face 2, " + across
                    + ": boxed heart, expect a check";
        }
        String deep = past == 0
                ? "level with the board"
                : "about " + mm(ToolReading.byEye(past)) + " beyond " + (pith.z() < 0 ? "face 2" : "face 1");
        String bark = Seasoned.barkSide(board)
                .map(s -> s.spoken() + " is the bark side")
                .orElse("neither face is the bark side");
        return "pith " + deep + ", " + across + "; " + bark;
    }

    private static double beyond(double at, double extent) {
        return Math.max(0, Math.max(-at, at - extent));
    }

    private static String about(double y, double width) {
        if (y < 0) return mm(ToolReading.byEye(-y)) + " beyond edge 1";
        if (y > width) return mm(ToolReading.byEye(y - width)) + " beyond edge 2";
        return mm(ToolReading.byEye(y)) + " from edge 1";
    }

    private static String spoken(BoardState state, Surface surface) {
        boolean faceSide = state.faceSide().filter(m -> m.on() == surface).isPresent();
        return faceSide ? "face side" : surface.spoken();
    }
}
