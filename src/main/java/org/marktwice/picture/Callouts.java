package org.marktwice.picture;

import java.awt.BasicStroke;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;
import org.marktwice.rulebook.Verdict;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;

/** Notes beside a board, each with its sign and a line to the place it speaks of; they keep clear of each other. */
final class Callouts {
    private static final double PAD = 9;
    private static final double GAP = 8;

    private Callouts() {}

    /**
     * @param place a place on the board to the screen
     * @param bounds what the board covers
     * @param clear what no note may cover
     * @param seen whether a surface is seen at all; notes on hidden ones are left out
     */
    static void paint(
            Graphics2D g,
            List<BoardPicture.Callout> notes,
            Function<SurfacePoint, Point2D> place,
            Rectangle2D bounds,
            List<Rectangle2D> clear,
            Predicate<Surface> seen,
            Palette palette,
            Font font) {
        List<Rectangle2D> taken = new ArrayList<>(clear);
        Rectangle2D clip = g.getClipBounds() == null ? null : g.getClipBounds();
        for (BoardPicture.Callout note : notes) {
            if (!seen.test(note.at().surface())) continue;
            Point2D at = place.apply(note.at());
            Rectangle2D plate = room(size(g, note, font), at, bounds, clip, taken);
            taken.add(plate);
            draw(g, note, at, plate, palette, font);
        }
    }

    private static Rectangle2D size(Graphics2D g, BoardPicture.Callout note, Font font) {
        FontMetrics bold = g.getFontMetrics(bold(font));
        FontMetrics plain = g.getFontMetrics(quiet(font));
        double w = Math.max(sign(note, bold) + bold.stringWidth(note.text()), plain.stringWidth(note.more()));
        double h = bold.getHeight() + (note.more().isEmpty() ? 0 : plain.getHeight());
        return new Rectangle2D.Double(0, 0, w + 2 * PAD, h + PAD);
    }

    /** Above and beside the place, moved until it covers no other note, and kept within the clip. */
    private static Rectangle2D room(
            Rectangle2D size,
            Point2D at,
            Rectangle2D bounds,
            @org.jspecify.annotations.Nullable Rectangle2D clip,
            List<Rectangle2D> taken) {
        boolean left = at.getX() <= bounds.getCenterX();
        double x = left ? at.getX() - size.getWidth() - 36 : at.getX() + 36;
        double y = at.getY() - size.getHeight() - 56;
        Rectangle2D r = new Rectangle2D.Double();
        for (int tries = 0; tries < 40; tries++) {
            r.setRect(x, y, size.getWidth(), size.getHeight());
            if (clip != null) within(r, clip);
            Rectangle2D now = r;
            Rectangle2D hit =
                    taken.stream().filter(t -> t.intersects(now)).findFirst().orElse(null);
            if (hit == null) break;
            y = hit.getMaxY() + GAP;
        }
        return r;
    }

    private static void within(Rectangle2D r, Rectangle2D clip) {
        double x = Math.max(clip.getMinX() + 4, Math.min(r.getX(), clip.getMaxX() - r.getWidth() - 4));
        double y = Math.max(clip.getMinY() + 4, Math.min(r.getY(), clip.getMaxY() - r.getHeight() - 4));
        r.setRect(x, y, r.getWidth(), r.getHeight());
    }

    private static void draw(
            Graphics2D g, BoardPicture.Callout note, Point2D at, Rectangle2D plate, Palette palette, Font font) {
        g.setColor(palette.of(note.ink()));
        g.setStroke(new BasicStroke(1.2f));
        double nearX = Math.max(plate.getMinX() + 10, Math.min(at.getX(), plate.getMaxX() - 10));
        double nearY = at.getY() > plate.getCenterY() ? plate.getMaxY() : plate.getMinY();
        g.draw(new Line2D.Double(nearX, nearY, at.getX(), at.getY()));
        g.fill(new Ellipse2D.Double(at.getX() - 2.5, at.getY() - 2.5, 5, 5));
        RoundRectangle2D box =
                new RoundRectangle2D.Double(plate.getX(), plate.getY(), plate.getWidth(), plate.getHeight(), 10, 10);
        g.setColor(palette.of(Ink.PANEL));
        g.fill(box);
        g.setColor(palette.of(note.ink()));
        g.draw(box);
        FontMetrics bold = g.getFontMetrics(bold(font));
        float x = (float) (plate.getX() + PAD);
        float y = (float) (plate.getY() + PAD / 2 + bold.getAscent());
        g.setFont(bold(font));
        Verdict verdict = note.verdict();
        if (verdict != null) Sign.draw(g, verdict, x, y + 0.5, bold.getAscent() * 0.78);
        g.drawString(note.text(), x + (float) sign(note, bold), y);
        if (!note.more().isEmpty()) {
            g.setFont(quiet(font));
            g.setColor(palette.of(Ink.QUIET));
            g.drawString(
                    note.more(), x, y + bold.getDescent() + g.getFontMetrics().getAscent());
        }
    }

    /** The room that the sign takes before the text. */
    private static double sign(BoardPicture.Callout note, FontMetrics m) {
        return note.verdict() == null ? 0 : m.getAscent() * 1.05;
    }

    private static Font bold(Font font) {
        return font.deriveFont(Font.BOLD);
    }

    private static Font quiet(Font font) {
        return font.deriveFont(font.getSize2D() * 12 / 13);
    }
}
