package org.marktwice.picture;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.joml.Vector3d;
import org.jspecify.annotations.Nullable;
import org.marktwice.drawing.Placing;
import org.marktwice.timber.Board;
import org.marktwice.timber.Box;
import org.marktwice.timber.Surface;

/**
 * Draws a job put together: the wood of each board on what is seen of it, inside its cuts too, with all that is marked on
 * it; and over it, as through the wood, what is picked out.
 */
public final class AssembledPainter {
    /** A side this near to a surface of the board is that surface, millimetres. */
    private static final double SURFACE = 0.3;

    /** The usual size of text, pixels. */
    private static final float BODY = 13;

    private static final int MOST_KEPT = 600;
    /** Inside a cut it is darker than outside. */
    private static final Color INSIDE = new Color(0x2A, 0x1C, 0x10, 46);

    /**
     * What is picked out.
     *
     * @param boxes places of the job, such as a cut, or wood that would have to go into wood
     * @param knot a knot of a part's board, by its id; null for none
     */
    public record Pick(
            List<Box> boxes,
            Way way,
            @Nullable Placing placing,
            @Nullable String knot,
            Ink ink) {
        public Pick {
            boxes = List.copyOf(boxes);
        }
    }

    /** How places are picked out: as a cut is, hatched in dashes; in dashes alone; outlined. */
    public enum Way {
        HATCHED,
        DASHED,
        OUTLINED
    }

    private record Inner(String board, Surface surface, Box flat, int milliPxPerMm) {}

    private final SurfacePainter surfaces;
    private final Map<Inner, BufferedImage> inner = new LinkedHashMap<>();

    public AssembledPainter(SurfacePainter surfaces) {
        this.surfaces = surfaces;
    }

    public void paint(
            Graphics2D g, AssembledJob job, List<AssembledJob.Piece> pieces, Rectangle2D area, Palette palette) {
        Graphics2D own = smooth(g);
        for (AssembledJob.Side side : job.sides()) side(own, job, side, area, palette);
        edges(own, job, area);
        for (AssembledJob.Piece piece : pieces) {
            if (!piece.isThere()) outline(own, job, piece, area, palette);
        }
        own.dispose();
    }

    /** Over the job, as through the wood, what is picked out. */
    public void pick(Graphics2D g, AssembledJob job, List<Pick> picks, Rectangle2D area, Palette palette) {
        Graphics2D own = smooth(g);
        picks.forEach(p -> pick(own, job, p, area, palette));
        own.dispose();
    }

    private static Graphics2D smooth(Graphics2D g) {
        Graphics2D own = (Graphics2D) g.create();
        own.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        own.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        return own;
    }

