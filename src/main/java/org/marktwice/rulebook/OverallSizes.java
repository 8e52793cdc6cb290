package org.marktwice.rulebook;

import java.util.List;
import java.util.OptionalDouble;
import org.marktwice.fit.DryFit;
import org.marktwice.rulebook.Finding.Subject;
import org.marktwice.scenario.Stage;

/**
 * The overall sizes of the job put together dry are within the size tolerance. One finding a size.
 */
final class OverallSizes implements Rule {
    @Override
    public String id() {
        return "overall-sizes";
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
        DryFit fit = situation.dryFit();
        if (situation.scenario().drawing().joints().isEmpty()) return List.of();
        if (FitFindings.waits(situation)) return List.of();
        if (!fit.isWhole()) return List.of(Found.by(this, Subject.JOB).open("says.open"));
        return fit.sizes().stream().map(s -> finding(situation, s)).toList();
    }

    private Finding finding(Situation situation, DryFit.SizeFit size) {
        OptionalDouble off = size.off();
        double out = Math.abs(off.orElse(0));
        double limit = situation.practice().size();
        Object[] values = {
            "axis", size.axis().id(), "drawn", size.drawn(), "made", size.made().orElse(size.drawn()), "out", out
        };
        Found found = Found.by(this, Subject.JOB)
                .at(FitFindings.lastLine(situation))
                .measured(out, "mm", limit)
                .instead("better.size", values);
        if (out <= limit) return found.sound("says.sound", values);
        return off.orElse(0) > 0 ? found.wrong("says.wrong-large", values) : found.wrong("says.wrong-small", values);
    }
}
