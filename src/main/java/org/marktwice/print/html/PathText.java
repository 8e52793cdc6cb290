package org.marktwice.print.html;

import java.util.regex.Pattern;

/** A path's data written short: to a hundredth, each place told from the one before, which leaves few figures to write. */
final class PathText {
    private static final Pattern LETTER = Pattern.compile("[A-Z]");
    private static final int FINE = 100;

    private final StringBuilder out = new StringBuilder();
    private char before = ' ';
    /** The place that is drawn from, and where its line began, hundredths. */
    private long x;

    private long y;
    private long startX;
    private long startY;

    private PathText() {}

    /** @param data absolute places after the letters M, L, Q, C and Z, apart by spaces, as Batik writes them */
    static String shortened(String data) {
        PathText path = new PathText();
        String[] words = LETTER.matcher(data).replaceAll("$0 ").trim().split("\\s+");
        for (int i = 0; i < words.length; ) {
            char command = words[i++].charAt(0);
            int pairs = switch (command) {
                case 'M', 'L' -> 1;
                case 'Q' -> 2;
                case 'C' -> 3;
                case 'Z' -> 0;
                default -> throw new IllegalArgumentException("no path: " + data);
            };
            path.segment(command, words, i, pairs);
            i += 2 * pairs;
        }
        return path.out.toString();
    }

    private void segment(char command, String[] words, int from, int pairs) {
        if (command == 'Z') {
            out.append('z');
            before = 'z';
            x = startX;
            y = startY;
            return;
        }
        char letter = Character.toLowerCase(command);
        if (letter != before) out.append(letter);
        boolean first = letter != before;
        before = letter;
        long toX = x;
        long toY = y;
        for (int pair = 0; pair < pairs; pair++) {
            toX = hundredths(words[from + 2 * pair]);
            toY = hundredths(words[from + 2 * pair + 1]);
            number(toX - x, first && pair == 0);
            number(toY - y, false);
        }
        x = toX;
        y = toY;
        if (command == 'M') {
            startX = x;
            startY = y;
            // what follows a place moved to would be read as a line
            before = ' ';
        }
    }

    private static long hundredths(String number) {
        return Math.round(Double.parseDouble(number) * FINE);
    }

    /** A minus tells figures apart by itself, and nothing before a point is nought. */
    private void number(long hundredths, boolean first) {
        if (hundredths < 0) out.append('-');
        else if (!first) out.append(' ');
        long size = Math.abs(hundredths);
        long whole = size / FINE;
        long part = size % FINE;
        if (whole > 0 || part == 0) out.append(whole);
        if (part > 0) out.append('.').append(part / 10);
        if (part % 10 > 0) out.append(part % 10);
    }
}
