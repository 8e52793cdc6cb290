package org.marktwice.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.marktwice.fit.Tolerances;
import org.marktwice.scenario.Practice;

/**
 * What a dry fit is judged by.
 *
 * @param id the name on the command line
 * @param title the name in a list
 * @param sizes of sizes, places and diagonals
 * @param gap the limit of a joint's gap, clash or step, millimetres: the workshop's, whichever sizes are asked for
 */
public record FitLimits(String id, String title, Tolerances sizes, double gap) {
    public static final String DRAWING = "drawing";

    /** The drawing's own. */
    public static FitLimits of(Practice practice) {
        return new FitLimits(
                DRAWING,
                "the drawing's own, ±" + Words.figure(practice.size()) + " mm",
                Tolerances.of(practice.size()),
                practice.gap());
    }

    /** All that can be chosen: the drawing's own first. */
    public static List<FitLimits> all(Practice practice) {
        List<FitLimits> all = new ArrayList<>(List.of(of(practice)));
        for (Tolerances t : Tolerances.presets()) {
            boolean even = t.plusMinus(1) == t.plusMinus(3000);
            String title = even ? t.title() + ", ±" + Words.figure(t.plusMinus(1)) + " mm" : t.title();
            all.add(new FitLimits(t.id(), title, t, practice.gap()));
        }
        return List.copyOf(all);
    }

    public static Optional<FitLimits> named(Practice practice, String id) {
        return all(practice).stream().filter(l -> l.id().equals(id)).findFirst();
    }

    /** Of a gap, and of a clash or a step: good to half the limit. */
    Verdict gap(double mm) {
        return mm <= gap / 2 ? Verdict.SOUND : mm <= gap ? Verdict.CLOSE : Verdict.WRONG;
    }

    /** Of what a size is out by. */
    Verdict size(double size, double off) {
        return Math.abs(off) <= sizes.plusMinus(size) ? Verdict.SOUND : Verdict.WRONG;
    }
}
