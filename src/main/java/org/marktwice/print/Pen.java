package org.marktwice.print;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.marktwice.picture.Ink;
import org.marktwice.picture.Letters;
import org.marktwice.picture.Palette;

/** Writes and rules on a page, in points, in the light palette. */
final class Pen {
    /** Line widths after ISO 128: the wide one for frames and outlines, the narrow one for the rest, points. */
    static final double WIDE = Paper.points(0.5);

    static final double NARROW = Paper.points(0.25);

    static final Palette PALETTE = Palette.LIGHT;

    final Graphics2D g;

    Pen(Graphics2D g) {
        this.g = g;
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    }

    /** @param y the line of writing */
    void write(String text, double x, double y, Type type, Ink ink) {
        write(text, x, y, type.font(), PALETTE.of(ink));
    }

    void write(String text, double x, double y, Font font, Color colour) {
        if (text.isEmpty()) return;
        g.setFont(font);
        g.setColor(colour);
        g.drawString(Letters.shown(text, font), (float) x, (float) y);
    }

    void writeRight(String text, double right, double y, Type type, Ink ink) {
        write(text, right - type.width(text), y, type, ink);
    }

    void line(double x0, double y0, double x1, double y1, double width, Ink ink) {
        g.setColor(PALETTE.of(ink));
        g.setStroke(new BasicStroke((float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER));
        g.draw(new Line2D.Double(x0, y0, x1, y1));
    }

    void box(Rectangle2D box, double width, Ink ink) {
        g.setColor(PALETTE.of(ink));
        g.setStroke(new BasicStroke((float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER));
        g.draw(box);
    }

    /** In lines no wider than this; a word that is wider by itself is broken. */
    static List<String> wrapped(String text, Type type, double width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : Letters.shown(text, type.font()).strip().split("\\s+")) {
            String rest = word;
            while (type.width(rest) > width && rest.length() > 1) {
                if (!line.isEmpty()) lines.add(line.toString());
                line.setLength(0);
                int fits = fitting(rest, type, width);
                lines.add(rest.substring(0, fits));
                rest = rest.substring(fits);
            }
            String longer = line.isEmpty() ? rest : line + " " + rest;
            if (!line.isEmpty() && type.width(longer) > width) {
                lines.add(line.toString());
                longer = rest;
            }
            line.setLength(0);
            line.append(longer);
        }
        if (!line.isEmpty()) lines.add(line.toString());
        return lines;
    }

    private static int fitting(String word, Type type, double width) {
        int n = 1;
        while (n < word.length() && type.width(word.substring(0, n + 1)) <= width) n++;
        return n;
    }

    /** The text, or as much of its beginning as there is room for, with an ellipsis. */
    static String cut(String whole, Type type, double width) {
        String text = Letters.shown(whole, type.font());
        if (type.width(text) <= width) return text;
        int n = text.length();
        while (n > 0 && type.width(text.substring(0, n).strip() + "…") > width) n--;
        return text.substring(0, n).strip() + "…";
    }
}
