package org.marktwice.fit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.marktwice.bench.Action;
import org.marktwice.bench.Bench;
import org.marktwice.bench.BoardState;
import org.marktwice.drawing.Part;
import org.marktwice.timber.Board;
import org.marktwice.timber.Size;
import org.marktwice.timber.Surface;

/**
 * Where the lines on a board really land. A line squared across lies square to the surface that the stock bears on, as it
 * runs there: from one that tapers, or is hollow along its length, it comes out of line. A gauge line keeps its distance
 * from the surface that the fence runs along. Distances run from the board's end as it is, or from an earlier line where
 * that one really lies.
 *
 * <p>The rule lies along the arris that the stock bears on, so that a line is exact there, and what it is out shows at the
 * other end of it. The stock points towards end-2; which way it points matters only to a square that is out itself.
 */
public final class TrueLines {
    private final Bench bench;
    private final Board board;
    private final Machined machined;
    private final Hand hand;
    private final Tools tools;
    private final Map<Integer, Placed> placed = new HashMap<>();
    private final Map<Integer, Action.OnBoard> own = new HashMap<>();
    private final List<TrueLine> standing;

    /** @param away which way distances from it go on: +1 towards end-2 */
    private record Placed(TrueLine line, int away) {}

    private TrueLines(Bench bench, BoardState state, Hand hand, Tools tools) {
        this.bench = bench;
        this.board = state.board();
        this.machined = new Machined(board);
        this.hand = hand;
        this.tools = tools;
        for (BoardState.Done<? extends Action.OnBoard> done : state.struck()) own.put(done.step(), done.action());
        List<TrueLine> all = new ArrayList<>();
        for (BoardState.Done<? extends Action.OnBoard> done : state.struck()) {
            TrueLine line = line(done.step());
            if (line != null) all.add(line);
        }
        this.standing = all;
    }

    /** The lines of a board as an exact hand struck them with true tools. */
    public static TrueLines of(Bench bench, BoardState state) {
        return of(bench, state, Hand.EXACT, Tools.TRUE);
    }

    public static TrueLines of(Bench bench, BoardState state, Hand hand, Tools tools) {
        return new TrueLines(bench, state, hand, tools);
    }

    /** The lines that are still on the board, oldest first. */
    public List<TrueLine> all() {
        return Collections.unmodifiableList(standing);
    }

    /** The line of this step, if it is still on the board. */
    public Optional<TrueLine> at(int step) {
        return standing.stream().filter(l -> l.step() == step).findFirst();
    }

    /** Where a line would land if it were struck now, as the next step. */
    public TrueLine trial(Action.Line line) {
        return squared(bench.steps() + 1, line).line();
    }

    /** Where a line at an angle would land if it were struck now, as the next step. */
    public TrueLine trial(Action.Bevel bevel) {
        return bevelled(bench.steps() + 1, bevel);
    }

    /** Where a gauge line would land if it were struck now, as the next step. */
    public TrueLine trial(Action.Gauge gauge) {
        return gauged(bench.steps() + 1, gauge);
    }

    /** The line of a step, whether or not it has been rubbed out since: others may have been measured from it. */
    private @Nullable TrueLine line(int step) {
        Action action = action(step);
        if (action instanceof Action.Line line) return placed(step, line).line();
        if (action instanceof Action.Gauge gauge) return gauged(step, gauge);
        return action instanceof Action.Bevel bevel ? bevelled(step, bevel) : null;
    }

    /** What a step left on this board; one that struck a line over a pair left another on each. */
    private Action action(int step) {
        Action here = own.get(step);
        return here == null ? bench.action(step) : here;
    }

    private Placed placed(int step, Action.Line line) {
        Placed known = placed.get(step);
        if (known == null) {
            known = squared(step, line);
            placed.put(step, known);
        }
        return known;
    }

