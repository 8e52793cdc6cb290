package org.marktwice.picture;

import java.awt.BasicStroke;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;

/** Writes sizes as ISO 129-1 has it: extension lines, a dimension line with its arrowheads, the figure above it. */
final class DimensionPen {
    private static final double ARROW = 7;
    /** From what is measured to where its extension line begins, and how far this runs past the dimension line. */
    private static final double GAP = 2.5;

    private static final double PAST = 3;

    private final Graphics2D g;
    private final Palette palette;
    private final Font font;

    DimensionPen(Graphics2D g, Palette palette, Font font) {
        this.g = g;
        this.palette = palette;
        this.font = font;
    }

    /**
     * A dimension line at y, from x0 to x1, of what ends at {@code start} above or below it.
     *
     * @param after whether a figure that has no room between the arrows stands past x1, else before x0
     */
    void lying(double start, double y, double x0, double x1, String text, boolean after) {
        thin();
        double way = Math.signum(y - start);
        extension(x0, start + way * GAP, x0, y + way * PAST);
        extension(x1, start + way * GAP, x1, y + way * PAST);
        line(x0, y, x1, y, text, false, after);
    }

    /**
     * A dimension line at x, from y0 up to y1, of what ends at {@code start} beside it; its figure reads from the right.
     *
     * @param after whether a figure that has no room stands above y1, else below y0
     */
    void upright(double start, double x, double y0, double y1, String text, boolean after) {
        thin();
        double way = Math.signum(x - start);
        extension(start + way * GAP, y0, x + way * PAST, y0);
        extension(start + way * GAP, y1, x + way * PAST, y1);
        line(x, y0, x, y1, text, true, after);
    }

    /** How much of the page's length a figure takes up past the end of its line; 0 where it stands between the arrows. */
    double outside(String text, double length) {
        double w = width(text);
        return w + 4 <= length ? 0 : over(length) + 3 + w;
    }

    private double width(String text) {
        return g.getFontMetrics(font).stringWidth(text);
    }

    private static double over(double length) {
        return length >= 2 * ARROW + 3 ? 0 : ARROW + 4;
    }

    private void thin() {
        g.setColor(palette.of(Ink.QUIET));
        g.setStroke(new BasicStroke(Draughtsman.THIN));
    }

    private void extension(double x0, double y0, double x1, double y1) {
        g.draw(new Line2D.Double(x0, y0, x1, y1));
    }

    /** The line with its arrowheads, and the text above its middle; where it is too short for these, they stand outside. */
    private void line(double x0, double y0, double x1, double y1, String text, boolean upright, boolean after) {
        double length = Math.hypot(x1 - x0, y1 - y0);
        double dx = (x1 - x0) / length;
        double dy = (y1 - y0) / length;
        double over = over(length);
        g.draw(new Line2D.Double(x0 - dx * over, y0 - dy * over, x1 + dx * over, y1 + dy * over));
        int way = over == 0 ? 1 : -1;
        arrow(x0, y0, way * dx, way * dy);
        arrow(x1, y1, -way * dx, -way * dy);
        double w = width(text);
        double outside = outside(text, length);
        double along = outside == 0 ? length / 2 : after ? length + over + 3 + w / 2 : -over - 3 - w / 2;
        if (outside > 0) {
            double from = after ? length + over : -over;
            double to = after ? length + outside : -outside;
            g.draw(new Line2D.Double(x0 + dx * from, y0 + dy * from, x0 + dx * to, y0 + dy * to));
        }
        write(text, x0 + dx * along, y0 + dy * along, upright, w);
    }

    private void arrow(double x, double y, double dx, double dy) {
        double half = ARROW / 6;
        Path2D.Double p = new Path2D.Double();
        p.moveTo(x, y);
        p.lineTo(x + dx * ARROW - dy * half, y + dy * ARROW + dx * half);
        p.lineTo(x + dx * ARROW + dy * half, y + dy * ARROW - dx * half);
        p.closePath();
        g.fill(p);
    }

    private void write(String text, double x, double y, boolean upright, double width) {
        Graphics2D t = (Graphics2D) g.create();
        t.setFont(font);
        t.setColor(palette.of(Ink.INK));
        t.translate(x, y);
        if (upright) t.rotate(-Math.PI / 2);
        t.drawString(text, (float) (-width / 2), -2.5f);
        t.dispose();
    }
}
