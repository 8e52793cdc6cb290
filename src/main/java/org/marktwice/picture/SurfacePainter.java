package org.marktwice.picture;

import java.awt.BasicStroke;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import org.marktwice.bench.Mark;
import org.marktwice.bench.Marker;
import org.marktwice.timber.Board;
import org.marktwice.timber.Box;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;
import org.marktwice.timber.Trace;

/**
 * Draws one surface of a board with everything that lies on it. The same painter serves the flat and the isometric view: it
 * knows millimetres of the surface and nothing of the view.
 */
public final class SurfacePainter {
    private static final double TOUCHES = 1e-3;

    private final Figures figures;
    private final Font font;

    /** @param font the sans of the program, in any size */
    public SurfacePainter(Figures figures, Font font) {
        this.figures = figures;
        this.font = font;
    }

    public Font font() {
        return font;
    }

    /**
     * @param g its user space is the surface's own (u, v) in millimetres; left as it was
     * @param pxPerMm pixels a millimetre, for line widths and the figure's fineness
     */
    public void paint(Graphics2D g, BoardPicture p, Surface s, double pxPerMm, Palette palette) {
        OneSurface one = on(g, p, s, pxPerMm, palette);
        one.paint();
        one.g.dispose();
    }

    /** Draws the rule alone, where it lies on this surface; the same user space. */
    void paintRule(Graphics2D g, BoardPicture p, Surface s, double pxPerMm, Palette palette) {
        OneSurface one = on(g, p, s, pxPerMm, palette);
        one.rule();
        one.g.dispose();
    }

    private OneSurface on(Graphics2D g, BoardPicture p, Surface s, double pxPerMm, Palette palette) {
        SurfaceFrame frame = SurfaceFrame.of(s, p.board());
        Graphics2D page = (Graphics2D) g.create();
        page.transform(frame.toSurface());
        page.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        page.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        page.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        return new OneSurface(page, p, s, frame, 1 / pxPerMm, palette);
    }

    /** One surface being painted: g's user space is the page frame, px is a pixel's side in millimetres. */
    private final class OneSurface {
        private final Graphics2D g;
        private final BoardPicture p;
        private final Surface s;
        private final SurfaceFrame frame;
        private final double px;
        private final Palette palette;
        private final Rectangle2D all;

        OneSurface(Graphics2D g, BoardPicture p, Surface s, SurfaceFrame frame, double px, Palette palette) {
            this.g = g;
            this.p = p;
            this.s = s;
            this.frame = frame;
            this.px = px;
            this.palette = palette;
            this.all = new Rectangle2D.Double(0, 0, frame.width(), frame.height());
        }

        void paint() {
            figure();
            Shape clip = g.getClip();
            g.clip(all);
            p.struck().forEach(this::struck);
            offcuts();
            p.cuts().forEach(this::cut);
            p.state().marks().forEach(m -> mark(m, 0.92));
            name();
            if (p.ghost() != null) mark(p.ghost(), 0.45);
            pointed();
            evidence();
            g.setClip(clip);
            rule();
        }

        private void figure() {
            BufferedImage image = figures.of(p.board(), s, 1 / px);
            AffineTransform fit = AffineTransform.getScaleInstance(
                    frame.width() / image.getWidth(), frame.height() / image.getHeight());
            g.drawImage(image, fit, null);
        }

        private void mark(Mark mark, double opacity) {
            if (mark.on() != s) return;
            List<Mark> marks = new ArrayList<>(p.state().marks());
            if (!marks.contains(mark)) marks.add(mark);
            double size = FaceMarks.height(mark.on(), mark.towards(), p.board());
            double width = Math.max(1.3 * px, Math.min(1.15, size * 0.055));
            Path2D.Double path = FaceMarks.path(mark, marks, p.board());
            if (p.pointed() instanceof Pointed.AtMark at && at.step() == mark.step()) glow(path);
            else clearOfHatching(path, width);
            Pencil.draw(g, path, width, palette.of(Ink.PENCIL), opacity);
        }