    private Placed squared(int step, Action.Line line) {
        Hand.Slip slip = hand.at(step);
        boolean fresh = line.mate() == null && !isCarriedOver(line);
        double distance = distance(line) + (fresh ? slip.reading() : 0);
        Surface on = line.on();
        Surface stock = line.square();
        double from;
        double meantFrom;
        int away;
        if (line.from() instanceof Action.Datum.Step s && action(s.step()) instanceof Action.Line earlier) {
            Placed source = placed(s.step(), earlier);
            from = at(source.line(), on, stock);
            meantFrom = source.line().meant();
            away = source.away();
        } else {
            Surface end = line.from() instanceof Action.Datum.End e ? e.end() : Surface.END_1;
            from = machined.end(end, on, stock);
            meantFrom = end == Surface.END_1 ? 0 : board.size().length();
            away = end == Surface.END_1 ? +1 : -1;
        }
        double near = from + away * distance + slip.near();
        double across = board.size().along(stock.axis());
        double far = near + (machined.comesOut(stock, on, near) - tools.square()) * across + slip.far() - slip.near();
        boolean lowAtStock = stock.sign() < 0;
        TrueLine struck = new TrueLine(
                step,
                on,
                0,
                lowAtStock ? near : far,
                lowAtStock ? far : near,
                meantFrom + away * distance(line),
                stock);
        return new Placed(struck, away);
    }

    /** Squared where it begins, and as much out of square as the bevel is set. */
    private TrueLine bevelled(int step, Action.Bevel bevel) {
        Action.Line square = new Action.Line(
                bevel.t(), bevel.board(), bevel.on(), bevel.stock(), bevel.from(), bevel.at(), null, bevel.with());
        TrueLine from = squared(step, square).line();
        double across = board.size().along(bevel.stock().axis());
        double on = across / Math.tan(Math.toRadians(bevel.degrees()));
        boolean lowAtStock = bevel.stock().sign() < 0;
        return new TrueLine(
                step,
                from.on(),
                from.axis(),
                from.low() + (lowAtStock ? 0 : on),
                from.high() + (lowAtStock ? on : 0),
                from.meant(),
                from.reference());
    }

    /** A line carried on from an earlier one at no distance: squared round, not measured. */
    static boolean isCarriedOver(Action.Line line) {
        Double at = line.at();
        return line.from() instanceof Action.Datum.Step && at != null && at == 0;
    }

    private double distance(Action.Line line) {
        Double at = line.at();
        if (at != null) return at;
        String mate = line.mate();
        return mate == null ? 0 : mate(bench, board, mate);
    }

    /**
     * How wide a mate is where it is held against a board to be struck from: its actual thickness, or its width where the
     * drawing lays that along the board.
     */
    public static double mate(Bench bench, Board board, String mate) {
        Size size = bench.board(mate).board().size();
        Optional<Part> here = part(bench, board.id());
        Optional<Part> there = part(bench, mate);
        boolean widthAlong = here.isPresent()
                && there.isPresent()
                && there.get().width() == here.get().length();
        return widthAlong ? size.width() : size.thickness();
    }

    private static Optional<Part> part(Bench bench, String board) {
        return bench.board(board)
                .named()
                .flatMap(n -> bench.scenario().drawing().part(n.part()));
    }

    /** An earlier line's x at the arris of the surface that the new line is on and the one that the stock bears on. */
    private static double at(TrueLine earlier, Surface on, Surface stock) {
        if (earlier.on() == on) return earlier.at(stock);
        if (earlier.on() == stock) return earlier.at(on);
        return earlier.at(earlier.on().axis() == on.axis() ? stock : on);
    }

    private TrueLine gauged(int step, Action.Gauge gauge) {
        Surface on = gauge.on();
        Surface fence = gauge.fence();
        Hand.Slip slip = hand.at(step);
        double set = gauge.set() + slip.reading();
        int inward = -fence.sign();
        // an end's gauge line runs across the board, and lies at one place along it
        double first = on.isEnd() ? (on == Surface.END_1 ? 0 : board.size().length()) : 0;
        double last = on.isEnd() ? first : board.size().length();
        double meant = (fence.sign() > 0 ? board.size().along(fence.axis()) : 0) + inward * gauge.set();
        return new TrueLine(
                step,
                on,
                fence.axis(),
                machined.coordinate(fence, on, first) + inward * set,
                machined.coordinate(fence, on, last) + inward * set,
                meant,
                fence);
    }
}
