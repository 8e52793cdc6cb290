package org.marktwice.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.marktwice.files.QuizFile;
import org.marktwice.quiz.Kind;
import org.marktwice.quiz.Offer;
import org.marktwice.quiz.Quiz;
import org.marktwice.view.quiz.QuizAtTheWindow;

/** The page that says how far one is in the quiz: what is shaky leads to the bench, a sheet is printed, a copy is saved. */
class QuizProgressTest extends BeforeAWindow {
    /** One idea was answered rightly yesterday, and one wrongly. */
    @Override
    void prepare() throws Exception {
        Path journal = new LearnerFolder(home).quizJournal("P07");
        Files.writeString(
                journal,
                "{\"format\":\"marktwice-quiz/1\",\"learner\":\"P07\"}\n"
                        + line(Kind.MARK_TAIL, true)
                        + line(Kind.HANDED_PAIR, false));
        LearnerFolder folder = new LearnerFolder(home);
        folder.save(folder.settings().withLearner("P07"));
    }

    @BeforeEach
    void goToTheProgress() {
        at.click("to-quiz");
        at.click("progress");
    }

    private static String line(Kind kind, boolean right) {
        String said = Quiz.question(kind, 1, 5).answers().offers().stream()
                .filter(o -> o.equals(Quiz.question(kind, 1, 5).answers().rightOne()) == right)
                .map(Offer::text)
                .findFirst()
                .orElseThrow();
        return "{\"at\":\"2026-01-11T18:00:00Z\",\"kind\":\"" + kind.id() + "\",\"level\":1,\"seed\":5,\"said\":\""
                + said + "\"}\n";
    }

    private Screen screen() {
        return Objects.requireNonNull(at.frame.screen());
    }

    @Test
    void whatIsShakyLeadsToAnExerciseThatTrainsIt() {
        assertThat(at.text("stands-handed-pair")).isEqualTo("shaky");
        assertThat(at.text("stands-mark-tail")).isEqualTo("on the way");
        assertThat(at.text("stands-chained")).isEqualTo("not met yet");
        String word = at.window.button("train").target().getText();

        at.click("train");

        assertThat(at.showing("to-quiz")).isTrue();
        StartScreen start = (StartScreen) screen();
        String title = AtTheWindow.onScreen(() -> start.selected().orElseThrow().title());
        assertThat(word).isEqualTo("Go to “" + title + "”");
        assertThat(AtTheWindow.onScreen(
                        () -> start.selected().orElseThrow().drawing().pairs().size()))
                .as("it has a left and a right")
                .isPositive();
    }

    @Test
    void aSheetIsSavedAndABadNameIsRefusedInOneLine() {
        Path sheet = home.resolve("sheet.pdf");
        AtTheWindow.onScreen(() -> {
            QuizAtTheWindow.saveSheet(screen(), sheet);
            return true;
        });
        at.until("saved", () -> at.text("line").startsWith("Saved as sheet.pdf, "));
        assertThat(sheet).isNotEmptyFile();

        AtTheWindow.onScreen(() -> {
            QuizAtTheWindow.saveSheet(screen(), home.resolve("sheet.txt"));
            return true;
        });
        at.until("refused", () -> at.text("line").contains("expected a name that ends in .pdf"));
    }

    @Test
    void theCopyForTheTeacherIsWhatTheJournalSaysAndNothingElse() throws Exception {
        Path copy = home.resolve("for-the-teacher.quiz.jsonl");
        AtTheWindow.onScreen(() -> {
            QuizAtTheWindow.save(screen(), copy);
            return true;
        });

        assertThat(at.text("line")).startsWith("Saved as for-the-teacher.quiz.jsonl.");
        QuizFile read = QuizFile.read(copy);
        assertThat(read.learner()).isEqualTo("P07");
        assertThat(read.answers())
                .isEqualTo(QuizFile.read(new LearnerFolder(home).quizJournal("P07"))
                        .answers());
    }

    @Test
    void escapeLeadsBackToTheQuestion() {
        at.key(KeyEvent.VK_ESCAPE);

        assertThat(at.title()).isEqualTo("Quiz");
    }
}
