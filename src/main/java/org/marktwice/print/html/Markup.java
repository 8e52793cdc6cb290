package org.marktwice.print.html;

import java.util.ArrayDeque;
import java.util.Deque;
import org.jspecify.annotations.Nullable;

/** Elements written one after another. Text and attributes are escaped here, so that nothing else has to think of it. */
final class Markup {
    private final StringBuilder out = new StringBuilder();
    private final Deque<String> open = new ArrayDeque<>();

    /** @param attributes names and values in turn; a null value leaves the attribute out, an empty name too */
    Markup open(String element, @Nullable String... attributes) {
        tag(element, attributes);
        open.push(element);
        return this;
    }

    /** An element that has no content, such as {@code meta}. */
    Markup empty(String element, @Nullable String... attributes) {
        tag(element, attributes);
        return this;
    }

    private void tag(String element, @Nullable String... attributes) {
        out.append('<').append(element);
        for (int i = 0; i < attributes.length; i += 2) {
            String value = attributes[i + 1];
            if (value != null)
                out.append(' ')
                        .append(attributes[i])
                        .append("=\"")
                        .append(escaped(value))
                        .append('"');
        }
        out.append('>');
    }

    /** Closes the element opened last. */
    Markup close() {
        out.append("</").append(open.pop()).append('>');
        return this;
    }

    Markup line() {
        out.append('\n');
        return this;
    }

    Markup text(String text) {
        out.append(escaped(text));
        return this;
    }

    /** Text that somebody typed: kept from turning round the text beside it. */
    Markup typed(String text) {
        return open("bdi").text(text).close();
    }

    /** An element with text in it. */
    Markup element(String element, String text, @Nullable String... attributes) {
        return open(element, attributes).text(text).close();
    }

    /** What is markup already; never what somebody typed. */
    Markup raw(String markup) {
        out.append(markup);
        return this;
    }

    @Override
    public String toString() {
        if (!open.isEmpty()) throw new IllegalStateException("not closed: " + open);
        return out.toString();
    }

    /** What would be markup is spelled, and what no document may hold is replaced. */
    static String escaped(String text) {
        StringBuilder out = new StringBuilder(text.length() + 16);
        text.codePoints().forEach(c -> {
            switch (c) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '"' -> out.append("&quot;");
                case '\'' -> out.append("&#39;");
                default -> out.appendCodePoint(isAllowed(c) ? c : 0xFFFD);
            }
        });
        return out.toString();
    }

    private static boolean isAllowed(int c) {
        boolean control = Character.isISOControl(c) && c != '\n' && c != '\t';
        boolean half = c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE;
        return !control && !half && (c & 0xFFFE) != 0xFFFE && !(c >= 0xFDD0 && c <= 0xFDEF);
    }
}
