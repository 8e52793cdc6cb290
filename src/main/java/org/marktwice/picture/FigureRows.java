package org.marktwice.picture;

import java.util.Arrays;
import org.marktwice.timber.Surface;

/**
 * Renders a surface's figure row by row: whatever is the same down a column or along a row is computed once. One instance
 * renders one picture, from its first row to its last.
 */
final class FigureRows {
    private static final float WANDER = 1.6f;
    private static final float SWELLING = 0.02f;
    private static final float ROUGHNESS = 0.20f;
    private static final float STREAKS = 0.030f;
    private static final float FIBRES = 0.030f;
    private static final float END_GRAIN = 0.95f;
    /** A rough surface throws less light back. */
    private static final float ROUGH = 0.04f;
    /** How far the saw's marks lean, millimetres along for one across. */
    private static final double SLANT = 0.07;
    /** Radius of the blade that cut the ends, millimetres. */
    private static final double BLADE = 160;

    /** Of 256. */
    private static final int GREYER = 34;

    private final WoodFigure figure;
    private final Surface surface;
    private final double at;
    private final double u0;
    private final double du;
    private final int n;
    private final double dv;
    private final double pixel;
    private final RingTable rings;
    private double v;

    /** The row runs along x on the long surfaces, along y on the ends. */
    private final int axis;

    private final float[] yOffset;
    private final float[] zOffset;
    private final float[] noise;
    private final float[] shade;
    private final float[] cover;
    private final int[] knotColour;
    private final int[] slot;
    private float[] r;
    private float[] before;
    private boolean anyKnot;
    private final boolean sawn;
    private final ValueNoise.Rows swelling;
    private final ValueNoise.Rows roughness;
    private final ValueNoise.Rows streaks;
    private final ValueNoise.Rows fibres;
    private final ValueNoise.Rows flecks;
    private final ValueNoise.Rows fuzz;
    private final ValueNoise.Rows saw;

    /**
     * @param at the surface's place along its normal's axis; u0, v0 the first pixel's middle; du, dv from pixel to pixel:
     *     all millimetres of the board's frame
     */
    FigureRows(WoodFigure figure, Surface surface, double at, double u0, double du, int n, double v0, double dv) {
        this.figure = figure;
        this.surface = surface;
        this.at = at;
        this.u0 = u0;
        this.du = du;
        this.n = n;
        this.v = v0;
        this.dv = dv;
        this.pixel = Math.abs(du);
        this.axis = surface.uAxis();
        this.yOffset = new float[n];
        this.zOffset = new float[n];
        this.noise = new float[n];
        this.shade = new float[n];
        this.cover = new float[n];
        this.knotColour = new int[n];
        this.slot = new int[n];
        this.r = new float[n];
        this.before = new float[n];
        this.sawn = !figure.board.isDressed(surface);
        this.swelling = rows(figure.swelling);
        this.roughness = rows(figure.roughness);
        this.streaks = rows(figure.streaks);
        this.fibres = rows(figure.fibres);
        this.flecks = rows(figure.flecks);
        this.fuzz = rows(figure.fuzz);
        this.saw = rows(figure.saw);
        columns();
        this.rings = pixel <= WoodFigure.A_POINT ? figure.pointRings() : figure.rings(pixel);
        if (!figure.board.isSheet()) {
            distances(v0 - dv, before);
            anyKnot = false;
        }
    }

    private void columns() {
        boolean alongX = axis == 0;
        double start = alongX ? u0 : at;
        double step = alongX ? du : 0;
        figure.wanderY.along(0, start, step, n).addTo(yOffset, 0, 0, -WANDER);
        figure.wanderZ.along(0, start, step, n).addTo(zOffset, 0, 0, -WANDER);
        for (int i = 0; i < n; i++) {
            yOffset[i] += (float) ((alongX ? 0 : u0 + i * du) - figure.pith.y());
            zOffset[i] -= (float) figure.pith.z();
        }
    }

    private double y(double rowV) {
        return axis == 1 ? 0 : surface.vAxis() == 1 ? rowV : at;
    }

    private double z(double rowV) {
        return surface.vAxis() == 2 ? rowV : at;
    }

    private void add(ValueNoise.Rows noise, double rowV, float strength, float[] to) {
        if (axis == 0) noise.addTo(to, y(rowV), z(rowV), strength);
        else noise.addTo(to, rowV, at, strength);
    }

