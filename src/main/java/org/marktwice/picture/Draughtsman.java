package org.marktwice.picture;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import org.jspecify.annotations.Nullable;
import org.marktwice.drawing.JobAxis;

/** Draws views, dimensions and the symbol of the method by the habits of the drawing office. */
final class Draughtsman {
    private static final float SEEN = 1.3f;
    private static final float HIDDEN = 0.9f;
    private static final float THIN = 0.8f;
    private static final double ARROW = 7;

    private final Graphics2D g;
    private final Palette palette;
    private final Font font;

    Draughtsman(Graphics2D g, Palette palette, Font font) {
        this.g = g;
        this.palette = palette;
        this.font = font.deriveFont(font.getSize2D() * 12 / 13);
    }

    /** A view's lines: what is hidden dashed and thin, the part that is picked out over the others. */
    void view(Linework lines, Rectangle2D place, Rectangle2D extent, @Nullable String picked) {
        AffineTransform to = AffineTransform.getTranslateInstance(place.getX(), place.getY());
        to.scale(place.getWidth() / extent.getWidth(), place.getHeight() / extent.getHeight());
        to.translate(-extent.getX(), -extent.getY());
        g.setStroke(
                new BasicStroke(HIDDEN, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {4, 2.5f}, 0));
        for (Linework.Piece p : lines.hidden()) draw(p, to, picked, Ink.QUIET);
        g.setStroke(new BasicStroke(SEEN, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        for (Linework.Piece p : lines.seen()) if (!p.part().equals(picked)) draw(p, to, picked, Ink.INK);
        for (Linework.Piece p : lines.seen()) if (p.part().equals(picked)) draw(p, to, picked, Ink.INK);
    }

    private void draw(Linework.Piece piece, AffineTransform to, @Nullable String picked, Ink ink) {
        g.setColor(palette.of(piece.part().equals(picked) ? Ink.ACTION : ink));
        g.draw(to.createTransformedShape(piece.line()));
    }

    void dimension(Dimension d, SheetLayout sheet) {
        double away = sheet.level() * (sheet.levelOf(d) + 1);
        boolean first = sheet.method() == WorkingDrawing.Method.FIRST_ANGLE;
        if (d.axis() == JobAxis.HIGH) {
            Rectangle2D v = sheet.front();
            upright(
                    v.getMinX(),
                    v.getMinX() - away,
                    v.getMaxY() - d.from() * sheet.scale(),
                    v.getMaxY() - d.to() * sheet.scale(),
                    d.text());
        } else if (d.axis() == JobAxis.ACROSS) {
            Rectangle2D v = first ? sheet.plan() : sheet.front();
            lying(
                    v.getMaxY(),
                    v.getMaxY() + away,
                    v.getMinX() + d.from() * sheet.scale(),
                    v.getMinX() + d.to() * sheet.scale(),
                    d.text());
        } else {
            Rectangle2D v = sheet.side();
            // seen from the left the front is on the right
            double a = first ? v.getMaxX() - d.from() * sheet.scale() : v.getMinX() + d.from() * sheet.scale();
            double b = first ? v.getMaxX() - d.to() * sheet.scale() : v.getMinX() + d.to() * sheet.scale();
            lying(v.getMaxY(), v.getMaxY() + away, Math.min(a, b), Math.max(a, b), d.text());
        }
    }

    /** A dimension line below the view, at y, from x0 to x1. */
    private void lying(double viewY, double y, double x0, double x1, String text) {
        thin();
        extension(x0, viewY + 2.5, x0, y + 3);
        extension(x1, viewY + 2.5, x1, y + 3);
        line(x0, y, x1, y, text, false);
    }

    /** A dimension line left of the view, at x, from y0 up to y1; its text reads from the right. */
    private void upright(double viewX, double x, double y0, double y1, String text) {
        thin();
        extension(viewX - 2.5, y0, x - 3, y0);
        extension(viewX - 2.5, y1, x - 3, y1);
        line(x, y0, x, y1, text, true);
    }

    private void thin() {
        g.setColor(palette.of(Ink.QUIET));
        g.setStroke(new BasicStroke(THIN));
    }

    private void extension(double x0, double y0, double x1, double y1) {
        g.draw(new Line2D.Double(x0, y0, x1, y1));
    }

    /** The line with its arrowheads, and the text above its middle; where it is too short for these, they stand outside. */
    private void line(double x0, double y0, double x1, double y1, String text, boolean upright) {
        double length = Math.hypot(x1 - x0, y1 - y0);
        double dx = (x1 - x0) / length;
        double dy = (y1 - y0) / length;
        boolean inside = length >= 2 * ARROW + 3;
        double over = inside ? 0 : ARROW + 4;
        g.draw(new Line2D.Double(x0 - dx * over, y0 - dy * over, x1 + dx * over, y1 + dy * over));
        int way = inside ? 1 : -1;
        arrow(x0, y0, way * dx, way * dy);
        arrow(x1, y1, -way * dx, -way * dy);
        FontMetrics m = g.getFontMetrics(font);
        double w = m.stringWidth(text);
        boolean fits = w + 4 <= length;
        double along = fits ? length / 2 : length + over + 3 + w / 2;
        if (!fits)
            g.draw(new Line2D.Double(
                    x1 + dx * over, y1 + dy * over, x1 + dx * (over + 3 + w), y1 + dy * (over + 3 + w)));
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

    /** The cone's two views: from its small end, and from the side. */
    void symbol(WorkingDrawing.Method method, Rectangle2D place) {
        g.setColor(palette.of(Ink.QUIET));
        g.setStroke(new BasicStroke(THIN));
        double big = place.getHeight() * 0.42;
        double small = big * 0.5;
        double cy = place.getCenterY();
        boolean first = method == WorkingDrawing.Method.FIRST_ANGLE;
        double circles = first ? place.getMaxX() - big - 1 : place.getMinX() + big + 1;
        double cone = first ? place.getMinX() + big + 1 : place.getMaxX() - big - 1;
        g.draw(circle(circles, cy, big));
        g.draw(circle(circles, cy, small));
        Path2D.Double side = new Path2D.Double();
        side.moveTo(cone - big, cy - small);
        side.lineTo(cone + big, cy - big);
        side.lineTo(cone + big, cy + big);
        side.lineTo(cone - big, cy + small);
        side.closePath();
        g.draw(side);
        Color axis = palette.of(Ink.QUIET, 0.6);
        g.setColor(axis);
        g.setStroke(
                new BasicStroke(0.6f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {5, 2, 1, 2}, 0));
        g.draw(new Line2D.Double(place.getMinX(), cy, place.getMaxX(), cy));
        g.draw(new Line2D.Double(circles, cy - big - 1, circles, cy + big + 1));
    }

    private static Ellipse2D circle(double x, double y, double r) {
        return new Ellipse2D.Double(x - r, y - r, 2 * r, 2 * r);
    }
}
