package org.marktwice.view.bench;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.List;
import java.util.Optional;
import org.marktwice.bench.Marker;
import org.marktwice.fit.TrueLine;
import org.marktwice.picture.Ink;
import org.marktwice.picture.Palette;
import org.marktwice.picture.Struck;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;
import org.marktwice.view.Look;

/**
 * Draws the tools that lines are struck with, where they are laid: square, gauge, a mate held in place; and the line as it
 * would really land.
 */
final class StrikePainter {
    /** Sizes of the tools, millimetres. */
    private static final double BLADE = 150;

    private static final double BLADE_WIDE = 20;
    private static final double BLADE_OVER = 20;
    /** The same where the surfaces beside it need the room. */
    private static final double BLADE_OVER_FLAT = 5;

    /** Where the blade is no longer than this, in pixels, the reading stands beyond it rather than beside it. */
    private static final int NARROW = 70;

    private static final double STOCK_LONG = 78;
    private static final double STOCK_THICK = 13;
    private static final double STOCK_DEEP = 16;
    private static final double FENCE_LONG = 34;
    private static final double FENCE_THICK = 12;
    private static final double STEM_WIDE = 10;
    private static final double STEM_OVER = 16;
    private static final double MATE_HIGH = 34;

    private final Graphics2D g;
    private final PatchView view;
    private final Palette palette;
    private final Plates plates;

    StrikePainter(Graphics2D g, PatchView view, Palette palette) {
        this.g = g;
        this.view = view;
        this.palette = palette;
        this.plates = new Plates(g, view.component().getSize(), palette);
    }

    void paint(Overlay.SquareLaid square) {
        TrueLine line = square.lands();
        Surface stock = line.reference();
        Optional<Patch> on = patch(line.on());
        double x = line.measured();
        on.ifPresent(p -> {
            blade(p, line, square.side());
            standing(p, stock, x, x + square.side() * STOCK_LONG, STOCK_THICK);
        });
        if (on.isEmpty() || view.rise(line.on()).isEmpty()) {
            lying(stock, line.on(), x, x + square.side() * STOCK_LONG);
        }
        on.ifPresent(p -> {
            line(p, line, square.knife());
            says(p, line, square.says());
        });
    }

    /** The reading stands beyond the far end of the blade, so that neither rule nor stock hides it. */
    private void says(Patch patch, TrueLine line, String says) {
        double wide = patch.frame().height();
        boolean fromLow = line.reference().sign() < 0;
        Point2D.Double near = fromLow ? patch.toView(line.low(), 0) : patch.toView(line.high(), wide);
        Point2D.Double far = fromLow ? patch.toView(line.high(), wide) : patch.toView(line.low(), 0);
        if (near.distance(far) < Look.px(NARROW)) {
            Point2D.Double away = new Point2D.Double(far.x - near.x, far.y - near.y);
            double over = view.rise(line.on()).isEmpty() ? BLADE_OVER_FLAT : BLADE_OVER;
            double tip = 1 + over / wide;
            Point2D.Double end = new Point2D.Double(near.x + away.x * tip, near.y + away.y * tip);
            plates.beyond(says, far, end, away);
            return;
        }
        Point2D.Double at = new Point2D.Double((near.x + 3 * far.x) / 4, (near.y + 3 * far.y) / 4);
        Point2D.Double aside = patch.toView(line.middle() - 1, wide / 2);
        Point2D.Double middle = patch.toView(line.middle(), wide / 2);
        plates.beyond(says, at, at, new Point2D.Double(aside.x - middle.x, aside.y - middle.y));
    }

    private Optional<Patch> patch(Surface surface) {
        return view.patches().stream().filter(p -> p.surface() == surface).findFirst();
    }

    /** The blade lies beyond the line, its edge on it, and reaches over the far arris. */
    private void blade(Patch patch, TrueLine line, int side) {
        double wide = patch.frame().height();
        boolean fromLow = line.reference().sign() < 0;
        boolean flat = view.rise(line.on()).isEmpty();
        double reach = Math.min(BLADE, wide + (flat ? BLADE_OVER_FLAT : BLADE_OVER));
        double near = fromLow ? 0 : wide;
        double far = fromLow ? reach : wide - reach;
        double lean = line.lean() / wide;
        double atNear = line.low() + lean * near;
        double atFar = line.low() + lean * far;
        Path2D.Double shape = new Path2D.Double();
        add(shape, patch.toView(atNear, near));
        add(shape, patch.toView(atFar, far));
        add(shape, patch.toView(atFar + side * BLADE_WIDE, far));
        add(shape, patch.toView(atNear + side * BLADE_WIDE, near));
        shape.closePath();
        solid(shape, palette.of(Ink.STEEL, 0.8));
    }

