package org.marktwice.bench;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** What a surface is proved with, or read by. */
public enum Tool {
    STRAIGHT_EDGE,
    WINDING_STICKS,
    TRY_SQUARE,
    /** No tool but the eye: the arcs on an end, carried on to the pith. */
    END_GRAIN;

    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The name in a sentence. */
    public String spoken() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    public static Optional<Tool> of(String id) {
        return Stream.of(values()).filter(v -> v.id().equals(id)).findFirst();
    }
}
