package org.marktwice.picture;

import org.marktwice.timber.Surface;

/** Plywood: a quiet, rotary-cut face, and plies that show on edges and ends, every second one with its end grain. */
final class SheetFigure {
    private static final int FACE = 0xE8D3AC;
    private static final int FACE_DARK = 0xDBC096;
    private static final int ALONG = 0xE2CBA0;
    private static final int ACROSS = 0xC39B69;
    private static final int GLUE = 0x8A6A45;
    /** A ply's usual thickness, millimetres. */
    private static final double PLY = 1.4;

    private SheetFigure() {}

    /** An odd number, so that both faces run the same way. */
    static int plies(double thickness) {
        return Math.max(3, 2 * (int) Math.round((thickness / PLY - 1) / 2) + 1);
    }

    static void row(
            WoodFigure f, Surface surface, double at, double u0, double du, int n, double v, int[] out, int from) {
        float[] broad = new float[n];
        float[] fine = new float[n];
        if (surface.isFace()) {
            f.swelling.along(0, u0, du, n).addTo(broad, v * 1.7, at, 1);
            f.streaks.along(0, u0, du, n).addTo(fine, v, at, 1);
            for (int i = 0; i < n; i++) {
                double wave = 2.5 * broad[i] + v * 0.021;
                double t = Math.abs(2 * (wave - Math.floor(wave)) - 1);
                put(out, from + i, WoodLook.mixed(FACE, FACE_DARK, t * t), 1 + 0.025f * fine[i]);
            }
            return;
        }
        if (surface.isEdge()) f.fibres.along(0, u0, du, n).addTo(fine, at, v, 1);
        else f.fibres.along(1, u0, du, n).addTo(fine, v, at, 1);
        double thick = f.board.size().thickness();
        int plies = plies(thick);
        double place = v / thick * plies;
        int ply = (int) Math.max(0, Math.min(plies - 1, Math.floor(place)));
        double edge = Math.min(place - ply, ply + 1 - place) * thick / plies;
        boolean endGrain = (ply % 2 == 0) == surface.isEnd();
        double glue = ply == 0 && place - ply < 0.5 || ply == plies - 1 && place - ply > 0.5
                ? 0
                : Math.max(0, 1 - edge / 0.16);
        int colour = WoodLook.mixed(endGrain ? ACROSS : ALONG, GLUE, 0.6 * glue);
        for (int i = 0; i < n; i++) put(out, from + i, colour, 1 + (endGrain ? 0.11f : 0.04f) * fine[i]);
    }

    private static void put(int[] out, int i, int colour, float bright) {
        int c = 0;
        for (int shift = 0; shift <= 16; shift += 8) {
            c |= Math.min(255, (int) (((colour >> shift) & 255) * bright)) << shift;
        }
        out[i] = 0xFF000000 | c;
    }
}
