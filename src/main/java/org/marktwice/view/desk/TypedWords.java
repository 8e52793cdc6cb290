package org.marktwice.view.desk;

import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.function.Consumer;
import javax.swing.text.JTextComponent;

/** What is typed in a field of words, and taken when one leaves it. */
final class TypedWords implements Typed {
    private final JTextComponent in;
    private final int longest;
    private final Consumer<String> taken;
    private String value = "";

    /** @param longest as many characters are taken at most */
    TypedWords(JTextComponent in, int longest, Consumer<String> taken) {
        this.in = in;
        this.longest = longest;
        this.taken = taken;
        in.addFocusListener(new FocusAdapter() {
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
        in.setText(next);
        in.setCaretPosition(0);
    }

    @Override
    public boolean isPending() {
        return !in.getText().strip().equals(value);
    }

    @Override
    public void take() {
        String text = in.getText().strip().replaceAll("[\\p{Cntrl}&&[^\n]]", " ");
        String cut = text.length() > longest ? text.substring(0, longest) : text;
        if (cut.equals(value)) return;
        value = cut;
        taken.accept(cut);
    }
}
