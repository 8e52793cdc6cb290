package org.marktwice.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Point;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Set;
import org.assertj.swing.core.MouseButton;
import org.junit.jupiter.api.Test;
import org.marktwice.bench.Action;
import org.marktwice.bench.Mark;
import org.marktwice.bench.Tool;
import org.marktwice.timber.Surface;

/** The first exercise from the start page to the replay, by mouse alone and by keys alone, and one left half-way. */
class WholeExerciseTest extends BeforeAWindow {
    private static List<Mark> marks(Session session) {
        return AtTheWindow.onScreen(() -> session.bench().board("A").marks());
    }

    @Test
    void byMouseAlone() {
        at.exercise("Peg rail");
        at.click("enter");
        assertThat(at.title()).isEqualTo("Peg rail");
        at.tool("straight-edge");
        at.clickBoard(Surface.FACE_1, 210, 35);
        at.tool("winding-sticks");
        at.clickBoard(Surface.FACE_1, 210, 35);
        at.tool("try-square");
        at.clickBoard(Surface.EDGE_1, 210, 10);
        at.tool("face-side");
        at.clickBoard(Surface.FACE_1, 210, 20);
        at.tool("face-edge");
        at.clickBoard(Surface.EDGE_1, 210, 16);
        Session session = at.session();
        assertThat(marks(session))
                .extracting(Mark::kind, Mark::on, Mark::towards)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple(Mark.Kind.FACE_SIDE, Surface.FACE_1, Surface.EDGE_1),
                        org.assertj.core.groups.Tuple.tuple(Mark.Kind.FACE_EDGE, Surface.EDGE_1, Surface.FACE_1));

        at.click("hand-in");
        at.tick("proved-before-marked");
        at.click("hand-in");
        assertThat(at.text("total")).matches("[0-9.]+ of [0-9.]+");
        assertThat(AtTheWindow.onScreen(() -> session.bench().handedIn())).isTrue();
        assertThat(session.attempt().actions())
                .anySatisfy(a -> assertThat(a)
                        .isInstanceOfSatisfying(
                                Action.Estimate.class,
                                e -> assertThat(e.expects()).isEqualTo(Set.of("proved-before-marked"))));

        at.click("finding-one-pair-of-marks-A");
        at.click("finding-marks-share-arris-A");
        assertThat(at.board("board-view").lie().shows(Surface.FACE_1)).isTrue();

