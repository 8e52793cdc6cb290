package org.marktwice.timber;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** How a figure is written in a sentence. */
public final class Figures {
    private Figures() {}

    /** At most two decimals, none of them idle: {@code 12}, {@code 0.5}, {@code 1.27}. */
    public static String mm(double value) {
        if (!Double.isFinite(value)) return String.valueOf(value);
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    /** The three sizes of a box: {@code 6 × 120 × 18 mm}. */
    public static String mm(Box box) {
        return mm(box.extent(0)) + " × " + mm(box.extent(1)) + " × " + mm(box.extent(2)) + " mm";
    }
}
