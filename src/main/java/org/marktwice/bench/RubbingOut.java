package org.marktwice.bench;

import static org.marktwice.bench.Checks.refused;

/** Pencil can be rubbed out while it is still on the board; a knife or gauge line stays, as at the bench. */
final class RubbingOut {
    private RubbingOut() {}

    static void possible(Bench bench, Action.RubOut rub) throws CannotDo {
        int step = rub.step();
        if (step < 1 || step > bench.steps()) throw refused("There is no step %d yet", step);
        Action action = bench.action(step);
        if (action instanceof Action.Gauge) throw refused("A gauge line is scratched in: it cannot be rubbed out");
        if (action instanceof Action.Line line && line.with() == Marker.KNIFE) {
            throw refused("A knife line is cut in: it cannot be rubbed out");
        }
        if (action instanceof Action.Bevel bevel && bevel.with() == Marker.KNIFE) {
            throw refused("A knife line is cut in: it cannot be rubbed out");
        }
        if (!(action instanceof Action.OnBoard pencilled) || !isPencil(action)) {
            throw refused("Step %d left no pencil to rub out", step);
        }
        if (!bench.counts(step)) throw refused("Step %d was taken back: nothing of it is left", step);
        if (!isThere(bench.board(pencilled.board()), step)) {
            throw refused("The pencil of step %d is no longer on board %s", step, pencilled.board());
        }
    }

    private static boolean isPencil(Action action) {
        return action instanceof Action.FaceSide
                || action instanceof Action.FaceEdge
                || action instanceof Action.Name
                || action instanceof Action.Waste
                || (action instanceof Action.Bevel bevel && bevel.with() == Marker.PENCIL)
                || (action instanceof Action.Line line && line.with() == Marker.PENCIL);
    }

    private static boolean isThere(BoardState board, int step) {
        return board.marks().stream().anyMatch(m -> m.step() == step)
                || board.named().filter(n -> n.step() == step).isPresent()
                || board.struck().stream().anyMatch(d -> d.step() == step);
    }
}
