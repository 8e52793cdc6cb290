package org.marktwice.picture;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
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
    private final double line;
    private final Map<Surface, Rectangle2D> places;
    private final @Nullable FormShown form;

    private Unrolled(
            Board board,
            double scale,
            double labels,
            double line,
            Map<Surface, Rectangle2D> places,
            @Nullable FormShown form) {
        this.board = board;
        this.scale = scale;
        this.labels = labels;
        this.line = line;
        this.places = places;
        this.form = form;
    }

    /** As large as the area holds it, with room for its labels in this font; in the middle of the area. */
    public static Unrolled in(Rectangle2D area, Board board, Font font) {
        return in(area, board, font, null);
    }

    /**
     * The same, each surface drawn as it is seen square on: bow and spring as the bend of a strip, taper and what is out of
     * square as its slant, cup as the bend of the ends. Without a shape all are true.
     */
    public static Unrolled in(Rectangle2D area, Board board, Font font, @Nullable FormShown form) {
        return in(area, board, font, form, Double.POSITIVE_INFINITY);
    }

    /** To a given scale, pixels a millimetre, or as large as the area holds it where that is smaller; all true. */
    public static Unrolled scaled(Rectangle2D area, Board board, Font font, double scale) {
        return in(area, board, font, null, scale);
    }

    private static Unrolled in(Rectangle2D area, Board board, Font font, @Nullable FormShown form, double greatest) {
        double labels = labels(board, font);
        double line = font.getSize2D() * 1.6;
        Map<Surface, Rectangle2D> extents = extents(board, form);
        Rectangle2D strips = new Rectangle2D.Double();
        double high = 0;
        for (Surface s : Surface.LONG) {
            strips.add(extent(extents, s).getMinX(), 0);
            strips.add(extent(extents, s).getMaxX(), 0);
            high += extent(extents, s).getHeight();
        }
        double ends = Math.max(
                extent(extents, Surface.END_1).getWidth(),
                extent(extents, Surface.END_2).getWidth());
        double least = 0.02;
        double across = (area.getWidth() - labels - BESIDE) / (strips.getWidth() + ends);
        double endLabel = endLabels(board, font);
        // what stands under the ends needs its room, however narrow they are
        if (ends * across < endLabel) across = (area.getWidth() - labels - BESIDE - endLabel) / strips.getWidth();
        double down = (area.getHeight() - 3 * GAP) / high;
        double scale = Math.min(greatest, Math.max(least, Math.min(across, down)));
        double wide = labels + BESIDE + strips.getWidth() * scale + Math.max(ends * scale, endLabel);
        double x = area.getX() + Math.max(0, (area.getWidth() - wide) / 2) + labels;
        double y = area.getY() + Math.max(0, (area.getHeight() - high * scale - 3 * GAP) / 2);
        Map<Surface, Rectangle2D> places = new EnumMap<>(Surface.class);
        double endX = x + strips.getWidth() * scale + BESIDE;
        double endY = y;
        for (Surface s : List.of(Surface.END_1, Surface.END_2)) {
            Rectangle2D extent = extent(extents, s);
            put(places, board, s, endX - extent.getMinX() * scale, endY - extent.getMinY() * scale, scale);
            endY += extent.getHeight() * scale + 2.6 * line;
        }
        for (Surface s : Surface.LONG) {
            Rectangle2D extent = extent(extents, s);
            put(places, board, s, x - strips.getMinX() * scale, y - extent.getMinY() * scale, scale);
            y += extent.getHeight() * scale + GAP;
        }
        return new Unrolled(board, scale, labels, line, places, form);
    }

    /** The room that the names take to the left of the strips. */
    private static double labels(Board board, Font font) {
        return LABEL_GAP
                + Surface.LONG.stream()
                        .mapToDouble(s -> SurfaceLabel.of(board, s).width(font))
                        .max()
                        .orElse(0);
    }

    /** The room that the names take under the ends; a program that draws the letters otherwise may need a little more. */
    private static double endLabels(Board board, Font font) {
        return font.getSize2D() * 0.6
                + Math.max(
                        SurfaceLabel.of(board, Surface.END_1).width(font),
                        SurfaceLabel.of(board, Surface.END_2).width(font));
    }

    /** To a scale, all true, the ends side by side under the strips: narrower, and higher, than with the ends on the right. */
    public static Unrolled endsBelow(Rectangle2D area, Board board, Font font, double scale) {
        double labels = labels(board, font);
        double line = font.getSize2D() * 1.6;
        double length = board.size().length() * scale;
        double end = Math.max(board.size().width() * scale, endLabels(board, font));
        double x =
                area.getX() + Math.max(0, (area.getWidth() - labels - Math.max(length, 2 * end + BESIDE)) / 2) + labels;
        double y = area.getY();
        Map<Surface, Rectangle2D> places = new EnumMap<>(Surface.class);
        for (Surface s : Surface.LONG) {
            put(places, board, s, x, y, scale);
            y += board.vExtent(s) * scale + GAP;
        }
        put(places, board, Surface.END_1, x, y + GAP, scale);
        put(places, board, Surface.END_2, x + end + BESIDE, y + GAP, scale);
        return new Unrolled(board, scale, labels, line, places, null);
    }

    private static Rectangle2D extent(Map<Surface, Rectangle2D> extents, Surface s) {
        return Objects.requireNonNull(extents.get(s));
    }

    private static void put(
            Map<Surface, Rectangle2D> places, Board board, Surface s, double x, double y, double scale) {
        places.put(s, new Rectangle2D.Double(x, y, board.uExtent(s) * scale, board.vExtent(s) * scale));
    }

    /** What each surface covers as it is seen square on, in the millimetres of its page. */
    private static Map<Surface, Rectangle2D> extents(Board board, @Nullable FormShown form) {
        Map<Surface, Rectangle2D> out = new EnumMap<>(Surface.class);
        for (Surface s : Surface.values()) {
            Rectangle2D flat = new Rectangle2D.Double(0, 0, board.uExtent(s), board.vExtent(s));
            out.put(
                    s,
                    form == null
                            ? flat
                            : bent(board, form, s, AffineTransform.getScaleInstance(1, 1))
                                    .outline()
                                    .getBounds2D());
        }
        return out;
    }

    /** @param toView from the surface's page to where it is drawn */
    private static BentSurface bent(Board board, FormShown form, Surface s, AffineTransform toView) {
        SurfaceFrame frame = SurfaceFrame.of(s, board);
        return new BentSurface(frame, p -> {
            Point2D.Double at = frame.toPage(form.seenSquareOn(p));
            toView.transform(at, at);
            return at;
        });
    }

    private Optional<BentSurface> bent(Surface s) {
        if (form == null) return Optional.empty();
        return Optional.of(bent(board, form, s, page(s))).filter(b -> b.shows(transform(s)));
    }

    private AffineTransform page(Surface s) {
        Rectangle2D place = place(s);
        AffineTransform t = AffineTransform.getTranslateInstance(place.getX(), place.getY());
        t.scale(scale, scale);
        return t;
    }

    /** Pixels a millimetre. */
    public double scale() {
        return scale;
    }

    public Board board() {
        return board;
    }

    /** Where a surface of the true box lies on the screen. */
    public Rectangle2D place(Surface surface) {
        Rectangle2D place = places.get(surface);
        if (place == null) throw new IllegalStateException(surface.id());
        return (Rectangle2D) place.clone();
    }

    /** From the (u, v) of a surface of the true box, in millimetres, to the screen. */
    public AffineTransform transform(Surface surface) {
        AffineTransform t = page(surface);
        t.concatenate(SurfaceFrame.of(surface, board).toPage());
        return t;
    }

    /** A surface's point on the screen, where the board's shape has put it. */
    public Point2D.Double project(SurfacePoint p) {
        SurfacePoint at = form == null ? p : form.seenSquareOn(p);
        Point2D.Double on = new Point2D.Double(at.u(), at.v());
        transform(p.surface()).transform(on, on);
        return on;
    }

    /** A surface's outline on the screen, as a closed path. */
    public Path2D.Double shape(Surface surface) {
        return bent(surface).map(BentSurface::outline).orElseGet(() -> new Path2D.Double(place(surface)));
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
        Rectangle2D all = shape(Surface.FACE_1).getBounds2D();
        for (Surface s : Surface.values()) all.add(shape(s).getBounds2D());
        all.add(all.getX() - labels, all.getY());
        for (Surface s : List.of(Surface.END_1, Surface.END_2)) {
            all.add(all.getX(), shape(s).getBounds2D().getMaxY() + 1.2 * line);
        }
        return all;
    }

    /** Where the names of the surfaces stand. */
    private List<Rectangle2D> labels() {
        List<Rectangle2D> all = new ArrayList<>();
        for (Surface s : Surface.values()) {
            Rectangle2D place = shape(s).getBounds2D();
            all.add(
                    s.isEnd()
                            ? new Rectangle2D.Double(place.getX(), place.getMaxY(), labels, 1.2 * line)
                            : new Rectangle2D.Double(
                                    place.getX() - labels, place.getCenterY() - line, labels, 2 * line));
        }
        return all;
    }

    /** Draws the board and its labels. */
    public void paint(Graphics2D g, BoardPicture p, SurfacePainter painter, Palette palette) {
        Graphics2D own = (Graphics2D) g.create();
        own.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        own.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        for (Surface s : Surface.values()) {
            Optional<BentSurface> bent = bent(s);
            if (bent.isPresent()) {
                bent.get().paint(own, p, painter, scale, palette);
            } else {
                Graphics2D flat = (Graphics2D) own.create();
                flat.transform(transform(s));
                painter.paint(flat, p, s, scale, palette);
                flat.dispose();
            }
            own.setColor(new Color(0x4A, 0x33, 0x1E, 120));
            own.setStroke(new BasicStroke(1));
            own.draw(shape(s));
            SurfaceLabel.of(board, s).paint(own, shape(s).getBounds2D(), LABEL_GAP, painter.font(), palette);
        }
        Callouts.paint(own, p.callouts(), this::project, bounds(), labels(), s -> true, palette, painter.font());
        own.dispose();
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