        at.click("replay");
        assertThat(at.text("done")).isEqualTo("Before the first step");
        at.click("step-on");
        assertThat(at.text("done")).startsWith("Board A: tried face 1");
        var ticks = at.robot.finder().findByName("ticks", TickBar.class, true);
        Point end = AtTheWindow.onScreen(() -> new Point(ticks.getWidth() - 2, ticks.getHeight() / 2));
        Strokes.pointing(at.robot, () -> at.robot.click(ticks, end, MouseButton.LEFT_BUTTON, 1));
        assertThat(at.text("done")).isEqualTo("Handed in");
        at.click("to-sheet");
        assertThat(at.title()).isEqualTo("Peg rail: mark sheet");
        at.click("exercises-button");
        at.until("the best mark", () -> at.showing("best-sheet"));
        at.click("best-sheet");
        at.until("its sheet", () -> at.title().equals("Peg rail: mark sheet"));
    }

    @Test
    void byKeysAlone() {
        at.key(KeyEvent.VK_ENTER);
        assertThat(at.title()).isEqualTo("Peg rail");
        at.keys(KeyEvent.VK_S, KeyEvent.VK_ENTER, KeyEvent.VK_ENTER);
        at.keys(KeyEvent.VK_F, KeyEvent.VK_ENTER);
        at.key(KeyEvent.VK_DOWN, KeyEvent.VK_SHIFT);
        at.key(KeyEvent.VK_ENTER);
        at.keys(KeyEvent.VK_E, KeyEvent.VK_DOWN, KeyEvent.VK_DOWN);
        at.key(KeyEvent.VK_UP, KeyEvent.VK_SHIFT);
        at.key(KeyEvent.VK_ENTER);
        Session session = at.session();
        assertThat(marks(session)).extracting(Mark::kind).containsExactly(Mark.Kind.FACE_SIDE, Mark.Kind.FACE_EDGE);
        assertThat(session.attempt().actions())
                .anySatisfy(a -> assertThat(a)
                        .isInstanceOfSatisfying(
                                Action.Test.class, t -> assertThat(t.with()).isEqualTo(Tool.STRAIGHT_EDGE)));

        at.ctrl(KeyEvent.VK_ENTER);
        assertThat(at.title()).isEqualTo("Peg rail: hand in");
        at.keys(KeyEvent.VK_SPACE, KeyEvent.VK_TAB, KeyEvent.VK_SPACE);
        at.ctrl(KeyEvent.VK_ENTER);
        assertThat(at.title()).isEqualTo("Peg rail: mark sheet");
        assertThat(session.attempt().actions())
                .anySatisfy(a -> assertThat(a)
                        .isInstanceOfSatisfying(
                                Action.Estimate.class,
                                e -> assertThat(e.expects().size()
                                                + java.util.Objects.requireNonNull(e.parts())
                                                        .size())
                                        .isEqualTo(2)));
        assertThat(at.text("total")).matches("[0-9.]+ of [0-9.]+");
        String first = chosenFinding();
        at.keys(KeyEvent.VK_DOWN, KeyEvent.VK_DOWN);
        String third = chosenFinding();
        assertThat(third).isNotEmpty().isNotEqualTo(first);
        at.key(KeyEvent.VK_UP);
        assertThat(chosenFinding()).isNotEmpty().isNotIn(first, third);

        at.key(KeyEvent.VK_R);
        assertThat(at.title()).isEqualTo("Peg rail: replay");
        at.key(KeyEvent.VK_RIGHT);
        assertThat(at.text("step")).startsWith("STEP 1 OF ");
        at.key(KeyEvent.VK_W);
        assertThat(at.showing("reasons")).isTrue();
        at.key(KeyEvent.VK_W);
        assertThat(at.showing("reasons")).isFalse();
        at.key(KeyEvent.VK_END);
        assertThat(at.text("done")).isEqualTo("Handed in");
        at.key(KeyEvent.VK_LEFT, KeyEvent.VK_SHIFT);
        assertThat(at.text("done")).startsWith("Board A: ");
        at.key(KeyEvent.VK_HOME);
        assertThat(at.text("done")).isEqualTo("Before the first step");
        at.key(KeyEvent.VK_ESCAPE);
        assertThat(at.title()).isEqualTo("Peg rail: mark sheet");
        at.ctrl(KeyEvent.VK_E);
        assertThat(at.title()).isEqualTo("Marktwice");
    }

    private String chosenFinding() {
        return AtTheWindow.onScreen(() ->
                at.frame.getMostRecentFocusOwner() instanceof FindingRow row ? String.valueOf(row.getName()) : "");
    }

    @Test
    void closedHalfWayItIsThereNextTime() throws IOException {
        at.click("enter");
        at.tool("face-side");
        at.clickBoard(Surface.FACE_1, 210, 20);
        List<Action> before = at.session().attempt().actions();
        assertThat(before).hasSize(1);
        at.window.close();
        at.robot.waitForIdle();
        assertThat(AtTheWindow.onScreen(() -> at.frame.isDisplayable())).isFalse();
        at.close();

        tearLastLine();
        at = new AtTheWindow(home);
        at.until(
                "going on",
                () -> "Go on"
                        .equals(at.robot
                                .finder()
                                .findByName("enter", javax.swing.JButton.class)
                                .getText()));
        at.click("enter");
        assertThat(at.session().attempt().actions()).isEqualTo(before);
        assertThat(at.text("notice")).contains(":3: ", "cut off");
        at.click("close-notice");
        at.tool("face-edge");
        at.clickBoard(Surface.EDGE_1, 210, 16);
        assertThat(marks(at.session())).hasSize(2);
        double first = before.get(0).t();
        assertThat(at.session().attempt().actions().get(1).t()).isGreaterThanOrEqualTo(first);
    }

    /** As a power cut leaves it: half a line after the last whole one. */
    private void tearLastLine() throws IOException {
        try (var files = Files.list(home)) {
            Path file = files.filter(f -> f.toString().endsWith(".attempt.jsonl"))
                    .findFirst()
                    .orElseThrow();
            Files.writeString(file, "{\"t\":12.0,\"do\":\"face-e", StandardOpenOption.APPEND);
        }
    }
}
