package org.marktwice.view;

import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.LayoutManager;
import java.awt.geom.RoundRectangle2D;
import javax.swing.JPanel;
import org.marktwice.picture.Ink;

/** A panel on the paper: plain, with a thin border and round corners. */
public class Card extends JPanel {
    private static final long serialVersionUID = 1L;
    private boolean chosen;

    public Card(LayoutManager layout) {
        super(layout);
        setOpaque(false);
    }

    public void choose(boolean on) {
        chosen = on;
        repaint();
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = Look.smooth((Graphics2D) graphics.create());
        paint(g, 0, 0, getWidth(), getHeight(), chosen);
        g.dispose();
    }

    /** Fills and outlines; chosen ones twice as thick, in the ink of what can be done. */
    public static void paint(Graphics2D g, double x, double y, double w, double h, boolean chosen) {
        double line = Look.px(chosen ? 2 : 1);
        double arc = Look.px(12);
        RoundRectangle2D box = new RoundRectangle2D.Double(x + line / 2, y + line / 2, w - line, h - line, arc, arc);
        g.setColor(Look.colour(Ink.PANEL));
        g.fill(box);
        g.setColor(Look.colour(chosen ? Ink.ACTION : Ink.BORDER));
        g.setStroke(new java.awt.BasicStroke((float) line));
        g.draw(box);
    }
}
