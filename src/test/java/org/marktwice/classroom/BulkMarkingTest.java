package org.marktwice.classroom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.marktwice.classroom.Marked.State;
import org.marktwice.files.FileRefused;
import org.marktwice.files.ScenarioFile;
import org.marktwice.rulebook.MarkSheet;
import org.marktwice.scenario.Scenario;

/** A folder of attempts: every file named, in the state it is in. */
class BulkMarkingTest {
    @TempDir
    Path folder;

    private final Scenario shelf = Handed.shelf();
    private final ExerciseSet set = ExerciseSet.of(shelf);

    private void put(String name, String text) throws IOException {
        Path file = folder.resolve(name);
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
    }

    private Marked only() {
        List<Marked> marked = Handed.marked(folder, set, false);
        assertThat(marked).hasSize(1);
        return marked.get(0);
    }

    static Stream<Arguments> files() {
        String good = Handed.perfect();
        String cut = good.substring(0, good.length() - 12);
        String open = good.substring(0, good.lastIndexOf("{"));
        String digest = "\"digest\":\"sha256:" + "0".repeat(64) + "\",\"learner\"";
        String withDigest = good.replaceFirst("\"digest\":\"[^\"]*\",", "").replace("\"learner\"", digest);
        return Stream.of(
                Arguments.of("P01.attempt.jsonl", good, State.WHOLE, ""),
                Arguments.of("essay.docx", good, State.WHOLE, ""),
                Arguments.of("P01.attempt.jsonl", cut, State.TORN, "last line was cut off"),
                Arguments.of("P01.attempt.jsonl", open, State.UNFINISHED, "not handed in"),
                Arguments.of("P01.attempt.jsonl", withDigest, State.CHANGED_SCENARIO, "was changed since"),
                Arguments.of(
                        "P01.attempt.jsonl",
                        good.replace("\"scenario\":\"porch-shelf\"", "\"scenario\":\"peg-rail\""),
                        State.WRONG_SCENARIO,
                        "an attempt at \"peg-rail\", not at \"porch-shelf\""),
                Arguments.of("P01.attempt.jsonl", "", State.UNREADABLE, "the file is empty"),
                Arguments.of("P01.attempt.jsonl", "\0\0\0\0", State.UNREADABLE, "found a binary file"),
                Arguments.of(
                        "P01.attempt.jsonl",
                        good.replace("\"do\":\"name\"", "\"do\":\"rename\""),
                        State.UNREADABLE,
                        "$.do: expected measure, test"),
                Arguments.of("P01.attempt.jsonl", good.replace("attempt/1", "attempt/2"), State.UNREADABLE, "newer"),
                Arguments.of("notes.txt", "Ask about board C.", State.NOT_AN_ATTEMPT, "no attempt's header"),
                Arguments.of("notes.txt", "", State.NOT_AN_ATTEMPT, "no attempt's header"),
                Arguments.of(
                        "copy.scenario.json", Handed.text(Handed.SHELF), State.NOT_AN_ATTEMPT, "no attempt's header"));
    }

    @ParameterizedTest
    @MethodSource("files")
    void aFileIsNamedWithItsStateAndItsReason(String name, String text, State state, String reason) throws IOException {
        put(name, text);

        Marked marked = only();

        assertThat(marked.file()).isEqualTo(name);
        assertThat(marked.state()).as(marked.reason()).isEqualTo(state);
        assertThat(marked.reason()).contains(reason);
        assertThat(marked.reason().isEmpty()).isEqualTo(state == State.WHOLE);
        assertThat(marked.sheet().isPresent())
                .isEqualTo(state == State.WHOLE || state == State.TORN || state == State.UNFINISHED);
    }

    @Test
    void anActionThatCantBeDoneIsToldWithItsLineAndTheLearner() throws IOException {
        put("P01.attempt.jsonl", Handed.perfect().replaceFirst("\"board\":\"A\"", "\"board\":\"Q\""));

        Marked marked = only();

        assertThat(marked.state()).isEqualTo(State.UNREADABLE);
        assertThat(marked.learner()).isEqualTo("P01");
        assertThat(marked.reason()).startsWith("line ").contains("Board Q is not on the rack");
    }

