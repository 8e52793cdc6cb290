package org.marktwice.advice;

import java.util.List;
import java.util.Optional;
import org.marktwice.drawing.Placing;

/**
 * One way to use a board as a part, judged.
 *
 * @param clear whether every knot keeps its margin from every cut
 * @param clearance the least distance between any knot and any cut, capped at {@link #CAP} (which it is where there is
 *     no knot or no cut), millimetres
 * @param nearest the knot and the cut that are nearest to each other; empty where there is no knot or no cut
 */
public record Option(Placing placing, boolean clear, double clearance, Optional<Nearest> nearest) {
    /** Beyond this a clearance counts no more, millimetres. */
    public static final double CAP = 25;

    /** @param clearance uncapped, millimetres; @param margin what that knot should keep */
    public record Nearest(String knot, String joint, double clearance, double margin) {}

    /** @param all each knot's distance from each cut, by knot and then by cut */
    public static Option of(Placing placing, List<Nearest> all) {
        boolean clear = true;
        Nearest nearest = null;
        for (Nearest one : all) {
            if (one.clearance() < one.margin()) clear = false;
            if (nearest == null || one.clearance() < nearest.clearance()) nearest = one;
        }
        double clearance = nearest == null ? CAP : Math.min(CAP, nearest.clearance());
        return new Option(placing, clear, clearance, Optional.ofNullable(nearest));
    }

    /** Whether this one is better: clear before not clear, then the greater clearance. */
    public boolean betterThan(Option other) {
        if (clear != other.clear) return clear;
        return clearance > other.clearance;
    }
}
