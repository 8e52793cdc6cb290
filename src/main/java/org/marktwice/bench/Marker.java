package org.marktwice.bench;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** What a line is struck with: a knife line stays, pencil can be rubbed out. */
public enum Marker {
    KNIFE,
    PENCIL;

    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The name in a sentence. */
    public String spoken() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    public static Optional<Marker> of(String id) {
        return Stream.of(values()).filter(v -> v.id().equals(id)).findFirst();
    }
}
