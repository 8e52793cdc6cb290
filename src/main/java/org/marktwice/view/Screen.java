package org.marktwice.view;

import java.util.List;
import javax.swing.JComponent;
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

    /** Takes the focus to where one begins. */
    void focus();

    /** Whether turns are shown moving, from now on. */
    default void setMovement(boolean shown) {}

    /** It is shown no more; nothing may keep running. */
    default void left() {}
}
