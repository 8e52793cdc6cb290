package org.marktwice.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.marktwice.advice.Option;
import org.marktwice.bench.Action;
import org.marktwice.bench.Bench;
import org.marktwice.bench.BoardState;
import org.marktwice.bench.CannotDo;
import org.marktwice.drawing.Placing;

/** What the learner estimated beside what is computed. */
public final class Estimates {
    private Estimates() {}

    /**
     * One estimate of a clearance, and what the turn settled after it gave.
     *
     * @param part the part's id that the board was turned for
     * @param step the turn's step
     * @param estimated millimetres
     * @param computed the least distance from a knot to a joint, millimetres; at most {@link Option#CAP}
     */
    public record Clearance(String board, String part, int step, double estimated, double computed) {
        /** How far it was off, millimetres; more than a clearance counts is not asked for. */
        public double off() {
            return Math.abs(Math.min(estimated, Option.CAP) - computed);
        }
    }

    /** Every estimate of a clearance that a turn of that board followed; of several before one turn the last. */
    public static List<Clearance> clearances(Situation situation) {
        List<Action> log = situation.bench().log();
        List<Clearance> found = new ArrayList<>();
        for (int i = 0; i < log.size(); i++) {
            if (!(log.get(i) instanceof Action.EstimateClearance said)) continue;
            int turn = turnAfter(log, i, said.board());
            if (turn < 0) continue;
            lying(situation, said.board(), turn + 1).ifPresent(p -> found.add(clearance(situation, p, said, turn + 1)));
        }
        return List.copyOf(found);
    }

    /** The estimate that the last action, a turn, has just answered. */
    public static Optional<Clearance> justAnswered(Situation situation) {
        int last = situation.bench().steps();
        return clearances(situation).stream().filter(c -> c.step() == last).findFirst();
    }

    private static Clearance clearance(Situation situation, Placing lies, Action.EstimateClearance said, int step) {
        double computed = situation.judged(lies).clearance();
        return new Clearance(said.board(), lies.part().id(), step, said.mm(), computed);
    }

    /** Where the next turn of this board stands in the log; −1 where there is none, or it was estimated anew before. */
    private static int turnAfter(List<Action> log, int from, String board) {
        for (int i = from + 1; i < log.size(); i++) {
            if (!(log.get(i) instanceof Action.OnBoard on) || !on.board().equals(board)) continue;
            if (on instanceof Action.EstimateClearance) return -1;
            if (on instanceof Action.Turning) return i;
        }
        return -1;
    }

    /** How the board lay after this turn. */
    private static Optional<Placing> lying(Situation situation, String board, int turn) {
        Bench now = situation.bench();
        BoardState state = now.board(board);
        if (state.turned().filter(t -> t.step() == turn).isPresent()) return now.placing(state);
        Bench then = Bench.of(situation.scenario());
        try {
            for (Action action : now.log().subList(0, turn)) then = then.after(action);
        } catch (CannotDo e) {
            throw new IllegalStateException("a prefix of a log is a log", e);
        }
        return then.placing(then.board(board));
    }
}
