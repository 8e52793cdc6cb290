package org.marktwice.view.desk;

import java.util.Optional;
import org.marktwice.timber.Board;

/** The board that is being drawn. */
interface OneBoard {
    /** Empty where there is none. */
    Optional<Board> board();

    /** Puts it back otherwise. */
    void put(Board next);

    /** Shows all of it anew. */
    void refresh();
}
