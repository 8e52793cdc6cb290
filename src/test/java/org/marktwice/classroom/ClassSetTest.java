package org.marktwice.classroom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.marktwice.Fixtures;
import org.marktwice.advice.Difficulty;
import org.marktwice.advice.ModelAnswer;
import org.marktwice.bench.Attempt;
import org.marktwice.classroom.ClassSet.Given;
import org.marktwice.classroom.Variants.Variant;
import org.marktwice.drawing.JobAxis;
import org.marktwice.drawing.Overall;
import org.marktwice.files.ActionWriter;
import org.marktwice.files.FileRefused;
import org.marktwice.rulebook.MarkSheet;
import org.marktwice.rulebook.WorkedAttempt;
import org.marktwice.scenario.Scenario;
import org.marktwice.timber.Board;

/** Other boards for every learner, equally hard, the same every time, and known again when they come back. */
class ClassSetTest {
    private static final BulkMarking.Progress SILENT = BulkMarking.Progress.NONE;

    @TempDir
    Path folder;

    private static ClassSet set(Scenario exercise, ClassList list, int seed, double band) {
        try {
            return ClassSet.make(Variants.of(exercise, seed, band), exercise.id(), list, SILENT);
        } catch (Variants.CannotVary e) {
            throw new AssertionError(e);
        }
    }

    private static ClassSet shelf(int learners, int seed) {
        return set(Handed.shelf(), ClassList.numbered(learners), seed, Variants.BAND);
    }

    @ParameterizedTest
    @ValueSource(strings = {"porch-shelf", "lantern-stand", "key-ledge"})
    void variantsAreSolvableDifferentAndAsHardAsTheExercise(String name) throws FileRefused {
        Scenario exercise = Exercise.read(Handed.SHIPPED.resolve(name + ".scenario.json"));

        ClassSet set = set(exercise, ClassList.numbered(12), 1, 0.05);

        assertThat(set.allInBand()).isTrue();
        assertThat(set.target()).isEqualTo(Difficulty.of(exercise).value());
        Set<List<Board>> boards = new HashSet<>();
        for (Given given : set.given()) {
            Scenario own = given.variant().scenario();
            assertThat(own.drawing().parts()).isEqualTo(exercise.drawing().parts());
            assertThat(own.practice()).isEqualTo(exercise.practice());
            assertThat(own.boards()).hasSameSizeAs(exercise.boards());
            assertThat(ModelAnswer.of(own).clear())
                    .isEqualTo(own.drawing().parts().size());
            assertThat(Difficulty.of(own).value()).isCloseTo(set.target(), within(0.05 + 1e-6));
            assertThat(boards.add(own.boards()))
                    .as("%s has boards of its own", given.file())
                    .isTrue();
        }
    }

    @Test
    void theSameSeedGivesTheSameFilesAndAnotherSeedOthers() {
        ClassSet once = shelf(3, 7);
        ClassSet again = shelf(3, 7);
        ClassSet other = shelf(3, 8);
        for (int i = 0; i < 3; i++) {
            byte[] bytes = once.given().get(i).variant().bytes();
            assertThat(again.given().get(i).variant().bytes()).isEqualTo(bytes);
            assertThat(other.given().get(i).variant().bytes()).isNotEqualTo(bytes);
        }
    }

    @Test
    void whoElseIsInTheClassChangesNothing() {
        ClassSet two = set(Handed.shelf(), new ClassList(List.of("AB", "CD")), 1, 0.05);
        ClassSet three = set(Handed.shelf(), new ClassList(List.of("XY", "CD", "AB")), 1, 0.05);

        assertThat(three.given().get(2).variant().bytes())
                .isEqualTo(two.given().get(0).variant().bytes());
        assertThat(three.given().get(1).variant().bytes())
                .isEqualTo(two.given().get(1).variant().bytes());
    }

