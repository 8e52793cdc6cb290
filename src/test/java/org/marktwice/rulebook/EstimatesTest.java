package org.marktwice.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.marktwice.bench.Action;
import org.marktwice.bench.Attempt;
import org.marktwice.bench.Bench;
import org.marktwice.bench.CannotDo;
import org.marktwice.drawing.Placing;
import org.marktwice.files.FileRefused;
import org.marktwice.files.ScenarioFile;
import org.marktwice.scenario.Scenario;

class EstimatesTest {
    private final Scenario shelf;
    private final List<Action> good;

    EstimatesTest() throws FileRefused {
        shelf = ScenarioFile.read(Path.of("scenarios/porch-shelf.scenario.json"));
        good = WorkedAttempt.of(shelf, "P07", "2026-01-12T09:30:00Z").actions();
    }

    /** The model answer with these estimates put before the first turn. */
    private Situation after(Action... estimates) throws CannotDo {
        List<Action> all = new ArrayList<>();
        for (Action action : good) {
            if (action instanceof Action.Turning && all.stream().noneMatch(Action.Turning.class::isInstance)) {
                all.addAll(List.of(estimates));
            }
            all.add(action);
        }
        return Situation.of(Bench.after(shelf, new Attempt(shelf.id(), "", "P07", "2026-01-12T09:30:00Z", all)));
    }

    private String turnedFirst() {
        return good.stream()
                .filter(Action.Turning.class::isInstance)
                .map(a -> ((Action.Turning) a).board())
                .findFirst()
                .orElseThrow();
    }

    @Test
    void anEstimateStandsBesideTheClearanceOfTheTurnThatFollows() throws CannotDo {
        String board = turnedFirst();
        Situation situation = after(new Action.EstimateClearance(90, board, 10));

        Estimates.Clearance estimate = Estimates.clearances(situation).get(0);
        Placing lies = situation.bench().placing(situation.bench().board(board)).orElseThrow();
        assertThat(estimate.computed()).isEqualTo(situation.judged(lies).clearance());
        assertThat(estimate.estimated()).isEqualTo(10);
        assertThat(estimate.off()).isEqualTo(Math.abs(10 - estimate.computed()));
        assertThat(situation.bench().action(estimate.step())).isInstanceOf(Action.Turning.class);
    }

    @Test
    void ofSeveralBeforeOneTurnTheLastCounts() throws CannotDo {
        String board = turnedFirst();

        assertThat(Estimates.clearances(after(
                        new Action.EstimateClearance(90, board, 10), new Action.EstimateClearance(90, board, 25))))
                .extracting(Estimates.Clearance::estimated)
                .containsExactly(25.0);
    }

    @Test
    void withoutATurnAfterItThereIsNothingToCompare() throws CannotDo {
        Situation begun = Situation.of(Bench.of(shelf).after(new Action.EstimateClearance(1, turnedFirst(), 10)));

        assertThat(Estimates.clearances(begun)).isEmpty();
        assertThat(Estimates.justAnswered(begun)).isEmpty();
    }

    @Test
    void anEstimateChangesNoMark() throws CannotDo {
        assertThat(RuleBook.judge(after(new Action.EstimateClearance(90, turnedFirst(), 10)))
                        .marks())
                .isEqualTo(RuleBook.judge(after()).marks());
    }
}