    @Test
    void theMarksAreThoseOfTheMarkSheet() throws IOException, FileRefused {
        put("a.attempt.jsonl", Handed.perfect());
        put("b.attempt.jsonl", Handed.flawed());

        for (Marked marked : Handed.marked(folder, set, false)) {
            MarkSheet alone = Handed.judged(Files.readAllBytes(folder.resolve(marked.file())), shelf);
            MarkSheet sheet = marked.sheet().orElseThrow();
            assertThat(sheet.marks()).isEqualTo(alone.marks(), within(1e-9));
            assertThat(sheet.outOf()).isEqualTo(alone.outOf(), within(1e-9));
        }
    }

    @Test
    void foldersInItAreLookedIntoAndTheAnswersComeByName() throws IOException {
        for (int i = 0; i < 60; i++)
            put("set " + i % 3 + "/P" + i + ".attempt.jsonl", i % 2 == 0 ? "" : Handed.flawed());
        put("set 1/deeper/P99.attempt.jsonl", Handed.perfect());

        List<String> names =
                Handed.marked(folder, set, false).stream().map(Marked::file).toList();

        assertThat(names).hasSize(61).isSorted().contains("set 1/deeper/P99.attempt.jsonl");
    }

    @Test
    void aFolderBehindALinkIsMarkedAsItsOwn() throws Exception {
        put("in/a", Handed.by("A", Handed.perfect(), 1));
        Path link = Files.createSymbolicLink(folder.resolve("link"), folder.resolve("in"));

        assertThat(Handed.marked(link, ExerciseSet.of(Handed.shelf()), false))
                .singleElement()
                .satisfies(m -> assertThat(m.file() + " " + m.state()).isEqualTo("a WHOLE"));
    }

    @Test
    void aFolderThatGoesByAnAttemptsNameIsNamedToo() throws IOException {
        Files.createDirectories(folder.resolve("P01.attempt.jsonl"));
        put("P02.attempt.jsonl/P02.attempt.jsonl", Handed.perfect());

        List<Marked> marked = Handed.marked(folder, set, false);

        assertThat(marked)
                .extracting(Marked::file)
                .containsExactly("P01.attempt.jsonl", "P02.attempt.jsonl", "P02.attempt.jsonl/P02.attempt.jsonl");
        assertThat(marked).extracting(Marked::state).containsExactly(State.UNREADABLE, State.UNREADABLE, State.WHOLE);
        assertThat(marked.get(0).reason()).startsWith("a folder, not a file");
        assertThat(Handed.marked(folder.resolve("P02.attempt.jsonl"), set, false))
                .extracting(Marked::file)
                .containsExactly("P02.attempt.jsonl");
    }

    @Test
    void theSameJournalIsPointedOutAndMarkedAllTheSame() throws IOException {
        put("a.attempt.jsonl", Handed.by("P01", Handed.flawed(), 0));
        put("b.attempt.jsonl", Handed.by("P02", Handed.flawed(), 0).replace("\",\"", "\", \""));
        put("c.attempt.jsonl", Handed.by("P03", Handed.flawed(), 1));

        List<Marked> marked = Handed.marked(folder, set, false);

        assertThat(marked).extracting(Marked::sameAs).containsExactly("", "a.attempt.jsonl", "");
        assertThat(marked).extracting(Marked::state).containsOnly(State.WHOLE);
    }

    @Test
    void twoThatDidNextToNothingAreNotPointedOut() throws IOException {
        String header = Handed.perfect().lines().findFirst().orElseThrow() + "\n";
        put("a.attempt.jsonl", header + "{\"t\":5,\"do\":\"hand-in\"}\n");
        put("b.attempt.jsonl", header + "{\"t\":5,\"do\":\"hand-in\"}\n");

        assertThat(Handed.marked(folder, set, false)).extracting(Marked::sameAs).containsOnly("");
    }

