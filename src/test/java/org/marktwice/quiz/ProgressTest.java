package org.marktwice.quiz;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.marktwice.files.FileRefused;
import org.marktwice.files.ScenarioFile;
import org.marktwice.rulebook.RuleBook;
import org.marktwice.scenario.Scenario;

class ProgressTest {
    private static final LocalDate DAY = LocalDate.parse("2026-01-12");

    private static List<Scenario> shipped() throws IOException, FileRefused {
        List<Scenario> all = new ArrayList<>();
        try (Stream<Path> files = Files.list(Path.of("scenarios"))) {
            for (Path file : files.filter(f -> f.toString().endsWith(".scenario.json"))
                    .sorted()
                    .toList()) {
                all.add(ScenarioFile.read(file));
            }
        }
        return all;
    }

    private static Learning after(Learning learning, Kind kind, boolean right) {
        return learning.after(DAY, kind, right, false);
    }

    @Test
    void everyIdeaIsTrainedByAShippedExerciseThatAsksForItsRule() throws Exception {
        List<Scenario> shipped = shipped();
        Progress progress = Progress.of(Learning.begin("P07", Spacing.WEEKLY), DAY);

        assertThat(progress.rows()).hasSize(Kind.values().length);
        for (Progress.Row row : progress.rows()) {
            Progress.Training training = Progress.training(row, shipped).orElseThrow();
            assertThat(row.kind().rules()).contains(training.rule());
            assertThat(training.exercise().stages())
                    .as("%s in %s", row.kind(), training.exercise().id())
                    .contains(RuleBook.rule(training.rule()).orElseThrow().stage());
        }
        assertThat(progress.rows().stream()
                        .filter(r -> r.kind() == Kind.HANDED_PAIR)
                        .map(r -> Progress.training(r, shipped).orElseThrow().exercise()))
                .allMatch(s -> !s.drawing().pairs().isEmpty());
    }

    @Test
    void withoutExercisesNothingIsSuggested() {
        Progress progress = Progress.of(Learning.begin("P07", Spacing.WEEKLY), DAY);

        assertThat(progress.rows())
                .allMatch(r -> Progress.training(r, List.of()).isEmpty());
    }

    /** The one that was answered rightly least often comes first. */
    @Test
    void whatIsShakiestComesFirst() {
        Learning learning = Learning.begin("P07", Spacing.WEEKLY);
        learning = after(learning, Kind.MARK_TAIL, true);
        learning = after(learning, Kind.CHAINED, true);
        learning = after(learning, Kind.CHAINED, false);
        learning = after(learning, Kind.BARK_SIDE, false);

        List<Progress.Row> shaky = Progress.of(learning, DAY).shaky();

        assertThat(shaky).extracting(Progress.Row::kind).containsExactly(Kind.BARK_SIDE, Kind.CHAINED);
    }
}
