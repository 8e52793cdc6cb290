package org.marktwice.view.desk;

import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.function.Consumer;
import javax.swing.JTextField;
import org.marktwice.view.Look;

/** A line of words, taken when one leaves the field or presses Enter. */
final class WordField extends JTextField {
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
    }

    private void commit() {
        String text = getText().strip().replaceAll("\\p{Cntrl}", " ");
        String cut = text.length() > longest ? text.substring(0, longest) : text;
        if (cut.equals(value)) return;
        value = cut;
        take.accept(cut);
    }
}
