package org.marktwice.quiz;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.marktwice.picture.Ink;
import org.marktwice.picture.Palette;
import org.marktwice.picture.SurfacePainter;

/** One picture in its own part of an area. */
interface Pane {
    /** @param pointed the place that is pointed at; null for none */
    void paint(Graphics2D g, SurfacePainter painter, Palette palette, Offer.@Nullable Place pointed);

    /** What is pointed at, were it an answer. */
    Optional<Offer.Place> at(Point2D point);

    /** Where a place is to be seen. */
    Optional<Shape> shape(Offer.Place place);

    static void outline(Graphics2D g, Shape shape) {
        g.setColor(Palette.LIGHT.of(Ink.PANEL, 0.85));
        g.setStroke(new BasicStroke(5.5f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(shape);
        g.setColor(Palette.LIGHT.of(Ink.ACTION));
        g.setStroke(new BasicStroke(3f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(shape);
    }

    static Rectangle2D grown(Rectangle2D r, double by) {
        return new Rectangle2D.Double(
                r.getX() - by, r.getY() - by, Math.max(1, r.getWidth() + 2 * by), Math.max(1, r.getHeight() + 2 * by));
    }
}
