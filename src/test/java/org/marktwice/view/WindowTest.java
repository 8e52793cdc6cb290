package org.marktwice.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.swing.JList;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.marktwice.timber.Surface;

/** What the window does besides an exercise: settings, files that are refused, a folder that can't be written to. */
class WindowTest extends BeforeAWindow {
    @AfterEach
    void end() {
        AtTheWindow.onScreen(() -> {
            Look.install(false, 1);
            return true;
        });
    }

    private Settings saved() {
        return new LearnerFolder(home).settings();
    }

    @Test
    void lightAndDarkAndTheTextSizeAreKept() {
        at.ctrl(KeyEvent.VK_D);
        assertThat(saved().dark()).isTrue();
        assertThat(AtTheWindow.onScreen(Look::isDark)).isTrue();
        at.click("larger");
        at.ctrl(KeyEvent.VK_EQUALS);
        assertThat(saved().textSize()).isEqualTo(1.3);
        at.click("smaller");
        assertThat(saved().textSize()).isEqualTo(1.15);
        float body = AtTheWindow.onScreen(() -> Look.Style.BODY.font().getSize2D());
        assertThat(body).isEqualTo(13 * 1.15f);
    }

    @Test
    void theLookChangesUnderWhicheverScreenIsShowing() {
        at.click("enter");
        at.tool("face-side");
        at.clickBoard(Surface.FACE_1, 210, 20);
        at.ctrl(KeyEvent.VK_D);
        at.ctrl(KeyEvent.VK_EQUALS);
        assertThat(AtTheWindow.onScreen(() -> at.session().attempt().actions())).hasSize(1);
        at.click("hand-in");
        at.ctrl(KeyEvent.VK_D);
        at.click("skip");
        at.ctrl(KeyEvent.VK_D);
        at.click("replay");
        at.ctrl(KeyEvent.VK_D);
        at.ctrl(KeyEvent.VK_MINUS);
        assertThat(at.title()).isEqualTo("Peg rail: replay");
        assertThat(saved().dark()).isFalse();
    }

    @Test
    void theReplayRunsAtHalfToEightTimesTheUsualSpeed() {
        at.click("enter");
        at.tool("face-side");
        at.clickBoard(Surface.FACE_1, 210, 20);
        at.click("hand-in");
        at.click("skip");
        at.click("replay");
        assertThat(at.text("pace")).isEqualTo("speed ×1");
        at.click("slower");
        at.click("slower");
        assertThat(at.text("pace")).isEqualTo("speed ×0.5");
        at.keys(KeyEvent.VK_UP, KeyEvent.VK_UP, KeyEvent.VK_UP, KeyEvent.VK_UP, KeyEvent.VK_UP);
        assertThat(at.text("pace")).isEqualTo("speed ×8");
    }

    @Test
    void aQuestionMarkOpensTheKeySheetOnEveryScreen() {
        for (String screen : List.of("start", "bench")) {
            if (screen.equals("bench")) at.click("enter");
            at.type("?");
            at.window.dialog("Keys").requireVisible();
            at.key(KeyEvent.VK_ESCAPE);
            assertThat(at.showing("Keys")).as(screen).isFalse();
        }
    }

    @Test
    void theKeySheetIsReadToItsEndByKeys() {
        at.key(KeyEvent.VK_F1);
        var bar =
                at.window.dialog("Keys").scrollPane("sheet").verticalScrollBar().target();
        int page = AtTheWindow.onScreen(bar::getVisibleAmount);
        assertThat(AtTheWindow.onScreen(bar::getValue)).isZero();
        at.key(KeyEvent.VK_PAGE_DOWN);
        assertThat(AtTheWindow.onScreen(bar::getValue)).isBetween(page / 2, page);
        at.key(KeyEvent.VK_DOWN);
        at.keys(KeyEvent.VK_PAGE_UP, KeyEvent.VK_PAGE_UP);
        assertThat(AtTheWindow.onScreen(bar::getValue)).isZero();
        at.key(KeyEvent.VK_ESCAPE);
    }

    @Test
    void whoIsLearningGoesOnTheAttempt() {
        at.window.textBox("learner").focus();
        at.type("P 12");
        at.key(KeyEvent.VK_ENTER);
        assertThat(saved().learner()).isEqualTo("P 12");
        assertThat(at.title()).isEqualTo("Marktwice");
        at.key(KeyEvent.VK_ENTER);
        assertThat(at.session().attempt().learner()).isEqualTo("P 12");
    }

    @Test
    void theArrowsChooseAnExercise() {
        at.keys(KeyEvent.VK_DOWN, KeyEvent.VK_DOWN);
        JList<?> list = at.window.list("exercises").target();
        assertThat(AtTheWindow.onScreen(list::getSelectedIndex)).isEqualTo(2);
        at.key(KeyEvent.VK_ENTER);
        assertThat(at.title()).isEqualTo("Wall lamp");
    }

    @Test
    void lookingAtAnExerciseLeavesNothingBehind() throws IOException {
        at.click("enter");
        at.ctrl(KeyEvent.VK_E);
        try (var files = Files.list(home)) {
            assertThat(files.map(f -> f.getFileName().toString())).containsExactly("settings.json");
        }
    }

    @Test
    void aScenarioFromAFileStandsAmongTheOthersAndARefusedOneIsSaidInOneLine() throws IOException {
        String text = Files.readString(Path.of("scenarios/peg-rail.scenario.json"));
        Path file = home.resolve("own.scenario.json");
        Files.writeString(file, text.replace("\"peg-rail\"", "\"own-rail\"").replace("Peg rail", "Own rail"));
        at.robot.waitForIdle();
        AtTheWindow.onScreen(() -> {
            at.frame.walk().open(file);
            return true;
        });
        JList<?> list = at.window.list("exercises").target();
        assertThat(AtTheWindow.onScreen(() -> list.getModel().getSize()))
                .isEqualTo(Shelf.scenarios().size() + 1);
        at.key(KeyEvent.VK_ENTER);
        assertThat(at.title()).isEqualTo("Own rail");
        at.ctrl(KeyEvent.VK_E);

        Files.writeString(file, "{\"format\": \"something else\"}");
        AtTheWindow.onScreen(() -> {
            at.frame.walk().open(file);
            return true;
        });
        assertThat(at.text("line")).contains("own.scenario.json").doesNotContain("\n", "Exception");
    }

    @Test
    void whereNothingCanBeSavedItIsSaidAndTheWorkStands() throws IOException {
        Path file = home.resolve("in-the-way");
        Files.writeString(file, "");
        at.close();
        at = new AtTheWindow(home);
        Session session = AtTheWindow.onScreen(() -> {
            at.frame.walk().begin(Samples.scenario("peg-rail"));
            return at.frame.walk().session().orElseThrow();
        });
        // the folder turns into a file under the window
        Path moved = Files.move(home, home.resolveSibling("moved-" + home.getFileName()));
        Files.writeString(home, "");
        at.tool("face-side");
        at.clickBoard(Surface.FACE_1, 210, 20);
        assertThat(session.attempt().actions()).hasSize(1);
        assertThat(at.text("notice")).startsWith("Not saved yet");
        Files.delete(home);
        Files.move(moved, home);
        at.tool("face-edge");
        at.clickBoard(Surface.EDGE_1, 210, 16);
        assertThat(session.trouble()).isEmpty();
        assertThat(new LearnerFolder(home).standing(session.scenario(), "").left())
                .isPresent();
    }
}
