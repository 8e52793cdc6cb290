package org.marktwice.rulebook;

import java.util.List;
import org.marktwice.fit.DryFit;
import org.marktwice.fit.Rectangle;
import org.marktwice.rulebook.Finding.Subject;
import org.marktwice.scenario.Stage;

/**
 * The two diagonals of each rectangle differ by no more than the size tolerance. One finding a rectangle.
 */
final class Squareness implements Rule {
    @Override
    public String id() {
        return "squareness";
    }

    @Override
    public Stage stage() {
        return Stage.FIT;
    }

    @Override
    public double worth() {
        return 1;
    }

    @Override
    public List<Finding> judge(Situation situation) {
        DryFit fit = situation.dryFit();
        if (!situation.hasRectangles()) return List.of();
        if (FitFindings.waits(situation)) return List.of();
        if (!fit.isWhole()) return List.of(Found.by(this, Subject.JOB).open("says.open"));
        return fit.rectangles().stream().map(r -> finding(situation, r)).toList();
    }

    private Finding finding(Situation situation, Rectangle rectangle) {
        double limit = situation.practice().size();
        Object[] values = {
            "first", rectangle.first(),
            "second", rectangle.second(),
            "one", rectangle.one(),
            "other", rectangle.other(),
            "difference", rectangle.difference(),
            "limit", limit
        };
        Found found = Found.by(this, Subject.part(rectangle.second()))
                .at(FitFindings.lastLine(situation))
                .measured(rectangle.difference(), "mm", limit)
                .instead("better.alike", values);
        return rectangle.difference() <= limit ? found.sound("says.sound", values) : found.wrong("says.wrong", values);
    }
}
