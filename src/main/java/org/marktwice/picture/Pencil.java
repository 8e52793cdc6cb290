package org.marktwice.picture;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.FlatteningPathIterator;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;

/** A soft pencil: a stroke of uneven width and darkness, the same each time the same path is drawn. */
final class Pencil {
    private Pencil() {}

    /**
     * Draws along every subpath.
     *
     * @param width the mean width, in the units of the path
     * @param opacity 1 is as dark as the pencil gets
     */
    static void draw(Graphics2D g, Shape path, double width, Color colour, double opacity) {
        Color soft = new Color(colour.getRed(), colour.getGreen(), colour.getBlue(), (int) Math.round(165 * opacity));
        Color core = new Color(colour.getRed(), colour.getGreen(), colour.getBlue(), (int) Math.round(150 * opacity));
        for (List<Point2D.Double> line : lines(path, width * 0.9)) {
            g.setColor(soft);
            g.fill(ribbon(line, width, 0.32, 3));
            g.setColor(core);
            g.fill(ribbon(line, width * 0.55, 0.6, 17));
        }
    }

    private static List<List<Point2D.Double>> lines(Shape path, double step) {
        List<List<Point2D.Double>> out = new ArrayList<>();
        List<Point2D.Double> now = new ArrayList<>();
        double[] c = new double[6];
        PathIterator it = new FlatteningPathIterator(path.getPathIterator(null), step / 12);
        Point2D.Double last = new Point2D.Double();
        for (; !it.isDone(); it.next()) {
            Point2D.Double at = new Point2D.Double(c[0], c[1]);
            int kind = it.currentSegment(c);
            at.setLocation(c[0], c[1]);
            if (kind == PathIterator.SEG_MOVETO) {
                if (now.size() > 1) out.add(now);
                now = new ArrayList<>(List.of(at));
            } else if (kind == PathIterator.SEG_LINETO) {
                spread(now, last, at, step);
            }
            last = at;
        }
        if (now.size() > 1) out.add(now);
        return out;
    }

    /** Adds points up to {@code to}, none farther from the next than a step. */
    private static void spread(List<Point2D.Double> line, Point2D.Double from, Point2D.Double to, double step) {
        double length = from.distance(to);
        if (length < 1e-9) return;
        int parts = (int) Math.max(1, Math.ceil(length / step));
        for (int i = 1; i <= parts; i++) {
            double t = i / (double) parts;
            line.add(new Point2D.Double(from.x + (to.x - from.x) * t, from.y + (to.y - from.y) * t));
        }
    }

    private static Path2D.Double ribbon(List<Point2D.Double> line, double width, double uneven, int salt) {
        int n = line.size();
        Path2D.Double left = new Path2D.Double(Path2D.WIND_NON_ZERO);
        Point2D.Double[] back = new Point2D.Double[n];
        double run = 0;
        for (int i = 0; i < n; i++) {
            Point2D.Double a = line.get(Math.max(0, i - 1));
            Point2D.Double b = line.get(Math.min(n - 1, i + 1));
            Point2D.Double p = line.get(i);
            if (i > 0) run += p.distance(line.get(i - 1));
            double length = Math.max(1e-9, a.distance(b));
            double nx = -(b.y - a.y) / length;
            double ny = (b.x - a.x) / length;
            double end = Math.min(1, (Math.min(i, n - 1 - i) + 1.2) / 3.0);
            double press = 1 + uneven * (wave(run / (width * 2.3), salt) + 0.6 * wave(run / (width * 11), salt + 1));
            double half = width / 2 * end * Math.max(0.3, press);
            double off = width * 0.10 * wave(run / (width * 5), salt + 2);
            left(left, i, p.x + nx * (half + off), p.y + ny * (half + off));
            back[i] = new Point2D.Double(p.x - nx * (half - off), p.y - ny * (half - off));
        }
        for (int i = n - 1; i >= 0; i--) left.lineTo(back[i].x, back[i].y);
        left.closePath();
        return left;
    }

    private static void left(Path2D.Double path, int i, double x, double y) {
        if (i == 0) path.moveTo(x, y);
        else path.lineTo(x, y);
    }

    /** Smooth noise in one dimension, −1 to 1. */
    private static double wave(double at, int salt) {
        int i = (int) Math.floor(at);
        double t = at - i;
        double a = 2 * ValueNoise.unit(7, salt, i) - 1;
        double b = 2 * ValueNoise.unit(7, salt, i + 1) - 1;
        return a + (b - a) * t * t * (3 - 2 * t);
    }
}
