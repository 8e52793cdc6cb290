package org.marktwice.picture;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.marktwice.drawing.Drawing;
import org.marktwice.timber.Box;

/** The assembled job in isometric projection: its parts as solids less their cuts, as seen from the left, the front and above. */
public final class JobPicture {
    /**
     * How the parts are coloured.
     *
     * @param picked the part drawn in the colour of action; null for none
     * @param inks the ink of other parts that are to be told apart, by id, such as their verdicts'
     */
    public record Style(@Nullable String picked, Map<String, Ink> inks) {
        public static final Style PLAIN = new Style(null, Map.of());

        public Style {
            inks = Map.copyOf(inks);
        }

        public static Style picking(@Nullable String part) {
            return new Style(part, Map.of());
        }
    }

    private final List<FarToNear.Item<String>> boxes;
    private final Linework lines;
    private final Rectangle2D extent;

    private JobPicture(List<FarToNear.Item<String>> boxes, Linework lines, Rectangle2D extent) {
        this.boxes = boxes;
        this.lines = lines;
        this.extent = extent;
    }

    public static JobPicture of(Drawing drawing) {
        return of(PartSolid.of(drawing));
    }

    static JobPicture of(List<PartSolid> solids) {
        List<FarToNear.Item<String>> items = new ArrayList<>();
        for (PartSolid solid : solids) {
            for (Box box : solid.boxes())
                items.add(new FarToNear.Item<>(box, solid.part().id()));
        }
        Rectangle2D extent =
                JobView.ISOMETRIC.bounds(items.stream().map(FarToNear.Item::box).toList());
        return new JobPicture(FarToNear.sorted(items), Linework.of(solids, JobView.ISOMETRIC), extent);
    }

    /** Draws the job as large as the area holds it, in the middle of it. */
    public void paint(Graphics2D g, Rectangle2D area, Style style, Palette palette) {
        Graphics2D own = (Graphics2D) g.create();
        own.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        AffineTransform to = placed(area);
        own.setStroke(new BasicStroke(0.5f));
        // sides of one part that lie flush must show no seam, so they are filled hard; the lines over them are soft
        own.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_OFF);
        for (FarToNear.Item<String> item : boxes) {
            for (int axis = 0; axis < 3; axis++) {
                own.setColor(ground(item.of(), axis, style, palette));
                Shape side = to.createTransformedShape(side(item.box(), axis));
                own.fill(side);
                own.draw(side); // a printer softens what is filled, too: no seam may shine through
            }
        }
        own.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        float width = (float) Math.max(0.9, Math.min(1.5, Math.sqrt(area.getWidth() * area.getHeight()) / 260));
        own.setStroke(new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        draw(own, to, false, style, palette);
        draw(own, to, true, style, palette);
        own.dispose();
    }

    /** The lines of the part that is picked out come last, over its neighbours'. */
    private void draw(Graphics2D g, AffineTransform to, boolean picked, Style style, Palette palette) {
        for (Linework.Piece piece : lines.seen()) {
            if (piece.part().equals(style.picked()) != picked) continue;
            g.setColor(palette.of(ink(piece.part(), style)));
            g.draw(to.createTransformedShape(piece.line()));
        }
    }

    private static Ink ink(String part, Style style) {
        if (part.equals(style.picked())) return Ink.ACTION;
        return style.inks().getOrDefault(part, Ink.INK);
    }

    /** The ground of a side, by the axis of its normal: the top is lightest, the front darkest. */
    private static Color ground(String part, int axis, Style style, Palette palette) {
        Color base;
        if (part.equals(style.picked())) {
            base = palette.of(Ink.PICKED);
        } else {
            Ink ink = style.inks().get(part);
            base = palette.of(Ink.PART);
            if (ink != null) base = mixed(base, palette.of(ink), 0.28);
        }
        double dark = axis == 2 ? 0 : axis == 0 ? 0.045 : 0.09;
        return mixed(base, palette.isDark() ? Color.BLACK : palette.of(Ink.INK), palette.isDark() ? 3.6 * dark : dark);
    }

    private static Color mixed(Color a, Color b, double share) {
        return new Color(WoodLook.mixed(a.getRGB() & 0xFFFFFF, b.getRGB() & 0xFFFFFF, share));
    }

    /** The part that is seen at a point of the area it was painted in. */
    public Optional<String> partAt(Point2D screen, Rectangle2D area) {
        AffineTransform to = placed(area);
        for (int i = boxes.size() - 1; i >= 0; i--) {
            for (int axis = 0; axis < 3; axis++) {
                if (to.createTransformedShape(side(boxes.get(i).box(), axis)).contains(screen)) {
                    return Optional.of(boxes.get(i).of());
                }
            }
        }
        return Optional.empty();
    }

    /** From the job's drawn millimetres to the screen. */
    AffineTransform placed(Rectangle2D area) {
        double line = 1.5;
        double scale = Math.max(
                1e-6,
                Math.min(
                        (area.getWidth() - 2 * line) / Math.max(1e-6, extent.getWidth()),
                        (area.getHeight() - 2 * line) / Math.max(1e-6, extent.getHeight())));
        AffineTransform t = AffineTransform.getTranslateInstance(area.getCenterX(), area.getCenterY());
        t.scale(scale, scale);
        t.translate(-extent.getCenterX(), -extent.getCenterY());
        return t;
    }

    /** Pixels a millimetre along the isometric axes is this times {@link Isometric#FACTOR}. */
    public double scale(Rectangle2D area) {
        return placed(area).getScaleX();
    }

    /** Height over width of what is drawn. */
    double aspect() {
        return extent.getHeight() / Math.max(1e-6, extent.getWidth());
    }

    /** The side of a box that is seen along an axis: left, front or top. */
    static Path2D.Double side(Box box, int axis) {
        double at = axis == 2 ? box.max(2) : box.min(axis);
        int b = (axis + 1) % 3;
        int c = (axis + 2) % 3;
        double[][] corners = {
            {box.min(b), box.min(c)}, {box.max(b), box.min(c)}, {box.max(b), box.max(c)}, {box.min(b), box.max(c)}
        };
        Path2D.Double path = new Path2D.Double();
        for (int i = 0; i < 4; i++) {
            var v = new org.joml.Vector3d().setComponent(axis, at);
            v.setComponent(b, corners[i][0]).setComponent(c, corners[i][1]);
            Point2D.Double p = JobView.ISOMETRIC.project(v);
            if (i == 0) path.moveTo(p.x, p.y);
            else path.lineTo(p.x, p.y);
        }
        path.closePath();
        return path;
    }
}
