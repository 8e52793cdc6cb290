package org.marktwice.picture;

import java.awt.Font;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.stream.Stream;

/** A ring round a joint in a view, and the letter of its detail beside it where it covers least; in pixels. */
record Ring(Ellipse2D circle, String letter, Rectangle2D label) {
    private static final double LEAST = 7;
    private static final double ROUND = 3;
    /** Where a letter may stand, in eighths of a turn from the right: upper right first. */
    private static final int[] PLACES = {1, 7, 3, 5, 2, 6, 0, 4};

    /** @param lines of the view, laid on the page by {@code to}; {@code others} are rings that stand already, and {@code measured} has the sizes */
    static Ring round(
            Rectangle2D joint,
            String letter,
            Font font,
            Linework lines,
            AffineTransform to,
            List<Ring> others,
            List<Rectangle2D> measured) {
        double r = Math.max(LEAST, Math.hypot(joint.getWidth(), joint.getHeight()) / 2 + ROUND);
        double cx = joint.getCenterX();
        double cy = joint.getCenterY();
        double wide = font.getSize2D() * 0.75 * letter.length();
        double high = font.getSize2D();
        Rectangle2D best = new Rectangle2D.Double();
        long least = Long.MAX_VALUE;
        for (int place : PLACES) {
            double angle = place * Math.PI / 4;
            double away = r + Math.abs(Math.cos(angle)) * wide / 2 + Math.abs(Math.sin(angle)) * high / 2 + 1;
            Rectangle2D at = new Rectangle2D.Double(
                    cx + away * Math.cos(angle) - wide / 2, cy - away * Math.sin(angle) - high / 2, wide, high);
            long met = met(at, lines, to, others)
                    + 5 * measured.stream().filter(m -> m.intersects(at)).count();
            if (met < least) {
                least = met;
                best = at;
            }
        }
        return new Ring(new Ellipse2D.Double(cx - r, cy - r, 2 * r, 2 * r), letter, best);
    }

    private static long met(Rectangle2D at, Linework lines, AffineTransform to, List<Ring> others) {
        long drawn = Stream.concat(lines.seen().stream(), lines.hidden().stream())
                .filter(p -> to.createTransformedShape(p.line()).intersects(at))
                .count();
        long rings = others.stream()
                .filter(o -> o.label.intersects(at) || o.circle.intersects(at))
                .count();
        return drawn + 10 * rings;
    }

    boolean holds(Point2D p) {
        return circle.contains(p) || label.contains(p);
    }
}
