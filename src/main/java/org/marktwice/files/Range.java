package org.marktwice.files;

import java.math.BigDecimal;

/**
 * The numbers that are taken.
 *
 * @param above whether {@code least} itself is left out
 * @param below whether {@code most} itself is left out
 */
record Range(double least, double most, boolean above, boolean below) {
    /** Farther than this nothing of a workshop's job lies, millimetres. */
    private static final double FAR = 100_000;

    static final Range SIZE = new Range(0, FAR, true, false);
    static final Range POSITION = of(-FAR, FAR);
    static final Range DISTANCE = of(0, FAR);
    /** Degrees that a sliding bevel is set to. */
    static final Range BEVEL = of(5, 175);

    static final Range PERCENT = of(0, 100);
    /** Seconds: more than a year. */
    static final Range TIME = of(0, 1e8);

    static Range of(double least, double most) {
        return new Range(least, most, false, false);
    }

    boolean contains(double value) {
        return (above ? value > least : value >= least) && (below ? value < most : value <= most);
    }

    String spoken() {
        String from = above ? "above " : "from ";
        String to = below ? " and below " : above ? " up to " : " to ";
        return "a number " + from + plain(least) + to + plain(most);
    }

    private static String plain(double value) {
        return new BigDecimal(value).stripTrailingZeros().toPlainString();
    }
}
