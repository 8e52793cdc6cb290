package org.marktwice.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.marktwice.quiz.Answers;
import org.marktwice.quiz.Kind;
import org.marktwice.quiz.Question;
import org.marktwice.quiz.Quiz;

class QuizSheetTest {
    private static final long SEED = 3;
    private static final List<Question> ALL = Quiz.of(SEED, Kind.values().length, 2);

    private static PdfRead read(List<Page> pages) {
        return PdfRead.of(Pdf.of(pages, "quiz"));
    }

    private static String words(String text) {
        return text.replaceAll("[\\s\u00a0]+", " ");
    }

    @Test
    void theSameSeedGivesTheSameFileAndAnotherGivesAnother() {
        List<Question> two = Quiz.of(8, 2, 1);

        byte[] once = Pdf.of(QuizSheet.of(two, 8, Paper.A4).all(), "quiz");

        assertThat(Pdf.of(QuizSheet.of(Quiz.of(8, 2, 1), 8, Paper.A4).all(), "quiz"))
                .isEqualTo(once);
        assertThat(Pdf.of(QuizSheet.of(Quiz.of(9, 2, 1), 9, Paper.A4).all(), "quiz"))
                .isNotEqualTo(once);
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void everyQuestionIsThereInFullWithRoomToAnswer(Paper paper) {
        PdfRead questions = read(QuizSheet.of(ALL, SEED, paper).questions());
        String all = words(questions.all());

        for (int i = 0; i < ALL.size(); i++) {
            Question q = ALL.get(i);
            assertThat(all).contains((i + 1) + " " + q.kind().idea() + " sure not sure");
            assertThat(all).contains(words(q.asks()), words(q.beside()));
            Answers answers = q.answers();
            if (answers.how() == Answers.How.FIGURE) continue;
            for (int j = 0; j < answers.offers().size(); j++) {
                boolean drawn = answers.offers().get(j).drawn() != null;
                String text = drawn ? "" : " " + words(answers.offers().get(j).text());
                assertThat(all).contains(Answers.letter(j) + text);
            }
        }
        long figures = ALL.stream()
                .filter(q -> q.answers().how() == Answers.How.FIGURE)
                .count();
        assertThat(all.split("answer mm", -1)).hasSize((int) figures + 1);
        assertThat(all).contains("name", "class", "date", "At the real bench: work held");
    }

    @Test
    void whatIsRightAndWhyStandsOnOtherPagesOnly() {
        QuizSheet.Bound sheet = QuizSheet.of(ALL, SEED, Paper.A4);
        String questions = words(read(sheet.questions()).all());
        String answers = words(read(sheet.answers()).all());

        for (int i = 0; i < ALL.size(); i++) {
            Question q = ALL.get(i);
            String why = lastWords(q.reason().text());
            assertThat(answers).contains((i + 1) + " " + q.kind().idea());
            assertThat(answers).contains(why);
            assertThat(questions).doesNotContain(words(q.reason().text()));
        }
        assertThat(answers.split("Right: ", -1)).hasSize(ALL.size() + 1);
        assertThat(questions).doesNotContain("Right: ", "Answers");
        assertThat(sheet.all())
                .hasSize(sheet.questions().size() + sheet.answers().size());
    }

    /** Columns wrap where they like: the last few words stand on one line, or are found with the line's end between. */
    private static String lastWords(String text) {
        List<String> all = List.of(words(text).strip().split(" "));
        return all.subList(Math.max(0, all.size() - 2), all.size()).stream().collect(Collectors.joining(" "));
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void everyPageHasItsSeedAndKeepsWithinTheBorder(Paper paper) {
        QuizSheet.Bound sheet = QuizSheet.of(ALL, SEED, paper);

        for (List<Page> pages : List.of(sheet.questions(), sheet.answers())) {
            PdfRead read = read(pages);
            Rectangle2D frame = TitleBlock.frame(paper, false);
            for (int i = 0; i < pages.size(); i++) {
                assertThat(read.texts().get(i))
                        .contains("Quiz of 16 questions", "level 2 · seed 3", (i + 1) + " of " + pages.size());
                assertThat(read.places().get(i)).allMatch(frame::contains);
            }
        }
    }

    /** Every kind at every level: no two letters share more than a sliver, and no page is a heading or a line alone. */
    @ParameterizedTest
    @CsvSource({"A4, 1", "LETTER, 2", "A4, 3"})
    void noLetterLiesOnAnotherAndNoPageIsBare(Paper paper, int level) {
        PdfRead read = read(
                QuizSheet.of(Quiz.of(20 + level, 16, level), 20 + level, paper).all());

        for (List<Rectangle2D> letters : read.places()) {
            assertThat(letters).hasSizeGreaterThan(200);
            assertThat(overlapping(letters)).isEmpty();
        }
    }

    private static List<String> overlapping(List<Rectangle2D> letters) {
        List<String> found = new ArrayList<>();
        for (int i = 0; i < letters.size(); i++) {
            for (int j = i + 1; j < letters.size(); j++) {
                Rectangle2D both = letters.get(i).createIntersection(letters.get(j));
                if (both.getWidth() > 1.2 && both.getHeight() > 1.2) found.add(letters.get(i) + " " + letters.get(j));
            }
        }
        return found;
    }

    @Test
    void questionsAreNeverBrokenOverTwoPages() {
        PdfRead read = read(QuizSheet.of(ALL, SEED, Paper.LETTER).questions());

        for (Question q : ALL) {
            long pages = read.texts().stream()
                    .map(QuizSheetTest::words)
                    .filter(t -> t.contains(words(q.asks())) || t.contains(words(q.beside())))
                    .count();
            assertThat(pages).as(q.asks()).isEqualTo(1);
        }
        assertThat(read.texts()).allMatch(t -> t.contains("sure not sure"));
    }
}
