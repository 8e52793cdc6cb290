package org.marktwice.view;

import java.awt.BasicStroke;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import javax.swing.Icon;
import org.marktwice.picture.Ink;
import org.marktwice.rulebook.Verdict;

/** A verdict's sign, drawn: no font has all four. Always shown beside the verdict's word. */
public record Sign(Verdict verdict) implements Icon {
    private static final int SIZE = 14;

    @Override
    public void paintIcon(Component c, Graphics graphics, int x, int y) {
        Graphics2D g = Look.smooth((Graphics2D) graphics.create());
        paint(g, x, y, getIconWidth());
        g.dispose();
    }

    /** Draws it into a square of this side. */
    public void paint(Graphics2D g, double x, double y, double side) {
        Path2D path = new Path2D.Double();
        switch (verdict) {
            case SOUND -> lines(path, 0.12, 0.55, 0.40, 0.82, 0.88, 0.20);
            case WRONG -> {
                lines(path, 0.18, 0.18, 0.82, 0.82);
                lines(path, 0.82, 0.18, 0.18, 0.82);
            }
            case CLOSE -> {
                path.moveTo(0.10, 0.60);
                path.curveTo(0.26, 0.24, 0.42, 0.34, 0.50, 0.50);
                path.curveTo(0.58, 0.66, 0.74, 0.76, 0.90, 0.40);
            }
            case OPEN -> path.append(new Ellipse2D.Double(0.18, 0.18, 0.64, 0.64), false);
        }
        Graphics2D own = (Graphics2D) g.create();
        own.setColor(Look.colour(Ink.of(verdict)));
        own.translate(x, y);
        own.scale(side, side);
        own.setStroke(new BasicStroke(0.15f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        own.draw(path);
        own.dispose();
    }

    private static void lines(Path2D path, double... xy) {
        path.moveTo(xy[0], xy[1]);
        for (int i = 2; i < xy.length; i += 2) path.lineTo(xy[i], xy[i + 1]);
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
