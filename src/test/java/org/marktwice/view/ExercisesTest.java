package org.marktwice.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.marktwice.scenario.Scenario;

/** How a learner stands with the exercises, in words. */
class ExercisesTest {
    private final List<Scenario> shelf = Shelf.scenarios();
    private final Exercises exercises = new Exercises(shelf);

    @Test
    void aLevelTellsHowManyOfItAreDone() {
        assertThat(exercises.done(1)).isEmpty();

        exercises.stands(shelf.get(0), handedIn());
        assertThat(exercises.done(1)).isEqualTo("1 of 3 done");
        assertThat(exercises.done(2)).isEmpty();

        Scenario second = shelf.stream().filter(s -> s.level() == 2).findFirst().orElseThrow();
        exercises.stands(second, new LearnerFolder.Standing(Optional.empty(), Optional.empty(), 0, List.of()));
        assertThat(exercises.done(2)).as("begun only").isEmpty();
    }

    @Test
    void aLevelIsOpenedByItsFirstExerciseAlone() {
        long opened = 0;
        for (int i = 0; i < shelf.size(); i++) if (exercises.opensLevel(i)) opened++;
        assertThat(opened)
                .isEqualTo(shelf.stream().map(Scenario::level).distinct().count());
    }

    private static LearnerFolder.Standing handedIn() {
        LearnerFolder.Best best = new LearnerFolder.Best(3, 4.5, Path.of("a.attempt.jsonl"));
        return new LearnerFolder.Standing(Optional.of(best), Optional.empty(), 1, List.of());
    }
}