        /** What is written stays legible over the hatching of cuts and of what is sawn off. */
        private void clearOfHatching(Shape path, double width) {
            if (p.cuts().isEmpty() && p.offcuts().isEmpty()) return;
            g.setColor(Palette.LIGHT.of(Ink.PANEL, 0.72));
            g.setStroke(new BasicStroke((float) (width + 4.5 * px), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
            g.draw(path);
        }

        private void glow(Shape path) {
            g.setColor(Palette.LIGHT.of(Ink.PANEL, 0.55));
            g.setStroke(new BasicStroke((float) (6 * px), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
            g.draw(path);
            g.setColor(palette.of(Ink.ACTION, 0.35));
            g.setStroke(new BasicStroke((float) (4 * px), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
            g.draw(path);
        }

        private void name() {
            String written = p.written();
            if (written == null || p.state().name() == null) return;
            SurfacePoint at = p.state().name().at();
            if (at.surface() != s) return;
            Path2D.Double path = Handwriting.written(written, frame, at);
            double width = Math.max(1.1 * px, 0.07 * Handwriting.height(frame));
            if (p.pointed() instanceof Pointed.AtName) glow(path);
            else clearOfHatching(path, width);
            Pencil.draw(g, path, width, palette.of(Ink.PENCIL), 0.85);
        }

        private void struck(Struck one) {
            if (one.on() != s) return;
            if (p.pointed() instanceof Pointed.AtMark at && at.step() == one.step()) glow(shapeOf(one));
            if (one instanceof Struck.Line line) {
                boolean knife = line.with() == Marker.KNIFE;
                if (knife) knife(shapeOf(line));
                else Pencil.draw(g, shapeOf(line), Math.max(1.2 * px, 0.45), palette.of(Ink.PENCIL), 0.75);
            } else if (one instanceof Struck.Kerf kerf) {
                g.setStroke(new BasicStroke(
                        (float) Math.max(1.5 * px, kerf.wide()), BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER));
                g.setColor(palette.of(Ink.KNIFE, 0.9));
                g.draw(shapeOf(kerf));
            } else if (one instanceof Struck.Waste waste) {
                waste(shapeOf(waste));
            }
        }

        private Shape shapeOf(Struck one) {
            if (one instanceof Struck.Line line) {
                return new Line2D.Double(frame.toPage(line.from()), frame.toPage(line.to()));
            }
            if (one instanceof Struck.Kerf kerf) {
                return new Line2D.Double(frame.toPage(kerf.from()), frame.toPage(kerf.to()));
            }
            Path2D.Double outline = new Path2D.Double();
            for (SurfacePoint at : ((Struck.Waste) one).outline()) {
                Point2D.Double to = frame.toPage(at);
                if (outline.getCurrentPoint() == null) outline.moveTo(to.x, to.y);
                else outline.lineTo(to.x, to.y);
            }
            outline.closePath();
            return outline;
        }

        /** A thin dark cut with one lit lip. */
        private void knife(Shape line) {
            g.setStroke(new BasicStroke((float) Math.max(0.9 * px, 0.18)));
            Graphics2D lip = (Graphics2D) g.create();
            lip.translate(0.9 * px, 0.9 * px);
            lip.setColor(palette.of(Ink.STEEL, 0.45));
            lip.draw(line);
            lip.dispose();
            g.setColor(palette.of(Ink.KNIFE));
            g.draw(line);
        }

        private void waste(Shape outline) {
            Shape clip = g.getClip();
            g.clip(outline);
            Rectangle2D area = outline.getBounds2D();
            double gap = Math.max(2.6, 6 * px);
            double reach = area.getHeight();
            int i = 0;
            for (double x = area.getMinX() - reach; x < area.getMaxX(); x += gap) {
                double slip = gap * 0.5 * (ValueNoise.unit(3, 5, i++) - 0.5);
                Path2D.Double stroke = new Path2D.Double();
                stroke.moveTo(x + slip, area.getMaxY());
                stroke.lineTo(x + reach - slip, area.getMinY());
                Pencil.draw(g, stroke, Math.max(1.0 * px, 0.4), palette.of(Ink.PENCIL), 0.55);
            }
            g.setClip(clip);
        }

        private void offcuts() {
            if (s.uAxis() != 0) return;
            for (BoardPicture.Offcut off : p.offcuts()) {
                Rectangle2D r = new Rectangle2D.Double(off.from(), 0, off.to() - off.from(), frame.height());
                g.setColor(palette.of(Ink.PANEL, palette.isDark() ? 0.62 : 0.58));
                g.fill(r);
                hatch(r, palette.of(Ink.QUIET, 0.5), 7 * px, -1);
                double limit = off.from() <= 0 ? off.to() : off.from();
                g.setColor(palette.of(Ink.QUIET));
                g.setStroke(dashed(1.2 * px, 7 * px));
                g.draw(new Line2D.Double(limit, 0, limit, frame.height()));
            }
        }

        private void cut(BoardPicture.LaidCut laid) {
            Ink ink = laid.foul() ? Ink.WRONG : Ink.ACTION;
            boolean at = p.pointed() instanceof Pointed.AtCut c
                    && c.joint().equals(laid.cut().joint());
            for (Box box : laid.cut().boxes()) {
                Rectangle2D foot = footprint(box);
                if (foot == null) continue;
                Palette onWood = Palette.LIGHT;
                g.setColor(onWood.of(Ink.PANEL, 0.34));
                g.fill(foot);
                hatch(foot, onWood.of(ink, 0.75), 6 * px, 1);
                g.setColor(onWood.of(ink));
                g.setStroke(dashed((at ? 2.6 : 1.8) * px, 7 * px));
                g.draw(foot);
            }
        }

        /** Where a box comes through this surface, in the page frame; null where it doesn't. */
        private @org.jspecify.annotations.Nullable Rectangle2D footprint(Box box) {
            double at = s.sign() > 0 ? p.board().size().along(s.axis()) : 0;
            if (box.min(s.axis()) > at + TOUCHES || box.max(s.axis()) < at - TOUCHES) return null;
            Rectangle2D r = new Rectangle2D.Double();
            r.setFrameFromDiagonal(
                    frame.toPage(box.min(s.uAxis()), box.min(s.vAxis())),
                    frame.toPage(box.max(s.uAxis()), box.max(s.vAxis())));
            Rectangle2D in = r.createIntersection(all);
            return in.getWidth() > TOUCHES && in.getHeight() > TOUCHES ? in : null;
        }

        private void hatch(Rectangle2D area, java.awt.Color colour, double gap, int rising) {
            Shape clip = g.getClip();
            g.clip(area);
            g.setColor(colour);
            g.setStroke(new BasicStroke((float) (0.9 * px)));
            double step = gap * Math.sqrt(2);
            double h = area.getHeight();
            double first = Math.floor((area.getMinX() - h) / step) * step;
            for (double x = first; x < area.getMaxX() + h; x += step) {
                if (rising > 0) g.draw(new Line2D.Double(x, area.getMaxY(), x + h, area.getMinY()));
                else g.draw(new Line2D.Double(x, area.getMinY(), x + h, area.getMaxY()));
            }
            g.setClip(clip);
        }

        private BasicStroke dashed(double width, double dash) {
            return new BasicStroke(
                    (float) width,
                    BasicStroke.CAP_BUTT,
                    BasicStroke.JOIN_MITER,
                    10,
                    new float[] {(float) dash, (float) (dash * 0.6)},
                    0);
        }

        private void pointed() {
            if (p.pointed() instanceof Pointed.AtSurface at && at.surface() == s) {
                border(Palette.LIGHT.of(Ink.ACTION, 0.9), 2);
            } else if (p.pointed() instanceof Pointed.AtKnot at) {
                outlineKnot(at.knot(), Ink.ACTION, 1.6);
            } else if (p.pointed() instanceof Pointed.AtArris at && at.arris().bounds(s)) {
                Surface other =
                        at.arris().one() == s ? at.arris().other() : at.arris().one();
                g.setColor(Palette.LIGHT.of(Ink.ACTION));
                g.setStroke(new BasicStroke((float) (5 * px)));
                g.draw(side(other));
            }
        }

        private void border(java.awt.Color colour, double width) {
            g.setColor(colour);
            g.setStroke(new BasicStroke((float) (2 * width * px), BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER));
            g.draw(all);
        }

        /** The side of this surface at which it meets another. */
        private Line2D side(Surface other) {
            double u = frame.width();
            double v = frame.height();
            double far = other.sign() > 0 ? p.board().size().along(other.axis()) : 0;
            if (other.axis() == s.uAxis()) return new Line2D.Double(frame.toPage(far, 0), frame.toPage(far, v));
            return new Line2D.Double(frame.toPage(0, far), frame.toPage(u, far));
        }

        private void outlineKnot(String knot, Ink ink, double width) {
            for (Trace trace : p.board().traces(s)) {
                if (!trace.knot().equals(knot)) continue;
                Path2D.Double path = new Path2D.Double();
                for (SurfacePoint at : trace.outline()) {
                    Point2D.Double q = frame.toPage(at);
                    if (path.getCurrentPoint() == null) path.moveTo(q.x, q.y);
                    else path.lineTo(q.x, q.y);
                }
                path.closePath();
                outlined(path, ink, width);
            }
        }

        private void outlined(Shape shape, Ink ink, double width) {
            g.setColor(Palette.LIGHT.of(Ink.PANEL, 0.85));
            g.setStroke(new BasicStroke((float) ((width + 2.2) * px)));
            g.draw(shape);
            g.setColor(Palette.LIGHT.of(ink));
            g.setStroke(new BasicStroke((float) (width * px)));
            g.draw(shape);
        }

        private void evidence() {
            Ink ink = p.evidenceInk();
            if (p.evidence().surfaces().contains(s)) border(Palette.LIGHT.of(ink, 0.95), 2);
            p.evidence().knots().forEach(k -> outlineKnot(k, ink, 2));
            for (SurfacePoint at : p.evidence().points()) {
                if (at.surface() != s) continue;
                Point2D.Double c = frame.toPage(at);
                double r = 7 * px;
                outlined(new Ellipse2D.Double(c.x - r, c.y - r, 2 * r, 2 * r), ink, 2);
            }
        }

        private void rule() {
            BoardPicture.LaidRule laid = p.rule();
            if (laid == null || laid.from().surface() != s) return;
            Board board = p.board();
            Point2D.Double to = laid.to().surface() == s
                    ? frame.toPage(laid.to())
                    : frame.toPage(
                            laid.to().in(board.size()).get(s.uAxis()),
                            laid.to().in(board.size()).get(s.vAxis()));
            Rulers.draw(g, frame.toPage(laid.from()), to, laid.reading(), 1 / px, palette, font);
        }
    }
}
