package org.marktwice.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.marktwice.advice.Option;
import org.marktwice.advice.Option.Nearest;
import org.marktwice.advice.Options;
import org.marktwice.bench.Kept;
import org.marktwice.drawing.Placing;
import org.marktwice.scenario.Scenario;
import org.marktwice.timber.Knot;

/**
 * What follows from how a board lies in the job, whatever else was done: learners lay a board in one of a few ways. Computed
 * when first asked for and kept. Safe for several threads.
 */
final class Laid {
    /** What a rule finds. @param more what else it follows from */
    private record About(Rule rule, Object more) {}

    private final Scenario scenario;
    private final Placing placing;
    private final Kept<About, List<Finding>> findings = new Kept<>();
    private volatile @Nullable Option judged;
    private volatile @Nullable List<Nearness> near;
    private volatile @Nullable List<Footprint.Lost> lost;

    Laid(Scenario scenario, Placing placing) {
        this.scenario = scenario;
        this.placing = placing;
    }

    Placing placing() {
        return placing;
    }

    /** As the model answer judges it. */
    Option judged() {
        Option known = judged;
        if (known == null) {
            known = Option.of(placing, byKnot());
            judged = known;
        }
        return known;
    }

    /** What {@link Options#judge} would compute once more. */
    private List<Nearest> byKnot() {
        List<Nearest> all = new ArrayList<>();
        for (Knot knot : placing.board().knots()) {
            for (Nearness n : near()) {
                if (n.knot().id().equals(knot.id())) {
                    all.add(new Nearest(knot.id(), n.cut().joint(), n.clearance(), n.margin()));
                }
            }
        }
        return all;
    }

    /** Each knot of the board against each cut of its part. */
    List<Nearness> near() {
        List<Nearness> known = near;
        if (known == null) {
            known = Nearness.all(placing, scenario.practice().knotMargin());
            near = known;
        }
        return known;
    }

    /** What is trimmed off the board and cut out of it. */
    List<Footprint.Lost> lost() {
        List<Footprint.Lost> known = lost;
        if (known == null) {
            known = Footprint.Lost.from(placing);
            lost = known;
        }
        return known;
    }

    /** @param more what else it follows from */
    List<Finding> findings(Rule rule, Object more, Supplier<List<Finding>> found) {
        return findings.of(new About(rule, more), found);
    }
}
