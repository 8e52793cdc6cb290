package org.marktwice.quiz;

import java.awt.BasicStroke;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.joml.Matrix3dc;
import org.jspecify.annotations.Nullable;
import org.marktwice.picture.Ink;
import org.marktwice.picture.Isometric;
import org.marktwice.picture.IsometricPainter;
import org.marktwice.picture.JobPicture;
import org.marktwice.picture.Palette;
import org.marktwice.picture.SurfaceFrame;
import org.marktwice.picture.SurfacePainter;
import org.marktwice.picture.Unrolled;
import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;

/** A question's picture laid out in an area: drawn, and pointed at. */
public final class PicturePainter {
    private static final double GAP = 28;

    private final List<Pane> panes = new ArrayList<>();

    private PicturePainter() {}

    /** One picture in its own part of the area. */
    private interface Pane {
        /** @param pointed the place that is pointed at; null for none */
        void paint(Graphics2D g, SurfacePainter painter, Palette palette, Offer.@Nullable Place pointed);

        Optional<Offer.Place> at(Point2D point);

        /** Where a place is to be seen. */
        Optional<Shape> shape(Offer.Place place);
    }

    public static PicturePainter in(Picture picture, Rectangle2D area, Font font) {
        return in(picture, area, font, null);
    }

    /** @param pose how a board that lies is turned just now, on its way to where it will lie; null where it is there */
    public static PicturePainter in(Picture picture, Rectangle2D area, Font font, @Nullable Matrix3dc pose) {
        PicturePainter all = new PicturePainter();
        all.add(picture, area, font, pose);
        return all;
    }

    private void add(Picture picture, Rectangle2D area, Font font, @Nullable Matrix3dc pose) {
        if (picture instanceof Picture.Beside beside) {
            beside(beside.pictures(), area, font);
        } else if (picture instanceof Picture.Lying lying) {
            panes.add(new LyingPane(lying, pose == null ? lying.turn().rotation() : pose, area));
        } else if (picture instanceof Picture.Unrolled unrolled) {
            panes.add(new UnrolledPane(unrolled, area, font));
        } else if (picture instanceof Picture.SquareOn square) {
            panes.add(new SquareOnPane(square, area, font));
        } else if (picture instanceof Picture.Job job) {
            panes.add(new JobPane(job, area));
        }
    }

    /** Beside one another where the area is wide, one under another where it is not. */
    private void beside(List<Picture> pictures, Rectangle2D area, Font font) {
        int n = pictures.size();
        // an unrolled board is wide: it has a row to itself
        boolean wide = pictures.stream().anyMatch(p -> p instanceof Picture.Unrolled);
        boolean across = area.getWidth() > (wide ? 2.4 : 1.15) * area.getHeight();
        double whole = (across ? area.getWidth() : area.getHeight()) - GAP * (n - 1);
        double at = across ? area.getX() : area.getY();
        for (Picture one : pictures) {
            double share = whole / n;
            Rectangle2D place = across
                    ? new Rectangle2D.Double(at, area.getY(), share, area.getHeight())
                    : new Rectangle2D.Double(area.getX(), at, area.getWidth(), share);
            add(one, place, font, null);
            at += share + GAP;
        }
    }

    public void paint(Graphics2D g, SurfacePainter painter, Palette palette, Offer.@Nullable Place pointed) {
        Graphics2D own = (Graphics2D) g.create();
        own.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        own.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        own.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        for (Pane pane : panes) pane.paint(own, painter, palette, pointed);
        own.dispose();
    }

    /** What is pointed at, were it an answer. */
    public Optional<Offer.Place> at(Point2D point) {
        return panes.stream().flatMap(p -> p.at(point).stream()).findFirst();
    }

    /** Where a place is to be seen; empty where the picture doesn't show it. */
    public Optional<Shape> shape(Offer.Place place) {
        return panes.stream().flatMap(p -> p.shape(place).stream()).findFirst();
    }

