package org.marktwice.rulebook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.marktwice.drawing.Cut;
import org.marktwice.drawing.Placing;
import org.marktwice.scenario.Practice;
import org.marktwice.timber.Board;
import org.marktwice.timber.Knot;
import org.marktwice.timber.KnotBody;

/**
 * How near one knot comes to what one joint takes out of its board.
 *
 * @param clearance the least distance from the knot inside the board to the cut, uncapped, millimetres
 * @param margin what this knot should keep, millimetres
 */
public record Nearness(Knot knot, Cut cut, double clearance, double margin) {

    /** The most pressing first: not the nearest in millimetres but the one with the least of its own margin left. */
    public static final Comparator<Nearness> MOST_PRESSING =
            Comparator.comparingDouble(Nearness::share).thenComparingDouble(Nearness::clearance);

    /** The clearance as a share of the margin; 1 or more keeps it. */
    public double share() {
        return margin > 0 ? clearance / margin : Double.MAX_VALUE;
    }

    /** Every knot of the board as it lies against every cut of its part, by cut and then by knot. */
    static List<Nearness> all(Placing lies, Practice.KnotMargin margin) {
        return all(lies.board(), lies.cuts(), margin);
    }

    /** The same for cuts wherever they are, in the board's frame. */
    static List<Nearness> all(Board board, List<Cut> cuts, Practice.KnotMargin margin) {
        List<Nearness> all = new ArrayList<>();
        for (Cut cut : cuts) {
            for (KnotBody body : board.bodies()) {
                if (body.isEmpty() || cut.boxes().isEmpty()) continue;
                all.add(new Nearness(body.knot(), cut, clearance(body, cut), margin.of(body.knot())));
            }
        }
        return List.copyOf(all);
    }

    private static double clearance(KnotBody body, Cut cut) {
        return cut.boxes().stream().mapToDouble(body::clearance).min().orElseThrow();
    }
}
