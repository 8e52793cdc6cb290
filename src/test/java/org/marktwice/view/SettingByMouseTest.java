package org.marktwice.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Point;
import java.io.IOException;
import javax.swing.JSlider;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Joint;
import org.marktwice.files.FileRefused;
import org.marktwice.files.ScenarioFile;
import org.marktwice.scenario.Practice;
import org.marktwice.scenario.Scenario;
import org.marktwice.scenario.Stage;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;
import org.marktwice.view.desk.DeskPixels;

/**
 * A whole exercise set from nothing by the mouse: words and figures are typed into what was clicked, and no other key is
 * touched.
 */
class SettingByMouseTest extends BeforeAWindow {
    @BeforeEach
    void beginAnExercise() {
        at.click("to-desk");
        at.click("new-exercise");
    }

    private void fill(String part, String name, String... figures) {
        desk.fill(part + "-name", name);
        String[] fields = {"length", "width", "thickness", "from-left", "from-front", "from-bottom"};
        for (int i = 0; i < figures.length; i++) desk.fill(part + "-" + fields[i], figures[i]);
    }

    private Component named(String name) {
        return at.robot.finder().findByName(name, true);
    }

    private void join(String in, String takes) {
        at.click("join-parts");
        desk.point(in);
        desk.point(takes);
    }

    private String box(String field) {
        return String.valueOf(at.window.textBox(field).text());
    }

    @Test
    void fromNothingToAFinishedExercise() throws IOException, FileRefused {
        desk.fill("title", "Step stool");
        aJobOfThreeParts();
        joints();
        boardsGrown();
        boardsByHand();
        task();
        assertThat(at.text("standing")).isEqualTo("Not saved · Nothing is missing");
        at.click("save-exercise");
        at.until("saved", () -> at.text("line").startsWith("Saved, finished"));
        assertThat(at.title()).isEqualTo("Step stool: set");
        check(ScenarioFile.read(home.resolve("Desk/step-stool.scenario.json")));
        isTriedAndLeft();
    }

    private void aJobOfThreeParts() {
        at.click("add-part");
        fill("part-0", "Left leg", "220", "150", "18", "0", "0", "0");
        desk.choose("part-0-runs", "high, deep");
        desk.choose("part-0-side", "right");
        desk.choose("part-0-edge", "front");
        at.click("add-part");
        fill("part-1", "Tread", "276", "150", "18", "12", "0", "150");
        desk.choose("part-1-side", "top");
        desk.choose("part-1-edge", "front");
        desk.point("left-leg");
        at.click("add-opposite");
        assertThat(box("part-2-name")).isEqualTo("Right leg");
        assertThat(at.window.comboBox("part-2-side").selectedItem()).isEqualTo("left");
        // the mirror image lies in the middle of what there is; it is dragged out until it is flush with 300
        Component sheet = named("job-sheet");
        Point from = AtTheWindow.onScreen(() -> DeskPixels.handleOf(sheet, "right-leg"));
        desk.drag(sheet, from, new Point(from.x + 8, from.y));
        assertThat(Double.parseDouble(box("part-2-from-left"))).isGreaterThan(270);
        desk.fill("part-2-from-left", "282");
        at.click("undo-edit");
        at.click("redo-edit");
        assertThat(box("part-2-from-left")).isEqualTo("282");
    }

    private void joints() {
        join("left-leg", "tread");
        assertThat(at.text("line")).startsWith("Joined by a through housing");
        join("right-leg", "tread");
        desk.choose("joint-1-kind", "stopped housing");
        assertThat(at.text("joint-1-parts")).isEqualTo("in Right leg, takes Tread");
        at.click("joint-1-remove");
        assertThat(at.showing("joint-1-parts")).isFalse();
        join("right-leg", "tread");
        assertThat(at.text("standing")).endsWith("It has no boards yet");
    }

    private void boardsGrown() {
        Strokes.pointing(
                at.robot, () -> at.window.toggleButton("tab-set-boards").click());
        Strokes.pointing(at.robot, () -> at.window.radioButton("boards-grown").click());
        at.until("solved", () -> at.text("outcome").contains("Can be solved"));
        JSlider slider = at.robot.finder().findByType(JSlider.class, true);
        slider(slider, 0.5, 0.25);
        assertThat(slider.getValue()).isLessThan(40);
        at.click("other-boards");
        assertThat(box("seed")).isEqualTo("2");
        at.until("solved", () -> at.text("outcome").contains("Can be solved"));
        slider(slider, 0.25, 0.9);
        at.until("farther off", () -> at.window.button("come-nearer").isEnabled());
        String wrong = at.text("outcome");
        at.click("come-nearer");
        at.until("looked through", () -> at.text("outcome").contains("Can be solved"));
        assertThat(wrong(at.text("outcome"))).isGreaterThan(wrong(wrong));
        slider(slider, 0.9, 0.25);
    }

