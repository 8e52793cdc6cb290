package org.marktwice.picture;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.util.HashMap;
import java.util.Map;
import org.joml.Vector3d;
import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;

/** Pictures of boards' surfaces with all that is on them, and of the wood that cuts lay bare; kept, for they are slow to make. */
final class WoodSkins {
    /** So many pixels a millimetre the pictures have, whichever is next above what is asked for. */
    private static final double[] SCALES = {0.5, 0.75, 1, 1.5, 2, 3, 4};

    private static final int MOST_KEPT = 600;

    private final SurfacePainter painter;
    private final Map<Object, WoodRaster.Texture> kept = new HashMap<>();

    private record Outer(BoardPicture of, Surface surface, double scale) {}

    private record Inner(Board board, Surface surface, long at, long u, long v, double scale) {}

    WoodSkins(SurfacePainter painter) {
        this.painter = painter;
    }

    /** Forgets the surfaces, for finer figures of them can be had. */
    void forget() {
        kept.keySet().removeIf(k -> k instanceof Outer);
    }

    static double scale(double wanted) {
        for (double s : SCALES) if (s >= wanted) return s;
        return SCALES[SCALES.length - 1];
    }

    WoodRaster.Texture outer(BoardPicture of, Surface surface, double scale) {
        return kept.computeIfAbsent(new Outer(of, surface, scale), k -> painted(of, surface, scale));
    }

    private WoodRaster.Texture painted(BoardPicture of, Surface surface, double scale) {
        int w = Math.max(1, (int) Math.round(of.board().uExtent(surface) * scale));
        int h = Math.max(1, (int) Math.round(of.board().vExtent(surface) * scale));
        BufferedImage image = new BufferedImage(w, h, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.scale(w / of.board().uExtent(surface), h / of.board().vExtent(surface));
        painter.paint(g, of, surface, scale, Palette.LIGHT);
        g.dispose();
        return WoodRaster.Texture.of(
                image, 0, 0, w / of.board().uExtent(surface), h / of.board().vExtent(surface));
    }

    /** The wood in the plane of a piece that was laid bare. */
    WoodRaster.Texture inner(Board board, WoodMesh.Piece piece, double scale) {
        if (kept.size() > MOST_KEPT) kept.keySet().removeIf(k -> k instanceof Inner);
        Surface s = piece.surface();
        Vector3d low = new Vector3d(piece.onBoard()[0]);
        Vector3d high = new Vector3d(low);
        for (Vector3d p : piece.onBoard()) {
            low.min(p);
            high.max(p);
        }
        double u = low.get(s.uAxis());
        double v = low.get(s.vAxis());
        double wide = high.get(s.uAxis()) - u;
        double tall = high.get(s.vAxis()) - v;
        double at = low.get(s.axis());
        Inner key = new Inner(
                board,
                s,
                Math.round(at * 4),
                Math.round(u * 4) * 100_000 + Math.round(wide * 4),
                Math.round(v * 4) * 100_000 + Math.round(tall * 4),
                scale);
        return kept.computeIfAbsent(key, k -> laidBare(board, s, at, u, v, wide, tall, scale));
    }

    private static WoodRaster.Texture laidBare(
            Board board, Surface s, double at, double u, double v, double wide, double tall, double scale) {
        int w = Math.max(1, (int) Math.round(wide * scale));
        int h = Math.max(1, (int) Math.round(tall * scale));
        BufferedImage image = new BufferedImage(w, h, BufferedImage.TYPE_INT_RGB);
        int[] pixels = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
        double du = wide / w;
        double dv = tall / h;
        FigureRows rows = new FigureRows(WoodFigure.of(board), s, at, u + du / 2, du, w, v + dv / 2, dv);
        for (int row = 0; row < h; row++) rows.row(pixels, row * w);
        return WoodRaster.Texture.of(image, u, v, w / Math.max(1e-9, wide), h / Math.max(1e-9, tall));
    }
}
