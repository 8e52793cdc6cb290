package org.marktwice.view;

import java.awt.AWTEvent;
import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.Toolkit;
import java.awt.event.AWTEventListener;
import java.awt.event.KeyEvent;
import java.awt.event.MouseEvent;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import org.assertj.swing.core.Robot;
import org.assertj.swing.timing.Condition;
import org.assertj.swing.timing.Pause;

/** Keys and buttons struck so that none is still on its way when the next is struck: a busy machine may bring them late. */
public final class Strokes {
    private static final long LATEST_SECONDS = 20;

    private Strokes() {}

    /**
     * Strikes a key and waits until the window has been told. Letting it go is not waited for: a dialog that the key
     * closes never hears of that.
     *
     * @param held keys held meanwhile
     * @throws AssertionError if the key doesn't arrive
     */
    public static void strike(Robot robot, int code, int... held) {
        awaitFocus();
        arriving(
                robot,
                AWTEvent.KEY_EVENT_MASK,
                e -> e.getID() == KeyEvent.KEY_PRESSED && ((KeyEvent) e).getKeyCode() == code,
                () -> {
                    for (int with : held) robot.pressKey(with);
                    robot.pressAndReleaseKey(code);
                    for (int with : held) robot.releaseKey(with);
                });
    }

    /**
     * Types a text, each letter once the window has been told of the one before.
     *
     * @throws AssertionError if a letter doesn't arrive
     */
    public static void type(Robot robot, String text) {
        for (char c : text.toCharArray()) {
            awaitFocus();
            arriving(
                    robot,
                    AWTEvent.KEY_EVENT_MASK,
                    e -> e.getID() == KeyEvent.KEY_TYPED && ((KeyEvent) e).getKeyChar() == c,
                    () -> robot.type(c));
        }
    }

    /**
     * Does something that ends in letting a button go over this component, such as an item of a menu.
     *
     * @throws AssertionError if the button doesn't arrive there
     */
    public static void pointingAt(Robot robot, Component there, Runnable act) {
        arriving(
                robot,
                AWTEvent.MOUSE_EVENT_MASK,
                e -> e.getID() == MouseEvent.MOUSE_RELEASED && e.getSource() == there,
                act);
    }

    /**
     * Does something that ends in letting a button of the mouse go, and waits until the window has been told.
     *
     * @throws AssertionError if the button doesn't arrive
     */
    public static void pointing(Robot robot, Runnable act) {
        arriving(robot, AWTEvent.MOUSE_EVENT_MASK, e -> e.getID() == MouseEvent.MOUSE_RELEASED, act);
    }

    /** A key struck while the focus is on its way from one window to another is lost. */
    private static void awaitFocus() {
        KeyboardFocusManager focus = KeyboardFocusManager.getCurrentKeyboardFocusManager();
        Pause.pause(
                new Condition("something in a window has the focus") {
                    @Override
                    public boolean test() {
                        return focus.getFocusOwner() != null;
                    }
                },
                TimeUnit.SECONDS.toMillis(LATEST_SECONDS));
    }

    private static void arriving(Robot robot, long mask, Predicate<AWTEvent> last, Runnable act) {
        CountDownLatch arrived = new CountDownLatch(1);
        AWTEventListener listener = e -> {
            if (last.test(e)) arrived.countDown();
        };
        Toolkit toolkit = Toolkit.getDefaultToolkit();
        toolkit.addAWTEventListener(listener, mask);
        try {
            act.run();
            if (!arrived.await(LATEST_SECONDS, TimeUnit.SECONDS))
                throw new AssertionError("What was struck did not arrive at the window.");
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError("Interrupted while striking.", e);
        } finally {
            toolkit.removeAWTEventListener(listener);
        }
        robot.waitForIdle();
    }
}
