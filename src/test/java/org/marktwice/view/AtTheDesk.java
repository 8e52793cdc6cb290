package org.marktwice.view;

import java.awt.Component;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.util.Objects;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.plaf.basic.ComboPopup;
import javax.swing.text.JTextComponent;
import org.assertj.swing.core.MouseButton;
import org.jspecify.annotations.Nullable;
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

    /** Types into a field, instead of what is in it, and Enter. */
    void type(String field, String text) {
        fill(field, text);
        at.key(KeyEvent.VK_ENTER);
    }

    /** Clicks a field, and puts words there instead of what is in it; they are taken when one goes on to the next. */
    void fill(String field, String text) {
        JTextComponent box = at.robot.finder().findByName(field, JTextComponent.class, true);
        AtTheWindow.onScreen(() -> {
            ((JComponent) box.getParent()).scrollRectToVisible(box.getBounds());
            return true;
        });
        Strokes.pointing(at.robot, () -> at.robot.click(box));
        at.until("in " + field, box::isFocusOwner);
        AtTheWindow.onScreen(() -> {
            box.selectAll();
            box.replaceSelection(text);
            return true;
        });
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

    /** Opens a list by a click, and clicks one of its lines. */
    void choose(String box, String item) {
        JComboBox<?> chooser = at.robot.finder().findByName(box, JComboBox.class, true);
        Strokes.pointing(at.robot, () -> at.robot.click(chooser));
        JList<?> list =
                AtTheWindow.onScreen(() -> ((ComboPopup) chooser.getUI().getAccessibleChild(chooser, 0)).getList());
        at.until("the list of " + box, list::isShowing);
        Point line = AtTheWindow.onScreen(() -> {
            Rectangle cell = list.getCellBounds(line(list, item), line(list, item));
            list.scrollRectToVisible(cell);
            return new Point(cell.x + cell.width / 2, cell.y + cell.height / 2);
        });
        Strokes.pointing(at.robot, () -> at.robot.click(list, line, MouseButton.LEFT_BUTTON, 1));
        at.until(item + " chosen", () -> item.equals(words(list, chooser.getSelectedItem())) && !list.isShowing());
    }

    private static int line(JList<?> list, String item) {
        for (int i = 0; i < list.getModel().getSize(); i++) {
            if (item.equals(words(list, list.getModel().getElementAt(i)))) return i;
        }
        throw new AssertionError("There is no line " + item);
    }

    /** What a list says for a thing. */
    private static <T> String words(JList<T> list, @Nullable Object of) {
        @SuppressWarnings("unchecked")
        T thing = (T) of;
        Component shown = list.getCellRenderer().getListCellRendererComponent(list, thing, 0, false, false);
        return String.valueOf(((JLabel) shown).getText());
    }

    /** Drags from one place of a component to another. */
    void drag(Component over, Point from, Point to) {
        at.robot.moveMouse(over, from);
        at.robot.pressMouse(MouseButton.LEFT_BUTTON);
        at.robot.waitForIdle();
        at.robot.moveMouse(over, new Point((from.x + to.x) / 2, (from.y + to.y) / 2));
        at.robot.waitForIdle();
        at.robot.moveMouse(over, to);
        at.robot.waitForIdle();
        Strokes.pointing(at.robot, () -> at.robot.releaseMouse(MouseButton.LEFT_BUTTON));
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
