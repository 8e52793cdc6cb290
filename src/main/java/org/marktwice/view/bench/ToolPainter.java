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
import org.marktwice.bench.ToolReading;
import org.marktwice.picture.Ink;
import org.marktwice.picture.Palette;
import org.marktwice.timber.Light;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;
import org.marktwice.view.Look;

/**
 * Draws the tools that prove a surface, standing on it where they are laid. Once laid, the light under them is drawn, as much
 * exaggerated as the board itself, and what they read stands at the place that tells it.
 */
final class ToolPainter {
    /** Sizes of the tools, millimetres. */
    private static final double EDGE_HIGH = 20;

    private static final double EDGE_OVER = 16;
    private static final double STICK_HIGH = 14;
    private static final double STICK_OVER = 10;
    private static final double STICK_IN = 12;
    private static final double BLADE_HIGH = 16;
    private static final double BLADE_OVER = 24;
    private static final double STOCK_LONG = 62;
    private static final double STOCK_THICK = 14;

    /** How far a tool drawn fallen over stands out, where the views beside it need the room. */
    private static final double FALLEN_OVER = 4;

    /** Light is drawn at least so wide, in pixels of the usual text size, or nobody would see it. */
    private static final double LEAST_LIGHT = 1.6;

    private final Graphics2D g;
    private final PatchView view;
    private final Palette palette;
    private final Plates plates;
    private float opacity = 1;

    ToolPainter(Graphics2D g, PatchView view, Palette palette) {
        this.g = g;
        this.view = view;
        this.palette = palette;
        this.plates = new Plates(g, view.component().getSize(), palette);
    }

    void paint(Overlay.ToolLaid tool) {
        opacity = tool.isLaid() ? 1 : 0.55f;
        switch (tool.test().with()) {
            case STRAIGHT_EDGE -> straightEdge(tool);
            case WINDING_STICKS -> sticks(tool);
            case TRY_SQUARE -> square(tool);
            case END_GRAIN ->
                patch(tool.test().on()).ifPresent(p -> new ArcsPainter(g, palette, plates).paint(p, tool));
        }
    }

    private Optional<Patch> patch(Surface surface) {
        return view.patches().stream().filter(p -> p.surface() == surface).findFirst();
    }

    private Standing standing(Patch patch, SurfacePoint from, SurfacePoint to) {
        return new Standing(patch, from, to, view.rise(patch.surface()));
    }

    /** A height of the board's own departures, as it is drawn. */
    private double drawn(double mm) {
        return mm * view.times();
    }

    // The straight-edge

    private void straightEdge(Overlay.ToolLaid tool) {
        Light light = tool.light();
        Optional<Patch> patch = patch(tool.test().on());
        if (light == null || patch.isEmpty()) return;
        Standing on = standing(patch.get(), light.from(), light.to());
        double over = (on.isFallen() ? FALLEN_OVER : EDGE_OVER) / on.length();
        List<Double> gaps = light.gaps();
        double first = on.isFallen() ? 0 : drawn(gaps.get(0));
        double last = on.isFallen() ? 0 : drawn(gaps.get(gaps.size() - 1));
        if (tool.isLaid() && light.widest() >= ToolReading.NO_LIGHT) light(on, patch.get(), light, first, last);
        steel(bar(on, -over, 1 + over, first, last, EDGE_HIGH));
        if (!tool.isLaid()) return;
        double worst = light.widest() < ToolReading.NO_LIGHT ? 0.5 : light.worst();
        Point2D at = on.isFallen()
                ? on.at(worst, -drawn(gapAt(gaps, worst)) / 2)
                : mid(on.at(worst, 0), on.straight(worst, first, last));
        boolean twice = worst == 0 && light.widest() >= ToolReading.NO_LIGHT;
        if (twice) ring(on.straight(1, first, last));
        ring(at);
        plates.beyond(tool.says(), at, on.raised(on.straight(worst, first, last), EDGE_HIGH), on.up());
    }

    private static double gapAt(List<Double> gaps, double share) {
        return gaps.get((int) Math.round(share * (gaps.size() - 1)));
    }

    private static Point2D.Double mid(Point2D a, Point2D b) {
        return new Point2D.Double((a.getX() + b.getX()) / 2, (a.getY() + b.getY()) / 2);
    }

    /** Between the wood's own line and the edge, never thinner than can be seen where there is any. */
    private void light(Standing on, Patch patch, Light light, double first, double last) {
        double least = Look.px(10) * LEAST_LIGHT / 10 / patch.scale();
        Path2D.Double shape = new Path2D.Double();
        int n = light.gaps().size() - 1;
        for (int i = 0; i <= n; i++) {
            double share = i / (double) n;
            add(shape, on.isFallen() ? on.at(share, 0) : on.straight(share, first, last));
        }
        for (int i = n; i >= 0; i--) {
            double share = i / (double) n;
            double gap = light.gaps().get(i);
            double seen = gap < ToolReading.NO_LIGHT ? 0 : Math.max(least, drawn(gap));
            Point2D edge = on.isFallen() ? on.at(share, 0) : on.straight(share, first, last);
            add(shape, on.raised(edge, -seen));
        }
        shape.closePath();
        lit(shape);
    }

