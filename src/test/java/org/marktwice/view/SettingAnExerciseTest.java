package org.marktwice.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.marktwice.drawing.Joint;
import org.marktwice.files.DraftFile;
import org.marktwice.files.FileRefused;
import org.marktwice.files.ScenarioFile;
import org.marktwice.scenario.Draft;
import org.marktwice.scenario.Scenario;

/** A teacher sets an exercise from nothing, by the keyboard and by pointing at parts. */
class SettingAnExerciseTest extends BeforeAWindow {
    @BeforeEach
    void beginAnExercise() {
        at.click("to-desk");
        at.click("new-exercise");
    }

    private List<Path> files() throws IOException {
        try (Stream<Path> files = Files.list(home.resolve("Desk"))) {
            return files.map(Path::getFileName).sorted().toList();
        }
    }

    @Test
    void whatIsMissingIsSaidAndAHalfMadeOneIsKept() throws IOException, FileRefused {
        desk.type("title", "Boot bench");
        at.ctrl(KeyEvent.VK_N);
        desk.part(0, "Seat", "620", "a hand");
        assertThat(at.text("part-0-gap")).contains("width", "thickness").doesNotContain("length");
        at.ctrl(KeyEvent.VK_S);
        at.until("saved", () -> at.text("line").startsWith("Saved as a draft"));
        assertThat(files()).containsExactly(Path.of("boot-bench.draft.json"));
        Draft kept = DraftFile.read(home.resolve("Desk/boot-bench.draft.json"));
        assertThat(kept.parts())
                .singleElement()
                .satisfies(
                        p -> assertThat(p.figures()).doesNotContainKey(org.marktwice.scenario.DraftPart.Figure.WIDTH));
        assertThat(kept.id()).isEqualTo("boot-bench");
    }

    @Test
    void fromNothingToAFinishedExercise() throws IOException, FileRefused {
        desk.threeParts();
        assertThat(at.text("part-2-gap")).contains("overlap by").contains("without a joint");
        assertThat(at.window.comboBox("part-1-side").selectedItem()).isEqualTo("left");
        at.click("join-parts");
        desk.point("left-side");
        desk.point("shelf");
        assertThat(at.text("line")).startsWith("Joined by a through housing");
        at.click("join-parts");
        desk.point("right-side");
        desk.point("shelf");
        assertThat(at.window.label("joint-1-parts").text()).isEqualTo("in Right side, takes Shelf");
        at.ctrl(KeyEvent.VK_2);
        at.window.radioButton("boards-grown").click();
        at.until("solved", () -> at.text("outcome").contains("Can be solved"));
        assertThat(at.text("standing")).endsWith("Nothing is missing");
        at.ctrl(KeyEvent.VK_S);
        at.until("saved", () -> at.text("line").startsWith("Saved, finished"));
        assertThat(files()).containsExactly(Path.of("key-shelf.scenario.json"));
        Scenario set = ScenarioFile.read(home.resolve("Desk/key-shelf.scenario.json"));
        assertThat(set.drawing().joints())
                .extracting(Joint::kind)
                .containsOnly("through-housing")
                .hasSize(2);
        assertThat(set.boards()).hasSize(4);

        at.ctrl(KeyEvent.VK_ENTER);
        at.until("on the bench", () -> at.title().equals("Key shelf"));
        at.ctrl(KeyEvent.VK_T);
        assertThat(at.title()).isEqualTo("Key shelf: set");
        assertThat(files()).containsExactly(Path.of("key-shelf.scenario.json"));
    }

    @Test
    void everyStepIsUndoneAndDoneAgain() {
        desk.threeParts();
        String before = at.text("standing");
        at.click("remove-part");
        assertThat(at.text("standing")).isNotEqualTo(before);
        at.ctrl(KeyEvent.VK_Z);
        assertThat(at.text("standing")).isEqualTo(before);
        assertThat(at.window.textBox("part-2-from-left").text()).isEqualTo("12");
        int steps = 0;
        for (; at.isEnabled("undo-edit"); steps++) at.ctrl(KeyEvent.VK_Z);
        assertThat(steps).isGreaterThanOrEqualTo(20);
        assertThat(at.window.textBox("title").text()).isEmpty();
        for (; at.isEnabled("redo-edit"); steps--) at.key(KeyEvent.VK_Z, KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT);
        assertThat(steps).isEqualTo(-1);
        assertThat(at.window.textBox("title").text()).isEqualTo("Key shelf");
        assertThat(at.window.textBox("part-1-from-left").text()).isEqualTo("282");
        assertThat(at.showing("part-2-name")).isFalse();
    }

    @Test
    void whatIsLeftUnsavedIsKept() throws IOException {
        desk.type("title", "Left alone");
        at.click("leave-set");
        at.until("on the desk", () -> at.window.table("exercises-set").rowCount() == 1);
        assertThat(files()).containsExactly(Path.of("left-alone.draft.json"));
    }
}
