package org.marktwice.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.swing.JTextArea;
import org.junit.jupiter.api.Test;
import org.marktwice.bench.Action;
import org.marktwice.scenario.Scenario;

/** The job as it would come out, from the bench and from the mark sheet: told, only seen, or not shown, as the exercise has it. */
class JobAtTheWindowTest extends BeforeAWindow {
    private void worked(String id) {
        Scenario scenario = Samples.scenario(id);
        List<Action> work = Samples.work(id, "flawed");
        AtTheWindow.onScreen(() -> {
            at.frame.walk().begin(scenario);
            for (Action action : work) at.frame.walk().session().orElseThrow().perform(t -> action);
            return true;
        });
        at.robot.waitForIdle();
    }

    private String line() {
        JTextArea line = at.robot.finder().findByName("line", JTextArea.class, true);
        return AtTheWindow.onScreen(line::getText);
    }

    @Test
    void byMouse() {
        worked("book-prop");
        at.tool("job");
        assertThat(at.title()).isEqualTo("Book prop: the job");
        assertThat(at.readable())
                .contains("3 of 3 parts stand, 1 of 2 joints goes together.")
                .anyMatch(t -> t.startsWith("Set out from its marks, the Right cheek is cut on the right;"));
        assertThat(at.text("seen-from")).isEqualTo("Seen from the front and the right");
        at.click("walk-on");
        assertThat(at.text("seen-from")).isEqualTo("Seen from the right and the back");
        at.click("walk-back");
        at.click("walk-back");
        assertThat(at.text("seen-from")).isEqualTo("Seen from the left and the front");
        at.clickOn("outcome-right-housing");
        assertThat(at.text("seen-from")).isEqualTo("Seen from the front and the right");
        at.click("leave-job");
        assertThat(at.title()).isEqualTo("Book prop");
    }

    @Test
    void byKeys() {
        worked("book-prop");
        at.key(KeyEvent.VK_PAGE_DOWN);
        String board = at.text("board-title");
        assertThat(board).startsWith("Board B");
        at.key(KeyEvent.VK_F5);
        assertThat(at.title()).isEqualTo("Book prop: the job");
        assertThat(focused()).isEqualTo("outcome-right-housing");
        at.key(KeyEvent.VK_UP);
        assertThat(focused()).isEqualTo("outcome-left-housing");
        at.key(KeyEvent.VK_RIGHT);
        assertThat(at.text("seen-from")).isEqualTo("Seen from the right and the back");
        at.keys(KeyEvent.VK_DOWN, KeyEvent.VK_DOWN);
        assertThat(focused()).startsWith("outcome-");
        at.key(KeyEvent.VK_ESCAPE);
        assertThat(at.title()).isEqualTo("Book prop");
        assertThat(at.text("board-title")).isEqualTo(board);
    }

    private String focused() {
        return AtTheWindow.onScreen(() -> String.valueOf(
                at.frame.getMostRecentFocusOwner() == null
                        ? ""
                        : at.frame.getMostRecentFocusOwner().getName()));
    }

    @Test
    void toldAtHandInItIsOnlySeenBefore() {
        worked("porch-shelf");
        at.key(KeyEvent.VK_F5);
        assertThat(at.readable())
                .contains("3 of 3 parts stand.", "Board B: face side to the right, face edge to the front.")
                .noneMatch(t -> t.contains("solid wood") || t.contains("Drawn"));
        at.key(KeyEvent.VK_ESCAPE);
        at.click("hand-in");
        at.click("skip");
        at.key(KeyEvent.VK_J);
        assertThat(at.readable()).anyMatch(t -> t.endsWith("The Shelf meets solid wood there, 6 mm deep."));
        at.click("leave-job");
        assertThat(at.title()).isEqualTo("Porch shelf: mark sheet");
        at.click("job");
        assertThat(at.title()).isEqualTo("Porch shelf: the job");
    }

    @Test
    void whereTurnsAreNotShownInTheJobItWaitsForTheMarkSheet() {
        worked("larder-door");
        assertThat(at.showing("tool-job")).isFalse();
        at.key(KeyEvent.VK_F5);
        assertThat(at.title()).isEqualTo("Larder door");
        assertThat(line()).startsWith("Here the job is shown with the mark sheet");
    }

    @Test
    void inAnExaminationItIsNotShown() throws Exception {
        assertThat(Files.readString(Path.of("scenarios/wall-cupboard.scenario.json")))
                .contains("\"examination\"");
        worked("wall-cupboard");
        assertThat(at.showing("tool-job")).isFalse();
        at.key(KeyEvent.VK_F5);
        assertThat(at.title()).isEqualTo("Wall cupboard");
        assertThat(line()).startsWith("An examination: the job is shown with the mark sheet");
    }
}
