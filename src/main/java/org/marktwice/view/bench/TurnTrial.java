package org.marktwice.view.bench;

import org.marktwice.drawing.Drawing;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Placing;
import org.marktwice.drawing.Trim;
import org.marktwice.drawing.Turn;
import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;

/**
 * A turn being tried, before it is settled.
 *
 * @param offEnd1 what would come off end-1, millimetres
 */
record TurnTrial(Part part, Turn turn, double offEnd1) {
    Placing placing(Drawing drawing, Board board) {
        return new Placing(drawing, part, board, turn, new Trim(Surface.END_1, offEnd1));
    }

    TurnTrial turned(Turn next) {
        return new TurnTrial(part, next, offEnd1);
    }

    TurnTrial trimmed(double off) {
        return new TurnTrial(part, turn, off);
    }
}
