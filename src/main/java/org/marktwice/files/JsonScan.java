package org.marktwice.files;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Reads the plain JSON that nearly every line of an attempt is, with the place of each value, in a third of the time that
 * a general parser takes to tell places. Whatever is out of the ordinary it leaves alone: {@link JsonTree} then reads the
 * text from its beginning, and is the one to refuse it.
 */
final class JsonScan {
    private static final int LONGEST_WORD = 200;
    private static final int MOST_VALUES = 10_000;
    /** So many digits make a whole number that a double holds exactly. */
    static final int EXACT_DIGITS = 15;

    static final double[] TENS = {1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15};

    private final String text;
    private int at;
    private int line;
    private int lineStart;
    private int values;

    private JsonScan(String text, int firstLine) {
        this.text = text;
        this.line = firstLine;
    }

    /** The one value that the text holds; null where it is not of the plain kind. */
    static @Nullable Json parse(String file, String text, int firstLine) {
        JsonScan scan = new JsonScan(text, firstLine);
        scan.space();
        Json root = scan.value(Place.root(file, scan.line, scan.column()), 0);
        scan.space();
        return scan.at == text.length() ? root : null;
    }

    private char peek() {
        return at < text.length() ? text.charAt(at) : 0;
    }

    private int column() {
        return at - lineStart + 1;
    }

    private void space() {
        while (true) {
            char c = peek();
            if (c == '\n') {
                line++;
                lineStart = at + 1;
            } else if (c != ' ' && c != '\t') {
                return;
            }
            at++;
        }
    }

    private @Nullable Json value(Place here, int depth) {
        if (depth > JsonTree.DEEPEST || ++values > MOST_VALUES) return null;
        return switch (peek()) {
            case '{' -> object(here, depth);
            case '[' -> list(here, depth);
            case '"' -> text(here);
            case 't' -> literal("true", new Json.Bool(here, true));
            case 'f' -> literal("false", new Json.Bool(here, false));
            case 'n' -> literal("null", new Json.Null(here));
            default -> number(here);
        };
    }

    private @Nullable Json text(Place here) {
        String word = word();
        if (word == null) return null;
        return new Json.Text(here, word);
    }

    private @Nullable Json literal(String word, Json value) {
        if (!text.startsWith(word, at)) return null;
        at += word.length();
        return endsHere() ? value : null;
    }

    /** Whether a word or number is over: nothing follows that could belong to it. */
    private boolean endsHere() {
        char c = peek();
        return c == ',' || c == '}' || c == ']' || c == ' ' || c == '\n' || at == text.length();
    }

    private @Nullable Json object(Place here, int depth) {
        Map<String, Json.Member> members = new LinkedHashMap<>();
        at++;
        space();
        if (peek() == '}') return closed(new Json.Obj(here, Map.of()));
        while (true) {
            int nameLine = line;
            int nameColumn = column();
            String name = word();
            if (name == null || members.containsKey(name)) return null;
            space();
            if (peek() != ':') return null;
            at++;
            space();
            Json value = value(here.field(name, line, column()), depth + 1);
            if (value == null) return null;
            members.put(name, new Json.Member(here.field(name, nameLine, nameColumn), value));
            space();
            if (peek() == '}') return closed(new Json.Obj(here, Collections.unmodifiableMap(members)));
            if (peek() != ',') return null;
            at++;
            space();
        }
    }

    private @Nullable Json list(Place here, int depth) {
        List<Json> items = new ArrayList<>();
        at++;
        space();
        if (peek() == ']') return closed(new Json.Arr(here, List.of()));
        while (true) {
            Json item = value(here.item(items.size(), line, column()), depth + 1);
            if (item == null) return null;
            items.add(item);
            space();
            if (peek() == ']') return closed(new Json.Arr(here, List.copyOf(items)));
            if (peek() != ',') return null;
            at++;
            space();
        }
    }

    private Json closed(Json value) {
        at++;
        return value;
    }

    /** A text in quotes; null where it has anything in it that is written otherwise than it reads. */
    private @Nullable String word() {
        if (peek() != '"') return null;
        int from = ++at;
        while (at < text.length() && at - from <= LONGEST_WORD) {
            char c = text.charAt(at);
            if (c == '"') return text.substring(from, at++);
            if (c < ' ' || c == '\\') return null;
            at++;
        }
        return null;
    }

    private @Nullable Json number(Place here) {
        int from = at;
        boolean minus = peek() == '-';
        if (minus) at++;
        int whole = at;
        long digits = digits(0);
        if (at == whole || at - whole > 1 && text.charAt(whole) == '0') return null;
        int count = at - whole;
        int decimals = 0;
        if (peek() == '.') {
            int dot = at++;
            digits = digits(digits);
            decimals = at - dot - 1;
            if (decimals == 0) return null;
        }
        if (count + decimals > EXACT_DIGITS || !endsHere()) return null;
        // both exact, so that the quotient is the nearest double, as a parser would have it
        double value = digits / TENS[decimals];
        return new Json.Num(here, text.substring(from, at), minus ? 0 - value : value);
    }

    /** Digits after those that are known; beyond what is exact the sum is of no use. */
    private long digits(long known) {
        long sum = known;
        for (char c = peek(); c >= '0' && c <= '9'; c = peek()) {
            sum = sum * 10 + (c - '0');
            at++;
        }
        return sum;
    }
}
