package org.marktwice.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every file {@code *-broken.*} is refused with the line written beside it. */
class BrokenFilesTest {
    /** Fixed, so that scanning nothing can't pass. */
    private static final int SCENARIOS = 75;

    private static final int ATTEMPTS = 44;
    private static final int DRAFTS = 4;
    private static final int RACKS = 8;
    private static final int RECORDS = 5;
    private static final int QUIZZES = 10;

    static List<String> brokenFiles() throws IOException {
        try (Stream<Path> files = Files.list(Samples.BROKEN)) {
            return files.map(f -> f.getFileName().toString())
                    .filter(f -> !f.endsWith(".expected.txt"))
                    .sorted()
                    .toList();
        }
    }

    @Test
    void allOfThemAreTried() throws IOException {
        assertThat(brokenFiles())
                .filteredOn(f -> f.endsWith("-broken.scenario.json"))
                .hasSize(SCENARIOS);
        assertThat(brokenFiles())
                .filteredOn(f -> f.endsWith("-broken.attempt.jsonl"))
                .hasSize(ATTEMPTS);
        assertThat(brokenFiles())
                .filteredOn(f -> f.endsWith("-broken.draft.json"))
                .hasSize(DRAFTS);
        assertThat(brokenFiles())
                .filteredOn(f -> f.endsWith("-broken.rack.json"))
                .hasSize(RACKS);
        assertThat(brokenFiles())
                .filteredOn(f -> f.endsWith("-broken.record.json"))
                .hasSize(RECORDS);
        assertThat(brokenFiles())
                .filteredOn(f -> f.endsWith("-broken" + QuizFile.ENDING))
                .hasSize(QUIZZES);
        assertThat(brokenFiles()).hasSize(SCENARIOS + ATTEMPTS + DRAFTS + RACKS + RECORDS + QUIZZES);
    }

    @ParameterizedTest
    @MethodSource("brokenFiles")
    void isRefusedWithItsLine(String name) throws IOException {
        Path file = Samples.BROKEN.resolve(name);
        String expected = Files.readString(Samples.BROKEN.resolve(name + ".expected.txt"));

        assertThatThrownBy(() -> read(name, Files.readAllBytes(file)))
                .isInstanceOf(FileRefused.class)
                .hasMessage(expected.strip());
        assertThat(expected.strip()).doesNotContain("\n");
    }

    private static void read(String name, byte[] bytes) throws FileRefused {
        if (name.endsWith(".attempt.jsonl")) AttemptFile.open(name, bytes, Samples.scenario());
        else if (name.endsWith(DraftFile.ENDING)) DraftFile.read(name, bytes);
        else if (name.endsWith(QuizFile.ENDING)) QuizFile.read(name, bytes);
        else if (name.endsWith(".rack.json")) RackFile.read(name, bytes);
        else if (name.endsWith(".record.json")) RecordFile.read(name, bytes);
        else ScenarioFile.read(name, bytes);
    }
}
