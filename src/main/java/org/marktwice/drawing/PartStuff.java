package org.marktwice.drawing;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** What a part is made of: timber, sheet stuff, or timber that will be rounded or turned. Only timber takes face marks. */
public enum PartStuff {
    TIMBER,
    SHEET,
    SHAPED;

    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Optional<PartStuff> of(String id) {
        return Stream.of(values()).filter(s -> s.id().equals(id)).findFirst();
    }
}
