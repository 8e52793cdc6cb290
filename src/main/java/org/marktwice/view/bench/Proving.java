package org.marktwice.view.bench;

import java.util.function.DoubleFunction;
import org.marktwice.bench.Action;
import org.marktwice.bench.BoardState;
import org.marktwice.bench.ToolReading;
import org.marktwice.timber.SurfacePoint;

/** Lays a tool, notes what it reads, and says so. */
final class Proving {
    private Proving() {}

    /** @return whether it could be laid there */
    static boolean perform(BenchModel model, SurfacePoint at, DoubleFunction<Action.Test> test) {
        BoardState state = model.board();
        return model.perform(at, t -> ToolReading.noted(state, test.apply(t)), Reading.of(state, test.apply(0)));
    }
}
