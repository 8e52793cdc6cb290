package org.marktwice.view;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.marktwice.bench.Action;
import org.marktwice.files.FileRefused;
import org.marktwice.files.Journal;
import org.marktwice.scenario.Scenario;

class LearnerFolderTest {
    private static final Instant NOW = Instant.parse("2026-01-12T09:30:00Z");
    private final Scenario pegRail = Samples.scenario("peg-rail");

    @TempDir
    Path home;

    private void attempt(LearnerFolder folder, String learner, Instant when, List<Action> actions) throws FileRefused {
        try (Journal journal = folder.begin(pegRail, learner, when)) {
            for (Action action : actions) journal.append(action);
        }
    }

    private static List<Action> all(String kind) {
        return Samples.attempt("peg-rail", kind).file().attempt().actions();
    }

    @Test
    void anEmptyOrMissingFolderStandsAtNothing() {
        assertThat(new LearnerFolder(home.resolve("none")).standing(pegRail, "P07"))
                .isEqualTo(LearnerFolder.Standing.NONE);
    }

    @Test
    void theBestOfTheLearnersOwnMarksCounts() throws FileRefused {
        LearnerFolder folder = new LearnerFolder(home);
        attempt(folder, "P07", NOW, all("flawed"));
        LearnerFolder.Standing first = folder.standing(pegRail, "P07");
        assertThat(first.tries()).isEqualTo(1);
        double flawed = first.best().orElseThrow().marks();
        assertThat(flawed).isEqualTo(Samples.sheet("peg-rail", "flawed").sheet().marks(), within(1e-9));

        attempt(folder, "P07", NOW.plusSeconds(60), all("perfect"));
        attempt(folder, "P08", NOW.plusSeconds(90), all("perfect"));
        LearnerFolder.Standing second = folder.standing(pegRail, "P07");
        assertThat(second.tries()).isEqualTo(2);
        assertThat(second.best().orElseThrow().marks()).isGreaterThan(flawed);
        assertThat(second.left()).isEmpty();
    }

    @Test
    void anAttemptNotHandedInIsThereToGoOnWith() throws FileRefused {
        LearnerFolder folder = new LearnerFolder(home);
        attempt(folder, "P07", NOW, Samples.work("peg-rail", "perfect"));
        Path left = folder.standing(pegRail, "P07").left().orElseThrow();
        assertThat(left.getFileName()).hasToString("peg-rail-P07-20260112-093000.attempt.jsonl");
        assertThat(folder.standing(pegRail, "P08").left()).isEmpty();
    }

    @Test
    void twoAttemptsBegunInOneSecondBothHaveAFile() throws FileRefused, IOException {
        LearnerFolder folder = new LearnerFolder(home);
        attempt(folder, "", NOW, all("flawed"));
        attempt(folder, " ", NOW, all("perfect"));
        assertThat(folder.standing(pegRail, "").tries()).isEqualTo(2);
        try (var files = Files.list(home)) {
            assertThat(files.map(f -> f.getFileName().toString()).filter(f -> f.endsWith(".attempt.jsonl")))
                    .containsExactlyInAnyOrder(
                            "peg-rail-unnamed-20260112-093000.attempt.jsonl",
                            "peg-rail-unnamed-20260112-093000-2.attempt.jsonl");
        }
    }

    @Test
    void aFileChangedSinceIsReadAnewAndABrokenOneIsNamed() throws FileRefused, IOException {
        LearnerFolder folder = new LearnerFolder(home);
        attempt(folder, "P07", NOW, Samples.work("peg-rail", "perfect"));
        Path file = folder.standing(pegRail, "P07").left().orElseThrow();
        Files.writeString(file, "{\"t\":99,\"do\":\"hand-in\"}\n", StandardOpenOption.APPEND);
        LearnerFolder.Standing after = folder.standing(pegRail, "P07");
        assertThat(after.left()).isEmpty();
        assertThat(after.tries()).isEqualTo(1);

        Files.writeString(home.resolve("peg-rail-P07-x.attempt.jsonl"), "nothing of ours\n");
        assertThat(folder.standing(pegRail, "P07").refused())
                .singleElement()
                .asString()
                .startsWith("peg-rail-P07-x.attempt.jsonl: ");
    }

    @Test
    void namesBecomeFitForFiles() {
        assertThat(LearnerFolder.forFile("Ümit / K.")).isEqualTo("mit-K");
        assertThat(LearnerFolder.forFile("../..")).isEqualTo("unnamed");
        assertThat(LearnerFolder.forFile("P07")).isEqualTo("P07");
    }

    @Test
    void theShelfHoldsTheShippedExercisesEasiestFirst() {
        List<Scenario> shelf = Shelf.scenarios();
        assertThat(shelf)
                .hasSizeGreaterThanOrEqualTo(4)
                .extracting(Scenario::level)
                .isSorted();
        assertThat(shelf.get(0).id()).isEqualTo("peg-rail");
    }
}
