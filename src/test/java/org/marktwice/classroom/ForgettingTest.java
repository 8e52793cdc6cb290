package org.marktwice.classroom;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.marktwice.files.FileRefused;
import org.marktwice.files.RecordFile;

/** What there is about a learner goes, and nothing else does. */
class ForgettingTest {
    @TempDir
    Path folder;

    @BeforeEach
    void term() throws IOException, FileRefused, Variants.CannotVary {
        ClassList list = new ClassList(List.of("AB", "CD", "ABC"));
        Path set = folder.resolve("set");
        ClassSet.make(Variants.of(Handed.shelf(), 1, 1), "porch-shelf", list, BulkMarking.Progress.NONE)
                .write(set);
        put("back/essay.txt", Handed.by("AB", Handed.perfect(), 1));
        put("back/torn.attempt.jsonl", Handed.by(" ab", Handed.flawed(), 2).substring(0, 1500));
        put("back/spoilt.attempt.jsonl", Handed.by("AB", Handed.perfect(), 1) + "no action\n{}\n");
        put("back/AB.attempt.jsonl", Handed.by("CD", Handed.perfect(), 3));
        put("back/ABC.attempt.jsonl", Handed.by("ABC", Handed.perfect(), 4));
        put("class.csv", "form,Learner\n7b,AB\n7b,CD\n");
        put("term.record.json", """
                {"format": "marktwice-record/1", "scenario": "porch-shelf", "learners": [
                 {"learner": "AB", "measured": {"across": 520}}, {"learner": "CD", "measured": {"across": 521}}]}
                """);
        put("jobs.json", """
                {"format": "marktwice-record/1", "scenario": "porch-shelf", "learners": [
                 {"learner": "CD", "measured": {}}, {"learner": "Ab", "measured": {"across": 520}}]}
                """);
        put("quiz/anyone.quiz.jsonl", "{\"format\":\"marktwice-quiz/1\",\"learner\":\"AB\"}\n");
        put("quiz/another.quiz.jsonl", "{\"format\":\"marktwice-quiz/1\",\"learner\":\"CD\"}\n");
        put("plain.csv", "name\nAB\n");
        put("report AB.txt", "about AB");
    }

    private void put(String name, String text) throws IOException {
        Path file = folder.resolve(name);
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
    }

    private List<String> names(List<Path> files) {
        return files.stream()
                .map(f -> folder.relativize(f).toString().replace('\\', '/'))
                .toList();
    }

    @Test
    void attemptsTheVariantAndLinesOfTablesAreFoundWhateverTheFilesAreCalled() throws FileRefused {
        Forgetting found = Forgetting.find(folder, "ab ");

        assertThat(names(found.files()))
                .containsExactly(
                        "back/essay.txt",
                        "back/spoilt.attempt.jsonl",
                        "back/torn.attempt.jsonl",
                        "quiz/anyone.quiz.jsonl",
                        "set/porch-shelf-AB.scenario.json");
        assertThat(names(found.tables()))
                .containsExactly("class.csv", "jobs.json", "set/index.csv", "term.record.json");
        // the file of another learner bears the name; what is in it says whose it is
        assertThat(names(found.doubtful())).containsExactly("back/AB.attempt.jsonl", "report AB.txt");
        assertThat(folder.resolve("back/essay.txt")).exists();
    }

    @Test
    void whatWasFoundIsDeletedAndTheOthersKeepTheirs() throws FileRefused, IOException {
        Forgetting.find(folder, "AB").delete();

        assertThat(Files.readString(folder.resolve("class.csv"))).isEqualToIgnoringNewLines("form,Learner\n7b,CD\n");
        assertThat(ExerciseSet.read(folder.resolve("set")).learners()).containsExactly("CD", "ABC");
        assertThat(RecordFile.read(folder.resolve("term.record.json")).rows())
                .containsExactly(new RecordFile.Row("CD", Map.of("across", 521.0)));
        assertThat(RecordFile.read(folder.resolve("jobs.json")).rows())
                .extracting(RecordFile.Row::learner)
                .containsExactly("CD");
        assertThat(folder.resolve("back/torn.attempt.jsonl")).doesNotExist();
        assertThat(folder.resolve("quiz/anyone.quiz.jsonl")).doesNotExist();
        assertThat(folder.resolve("quiz/another.quiz.jsonl")).exists();
        assertThat(folder.resolve("back/AB.attempt.jsonl")).exists();
        assertThat(folder.resolve("plain.csv")).exists();
        assertThat(Forgetting.find(folder, "AB").isEmpty()).isTrue();
    }

