package org.marktwice.view.bench;

import java.awt.Dimension;
import java.awt.Point;
import java.awt.event.KeyEvent;
import java.awt.geom.Point2D;
import java.util.List;
import java.util.Objects;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JMenuItem;
import org.assertj.swing.core.BasicRobot;
import org.assertj.swing.core.MouseButton;
import org.assertj.swing.core.Robot;
import org.assertj.swing.edt.FailOnThreadViolationRepaintManager;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.fixture.FrameFixture;
import org.assertj.swing.fixture.JMenuItemFixture;
import org.marktwice.bench.Action;
import org.marktwice.bench.BoardState;
import org.marktwice.picture.FigureCache;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;
import org.marktwice.view.Look;
import org.marktwice.view.Session;
import org.marktwice.view.Strokes;

/** A learner at the bench: points at places of the board in either view, and strikes keys. */
final class AtTheBench implements AutoCloseable {
    final Session session;
    final BenchScreen screen;
    final FrameFixture window;
    private final Robot robot;
    private final FigureCache cache;
    private int handedIn;
    private int jobs;

    AtTheBench(Session session) {
        this.session = session;
        FailOnThreadViolationRepaintManager.install();
        robot = BasicRobot.robotWithNewAwtHierarchy();
        robot.settings().delayBetweenEvents(10);
        robot.settings().eventPostingDelay(20);
        cache = new FigureCache();
        BenchScreen[] made = new BenchScreen[1];
        JFrame frame = GuiActionRunner.execute(() -> {
            Look.install(false, 1);
            made[0] = new BenchScreen(session, cache, new BenchScreen.Doors(() -> handedIn++, () -> jobs++, () -> {}));
            made[0].setMovement(false);
            JFrame f = new JFrame("bench");
            f.setContentPane(made[0]);
            return f;
        });
        screen = made[0];
        window = new FrameFixture(robot, Objects.requireNonNull(frame));
        window.show(new Dimension(1500, 960));
        robot.focusAndWaitForFocusGain(screen.boardView());
        robot.waitForIdle();
    }

    int handedIn() {
        return handedIn;
    }

    BoardState board(String id) {
        return session.bench().board(id);
    }

    /** The last thing done. */
    Action last() {
        List<Action> log = session.bench().log();
        return log.get(log.size() - 1);
    }

    int steps() {
        return session.bench().steps();
    }

    /** What the line at the bottom reads. */
    String line() {
        return Objects.requireNonNull(window.textBox("line").text());
    }

    JComponent boardView() {
        return screen.boardView();
    }

    JComponent unrolled() {
        return screen.unrolledView();
    }

    private Point pixel(PatchView view, SurfacePoint at) {
        Point2D p = Objects.requireNonNull(GuiActionRunner.execute(() -> view.patches().stream()
                .filter(patch -> patch.surface() == at.surface())
                .findFirst()
                .orElseThrow(() -> new AssertionError(at.surface() + " is not to be seen"))
                .toView(at)));
        return new Point((int) Math.round(p.getX()), (int) Math.round(p.getY()));
    }

    static SurfacePoint at(Surface surface, double u, double v) {
        return new SurfacePoint(surface, u, v);
    }

    void point(PatchView view, SurfacePoint at) {
        robot.moveMouse(view.component(), pixel(view, at));
        robot.waitForIdle();
    }

    void click(PatchView view, SurfacePoint at) {
        point(view, at);
        Strokes.pointing(robot, () -> robot.click(view.component(), pixel(view, at), MouseButton.LEFT_BUTTON, 1));
    }

    /** @param held a key held meanwhile */
    void click(PatchView view, SurfacePoint at, int held) {
        robot.pressKey(held);
        click(view, at);
        robot.releaseKey(held);
        robot.waitForIdle();
    }

    void rightClick(PatchView view, SurfacePoint at) {
        Strokes.pointing(robot, () -> robot.click(view.component(), pixel(view, at), MouseButton.RIGHT_BUTTON, 1));
    }

    void drag(PatchView view, SurfacePoint from, SurfacePoint to) {
        Point start = pixel(view, from);
        Point end = pixel(view, to);
        Strokes.pointing(robot, () -> {
            robot.moveMouse(view.component(), start);
            robot.pressMouse(MouseButton.LEFT_BUTTON);
            robot.moveMouse(view.component(), new Point((start.x + end.x) / 2, (start.y + end.y) / 2));
            robot.moveMouse(view.component(), end);
            robot.releaseMouse(MouseButton.LEFT_BUTTON);
        });
    }

    /** Takes a board from the rack, by its place there. */
    void take(int index) {
        Strokes.pointing(robot, () -> window.list("rack").selectItem(index));
    }

    void word(String name) {
        Strokes.pointing(robot, () -> window.toggleButton("tool-" + name).click());
    }

    void press(String button) {
        Strokes.pointing(robot, () -> window.button(button).click());
    }

    /** Picks a line of the open menu by mouse. */
    void choose(String name) {
        JMenuItem item = robot.finder().findByName(name, JMenuItem.class, true);
        Strokes.pointing(robot, () -> new JMenuItemFixture(robot, item).click());
    }

    /** @param held keys held meanwhile, such as {@link KeyEvent#VK_SHIFT} */
    void key(int code, int... held) {
        Strokes.strike(robot, code, held);
    }

    void keys(int... codes) {
        for (int code : codes) key(code);
    }

    void times(int count, int code, int... held) {
        for (int i = 0; i < count; i++) key(code, held);
    }

    /** Types figures into the tool in hand. */
    void type(String text) {
        Strokes.type(robot, text);
    }

    void enter() {
        key(KeyEvent.VK_ENTER);
    }

    @Override
    public void close() {
        window.cleanUp();
        cache.close();
    }
}
