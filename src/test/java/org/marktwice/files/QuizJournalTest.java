package org.marktwice.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuizJournalTest {
    private static final String HEADER = "{\"format\":\"marktwice-quiz/1\",\"learner\":\"P07\"}\n";

    @TempDir
    private Path folder;

    private static QuizFile.Answer answer(long seed, String said) {
        OffsetDateTime at = OffsetDateTime.parse("2026-01-12T18:30:05+01:00");
        return new QuizFile.Answer(
                at, "bark-side", 2, seed, said, seed % 2 == 0 ? Optional.of(true) : Optional.empty());
    }

    @Test
    void whatIsWrittenIsReadBack() throws Exception {
        Path file = folder.resolve("new folder").resolve("P07.quiz.jsonl");
        QuizJournal.append(file, "P07", answer(7, "face 1"));
        QuizJournal.append(file, "P07", answer(281474976710655L, "23.5 mm"));
        QuizJournal.append(file, "P07", answer(8, "√5 × 0.3, \"or\" ÷"));

        QuizFile read = QuizFile.read(file);

        assertThat(read.learner()).isEqualTo("P07");
        assertThat(read.answers())
                .containsExactly(
                        answer(7, "face 1"), answer(281474976710655L, "23.5 mm"), answer(8, "√5 × 0.3, \"or\" ÷"));
        assertThat(read.notices()).isEmpty();
        assertThat(read.text()).isEqualTo(Files.readString(file));
        for (String line : Files.readAllLines(file)) {
            assertThat(SchemaTest.QUIZ_LINE.validate(line, com.networknt.schema.InputFormat.JSON))
                    .isEmpty();
        }
    }

    /** Law: cut off at any byte, all whole lines count, and the next answer stands on a line of its own. */
    @Test
    void aJournalCutOffAnywhereGoesOn() throws Exception {
        Path whole = folder.resolve("whole.quiz.jsonl");
        QuizJournal.append(whole, "P07", answer(1, "a"));
        QuizJournal.append(whole, "P07", answer(2, "b"));
        byte[] bytes = Files.readAllBytes(whole);
        for (int cut = 0; cut < bytes.length; cut++) {
            Path file = folder.resolve("cut" + cut + ".quiz.jsonl");
            Files.write(file, Arrays.copyOf(bytes, cut));
            int lines = cut < HEADER.length() - 1 ? 0 : wholeLines(bytes, cut);

            QuizJournal.append(file, "P07", answer(9, "c"));

            List<QuizFile.Answer> read = QuizFile.read(file).answers();
            assertThat(read).as("cut at %s", cut).hasSize(lines + 1).endsWith(answer(9, "c"));
        }
    }

    private static int wholeLines(byte[] bytes, int cut) {
        String text = new String(bytes, 0, cut, StandardCharsets.UTF_8);
        String[] lines =
                text.substring(Math.min(text.length(), HEADER.length())).split("\n", -1);
        return (int) Arrays.stream(lines).filter(l -> l.endsWith("}")).count();
    }

    @Test
    void aTornLastLineIsLeftOutWithANotice() throws Exception {
        Path file = folder.resolve("a.quiz.jsonl");
        QuizJournal.append(file, "P07", answer(1, "a"));
        Files.writeString(file, Files.readString(file) + "{\"at\":\"2026");

        QuizFile read = QuizFile.read(file);

        assertThat(read.answers()).hasSize(1);
        assertThat(read.notices()).singleElement().asString().contains(":3: the last line was cut off");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '^',
            value = {
                "{\"kind\":\"a\"}|a.quiz.jsonl:2:1: $: the field \"at\" is missing",
                "{\"at\":\"noon\",\"kind\":\"a\",\"level\":1,\"seed\":1,\"said\":\"b\"}"
                        + "|a.quiz.jsonl:2:7: $.at: expected a time such as \"2026-01-12T18:30:00+01:00\", found \"noon\"",
                "{\"at\":\"2026-01-12T18:30Z\",\"kind\":\"a\",\"level\":0,\"seed\":1,\"said\":\"b\"}"
                        + "|a.quiz.jsonl:2:46: $.level: expected a whole number from 1 to 9, found 0",
                "{\"at\":\"2026-01-12T18:30Z\",\"kind\":\"a\",\"level\":1,\"seed\":0.5,\"said\":\"b\"}"
                        + "|a.quiz.jsonl:2:55: $.seed: expected a whole number from 0 to 4503599627370496, found 0.5",
                "{\"right\":true}|a.quiz.jsonl:2:2: $.right: unknown field \"right\": known here are at, kind, level, seed, said and sure"
            })
    void aLineThatIsNoAnswerIsRefused(String line, String expected) {
        byte[] bytes = (HEADER + line + "\n" + line + "\n").getBytes(StandardCharsets.UTF_8);

        assertThatThrownBy(() -> QuizFile.read("a.quiz.jsonl", bytes))
                .isInstanceOf(FileRefused.class)
                .hasMessage(expected);
    }

    @Test
    void anotherProgramsFileIsLeftAsItIs() throws IOException {
        Path file = folder.resolve("a.quiz.jsonl");
        Files.writeString(file, "a shopping list, longer than any header of ours could be, with milk and bread\n");

        assertThatThrownBy(() -> QuizJournal.append(file, "P07", answer(1, "a")))
                .isInstanceOf(FileRefused.class);
        assertThat(file).content().startsWith("a shopping list").endsWith("bread\n");
    }

    @Test
    void aNewerJournalIsRefusedKindly() {
        byte[] bytes = HEADER.replace("/1", "/2").getBytes(StandardCharsets.UTF_8);

        assertThatThrownBy(() -> QuizFile.read("a.quiz.jsonl", bytes)).hasMessageContaining("newer Marktwice");
    }
}
