package org.marktwice.view;

import java.awt.Graphics;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.marktwice.picture.Ink;
import org.marktwice.view.Look.Style;

/** A strip above the screen that says what the learner should know and need not answer. */
final class NoticeStrip extends JPanel {
    private static final long serialVersionUID = 1L;
    private final JLabel words = Look.inked(new JLabel(" "), Style.BODY, Ink.INK);
    private final JButton close = Look.plain(new JButton("Close"));
    private final JButton elsewhere = new JButton("Keep it elsewhere …");
    private String said = "";
    private String trouble = "";

    /** @param keepElsewhere what is offered while something isn't saved */
    NoticeStrip(Runnable keepElsewhere) {
        super(new MigLayout("insets 6 20 6 20, gapx 12, hidemode 3", "[grow][][]"));
        words.setName("notice");
        close.setName("close-notice");
        close.addActionListener(e -> say(""));
        elsewhere.setName("keep-elsewhere");
        elsewhere.setToolTipText("Choose another folder for your work; nothing is lost");
        elsewhere.addActionListener(e -> keepElsewhere.run());
        add(words, "growx, wmin 0");
        add(elsewhere);
        add(close);
        setVisible(false);
    }

    void say(String next) {
        said = next;
        refresh();
    }

    /** Stands before whatever else is said, and can't be closed. */
    void trouble(String next) {
        if (trouble.equals(next)) return;
        trouble = next;
        refresh();
    }

    private void refresh() {
        String shown = trouble.isEmpty() ? said : trouble;
        words.setText(shown.isEmpty() ? " " : shown);
        words.setToolTipText(shown.isEmpty() ? null : shown);
        words.getAccessibleContext().setAccessibleName(shown.isEmpty() ? "Notice" : shown);
        elsewhere.setVisible(!trouble.isEmpty());
        close.setVisible(trouble.isEmpty());
        setVisible(!shown.isEmpty());
        revalidate();
        repaint();
    }

    @Override
    protected void paintComponent(Graphics g) {
        g.setColor(Look.colour(Ink.PICKED));
        g.fillRect(0, 0, getWidth(), getHeight());
        g.setColor(Look.colour(trouble.isEmpty() ? Ink.ACTION : Ink.WRONG));
        g.fillRect(0, 0, Look.px(6), getHeight());
    }
}
