package org.marktwice.bench;

import java.util.function.Function;
import java.util.function.IntFunction;
import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;

/** Where a line would lie along the grain of a true board, and which way distances from it go on: +1 towards end-2. */
record Placed(double x, int away) {
    /**
     * @param boards a board by its id: the mates
     * @param actions an earlier action by its step; the line it was struck from may be rubbed out by now, this one still
     *     lies where it was put
     */
    static Placed on(BoardState state, Action.Line line, Function<String, Board> boards, IntFunction<Action> actions) {
        Placed from;
        if (line.from() instanceof Action.Datum.Step s && earlier(state, s.step(), actions) instanceof Action.Line e) {
            from = on(state, e, boards, actions);
        } else {
            boolean first = line.from() instanceof Action.Datum.End e && e.end() == Surface.END_1;
            from = first ? new Placed(0, +1) : new Placed(state.board().size().length(), -1);
        }
        Double at = line.at();
        String mate = line.mate();
        double distance =
                at != null ? at : mate == null ? 0 : boards.apply(mate).size().thickness();
        return new Placed(from.x() + from.away() * distance, from.away());
    }

    /** What a step left on this board: a line struck over a pair is another one on each. */
    private static Action earlier(BoardState state, int step, IntFunction<Action> actions) {
        for (BoardState.Done<? extends Action.OnBoard> done : state.struck()) {
            if (done.step() == step) return done.action();
        }
        return actions.apply(step);
    }
}
