package org.marktwice.view;

import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import org.marktwice.scenario.Practice;
import org.marktwice.scenario.Scenario;
import org.marktwice.view.Commands.Command;
import org.marktwice.view.Commands.Deed;

/** One of the window's screens. */
public interface Screen {
    JComponent component();

    /** The window's title while it is showing. */
    String title();

    /** The word of its menu. */
    String menu();

    /** What can be done on it, in the menu's order. */
    List<Deed> deeds();

    /** What a command does on it. */
    default Deed deed(Command command) {
        return Deed.of(deeds(), command);
    }

    /** The exercise that it is about, and the workshop's practice in it; empty where it is about none. */
    default Optional<Workshop> workshop() {
        return Optional.empty();
    }

    /** An exercise by its title, and the practice in force there. */
    record Workshop(String exercise, Practice practice) {
        public static Optional<Workshop> of(Scenario scenario) {
            return Optional.of(new Workshop(scenario.title(), scenario.practice()));
        }
    }

    /** Takes the focus to where one begins. */
    void focus();

    /** Whether turns are shown moving, from now on. */
    default void setMovement(boolean shown) {}

    /** Asked before the window is closed: whether nothing is lost by that, or the person agrees to it. */
    default boolean mayClose() {
        return true;
    }

    /** It is shown no more; nothing may keep running. */
    default void left() {}
}
