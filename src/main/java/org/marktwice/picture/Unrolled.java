package org.marktwice.picture;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.font.FontRenderContext;
import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.marktwice.timber.Board;
import org.marktwice.timber.Pith;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;

/**
 * A board unrolled: its four long surfaces under each other in the order face-1, edge-1, face-2, edge-2, x to the right, so
 * that whatever runs over an arris goes on in the next strip; both ends beside them with face-1 at the top. All to one scale.
 */
public final class Unrolled {
    private static final double GAP = 6;
    private static final double BESIDE = 28;
    private static final double LABEL_GAP = 12;

    private final Board board;
    private final double scale;
    private final double labels;
    private final Map<Surface, Rectangle2D> places;

    private Unrolled(Board board, double scale, double labels, Map<Surface, Rectangle2D> places) {
        this.board = board;
        this.scale = scale;
        this.labels = labels;
        this.places = places;
    }

    /** As large as the area holds it, with room for its labels in this font; in the middle of the area. */
    public static Unrolled in(Rectangle2D area, Board board, Font font) {
        FontRenderContext frc = new FontRenderContext(null, true, true);
        double labels = LABEL_GAP;
        for (Surface s : Surface.LONG) {
            double wide = Math.max(
                    font.getStringBounds(s.spoken(), frc).getWidth(),
                    quiet(font).getStringBounds(note(board, s), frc).getWidth());
            labels = Math.max(labels, LABEL_GAP + wide);
        }
        double line = font.getSize2D() * 1.6;
        double l = board.size().length();
        double w = board.size().width();
        double t = board.size().thickness();
        double least = 0.02;
        double across = (area.getWidth() - labels - BESIDE) / (l + w);
        double down = (area.getHeight() - 3 * GAP) / (2 * (w + t));
        double scale = Math.max(least, Math.min(across, down));
        return new Unrolled(board, scale, labels, places(area, board, scale, labels, line));
    }

    private static Map<Surface, Rectangle2D> places(
            Rectangle2D area, Board board, double scale, double labels, double line) {
        double l = board.size().length() * scale;
        double w = board.size().width() * scale;
        double t = board.size().thickness() * scale;
        double wide = labels + l + BESIDE + w;
        double high = 2 * (w + t) + 3 * GAP;
        double x = area.getX() + Math.max(0, (area.getWidth() - wide) / 2) + labels;
        double y = area.getY() + Math.max(0, (area.getHeight() - high) / 2);
        Map<Surface, Rectangle2D> out = new EnumMap<>(Surface.class);
        double endX = x + l + BESIDE;
        out.put(Surface.END_1, new Rectangle2D.Double(endX, y, w, t));
        out.put(Surface.END_2, new Rectangle2D.Double(endX, y + t + 2.6 * line, w, t));
        for (Surface s : Surface.LONG) {
            double h = s.isFace() ? w : t;
            out.put(s, new Rectangle2D.Double(x, y, l, h));
            y += h + GAP;
        }
        return out;
    }

    /** Pixels a millimetre. */
    public double scale() {
        return scale;
    }

    public Board board() {
        return board;
    }

    /** Where a surface lies on the screen. */
    public Rectangle2D place(Surface surface) {
        Rectangle2D place = places.get(surface);
        if (place == null) throw new IllegalStateException(surface.id());
        return (Rectangle2D) place.clone();
    }

    /** From a surface's (u, v) in millimetres to the screen. */
    public AffineTransform transform(Surface surface) {
        Rectangle2D place = place(surface);
        AffineTransform t = AffineTransform.getTranslateInstance(place.getX(), place.getY());
        t.scale(scale, scale);
        t.concatenate(SurfaceFrame.of(surface, board).toPage());
        return t;
    }

    public Point2D project(SurfacePoint p) {
        return transform(p.surface()).transform(new Point2D.Double(p.u(), p.v()), null);
    }

    /** The place on the board that is seen at this point of the screen. */
    public Optional<SurfacePoint> pick(Point2D screen) {
        for (Surface s : Surface.values()) {
            Rectangle2D place = place(s);
            double x = (screen.getX() - place.getX()) / scale;
            double y = (screen.getY() - place.getY()) / scale;
            SurfaceFrame frame = SurfaceFrame.of(s, board);
            double slack = 1e-9;
            if (x >= -slack && y >= -slack && x <= frame.width() + slack && y <= frame.height() + slack) {
                return Optional.of(frame.toSurface(new Point2D.Double(x, y)));
            }
        }
        return Optional.empty();
    }

    /** What is covered, labels included. */
    public Rectangle2D bounds() {
        Rectangle2D all = place(Surface.FACE_1);
        places.values().forEach(all::add);
        all.add(all.getX() - labels, all.getY());
        return all;
    }

    /** Draws the board and its labels. */
    public void paint(Graphics2D g, BoardPicture p, SurfacePainter painter, Palette palette) {
        Graphics2D own = (Graphics2D) g.create();
        own.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        own.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        for (Surface s : Surface.values()) {
            Graphics2D flat = (Graphics2D) own.create();
            flat.transform(transform(s));
            painter.paint(flat, p, s, scale, palette);
            flat.dispose();
            own.setColor(new Color(0x4A, 0x33, 0x1E, 120));
            own.setStroke(new BasicStroke(1));
            own.draw(place(s));
            label(own, s, painter.font(), palette);
        }
        Callouts.paint(own, p.callouts(), this::project, bounds(), s -> true, palette, painter.font());
        own.dispose();
    }

    private void label(Graphics2D g, Surface s, Font font, Palette palette) {
        Rectangle2D place = place(s);
        FontMetrics body = g.getFontMetrics(font);
        FontMetrics small = g.getFontMetrics(quiet(font));
        String note = note(board, s);
        if (s.isEnd()) {
            double y = place.getMaxY() + body.getAscent() + 2;
            write(g, s.spoken(), place.getX(), y, font, palette.of(Ink.INK));
            double after = place.getX() + body.stringWidth(s.spoken() + "  ");
            write(g, note, after, y, quiet(font), palette.of(Ink.QUIET));
            return;
        }
        boolean two = place.getHeight() >= body.getAscent() + small.getHeight();
        double right = place.getX() - LABEL_GAP;
        double middle = place.getCenterY();
        double y = two ? middle - 1 : middle + body.getAscent() * 0.36;
        write(g, s.spoken(), right - body.stringWidth(s.spoken()), y, font, palette.of(Ink.INK));
        if (two) {
            write(g, note, right - small.stringWidth(note), y + small.getHeight(), quiet(font), palette.of(Ink.QUIET));
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

    /** What stands under a surface's name: planed or sawn, bark or heart side. */
    public static String note(Board board, Surface s) {
        if (board.isSheet()) return s.isFace() ? "sheet" : "plies";
        List<String> words = new ArrayList<>();
        words.add(board.isDressed(s) ? "planed" : "sawn");
        side(board, s).ifPresent(words::add);
        return String.join(" · ", words);
    }

    private static Optional<String> side(Board board, Surface s) {
        if (!s.isFace() || board.pith().isEmpty()) return Optional.empty();
        Pith pith = board.pith().get();
        if (pith.z() > 0 && pith.z() < board.size().thickness()) return Optional.empty();
        boolean bark = (pith.z() <= 0) == (s == Surface.FACE_1);
        return Optional.of(bark ? "bark side" : "heart side");
    }
}
