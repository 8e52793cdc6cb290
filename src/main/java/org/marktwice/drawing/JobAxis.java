package org.marktwice.drawing;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** An axis of the assembled job: across = X, deep = Y, high = Z; its ordinal is the axis number. */
public enum JobAxis {
    ACROSS,
    DEEP,
    HIGH;

    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Optional<JobAxis> of(String id) {
        return Stream.of(values()).filter(a -> a.id().equals(id)).findFirst();
    }
}
