package org.marktwice.view.desk;

import java.awt.KeyboardFocusManager;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.function.Consumer;
import javax.swing.JTextArea;
import org.marktwice.view.Look;

/** Some lines of words, taken when one leaves them. */
final class WordsArea extends JTextArea implements Typed {
    private static final long serialVersionUID = 1L;

    private final int longest;
    private final transient Consumer<String> take;
    private String value = "";

    WordsArea(String name, String what, int longest, Consumer<String> take) {
        super(4, 20);
        this.longest = longest;
        this.take = take;
        setName(name);
        setLineWrap(true);
        setWrapStyleWord(true);
        Look.styled(this, Look.Style.BODY);
        // Tab goes on, as from any other field
        setFocusTraversalKeys(KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
        setFocusTraversalKeys(KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, null);
        getAccessibleContext().setAccessibleName(what);
        addFocusListener(new FocusAdapter() {
            @Override
            public void focusLost(FocusEvent event) {
                take();
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
        String text = getText().strip().replaceAll("[\\p{Cntrl}&&[^\n]]", " ");
        String cut = text.length() > longest ? text.substring(0, longest) : text;
        if (cut.equals(value)) return;
        value = cut;
        take.accept(cut);
    }
}
