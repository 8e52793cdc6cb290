package org.marktwice.quiz;

import java.awt.BasicStroke;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.marktwice.picture.Ink;
import org.marktwice.picture.Palette;
import org.marktwice.picture.SurfaceFrame;
import org.marktwice.picture.SurfacePainter;
import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;

/** A surface square on; what lies beyond its sides is named there, and pointed at along them. */
final class SquareOnPane implements Pane {
    /** How near to a side it is pointed at, pixels. */
    private static final double NEAR = 46;

    /** In less room than so many times the size of the letters nothing is named. */
    private static final double SMALL = 15;

    private final Picture.SquareOn picture;
    private final boolean isSmall;
    private final double scale;
    private final Rectangle2D seen;
    private final AffineTransform toView;

    SquareOnPane(Picture.SquareOn picture, Rectangle2D area, Font font) {
        this.picture = picture;
        SurfaceFrame frame = SurfaceFrame.of(picture.surface(), picture.board().board());
        Rectangle2D.Double page = new Rectangle2D.Double();
        page.setFrameFromDiagonal(
                frame.toPage(picture.from(), picture.low()), frame.toPage(picture.to(), picture.high()));
        boolean named =
                shows(picture.surface().uAxis(), -1) || shows(picture.surface().uAxis(), 1);
        isSmall = area.getWidth() < SMALL * font.getSize2D();
        double room = (named && !isSmall ? 4.5 : 0.5) * font.getSize2D();
        scale = Math.max(
                0.02,
                Math.min(
                        (area.getWidth() - 2 * room) / page.width,
                        (area.getHeight() - (isSmall ? 1 : 3.4) * font.getSize2D()) / page.height));
        double w = page.width * scale;
        double h = page.height * scale;
        seen = new Rectangle2D.Double(area.getCenterX() - w / 2, area.getCenterY() - h / 2, w, h);
        toView = AffineTransform.getTranslateInstance(seen.getCenterX(), seen.getCenterY());
        if (picture.halfTurned()) toView.quadrantRotate(2);
        toView.scale(scale, scale);
        toView.translate(-page.getCenterX(), -page.getCenterY());
        toView.concatenate(frame.toPage());
    }

    @Override
    public void paint(Graphics2D g, SurfacePainter painter, Palette palette, Offer.@Nullable Place pointed) {
        Graphics2D on = (Graphics2D) g.create();
        on.clip(Pane.grown(seen, 3));
        on.transform(toView);
        painter.paint(on, picture.board(), picture.surface(), scale, palette);
        on.dispose();
        g.setColor(palette.of(Ink.QUIET));
        g.setStroke(new BasicStroke(1));
        sides().forEach(s -> g.draw(line(s.out())));
        if (!isSmall) names(g, painter.font(), palette);
        if (pointed != null) shape(pointed).ifPresent(s -> Pane.outline(g, s));
    }

    private void names(Graphics2D g, Font font, Palette palette) {
        g.setFont(font);
        g.setColor(palette.of(Ink.INK));
        FontMetrics m = g.getFontMetrics();
        for (Side side : sides()) {
            String words = side.surface().spoken();
            double w = m.stringWidth(words);
            Point2D.Double out = side.out();
            double x = out.x < 0 ? seen.getX() - w - 8 : out.x > 0 ? seen.getMaxX() + 8 : seen.getCenterX() - w / 2;
            double y = out.y < 0
                    ? seen.getY() - 7
                    : out.y > 0 ? seen.getMaxY() + m.getAscent() + 5 : seen.getCenterY() + m.getAscent() * 0.4;
            g.drawString(words, (float) x, (float) y);
        }
    }

    /** A surface that adjoins the one seen where the picture shows it. @param out where it lies on the page; y runs down */
    private record Side(Surface surface, Point2D.Double out) {}

    private List<Side> sides() {
        List<Side> sides = new ArrayList<>();
        for (Surface other : Surface.values()) {
            if (!other.adjoins(picture.surface()) || !shows(other.axis(), other.sign())) continue;
            boolean alongU = other.axis() == picture.surface().uAxis();
            Point2D.Double out = new Point2D.Double(alongU ? other.sign() : 0, alongU ? 0 : other.sign());
            toView.deltaTransform(out, out);
            sides.add(new Side(other, new Point2D.Double(Math.rint(out.x / scale), Math.rint(out.y / scale))));
        }
        return sides;
    }

    /** Whether the picture goes as far as where the seen surface ends this way along one of its axes. */
    private boolean shows(int axis, int sign) {
        Board board = picture.board().board();
        Surface own = picture.surface();
        boolean alongU = axis == own.uAxis();
        double first = alongU ? picture.from() : picture.low();
        double last = alongU ? picture.to() : picture.high();
        double end = alongU ? board.uExtent(own) : board.vExtent(own);
        return sign > 0 ? last > end - 0.01 : first < 0.01;
    }

    @Override
    public Optional<Offer.Place> at(Point2D point) {
        if (!Pane.grown(seen, NEAR).contains(point)) return Optional.empty();
        return sides().stream()
                .min(Comparator.comparingDouble(s -> line(s.out()).ptLineDist(point)))
                .map(s -> new Offer.Place.OnSurface(s.surface()));
    }

    @Override
    public Optional<Shape> shape(Offer.Place place) {
        if (!(place instanceof Offer.Place.OnSurface on)) return Optional.empty();
        return sides().stream()
                .filter(s -> s.surface() == on.surface())
                .map(s -> (Shape) line(s.out()))
                .findFirst();
    }

    private Line2D line(Point2D out) {
        return new Line2D.Double(
                out.getX() > 0 ? seen.getMaxX() : seen.getX(),
                out.getY() > 0 ? seen.getMaxY() : seen.getY(),
                out.getX() < 0 ? seen.getX() : seen.getMaxX(),
                out.getY() < 0 ? seen.getY() : seen.getMaxY());
    }
}