    private ValueNoise.Rows rows(ValueNoise noise) {
        return noise.along(axis, u0, du, n);
    }

    /** Renders the next row into {@code out[from..]}. */
    void row(int[] out, int from) {
        if (figure.board.isSheet()) {
            SheetFigure.row(figure, surface, at, u0, du, n, v, out, from);
        } else {
            anyKnot = false;
            shadeRow();
            distances(v, r);
            colours(out, from);
            float[] swap = before;
            before = r;
            r = swap;
        }
        v += dv;
    }

    private void distances(double rowV, float[] into) {
        float y = (float) y(rowV);
        float z = (float) z(rowV);
        Arrays.fill(noise, 1);
        add(swelling, rowV, SWELLING, noise);
        for (int i = 0; i < n; i++) {
            float a = y + yOffset[i];
            float b = z + zOffset[i];
            into[i] = (float) Math.sqrt(a * a + b * b) * noise[i];
        }
        add(roughness, rowV, ROUGHNESS, into);
        for (KnotFigure knot : figure.knots) bend(knot, rowV, into);
    }

    /** One knot's part of the row: bends the rings near it, and notes its own colour within it. */
    private void bend(KnotFigure knot, double rowV, float[] into) {
        double ox = (axis == 0 ? 0 : at) - knot.px;
        double oy = y(rowV) - knot.py;
        double oz = z(rowV) - knot.pz;
        double d = axis == 0 ? knot.dx : knot.dy;
        double o = axis == 0 ? ox : oy;
        // distance² from the axis along the row is a·t² + 2·b·t + c, t being the row's own coordinate
        double s0 = ox * knot.dx + oy * knot.dy + oz * knot.dz;
        double a = 1 - d * d;
        double b = o - s0 * d;
        double c = ox * ox + oy * oy + oz * oz - s0 * s0;
        double passes = a > 1e-6 ? Math.sqrt(Math.max(0, c - b * b / a)) : Math.sqrt(Math.max(0, c));
        double reach = axis == 0 ? knot.reach(passes) : knot.reach(0);
        if (reach <= 0) return;
        int first = 0;
        int last = n - 1;
        if (a > 1e-6) {
            double under = b * b - a * (c - reach * reach);
            if (under <= 0) return;
            double root = Math.sqrt(under);
            double t1 = ((-b - root) / a - u0) / du;
            double t2 = ((-b + root) / a - u0) / du;
            first = (int) Math.max(0, Math.ceil(Math.min(t1, t2)));
            last = (int) Math.min(n - 1, Math.floor(Math.max(t1, t2)));
        } else if (c > reach * reach) {
            return;
        }
        for (int i = first; i <= last; i++) {
            double t = u0 + i * du;
            double s = s0 + t * d;
            if (s <= 0) continue;
            double squared = a * t * t + 2 * b * t + c;
            double rho = Math.sqrt(Math.max(0, squared));
            double outside = rho - knot.radius(s);
            double past = s - knot.knot.endsAt();
            if (past > 0) outside = Math.hypot(Math.max(0, outside), past);
            double along = (axis == 0 ? ox + t : ox) - s * knot.dx;
            apply(knot, i, into, s, rho, outside, rho > 1e-9 ? along * along / squared : 0, rowV, t);
        }
    }

    private void apply(
            KnotFigure knot,
            int i,
            float[] into,
            double s,
            double rho,
            double outside,
            double lengthwise,
            double rowV,
            double t) {
        into[i] -= (float) knot.bend(s, Math.max(0, outside), lengthwise);
        if (outside < 5) shade[i] *= knot.halo(s, Math.max(0, outside));
        double share = 0.5 - outside / pixel;
        if (share <= 0) return;
        double x = axis == 0 ? t : at;
        double y = axis == 0 ? y(rowV) : t;
        anyKnot = true;
        cover[i] = (float) Math.min(1, share);
        knotColour[i] = knot.colour(s, rho, x, y, z(rowV));
    }

    /** Brightness from streaks, fibres and the saw; 1 is the wood's own. */
    private void shadeRow() {
        Arrays.fill(shade, surface.isEnd() ? END_GRAIN : 1);
        Arrays.fill(cover, 0);
        add(streaks, v, STREAKS, shade);
        float fine = FIBRES * (float) Math.min(1, 0.5 / pixel);
        if (fine > 0.004f) add(fibres, v, fine, shade);
        if (sawn) sawMarks();
    }

