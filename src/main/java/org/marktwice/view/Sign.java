package org.marktwice.view;

import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import javax.swing.Icon;
import org.marktwice.picture.Ink;
import org.marktwice.rulebook.Verdict;

/** A verdict's sign beside the verdict's word. */
public record Sign(Verdict verdict) implements Icon {
    private static final int SIZE = 14;

    @Override
    public void paintIcon(Component c, Graphics graphics, int x, int y) {
        Graphics2D g = Look.smooth((Graphics2D) graphics.create());
        paint(g, x, y, getIconWidth());
        g.dispose();
    }

    /** Draws it into a square of this side whose upper left corner is (x, y). */
    public void paint(Graphics2D g, double x, double y, double side) {
        g.setColor(Look.colour(Ink.of(verdict)));
        org.marktwice.picture.Sign.draw(g, verdict, x, y + side, side);
    }

    @Override
    public int getIconWidth() {
        return Look.px(SIZE);
    }

    @Override
    public int getIconHeight() {
        return Look.px(SIZE);
    }
}
