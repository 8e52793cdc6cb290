package org.marktwice.picture;

import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.marktwice.drawing.Cut;
import org.marktwice.drawing.Drawing;
import org.marktwice.drawing.Joint;
import org.marktwice.drawing.Part;
import org.marktwice.timber.Box;

/**
 * What is bored for dowels, as a view shows it: hidden, for wood lies all round it, with its centre lines.
 *
 * @param outlines circles where one looks along a bore, else rectangles; the view's millimetres
 */
record Bores(List<Shape> outlines, List<Line2D.Double> centres) {
    /** Centre lines run so far past what they are of, millimetres. */
    private static final double PAST = 3;

    Bores {
        outlines = List.copyOf(outlines);
        centres = List.copyOf(centres);
    }

    static Bores of(Drawing drawing, JobView view) {
        List<Shape> outlines = new ArrayList<>();
        List<Line2D.Double> centres = new ArrayList<>();
        for (Joint joint : drawing.joints()) {
            if (joint instanceof Joint.Dowelled) add(drawing, joint, view, outlines, centres);
        }
        return new Bores(outlines, centres);
    }

    private static void add(
            Drawing drawing, Joint joint, JobView view, List<Shape> outlines, List<Line2D.Double> centres) {
        List<Box> one = cut(drawing, joint, joint.in());
        List<Box> other = cut(drawing, joint, joint.takes());
        for (int i = 0; i < one.size(); i++) {
            Rectangle2D all = view.bounds(List.of(one.get(i), other.get(i)));
            int across = along(one.get(i), other.get(i));
            boolean end = Math.abs(view.towards().get(across)) > 0.5;
            outlines.add(
                    end
                            ? new Ellipse2D.Double(all.getX(), all.getY(), all.getWidth(), all.getHeight())
                            : (Rectangle2D) all.clone());
            boolean level = Math.abs(view.right().get(across)) > 0.5;
            if (end || level) {
                centres.add(new Line2D.Double(
                        all.getMinX() - PAST, all.getCenterY(), all.getMaxX() + PAST, all.getCenterY()));
            }
            if (end || !level) {
                centres.add(new Line2D.Double(
                        all.getCenterX(), all.getMinY() - PAST, all.getCenterX(), all.getMaxY() + PAST));
            }
        }
    }

    static List<Box> cut(Drawing drawing, Joint joint, String id) {
        Part part = drawing.part(id).orElseThrow();
        return drawing.cuts(part).stream()
                .filter(c -> c.joint().equals(joint.id()))
                .map(Cut::boxes)
                .findFirst()
                .orElseThrow();
    }

    /** The axis along which a dowel goes on from one part's hole into the other's. */
    static int along(Box one, Box other) {
        int most = 0;
        for (int axis = 1; axis < 3; axis++) {
            if (offset(one, other, axis) > offset(one, other, most)) most = axis;
        }
        return most;
    }

    private static double offset(Box one, Box other, int axis) {
        return Math.abs(one.centre().get(axis) - other.centre().get(axis));
    }

    /** The bores that a window of the view holds. */
    Bores within(Rectangle2D window) {
        return new Bores(
                outlines.stream().filter(s -> window.contains(centre(s))).toList(),
                centres.stream()
                        .filter(l -> window.contains((l.x1 + l.x2) / 2, (l.y1 + l.y2) / 2))
                        .toList());
    }

    /** The least diameter among them, millimetres. */
    double least() {
        return outlines.stream()
                .map(Shape::getBounds2D)
                .mapToDouble(b -> Math.min(b.getWidth(), b.getHeight()))
                .min()
                .orElse(0);
    }

    private static Point2D centre(Shape s) {
        Rectangle2D b = s.getBounds2D();
        return new Point2D.Double(b.getCenterX(), b.getCenterY());
    }
}
