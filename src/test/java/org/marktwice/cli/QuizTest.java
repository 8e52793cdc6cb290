package org.marktwice.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.marktwice.cli.Ran.marktwice;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** {@code quiz}: made, taken and marked. */
class QuizTest {
    @TempDir
    private Path folder;

    @Test
    void aQuizIsMadeWithOneRightAnswerToEachQuestionAndComesOutTheSame() {
        Ran ran = marktwice("quiz", "make", "--seed", 3, "--questions", 16, "--json");

        assertThat(ran.code()).isZero();
        assertThat(ran.err()).isEmpty();
        JsonNode json = ran.json();
        assertThat(json.get("questions")).hasSize(16);
        assertThat(json.get("questions").findValuesAsText("kind")).doesNotHaveDuplicates();
        for (JsonNode question : json.get("questions")) {
            List<String> answers = new ArrayList<>();
            question.get("answers").forEach(a -> answers.add(a.asText()));
            assertThat(answers).doesNotHaveDuplicates().hasSizeGreaterThan(1);
            assertThat(answers).contains(question.get("right").asText());
            assertThat(question.get("asks").asText()).isNotBlank();
            assertThat(question.get("explains").asText()).isNotBlank();
            assertThat(question.get("slips")).hasSize(answers.size());
        }
        assertThat(marktwice("quiz", "make", "--seed", 3, "--questions", 16, "--json")
                        .out())
                .isEqualTo(ran.out());
        assertThat(marktwice("quiz", "make", "--seed", 4, "--questions", 16, "--json")
                        .out())
                .isNotEqualTo(ran.out());
    }

    @Test
    void answersStandApartInPlainText() {
        String out = marktwice("quiz", "make", "--seed", 3, "--questions", 4).out();

        assertThat(out.substring(0, out.indexOf("Answers\n")))
                .contains("1  ", "4  ")
                .doesNotContain("because");
        assertThat(out.substring(out.indexOf("Answers\n"))).contains("  1  ", "  4  ");
    }

    @Test
    void aSheetForPaperIsWrittenWithItsAnswersAtTheEndOrApart() throws Exception {
        Path sheet = folder.resolve("sheet.pdf");
        Ran one = marktwice("quiz", "make", "--seed", 5, "--questions", 3, "--out", sheet);
        assertThat(one.code()).isZero();
        assertThat(one.out()).matches("(?s).*sheet.pdf: 2 pages, then 1 page of answers\n");
        assertThat(Files.readString(sheet, StandardCharsets.ISO_8859_1)).startsWith("%PDF");

        Path again = folder.resolve("again.pdf");
        Path answers = folder.resolve("answers.pdf");
        Ran two = marktwice(
                "quiz",
                "make",
                "--seed",
                5,
                "--questions",
                3,
                "--paper",
                "letter",
                "--out",
                again,
                "--answers",
                answers,
                "--json");
        JsonNode json = two.json();
        assertThat(json.get("file").asText()).isEqualTo(again.toString());
        assertThat(json.get("answers").asText()).isEqualTo(answers.toString());
        assertThat(json.get("paper").asText()).isEqualTo("letter");
        assertThat(json.get("questions").asInt()).isEqualTo(3);
        assertThat(json.get("pages").asInt()).isEqualTo(2);
        assertThat(json.get("answerPages").asInt()).isEqualTo(1);
        assertThat(answers).isNotEmptyFile();
    }

    @Test
    void aSheetIsMarkedFromItsSeed() {
        JsonNode questions = marktwice("quiz", "make", "--seed", 9, "--questions", 5, "--json")
                .json()
                .get("questions");
        List<String> right = new ArrayList<>();
        for (JsonNode question : questions) {
            List<String> answers = new ArrayList<>();
            question.get("answers").forEach(a -> answers.add(a.asText()));
            boolean figure = question.get("how").asText().equals("figure");
            int at = answers.indexOf(question.get("right").asText());
            right.add(figure ? answers.get(at) : String.valueOf((char) ('a' + at)));
        }

        Ran all = marktwice("quiz", "mark", "--seed", 9, "--questions", 5, "--answers", String.join(",", right));
        assertThat(all.code()).isZero();
        assertThat(all.out()).endsWith("5 of 5 right.\n");

        right.set(2, "-");
        Ran less = marktwice(
                "quiz", "mark", "--seed", 9, "--questions", 5, "--answers", String.join(",", right), "--json");
        assertThat(less.code()).isEqualTo(1);
        assertThat(less.json().get("right").asInt()).isEqualTo(4);
        assertThat(less.json().get("answers").get(2).get("said").isNull()).isTrue();
        assertThat(less.json().get("answers").get(2).get("should").asText())
                .isEqualTo(questions.get(2).get("right").asText());
    }

    @Test
    void aQuizTakenInTheTerminalIsKeptAndCanBeMarked() throws Exception {
        Path journal = folder.resolve("P07.quiz.jsonl");

        Ran taken = answering("d\nq\na?\n\n", "quiz", "take", "--learner", "P07", "--journal", journal);

        assertThat(taken.out())
                .contains(
                        "expected a letter from a to",
                        "1 of 3  What the marks point at",
                        "of 2 right. The rest waits.",
                        "again  tomorrow");
        assertThat(Files.readAllLines(journal)).hasSize(3).last().asString().contains("\"sure\":false");
        Ran marked = marktwice("quiz", "mark", journal, "--json");
        assertThat(marked.json().get("learner").asText()).isEqualTo("P07");
        assertThat(marked.json().get("outOf").asInt()).isEqualTo(2);
        assertThat(taken.out()).contains(marked.json().get("right").asInt() + " of 2 right.");
        assertThat(marktwice("check", journal).out()).contains("fine: quiz journal of P07, 2 answers");
        // a sitting goes on where it was left: only one of the day's three new ideas is left
        Ran again = answering("\n", "quiz", "take", "--learner", "P07", "--journal", journal);
        assertThat(again.out()).contains("Bark side and heart side").doesNotContain("What the marks point at");
    }

