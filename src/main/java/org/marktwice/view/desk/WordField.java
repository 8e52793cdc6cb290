package org.marktwice.view.desk;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.function.Consumer;
import javax.swing.JTextField;
import org.marktwice.view.Look;

/** A line of words, taken when one leaves the field or presses Enter. */
final class WordField extends JTextField implements Typed {
    private static final long serialVersionUID = 1L;

    private final int longest;
    private final transient Consumer<String> take;
    private String value = "";

    WordField(String name, String what, int columns, int longest, Consumer<String> take) {
        super(columns);
        this.longest = longest;
        this.take = take;
        setName(name);
        getAccessibleContext().setAccessibleName(what);
        setToolTipText(what);
        Look.styled(this, Look.Style.BODY);
        // as often as one comes to it by the keys, wherever the caret was
        putClientProperty(
                FlatClientProperties.SELECT_ALL_ON_FOCUS_POLICY,
                FlatClientProperties.SELECT_ALL_ON_FOCUS_POLICY_ALWAYS);
        addActionListener(e -> commit());
        addFocusListener(new FocusAdapter() {
            @Override
            public void focusLost(FocusEvent event) {
                commit();
            }
        });
    }

    /** Shows words that come from elsewhere, unless they are those shown. */
    void show(String next) {
        if (next.equals(value)) return;
        value = next;
        setText(next);
        setCaretPosition(0);
    }

    @Override
    public boolean isPending() {
        return !getText().strip().equals(value);
    }

    @Override
    public void take() {
        commit();
    }

    private void commit() {
        String text = getText().strip().replaceAll("\\p{Cntrl}", " ");
        String cut = text.length() > longest ? text.substring(0, longest) : text;
        if (cut.equals(value)) return;
        value = cut;
        take.accept(cut);
    }
}
