package org.marktwice.view.desk;

import java.awt.KeyboardFocusManager;
import java.util.function.Consumer;
import javax.swing.JTextArea;
import org.marktwice.view.Look;

/** Some lines of words, taken when one leaves them. */
final class WordsArea extends JTextArea implements Typed {
    private static final long serialVersionUID = 1L;

    private final transient TypedWords words;

    WordsArea(String name, String what, int longest, Consumer<String> take) {
        super(4, 20);
        words = new TypedWords(this, longest, take);
        setName(name);
        setLineWrap(true);
        setWrapStyleWord(true);
        Look.styled(this, Look.Style.BODY);
        // Tab goes on, as from any other field
        setFocusTraversalKeys(KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
        setFocusTraversalKeys(KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, null);
        getAccessibleContext().setAccessibleName(what);
    }

    void show(String next) {
        words.show(next);
    }

    @Override
    public boolean isPending() {
        return words.isPending();
    }

    @Override
    public void take() {
        words.take();
    }
}
