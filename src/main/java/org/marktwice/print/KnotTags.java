package org.marktwice.print;

import java.awt.BasicStroke;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.marktwice.picture.Ink;
import org.marktwice.picture.Unrolled;
import org.marktwice.timber.Board;
import org.marktwice.timber.Trace;

/** Numbers beside the traces of an unrolled board's knots; none covers another. */
final class KnotTags {
    private static final double HIGH = 9.5;
    private static final double[][] WAYS = {{1, -1}, {-1, -1}, {1, 1}, {-1, 1}, {1, 0}, {-1, 0}, {0, -1}, {0, 1}};

    private KnotTags() {}

    static void draw(Pen pen, Unrolled unrolled) {
        Board board = unrolled.board();
        List<Rectangle2D> taken = new ArrayList<>();
        for (Trace trace : board.traces()) {
            String text = Figure.knot(trace.knot());
            double wide = Math.max(HIGH, Type.NOTE.width(text) + 5);
            Rectangle2D tag = place(unrolled, trace, wide, taken);
            taken.add(tag);
            RoundRectangle2D plate =
                    new RoundRectangle2D.Double(tag.getX(), tag.getY(), tag.getWidth(), tag.getHeight(), 6, 6);
            pen.g.setColor(Pen.PALETTE.of(Ink.PANEL));
            pen.g.fill(plate);
            pen.g.setColor(Pen.PALETTE.of(Ink.ACTION));
            pen.g.setStroke(new BasicStroke(0.6f));
            pen.g.draw(plate);
            double x = tag.getCenterX() - Type.NOTE.width(text) / 2;
            pen.write(text, x, tag.getMaxY() - 2.1, Type.NOTE, Ink.INK);
        }
    }

    private static Rectangle2D place(Unrolled unrolled, Trace trace, double wide, List<Rectangle2D> taken) {
        Point2D.Double middle = unrolled.project(trace.middle());
        double across = trace.length() / 2 * unrolled.scale() + wide / 2 + 1;
        double down = trace.width() / 2 * unrolled.scale() + HIGH / 2;
        Rectangle2D tag = new Rectangle2D.Double();
        for (double far = 0.85; far < 4; far += 0.7) {
            for (double[] way : WAYS) {
                double x = middle.x + way[0] * across * far - wide / 2;
                double y = middle.y + way[1] * down * far - HIGH / 2;
                tag = new Rectangle2D.Double(x, y, wide, HIGH);
                Rectangle2D now = tag;
                if (taken.stream().noneMatch(t -> t.intersects(now))) return tag;
            }
        }
        return tag;
    }
}