    @Test
    void anAttemptAtAnEarlierVersionIsMarkedOnThePresentOneWhereThatIsAsked() throws IOException, FileRefused {
        byte[] changed = Handed.text(Handed.SHELF)
                .replace("Porch shelf", "Porch shelf, once more")
                .getBytes(StandardCharsets.UTF_8);
        Scenario now = ScenarioFile.read("changed", changed);
        assertThat(now.digest()).isNotEqualTo(shelf.digest());
        put("a.attempt.jsonl", Handed.perfect());
        put("b.attempt.jsonl", Handed.perfect().replaceFirst("\"board\":\"A\"", "\"board\":\"Q\""));

        List<Marked> asked = Handed.marked(folder, ExerciseSet.of(now), true);

        assertThat(asked).extracting(Marked::state).containsOnly(State.CHANGED_SCENARIO);
        assertThat(asked.get(0).sheet()).isPresent();
        assertThat(asked.get(0).reason()).contains("marked on the present one");
        assertThat(asked.get(1).sheet()).isEmpty();
        assertThat(asked.get(1).reason()).contains("Board Q is not on the rack");
        assertThat(Handed.marked(folder, ExerciseSet.of(now), false).get(0).sheet())
                .isEmpty();
    }

    @Test
    void amongVariantsTheDigestFindsTheRightOne() throws IOException, FileRefused {
        Scenario other = ScenarioFile.read(
                "other",
                Handed.text(Handed.SHELF).replace("Porch shelf", "Porch shelf ").getBytes(StandardCharsets.UTF_8));
        ExerciseSet both = ExerciseSet.of(other, shelf);
        put("a.attempt.jsonl", Handed.perfect());
        put("b.attempt.jsonl", Handed.perfect().replaceFirst("\"digest\":\"[^\"]*\",", ""));
        put("c.attempt.jsonl", Handed.perfect().replaceFirst("sha256:....", "sha256:0000"));

        List<Marked> marked = Handed.marked(folder, both, false);

        assertThat(marked.get(0).scenario()).containsSame(shelf);
        assertThat(marked.get(1).state()).isEqualTo(State.WRONG_SCENARIO);
        assertThat(marked.get(1).reason()).contains("without a digest");
        assertThat(marked.get(2).state()).isEqualTo(State.WRONG_SCENARIO);
        assertThat(marked.get(2).reason()).contains("none of the 2 variants");
    }

    @Test
    void progressIsToldAfterEveryFile() throws Exception {
        for (int i = 0; i < 40; i++) put("P" + i + ".attempt.jsonl", "");
        List<Integer> told = new ArrayList<>();

        BulkMarking.of(folder).run(new Marker(set, false), 2, marked -> {}, (done, of) -> {
            assertThat(of).isEqualTo(40);
            told.add(done);
        });

        assertThat(told).hasSize(40).isSorted().startsWith(1).endsWith(40);
    }

    @Test
    void whoInterruptsItGetsItStopped() throws Exception {
        for (int i = 0; i < 100; i++) put("P" + i + ".attempt.jsonl", Handed.flawed());
        BulkMarking files = BulkMarking.of(folder);
        List<Marked> seen = new ArrayList<>();

        assertThatThrownBy(() -> files.run(
                        new Marker(set, false),
                        2,
                        marked -> {
                            seen.add(marked);
                            if (seen.size() == 3) Thread.currentThread().interrupt();
                        },
                        BulkMarking.Progress.NONE))
                .isInstanceOf(InterruptedException.class);
        assertThat(seen).as("files that were at hand already are left too").hasSize(3);
        assertThat(Thread.interrupted()).isFalse();
    }

    @Test
    void aFolderThatIsNoneIsRefused() {
        assertThatThrownBy(() -> BulkMarking.of(Handed.SHELF)).hasMessageContaining("expected a folder, found a file");
        assertThatThrownBy(() -> BulkMarking.of(folder.resolve("none"))).hasMessageContaining("no such folder");
        assertThatThrownBy(() -> ExerciseSet.read(folder)).hasMessageContaining("no *.scenario.json in it");
    }
}
