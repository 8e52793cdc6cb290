package org.marktwice.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.marktwice.bench.Bench;
import org.marktwice.bench.CannotDo;
import org.marktwice.files.FileRefused;
import org.marktwice.files.ScenarioFile;
import org.marktwice.scenario.Scenario;
import org.marktwice.scenario.Stage;

/** A careful hand loses nothing on setting out and fit, on any shipped job, even where the scenario doesn't ask for these. */
class SetOutJobTest {
    static List<Path> scenarios() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("scenarios"))) {
            return files.filter(f -> f.toString().endsWith(".scenario.json")).toList();
        }
    }

    @ParameterizedTest
    @MethodSource("scenarios")
    void theProgramsOwnSettingOutGetsFullMarks(Path file) throws FileRefused, CannotDo {
        Scenario scenario = asked(ScenarioFile.read(file));
        Bench bench = Bench.after(scenario, WorkedAttempt.of(scenario, "model", "2026-02-03T09:10:00Z"));

        MarkSheet sheet = RuleBook.judge(Situation.of(bench));

        assertThat(sheet.entries().stream()
                        .map(MarkSheet.Entry::finding)
                        .filter(f -> f.verdict() != Verdict.SOUND)
                        .map(f -> f.rule() + ": " + Texts.says(f, scenario)))
                .isEmpty();
        if (scenario.drawing().joints().isEmpty()) return;
        assertThat(sheet.entries()).extracting(e -> e.rule().stage()).contains(Stage.SETTING_OUT, Stage.FIT);
    }

    private static Scenario asked(Scenario s) {
        List<Stage> stages = new ArrayList<>(s.stages());
        for (Stage stage : List.of(Stage.SETTING_OUT, Stage.FIT)) if (!stages.contains(stage)) stages.add(stage);
        return new Scenario(
                s.id(), s.title(), s.level(), s.brief(), stages, s.practice(), s.drawing(), s.boards(), s.digest());
    }
}