    private static void add(Path2D path, Point2D p) {
        if (path.getCurrentPoint() == null) path.moveTo(p.getX(), p.getY());
        else path.lineTo(p.getX(), p.getY());
    }

    private void lit(Path2D shape) {
        g.setColor(palette.of(Ink.KNIFE, 0.55));
        g.setStroke(new BasicStroke(Look.px(2), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(shape);
        g.setColor(palette.of(Ink.LIGHT));
        g.fill(shape);
    }

    /** A straight bar standing on the line, from its lower edge's heights at 0 and 1. */
    private static Path2D.Double bar(Standing on, double from, double to, double at0, double at1, double high) {
        Path2D.Double bar = new Path2D.Double();
        add(bar, on.straight(from, at0, at1));
        add(bar, on.straight(to, at0, at1));
        add(bar, on.straight(to, at0 + high, at1 + high));
        add(bar, on.straight(from, at0 + high, at1 + high));
        bar.closePath();
        return bar;
    }

    // The winding sticks

    private void sticks(Overlay.ToolLaid tool) {
        Optional<Patch> found = patch(tool.test().on());
        if (found.isEmpty()) return;
        Patch patch = found.get();
        double length = patch.frame().width();
        double in = Math.min(STICK_IN, length / 8);
        Standing near = stick(patch, in);
        Standing far = stick(patch, length - in);
        double over = (far.isFallen() ? FALLEN_OVER : STICK_OVER) / far.length();
        // Seen square on, the far stick's rise is drawn as it leans over.
        double rise = far.isFallen() ? drawn(tool.reads()) : 0;
        wood(bar(near, -over, 1 + over, 0, 0, STICK_HIGH));
        wood(bar(far, -over, 1 + over, 0, rise, STICK_HIGH));
        if (!tool.isLaid()) return;
        Point2D.Double start = far.straight(-over, STICK_HIGH, STICK_HIGH + rise);
        Point2D.Double end = far.straight(1 + over, STICK_HIGH, STICK_HIGH + rise);
        Point2D.Double a = near.straight(-over, STICK_HIGH, STICK_HIGH);
        Point2D.Double b = near.straight(1 + over, STICK_HIGH, STICK_HIGH);
        Point2D.Double level = new Point2D.Double(start.x + b.x - a.x, start.y + b.y - a.y);
        dashed(new Line2D.Double(start, level));
        g.setColor(palette.of(Ink.WRONG));
        g.setStroke(new BasicStroke(Look.px(2)));
        if (tool.reads() != 0) g.draw(new Line2D.Double(level, end));
        ring(end);
        plates.beyond(tool.says(), end, end, new Point2D.Double(end.x - start.x, end.y - start.y));
    }

    private Standing stick(Patch patch, double u) {
        Surface on = patch.surface();
        return standing(
                patch,
                new SurfacePoint(on, u, 0),
                new SurfacePoint(on, u, patch.frame().height()));
    }

    // The try-square

    private void square(Overlay.ToolLaid tool) {
        Surface blade = tool.test().on();
        Optional<Patch> patch = patch(blade);
        double u = place(tool);
        patch.ifPresent(p -> blade(p, tool, u));
        if (patch.isEmpty() || view.rise(blade).isEmpty()) {
            patch(tool.stock()).ifPresent(p -> stockAlone(p, tool, u));
        }
    }

    /** Where it stands along the arris that it tries. */
    private static double place(Overlay.ToolLaid tool) {
        Double at = tool.test().at();
        return at == null ? Double.NaN : at;
    }

    private void blade(Patch patch, Overlay.ToolLaid tool, double u) {
        Surface on = patch.surface();
        SurfacePoint heel = onArris(patch, tool.stock(), u, 0);
        double over = Math.min(ToolReading.BLADE, extent(patch, tool.stock()));
        SurfacePoint toe = onArris(patch, tool.stock(), u, over);
        Standing line = standing(patch, heel, toe);
        boolean out = extent(patch, tool.stock()) < ToolReading.BLADE;
        double to = out ? 1 + BLADE_OVER / over : 1;
        double gap = drawn(Math.abs(tool.reads()));
        double atHeel = tool.reads() > 0 ? gap : 0;
        double atToe = tool.reads() < 0 ? gap : 0;
        Optional<Point2D.Double> rise = view.rise(on);
        Optional<Point2D.Double> back = view.rise(tool.stock());
        if (rise.isPresent() && back.isPresent()) {
            wood(stock(
                    line.at(0, atHeel),
                    rise.get(),
                    back.get(),
                    patch(tool.stock()).isPresent()));
        }
        if (tool.isLaid() && tool.reads() != 0) wedge(line, patch, atHeel, atToe);
        steel(bar(line, 0, to, atHeel, atToe, BLADE_HIGH));
        if (!tool.isLaid()) return;
        double worst = tool.reads() > 0 ? 0 : tool.reads() < 0 ? 1 : 0.5;
        Point2D.Double at = line.straight(worst, atHeel / 2, atToe / 2);
        ring(at);
        plates.beyond(tool.says(), at, line.raised(line.straight(worst, atHeel, atToe), BLADE_HIGH), line.up());
    }

    private void wedge(Standing line, Patch patch, double atHeel, double atToe) {
        double least = LEAST_LIGHT * Look.px(10) / 10 / patch.scale();
        Path2D.Double shape = new Path2D.Double();
        add(shape, line.at(0, 0));
        add(shape, line.at(1, 0));
        add(shape, line.at(1, atToe > 0 ? Math.max(least, atToe) : 0));
        add(shape, line.at(0, atHeel > 0 ? Math.max(least, atHeel) : 0));
        shape.closePath();
        lit(shape);
    }

    /** A point so far from the arris with the stock's surface. */
    private static SurfacePoint onArris(Patch patch, Surface stock, double u, double away) {
        Surface on = patch.surface();
        double far = stock.sign() > 0 ? extent(patch, stock) - away : away;
        boolean overU = stock.axis() == on.uAxis();
        double other = Double.isNaN(u)
                ? (overU ? patch.frame().height() : patch.frame().width()) / 2
                : u;
        return overU ? new SurfacePoint(on, far, other) : new SurfacePoint(on, other, far);
    }

    private static double extent(Patch patch, Surface stock) {
        boolean overU = stock.axis() == patch.surface().uAxis();
        return overU ? patch.frame().width() : patch.frame().height();
    }

    /** The stock as it stands: from the top of the blade down over the surface that it bears on, as far as that is seen. */
    private static Path2D.Double stock(Point2D heel, Point2D up, Point2D back, boolean seen) {
        Path2D.Double shape = new Path2D.Double();
        double down = seen ? -STOCK_LONG : 0;
        double[][] corners = {{BLADE_HIGH, 0}, {BLADE_HIGH, STOCK_THICK}, {down, STOCK_THICK}, {down, 0}};
        for (double[] c : corners) {
            add(
                    shape,
                    new Point2D.Double(
                            heel.getX() + up.getX() * c[0] + back.getX() * c[1],
                            heel.getY() + up.getY() * c[0] + back.getY() * c[1]));
        }
        shape.closePath();
        return shape;
    }

    /** Where the blade isn't seen as it stands, the stock lies on its own surface, from the arris inwards. */
    private void stockAlone(Patch patch, Overlay.ToolLaid tool, double u) {
        double deep = Math.min(STOCK_LONG, extent(patch, tool.test().on()));
        SurfacePoint from = onArris(patch, tool.test().on(), u, 0);
        SurfacePoint to = onArris(patch, tool.test().on(), u, deep);
        wood(bar(standing(patch, from, to), 0, 1, 0, 0, STOCK_THICK));
    }

    // Steel and wood

    private void steel(Path2D shape) {
        solid(shape, palette.of(Ink.STEEL, 0.86 * opacity));
    }

    private void wood(Path2D shape) {
        solid(shape, palette.of(Ink.TOOL_WOOD, 0.86 * opacity));
    }

    private void solid(Path2D shape, Color fill) {
        g.setColor(fill);
        g.fill(shape);
        g.setColor(palette.of(Ink.GRADUATION, opacity));
        g.setStroke(new BasicStroke(Look.px(1), BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND));
        g.draw(shape);
    }

    private void dashed(Line2D line) {
        float[] dash = {Look.px(5), Look.px(3)};
        g.setStroke(new BasicStroke(Look.px(1), BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, dash, 0));
        g.setColor(palette.of(Ink.ACTION));
        g.draw(line);
    }

    private void ring(Point2D at) {
        double r = Look.px(4);
        Ellipse2D round = new Ellipse2D.Double(at.getX() - r, at.getY() - r, 2 * r, 2 * r);
        g.setColor(palette.of(Ink.PANEL, 0.8));
        g.setStroke(new BasicStroke(Look.px(3)));
        g.draw(round);
        g.setColor(palette.of(Ink.ACTION));
        g.setStroke(new BasicStroke(Look.px(1)));
        g.draw(round);
    }
}
