package org.marktwice.feedback;

import java.util.List;
import org.marktwice.bench.Attempt;
import org.marktwice.bench.Bench;
import org.marktwice.bench.CannotDo;
import org.marktwice.rulebook.Situation;
import org.marktwice.scenario.Scenario;

/**
 * An attempt marked and taken step by step: all that a file to be handed on tells of it.
 *
 * @param notices what was done about the attempt's file, such as a last line that was left out
 */
public record Replayed(
        Attempt attempt, Situation situation, SheetModel sheet, ReplayModel steps, List<String> notices) {
    public Replayed {
        notices = List.copyOf(notices);
    }

    /** @throws CannotDo where an action of the attempt can't be done in this scenario */
    public static Replayed of(Scenario scenario, Attempt attempt, List<String> notices) throws CannotDo {
        Situation situation = Situation.of(Bench.after(scenario, attempt));
        SheetModel sheet = SheetModel.of(situation);
        return new Replayed(attempt, situation, sheet, ReplayModel.of(scenario, attempt, sheet), notices);
    }

    public Scenario scenario() {
        return situation.scenario();
    }

    /** How long it took, in words: {@code 12 min 5 s}. */
    public String took() {
        int last = steps.last();
        long seconds = last == 0 ? 0 : Math.round(steps.action(last).t());
        return seconds < 60 ? seconds + " s" : seconds / 60 + " min " + seconds % 60 + " s";
    }
}