    /** A block that bears on another surface, seen from this one: it stands out over the arris. */
    private void standing(Patch patch, Surface bears, double from, double to, double thick) {
        Optional<Point2D.Double> out = view.rise(bears);
        Optional<Point2D.Double> up = view.rise(patch.surface());
        if (out.isEmpty() || up.isEmpty()) return;
        Point2D.Double a = patch.toView(onArris(patch, bears, from));
        Point2D.Double b = patch.toView(onArris(patch, bears, to));
        Point2D.Double back = scaled(out.get(), thick);
        solid(quad(a, b, plus(b, back), plus(a, back)), palette.of(Ink.TOOL_WOOD, 0.9));
        if (patch(bears).isEmpty()) return;
        Point2D.Double down = scaled(up.get(), -STOCK_DEEP);
        Point2D.Double c = plus(a, back);
        Point2D.Double d = plus(b, back);
        solid(quad(c, d, plus(d, down), plus(c, down)), palette.of(Ink.TOOL_WOOD, 0.9));
    }

    /** A block where it bears, seen square on: it lies on that surface, from the arris inwards. */
    private void lying(Surface bears, Surface on, double from, double to) {
        Optional<Patch> found = patch(bears);
        if (found.isEmpty()) return;
        Patch patch = found.get();
        boolean overU = on.axis() == patch.surface().uAxis();
        double extent = overU ? patch.frame().width() : patch.frame().height();
        double arris = on.sign() > 0 ? extent : 0;
        double in = arris - on.sign() * Math.min(STOCK_DEEP, extent);
        Path2D.Double shape = overU
                ? quad(patch.toView(arris, from), patch.toView(arris, to), patch.toView(in, to), patch.toView(in, from))
                : quad(
                        patch.toView(from, arris),
                        patch.toView(to, arris),
                        patch.toView(to, in),
                        patch.toView(from, in));
        solid(shape, palette.of(Ink.TOOL_WOOD, 0.9));
    }

    /** A point of the arris with another surface, so far along it. */
    private static SurfacePoint onArris(Patch patch, Surface bears, double along) {
        Surface on = patch.surface();
        boolean overU = bears.axis() == on.uAxis();
        double extent = overU ? patch.frame().width() : patch.frame().height();
        double arris = bears.sign() > 0 ? extent : 0;
        return overU ? new SurfacePoint(on, arris, along) : new SurfacePoint(on, along, arris);
    }

    void paint(Overlay.GaugeLaid gauge) {
        TrueLine line = gauge.lands();
        Surface fence = line.reference();
        double along = gauge.at().surface().uAxis() == line.runs()
                ? gauge.at().u()
                : gauge.at().v();
        Optional<Patch> on = patch(line.on());
        on.ifPresent(p -> {
            line(p, line, true);
            standing(p, fence, along - FENCE_LONG / 2, along + FENCE_LONG / 2, FENCE_THICK);
            stem(p, line, along, gauge.says());
        });
        if (on.isEmpty() || view.rise(line.on()).isEmpty()) {
            lying(fence, line.on(), along - FENCE_LONG / 2, along + FENCE_LONG / 2);
        }
    }

    /** From the fence over the arris to a little beyond the spur. */
    private void stem(Patch patch, TrueLine line, double along, String says) {
        Surface fence = line.reference();
        boolean overU = fence.axis() == patch.surface().uAxis();
        double extent = overU ? patch.frame().width() : patch.frame().height();
        double arris = fence.sign() > 0 ? extent : 0;
        double spur = line.middle();
        double tip = spur - fence.sign() * STEM_OVER;
        double half = STEM_WIDE / 2;
        Path2D.Double shape = quad(
                point(patch, overU, arris, along - half),
                point(patch, overU, tip, along - half),
                point(patch, overU, tip, along + half),
                point(patch, overU, arris, along + half));
        solid(shape, palette.of(Ink.TOOL_WOOD, 0.55));
        Point2D.Double at = point(patch, overU, spur, along);
        dot(at);
        Point2D.Double end = point(patch, overU, tip, along);
        plates.beyond(says, at, end, new Point2D.Double(end.x - at.x, end.y - at.y));
    }

    private static Point2D.Double point(Patch patch, boolean overU, double across, double along) {
        return overU ? patch.toView(across, along) : patch.toView(along, across);
    }

