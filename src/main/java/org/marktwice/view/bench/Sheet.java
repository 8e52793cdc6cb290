package org.marktwice.view.bench;

import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.LayoutManager;
import java.awt.geom.RoundRectangle2D;
import javax.swing.JPanel;
import org.marktwice.picture.Ink;
import org.marktwice.view.Look;

/** A panel of the bench lying on the paper: plain, with a thin border and round corners. */
class Sheet extends JPanel {
    private static final long serialVersionUID = 1L;

    Sheet(LayoutManager layout) {
        super(layout);
        setOpaque(false);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = Look.smooth((Graphics2D) graphics.create());
        double arc = Look.px(12);
        RoundRectangle2D box = new RoundRectangle2D.Double(0.5, 0.5, getWidth() - 1, getHeight() - 1, arc, arc);
        g.setColor(Look.colour(Ink.PANEL));
        g.fill(box);
        g.setColor(Look.colour(Ink.BORDER));
        g.draw(box);
        g.dispose();
    }
}
