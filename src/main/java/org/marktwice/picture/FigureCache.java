package org.marktwice.picture;

import java.awt.image.BufferedImage;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.jspecify.annotations.Nullable;
import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;

/**
 * Rendered figures of surfaces, kept up to a number of pixels; the longest unused go first. Safe from any thread.
 *
 * <p>A painter on the event thread asks {@link #now} and gets at once the best picture there is, however coarse; the finer
 * one is rendered aside, and the caller is told when it can paint again. Exports ask {@link #image} and wait.
 */
public final class FigureCache implements AutoCloseable {
    private static final long DEFAULT_PIXELS = 12_000_000;
    /** A coarse picture has so many pixels: under a millisecond's work. */
    private static final double COARSE_PIXELS = 9_000;
    /** No picture of a surface has more pixels than this; a larger one is drawn from it, enlarged. */
    private static final double MOST_PIXELS = 4_000_000;

    private record Key(Board board, Surface surface, int milliPxPerMm) {}

    private final long mostPixels;
    private final LinkedHashMap<Key, BufferedImage> kept = new LinkedHashMap<>(64, 0.75f, true);
    private final Map<Key, Runnable> wanted = new HashMap<>();
    private final ExecutorService aside = Executors.newSingleThreadExecutor(task -> {
        Thread t = new Thread(task, "figure of the wood");
        t.setDaemon(true);
        t.setPriority(Thread.NORM_PRIORITY - 1);
        return t;
    });
    private long pixels;

    public FigureCache() {
        this(DEFAULT_PIXELS);
    }

    public FigureCache(long mostPixels) {
        this.mostPixels = mostPixels;
    }

    /** The surface as seen from outside ({@link SurfaceFrame}) at this scale, rendered now where it isn't kept. */
    public BufferedImage image(Board board, Surface surface, double pxPerMm) {
        Key key = key(board, surface, pxPerMm);
        BufferedImage known = kept(key);
        return known != null ? known : render(key);
    }

    /**
     * The best picture that can be had without waiting. Where that isn't the one asked for, a finer one is rendered aside
     * and {@code finer} is run, on another thread, when it can be had. Empty only after {@link #close}.
     */
    public Optional<BufferedImage> now(Board board, Surface surface, double pxPerMm, Runnable finer) {
        Key key = key(board, surface, pxPerMm);
        BufferedImage known = kept(key);
        if (known != null) return Optional.of(known);
        if (aside.isShutdown()) return Optional.empty();
        double area = board.uExtent(surface) * board.vExtent(surface);
        Key coarse = key(board, surface, Math.min(pxPerMm, Math.sqrt(COARSE_PIXELS / area)));
        if (coarse.equals(key)) return Optional.of(render(key));
        boolean first;
        synchronized (this) {
            first = wanted.put(key, finer) == null;
        }
        if (first) aside.execute(() -> renderAside(key));
        BufferedImage best = bestOf(board, surface);
        return Optional.of(best != null ? best : render(coarse));
    }

    /** Waits until all that was asked for so far is rendered; for pictures made without a person looking on. */
    public void settle() {
        CompletableFuture.runAsync(() -> {}, aside).join();
    }

    private void renderAside(Key key) {
        try {
            if (kept(key) == null) render(key);
        } finally {
            Runnable tell;
            synchronized (this) {
                tell = wanted.remove(key);
            }
            if (tell != null) tell.run();
        }
    }

    private BufferedImage render(Key key) {
        BufferedImage image = WoodFigure.of(key.board()).image(key.surface(), key.milliPxPerMm() / 1000.0);
        keep(key, image);
        return image;
    }

    private static Key key(Board board, Surface surface, double pxPerMm) {
        double area = board.uExtent(surface) * board.vExtent(surface);
        double scale = Math.min(pxPerMm, Math.sqrt(MOST_PIXELS / area));
        return new Key(board, surface, Math.max(1, (int) Math.round(scale * 1000)));
    }

    private synchronized @Nullable BufferedImage kept(Key key) {
        return kept.get(key);
    }

    private synchronized @Nullable BufferedImage bestOf(Board board, Surface surface) {
        BufferedImage best = null;
        for (Map.Entry<Key, BufferedImage> e : kept.entrySet()) {
            if (!e.getKey().surface().equals(surface) || !e.getKey().board().equals(board)) continue;
            if (best == null || e.getValue().getWidth() > best.getWidth()) best = e.getValue();
        }
        return best;
    }

    private synchronized void keep(Key key, BufferedImage image) {
        BufferedImage old = kept.put(key, image);
        pixels += size(image) - (old == null ? 0 : size(old));
        var oldest = kept.entrySet().iterator();
        while (pixels > mostPixels && kept.size() > 1) {
            Map.Entry<Key, BufferedImage> e = oldest.next();
            if (e.getKey().equals(key)) continue;
            pixels -= size(e.getValue());
            oldest.remove();
        }
    }

    /** How many pixels are kept. */
    synchronized long pixelsKept() {
        return pixels;
    }

    private static long size(BufferedImage image) {
        return (long) image.getWidth() * image.getHeight();
    }

    @Override
    public void close() {
        aside.shutdownNow();
    }
}
