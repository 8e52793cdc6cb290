package org.marktwice.view;

import java.awt.Dimension;
import java.awt.Point;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import javax.swing.JLabel;
import javax.swing.JMenuItem;
import javax.swing.JTextArea;
import org.assertj.swing.core.BasicRobot;
import org.assertj.swing.core.MouseButton;
import org.assertj.swing.core.Robot;
import org.assertj.swing.edt.FailOnThreadViolationRepaintManager;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.fixture.FrameFixture;
import org.assertj.swing.fixture.JMenuItemFixture;
import org.assertj.swing.timing.Condition;
import org.assertj.swing.timing.Pause;
import org.marktwice.scenario.Scenario;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;
import org.marktwice.view.bench.BoardView;
import org.marktwice.view.bench.Pixels;
import org.marktwice.view.bench.UnrolledView;

/** A learner before the whole window, with a folder of their own. */
final class AtTheWindow implements AutoCloseable {
    /** The exercises that come with the program: read once, since no window changes them. */
    private static final List<Scenario> SHELF = Shelf.scenarios();

    final MainWindow frame;
    final FrameFixture window;
    final Robot robot;

    AtTheWindow(Path home) {
        this(home, home);
    }

    /** @param settings where the settings are read from, where that is another folder than the learner's work is kept in */
    AtTheWindow(Path settings, Path home) {
        FailOnThreadViolationRepaintManager.install();
        robot = BasicRobot.robotWithNewAwtHierarchy();
        robot.settings().delayBetweenEvents(0);
        robot.settings().eventPostingDelay(0);
        Clock clock = Clock.fixed(Instant.parse("2026-01-12T09:30:00Z"), ZoneOffset.UTC);
        frame = onScreen(() -> {
            LearnerFolder kept = new LearnerFolder(settings);
            kept.save(kept.settings().withMovement(false));
            Look.install(kept.settings().dark(), kept.settings().textSize());
            return new MainWindow(new Walk(new LearnerFolder(home), SHELF, clock, System::nanoTime));
        });
        window = new FrameFixture(robot, frame);
        window.show(new Dimension(1500, 960));
        robot.waitForIdle();
    }

    static <T> T onScreen(Callable<T> what) {
        return Objects.requireNonNull(GuiActionRunner.execute(what));
    }

    Session session() {
        return onScreen(() -> frame.walk().session().orElseThrow());
    }

    /** Waits for what another thread brings to the screen. */
    void until(String what, BooleanSupplier seen) {
        Pause.pause(new Condition(what) {
            @Override
            public boolean test() {
                return onScreen(seen::getAsBoolean);
            }
        });
        robot.waitForIdle();
    }

    void click(String button) {
        Strokes.pointing(robot, () -> window.button(button).click());
    }

    /** Clicks whatever has this name. */
    void clickOn(String name) {
        java.awt.Component found = robot.finder().findByName(name, true);
        Strokes.pointing(robot, () -> robot.click(found));
    }

    void tool(String name) {
        Strokes.pointing(robot, () -> window.toggleButton("tool-" + name).click());
    }

    /** Clicks a place on the unrolled board of the bench. */
    void clickBoard(Surface surface, double u, double v) {
        UnrolledView view = robot.finder().findByName("unrolled-view", UnrolledView.class, true);
        Point at = settled(() -> Pixels.of(view, new SurfacePoint(surface, u, v)));
        robot.moveMouse(view, at);
        Strokes.pointing(robot, () -> robot.click(view, at, MouseButton.LEFT_BUTTON, 1));
    }

    /** A place on the screen once it has stopped moving: a screen just come up may still be laying itself out. */
    private Point settled(Callable<Point> where) {
        Point before = onScreen(where);
        for (int i = 0; i < 20; i++) {
            robot.waitForIdle();
            Point now = onScreen(where);
            if (now.equals(before)) return now;
            before = now;
        }
        throw new AssertionError("The screen doesn't come to rest.");
    }

    /** Selects an exercise on the start page by mouse. */
    void exercise(String title) {
        List<String> titles = SHELF.stream().map(Scenario::title).toList();
        Strokes.pointing(
                robot,
                () -> window.list("exercises").item(titles.indexOf(title)).click());
    }

    /** Ticks a box, or takes the tick away. */
    void tick(String box) {
        Strokes.pointing(robot, () -> window.checkBox(box).click());
    }

    /** Opens the menu and picks an item of it by mouse. */
    void menu(String item) {
        JMenuItem found = robot.finder().findByName(item, JMenuItem.class, false);
        Strokes.pointingAt(robot, found, () -> new JMenuItemFixture(robot, found).click());
    }

    /** Picks a line of an open popup menu by mouse. */
    void pick(String item) {
        JMenuItem found = robot.finder().findByName(item, JMenuItem.class, true);
        Strokes.pointingAt(robot, found, () -> new JMenuItemFixture(robot, found).click());
    }

    /** Types into whatever has the focus. */
    void type(String text) {
        Strokes.type(robot, text);
    }

    BoardView board(String name) {
        return robot.finder().findByName(name, BoardView.class, true);
    }

    /** @param held keys held meanwhile */
    void key(int code, int... held) {
        Strokes.strike(robot, code, held);
    }

    void keys(int... codes) {
        for (int code : codes) key(code);
    }

    void ctrl(int code) {
        key(code, KeyEvent.VK_CONTROL);
    }

    String text(String label) {
        return Objects.requireNonNull(window.label(label).text());
    }

    /** Whether a button that is to be seen can be pressed. */
    boolean isEnabled(String button) {
        return onScreen(() -> robot.finder().findByName(button, true).isEnabled());
    }

    /** Whether the part of the screen with this name is to be seen. */
    boolean showing(String name) {
        return onScreen(() -> robot.finder().findAll(c -> c != null && name.equals(c.getName())).stream()
                .anyMatch(java.awt.Component::isShowing));
    }

    /** What can be read on the screen: labels, and prose. */
    List<String> readable() {
        return onScreen(() -> robot.finder().findAll(c -> c != null && c.isShowing()).stream()
                .flatMap(c -> c instanceof JLabel label
                        ? Stream.ofNullable(label.getText())
                        : c instanceof JTextArea area ? Stream.of(area.getText()) : Stream.empty())
                .toList());
    }

    String title() {
        return onScreen(frame::getTitle);
    }

    @Override
    public void close() {
        window.cleanUp();
    }
}
