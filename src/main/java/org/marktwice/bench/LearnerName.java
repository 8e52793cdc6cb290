package org.marktwice.bench;

import java.text.Normalizer;
import java.util.Locale;

/** What a learner is called, and when two names are the same learner's. */
public final class LearnerName {
    private LearnerName() {}

    /**
     * The same for one learner however the name was typed: capitals, blanks and the way in which an accent is written
     * (Unicode, normal form C) don't count.
     */
    public static String key(String name) {
        return Normalizer.normalize(name, Normalizer.Form.NFC)
                .strip()
                .replaceAll("\\s+", " ")
                .toLowerCase(Locale.ROOT);
    }
}
