package org.marktwice.view.desk;

import com.formdev.flatlaf.FlatClientProperties;
import java.util.function.Consumer;
import javax.swing.JTextField;
import org.marktwice.view.Look;

/** A line of words, taken when one leaves the field or presses Enter. */
final class WordField extends JTextField implements Typed {
    private static final long serialVersionUID = 1L;

    private final transient TypedWords words;

    WordField(String name, String what, int columns, int longest, Consumer<String> take) {
        super(columns);
        words = new TypedWords(this, longest, take);
        setName(name);
        getAccessibleContext().setAccessibleName(what);
        setToolTipText(what);
        Look.styled(this, Look.Style.BODY);
        // as often as one comes to it by the keys, wherever the caret was
        putClientProperty(
                FlatClientProperties.SELECT_ALL_ON_FOCUS_POLICY,
                FlatClientProperties.SELECT_ALL_ON_FOCUS_POLICY_ALWAYS);
        addActionListener(e -> take());
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
