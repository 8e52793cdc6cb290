package org.marktwice.files;

/** Text from elsewhere, fit to be shown: what would break a line, or turn the reading of what follows, is a question mark. */
public final class Printable {
    /**
     * Controls (the second set of them too, by which a terminal can be told what to do), separators of lines and paragraphs;
     * and embeddings, overrides and isolates of the Unicode bidirectional algorithm (UAX 9).
     */
    private static final String UNSEEN = "[\\p{Cc}\\u2028\\u2029\\u202A-\\u202E\\u2066-\\u2069]";

    private Printable() {}

    public static String of(String text) {
        return text.replaceAll(UNSEEN, "?");
    }

    /** The same for a text of several lines. */
    public static String lines(String text) {
        return text.replaceAll("[" + UNSEEN + "&&[^\\n]]", "?");
    }
}
