package org.marktwice.rulebook;

import java.util.List;
import java.util.Optional;
import org.marktwice.fit.JointFit;
import org.marktwice.fit.JointFit.Gap;
import org.marktwice.scenario.Stage;

/**
 * The gap at each joint: to half the limit sound, to the limit close. One finding a joint.
 */
final class Gaps implements Rule {
    private static final double CLOSE = 0.5;

    @Override
    public String id() {
        return "gaps";
    }

    @Override
    public Stage stage() {
        return Stage.FIT;
    }

    @Override
    public double worth() {
        return 2;
    }

    @Override
    public List<Finding> judge(Situation situation) {
        return situation.dryFit().joints().stream()
                .filter(fit -> !FitFindings.waits(situation, fit))
                .map(fit -> finding(situation, fit))
                .toList();
    }

    private Finding finding(Situation situation, JointFit fit) {
        String joint = fit.joint().id();
        Found found = FitFindings.of(this, situation, fit).at(FitFindings.decidedBy(situation, fit));
        if (fit.state() == JointFit.State.WRONG_SIDE) {
            return found.instead("better.side", "joint", joint).wrong("says.wrong-side", "joint", joint);
        }
        Optional<Gap> gap = fit.gap();
        if (fit.state() != JointFit.State.TOGETHER || gap.isEmpty()) return found.open("says.open", "joint", joint);
        double mm = gap.get().mm();
        double limit = situation.practice().gap();
        Object[] values = {"joint", joint, "gap", mm, "limit", limit, "good", limit / 2};
        found.measured(mm, "mm", limit / 2).instead("better.close-up", values);
        if (mm <= limit / 2) return found.sound("says.sound", values);
        return mm <= limit ? found.close(CLOSE, "says.close", values) : found.wrong("says.wrong", values);
    }
}
