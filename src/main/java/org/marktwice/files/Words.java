package org.marktwice.files;

import java.util.Collection;
import java.util.Optional;
import java.util.stream.Collectors;

/** How messages quote what a file says: short, on one line, without anything that a terminal would act on. */
final class Words {
    private static final int SHOWN = 60;
    /** Further from a known word than this, a guess would mislead. */
    private static final int NEAR = 3;

    private Words() {}

    /** The text in quotes, cut where it is long. */
    static String quoted(String text) {
        return '"' + printable(text.length() > SHOWN ? text.substring(0, SHOWN) + "…" : text) + '"';
    }

    /** See {@link Printable}. */
    static String printable(String text) {
        return Printable.of(text);
    }

    /** The words in a row, the last after "or". */
    static String oneOf(Collection<String> words) {
        String row = String.join(", ", words);
        int last = row.lastIndexOf(", ");
        return last < 0 ? row : row.substring(0, last) + " or " + row.substring(last + 2);
    }

    /** The words in a row, the last after "and". */
    static String allOf(Collection<String> words) {
        String row = words.stream().map(Words::printable).collect(Collectors.joining(", "));
        int last = row.lastIndexOf(", ");
        return last < 0 ? row : row.substring(0, last) + " and " + row.substring(last + 2);
    }

    /** The known word that was most likely meant; of equals the first. */
    static Optional<String> nearest(String word, Collection<String> known) {
        if (word.length() > SHOWN) return Optional.empty();
        String best = null;
        int least = Math.min(NEAR, Math.max(1, word.length() / 2)) + 1;
        for (String candidate : known) {
            int distance = distance(word, candidate);
            if (distance < least) {
                least = distance;
                best = candidate;
            }
        }
        return Optional.ofNullable(best);
    }

    /** Levenshtein's distance: the fewest letters put in, taken out or changed. */
    private static int distance(String one, String other) {
        int[] before = new int[other.length() + 1];
        for (int j = 0; j <= other.length(); j++) before[j] = j;
        for (int i = 1; i <= one.length(); i++) {
            int[] now = new int[other.length() + 1];
            now[0] = i;
            for (int j = 1; j <= other.length(); j++) {
                int change = one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1;
                now[j] = Math.min(Math.min(now[j - 1], before[j]) + 1, before[j - 1] + change);
            }
            before = now;
        }
        return before[other.length()];
    }
}
