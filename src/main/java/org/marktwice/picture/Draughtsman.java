package org.marktwice.picture;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.marktwice.drawing.JobAxis;

/** Draws views, dimensions and the symbol of the method by the habits of the drawing office. */
final class Draughtsman {
    private static final float SEEN = 1.3f;
    private static final float HIDDEN = 0.9f;
    static final float THIN = 0.8f;
    private static final double LEAST_WITH_CENTRE = 10;
    /** A break line runs so far past its part. */
    private static final double PAST_BREAK = 4;

    private final Graphics2D g;
    private final Palette palette;
    private final Font font;
    private final DimensionPen dimensions;

    Draughtsman(Graphics2D g, Palette palette, Font font) {
        this.g = g;
        this.palette = palette;
        this.font = font.deriveFont(font.getSize2D() * 12 / 13);
        this.dimensions = new DimensionPen(g, palette, this.font);
    }

    /** A view's lines: what is hidden dashed and thin, the part that is picked out over the others. */
    void view(Linework lines, Rectangle2D place, Rectangle2D extent, @Nullable String picked) {
        AffineTransform to = JointDetail.to(place, extent);
        g.setStroke(dashed());
        for (Linework.Piece p : lines.hidden()) draw(p, to, picked, Ink.QUIET);
        g.setStroke(new BasicStroke(SEEN, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        for (Linework.Piece p : lines.seen()) if (!p.part().equals(picked)) draw(p, to, picked, Ink.INK);
        for (Linework.Piece p : lines.seen()) if (p.part().equals(picked)) draw(p, to, picked, Ink.INK);
    }

    private static BasicStroke dashed() {
        return new BasicStroke(HIDDEN, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {4, 2.5f}, 0);
    }

    private void thin() {
        g.setColor(palette.of(Ink.QUIET));
        g.setStroke(new BasicStroke(THIN));
    }

    private void draw(Linework.Piece piece, AffineTransform to, @Nullable String picked, Ink ink) {
        g.setColor(palette.of(piece.part().equals(picked) ? Ink.ACTION : ink));
        g.draw(to.createTransformedShape(piece.line()));
    }

    void dimension(Dimension d, SheetLayout sheet) {
        double away = sheet.level() * (sheet.levelOf(d) + 1);
        boolean first = sheet.method() == WorkingDrawing.Method.FIRST_ANGLE;
        if (d.axis() == JobAxis.HIGH) {
            Rectangle2D v = sheet.front();
            dimensions.upright(
                    v.getMinX(),
                    v.getMinX() - away,
                    v.getMaxY() - d.from() * sheet.scale(),
                    v.getMaxY() - d.to() * sheet.scale(),
                    d.text(),
                    true);
        } else if (d.axis() == JobAxis.ACROSS) {
            Rectangle2D v = first ? sheet.plan() : sheet.front();
            dimensions.lying(
                    v.getMaxY(),
                    v.getMaxY() + away,
                    v.getMinX() + d.from() * sheet.scale(),
                    v.getMinX() + d.to() * sheet.scale(),
                    d.text(),
                    true);
        } else {
            Rectangle2D v = sheet.side();
            // seen from the left the front is on the right
            double a = first ? v.getMaxX() - d.from() * sheet.scale() : v.getMinX() + d.from() * sheet.scale();
            double b = first ? v.getMaxX() - d.to() * sheet.scale() : v.getMinX() + d.to() * sheet.scale();
            dimensions.lying(v.getMaxY(), v.getMaxY() + away, Math.min(a, b), Math.max(a, b), d.text(), true);
        }
    }

    /** A view of a detail: broken off by thin zigzags, its sizes from the shortest outwards. */
    void closeup(Closeup view, Rectangle2D place, DetailLayout layout) {
        view(view.lines(), place, view.extent(), null);
        AffineTransform to = JointDetail.to(place, view.extent());
        bores(view.bores(), to);
        thin();
        for (Line2D.Double l : view.broken()) g.draw(zigzag(l, to));
        for (boolean level : new boolean[] {true, false}) sizes(view, level, to, place, layout);
    }

    private void sizes(Closeup view, boolean level, AffineTransform to, Rectangle2D place, DetailLayout layout) {
        JobView shown = layout.view(view.looking());
        List<JointSize> sizes = view.sizes(level);
        for (int i = 0; i < sizes.size(); i++) {
            JointSize size = sizes.get(i);
            Rectangle2D of = to.createTransformedShape(shown.bounds(List.of(size.of())))
                    .getBounds2D()
                    .createIntersection(place);
            double[] ends = ends(size, shown, to, level);
            double outside = dimensions.outside(size.text(), Math.abs(ends[1] - ends[0]));
            boolean after =
                    outside == 0 || clear(ends[1], outside, sizes.subList(i + 1, sizes.size()), shown, to, level);
            double away = layout.level() * (i + 1);
            if (level && layout.sizesAbove(view.looking())) {
                dimensions.lying(of.getMinY(), place.getMinY() - away, ends[0], ends[1], size.text(), after);
            } else if (level) {
                dimensions.lying(of.getMaxY(), place.getMaxY() + away, ends[0], ends[1], size.text(), after);
            } else if (layout.sizesRight(view.looking())) {
                dimensions.upright(of.getMaxX(), place.getMaxX() + away, ends[0], ends[1], size.text(), after);
            } else {
                dimensions.upright(of.getMinX(), place.getMinX() - away, ends[0], ends[1], size.text(), after);
            }
        }
    }

    /** Whether no extension line of sizes farther out runs through a figure that stands past the end of its line. */
    private static boolean clear(
            double end, double outside, List<JointSize> farther, JobView view, AffineTransform to, boolean level) {
        double way = level ? 1 : -1;
        for (JointSize s : farther) {
            for (double at : ends(s, view, to, level)) {
                double past = way * (at - end);
                if (past > 1 && past < outside + 2) return false;
            }
        }
        return true;
    }

    /** Where a size begins and ends on the page: from the left to the right, or from below upwards. */
    private static double[] ends(JointSize size, JobView view, AffineTransform to, boolean level) {
        Rectangle2D range = to.createTransformedShape(
                        view.bounds(List.of(size.of().with(size.axis().ordinal(), size.from(), size.to()))))
                .getBounds2D();
        return level
                ? new double[] {range.getMinX(), range.getMaxX()}
                : new double[] {range.getMaxY(), range.getMinY()};
    }

    /** The ring round a joint, with its letter (ISO 128: what a detail shows is ringed in a thin line). */
    void ring(Ring ring) {
        thin();
        g.draw(ring.circle());
        g.setFont(font);
        g.setColor(palette.of(Ink.INK));
        FontMetrics m = g.getFontMetrics(font);
        Rectangle2D at = ring.label();
        g.drawString(ring.letter(), (float) (at.getCenterX() - m.stringWidth(ring.letter()) / 2.0), (float)
                (at.getCenterY() + 0.36 * font.getSize2D()));
    }

    /** Bores, dashed as what is hidden, and their centre lines; where they are drawn too small for these, without. */
    void bores(Bores bores, AffineTransform to) {
        boolean small = bores.least() * to.getScaleX() < LEAST_WITH_CENTRE;
        g.setColor(palette.of(Ink.QUIET));
        g.setStroke(small ? new BasicStroke(THIN) : dashed());
        for (Shape s : bores.outlines()) g.draw(to.createTransformedShape(s));
        g.setStroke(new BasicStroke(
                THIN, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {9, 2.5f, 1.5f, 2.5f}, 0));
        if (small) return;
        for (Line2D.Double l : bores.centres()) g.draw(to.createTransformedShape(l));
    }

    /** A break: a straight line that runs a little past the part, with a zigzag in the middle (ISO 128). */
    private static Shape zigzag(Line2D.Double l, AffineTransform to) {
        Rectangle2D b = to.createTransformedShape(l).getBounds2D();
        boolean upright = b.getHeight() > b.getWidth();
        double length = Math.max(b.getWidth(), b.getHeight());
        double z = Math.min(4, length / 5);
        Path2D.Double p = new Path2D.Double();
        p.moveTo(-PAST_BREAK, 0);
        p.lineTo(length / 2 - z, 0);
        p.lineTo(length / 2 - z / 3, -z);
        p.lineTo(length / 2 + z / 3, z);
        p.lineTo(length / 2 + z, 0);
        p.lineTo(length + PAST_BREAK, 0);
        AffineTransform lay = AffineTransform.getTranslateInstance(b.getX(), b.getY());
        if (upright) lay.rotate(Math.PI / 2);
        return lay.createTransformedShape(p);
    }

    /** Letter and title, and quieter lines below; what has no room is cut short. */
    void caption(String letter, String title, List<String> notes, Rectangle2D place) {
        Font large = font.deriveFont(font.getSize2D() * 1.35f);
        FontMetrics m = g.getFontMetrics(large);
        double y = place.getY() + m.getAscent();
        g.setColor(palette.of(Ink.INK));
        g.setFont(large);
        g.drawString(letter, (float) place.getX(), (float) y);
        double x = m.stringWidth(letter) + font.getSize2D() * 0.8;
        g.setFont(font);
        g.drawString(cut(title, place.getWidth() - x), (float) (place.getX() + x), (float) y);
        g.setColor(palette.of(Ink.QUIET));
        double line = g.getFontMetrics(font).getHeight() * 1.1;
        for (String note : notes) {
            if (note.isEmpty()) continue;
            y += line;
            g.drawString(cut(note, place.getWidth()), (float) place.getX(), (float) y);
        }
    }

    private String cut(String whole, double width) {
        String text = Letters.shown(whole, font);
        FontMetrics m = g.getFontMetrics(font);
        if (m.stringWidth(text) <= width) return text;
        int n = text.length();
        while (n > 0 && m.stringWidth(text.substring(0, n).strip() + "…") > width) n--;
        return text.substring(0, n).strip() + "…";
    }

    /** The cone's two views: from its small end, and from the side. */
    void symbol(WorkingDrawing.Method method, Rectangle2D place) {
        g.setColor(palette.of(Ink.QUIET));
        g.setStroke(new BasicStroke(THIN));
        double big = place.getHeight() * 0.42;
        double small = big * 0.5;
        double cy = place.getCenterY();
        boolean first = method == WorkingDrawing.Method.FIRST_ANGLE;
        double circles = first ? place.getMaxX() - big - 1 : place.getMinX() + big + 1;
        double cone = first ? place.getMinX() + big + 1 : place.getMaxX() - big - 1;
        g.draw(circle(circles, cy, big));
        g.draw(circle(circles, cy, small));
        Path2D.Double side = new Path2D.Double();
        side.moveTo(cone - big, cy - small);
        side.lineTo(cone + big, cy - big);
        side.lineTo(cone + big, cy + big);
        side.lineTo(cone - big, cy + small);
        side.closePath();
        g.draw(side);
        Color axis = palette.of(Ink.QUIET, 0.6);
        g.setColor(axis);
        g.setStroke(
                new BasicStroke(0.6f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {5, 2, 1, 2}, 0));
        g.draw(new Line2D.Double(place.getMinX(), cy, place.getMaxX(), cy));
        g.draw(new Line2D.Double(circles, cy - big - 1, circles, cy + big + 1));
    }

    private static Ellipse2D circle(double x, double y, double r) {
        return new Ellipse2D.Double(x - r, y - r, 2 * r, 2 * r);
    }
}