    @Test
    void whatComesBackIsMarkedOnEachLearnersOwnBoards() throws IOException, FileRefused {
        ClassSet set = shelf(5, 1);
        Path handOut = folder.resolve("out");
        Path back = Files.createDirectory(folder.resolve("back"));
        set.write(handOut);
        for (Given given : set.given()) {
            Scenario own = Exercise.read(handOut.resolve(given.file()));
            Attempt worked = WorkedAttempt.of(own, given.variant().learner(), "2026-02-03T09:10:00Z");
            Files.writeString(back.resolve("renamed " + given.variant().learner() + ".txt"), ActionWriter.text(worked));
        }

        List<Marked> marked = Handed.marked(back, ExerciseSet.read(handOut), false);

        assertThat(marked).hasSize(5).extracting(Marked::state).containsOnly(Marked.State.WHOLE);
        Set<String> digests = new HashSet<>();
        for (Marked one : marked) {
            assertThat(one.scenario().orElseThrow().digest())
                    .isEqualTo(one.attempt().orElseThrow().digest());
            digests.add(one.scenario().orElseThrow().digest());
            assertThat(one.madeFor()).isEqualTo(one.learner());
            assertThat(one.onAnothersBoards()).isFalse();
            byte[] bytes = Files.readAllBytes(back.resolve(one.file()));
            MarkSheet alone = Handed.judged(bytes, one.scenario().orElseThrow());
            assertThat(one.sheet().orElseThrow().marks()).isEqualTo(alone.marks(), within(1e-9));
            assertThat(alone.marks()).isGreaterThan(0.95 * alone.outOf());
        }
        assertThat(digests).hasSize(5);
    }

    @Test
    void whoWorkedOnAnothersBoardsAndWhoHandedInNothingIsSeen() throws IOException, FileRefused {
        ClassSet made = set(Handed.shelf(), new ClassList(List.of("AB", "=CD", "EF")), 1, 0.05);
        Path handOut = folder.resolve("out");
        Path back = Files.createDirectory(folder.resolve("back"));
        made.write(handOut);
        Scenario of = Exercise.read(handOut.resolve(made.given().get(1).file()));
        Files.writeString(back.resolve("a"), ActionWriter.text(WorkedAttempt.of(of, " ab ", "2026-02-03T09:10:00Z")));

        ExerciseSet read = ExerciseSet.read(handOut);
        Marked marked = Handed.marked(back, read, false).get(0);

        assertThat(read.learners()).containsExactly("AB", "=CD", "EF");
        assertThat(marked.madeFor()).isEqualTo("=CD");
        assertThat(marked.onAnothersBoards()).isTrue();
        assertThat(read.missing(List.of(marked.learner()))).containsExactly("=CD", "EF");
    }

    @Test
    void aBandTooNarrowIsSaidAndTheNearestGiven() {
        ClassSet set = set(Handed.shelf(), ClassList.numbered(2), 1, 0);

        assertThat(set.allInBand()).isFalse();
        for (Given given : set.given()) {
            Variant v = given.variant();
            assertThat(v.inBand()).isFalse();
            assertThat(v.tries()).isLessThanOrEqualTo(Variants.MOST_TRIES);
            assertThat(v.difficulty().value()).isCloseTo(set.target(), within(0.1));
        }
    }

    @Test
    void filesAreNamedSoThatAnyDiskTakesThem() {
        ClassList odd = new ClassList(List.of("A/B", "a\\b", "../..", "Zoë", "7", ".", "A B"));

        List<String> names =
                set(Handed.shelf(), odd, 1, 1).given().stream().map(Given::file).toList();

        assertThat(names)
                .doesNotHaveDuplicates()
                .allMatch(n -> n.matches("porch-shelf-[A-Za-z0-9-]+\\.scenario\\.json"))
                .startsWith("porch-shelf-A-B.scenario.json", "porch-shelf-a-b-2.scenario.json");
    }

    @Test
    void anotherSetIsNeverWrittenOver() throws FileRefused, IOException {
        ClassSet first = shelf(2, 1);
        first.write(folder);
        first.write(folder);
        byte[] before = Files.readAllBytes(folder.resolve("porch-shelf-P01.scenario.json"));

        assertThatThrownBy(() -> shelf(2, 2).write(folder)).hasMessageContaining("another set in this folder");

        assertThat(folder.resolve("porch-shelf-P01.scenario.json")).hasBinaryContent(before);
        assertThat(Files.readAllLines(folder.resolve(ClassSet.INDEX))).hasSize(3);
    }

