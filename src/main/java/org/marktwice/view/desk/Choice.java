package org.marktwice.view.desk;

import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.DefaultComboBoxModel;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JComboBox;
import javax.swing.JList;
import org.jspecify.annotations.Nullable;
import org.marktwice.view.Look;

/** One of a few things, each called by its word. Only a person's choice is told, not what is shown from elsewhere. */
final class Choice<T> extends JComboBox<T> {
    private static final long serialVersionUID = 1L;

    private boolean showing;

    Choice(String name, String what, Function<T, String> words, Consumer<T> take) {
        setName(name);
        getAccessibleContext().setAccessibleName(what);
        setToolTipText(what);
        Look.styled(this, Look.Style.BODY);
        setRenderer(new Words<>(words));
        setMaximumRowCount(12);
        // a letter typed goes on to the next thing whose word begins with it
        setKeySelectionManager((key, of) -> {
            String letter = String.valueOf(Character.toLowerCase(key));
            for (int i = 1; i <= getItemCount(); i++) {
                int at = (getSelectedIndex() + i) % getItemCount();
                if (words.apply(getItemAt(at)).toLowerCase(Locale.ROOT).startsWith(letter)) return at;
            }
            return -1;
        });
        addActionListener(e -> {
            int at = getSelectedIndex();
            if (!showing && at >= 0) take.accept(getItemAt(at));
        });
    }

    /** @param now null where none of them is the case */
    void show(List<T> all, @Nullable T now) {
        showing = true;
        boolean same = getItemCount() == all.size();
        for (int i = 0; same && i < all.size(); i++) same = getItemAt(i).equals(all.get(i));
        if (!same) setModel(new DefaultComboBoxModel<>(new java.util.Vector<>(all)));
        setSelectedItem(now);
        showing = false;
    }

    private static final class Words<T> extends DefaultListCellRenderer {
        private static final long serialVersionUID = 1L;
        private final transient Function<T, String> words;

        Words(Function<T, String> words) {
            this.words = words;
        }

        @Override
        @SuppressWarnings("unchecked")
        public java.awt.Component getListCellRendererComponent(
                JList<?> list, @Nullable Object value, int index, boolean selected, boolean focused) {
            String word = value == null ? "" : words.apply((T) value);
            return super.getListCellRendererComponent(list, word, index, selected, focused);
        }
    }
}
