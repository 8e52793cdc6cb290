package org.marktwice.view.bench;

import java.awt.BasicStroke;
import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import org.marktwice.picture.Ink;
import org.marktwice.picture.Palette;
import org.marktwice.view.Look;

/** Small plates with a reading, kept within the view, with a line to the place they speak of. */
final class Plates {
    private final Graphics2D g;
    private final Dimension room;
    private final Palette palette;

    Plates(Graphics2D g, Dimension room, Palette palette) {
        this.g = g;
        this.room = room;
        this.palette = palette;
    }

    /**
     * @param place what the words are about
     * @param tip where the tool ends that stands there: the plate keeps clear of it
     * @param away which way the plate goes from the tip; it goes to another side where there is no room that way
     */
    void beyond(String words, Point2D place, Point2D tip, Point2D away) {
        g.setFont(Look.Style.STRONG.font());
        FontMetrics m = g.getFontMetrics();
        double pad = Look.px(6);
        double w = m.stringWidth(words) + 2 * pad;
        double h = m.getHeight() + pad;
        double size = Math.max(1e-9, Math.hypot(away.getX(), away.getY()));
        double dx = away.getX() / size;
        double dy = away.getY() / size;
        double[][] ways = {{dx, dy}, {-dy, dx}, {dy, -dx}, {-dx, -dy}};
        Rectangle2D plate = null;
        for (double[] way : ways) {
            Rectangle2D there = at(tip, way[0], way[1], w, h);
            boolean fits = new Rectangle2D.Double(0, 0, room.width, room.height).contains(there);
            if (plate == null || fits) plate = there;
            if (fits) break;
        }
        if (plate == null) return;
        double x = within(plate.getX(), room.width - w);
        double y = within(plate.getY(), room.height - h);
        draw(place, new RoundRectangle2D.Double(x, y, w, h, Look.px(8), Look.px(8)));
        g.drawString(words, (float) (x + pad), (float) (y + pad / 2 + m.getAscent()));
    }

    private static Rectangle2D at(Point2D tip, double dx, double dy, double w, double h) {
        double out = Math.abs(dx) * w / 2 + Math.abs(dy) * h / 2 + Look.px(7);
        return new Rectangle2D.Double(tip.getX() + dx * out - w / 2, tip.getY() + dy * out - h / 2, w, h);
    }

    private void draw(Point2D place, RoundRectangle2D plate) {
        g.setColor(palette.of(Ink.ACTION));
        g.setStroke(new BasicStroke(Look.px(1)));
        g.draw(new Line2D.Double(place.getX(), place.getY(), plate.getCenterX(), plate.getCenterY()));
        g.setColor(palette.of(Ink.PANEL));
        g.fill(plate);
        g.setColor(palette.of(Ink.ACTION));
        g.draw(plate);
    }

    private static double within(double at, double most) {
        return Math.max(1, Math.min(at, most - 1));
    }
}
