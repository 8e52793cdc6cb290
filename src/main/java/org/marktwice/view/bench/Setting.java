package org.marktwice.view.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.marktwice.bench.Action;
import org.marktwice.bench.Action.Datum;
import org.marktwice.bench.BoardState;
import org.marktwice.bench.Mark;
import org.marktwice.fit.TrueLine;
import org.marktwice.picture.Rulers;
import org.marktwice.picture.SurfaceFrame;
import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;

/** What the tools that strike lines share: where stock and fence bear, and where distances begin. */
final class Setting {
    private Setting() {}

    /** Where the stock bears unless something else is said: the face edge for a line across a face, the face side across an edge. */
    static Surface usualStock(BoardState state, Surface on) {
        Optional<Surface> marked = (on.isFace() ? state.faceEdge() : state.faceSide())
                .map(Mark::on)
                .filter(on::adjoins);
        return marked.orElse(on.isFace() ? Surface.EDGE_1 : Surface.FACE_1);
    }

    /** Where the stock bears for a line on a surface: where it was laid, if it can bear there, else as usual. */
    static Surface stock(BoardState state, Surface on, @Nullable Surface laid) {
        return laid != null && laid.adjoins(on) ? laid : usualStock(state, on);
    }

    /** The long surfaces that a stock or a fence can bear on for a line on this one. */
    static List<Surface> beside(Surface on) {
        return Surface.LONG.stream().filter(on::adjoins).toList();
    }

    static Surface next(List<Surface> all, Surface now) {
        return all.get((all.indexOf(now) + 1) % all.size());
    }

    /** The lines squared across the board, along the grain. */
    static List<TrueLine> squared(List<TrueLine> lines) {
        return lines.stream()
                .filter(TrueLine::isSquared)
                .sorted((a, b) -> Double.compare(a.middle(), b.middle()))
                .toList();
    }

    /** What distances can run from on a board: its ends, and the lines squared across it, one of each place. */
    static List<Datum> datums(List<TrueLine> lines) {
        List<Datum> all = new ArrayList<>(List.of(new Datum.End(Surface.END_1), new Datum.End(Surface.END_2)));
        double last = Double.NEGATIVE_INFINITY;
        for (TrueLine line : squared(lines)) {
            if (line.middle() - last > 0.05) all.add(new Datum.Step(line.step()));
            last = line.middle();
        }
        return all;
    }

    /** Where a distance begins, along the grain, at the surface that the stock bears on. */
    static double place(Board board, Datum datum, List<TrueLine> lines, Surface stock) {
        if (datum instanceof Datum.End end)
            return end.end() == Surface.END_1 ? 0 : board.size().length();
        int step = ((Datum.Step) datum).step();
        return lines.stream()
                .filter(l -> l.step() == step)
                .findFirst()
                .map(l -> l.at(stock))
                .orElse(0.0);
    }

    /** Which way distances from it go on: +1 towards end 2. */
    static int away(BoardState state, Datum datum) {
        if (datum instanceof Datum.End end) return end.end() == Surface.END_1 ? 1 : -1;
        int step = ((Datum.Step) datum).step();
        return state.struck().stream()
                .filter(d -> d.step() == step && d.action() instanceof Action.Line)
                .findFirst()
                .map(d -> away(state, ((Action.Line) d.action()).from()))
                .orElse(1);
    }

    /** {@code end 2}, {@code the line 86 mm from end 1}. */
    static String words(BenchModel model, Datum datum) {
        if (datum instanceof Datum.End end) return end.end().spoken();
        int step = ((Datum.Step) datum).step();
        return model.lines().stream()
                .filter(l -> l.step() == step)
                .findFirst()
                .map(l -> "the line at " + Reading.mm(l.measured()))
                .orElse("a line that is gone");
    }

    /** Where the edge of a rule lies along the arris with the stock's surface, its steel on the board. */
    static SurfacePoint forRule(Board board, Surface on, Surface stock, double x) {
        SurfacePoint arris = atArris(board, on, stock, x);
        SurfaceFrame frame = SurfaceFrame.of(on, board);
        double middle = frame.toPage(new SurfacePoint(on, x, board.vExtent(on) / 2)).y;
        // the steel lies below its edge, as the surface is seen the right way up
        boolean below = frame.toPage(arris).y > middle;
        double deep = Math.min(Rulers.DEEP, board.vExtent(on));
        return below ? new SurfacePoint(on, x, arris.v() - stock.sign() * deep) : arris;
    }

    /** A place on a surface so far along the grain, across it where it meets a stock's surface. */
    static SurfacePoint atArris(Board board, Surface on, Surface stock, double x) {
        return new SurfacePoint(on, x, stock.sign() > 0 ? board.vExtent(on) : 0);
    }
}
