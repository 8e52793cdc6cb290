package org.marktwice.view.desk;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.Component;
import java.awt.Container;
import java.awt.Insets;
import java.awt.event.ActionEvent;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.MouseWheelEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.DoublePredicate;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.SwingConstants;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;
import org.marktwice.view.Look;

/**
 * A figure that may be missing. It is taken when one leaves the field or presses Enter; what is no figure is outlined and
 * kept, so that it can be put right, and the screen's line says what is expected.
 */
final class NumberField extends JTextField implements Typed {
    private static final long serialVersionUID = 1L;

    /** The client property of a screen that has one line to say things in: a {@code Consumer<String>}. */
    static final String LINE = "marktwice.line";

    private final String what;
    private final transient DoublePredicate taken;
    private String expects = "a number that can be";
    private final transient Consumer<@Nullable Double> take;
    private @Nullable Double value;

    /**
     * @param what its name for a screen reader, and in {@link #getName()} for tests
     * @param taken which figures can be
     * @param take is given each new figure; null where it was taken out
     */
    NumberField(String name, String what, int columns, DoublePredicate taken, Consumer<@Nullable Double> take) {
        super(columns);
        this.what = what;
        this.taken = taken;
        this.take = take;
        setName(name);
        setHorizontalAlignment(SwingConstants.RIGHT);
        setMargin(new Insets(2, 3, 2, 4));
        getAccessibleContext().setAccessibleName(what);
        setToolTipText(what);
        Look.styled(this, Look.Style.BODY);
        addActionListener(e -> commit());
        nudge("UP", 1);
        nudge("DOWN", -1);
        nudge("shift UP", 10);
        nudge("shift DOWN", -10);
        addMouseWheelListener(this::wheel);
        addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent event) {
                selectAll();
            }

            @Override
            public void focusLost(FocusEvent event) {
                commit();
            }
        });
    }

    /** @param words which figures can be, such as {@code a number above 0} */
    NumberField expecting(String words) {
        expects = words;
        return this;
    }

    private void nudge(String key, double by) {
        getInputMap().put(KeyStroke.getKeyStroke(key), "nudge " + by);
        getActionMap().put("nudge " + by, new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent event) {
                by(by);
            }
        });
    }

    /** The wheel turns the figure while one is in the field, and else whatever is scrolled. */
    private void wheel(MouseWheelEvent event) {
        if (isFocusOwner()) by(event.isShiftDown() ? -10 * event.getWheelRotation() : -event.getWheelRotation());
        else if (getParent() != null)
            getParent().dispatchEvent(SwingUtilities.convertMouseEvent(this, event, getParent()));
    }

    /** A little more or less, where that can be. */
    private void by(double more) {
        commit();
        if (!isSound()) return;
        double next = Math.rint(1000 * ((value == null ? 0 : value) + more)) / 1000;
        if (!taken.test(next)) return;
        setText(spoken(next));
        commit();
        selectAll();
    }

    /** Shows a figure that comes from elsewhere; what is typed and no figure stays while that is the same. */
    void show(@Nullable Double next) {
        if (java.util.Objects.equals(next, value)) return;
        value = next;
        restore();
    }

    /** Shows the figure that stands, instead of what is typed and no figure. */
    void restore() {
        setText(value == null ? "" : spoken(value));
        outline(false);
    }

    /** Those below here whose text is no figure that can be. */
    static List<NumberField> unsound(Container below) {
        List<NumberField> found = new ArrayList<>();
        for (Component part : below.getComponents()) {
            if (part instanceof NumberField field && !field.isSound()) found.add(field);
            else if (part instanceof Container more) found.addAll(unsound(more));
        }
        return found;
    }

    @Override
    public boolean isPending() {
        return !getText().strip().equals(value == null ? "" : spoken(value));
    }

    @Override
    public void take() {
        commit();
    }

    /** Whether what stands in it is a figure that can be, or nothing. */
    boolean isSound() {
        return getClientProperty(FlatClientProperties.OUTLINE) == null;
    }

    /** Why it isn't taken, in one line. */
    String refusal() {
        String stands = value == null ? "" : "; " + spoken(value) + " still stands";
        return what + ": expected " + expects + ", found \"" + getText().strip() + "\"" + stands;
    }

    private void refuse() {
        outline(true);
        say(refusal());
    }

    private void say(String words) {
        for (Container around = getParent(); around != null; around = around.getParent()) {
            if (around instanceof JComponent screen && screen.getClientProperty(LINE) instanceof Consumer<?>) {
                @SuppressWarnings("unchecked")
                Consumer<String> line = (Consumer<String>) screen.getClientProperty(LINE);
                line.accept(words);
                return;
            }
        }
    }

    private void commit() {
        String text = getText().strip().replace(',', '.');
        if (text.isEmpty()) {
            if (!isSound()) say("");
            outline(false);
            if (value != null) give(null);
            return;
        }
        double number;
        try {
            number = Double.parseDouble(text);
        } catch (NumberFormatException e) {
            refuse();
            return;
        }
        if (!Double.isFinite(number) || !taken.test(number)) {
            refuse();
            return;
        }
        if (!isSound()) say("");
        outline(false);
        if (value == null || value != number) give(number);
    }

    private void give(@Nullable Double next) {
        value = next;
        take.accept(next);
    }

    private void outline(boolean wrong) {
        putClientProperty(FlatClientProperties.OUTLINE, wrong ? FlatClientProperties.OUTLINE_ERROR : null);
        setToolTipText(wrong ? refusal() : what);
    }

    /** As one writes it: no needless zero. */
    static String spoken(double number) {
        return new java.math.BigDecimal(Double.toString(number))
                .stripTrailingZeros()
                .toPlainString();
    }
}
