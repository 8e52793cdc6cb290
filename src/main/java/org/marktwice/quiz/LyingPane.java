package org.marktwice.quiz;

import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import org.joml.Matrix3dc;
import org.jspecify.annotations.Nullable;
import org.marktwice.picture.Ink;
import org.marktwice.picture.Isometric;
import org.marktwice.picture.IsometricPainter;
import org.marktwice.picture.Palette;
import org.marktwice.picture.SurfacePainter;
import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;

/** A board that lies, in isometric projection, its surfaces named beside it. */
record LyingPane(Picture.Lying lying, Isometric view) implements Pane {
    private static final double STEP = 2;

    /** @param pose how it is turned just now */
    static LyingPane in(Picture.Lying lying, Matrix3dc pose, Rectangle2D area, Font font) {
        Rectangle2D room = lying.named()
                ? Pane.grown(area, -2.1 * font.getSize2D())
                : Pane.grown(area, -0.06 * Math.min(area.getWidth(), area.getHeight()));
        Isometric view = Isometric.fit(lying.board().board().size(), pose, room);
        return new LyingPane(
                lying,
                lying.settled() == null ? view : view.formed(lying.form()).fitted(room));
    }

    @Override
    public void paint(Graphics2D g, SurfacePainter painter, Palette palette, Offer.@Nullable Place pointed) {
        new IsometricPainter(painter).paint(g, lying.board(), view, palette);
        if (lying.named()) names(g, painter.font(), palette);
        if (pointed != null) shape(pointed).ifPresent(s -> Pane.outline(g, s));
    }

    private void names(Graphics2D g, Font font, Palette palette) {
        g.setFont(font);
        g.setColor(palette.of(Ink.INK));
        FontMetrics m = g.getFontMetrics();
        Path2D.Double outline = view.outline();
        for (Surface s : Surface.values()) {
            if (!s.isEnd() && view.facing(s) <= 0.01) continue;
            Rectangle2D box = beside(s, outline, m.stringWidth(s.spoken()), m.getAscent());
            g.drawString(s.spoken(), (float) box.getX(), (float) box.getMaxY());
        }
    }

    /** The nearest room to a surface that is off the board, the way that the surface looks. */
    private Rectangle2D beside(Surface s, Path2D outline, double wide, double high) {
        Point2D.Double at = middle(s);
        Point2D.Double from = middle(s.opposite());
        double length = Math.max(1e-6, at.distance(from));
        double dx = STEP * (at.x - from.x) / length;
        double dy = STEP * (at.y - from.y) / length;
        Rectangle2D.Double box = new Rectangle2D.Double(at.x - wide / 2, at.y - high / 2, wide, high);
        double most = view.bounds().getWidth() + view.bounds().getHeight();
        for (double gone = 0; gone < most && outline.intersects(Pane.grown(box, high * 0.4)); gone += STEP) {
            box.x += dx;
            box.y += dy;
        }
        return box;
    }

    private Point2D.Double middle(Surface s) {
        Board board = lying.board().board();
        return view.project(new SurfacePoint(s, board.uExtent(s) / 2, board.vExtent(s) / 2));
    }

    @Override
    public Optional<Offer.Place> at(Point2D point) {
        return view.pick(point).map(p -> new Offer.Place.OnSurface(p.surface()));
    }

    @Override
    public Optional<Shape> shape(Offer.Place place) {
        if (!(place instanceof Offer.Place.OnSurface on) || view.facing(on.surface()) <= 0) return Optional.empty();
        return Optional.of(view.shape(on.surface()));
    }
}