    private static void outline(Graphics2D g, Shape shape) {
        g.setColor(Palette.LIGHT.of(Ink.PANEL, 0.85));
        g.setStroke(new BasicStroke(5.5f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(shape);
        g.setColor(Palette.LIGHT.of(Ink.ACTION));
        g.setStroke(new BasicStroke(3f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(shape);
    }

    private record LyingPane(Picture.Lying lying, Isometric view) implements Pane {
        LyingPane(Picture.Lying lying, Matrix3dc pose, Rectangle2D area) {
            this(lying, Isometric.fit(lying.board().board().size(), pose, inner(area, 0.06)));
        }

        @Override
        public void paint(Graphics2D g, SurfacePainter painter, Palette palette, Offer.@Nullable Place pointed) {
            new IsometricPainter(painter).paint(g, lying.board(), view, palette);
            if (pointed != null) shape(pointed).ifPresent(s -> outline(g, s));
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

    private record UnrolledPane(Picture.Unrolled picture, Unrolled view) implements Pane {
        UnrolledPane(Picture.Unrolled picture, Rectangle2D area, Font font) {
            this(picture, Unrolled.in(roomForEnds(area, font), picture.board().board(), font));
        }

        @Override
        public void paint(Graphics2D g, SurfacePainter painter, Palette palette, Offer.@Nullable Place pointed) {
            view.paint(g, picture.board(), painter, palette);
            if (pointed != null) shape(pointed).ifPresent(s -> outline(g, s));
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

    /** A surface square on; what lies beyond its sides is named there, and pointed at along them. */
    private static final class SquareOnPane implements Pane {
        private final Picture.SquareOn picture;
        private final SurfaceFrame frame;
        private final double scale;
        private final Rectangle2D seen;
        private final double left;

        SquareOnPane(Picture.SquareOn picture, Rectangle2D area, Font font) {
            this.picture = picture;
            frame = SurfaceFrame.of(picture.surface(), picture.board().board());
            double room = 4.5 * font.getSize2D();
            double wide = picture.to() - picture.from();
            scale = Math.max(
                    0.02, Math.min((area.getWidth() - 2 * room) / wide, (area.getHeight() - room) / frame.height()));
            double w = wide * scale;
            double h = frame.height() * scale;
            seen = new Rectangle2D.Double(area.getCenterX() - w / 2, area.getCenterY() - h / 2, w, h);
            left = frame.toPage(frame.uFlipped() ? picture.to() : picture.from(), 0).x;
        }

        private AffineTransform toSurface() {
            AffineTransform t = AffineTransform.getTranslateInstance(seen.getX(), seen.getY());
            t.scale(scale, scale);
            t.translate(-left, 0);
            t.concatenate(frame.toPage());
            return t;
        }

        @Override
        public void paint(Graphics2D g, SurfacePainter painter, Palette palette, Offer.@Nullable Place pointed) {
            Graphics2D on = (Graphics2D) g.create();
            on.clip(grown(seen, 3));
            on.transform(toSurface());
            painter.paint(on, picture.board(), picture.surface(), scale, palette);
            on.dispose();
            g.setColor(palette.of(Ink.QUIET));
            g.setStroke(new BasicStroke(1));
            g.draw(seen);
            labels(g, painter.font(), palette);
            if (pointed != null) shape(pointed).ifPresent(s -> outline(g, s));
        }

        private void labels(Graphics2D g, Font font, Palette palette) {
            g.setFont(font);
            g.setColor(palette.of(Ink.INK));
            FontMetrics m = g.getFontMetrics();
            for (Side side : sides()) {
                double x = side.outwards().x < 0
                        ? seen.getX() - m.stringWidth(side.words()) - 8
                        : side.outwards().x > 0
                                ? seen.getMaxX() + 8
                                : seen.getCenterX() - m.stringWidth(side.words()) / 2.0;
                double y = side.outwards().y < 0
                        ? seen.getY() - 7
                        : side.outwards().y > 0
                                ? seen.getMaxY() + m.getAscent() + 5
                                : seen.getCenterY() + m.getAscent() * 0.4;
                g.drawString(side.words(), (float) x, (float) y);
            }
        }

        /** A surface that adjoins the one seen. @param outwards where it lies on the page; y runs down */
        private record Side(Surface surface, Point2D.Double outwards, String words) {}

        private List<Side> sides() {
            Board board = picture.board().board();
            List<Side> sides = new ArrayList<>();
            for (Surface other : Surface.values()) {
                if (!other.adjoins(picture.surface())) continue;
                boolean alongU = other.axis() == picture.surface().uAxis();
                boolean cutOff = alongU
                        && (other.sign() > 0
                                ? picture.to() < board.uExtent(picture.surface()) - 0.01
                                : picture.from() > 0.01);
                if (cutOff) continue;
                boolean flipped = alongU ? frame.uFlipped() : frame.vFlipped();
                double out = other.sign() * (flipped ? -1 : 1);
                sides.add(new Side(
                        other, alongU ? new Point2D.Double(out, 0) : new Point2D.Double(0, out), other.spoken()));
            }
            return sides;
        }

        @Override
        public Optional<Offer.Place> at(Point2D point) {
            if (!grown(seen, 46).contains(point)) return Optional.empty();
            Side nearest = null;
            double least = Double.POSITIVE_INFINITY;
            for (Side side : sides()) {
                double away = side.outwards().x != 0
                        ? Math.abs(point.getX() - (side.outwards().x < 0 ? seen.getX() : seen.getMaxX()))
                        : Math.abs(point.getY() - (side.outwards().y < 0 ? seen.getY() : seen.getMaxY()));
                if (away >= least) continue;
                least = away;
                nearest = side;
            }
            return Optional.ofNullable(nearest).map(s -> new Offer.Place.OnSurface(s.surface()));
        }

        @Override
        public Optional<Shape> shape(Offer.Place place) {
            if (!(place instanceof Offer.Place.OnSurface on)) return Optional.empty();
            return sides().stream()
                    .filter(s -> s.surface() == on.surface())
                    .map(this::line)
                    .findFirst();
        }

        private Shape line(Side side) {
            double x0 = side.outwards().x > 0 ? seen.getMaxX() : seen.getX();
            double x1 = side.outwards().x < 0 ? seen.getX() : seen.getMaxX();
            double y0 = side.outwards().y > 0 ? seen.getMaxY() : seen.getY();
            double y1 = side.outwards().y < 0 ? seen.getY() : seen.getMaxY();
            Path2D.Double line = new Path2D.Double();
            line.moveTo(x0, y0);
            line.lineTo(x1, y1);
            return line;
        }
    }

    /** The ends' labels may be wider than the ends. */
    private static Rectangle2D roomForEnds(Rectangle2D area, Font font) {
        double label = 5 * font.getSize2D();
        return new Rectangle2D.Double(
                area.getX(),
                area.getY(),
                Math.max(1, area.getWidth() - label),
                Math.max(1, area.getHeight() - label / 2));
    }

    private record JobPane(Picture.Job job, JobPicture drawn, Rectangle2D area) implements Pane {
        JobPane(Picture.Job job, Rectangle2D area) {
            this(job, JobPicture.of(job.drawing()), inner(area, 0.04));
        }

        @Override
        public void paint(Graphics2D g, SurfacePainter painter, Palette palette, Offer.@Nullable Place pointed) {
            String picked = pointed instanceof Offer.Place.OnPart on ? on.part() : job.picked();
            drawn.paint(g, area, JobPicture.Style.picking(picked), palette);
        }

        @Override
        public Optional<Offer.Place> at(Point2D point) {
            return drawn.partAt(point, area).map(Offer.Place.OnPart::new);
        }

        /** A small mark where the part is seen first, taken from a grid of points. */
        @Override
        public Optional<Shape> shape(Offer.Place place) {
            if (!(place instanceof Offer.Place.OnPart on)) return Optional.empty();
            int steps = 60;
            for (int i = 1; i < steps; i++) {
                for (int j = 1; j < steps; j++) {
                    double x = area.getX() + area.getWidth() * i / steps;
                    double y = area.getY() + area.getHeight() * j / steps;
                    if (drawn.partAt(new Point2D.Double(x, y), area)
                            .filter(on.part()::equals)
                            .isPresent()) {
                        return Optional.of(new Rectangle2D.Double(x - 1, y - 1, 2, 2));
                    }
                }
            }
            return Optional.empty();
        }
    }

    private static Rectangle2D grown(Rectangle2D r, double by) {
        return new Rectangle2D.Double(r.getX() - by, r.getY() - by, r.getWidth() + 2 * by, r.getHeight() + 2 * by);
    }

    private static Rectangle2D inner(Rectangle2D r, double share) {
        double by = share * Math.min(r.getWidth(), r.getHeight());
        return grown(r, -by);
    }
}