    @Test
    void whereNothingMoreIsSaidTheQuizIsLeftAndNothingIsKept() {
        Path journal = folder.resolve("P08.quiz.jsonl");

        Ran ended = answering("", "quiz", "take", "--learner", "P08", "--journal", journal);

        assertThat(ended.code()).isZero();
        assertThat(ended.out())
                .contains("3 questions. Answer by letter or number")
                .endsWith("> \nNothing answered. The rest waits.\n");
        assertThat(journal).doesNotExist();
    }

    /** There is a file where a folder should be, which stops whoever asks, as a share that is only read stops learners. */
    @Test
    void nobodyIsAskedWhereNoAnswerCouldBeKept() throws IOException {
        Path inTheWay = Files.writeString(folder.resolve("in the way"), "a file");
        Path journal = inTheWay.resolve("deeper").resolve("P08.quiz.jsonl");

        Ran ran = answering("a\n", "quiz", "take", "--learner", "P08", "--journal", journal);

        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err())
                .isEqualTo(journal + ": no answer could be saved: there is a file where a folder should be\n");
    }

    @Test
    void answersToQuestionsThatAreNotKnownAreLeftOutAndTold() throws Exception {
        String answer = ",\"level\":1,\"seed\":1,\"said\":\"a\"}\n";
        Path journal = Files.writeString(
                folder.resolve("P07.quiz.jsonl"),
                "{\"format\":\"marktwice-quiz/1\",\"learner\":\"P07\"}\n"
                        + "{\"at\":\"2026-01-01T10:00:00+01:00\",\"kind\":\"mark-tail\"" + answer
                        + "{\"at\":\"2026-01-01T10:01:00+01:00\",\"kind\":\"of-next-year\"" + answer);

        Ran marked = marktwice("quiz", "mark", journal, "--json");

        assertThat(marked.json().get("outOf").asInt()).isEqualTo(1);
        assertThat(marked.err()).hasLineCount(1).contains("left out: 1 answer to questions of a kind or level");
    }

    @Test
    void anotherLearnersJournalIsNotGoneOnWith() throws Exception {
        Path journal = folder.resolve("P09.quiz.jsonl");
        answering("a\n\n", "quiz", "take", "--learner", "P09", "--journal", journal);
        byte[] before = Files.readAllBytes(journal);

        Ran refused = answering("a\n", "quiz", "take", "--learner", "P10", "--journal", journal);

        assertThat(refused.code()).isEqualTo(2);
        assertThat(refused.err()).hasLineCount(1).contains("is the journal of \"P09\"");
        assertThat(journal).hasBinaryContent(before);
        Ran blank = answering("a\n", "quiz", "take", "--learner", " ", "--journal", folder.resolve("new.quiz.jsonl"));
        assertThat(blank.code()).isEqualTo(2);
        assertThat(blank.err()).contains("--learner: expected a name or number");
    }

    private static Ran answering(String lines, Object... args) {
        InputStream before = System.in;
        System.setIn(new ByteArrayInputStream(lines.getBytes(StandardCharsets.UTF_8)));
        try {
            return marktwice(args);
        } finally {
            System.setIn(before);
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "quiz|expected one of make, take, mark",
                "quiz make --questions 3|Missing required option: '--seed=N'",
                "quiz make --seed -1 --questions 3|--seed: expected a whole number from 0 to 4503599627370496",
                "quiz make --seed 1 --questions 0|--questions: expected a whole number from 1 to 500",
                "quiz make --seed 1 --questions 3 --level 4|--level: expected 1, 2 or 3",
                "quiz make --seed 1 --questions 3 --out sheet.doc|expected a name that ends in .pdf, .svg or .png",
                "quiz make --seed 1 --questions 101 --out sheet.pdf|--questions: expected at most 100 on a sheet",
                "quiz make --seed 1 --questions 3 --answers a.pdf|--answers: expected --out as well",
                "quiz make --seed 1 --questions 3 --paper letter|--paper: expected --out as well",
                "quiz make --seed 1 --questions 3 --out a.pdf --answers ./a.pdf|--answers: expected another file than --out",
                "quiz make --seed 1 --questions 3 --out no/such/folder/a.pdf|no/such/folder",
                "quiz mark|expected a journal, or --seed, --questions and --answers",
                "quiz mark --seed 1 --questions 1 --answers a,b|--answers: expected at most 1, found 2",
                "quiz take --questions 0|--questions: expected a whole number from 1 to 100",
                "quiz take --questions many|--questions",
                "quiz mark no-such.quiz.jsonl|there is no such file"
            })
    void wrongUseIsSaidInOneLine(String line, String says) {
        Ran ran = marktwice((Object[]) line.split(" "));

        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains(says).hasLineCount(1);
        assertThat(ran.out()).isEmpty();
    }
}
