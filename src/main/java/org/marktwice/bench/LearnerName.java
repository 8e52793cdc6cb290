package org.marktwice.bench;

import java.text.Normalizer;
import java.util.Locale;

/** What a learner is called, and when two names are the same learner's. */
public final class LearnerName {
    private LearnerName() {}

    /**
     * The same for one learner however the name was typed: capitals, blanks of every kind, the way in which an accent is
     * written (Unicode, normal form C) and what isn't seen, such as marks of the reading direction, don't count.
     */
    public static String key(String name) {
        return Normalizer.normalize(name, Normalizer.Form.NFC)
                .replaceAll("\\p{Cf}", "")
                .replaceAll("[\\s\\p{Z}]+", " ")
                .strip()
                .toLowerCase(Locale.ROOT);
    }
}
