package org.marktwice.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.io.IOException;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Joint;
import org.marktwice.drawing.Part;
import org.marktwice.files.FileRefused;
import org.marktwice.files.ScenarioFile;
import org.marktwice.scenario.Scenario;
import org.marktwice.scenario.Stage;

/** A whole exercise set from nothing without once touching the mouse, setting-out and all. */
class SettingByKeysTest extends BeforeAWindow {
    @BeforeEach
    void beginAnExercise() {
        at.ctrl(KeyEvent.VK_T);
        at.until("on the desk", () -> at.title().equals("Teacher's desk"));
        at.ctrl(KeyEvent.VK_N);
        at.until("setting", () -> at.title().equals("New exercise"));
        at.until("in the title", () -> at.window.textBox("title").target().isFocusOwner());
    }

    private void type(String text) {
        at.robot.enterText(text);
    }

    private void tab(int times) {
        for (int i = 0; i < times; i++) at.key(KeyEvent.VK_TAB);
    }

    /** What is typed into one field after another, each left by Tab; empty passes one over. */
    private void across(String... fields) {
        for (String field : fields) {
            if (!field.isEmpty()) type(field);
            tab(1);
        }
    }

    /** Goes down the list that one is in until it says this. */
    private void choose(String box, String words) {
        for (int i = 0; i < 9 && !words.equals(at.window.comboBox(box).selectedItem()); i++) at.key(KeyEvent.VK_DOWN);
        at.key(KeyEvent.VK_ENTER);
        assertThat(at.window.comboBox(box).selectedItem()).isEqualTo(words);
    }

    private boolean isIn(String checkBox) {
        return AtTheWindow.onScreen(() -> at.window.checkBox(checkBox).target().isFocusOwner());
    }

    private void part(int index, String name, String... figures) {
        at.until(
                "in its name",
                () -> at.window.textBox("part-" + index + "-name").target().isFocusOwner());
        across(name, "");
        across(figures);
    }

    @Test
    void fromNothingToAFinishedExercise() throws IOException, FileRefused {
        type("Key shelf");
        at.ctrl(KeyEvent.VK_N);
        part(0, "Left side", "200", "100", "18", "0", "0", "0");
        choose("part-0-runs", "high, deep");
        tab(1);
        choose("part-0-side", "right");
        tab(1);
        choose("part-0-edge", "front");
        at.key(KeyEvent.VK_N, KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT);
        part(1, "Right side", "200", "100", "18", "282");
        at.ctrl(KeyEvent.VK_N);
        part(2, "Shelf", "276", "100", "18", "12", "0", "59");
        tab(1);
        choose("part-2-side", "top");
        tab(1);
        choose("part-2-edge", "front");
        // a little more by the arrow key
        for (int i = 0; i < 3; i++) at.key(KeyEvent.VK_TAB, KeyEvent.VK_SHIFT);
        at.key(KeyEvent.VK_UP);

        join(KeyEvent.VK_RIGHT, KeyEvent.VK_LEFT);
        join(KeyEvent.VK_LEFT, KeyEvent.VK_RIGHT);
        assertThat(at.text("joint-1-parts")).isEqualTo("in Right side, takes Shelf");

        at.ctrl(KeyEvent.VK_2);
        at.until(
                "at the boards",
                () -> at.window.radioButton("boards-grown").target().isFocusOwner());
        at.key(KeyEvent.VK_DOWN);
        at.key(KeyEvent.VK_UP);
        at.until("growing", () -> at.showing("rack-view"));
        at.until("solved", () -> at.text("outcome").contains("Can be solved"));
        at.ctrl(KeyEvent.VK_3);
        at.until("at the task", () -> at.window.comboBox("level").target().isFocusOwner());
        for (int i = 0; i < 12 && !isIn("stage-setting-out"); i++) tab(1);
        assertThat(isIn("stage-setting-out")).isTrue();
        at.key(KeyEvent.VK_SPACE);
        assertThat(at.text("standing")).endsWith("Nothing is missing");
        at.ctrl(KeyEvent.VK_S);
        at.until("saved", () -> at.text("line").startsWith("Saved, finished"));

        Scenario set = ScenarioFile.read(home.resolve("Desk/key-shelf.scenario.json"));
        assertThat(set.stages()).contains(Stage.SETTING_OUT);
        assertThat(set.drawing().joints())
                .extracting(Joint::kind)
                .containsOnly("through-housing")
                .hasSize(2);
        Part shelf = set.drawing().part("shelf").orElseThrow();
        assertThat(shelf.box().min(2)).isEqualTo(60);
        assertThat(shelf.faceSide()).containsExactly(Direction.TOP);
    }

    /** From the shelf, which is picked out, to a side and back again: Enter points at each. */
    private void join(int there, int back) {
        at.ctrl(KeyEvent.VK_J);
        at.until(
                "at the drawing",
                () -> at.robot.finder().findByName("job-sheet", true).isFocusOwner());
        at.key(there);
        at.key(KeyEvent.VK_ENTER);
        assertThat(at.text("line")).startsWith("Cut into ");
        at.key(back);
        at.key(KeyEvent.VK_ENTER);
        assertThat(at.text("line")).startsWith("Joined by a through housing");
    }
}
