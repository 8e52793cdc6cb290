package org.marktwice.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Point;
import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.assertj.swing.core.MouseButton;
import org.junit.jupiter.api.Test;
import org.marktwice.files.QuizFile;
import org.marktwice.quiz.Answers;
import org.marktwice.quiz.Kind;
import org.marktwice.quiz.Offer;
import org.marktwice.quiz.Question;
import org.marktwice.quiz.Quiz;
import org.marktwice.view.quiz.QuizAtTheWindow;

/** A whole quiz from the start page and back, by keys alone and by mouse alone; every way of answering is in each. */
class WholeQuizTest extends BeforeAWindow {
    private static final List<Kind> OTHERS = List.of(Kind.CHAINED, Kind.PROPER_PAIR, Kind.BARK_SIDE, Kind.END_DOWN);

    /** The learner was asked yesterday what is due today: a number, drawn answers, a place to point at, and words. */
    @Override
    void prepare() throws Exception {
        Path journal = new LearnerFolder(home).quizJournal("P07");
        StringBuilder lines = new StringBuilder("{\"format\":\"marktwice-quiz/1\",\"learner\":\"P07\"}\n");
        for (Kind kind : OTHERS) {
            String said = Quiz.question(kind, 1, 5).answers().rightOne().text().replace("\"", "");
            lines.append("{\"at\":\"2026-01-11T18:00:00Z\",\"kind\":\"" + kind.id()
                    + "\",\"level\":1,\"seed\":5,\"said\":\"" + said + "\"}\n");
        }
        Files.writeString(journal, lines);
        LearnerFolder folder = new LearnerFolder(home);
        folder.save(folder.settings().withLearner("P07"));
    }

    private Question question() {
        return AtTheWindow.onScreen(() -> QuizAtTheWindow.question(Objects.requireNonNull(at.frame.screen())));
    }

    private boolean isAsking() {
        return at.title().equals("Quiz");
    }

    private QuizFile journal() throws Exception {
        return QuizFile.read(new LearnerFolder(home).quizJournal("P07"));
    }

    @Test
    void byKeysAlone() throws Exception {
        at.until("what is due", () -> at.frame.getTitle().equals("Marktwice"));
        at.ctrl(KeyEvent.VK_U);
        int asked = 0;
        while (isAsking()) {
            Question question = question();
            asked++;
            if (asked == 1) at.key(KeyEvent.VK_F3);
            if (question.answers().how() == Answers.How.FIGURE) {
                at.type(question.answers().rightOne().text().replaceAll("[^0-9.]", ""));
            } else if (asked % 2 == 0) {
                at.key(KeyEvent.VK_A + question.answers().right());
            } else {
                for (int i = 0; i <= question.answers().right(); i++) at.key(KeyEvent.VK_DOWN);
            }
            at.key(KeyEvent.VK_ENTER);
            assertThat(at.text("verdict")).as(question.asks()).isEqualTo("Right");
            assertThat(at.showing("why")).isTrue();
            at.key(KeyEvent.VK_ENTER);
        }

        assertThat(at.title()).isEqualTo("Quiz: how far you are");
        assertThat(asked).isEqualTo(7);
        assertThat(journal().answers()).hasSize(OTHERS.size() + 7);
        assertThat(journal().answers().get(OTHERS.size()).sure()).contains(false);
        assertThat(at.text("stands-chained")).isEqualTo("on the way");
        at.ctrl(KeyEvent.VK_E);
        at.until("what is due", () -> at.showing("quiz-due"));
        at.until(
                "nothing due",
                () -> at.window.label("quiz-due").target().getText().startsWith("Nothing is due"));
    }

    @Test
    void byMouseAlone() throws Exception {
        at.click("to-quiz");
        int asked = 0;
        boolean wrongOnce = false;
        while (isAsking()) {
            Question question = question();
            Answers answers = question.answers();
            asked++;
            boolean wrong = !wrongOnce && answers.how() == Answers.How.POINT;
            int offer = wrong ? (answers.right() + 1) % answers.offers().size() : answers.right();
            if (answers.how() == Answers.How.FIGURE) {
                // there is no figure to point at: the one thing that has to be typed
                Strokes.pointing(at.robot, () -> at.window.textBox("figure").click());
                at.type(answers.rightOne().text().replaceAll("[^0-9.]", ""));
            } else if (answers.how() == Answers.How.POINT) {
                Offer.Place place =
                        Objects.requireNonNull(answers.offers().get(offer).place());
                var view = at.robot.finder().findByName("picture", true);
                Point to = AtTheWindow.onScreen(
                        () -> QuizAtTheWindow.place(Objects.requireNonNull(at.frame.screen()), place));
                Strokes.pointing(at.robot, () -> at.robot.click(view, to, MouseButton.LEFT_BUTTON, 1));
            } else {
                var row = at.robot.finder().findByName("offer-" + Answers.letter(offer), true);
                Strokes.pointing(at.robot, () -> at.robot.click(row, MouseButton.LEFT_BUTTON));
            }
            at.click("answer");
            assertThat(at.text("verdict")).as(question.asks()).isEqualTo(wrong ? "Not so" : "Right");
            wrongOnce |= wrong;
            at.click("answer");
        }

        assertThat(asked).isEqualTo(7);
        assertThat(wrongOnce).isTrue();
        assertThat(at.showing("standings")).isTrue();
        at.click("practise");
        assertThat(at.title()).isEqualTo("Quiz");
        at.click("progress");
        at.click("back");
        assertThat(at.text("count")).isEqualTo("1 of 8");
        assertThat(journal().answers()).hasSize(OTHERS.size() + 7);
    }
}
