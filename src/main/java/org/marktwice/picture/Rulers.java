package org.marktwice.picture;

import java.awt.BasicStroke;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.font.GlyphVector;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;

/** A steel rule laid from one point to another, graduated in millimetres, with the reading at its end. */
public final class Rulers {
    /** How wide the steel is, millimetres; narrower where that would look heavy. */
    public static final double DEEP = 13;
    /** Steel beyond the two points, millimetres. */
    private static final double BEYOND = 4;

    private Rulers() {}

    /**
     * Draws the rule in a frame of millimetres whose y runs down; its graduated edge lies on the line between the points,
     * its zero on the first.
     *
     * @param reading what stands at its end; nothing where it is empty
     * @param pxPerMm pixels a millimetre; graduations that would run together are left out
     * @param upright an affine map under which the text should still be readable; the identity on a flat page
     */
    public static void draw(
            Graphics2D g, Point2D from, Point2D to, String reading, double pxPerMm, Palette palette, Font font) {
        Graphics2D r = (Graphics2D) g.create();
        double length = from.distance(to);
        double angle = Math.atan2(to.getY() - from.getY(), to.getX() - from.getX());
        boolean backwards = angle > Math.PI / 2 + 1e-9 || angle <= -Math.PI / 2 + 1e-9;
        r.translate(from.getX(), from.getY());
        r.rotate(angle);
        // the steel lies below the line, as seen the right way up
        if (backwards) r.scale(1, -1);
        double px = 1 / pxPerMm;
        double deep = Math.min(DEEP, Math.max(7, 22 * px));
        body(r, length, deep, px, palette);
        graduations(r, length, deep, px, palette, font, backwards);
        if (!reading.isEmpty()) reading(r, length, deep, reading, px, palette, font, backwards);
        r.dispose();
    }

    private static void body(Graphics2D g, double length, double deep, double px, Palette palette) {
        Rectangle2D steel = new Rectangle2D.Double(-BEYOND, 0, length + 2 * BEYOND, deep);
        g.setColor(palette.of(Ink.SHADOW, 0.18));
        g.fill(new Rectangle2D.Double(-BEYOND + 1.5 * px, 2 * px, length + 2 * BEYOND, deep));
        g.setColor(palette.of(Ink.STEEL, 0.93));
        g.fill(steel);
        g.setColor(palette.of(Ink.GRADUATION, 0.7));
        g.setStroke(new BasicStroke((float) px));
        g.draw(steel);
    }

    private static void graduations(
            Graphics2D g, double length, double deep, double px, Palette palette, Font font, boolean backwards) {
        g.setColor(palette.of(Ink.GRADUATION));
        boolean ones = px < 1 / 2.4;
        boolean fives = px < 1 / 1.1;
        int every = px < 1 / 2.6 ? 10 : px < 1 / 1.2 ? 20 : 50;
        for (int mm = 0; mm <= Math.floor(length + BEYOND); mm++) {
            boolean ten = mm % 10 == 0;
            boolean five = mm % 5 == 0;
            if (!ten && !(five && fives) && !ones) continue;
            double tick = deep * (ten ? 0.42 : five ? 0.31 : 0.20);
            g.setStroke(new BasicStroke((float) ((ten ? 1.0 : 0.7) * px)));
            g.draw(new Line2D.Double(mm, 0, mm, tick));
            if (mm % every == 0 && mm > 0 && Math.abs(mm - length) > 2) {
                text(g, String.valueOf(mm), mm, deep * 0.66, 9.5 * px, font, palette, backwards);
            }
        }
    }

    private static void reading(
            Graphics2D g,
            double length,
            double deep,
            String reading,
            double px,
            Palette palette,
            Font font,
            boolean backwards) {
        double size = 13 * px;
        double w = width(reading, size, font) + 12 * px;
        double h = 20 * px;
        Rectangle2D plate = new Rectangle2D.Double(length - w / 2, deep + 4 * px, w, h);
        g.setColor(palette.of(Ink.ACTION));
        g.fill(rounded(plate, 4 * px));
        Path2D.Double point = new Path2D.Double();
        point.moveTo(length, 0);
        point.lineTo(length - 3.5 * px, 6 * px);
        point.lineTo(length + 3.5 * px, 6 * px);
        point.closePath();
        g.fill(point);
        g.setStroke(new BasicStroke((float) (1.4 * px)));
        g.draw(new Line2D.Double(length, 0, length, deep + 5 * px));
        Graphics2D t = (Graphics2D) g.create();
        t.setColor(palette.of(Ink.ON_ACTION));
        glyphs(t, reading, length, plate.getCenterY(), size, font, backwards);
        t.dispose();
    }

    private static Shape rounded(Rectangle2D r, double radius) {
        return new java.awt.geom.RoundRectangle2D.Double(
                r.getX(), r.getY(), r.getWidth(), r.getHeight(), 2 * radius, 2 * radius);
    }

    private static void text(
            Graphics2D g, String s, double x, double y, double size, Font font, Palette palette, boolean backwards) {
        g.setColor(palette.of(Ink.GRADUATION));
        glyphs(g, s, x, y, size, font, backwards);
    }

    /** Text with its middle at (x, y), as outlines, so that a size in millimetres is exact. */
    private static void glyphs(Graphics2D g, String s, double x, double y, double size, Font font, boolean backwards) {
        Shape outline = outline(s, font);
        Rectangle2D b = outline.getBounds2D();
        AffineTransform t = AffineTransform.getTranslateInstance(x, y);
        if (backwards) t.scale(-1, 1);
        t.scale(size / 100, size / 100);
        t.translate(-b.getCenterX(), 36);
        g.fill(t.createTransformedShape(outline));
    }

    private static double width(String s, double size, Font font) {
        return outline(s, font).getBounds2D().getWidth() * size / 100;
    }

    private static Shape outline(String s, Font font) {
        GlyphVector v =
                font.deriveFont(100f).createGlyphVector(new java.awt.font.FontRenderContext(null, true, true), s);
        return v.getOutline();
    }
}
