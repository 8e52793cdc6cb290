package org.marktwice.view.bench;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.marktwice.picture.Ink;
import org.marktwice.picture.Palette;
import org.marktwice.timber.Surface;
import org.marktwice.view.Look;

/** Draws the tools that lie over a board, through the patches of whichever view it is. */
final class OverlayPainter {
    /** Sizes of the tools, millimetres. */
    private static final double BLADE = 9;

    private static final double STICK = 7;
    private static final double STOCK = 16;

    private final Graphics2D g;
    private final List<Patch> patches;
    private final Palette palette;

    OverlayPainter(Graphics2D g, List<Patch> patches, Palette palette) {
        this.g = g;
        this.patches = patches;
        this.palette = palette;
    }

    void paint(List<Overlay> overlays) {
        for (Overlay overlay : overlays) {
            for (Patch patch : patches) paint(overlay, patch);
        }
    }

    private void paint(Overlay overlay, Patch patch) {
        Surface surface = patch.surface();
        if (overlay instanceof Overlay.StraightEdge s && s.on() == surface) {
            straightEdge(patch, s);
        } else if (overlay instanceof Overlay.WindingSticks w && w.on() == surface) {
            sticks(patch);
        } else if (overlay instanceof Overlay.TrySquare t) {
            square(patch, t);
        } else if (overlay instanceof Overlay.CaretAt c && c.at().surface() == surface) {
            caret(patch.toView(c.at()));
        } else if (overlay instanceof Overlay.RuleEnd e && e.at().point().surface() == surface) {
            ruleEnd(patch, e.at());
        } else if (overlay instanceof Overlay.GhostName n && n.at().surface() == surface) {
            ghostName(patch, n);
        }
    }

    private void straightEdge(Patch patch, Overlay.StraightEdge edge) {
        double over = 14;
        double width = patch.frame().width();
        double height = patch.frame().height();
        Double at = edge.at();
        if (at != null) {
            steel(patch, new Rectangle2D.Double(pageX(patch, at) - BLADE / 2, -over, BLADE, height + 2 * over));
        } else if (edge.on().isEnd()) {
            steel(patch, new Rectangle2D.Double(-over, height / 2 - BLADE / 2, width + 2 * over, BLADE));
        } else {
            steel(patch, new Rectangle2D.Double(-over, height / 2 - BLADE / 2, width + 2 * over, BLADE));
        }
    }

    private void sticks(Patch patch) {
        double over = 22;
        double width = patch.frame().width();
        double height = patch.frame().height();
        for (double x : new double[] {Math.min(12, width / 8), width - Math.min(12, width / 8)}) {
            wood(patch, new Rectangle2D.Double(x - STICK / 2, -over, STICK, height + 2 * over));
        }
    }

    private void square(Patch patch, Overlay.TrySquare square) {
        if (patch.surface() == square.blade()) {
            boolean end = square.blade().isEnd();
            double x = end ? patch.frame().width() / 2 : pageX(patch, square.at());
            steel(
                    patch,
                    new Rectangle2D.Double(
                            x - BLADE / 2, 0, BLADE, patch.frame().height()));
        } else if (patch.surface() == square.stock()) {
            stock(patch, square);
        }
    }

    /** The stock lies flat on its surface, running from the arris it shares with the blade. */
    private void stock(Patch patch, Overlay.TrySquare square) {
        double width = patch.frame().width();
        double height = patch.frame().height();
        if (square.blade().isEnd()) {
            double x = square.blade() == Surface.END_1 ? 0 : width - 60;
            wood(patch, new Rectangle2D.Double(x, height / 2 - STOCK / 2, Math.min(60, width), STOCK));
            return;
        }
        double deep = Math.min(60, height);
        // The page's y runs down; which way the shared arris lies follows from the frame.
        boolean arrisAtTop = (square.blade().sign() > 0) == patch.frame().vFlipped();
        double y = arrisAtTop ? 0 : height - deep;
        wood(patch, new Rectangle2D.Double(pageX(patch, square.at()) - STOCK / 2, y, STOCK, deep));
    }

    private static double pageX(Patch patch, double u) {
        return patch.frame().toPage(u, 0).x;
    }

    private void steel(Patch patch, Rectangle2D page) {
        solid(patch, page, palette.of(Ink.STEEL, 0.88));
    }

    private void wood(Patch patch, Rectangle2D page) {
        solid(patch, page, palette.of(Ink.PENCIL, 0.6));
    }

    private void solid(Patch patch, Rectangle2D page, Color fill) {
        Shape shape = new Path2D.Double(page, patch.toView());
        g.setColor(fill);
        g.fill(shape);
        g.setColor(palette.of(Ink.GRADUATION));
        g.setStroke(new BasicStroke(Look.px(1)));
        g.draw(shape);
    }

    private void caret(Point2D at) {
        double arm = Look.px(9);
        double gap = Look.px(3);
        Path2D cross = new Path2D.Double();
        for (int[] way : new int[][] {{1, 0}, {-1, 0}, {0, 1}, {0, -1}}) {
            cross.append(
                    new Line2D.Double(
                            at.getX() + way[0] * gap,
                            at.getY() + way[1] * gap,
                            at.getX() + way[0] * arm,
                            at.getY() + way[1] * arm),
                    false);
        }
        halo(cross);
    }

    private void ruleEnd(Patch patch, Snap snap) {
        Point2D at = patch.toView(snap.point());
        double r = Look.px(snap.to() == Snap.To.NOTHING ? 2 : 4);
        halo(new Ellipse2D.Double(at.getX() - r, at.getY() - r, 2 * r, 2 * r));
    }

    /** Light under dark, so that it stands out on any wood. */
    private void halo(Shape shape) {
        g.setStroke(new BasicStroke(Look.px(4), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.setColor(palette.of(Ink.STEEL, 0.85));
        g.draw(shape);
        g.setStroke(new BasicStroke(Look.px(1.6), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.setColor(palette.of(Ink.KNIFE));
        g.draw(shape);
    }

    private void ghostName(Patch patch, Overlay.GhostName ghost) {
        Graphics2D on = (Graphics2D) g.create();
        AffineTransform map = patch.toView();
        on.transform(map);
        Point2D at = patch.frame().toPage(ghost.at());
        on.setFont(Look.Style.BODY.font().deriveFont(java.awt.Font.ITALIC, 9f));
        on.setColor(palette.of(Ink.PENCIL, 0.7));
        float width =
                (float) on.getFontMetrics().getStringBounds(ghost.name(), on).getWidth();
        on.drawString(ghost.name(), (float) at.getX() - width / 2, (float) at.getY() + 3);
        on.dispose();
    }
}