    /** Attempts are known again by the index: without it, a learner who is at work could not be marked. */
    @Test
    void theIndexOfAnotherSetOrOfMoreLearnersIsNeverWrittenOver() throws FileRefused, IOException {
        shelf(2, 1).write(folder);
        byte[] before = Files.readAllBytes(folder.resolve(ClassSet.INDEX));
        Scenario other = Exercise.read(Handed.SHIPPED.resolve("key-ledge.scenario.json"));

        assertThatThrownBy(() -> set(other, ClassList.numbered(1), 1, 1).write(folder))
                .hasMessageContaining("has a learner whom this one hasn't, P01; it is left as it is");
        assertThatThrownBy(() -> shelf(1, 1).write(folder)).hasMessageContaining("hasn't, P02");
        assertThat(folder.resolve(ClassSet.INDEX)).hasBinaryContent(before);
        assertThat(folder.resolve("key-ledge-P01.scenario.json")).doesNotExist();

        shelf(3, 1).write(folder);
        assertThat(ExerciseSet.read(folder).learners()).containsExactly("P01", "P02", "P03");

        Path own = Files.createDirectory(folder.resolve("own"));
        Files.writeString(own.resolve(ClassSet.INDEX), "book,page\nmine,1\n");
        assertThatThrownBy(() -> shelf(1, 1).write(own)).hasMessageContaining("expected the index of a class set");
        assertThat(own.resolve(ClassSet.INDEX)).hasContent("book,page\nmine,1\n");
    }

    @Test
    void anExerciseWithoutTimberCantBeVaried() {
        var panel = Fixtures.sheet("panel", "Panel")
                .size(300, 200, 9)
                .runs(JobAxis.ACROSS, JobAxis.DEEP)
                .part();
        Scenario sheets = Fixtures.scenario(
                "sheets",
                Fixtures.drawing(new Overall(300, 200, 9), List.of(panel)),
                List.of(Fixtures.board("A").size(300, 200, 9).sheet().board()));

        assertThatThrownBy(() -> Variants.of(sheets, 1, 0.05)).hasMessageContaining("no timber board");
    }

    static Stream<Arguments> lists() {
        return Stream.of(
                Arguments.of("P1\nP2\nP3\n", List.of("P1", "P2", "P3")),
                Arguments.of("\ufefflearner\r\nAB\r\nCD\r\n", List.of("AB", "CD")),
                Arguments.of("form,Learner,born\n7b,AB,2012\n7b,CD,2013\n", List.of("AB", "CD")),
                Arguments.of("\"Mc, D\"\n\nE\n", List.of("Mc, D", "E")),
                Arguments.of(" AB ,1\n\n,\nCD,2", List.of("AB", "CD")));
    }

    @ParameterizedTest
    @MethodSource("lists")
    void aClassListIsReadAndOnlyTheLearnersKept(String text, List<String> learners) throws IOException, FileRefused {
        Path file = folder.resolve("class.csv");
        Files.writeString(file, text);

        assertThat(ClassList.read(file).learners()).isEqualTo(learners);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "learner\n", "AB\nab\n", "\n\n", "\"Mc, D\";x\n", "A\u0007\n"})
    void aClassListThatIsNoneIsRefused(String text) throws IOException {
        Path file = folder.resolve("class.csv");
        Files.writeString(file, text);
        assertThatThrownBy(() -> ClassList.read(file)).isInstanceOf(FileRefused.class);
        Files.write(file, "Zo\u00eb".getBytes(StandardCharsets.ISO_8859_1));
        assertThatThrownBy(() -> ClassList.read(file)).hasMessageContaining("expected UTF-8 text");
        assertThatThrownBy(() -> ClassList.read(folder)).hasMessageContaining("expected a file");
    }
}
