package org.marktwice.fit;

import java.util.OptionalDouble;
import org.marktwice.timber.Board;
import org.marktwice.timber.Moisture;
import org.marktwice.timber.Seasoned;
import org.marktwice.timber.Species;

/** How much wider and thicker a board becomes when its moisture changes. Along the grain wood hardly moves. */
final class Movement {
    private Movement() {}

    static Made.Grown grown(Board board, double moisture) {
        if (board.isSheet()) return Made.Grown.NOT;
        Seasoned now = Seasoned.now(board);
        Seasoned then = Seasoned.of(board, moisture);
        double usual = usual(board, moisture);
        return new Made.Grown(ratio(now.width(), then.width(), usual), ratio(now.thickness(), then.thickness(), usual));
    }

    private static double ratio(OptionalDouble now, OptionalDouble then, double otherwise) {
        return now.isPresent() && then.isPresent() ? then.getAsDouble() / now.getAsDouble() : otherwise;
    }

    /** Half-way between radial and tangential: for a board with boxed heart, which has something of both each way. */
    private static double usual(Board board, double moisture) {
        Species species = board.species().orElseThrow();
        double mean = (species.radial() + species.tangential()) / 2;
        return Moisture.ratio(mean, board.facts().moisture(), moisture);
    }
}
