package org.marktwice.view.bench;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.List;
import org.marktwice.picture.Ink;
import org.marktwice.picture.Palette;
import org.marktwice.timber.Surface;
import org.marktwice.view.Look;

/** Draws the tools that lie over a board, through the patches of whichever view it is. */
final class OverlayPainter {
    private final Graphics2D g;
    private final PatchView view;
    private final Palette palette;

    OverlayPainter(Graphics2D g, PatchView view, Palette palette) {
        this.g = g;
        this.view = view;
        this.palette = palette;
    }

    void paint(List<Overlay> overlays) {
        if (overlays.isEmpty()) return;
        ToolPainter tools = new ToolPainter(g, view, palette);
        StrikePainter strikes = new StrikePainter(g, view, palette);
        List<Patch> patches = view.patches();
        for (Overlay overlay : overlays) {
            if (overlay instanceof Overlay.ToolLaid tool) tools.paint(tool);
            else if (overlay instanceof Overlay.SquareLaid square) strikes.paint(square);
            else if (overlay instanceof Overlay.GaugeLaid gauge) strikes.paint(gauge);
            else if (overlay instanceof Overlay.MateLaid mate) strikes.paint(mate);
            else if (overlay instanceof Overlay.LinePicked picked) strikes.paint(picked);
            else if (overlay instanceof Overlay.PairLaid pair) new PairPainter(g, view, palette).paint(pair);
            else if (overlay instanceof Overlay.WastePicked waste) strikes.paint(waste);
            else for (Patch patch : patches) paint(overlay, patch);
        }
    }

    private void paint(Overlay overlay, Patch patch) {
        Surface surface = patch.surface();
        if (overlay instanceof Overlay.CaretAt c && c.at().surface() == surface) {
            caret(patch.toView(c.at()));
        } else if (overlay instanceof Overlay.RuleEnd e && e.at().point().surface() == surface) {
            ruleEnd(patch, e.at());
        } else if (overlay instanceof Overlay.GhostName n && n.at().surface() == surface) {
            ghostName(patch, n);
        }
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
        Point2D place = patch.toView(ghost.at());
        Point2D at = patch.frame().toPage(ghost.at());
        AffineTransform map = patch.toView();
        Point2D flat = map.transform(at, null);
        on.translate(place.getX() - flat.getX(), place.getY() - flat.getY());
        on.transform(map);
        on.setFont(Look.Style.BODY.font().deriveFont(java.awt.Font.ITALIC, 9f));
        on.setColor(palette.of(Ink.PENCIL, 0.7));
        float width =
                (float) on.getFontMetrics().getStringBounds(ghost.name(), on).getWidth();
        on.drawString(ghost.name(), (float) at.getX() - width / 2, (float) at.getY() + 3);
        on.dispose();
    }
}
