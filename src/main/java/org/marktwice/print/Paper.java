package org.marktwice.print;

import java.util.Locale;

/** Sizes of paper. */
public enum Paper {
    /** ISO 216. */
    A4(210, 297),
    /** As used in North America. */
    LETTER(215.9, 279.4);

    private static final double POINTS_PER_MM = 72 / 25.4;

    private final double shortMm;
    private final double longMm;

    Paper(double shortMm, double longMm) {
        this.shortMm = shortMm;
        this.longMm = longMm;
    }

    /** Points for millimetres on the paper. */
    public static double points(double mm) {
        return mm * POINTS_PER_MM;
    }

    public double width(boolean landscape) {
        return points(landscape ? longMm : shortMm);
    }

    public double height(boolean landscape) {
        return points(landscape ? shortMm : longMm);
    }

    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }
}
