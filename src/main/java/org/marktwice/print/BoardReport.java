package org.marktwice.print;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.marktwice.timber.Board;
import org.marktwice.timber.Seasoned;

/**
 * What is reported of a board.
 *
 * @param then what it will be at another moisture; null where that isn't asked
 * @param room where it comes to that, in words; empty for none
 * @param clearances of its knots from cuts; empty where there are no cuts
 */
public record BoardReport(Board board, @Nullable Seasoned then, String room, List<Clearance> clearances) {
    /** A knot's distance from a cut, millimetres. */
    public record Clearance(String knot, String cut, double mm) {}

    public BoardReport {
        clearances = List.copyOf(clearances);
    }

    Seasoned now() {
        return Seasoned.now(board);
    }

    Optional<Seasoned> later() {
        return Optional.ofNullable(then);
    }

    /** As a sheet, or as more than one where there are many knots; upright or lying, as the board fits better. */
    public List<Page> pages(Paper paper) {
        return new BoardSheet(this, paper).pages();
    }
}
