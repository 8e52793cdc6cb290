package org.marktwice.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Point;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.assertj.swing.core.MouseButton;
import org.assertj.swing.finder.JFileChooserFinder;
import org.assertj.swing.fixture.JFileChooserFixture;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.marktwice.bench.CannotDo;
import org.marktwice.feedback.ReplayModel;
import org.marktwice.feedback.SheetModel;

/** An attempt stepped through and saved, at the window. */
class ReplayAtTheWindowTest extends BeforeAWindow {
    private ReplayModel steps;

    @BeforeEach
    void openTheSheet() throws CannotDo {
        var scenario = Samples.scenario("porch-shelf");
        var attempt = Samples.attempt("porch-shelf", "flawed").file().attempt();
        steps = ReplayModel.of(scenario, attempt, Samples.sheet("porch-shelf", "flawed"));
        Session session = Session.of(scenario, attempt, Session.Sink.none(), () -> 0);
        AtTheWindow.onScreen(() -> {
            at.frame.walk().showSheet(session);
            return true;
        });
        at.robot.waitForIdle();
    }

    private void atStep(int step) {
        assertThat(at.text("step"))
                .startsWith(("Step " + step + " of " + steps.last()).toUpperCase(java.util.Locale.ROOT));
    }

    private int deciding(int from, boolean forwards) {
        return steps.nextDeciding(from, forwards).orElseThrow();
    }

    private int wanting(IntPredicate more) {
        return IntStream.rangeClosed(1, steps.last()).filter(more).findFirst().orElseThrow();
    }

    @Test
    void keysGoByStepByFindingAndToTheEnds() {
        at.key(KeyEvent.VK_R);
        atStep(0);
        at.keys(KeyEvent.VK_RIGHT, KeyEvent.VK_RIGHT, KeyEvent.VK_RIGHT);
        atStep(3);
        at.key(KeyEvent.VK_LEFT);
        atStep(2);
        at.key(KeyEvent.VK_RIGHT, KeyEvent.VK_SHIFT);
        int first = deciding(2, true);
        atStep(first);
        at.key(KeyEvent.VK_RIGHT, KeyEvent.VK_SHIFT);
        atStep(deciding(first, true));
        at.key(KeyEvent.VK_LEFT, KeyEvent.VK_SHIFT);
        atStep(first);
        at.key(KeyEvent.VK_END);
        atStep(steps.last());
        at.key(KeyEvent.VK_HOME);
        atStep(0);
    }

    @Test
    void theMouseGoesByStepByFindingAndAlongTheBar() {
        at.click("replay");
        at.click("step-on");
        at.click("on-to-finding");
        int first = deciding(1, true);
        atStep(first);
        at.click("on-to-finding");
        at.click("back-to-finding");
        atStep(first);
        at.click("to-end");
        at.click("step-back");
        atStep(steps.last() - 1);
        at.click("to-start");
        atStep(0);
        TickBar bar = at.robot.finder().findByName("ticks", TickBar.class, true);
        Point middle = AtTheWindow.onScreen(() -> new Point(bar.getWidth() / 2, bar.getHeight() / 2));
        Strokes.pointing(at.robot, () -> at.robot.click(bar, middle, MouseButton.LEFT_BUTTON, 1));
        int near = Math.round(steps.last() / 2f);
        assertThat(at.text("step")).matches("STEP (" + (near - 1) + "|" + near + ") OF .*");
    }

    @Test
    void itPlaysToTheEndFasterAndSlower() {
        at.key(KeyEvent.VK_R);
        at.key(KeyEvent.VK_DOWN);
        assertThat(at.text("pace")).isEqualTo("speed ×0.5");
        at.keys(KeyEvent.VK_UP, KeyEvent.VK_UP, KeyEvent.VK_UP);
        at.click("faster");
        assertThat(at.text("pace")).isEqualTo("speed ×8");
        at.key(KeyEvent.VK_SPACE);
        at.until("the last step", () -> at.text("done").equals("Handed in"));
        at.until("the end", () -> "Play".equals(at.window.button("play").text()));
        atStep(steps.last());
    }

    @Test
    void whatTheLearnerHadStandsBesideTheModelAnswerWithWhatTheStepDecided() {
        at.key(KeyEvent.VK_R);
        assertThat(at.readable()).contains("Not named yet");
        int wrong = wanting(
                s -> steps.decidedBy(s).stream().anyMatch(l -> l.verdict() == org.marktwice.rulebook.Verdict.WRONG));
        for (int step = 0; step < wrong; step++) at.key(KeyEvent.VK_RIGHT);
        List<String> read = at.readable();
        SheetModel.Line worst = steps.decidedBy(wrong).get(0);
        assertThat(read)
                .anyMatch(t -> t.startsWith(worst.word() + ": " + worst.title()))
                .anyMatch(t -> t.endsWith(" more, on the mark sheet"))
                .anyMatch(t -> t.startsWith("Right upright: face 1 to the"))
                .anyMatch(t -> t.equals("MODEL ANSWER FOR BOARD " + steps.boardAt(wrong)));
    }

    private void save(Path file) {
        JFileChooserFixture chooser = JFileChooserFinder.findFileChooser().using(at.robot);
        chooser.fileNameTextBox().setText(file.toString());
        chooser.approve();
        at.until("saved", () -> at.text("line").equals("Saved as " + file.getFileName() + "."));
    }

    @Test
    void theReplayIsSavedForABrowserByKeys() throws IOException {
        at.key(KeyEvent.VK_R);
        at.ctrl(KeyEvent.VK_S);
        Path file = home.resolve("shelf.html");
        save(file);
        assertThat(Files.readString(file)).startsWith("<!DOCTYPE html>").contains("Porch shelf", "id=\"step-31\"");
    }

    @Test
    void theMarkSheetIsSavedForPaperByMouse() throws IOException {
        at.click("save");
        Path file = home.resolve("shelf.pdf");
        save(file);
        try (PDDocument document = Loader.loadPDF(file.toFile())) {
            assertThat(new PDFTextStripper().getText(document)).contains("12.08 of 20 marks", "Hints used");
        }
    }

    @Test
    void theMarkSheetIsSavedAsTextAndWhatCannotBeSavedIsSaid() throws IOException {
        SheetScreen screen = (SheetScreen) AtTheWindow.onScreen(() -> Objects.requireNonNull(at.frame.screen()));
        Path file = home.resolve("marks.txt");
        to(screen, file);
        at.until("saved", () -> at.text("line").equals("Saved as marks.txt."));
        assertThat(Files.readString(file)).startsWith("Porch shelf, level 3\nLearner: P04\nMarks: ");
        to(screen, home.resolve("nowhere").resolve("marks.txt"));
        at.until("said", () -> at.text("line").contains("it can't be saved"));
    }

    private static void to(SheetScreen screen, Path file) {
        AtTheWindow.onScreen(() -> {
            screen.saving().to(file);
            return true;
        });
    }
}
