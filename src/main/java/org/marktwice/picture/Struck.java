package org.marktwice.picture;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import org.marktwice.bench.Action;
import org.marktwice.bench.BoardState;
import org.marktwice.bench.Marker;
import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;

/** Something struck on a board, at its place. */
public sealed interface Struck {
    /** The action that made it. */
    int step();

    Surface on();

    /** A straight line across or along a surface. */
    record Line(int step, SurfacePoint from, SurfacePoint to, Marker with) implements Struck {
        @Override
        public Surface on() {
            return from.surface();
        }
    }

    /** Waste shaded on a surface, a rectangle between two lines. */
    record Waste(int step, SurfacePoint from, SurfacePoint to) implements Struck {
        @Override
        public Surface on() {
            return from.surface();
        }
    }

    /**
     * What is struck on a board, drawn where it would fall on true stock.
     *
     * @param mate the thickness in millimetres of another board by its id, for lines struck from a mate
     */
    static List<Struck> on(BoardState state, ToDoubleFunction<String> mate) {
        Board board = state.board();
        List<Struck> out = new ArrayList<>();
        Map<Integer, Place> places = new HashMap<>();
        for (BoardState.Done<? extends Action.OnBoard> done : state.struck()) {
            Action.OnBoard action = done.action();
            if (action instanceof Action.Line line) {
                Place place = place(line, board, places, mate);
                places.put(done.step(), place);
                out.add(across(done.step(), place, board, line.with()));
            } else if (action instanceof Action.Gauge gauge) {
                out.add(along(done.step(), gauge, board));
            } else if (action instanceof Action.Waste waste) {
                Place a = places.get(waste.between());
                Place b = places.get(waste.and());
                if (a != null && b != null) out.add(between(done.step(), a, b, board));
            }
        }
        return List.copyOf(out);
    }

    /** A line's place along the grain, and which way its distances run: +1 from end-1, −1 from end-2. */
    record Place(Surface on, double x, int runs) {}

    private static Place place(
            Action.Line line, Board board, Map<Integer, Place> places, ToDoubleFunction<String> mate) {
        double by = distance(line.at(), line.mate(), mate);
        if (line.from() instanceof Action.Datum.End end) {
            boolean one = end.end() == Surface.END_1;
            return new Place(line.on(), one ? by : board.size().length() - by, one ? 1 : -1);
        }
        int step = ((Action.Datum.Step) line.from()).step();
        Place from = places.getOrDefault(step, new Place(line.on(), 0, 1));
        return new Place(line.on(), from.x() + from.runs() * by, from.runs());
    }

    private static double distance(@Nullable Double at, @Nullable String mate, ToDoubleFunction<String> thickness) {
        if (at != null) return at;
        return mate == null ? 0 : thickness.applyAsDouble(mate);
    }

    private static Line across(int step, Place place, Board board, Marker with) {
        double far = board.vExtent(place.on());
        return new Line(
                step, new SurfacePoint(place.on(), place.x(), 0), new SurfacePoint(place.on(), place.x(), far), with);
    }

    private static Line along(int step, Action.Gauge gauge, Board board) {
        Surface on = gauge.on();
        boolean overU = gauge.fence().axis() == on.uAxis();
        double extent = overU ? board.uExtent(on) : board.vExtent(on);
        double at = gauge.fence().sign() > 0 ? extent - gauge.set() : gauge.set();
        SurfacePoint from = overU ? new SurfacePoint(on, at, 0) : new SurfacePoint(on, 0, at);
        SurfacePoint to =
                overU ? new SurfacePoint(on, at, board.vExtent(on)) : new SurfacePoint(on, board.uExtent(on), at);
        return new Line(step, from, to, Marker.KNIFE);
    }

    private static Waste between(int step, Place a, Place b, Board board) {
        return new Waste(
                step,
                new SurfacePoint(a.on(), Math.min(a.x(), b.x()), 0),
                new SurfacePoint(a.on(), Math.max(a.x(), b.x()), board.vExtent(a.on())));
    }
}
