package org.marktwice.picture;

import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.font.FontRenderContext;
import java.awt.geom.Rectangle2D;
import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;

/**
 * What is written beside a surface of an unrolled board: its name, and quieter what it is like. An end has it below; a strip
 * has it on its left, in two lines where it is high enough, else in one.
 */
record SurfaceLabel(Surface surface, String note) {
    private static final FontRenderContext MEASURE = new FontRenderContext(null, true, true);
    private static final String BETWEEN = "  ";

    static SurfaceLabel of(Board board, Surface surface) {
        return new SurfaceLabel(surface, Unrolled.note(board, surface));
    }

    /** The most that it may take, however it is set. A face is never so thin that it has one line only. */
    double width(Font font) {
        double name = font.getStringBounds(surface.spoken(), MEASURE).getWidth();
        double quiet = quiet(font).getStringBounds(note, MEASURE).getWidth();
        double between = font.getStringBounds(BETWEEN, MEASURE).getWidth();
        return surface.isFace() ? Math.max(name, quiet) : name + between + quiet;
    }

    /** @param gap between the words and a strip */
    void paint(Graphics2D g, Rectangle2D place, double gap, Font font, Palette palette) {
        FontMetrics body = g.getFontMetrics(font);
        FontMetrics small = g.getFontMetrics(quiet(font));
        String name = surface.spoken();
        double after = body.stringWidth(name + BETWEEN);
        if (surface.isEnd()) {
            double y = place.getMaxY() + body.getAscent() + 2;
            write(g, name, place.getX(), y, font, palette.of(Ink.INK));
            write(g, note, place.getX() + after, y, quiet(font), palette.of(Ink.QUIET));
            return;
        }
        boolean two = surface.isFace() || place.getHeight() >= body.getAscent() + small.getHeight();
        double right = place.getX() - gap;
        double y = place.getCenterY() + (two ? -1 : body.getAscent() * 0.36);
        if (two) {
            write(g, name, right - body.stringWidth(name), y, font, palette.of(Ink.INK));
            write(g, note, right - small.stringWidth(note), y + small.getHeight(), quiet(font), palette.of(Ink.QUIET));
        } else {
            double left = right - after - small.stringWidth(note);
            write(g, name, left, y, font, palette.of(Ink.INK));
            write(g, note, left + after, y, quiet(font), palette.of(Ink.QUIET));
        }
    }

    private static void write(Graphics2D g, String text, double x, double y, Font font, Color colour) {
        g.setFont(font);
        g.setColor(colour);
        g.drawString(text, (float) x, (float) y);
    }

    private static Font quiet(Font font) {
        return font.deriveFont(font.getSize2D() * 12 / 13);
    }
}
