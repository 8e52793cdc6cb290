package org.marktwice.bench;

import java.util.Locale;

/** On which side of its line a cut runs. */
public enum CutAt {
    /** In the waste, just leaving the line. */
    WASTE("on the waste side of the line"),
    /** Along the line, which goes with it. */
    LINE("on the line"),
    /** In the wood that was to stay. */
    KEPT("on the side that stays");

    /** As far into the wood that was to stay a chisel set beyond the line goes, millimetres; our default. */
    static final double INTO = 0.5;

    private final String spoken;

    CutAt(String spoken) {
        this.spoken = spoken;
    }

    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }

    public String spoken() {
        return spoken;
    }
}
