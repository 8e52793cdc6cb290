package org.marktwice.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Container;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleContext;
import javax.swing.JComponent;
import org.junit.jupiter.api.Test;

/** Whoever has the screen read aloud comes to everything that is painted, by the toolkit's own way down the window. */
class ReadAloudTest extends BeforeAWindow {
    private static List<String> reached(Accessible from) {
        List<String> found = new ArrayList<>();
        reach(from.getAccessibleContext(), found);
        return found;
    }

    private static void reach(AccessibleContext at, List<String> found) {
        found.add(at.getAccessibleRole().toDisplayString(Locale.ENGLISH) + ": " + at.getAccessibleName());
        for (int i = 0; i < at.getAccessibleChildrenCount(); i++)
            reach(at.getAccessibleChild(i).getAccessibleContext(), found);
    }

    private static List<JComponent> painted(Container in) {
        List<JComponent> found = new ArrayList<>();
        for (var child : in.getComponents()) {
            if (child instanceof Painted one && one.isVisible()) found.add(one);
            if (child instanceof Container inner) found.addAll(painted(inner));
        }
        return found;
    }

    @Test
    void theBoardsAndTheDrawingOfTheBenchAreReached() {
        at.click("enter");

        List<String> found = AtTheWindow.onScreen(() -> reached(at.frame));
        assertThat(found).contains("canvas: Board unrolled", "canvas: Working drawing");
        assertThat(found).anyMatch(line -> line.startsWith("canvas: Board A, "));
        assertThat(found).anyMatch(line -> line.startsWith("list item: Board A, "));
        assertThat(AtTheWindow.onScreen(() -> painted(at.frame)))
                .isNotEmpty()
                .allSatisfy(one -> assertThat(one.getAccessibleContext().getAccessibleName())
                        .as(one.getName())
                        .isNotBlank());
    }

    @Test
    void theExercisesOfTheFirstPageAreReached() {
        String first = Shelf.scenarios().get(0).title();

        List<String> found = AtTheWindow.onScreen(() -> reached(at.frame));
        assertThat(found).anyMatch(line -> line.startsWith("list item: Level 1, " + first));
        assertThat(found).contains("icon: Picture of the finished job: " + first);
    }
}