    @Test
    void otherLinesOfATableStayToTheByte() throws IOException, FileRefused {
        put("marks.csv", "\ufefflearner;marks\r\n\r\nCD; 1,5\r\n\"AB\";\"two\r\nlines\"\r\n'=EF;\"x\"\r\n");

        Forgetting.find(folder, "ab").delete();

        assertThat(folder.resolve("marks.csv"))
                .hasBinaryContent("\ufefflearner;marks\r\n\r\nCD; 1,5\r\n'=EF;\"x\"\r\n".getBytes(UTF_8));

        Forgetting.find(folder, "=EF").delete();

        assertThat(folder.resolve("marks.csv"))
                .hasBinaryContent("\ufefflearner;marks\r\n\r\nCD; 1,5\r\n".getBytes(UTF_8));
    }

    @Test
    void theHeadOfATableStaysWhateverALearnerIsCalled() throws IOException, FileRefused {
        put("odd.csv", "form,Learner\n7b,learner\n7b,CD\n");

        Forgetting.find(folder, "LEARNER").delete();

        assertThat(folder.resolve("odd.csv")).hasContent("form,Learner\n7b,CD\n");
        assertThat(folder.resolve("class.csv")).hasContent("form,Learner\n7b,AB\n7b,CD\n");
    }

    @Test
    void whatCantBeDeletedKeepsNothingElse() throws IOException, FileRefused {
        Forgetting found = Forgetting.find(folder, "AB");
        Path first = found.files().get(0);
        Files.delete(first);
        put("back/essay.txt/in the way", "x");

        assertThatThrownBy(found::delete).hasMessage(first + ": it can't be deleted");

        Forgetting left = Forgetting.find(folder, "AB");
        assertThat(left.files()).isEmpty();
        assertThat(left.tables()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {".", "./back/..", "./set"})
    void theVariantIsFoundHoweverTheFolderIsCalled(String called) throws FileRefused {
        Path variant = folder.resolve("set/porch-shelf-AB.scenario.json");

        Forgetting.find(folder.resolve(called), "AB").delete();

        assertThat(variant).doesNotExist();
        assertThat(folder.resolve("set/porch-shelf-ABC.scenario.json")).exists();
    }

    @Test
    void aFolderBehindALinkIsLookedInto() throws IOException, FileRefused {
        Path link = Files.createSymbolicLink(folder.resolve("link"), folder.resolve("back"));

        assertThat(Forgetting.find(link, "AB").files()).contains(link.resolve("essay.txt"));
    }

    @Test
    void aNameAfterTheSameLettersInAnotherWordIsSeen() throws IOException, FileRefused {
        put("cab-AB.pdf", "x");
        put("cab-crab.pdf", "x");

        assertThat(names(Forgetting.find(folder, "AB").doubtful()))
                .contains("cab-AB.pdf")
                .doesNotContain("cab-crab.pdf");
    }

    @Test
    void anIndexThatPointsElsewhereDeletesNothingThere() throws IOException, FileRefused {
        put("other/index.csv", "learner,file,digest\nAB,../back/ABC.attempt.jsonl,x\nAB,..,y\nAB,,z\n");

        assertThat(names(Forgetting.find(folder, "AB").files())).doesNotContain("back/ABC.attempt.jsonl");
    }

    @Test
    void whoIsNotThereAndWhereNothingIsIsSaid() throws FileRefused {
        assertThat(Forgetting.find(folder, "XY").isEmpty()).isTrue();
        assertThat(Forgetting.find(folder, "").isEmpty()).isTrue();
        assertThatThrownBy(() -> Forgetting.find(folder.resolve("none"), "AB")).hasMessageContaining("no such folder");
        assertThatThrownBy(() -> Forgetting.find(folder.resolve("class.csv"), "AB"))
                .hasMessageContaining("expected a folder, found a file");
    }
}
