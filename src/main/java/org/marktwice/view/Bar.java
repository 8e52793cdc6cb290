package org.marktwice.view;

import java.awt.Color;
import java.awt.Graphics;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.marktwice.picture.Ink;
import org.marktwice.view.Look.Style;

/** The bar across a screen's top, with its title, or the line along its bottom. */
public final class Bar extends JPanel {
    private static final long serialVersionUID = 1L;
    private final boolean top;

    private Bar(boolean top, MigLayout layout) {
        super(layout);
        this.top = top;
        setOpaque(false);
        setBorder(BorderFactory.createEmptyBorder());
    }

    /** A title and the note under it at the left, whatever else at the right. */
    public static Bar top(String title, String note, JComponent... right) {
        Bar bar = new Bar(true, new MigLayout("insets 10 20 10 20, gapx 12", "[grow][]", "[]0[]"));
        JLabel heading = Look.label(title, Style.TITLE);
        JPanel words = new JPanel(new MigLayout("insets 0, gap 0, wrap 1"));
        words.setOpaque(false);
        words.add(heading);
        if (!note.isEmpty()) words.add(Look.quiet(note, Style.NOTE));
        bar.add(words, "spany 2, aligny center, growx, wmin 0");
        for (JComponent component : right) bar.add(component, "spany 2, aligny center, hidemode 3");
        return bar;
    }

    /** A line of words at the left, a quiet one at the right. */
    public static Bar bottom(JLabel words, JLabel quiet) {
        Bar bar = new Bar(false, new MigLayout("insets 8 20 8 20, gapx 24", "[grow,fill][]", "[]"));
        bar.add(words, "growx, wmin 0");
        bar.add(quiet);
        return bar;
    }

    @Override
    protected void paintComponent(Graphics g) {
        Color before = g.getColor();
        g.setColor(Look.colour(Ink.PANEL));
        g.fillRect(0, 0, getWidth(), getHeight());
        g.setColor(Look.colour(Ink.BORDER));
        g.fillRect(0, top ? getHeight() - 1 : 0, getWidth(), 1);
        g.setColor(before);
    }
}
