package org.marktwice.rulebook;

import java.util.ArrayList;
import java.util.List;
import org.marktwice.advice.Option;
import org.marktwice.rulebook.Finding.Evidence;
import org.marktwice.scenario.Stage;

/**
 * A board's turn and trim against the best that this board allows in this part, by the least clearance of its knots
 * (capped). As good as the best is sound; clear, but farther was to be had, is close, with that share of the credit; not
 * clear although a clear turn exists is wrong. Where no turn is clear, the best of them is sound and half of it close.
 */
final class BestTurn implements Rule {
    /** Clearances that differ by no more are as good as each other, millimetres: half a step of the trim. */
    private static final double AS_GOOD = 0.5;

    @Override
    public String id() {
        return "best-turn";
    }

    @Override
    public Stage stage() {
        return Stage.TURNS;
    }

    @Override
    public double worth() {
        return 1;
    }

    @Override
    public List<Finding> judge(Situation situation) {
        List<Finding> findings = new ArrayList<>();
        for (Place place : Place.all(situation)) {
            for (Place.Lying lying : place.lying()) {
                findings.addAll(situation.asItLies(this, lying, () -> judge(situation, lying)));
            }
            if (place.isOpen() && place.hasKnotsNearCuts(situation)) findings.add(place.open(this, "says.open"));
        }
        return findings;
    }

    private List<Finding> judge(Situation situation, Place.Lying lying) {
        Option chosen = situation.judged(lying.placing());
        if (chosen.nearest().isEmpty()) return List.of();
        return situation.best(lying.state().board(), lying.placing().part()).stream()
                .map(best -> finding(situation, lying, chosen, best))
                .toList();
    }

    private Finding finding(Situation situation, Place.Lying lying, Option chosen, Option best) {
        Object[] values = {"board", lying.board(), "clearance", chosen.clearance(), "best", best.clearance()};
        Found found = Found.by(this, lying.subject())
                .at(lying.step())
                .measured(chosen.clearance(), "mm", best.clearance())
                .showing(evidence(situation, lying))
                .instead(() -> Remedy.turn(lying.placing(), best));
        boolean asGood = chosen.clearance() >= best.clearance() - AS_GOOD;
        double share = chosen.clearance() / Math.max(best.clearance(), AS_GOOD);
        if (chosen.clear()) {
            return asGood || !best.clear()
                    ? found.sound("says.sound", values)
                    : found.close(share, "says.close", values);
        }
        if (best.clear()) return found.wrong("says.wrong", values);
        if (asGood) return found.sound("says.sound-none-clear", values);
        return share >= 0.5
                ? found.close(share, "says.close-none-clear", values)
                : found.wrong("says.wrong-none-clear", values);
    }

    private static Evidence evidence(Situation situation, Place.Lying lying) {
        return situation.near(lying.placing()).stream()
                .min(Nearness.MOST_PRESSING)
                .map(n -> Shows.knotAndCut(lying.placing(), n))
                .orElse(Evidence.NONE);
    }
}
