package org.marktwice.view.bench;

import java.util.List;
import org.marktwice.bench.BoardState;
import org.marktwice.drawing.Cut;
import org.marktwice.fit.TrueLine;
import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;

/** Moving about a board by keys, as it lies unrolled: its long surfaces below each other, the ends at either side. */
final class Caret {
    private Caret() {}

    static SurfacePoint middle(Board board, Surface surface) {
        return new SurfacePoint(surface, board.uExtent(surface) / 2, board.vExtent(surface) / 2);
    }

    /** The surface that lies this way of another on the unrolled board. */
    static Surface towards(Surface from, ToolKey.Stroke way) {
        if (from.isEnd()) {
            boolean inwards = (from == Surface.END_1) == (way == ToolKey.Stroke.RIGHT);
            return isSideways(way) && inwards ? Surface.FACE_1 : from;
        }
        List<Surface> strip = Surface.LONG;
        int at = strip.indexOf(from);
        return switch (way) {
            case UP -> strip.get((at + 3) % 4);
            case DOWN -> strip.get((at + 1) % 4);
            case LEFT -> Surface.END_1;
            case RIGHT -> Surface.END_2;
            default -> from;
        };
    }

    private static boolean isSideways(ToolKey.Stroke way) {
        return way == ToolKey.Stroke.LEFT || way == ToolKey.Stroke.RIGHT;
    }

    /** The surface across the arris that lies this way of a surface on the unrolled board. */
    static Surface across(Surface on, ToolKey.Stroke way) {
        if (!on.isEnd()) return towards(on, way);
        return switch (way) {
            case UP -> Surface.FACE_1;
            case DOWN -> Surface.FACE_2;
            case LEFT -> on == Surface.END_1 ? Surface.EDGE_2 : Surface.EDGE_1;
            default -> on == Surface.END_1 ? Surface.EDGE_1 : Surface.EDGE_2;
        };
    }

    /** Moved by so many millimetres to the right and downwards on the unrolled board; over a long arris onto the next surface. */
    static SurfacePoint moved(Board board, SurfacePoint from, double right, double down) {
        Surface on = from.surface();
        if (on.isEnd()) {
            double u = from.u() + (on == Surface.END_1 ? -right : right);
            return within(board, new SurfacePoint(on, u, from.v() - down));
        }
        double depth = depth(board, from) + down;
        Surface surface = on;
        if (depth < 0) {
            surface = towards(on, ToolKey.Stroke.UP);
            depth += board.vExtent(surface);
        } else if (depth > board.vExtent(on)) {
            depth -= board.vExtent(on);
            surface = towards(on, ToolKey.Stroke.DOWN);
        }
        double v = downwards(surface) ? depth : board.vExtent(surface) - depth;
        return within(board, new SurfacePoint(surface, from.u() + right, v));
    }

    /** How far below the upper arris of its surface a point lies on the unrolled board. */
    private static double depth(Board board, SurfacePoint at) {
        return downwards(at.surface()) ? at.v() : board.vExtent(at.surface()) - at.v();
    }

    /** Whether the surface's second coordinate runs downwards on the unrolled board. */
    private static boolean downwards(Surface surface) {
        return surface == Surface.FACE_2 || surface == Surface.EDGE_2;
    }

    /** The nearest point that lies on the board. */
    static SurfacePoint within(Board board, SurfacePoint at) {
        double u = Math.max(0, Math.min(board.uExtent(at.surface()), at.u()));
        double v = Math.max(0, Math.min(board.vExtent(at.surface()), at.v()));
        return new SurfacePoint(at.surface(), u, v);
    }

    /** The next thing worth measuring from on the same surface, going round. */
    static Snap next(BoardState state, SurfacePoint from, List<Cut> shownCuts, List<TrueLine> lines, boolean forwards) {
        List<Snap> stops = new Snapper(state, from.surface(), shownCuts, lines).stops();
        Snap first = forwards ? stops.get(0) : stops.get(stops.size() - 1);
        for (int i = 0; i < stops.size(); i++) {
            Snap stop = forwards ? stops.get(i) : stops.get(stops.size() - 1 - i);
            if (forwards == isAfter(stop.point(), from) && !same(stop.point(), from)) return stop;
        }
        return first;
    }

    private static boolean isAfter(SurfacePoint a, SurfacePoint b) {
        return a.u() != b.u() ? a.u() > b.u() : a.v() > b.v();
    }

    private static boolean same(SurfacePoint a, SurfacePoint b) {
        return a.u() == b.u() && a.v() == b.v();
    }
}
