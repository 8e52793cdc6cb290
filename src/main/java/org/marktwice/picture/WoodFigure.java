package org.marktwice.picture;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.marktwice.timber.Board;
import org.marktwice.timber.Box;
import org.marktwice.timber.Pith;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;

/**
 * The figure of a board's wood, computed for points of the solid, so that neighbouring surfaces agree along their arris:
 * rings about the pith that wander a little, swell and flow out round the knots. It comes from the board's facts and its
 * seed alone, and is the same on every machine. It never decides anything.
 */
public final class WoodFigure {
    /** Far finer than anything drawn: a point on its own is not averaged over a pixel. */
    static final double A_POINT = 1e-3;

    final Board board;
    final WoodLook look;
    final Pith pith;
    final List<KnotFigure> knots;
    final ValueNoise wanderY;
    final ValueNoise wanderZ;
    final ValueNoise swelling;
    final ValueNoise roughness;
    final ValueNoise streaks;
    final ValueNoise fibres;
    final ValueNoise flecks;
    final ValueNoise saw;
    final ValueNoise fuzz;
    private volatile @Nullable RingTable pointRings;
    private volatile @Nullable SawMarks sawMarks;

    private WoodFigure(Board board, WoodLook look) {
        this.board = board;
        this.look = look;
        this.pith = board.pith().orElse(new Pith(0, -1000));
        long seed = board.facts().seed();
        List<KnotFigure> found = new ArrayList<>();
        if (!board.isSheet()) {
            for (int i = 0; i < board.knots().size(); i++) {
                found.add(new KnotFigure(board.knots().get(i), pith, look, seed, i));
            }
        }
        this.knots = List.copyOf(found);
        this.wanderY = new ValueNoise(seed, 1, 180, 1, 1);
        this.wanderZ = new ValueNoise(seed, 2, 180, 1, 1);
        this.swelling = new ValueNoise(seed, 3, 220, 46, 46);
        this.roughness = new ValueNoise(seed, 4, 42, 4.5, 4.5);
        this.streaks = new ValueNoise(seed, 5, 90, 1.7, 1.7);
        this.fibres = new ValueNoise(seed, 6, 15, 0.34, 0.34);
        this.flecks = new ValueNoise(seed, 7, look.pores() > look.rays() ? 8 : 3, 0.36, 0.36);
        this.saw = new ValueNoise(seed, 10, 70, 16, 16);
        this.fuzz = new ValueNoise(seed, 9, 3.2, 0.45, 0.45);
    }

    public static WoodFigure of(Board board) {
        return new WoodFigure(board, WoodLook.of(board.species().orElse(null)));
    }

    /** The same with another look, so that a test can tell knots from clear wood by colour. */
    static WoodFigure of(Board board, WoodLook look) {
        return new WoodFigure(board, look);
    }

    public Board board() {
        return board;
    }

    /**
     * The colour at a point of the solid (board frame, millimetres) as it shows on this surface: ends are a little darker,
     * sawn surfaces duller. Opaque, packed 0xAARRGGBB.
     */
    public int argb(double x, double y, double z, Surface surface) {
        double[] p = {x, y, z};
        int[] one = new int[1];
        double u = p[surface.uAxis()];
        double v = p[surface.vAxis()];
        new FigureRows(this, surface, p[surface.axis()], u, A_POINT, 1, v, A_POINT).row(one, 0);
        return one[0];
    }

    public int argb(SurfacePoint p) {
        double along = p.surface().sign() > 0 ? board.size().along(p.surface().axis()) : 0;
        double[] at = new double[3];
        at[p.surface().axis()] = along;
        at[p.surface().uAxis()] = p.u();
        at[p.surface().vAxis()] = p.v();
        return argb(at[0], at[1], at[2], p.surface());
    }

    /** The rings from the nearest corner of the section to the farthest, with room for what the figure adds. */
    RingTable rings(double pixel) {
        double w = board.size().width();
        double t = board.size().thickness();
        double py = pith.y();
        double pz = pith.z();
        double near = Math.hypot(Math.max(0, Math.max(-py, py - w)), Math.max(0, Math.max(-pz, pz - t)));
        double far = Math.hypot(Math.max(Math.abs(py), Math.abs(w - py)), Math.max(Math.abs(pz), Math.abs(t - pz)));
        double bend = knots.stream().mapToDouble(k -> k.knot.maxRadius()).sum();
        double ringWidth = Math.max(0.2, board.facts().ringWidth());
        double from = Math.max(0, near * 0.97 - 4 - bend);
        return new RingTable(look, board.facts().seed(), ringWidth, from, far * 1.03 + 4, pixel);
    }

    RingTable pointRings() {
        RingTable known = pointRings;
        if (known == null) {
            known = rings(A_POINT);
            pointRings = known;
        }
        return known;
    }

    SawMarks sawMarks() {
        SawMarks known = sawMarks;
        if (known == null) {
            known = new SawMarks(board.facts().seed());
            sawMarks = known;
        }
        return known;
    }

    /** The whole surface, as seen from outside ({@link SurfaceFrame}), at least one pixel either way. */
    public BufferedImage image(Surface surface, double pxPerMm) {
        SurfaceFrame frame = SurfaceFrame.of(surface, board);
        int w = Math.max(1, (int) Math.round(frame.width() * pxPerMm));
        int h = Math.max(1, (int) Math.round(frame.height() * pxPerMm));
        BufferedImage image = new BufferedImage(w, h, BufferedImage.TYPE_INT_RGB);
        int[] pixels = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
        double du = frame.width() / w * (frame.uFlipped() ? -1 : 1);
        double dv = frame.height() / h * (frame.vFlipped() ? -1 : 1);
        double u = (frame.uFlipped() ? frame.width() : 0) + du / 2;
        double v = (frame.vFlipped() ? frame.height() : 0) + dv / 2;
        double at = surface.sign() > 0 ? board.size().along(surface.axis()) : 0;
        FigureRows rows = new FigureRows(this, surface, at, u, du, w, v, dv);
        for (int row = 0; row < h; row++) rows.row(pixels, row * w);
        return image;
    }

    /**
     * The figure in a flat piece of a plane parallel to a surface, as wood laid bare there shows it; at least one pixel either
     * way. Columns run along the surface's first coordinate and rows along its second, both ascending.
     *
     * @param flat in the board's frame, without thickness along the surface's axis
     */
    BufferedImage image(Surface surface, Box flat, double pxPerMm) {
        int u = surface.uAxis();
        int v = surface.vAxis();
        int w = Math.max(1, (int) Math.round(flat.extent(u) * pxPerMm));
        int h = Math.max(1, (int) Math.round(flat.extent(v) * pxPerMm));
        BufferedImage image = new BufferedImage(w, h, BufferedImage.TYPE_INT_RGB);
        int[] pixels = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
        double du = flat.extent(u) / w;
        double dv = flat.extent(v) / h;
        FigureRows rows = new FigureRows(
                this, surface, flat.min(surface.axis()), flat.min(u) + du / 2, du, w, flat.min(v) + dv / 2, dv);
        for (int row = 0; row < h; row++) rows.row(pixels, row * w);
        return image;
    }
}
