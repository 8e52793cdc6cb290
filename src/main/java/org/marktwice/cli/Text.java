package org.marktwice.cli;

import java.util.Locale;

/** Plain text for a terminal or a sheet of paper. */
final class Text {
    private static final int WIDTH = 92;

    private Text() {}

    /** As few places as tell it to a hundredth. */
    static String number(double value) {
        String text = String.format(Locale.ROOT, "%.2f", value);
        String plain = text.replaceAll("0+$", "").replaceAll("\\.$", "");
        return plain.equals("-0") ? "0" : plain;
    }

    static String mm(double value) {
        return String.format(Locale.ROOT, "%.1f mm", value);
    }

    /** The text in lines of a readable length; the first begins with {@code lead}, the others are indented to match. */
    static String wrapped(String lead, String text) {
        StringBuilder out = new StringBuilder(lead);
        int column = lead.length();
        boolean start = true;
        for (String word : text.strip().split("\\s+")) {
            if (!start && column + 1 + word.length() > WIDTH) {
                out.append('\n').append(" ".repeat(lead.length()));
                column = lead.length();
                start = true;
            }
            if (!start) {
                out.append(' ');
                column++;
            }
            out.append(word);
            column += word.length();
            start = false;
        }
        return out.toString();
    }

    /** Text on the left, a figure on the right edge. */
    static String ends(String left, String right) {
        return left + " ".repeat(Math.max(2, WIDTH - left.length() - right.length())) + right;
    }

    static String rule() {
        return "─".repeat(WIDTH);
    }

    static String count(int n, String one, String many) {
        return n + " " + (n == 1 ? one : many);
    }
}