    void paint(Overlay.MateLaid mate) {
        TrueLine line = mate.lands();
        patch(line.on()).ifPresent(p -> {
            double wide = p.frame().height();
            Point2D.Double a = p.toView(mate.from(), 0);
            Point2D.Double b = p.toView(mate.from(), wide);
            Point2D.Double c = p.toView(line.high(), wide);
            Point2D.Double d = p.toView(line.low(), 0);
            List<Point2D.Double> foot = List.of(a, b, c, d);
            Point2D.Double up =
                    view.rise(line.on()).map(r -> scaled(r, MATE_HIGH)).orElse(new Point2D.Double());
            Color wood = palette.of(Ink.TOOL_WOOD, 0.34);
            solid(quad(a, b, c, d), wood);
            for (int i = 0; i < 4 && (up.x != 0 || up.y != 0); i++) {
                Point2D.Double from = foot.get(i);
                Point2D.Double to = foot.get((i + 1) % 4);
                solid(quad(from, to, plus(to, up), plus(from, up)), wood);
            }
            line(p, line, mate.knife());
            Point2D.Double middle = new Point2D.Double((a.x + c.x) / 2, (a.y + c.y) / 2);
            plates.beyond(mate.says(), middle, plus(middle, up), new Point2D.Double(0, -1));
        });
    }

    void paint(Overlay.LinePicked picked) {
        patch(picked.line().on()).ifPresent(p -> {
            var lies = Struck.line(picked.line(), view.board(), Marker.KNIFE);
            Line2D.Double shape = new Line2D.Double(p.toView(lies.from()), p.toView(lies.to()));
            g.setStroke(new BasicStroke(Look.px(7), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
            g.setColor(Palette.LIGHT.of(Ink.ACTION, 0.45));
            g.draw(shape);
        });
    }

    void paint(Overlay.WastePicked waste) {
        patch(waste.outline().get(0).surface()).ifPresent(p -> {
            Path2D.Double shape = new Path2D.Double();
            for (SurfacePoint at : waste.outline()) add(shape, p.toView(at));
            shape.closePath();
            g.setColor(Palette.LIGHT.of(Ink.PANEL, 0.45));
            g.fill(shape);
            float[] dash = {Look.px(5), Look.px(3)};
            g.setStroke(new BasicStroke(Look.px(2), BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, dash, 0));
            g.setColor(Palette.LIGHT.of(Ink.ACTION));
            g.draw(shape);
        });
    }

    /** The line as it would lie, over the tool that it is struck along. */
    private void line(Patch patch, TrueLine line, boolean knife) {
        var lies = Struck.line(line, view.board(), knife ? Marker.KNIFE : Marker.PENCIL);
        Line2D.Double shape = new Line2D.Double(patch.toView(lies.from()), patch.toView(lies.to()));
        g.setStroke(new BasicStroke(Look.px(4)));
        g.setColor(Palette.LIGHT.of(Ink.PANEL, 0.7));
        g.draw(shape);
        g.setStroke(new BasicStroke(knife ? Look.px(1) * 1.4f : Look.px(2)));
        g.setColor(palette.of(knife ? Ink.KNIFE : Ink.PENCIL));
        g.draw(shape);
    }

    private void dot(Point2D at) {
        double r = Look.px(3);
        g.setColor(palette.of(Ink.KNIFE));
        g.fill(new Ellipse2D.Double(at.getX() - r, at.getY() - r, 2 * r, 2 * r));
    }

    private void solid(Path2D shape, Color fill) {
        g.setColor(fill);
        g.fill(shape);
        g.setColor(palette.of(Ink.GRADUATION));
        g.setStroke(new BasicStroke(Look.px(1), BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND));
        g.draw(shape);
    }

    private static Path2D.Double quad(Point2D a, Point2D b, Point2D c, Point2D d) {
        Path2D.Double shape = new Path2D.Double();
        for (Point2D p : List.of(a, b, c, d)) add(shape, p);
        shape.closePath();
        return shape;
    }

    private static void add(Path2D path, Point2D p) {
        if (path.getCurrentPoint() == null) path.moveTo(p.getX(), p.getY());
        else path.lineTo(p.getX(), p.getY());
    }

    private static Point2D.Double plus(Point2D a, Point2D b) {
        return new Point2D.Double(a.getX() + b.getX(), a.getY() + b.getY());
    }

    private static Point2D.Double scaled(Point2D p, double by) {
        return new Point2D.Double(p.getX() * by, p.getY() * by);
    }
}
