package org.marktwice.view.desk;

import java.awt.BasicStroke;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.RoundRectangle2D;
import java.util.ArrayList;
import java.util.List;
import javax.swing.ButtonGroup;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;
import org.marktwice.picture.Ink;
import org.marktwice.view.Commands.Deed;
import org.marktwice.view.Look;

/** A row of words, each with its key; the one whose pane is showing is underlined. */
final class Tabs extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient List<Word> words = new ArrayList<>();
    private final ButtonGroup group = new ButtonGroup();

    Tabs() {
        super(new MigLayout("insets 0, gapx 4"));
        setOpaque(false);
    }

    void add(Deed deed) {
        Word word = new Word(deed);
        words.add(word);
        group.add(word);
        add(word);
    }

    void choose(int index) {
        words.get(index).setSelected(true);
    }

    boolean isChosen(int index) {
        return words.get(index).isSelected();
    }

    /** Says at a tab how it stands, after its word; empty for nothing. */
    void note(int index, String note) {
        words.get(index).note(note);
    }

    private static final class Word extends JToggleButton {
        private static final long serialVersionUID = 1L;
        private static final int PAD = 10;
        private static final int GAP = 6;

        private final String word;
        private final String key;
        private String note = "";

        Word(Deed deed) {
            super(deed);
            word = deed.command().word();
            key = deed.command().keyText();
            setName("tab-" + deed.command().id());
            setOpaque(false);
            setContentAreaFilled(false);
            setBorderPainted(false);
            setRolloverEnabled(true);
        }

        void note(String next) {
            if (next.equals(note)) return;
            note = next;
            getAccessibleContext().setAccessibleDescription(next);
            revalidate();
            repaint();
        }

        @Override
        public java.awt.Dimension getPreferredSize() {
            FontMetrics strong = getFontMetrics(Look.Style.STRONG.font());
            int wide = 2 * Look.px(PAD) + strong.stringWidth(word) + small(key) + small(note);
            return new java.awt.Dimension(wide, strong.getHeight() + Look.px(16));
        }

        private int small(String text) {
            return text.isEmpty() ? 0 : getFontMetrics(Look.Style.NOTE.font()).stringWidth(text) + Look.px(GAP);
        }

        @Override
        protected void paintComponent(Graphics graphics) {
            Graphics2D g = Look.smooth((Graphics2D) graphics.create());
            if (getModel().isRollover() || isFocusOwner()) {
                g.setColor(Look.colour(isFocusOwner() ? Ink.ACTION : Ink.BORDER));
                g.setStroke(new BasicStroke(1));
                double arc = Look.px(6);
                g.draw(new RoundRectangle2D.Double(0.5, 0.5, getWidth() - 1, getHeight() - 5, arc, arc));
            }
            FontMetrics strong = g.getFontMetrics(Look.Style.STRONG.font());
            int base = (getHeight() - strong.getHeight()) / 2 + strong.getAscent();
            int x = Look.px(PAD);
            g.setFont(Look.Style.STRONG.font());
            g.setColor(Look.colour(isSelected() ? Ink.ACTION : Ink.INK));
            g.drawString(word, x, base);
            x += strong.stringWidth(word);
            g.setFont(Look.Style.NOTE.font());
            g.setColor(Look.colour(Ink.QUIET));
            for (String small : new String[] {note, key}) {
                if (small.isEmpty()) continue;
                g.drawString(small, x + Look.px(GAP), base);
                x += small(small);
            }
            if (isSelected()) {
                g.setColor(Look.colour(Ink.ACTION));
                g.fillRect(Look.px(PAD), getHeight() - Look.px(3), getWidth() - 2 * Look.px(PAD), Look.px(2));
            }
            g.dispose();
        }
    }
}
