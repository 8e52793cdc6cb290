package org.marktwice.quiz;

import java.awt.BasicStroke;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.marktwice.picture.Ink;
import org.marktwice.picture.Palette;
import org.marktwice.picture.Sign;
import org.marktwice.picture.SurfacePainter;
import org.marktwice.picture.Unrolled;
import org.marktwice.timber.Surface;

/** A board unrolled, with a length to measure by. */
record UnrolledPane(Picture.Unrolled picture, Unrolled view) implements Pane {
    /** The length to measure by, millimetres. */
    private static final double MEASURE = 50;

    static UnrolledPane in(Picture.Unrolled picture, Rectangle2D area, Font font) {
        double foot = picture.caption() == null ? 0 : 2 * font.getSize2D();
        Rectangle2D room =
                new Rectangle2D.Double(area.getX(), area.getY(), area.getWidth(), Math.max(1, area.getHeight() - foot));
        return new UnrolledPane(
                picture, Unrolled.in(roomForEnds(room, font), picture.board().board(), font));
    }

    /** The ends' labels may be wider than the ends. */
    private static Rectangle2D roomForEnds(Rectangle2D area, Font font) {
        double label = 5 * font.getSize2D();
        return new Rectangle2D.Double(
                area.getX(),
                area.getY(),
                Math.max(1, area.getWidth() - label),
                Math.max(1, area.getHeight() - label / 8));
    }

    @Override
    public void paint(Graphics2D g, SurfacePainter painter, Palette palette, Offer.@Nullable Place pointed) {
        measure(g, painter.font(), palette);
        view.paint(g, picture.board(), painter, palette);
        Picture.Unrolled.Caption caption = picture.caption();
        if (caption != null) caption(g, caption, painter.font(), palette);
        if (pointed != null) shape(pointed).ifPresent(s -> Pane.outline(g, s));
    }

    private void caption(Graphics2D g, Picture.Unrolled.Caption caption, Font font, Palette palette) {
        g.setFont(font);
        g.setColor(palette.of(Ink.of(caption.verdict())));
        Rectangle2D lowest = view.place(Surface.EDGE_2);
        double high = g.getFontMetrics().getAscent();
        double y = lowest.getMaxY() + 1.5 * high;
        Sign.draw(g, caption.verdict(), lowest.getX(), y, 0.8 * high);
        g.drawString(caption.text(), (float) (lowest.getX() + 1.1 * high), (float) y);
    }

    /** Under the ends, as long as so much of the board. */
    private void measure(Graphics2D g, Font font, Palette palette) {
        g.setFont(font);
        FontMetrics m = g.getFontMetrics();
        Rectangle2D end = view.place(Surface.END_2);
        double x = end.getX();
        double to = x + MEASURE * view.scale();
        double y = Math.max(view.place(Surface.EDGE_2).getMaxY() - 1, end.getMaxY() + 2.9 * m.getHeight());
        double tick = 0.3 * m.getAscent();
        g.setColor(palette.of(Ink.QUIET));
        g.setStroke(new BasicStroke(1));
        g.draw(new Line2D.Double(x, y, to, y));
        g.draw(new Line2D.Double(x, y - tick, x, y + tick));
        g.draw(new Line2D.Double(to, y - tick, to, y + tick));
        g.drawString((int) MEASURE + " mm", (float) x, (float) (y - tick - 0.3 * m.getAscent()));
    }

    @Override
    public Optional<Offer.Place> at(Point2D point) {
        return view.pick(point).map(p -> new Offer.Place.OnSurface(p.surface()));
    }

    @Override
    public Optional<Shape> shape(Offer.Place place) {
        return place instanceof Offer.Place.OnSurface on ? Optional.of(view.place(on.surface())) : Optional.empty();
    }
}
