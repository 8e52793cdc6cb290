package org.marktwice.view.desk;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.Insets;
import java.awt.event.ActionEvent;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.MouseWheelEvent;
import java.util.function.Consumer;
import java.util.function.DoublePredicate;
import javax.swing.AbstractAction;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.SwingConstants;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;
import org.marktwice.view.Look;

/**
 * A figure that may be missing. It is taken when one leaves the field or presses Enter; what is no figure is outlined and
 * kept, so that it can be put right.
 */
final class NumberField extends JTextField {
    private static final long serialVersionUID = 1L;

    private final transient DoublePredicate taken;
    private final transient Consumer<@Nullable Double> take;
    private @Nullable Double value;

    /**
     * @param what its name for a screen reader, and in {@link #getName()} for tests
     * @param taken which figures can be
     * @param take is given each new figure; null where it was taken out
     */
    NumberField(String name, String what, int columns, DoublePredicate taken, Consumer<@Nullable Double> take) {
        super(columns);
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

    /** Shows a figure that comes from elsewhere, unless it is the one shown. */
    void show(@Nullable Double next) {
        if (java.util.Objects.equals(next, value) && isSound()) return;
        value = next;
        setText(next == null ? "" : spoken(next));
        outline(false);
    }

    private void commit() {
        String text = getText().strip().replace(',', '.');
        if (text.isEmpty()) {
            outline(false);
            if (value != null) give(null);
            return;
        }
        double number;
        try {
            number = Double.parseDouble(text);
        } catch (NumberFormatException e) {
            outline(true);
            return;
        }
        if (!Double.isFinite(number) || !taken.test(number)) {
            outline(true);
            return;
        }
        outline(false);
        if (value == null || value != number) give(number);
    }

    private void give(@Nullable Double next) {
        value = next;
        take.accept(next);
    }

    private boolean isSound() {
        return getClientProperty(FlatClientProperties.OUTLINE) == null;
    }

    private void outline(boolean wrong) {
        putClientProperty(FlatClientProperties.OUTLINE, wrong ? FlatClientProperties.OUTLINE_ERROR : null);
    }

    /** As one writes it: no needless zero. */
    static String spoken(double number) {
        return new java.math.BigDecimal(Double.toString(number))
                .stripTrailingZeros()
                .toPlainString();
    }
}