    /**
     * Marks of the saw: across the grain and a little slanting on the long surfaces, arcs of a large blade on the ends;
     * nowhere quite even. Fibres stand up between them.
     */
    private void sawMarks() {
        SawMarks marks = figure.sawMarks();
        Arrays.fill(noise, 0.8f);
        add(saw, v, 0.35f, noise);
        double begins = surface.ordinal() * 117.0;
        for (int i = 0; i < n; i++) {
            double u = u0 + i * du;
            double place = axis == 0 ? u + SLANT * v : v + u * u / (2 * BLADE);
            shade[i] += noise[i] * marks.at(begins + place, pixel) - ROUGH;
        }
        add(fuzz, v, 0.04f * (float) Math.min(1, 0.7 / pixel), shade);
    }

    private void colours(int[] out, int from) {
        boolean vessels = figure.look.pores() > 0 || figure.look.rays() > 0;
        if (vessels) {
            Arrays.fill(noise, 0);
            add(flecks, v, 1, noise);
        }
        float darkest =
                (float) (0.22 * Math.max(figure.look.pores(), 0.6 * figure.look.rays()) * Math.min(1, 0.5 / pixel));
        float perMm = rings.perMm;
        float start = (float) rings.from;
        int size = rings.size;
        float steps = (float) (RingTable.PER_PIXEL / pixel);
        slots(perMm, start, size, steps);
        int[] table = rings.packed;
        if (vessels) {
            float strength = darkest * 2.5f / 255;
            for (int i = 0; i < n; i++) {
                float fleck = Math.max(0, Math.min(0.4f, noise[i] - 0.25f));
                shade[i] -= strength * fleck * (table[slot[i]] >>> 24);
            }
        }
        if (sawn) for (int i = 0; i < n; i++) out[from + i] = dull(lit(table[slot[i]], shade[i]));
        else for (int i = 0; i < n; i++) out[from + i] = lit(table[slot[i]], shade[i]);
        if (anyKnot) overlayKnots(out, from);
    }

    /** Each pixel's place in the table of rings, by how much of the rings it covers. */
    private void slots(float perMm, float start, int size, float steps) {
        float left = n > 1 ? 2 * r[0] - r[1] : r[0];
        for (int i = 0; i < n; i++) {
            float here = r[i];
            float along = Math.abs(here - left);
            float across = Math.abs(here - before[i]);
            float width = 0.675f * (along + across) + 0.325f * Math.abs(along - across);
            left = here;
            int level = Math.min(RingTable.LEVELS - 1, (int) (width * steps + 0.5f));
            slot[i] = level * size + Math.max(0, Math.min(size - 1, (int) ((here - start) * perMm)));
        }
    }

    private void overlayKnots(int[] out, int from) {
        for (int i = 0; i < n; i++) {
            if (cover[i] <= 0) continue;
            int inside = lit(knotColour[i], 1 + 0.6f * (shade[i] - shadeOfKnot(i)));
            if (sawn) inside = dull(inside);
            out[from + i] = 0xFF000000 | WoodLook.mixed(out[from + i], inside, cover[i]);
        }
    }

    /** The halo belongs to the wood outside; inside a knot only half of the other shading counts. */
    private float shadeOfKnot(int i) {
        return Math.min(1, shade[i] + 0.1f);
    }

    private static int lit(int colour, float bright) {
        int k = (int) (bright * 256);
        int red = Math.min(255, (((colour >> 16) & 255) * k) >> 8);
        int green = Math.min(255, (((colour >> 8) & 255) * k) >> 8);
        int blue = Math.min(255, ((colour & 255) * k) >> 8);
        return 0xFF000000 | red << 16 | green << 8 | blue;
    }

    /** As the saw leaves it: a little greyer. */
    private static int dull(int colour) {
        int red = (colour >> 16) & 255;
        int green = (colour >> 8) & 255;
        int blue = colour & 255;
        int grey = (red + green + blue) * 85 >> 8;
        red += (grey - red) * GREYER >> 8;
        green += (grey - green) * GREYER >> 8;
        blue += (grey - blue) * GREYER >> 8;
        return 0xFF000000 | red << 16 | green << 8 | blue;
    }
}
