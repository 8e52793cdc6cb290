package org.marktwice.bench;

import java.util.Locale;

/** What a cut is made with. */
public enum Cutter {
    SAW(1),
    CHISEL(0);

    /** How much wood it turns to dust, millimetres: a fine back saw's kerf is our default; a chisel takes none. */
    private final double kerf;

    Cutter(double kerf) {
        this.kerf = kerf;
    }

    public double kerf() {
        return kerf;
    }

    /** How much of the wood that was to stay goes with a cut on this side of the line, millimetres. */
    public double lost(CutAt side) {
        return switch (side) {
            case WASTE -> 0;
            case LINE -> kerf / 2;
            case KEPT -> Math.max(kerf, CutAt.INTO);
        };
    }

    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }

    public String spoken() {
        return id();
    }
}
