package org.marktwice.picture;

import java.awt.image.BufferedImage;
import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;

/** Where a painter gets the wood's figure from: at once and coarse at first on a screen, exact on paper. */
@FunctionalInterface
public interface Figures {
    /** The surface as seen from outside ({@link SurfaceFrame}); its scale may be another than asked for. */
    BufferedImage of(Board board, Surface surface, double pxPerMm);

    /** Exact, however long it takes: for files, paper and tests. */
    static Figures exact(FigureCache cache) {
        return cache::image;
    }

    /**
     * Never waits; {@code repaint} is run from another thread when painting again gives a finer picture (Swing's own
     * {@code repaint()} may be called so).
     */
    static Figures live(FigureCache cache, Runnable repaint) {
        return (board, surface, pxPerMm) -> cache.now(board, surface, pxPerMm, repaint)
                .orElseGet(() -> new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB));
    }
}
