package org.marktwice.view.bench;

import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import org.marktwice.advice.Option;
import org.marktwice.advice.Options;
import org.marktwice.drawing.Joint;
import org.marktwice.drawing.Placing;
import org.marktwice.picture.Lie;
import org.marktwice.scenario.Scenario;
import org.marktwice.timber.Board;
import org.marktwice.timber.SurfacePoint;
import org.marktwice.timber.Trace;

/** How clear the knots are of a placing's cuts, in words; shown only where the scenario grants it. */
final class Clearance {
    private Clearance() {}

    /** {@code 0.0 mm clear, 16 wanted}, beside the knot; empty where there is no knot or no cut. */
    static Optional<Callout> callout(Scenario scenario, Placing placing, Lie lie) {
        Option option = Options.judge(scenario, placing);
        return option.nearest()
                .flatMap(near -> place(placing.board(), near.knot(), lie)
                        .map(at -> callout(scenario, placing.board(), near, at)));
    }

    private static Callout callout(Scenario scenario, Board board, Option.Nearest near, SurfacePoint at) {
        String lead =
                String.format(Locale.ROOT, "%.1f mm clear, %s wanted", near.clearance(), Reading.number(near.margin()));
        String knot = Words.knot(board, near.knot());
        String joint = joint(scenario, near.joint());
        String more = near.clearance() <= 0.05 ? knot + " meets the " + joint : "from " + knot + " to the " + joint;
        return new Callout(at, tone(near), lead, more);
    }

    static Note.Tone tone(Option.Nearest near) {
        if (near.clearance() >= near.margin()) return Note.Tone.SOUND;
        return near.clearance() >= near.margin() / 2 ? Note.Tone.CLOSE : Note.Tone.WRONG;
    }

    private static String joint(Scenario scenario, String id) {
        return scenario.drawing().joint(id).map(Clearance::word).orElse("joint");
    }

    static String word(Joint joint) {
        return joint.noun();
    }

    /** Where the knot shows in the view: its largest trace on a surface that can be seen, else any. */
    private static Optional<SurfacePoint> place(Board board, String knot, Lie lie) {
        return board.traces().stream()
                .filter(t -> t.knot().equals(knot))
                .max(Comparator.comparing((Trace t) -> lie.shows(t.surface()))
                        .thenComparing(t -> t.surface() == lie.up())
                        .thenComparingDouble(Trace::area))
                .map(Trace::middle);
    }

    /** {@code settled, 25 mm clear} where that is granted, else {@code settled}. */
    static String settled(Scenario scenario, Placing placing, boolean told) {
        if (!told) return "settled";
        return "settled, " + Reading.mm(Options.judge(scenario, placing).clearance()) + " clear";
    }
}
