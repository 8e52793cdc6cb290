package org.marktwice.drawing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import org.marktwice.timber.Box;

/** How refusals are worded. */
final class Refusals {
    private Refusals() {}

    static DrawingRefused refused(String where, String format, Object... figures) {
        return new DrawingRefused(where, String.format(Locale.ROOT, format, figures));
    }

    /** A figure as one reads it out: at most two decimals, none of them idle. */
    static String mm(double value) {
        if (!Double.isFinite(value)) return String.valueOf(value);
        return BigDecimal.valueOf(value)
                .setScale(2, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }

    /** The three sizes of a box. */
    static String mm(Box box) {
        return mm(box.extent(0)) + " × " + mm(box.extent(1)) + " × " + mm(box.extent(2)) + " mm";
    }
}
