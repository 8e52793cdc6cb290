package org.marktwice.view.bench;

import java.awt.Graphics;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import org.marktwice.picture.Ink;
import org.marktwice.view.Look;
import org.marktwice.view.Look.Style;

/** The line at the bottom: what is pointed at, what was read, why something can't be done; and the caution for real work. */
final class LinePanel extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final String CAUTION =
            "At the real bench: work held, both hands behind the edge. Your teacher's and workshop's rules come first.";

    /** Room for two lines, so that nothing moves when there is more to say. */
    private static final int TWO_LINES = 34;

    private final JLabel sign = new JLabel();
    private final JLabel caution = Look.quiet(CAUTION, Style.NOTE);
    private final JTextArea words = Look.prose(" ", Style.BODY, Ink.INK);

    LinePanel() {
        super(new MigLayout(
                "insets 6lp 20lp 6lp 20lp, gapx 0, fillx, hidemode 3",
                "[][grow,fill]24lp[shrinkprio 200]",
                "[" + TWO_LINES + "lp!,center]"));
        words.setName("line");
        sign.setName("line-sign");
        add(sign, "cell 0 0, gapright 8lp");
        // A text area that wraps wants to stay as wide as it was: its wish must not push the caution aside.
        add(words, "cell 1 0, w 0:0:, hmax " + TWO_LINES + "lp");
        caution.setToolTipText(CAUTION);
        add(caution, "cell 2 0, wmin 0");
    }

    void show(Note note) {
        sign.setVisible(!note.tone().sign().isEmpty());
        sign.setText(note.tone().sign());
        Look.inked(sign, Style.STRONG, Scene.ink(note.tone()));
        String text = note.words().isEmpty() ? " " : note.words();
        if (!words.getText().equals(text)) words.setText(text);
        makeRoom();
        words.setToolTipText(note.words().isEmpty() ? null : note.words());
        String was = words.getAccessibleContext().getAccessibleName();
        words.getAccessibleContext().setAccessibleName(note.line());
        if (!note.line().equals(was)) {
            words.getAccessibleContext()
                    .firePropertyChange(
                            javax.accessibility.AccessibleContext.ACCESSIBLE_NAME_PROPERTY, was, note.line());
        }
    }

    /** What there is to say goes before the caution, which comes back as soon as there is room beside it. */
    private void makeRoom() {
        int wanted = words.getFontMetrics(words.getFont()).stringWidth(words.getText());
        int room = getWidth() - caution.getPreferredSize().width - Look.px(100);
        caution.setVisible(getWidth() == 0 || wanted <= room);
    }

    @Override
    public void setBounds(int x, int y, int width, int height) {
        super.setBounds(x, y, width, height);
        makeRoom();
    }

    @Override
    protected void paintComponent(Graphics g) {
        g.setColor(Look.colour(Ink.PANEL));
        g.fillRect(0, 0, getWidth(), getHeight());
        g.setColor(Look.colour(Ink.BORDER));
        g.fillRect(0, 0, getWidth(), 1);
    }
}
