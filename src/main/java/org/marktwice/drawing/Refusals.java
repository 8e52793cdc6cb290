package org.marktwice.drawing;

import java.util.Locale;

/** How refusals are worded. */
final class Refusals {
    private Refusals() {}

    static DrawingRefused refused(String where, String format, Object... figures) {
        return new DrawingRefused(where, String.format(Locale.ROOT, format, figures));
    }
}
