package org.marktwice.timber;

import java.util.Locale;

/** What a board is: solid timber, or sheet stuff, which has no pith, knots or moisture. */
public enum Stuff {
    TIMBER,
    SHEET;

    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }
}
