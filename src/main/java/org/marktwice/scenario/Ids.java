package org.marktwice.scenario;

import java.util.Locale;

/** How a constant is written in files: lower case, with hyphens. */
final class Ids {
    private Ids() {}

    static String of(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
