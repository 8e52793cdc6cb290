package org.marktwice.timber;

import java.util.List;
import java.util.Optional;

/** The species the program knows, read once from {@code species.csv} beside this class. */
public final class SpeciesTable {
    private SpeciesTable() {}

    public static List<Species> all() {
        throw new UnsupportedOperationException();
    }

    public static Optional<Species> byId(String id) {
        return all().stream().filter(s -> s.id().equals(id)).findFirst();
    }
}
