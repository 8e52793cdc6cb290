package org.marktwice.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.marktwice.bench.Action;
import org.marktwice.bench.BoardState.Done;
import org.marktwice.fit.SetOut.Marked;
import org.marktwice.fit.TrueLine;

/**
 * A cut that was decided on a board: where saw or chisel runs against a line.
 *
 * @param of the side of what comes off that the line was struck for; empty where it is for none
 */
record Sawn(int step, Action.Cut cut, Optional<TrueLine> line, Optional<Marked> of) {
    /** All that was decided on a board, oldest first. */
    static List<Sawn> on(SetBoard board) {
        List<Sawn> all = new ArrayList<>();
        for (Done<? extends Action.OnBoard> done : board.out().state().struck()) {
            if (!(done.action() instanceof Action.Cut cut)) continue;
            Optional<TrueLine> line = board.out().lines().stream()
                    .filter(l -> l.step() == cut.step())
                    .findFirst();
            Optional<Marked> of = board.out().marked().stream()
                    .filter(m -> board.struckFor(m).contains(cut.step()))
                    .findFirst();
            all.add(new Sawn(done.step(), cut, line, of));
        }
        return all;
    }

    /** How much of the wood that was to stay goes with it, millimetres. */
    double lost() {
        return cut.with().lost(cut.side());
    }

    Optional<String> joint() {
        return of.flatMap(m -> Optional.ofNullable(m.side().joint()));
    }
}
