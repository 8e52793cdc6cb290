package org.marktwice.timber;

import java.util.Locale;

/** Where on the board a knot shows: terms of EN 844-9. */
public enum KnotPlace {
    FACE("face knot"),
    EDGE("edge knot"),
    /** Cut through by an arris between a face and an edge. */
    ARRIS("arris knot"),
    /** On the end grain, where timber isn't graded. */
    END("knot on the end");

    /** Nearer to an arris than this, in millimetres, an outline has reached it. */
    private static final double REACHED = 1e-6;

    private final String spoken;

    KnotPlace(String spoken) {
        this.spoken = spoken;
    }

    public static KnotPlace of(Board board, Trace trace) {
        Surface surface = trace.surface();
        if (surface.isEnd()) return END;
        double extent = board.vExtent(surface);
        boolean arris = trace.outline().stream().anyMatch(p -> p.v() <= REACHED || p.v() >= extent - REACHED);
        if (arris) return ARRIS;
        return surface.isFace() ? FACE : EDGE;
    }

    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** In a sentence. */
    public String spoken() {
        return spoken;
    }
}
