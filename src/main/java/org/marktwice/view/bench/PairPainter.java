package org.marktwice.view.bench;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.Optional;
import org.marktwice.picture.Ink;
import org.marktwice.picture.Palette;
import org.marktwice.timber.Size;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;
import org.marktwice.view.Look;

/**
 * Draws the other board of a pair where it lies against this one. Seen square on it covers the surface that it lies against;
 * the surfaces beside that stay open, for lines to be struck over them.
 */
final class PairPainter {
    private final Graphics2D g;
    private final PatchView view;
    private final Palette palette;
    private final Plates plates;

    PairPainter(Graphics2D g, PatchView view, Palette palette) {
        this.g = g;
        this.view = view;
        this.palette = palette;
        this.plates = new Plates(g, view.component().getSize(), palette);
    }

    void paint(Overlay.PairLaid pair) {
        Surface touches = pair.pairing().touches();
        if (view.rise(touches).isEmpty()) covered(pair);
        else solid(pair);
    }

    /** From where to where it reaches along the grain of this board. */
    private double[] reach(Overlay.PairLaid pair) {
        double here = view.board().size().length();
        double there = pair.there().length();
        return pair.pairing().level() == Surface.END_1 ? new double[] {0, there} : new double[] {here - there, here};
    }

    private Optional<Patch> patch(Surface surface) {
        return view.patches().stream().filter(p -> p.surface() == surface).findFirst();
    }

    private void covered(Overlay.PairLaid pair) {
        Surface touches = pair.pairing().touches();
        Optional<Patch> found = patch(touches);
        if (found.isEmpty()) return;
        Patch patch = found.get();
        double[] x = reach(pair);
        double from = Math.max(0, x[0]);
        double to = Math.min(patch.frame().width(), x[1]);
        double wide = Math.min(patch.frame().height(), pair.there().width());
        Path2D.Double shape = new Path2D.Double();
        add(shape, patch.toView(from, 0));
        add(shape, patch.toView(to, 0));
        add(shape, patch.toView(to, wide));
        add(shape, patch.toView(from, wide));
        shape.closePath();
        fill(shape, pair.made() ? 0.72 : 0.4);
        Point2D.Double middle = patch.toView(new SurfacePoint(touches, (from + to) / 2, wide / 2));
        plates.beyond(pair.says(), middle, middle, new Point2D.Double(0, -0.01));
    }

    private void solid(Overlay.PairLaid pair) {
        Surface touches = pair.pairing().touches();
        double[] x = reach(pair);
        Size size = view.board().size();
        double thick = pair.there().thickness();
        double low = touches == Surface.FACE_1 ? size.thickness() : -thick;
        double high = low + thick;
        double wide = pair.there().width();
        for (Patch seen : view.patches()) {
            Surface s = seen.surface();
            if (s == touches.opposite()) continue;
            double[][] corners = switch (s.axis()) {
                case 0 -> {
                    double at = s.sign() > 0 ? x[1] : x[0];
                    yield new double[][] {{at, 0, low}, {at, wide, low}, {at, wide, high}, {at, 0, high}};
                }
                case 1 -> {
                    double at = s.sign() > 0 ? wide : 0;
                    yield new double[][] {{x[0], at, low}, {x[1], at, low}, {x[1], at, high}, {x[0], at, high}};
                }
                default -> {
                    double at = s.sign() > 0 ? high : low;
                    yield new double[][] {{x[0], 0, at}, {x[1], 0, at}, {x[1], wide, at}, {x[0], wide, at}};
                }
            };
            Path2D.Double shape = new Path2D.Double();
            for (double[] c : corners) project(c).ifPresent(p -> add(shape, p));
            if (shape.getCurrentPoint() == null) continue;
            shape.closePath();
            fill(shape, pair.made() ? 0.8 : 0.4);
        }
        project(new double[] {(x[0] + x[1]) / 2, wide / 2, touches == Surface.FACE_1 ? high : low})
                .ifPresent(p -> plates.beyond(pair.says(), p, p, new Point2D.Double(0, -0.01)));
    }

    /** A point beside the board, as far above the face that is seen as it lies there. */
    private Optional<Point2D.Double> project(double[] at) {
        for (Patch patch : view.patches()) {
            Surface s = patch.surface();
            Optional<Point2D.Double> rise = view.rise(s);
            if (!s.isFace() || rise.isEmpty()) continue;
            double plane = s == Surface.FACE_1 ? view.board().size().thickness() : 0;
            double above = (at[2] - plane) * s.sign();
            Point2D.Double foot = patch.toView(at[0], at[1]);
            return Optional.of(new Point2D.Double(foot.x + rise.get().x * above, foot.y + rise.get().y * above));
        }
        return Optional.empty();
    }

    private void fill(Path2D shape, double opacity) {
        g.setColor(Palette.LIGHT.of(Ink.PANEL, opacity));
        g.fill(shape);
        g.setColor(Palette.LIGHT.of(Ink.TOOL_WOOD, 0.28));
        g.fill(shape);
        g.setColor(palette.of(Ink.GRADUATION));
        g.setStroke(new BasicStroke(Look.px(1), BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND));
        g.draw(shape);
    }

    private static void add(Path2D path, Point2D p) {
        if (path.getCurrentPoint() == null) path.moveTo(p.getX(), p.getY());
        else path.lineTo(p.getX(), p.getY());
    }
}
