package org.marktwice.view.desk;

import javax.swing.JLabel;
import org.marktwice.view.Look;

/** The line at the foot of a screen that says what was done; where there is no room for all of it, the pointer tells it. */
final class SaidLine extends JLabel {
    private static final long serialVersionUID = 1L;

    SaidLine() {
        super(" ");
        Look.styled(this, Look.Style.BODY);
        setName("line");
    }

    /** @param words empty to say nothing any more; the line keeps its room */
    void say(String words) {
        setText(words.isEmpty() ? " " : words);
        setToolTipText(getText());
    }
}
