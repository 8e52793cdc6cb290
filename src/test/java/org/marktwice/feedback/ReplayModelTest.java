package org.marktwice.feedback;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.marktwice.bench.Action;
import org.marktwice.bench.Attempt;
import org.marktwice.bench.Bench;
import org.marktwice.bench.CannotDo;
import org.marktwice.scenario.Scenario;
import org.marktwice.view.Samples;

class ReplayModelTest {
    private final Scenario scenario = Samples.scenario("porch-shelf");
    private final Attempt attempt =
            Samples.attempt("porch-shelf", "flawed").file().attempt();
    private final SheetModel sheet = Samples.sheet("porch-shelf", "flawed");
    private ReplayModel replay;

    @BeforeEach
    void open() throws CannotDo {
        replay = ReplayModel.of(scenario, attempt, sheet);
    }

    @Test
    void everyStepIsTheBenchAsItWasThen() throws CannotDo {
        assertThat(replay.last()).isEqualTo(attempt.actions().size());
        for (int step = 0; step <= replay.last(); step++) {
            assertThat(replay.after(step).boards())
                    .as("step " + step)
                    .isEqualTo(Bench.after(scenario, attempt.upTo(step)).boards());
        }
        assertThat(replay.action(1)).isEqualTo(attempt.actions().get(0));
    }

    @Test
    void everyFindingWithAStepStandsAtThatStep() {
        List<SheetModel.Line> all = IntStream.rangeClosed(1, replay.last())
                .boxed()
                .flatMap(s -> replay.decidedBy(s).stream())
                .toList();
        assertThat(all)
                .isNotEmpty()
                .containsExactlyInAnyOrderElementsOf(sheet.groups().stream()
                        .flatMap(g -> g.lines().stream())
                        .filter(l -> l.finding().step() != null)
                        .toList());
    }

    @Test
    void goingByFindingStopsAtStepsThatDecidedOneAndNowhereElse() {
        int step = 0;
        OptionalInt next = replay.nextDeciding(step, true);
        int stops = 0;
        while (next.isPresent()) {
            assertThat(next.getAsInt()).isGreaterThan(step);
            for (int between = step + 1; between < next.getAsInt(); between++) {
                assertThat(replay.decidedBy(between)).isEmpty();
            }
            assertThat(replay.decidedBy(next.getAsInt())).isNotEmpty();
            step = next.getAsInt();
            next = replay.nextDeciding(step, true);
            stops++;
        }
        assertThat(stops).isGreaterThan(3);
        assertThat(replay.nextDeciding(step, false)).isPresent();
        assertThat(replay.nextDeciding(1, false)).isEmpty();
    }

    @Test
    void theBoardInHandIsTheOneLastWorkedOn() {
        assertThat(replay.boardAt(0)).isEqualTo(scenario.boards().get(0).id());
        for (int step = 1; step <= replay.last(); step++) {
            if (replay.action(step) instanceof Action.OnBoard on) {
                assertThat(replay.boardAt(step)).isEqualTo(on.board());
            } else {
                assertThat(replay.boardAt(step)).isEqualTo(replay.boardAt(step - 1));
            }
        }
    }
}