    private void slider(JSlider slider, double from, double to) {
        int high = slider.getHeight() / 2;
        desk.drag(
                slider,
                new Point((int) (from * slider.getWidth()), high),
                new Point((int) (to * slider.getWidth()), high));
    }

    /** How many of 100 ways to lay a board are wrong. */
    private static int wrong(String outcome) {
        return Integer.parseInt(outcome.replaceAll(".*: (\\d+) of 100 ways.*", "$1"));
    }

    /** Those that were grown are gone on with by hand: a knot and the pith are dragged, a board is added and taken away. */
    private void boardsByHand() {
        Strokes.pointing(at.robot, () -> at.window.radioButton("boards-drawn").click());
        at.until("at the board", () -> at.showing("knot-sheet"));
        Component sheet = named("knot-sheet");
        Component stem = named("end-section");
        Point pith = AtTheWindow.onScreen(() -> DeskPixels.ofPith(stem));
        String before = box("board-pith-y");
        desk.drag(stem, pith, new Point(pith.x + 14, pith.y));
        assertThat(box("board-pith-y")).isNotEqualTo(before);
        Strokes.pointing(at.robot, () -> at.window.button("undo-edit").click());
        assertThat(box("board-pith-y")).isEqualTo(before);
        at.click("add-board");
        Point bare = AtTheWindow.onScreen(() -> DeskPixels.ofPlace(sheet, new SurfacePoint(Surface.FACE_1, 60, 70)));
        Strokes.pointing(
                at.robot, () -> at.robot.click(sheet, bare, org.assertj.swing.core.MouseButton.LEFT_BUTTON, 2));
        assertThat(box("knot-k1-x")).isNotEmpty();
        String x = box("knot-k1-x");
        desk.drag(sheet, bare, new Point(bare.x + 30, bare.y));
        assertThat(Double.parseDouble(box("knot-k1-x"))).isGreaterThan(Double.parseDouble(x) + 5);
        at.tick("knot-k1-dead");
        at.click("knot-k1-remove");
        assertThat(at.showing("knot-k1-x")).isFalse();
        at.click("remove-board");
        at.until("solved", () -> at.text("outcome").contains("Can be solved"));
    }

    private void task() {
        Strokes.pointing(at.robot, () -> at.window.toggleButton("tab-set-task").click());
        desk.choose("level", "Level 3");
        desk.fill("brief", "A stool to reach the upper shelf.");
        at.tick("stage-setting-out");
        desk.choose("guidance", "when they hand in");
        at.tick("aid-undo");
        desk.fill("minutes", "25");
        desk.choose("face-side", "the truest, turned in");
        desk.fill("knot-mm", "12");
        desk.fill("worth-knot-clear-of-joint", "4");
        desk.fill("title", "Step stool");
    }

    private void check(Scenario set) {
        assertThat(set.level()).isEqualTo(3);
        assertThat(set.brief()).isEqualTo("A stool to reach the upper shelf.");
        assertThat(set.minutes()).hasValue(25);
        assertThat(set.stages()).containsExactly(Stage.FACES, Stage.NAMES, Stage.TURNS, Stage.SETTING_OUT);
        assertThat(set.practice().guidance()).isEqualTo(Practice.Guidance.AT_HAND_IN);
        assertThat(set.practice().faceSide()).isEqualTo(Practice.FaceSide.TRUEST_IN);
        assertThat(set.practice().knotMargin().mm()).isEqualTo(12);
        assertThat(set.practice().worth()).containsEntry("knot-clear-of-joint", 4.0);
        assertThat(set.drawing().joints())
                .extracting(Joint::kind)
                .containsExactly("through-housing", "through-housing");
        assertThat(set.drawing().part("right-leg").orElseThrow().faceSide()).containsExactly(Direction.LEFT);
        assertThat(set.stock()).isEmpty();
        assertThat(set.boards()).hasSize(4);
    }

    private void isTriedAndLeft() {
        at.click("try-exercise");
        at.until("on the bench", () -> at.title().equals("Step stool"));
        at.menu("item-desk");
        at.until("back", () -> at.title().equals("Step stool: set"));
        at.click("leave-set");
        at.until("on the desk", () -> at.window.table("exercises-set").rowCount() == 1);
    }
}
