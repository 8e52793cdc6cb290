package org.marktwice.view;

import java.awt.Point;
import java.awt.event.KeyEvent;
import java.util.Objects;
import org.assertj.swing.core.MouseButton;
import org.marktwice.view.desk.DeskPixels;

/** A teacher's hand at the desk. */
final class AtTheDesk {
    private final AtTheWindow at;

    AtTheDesk(AtTheWindow at) {
        this.at = at;
    }

    /** Points at a part in the job drawing. */
    void point(String part) {
        var sheet = Objects.requireNonNull(at.robot.finder().findByName("job-sheet", true));
        Point place = AtTheWindow.onScreen(() -> DeskPixels.ofPart(sheet, part));
        Strokes.pointing(at.robot, () -> at.robot.click(sheet, place, MouseButton.LEFT_BUTTON, 1));
    }

    void type(String field, String text) {
        var box = at.window.textBox(field);
        box.focus();
        at.robot.waitForIdle();
        AtTheWindow.onScreen(() -> {
            box.target().setText(text);
            return true;
        });
        at.key(KeyEvent.VK_ENTER);
    }

    /** Puts words into a field at once. */
    void set(String field, String text) {
        var box = at.window.textBox(field);
        AtTheWindow.onScreen(() -> {
            box.target().setText(text);
            return true;
        });
        at.robot.waitForIdle();
    }

    void choose(String box, String item) {
        var chooser = at.window.comboBox(box);
        chooser.selectItem(item);
        at.until(item + " chosen", () -> item.equals(chooser.selectedItem()));
    }

    void part(int index, String name, String... figures) {
        type("part-" + index + "-name", name);
        String[] fields = {"length", "width", "thickness", "from-left", "from-front", "from-bottom"};
        for (int i = 0; i < figures.length; i++) type("part-" + index + "-" + fields[i], figures[i]);
    }

    void threeParts() {
        type("title", "Key shelf");
        at.ctrl(KeyEvent.VK_N);
        part(0, "Left side", "200", "100", "18", "0", "0", "0");
        choose("part-0-runs", "high, deep");
        choose("part-0-side", "right");
        choose("part-0-edge", "front");
        at.click("add-opposite");
        part(1, "Right side", "200", "100", "18", "282");
        at.click("add-part");
        part(2, "Shelf", "276", "100", "18", "12", "0", "60");
        choose("part-2-side", "top");
        choose("part-2-edge", "front");
    }

    /** Joins the shelf to both sides by pointing, has boards grown, and saves it all. */
    void finish() {
        for (String side : new String[] {"left-side", "right-side"}) {
            at.click("join-parts");
            point(side);
            point("shelf");
        }
        at.ctrl(KeyEvent.VK_2);
        Strokes.pointing(at.robot, () -> at.window.radioButton("boards-grown").click());
        at.until("solved", () -> at.text("outcome").contains("Can be solved"));
        at.ctrl(KeyEvent.VK_S);
        at.until("saved", () -> at.text("line").startsWith("Saved, finished"));
    }
}
