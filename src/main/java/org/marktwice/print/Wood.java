package org.marktwice.print;

import java.awt.image.BufferedImage;
import org.marktwice.picture.FigureCache;
import org.marktwice.picture.Figures;
import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;

/** The wood's figure, fine enough for paper. */
final class Wood implements Figures {
    /** Pixels of the figure for each that a painter counts in: 200 an inch or more. */
    private static final double FINE = 2;

    private final FigureCache cache = new FigureCache(16_000_000);

    @Override
    public BufferedImage of(Board board, Surface surface, double pointsPerMm) {
        return cache.image(board, surface, pointsPerMm * FINE);
    }

    /** So light that pencil shows on it. */
    static Figures light(Figures wood) {
        return (board, surface, scale) -> lightened(wood.of(board, surface, scale));
    }

    private static BufferedImage lightened(BufferedImage image) {
        int w = image.getWidth();
        int h = image.getHeight();
        int[] pixels = image.getRGB(0, 0, w, h, null, 0, w);
        for (int i = 0; i < pixels.length; i++) {
            int light = 0;
            for (int shift = 0; shift <= 16; shift += 8) {
                int c = (pixels[i] >> shift) & 255;
                light |= (255 - (255 - c) * 52 / 100) << shift;
            }
            pixels[i] = light;
        }
        BufferedImage out = new BufferedImage(w, h, BufferedImage.TYPE_INT_RGB);
        out.setRGB(0, 0, w, h, pixels, 0, w);
        return out;
    }
}
