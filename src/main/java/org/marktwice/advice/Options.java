package org.marktwice.advice;

import java.util.List;
import java.util.Optional;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Placing;
import org.marktwice.drawing.Turn;
import org.marktwice.scenario.Scenario;
import org.marktwice.timber.Board;

/** What a board could be used as: every turn and trim that the drawing and the dressed surfaces allow. */
public final class Options {
    private Options() {}

    /** Why a board can't serve a part at all: stuff, width or thickness, length, cup; empty where it can. */
    public static Optional<String> unfit(Scenario scenario, Board board, Part part) {
        throw new UnsupportedOperationException();
    }

    /** The turns in which the part's marks can look as drawn and stand on dressed surfaces; all of them for a part without marks. */
    public static List<Turn> turns(Board board, Part part) {
        throw new UnsupportedOperationException();
    }

    /** A placing judged. */
    public static Option judge(Scenario scenario, Placing placing) {
        throw new UnsupportedOperationException();
    }

    /** The best trim (1 mm steps) of this turn; of equals, the one that takes least off end-1. */
    public static Option best(Scenario scenario, Board board, Part part, Turn turn) {
        throw new UnsupportedOperationException();
    }

    /** The best turn and trim; empty where the board can't serve the part or no turn is allowed. */
    public static Optional<Option> best(Scenario scenario, Board board, Part part) {
        throw new UnsupportedOperationException();
    }
}
