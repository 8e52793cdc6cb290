package org.marktwice.view.bench;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import org.marktwice.picture.Ink;
import org.marktwice.picture.Palette;
import org.marktwice.timber.Pith;
import org.marktwice.view.Look;

/** Draws how the arcs of an end are followed to the pith: a few of them, carried on, and the place they turn about. */
final class ArcsPainter {
    private static final int ARCS = 4;

    private final Graphics2D g;
    private final Palette palette;
    private final Plates plates;

    ArcsPainter(Graphics2D g, Palette palette, Plates plates) {
        this.g = g;
        this.palette = palette;
        this.plates = plates;
    }

    void paint(Patch end, Overlay.ToolLaid tool) {
        if (!tool.isLaid()) {
            outlined(end.outline(), 1);
            return;
        }
        Pith pith = tool.pith();
        if (pith == null) return;
        double w = end.frame().width();
        double h = end.frame().height();
        arcs(end, pith, w, h);
        Point2D.Double heart = end.toView(pith.y(), pith.z());
        Point2D.Double middle = end.toView(w / 2, h / 2);
        dashed(new Line2D.Double(heart, middle));
        cross(heart);
        plates.beyond(tool.says(), heart, heart, new Point2D.Double(heart.x - middle.x, heart.y - middle.y));
    }

    /** On the end the arcs stand out; beyond it they are carried on by eye. */
    private void arcs(Patch end, Pith pith, double w, double h) {
        double near = Math.hypot(
                Math.max(0, Math.max(-pith.y(), pith.y() - w)), Math.max(0, Math.max(-pith.z(), pith.z() - h)));
        double far = 0;
        for (double y : new double[] {0, w}) {
            for (double z : new double[] {0, h}) far = Math.max(far, pith.distance(y, z));
        }
        AffineTransform lay = end.surfaceToView();
        Shape clip = g.getClip();
        Rectangle2D around = new Rectangle2D.Double(-w / 3, -h, w * 5 / 3, h * 3);
        for (int i = 0; i < ARCS; i++) {
            double r = near + (far - near) * (i + 0.5) / ARCS;
            Shape circle = lay.createTransformedShape(new Ellipse2D.Double(pith.y() - r, pith.z() - r, 2 * r, 2 * r));
            g.clip(lay.createTransformedShape(around));
            thin(circle, 0.35);
            g.setClip(clip);
            g.clip(end.outline());
            outlined(circle, 1.4);
            g.setClip(clip);
        }
    }

    private void thin(Shape shape, double opacity) {
        g.setColor(palette.of(Ink.ACTION, opacity));
        g.setStroke(new BasicStroke(Look.px(1)));
        g.draw(shape);
    }

    private void outlined(Shape shape, double width) {
        g.setColor(Palette.LIGHT.of(Ink.PANEL, 0.7));
        g.setStroke(new BasicStroke((float) (Look.px(1) * (width + 2))));
        g.draw(shape);
        g.setColor(Palette.LIGHT.of(Ink.ACTION));
        g.setStroke(new BasicStroke((float) (Look.px(1) * width)));
        g.draw(shape);
    }

    private void dashed(Line2D line) {
        float[] dash = {Look.px(5), Look.px(3)};
        g.setStroke(new BasicStroke(Look.px(1), BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, dash, 0));
        g.setColor(palette.of(Ink.ACTION));
        g.draw(line);
    }

    private void cross(Point2D at) {
        double arm = Look.px(6);
        Path2D.Double cross = new Path2D.Double();
        cross.append(new Line2D.Double(at.getX() - arm, at.getY(), at.getX() + arm, at.getY()), false);
        cross.append(new Line2D.Double(at.getX(), at.getY() - arm, at.getX(), at.getY() + arm), false);
        g.setColor(palette.of(Ink.ACTION));
        g.setStroke(new BasicStroke(Look.px(2)));
        g.draw(cross);
    }
}