    private void side(Graphics2D g, AssembledJob job, AssembledJob.Side side, Rectangle2D area, Palette palette) {
        int axis = side.axis();
        Placing placing = side.piece().placing();
        BoardPicture picture = side.piece().picture();
        if (placing == null || picture == null) return;
        double pxPerMm = job.placed(area).getScaleX();
        Shape polygon = job.placed(area).createTransformedShape(AssembledJob.side(side.box(), axis));
        Surface surface = placing.turn().looking(job.seen(axis));
        Box onBoard = placing.toBoard(job.inJob(side.box()));
        double at = surface.sign() > 0 ? onBoard.max(surface.axis()) : onBoard.min(surface.axis());
        double far = surface.sign() > 0 ? placing.board().size().along(surface.axis()) : 0;
        boolean outside = Math.abs(at - far) <= SURFACE;
        Graphics2D on = (Graphics2D) g.create();
        on.clip(polygon);
        on.transform(job.onto(placing, surface, outside ? far : at, area));
        if (outside) surfaces.paint(on, picture, surface, pxPerMm, palette);
        else inside(on, placing.board(), surface, onBoard.with(surface.axis(), at, at), pxPerMm);
        on.dispose();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_OFF);
        g.setColor(IsometricPainter.shade(normal(axis)));
        g.fill(polygon);
        if (!outside && !surface.isEnd()) {
            g.setColor(INSIDE);
            g.fill(polygon);
        }
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    }

    private static Vector3d normal(int axis) {
        return new Vector3d().setComponent(axis, axis == 2 ? 1 : -1);
    }

    /** Wood laid bare: its figure in the plane of the cut. */
    private void inside(Graphics2D g, Board board, Surface surface, Box flat, double pxPerMm) {
        Inner key = new Inner(board.id(), surface, flat, (int) Math.round(1000 * pxPerMm));
        BufferedImage image = inner.get(key);
        if (image == null) {
            if (inner.size() >= MOST_KEPT) inner.clear();
            image = WoodFigure.of(board).image(surface, flat, pxPerMm);
            inner.put(key, image);
        }
        double u = flat.extent(surface.uAxis());
        double v = flat.extent(surface.vAxis());
        AffineTransform fit =
                AffineTransform.getTranslateInstance(flat.min(surface.uAxis()), flat.min(surface.vAxis()));
        fit.scale(u / image.getWidth(), v / image.getHeight());
        g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        g.drawImage(image, fit, null);
    }

    private void edges(Graphics2D g, AssembledJob job, Rectangle2D area) {
        AffineTransform to = job.placed(area);
        g.setStroke(new BasicStroke(1.1f * unit(), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.setColor(new Color(0x4A, 0x33, 0x1E, 210));
        for (Linework.Piece piece : job.edges()) g.draw(to.createTransformedShape(piece.line()));
    }

    /** A part without a board: long dashes with two short ones, as outlines of what isn't there are drawn (ISO 128, type 05.1). */
    private void outline(Graphics2D g, AssembledJob job, AssembledJob.Piece piece, Rectangle2D area, Palette palette) {
        AffineTransform to = job.placed(area);
        float unit = unit();
        float[] dashes = {12 * unit, 3 * unit, 2 * unit, 3 * unit, 2 * unit, 3 * unit};
        g.setStroke(new BasicStroke(unit, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, dashes, 0));
        g.setColor(palette.of(Ink.QUIET));
        for (Linework.Piece line : job.outline(piece)) g.draw(to.createTransformedShape(line.line()));
    }

    private void pick(Graphics2D g, AssembledJob job, Pick pick, Rectangle2D area, Palette palette) {
        Color ink = Palette.LIGHT.of(pick.ink());
        Area all = new Area();
        pick.boxes().forEach(b -> all.add(new Area(job.outline(b, area))));
        Path2D.Double outline = new Path2D.Double(all);
        if (pick.way() == Way.HATCHED) hatch(g, outline, ink);
        if (pick.way() == Way.OUTLINED) solid(g, outline, ink, palette);
        else dashed(g, outline, ink, palette);
        Placing placing = pick.placing();
        String knot = pick.knot();
        if (placing != null && knot != null) {
            job.knot(placing, knot, area).ifPresent(k -> {
                g.setColor(Palette.LIGHT.of(pick.ink(), 0.22));
                g.fill(k);
                solid(g, k, ink, palette);
            });
        }
    }

    private void dashed(Graphics2D g, Shape outline, Color ink, Palette palette) {
        under(g, outline, palette, 3.4f);
        g.setColor(ink);
        g.setStroke(new BasicStroke(
                1.8f * unit(),
                BasicStroke.CAP_BUTT,
                BasicStroke.JOIN_MITER,
                10,
                new float[] {7 * unit(), 4 * unit()},
                0));
        g.draw(outline);
    }

    private void solid(Graphics2D g, Shape outline, Color ink, Palette palette) {
        under(g, outline, palette, 4f);
        g.setColor(ink);
        g.setStroke(new BasicStroke(2f * unit(), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(outline);
    }

    /** A line grows with the text: 1 at the usual size. */
    private float unit() {
        return surfaces.font().getSize2D() / BODY;
    }

    /** What is picked out stands off from whatever wood it lies on. */
    private void under(Graphics2D g, Shape outline, Palette palette, float width) {
        g.setColor(Palette.LIGHT.of(Ink.PANEL, palette.isDark() ? 0.8 : 0.7));
        g.setStroke(new BasicStroke(width * unit(), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(outline);
    }

    private void hatch(Graphics2D g, Shape outline, Color ink) {
        Graphics2D in = (Graphics2D) g.create();
        in.clip(outline);
        in.setColor(Palette.LIGHT.of(Ink.PANEL, 0.34));
        in.fill(outline);
        in.setColor(ink);
        in.setStroke(new BasicStroke(unit()));
        Rectangle2D area = outline.getBounds2D();
        double h = area.getHeight();
        double step = 8 * unit();
        for (double x = Math.floor((area.getMinX() - h) / step) * step; x < area.getMaxX() + h; x += step) {
            in.draw(new Line2D.Double(x, area.getMaxY(), x + h, area.getMinY()));
        }
        in.dispose();
    }
}
