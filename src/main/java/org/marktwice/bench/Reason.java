package org.marktwice.bench;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** Why a board is set aside. */
public enum Reason {
    KNOT_IN_EVERY_TURN,
    CUPPED,
    WRONG_SIZE,
    NOT_NEEDED;

    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The name in a sentence. */
    public String spoken() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    public static Optional<Reason> of(String id) {
        return Stream.of(values()).filter(v -> v.id().equals(id)).findFirst();
    }
}
