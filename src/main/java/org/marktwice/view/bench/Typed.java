package org.marktwice.view.bench;

import java.util.OptionalDouble;

/** A figure typed while a tool is in the hand: digits, one decimal point or comma, and a backspace. */
final class Typed {
    private static final int MOST = 7;
    private final StringBuilder text = new StringBuilder();

    /** Whether the character meant something. */
    boolean type(char c) {
        if (c == '\b') {
            if (text.length() == 0) return false;
            text.setLength(text.length() - 1);
            return true;
        }
        char plain = c == ',' ? '.' : c;
        boolean point = plain == '.' && text.indexOf(".") < 0;
        if (!point && (plain < '0' || plain > '9') || text.length() >= MOST) return false;
        text.append(plain);
        return true;
    }

    void clear() {
        text.setLength(0);
    }

    boolean isEmpty() {
        return text.length() == 0;
    }

    /** What it comes to; empty where there is no figure yet. */
    OptionalDouble value() {
        boolean digits = text.chars().anyMatch(Character::isDigit);
        return digits ? OptionalDouble.of(Double.parseDouble("0" + text)) : OptionalDouble.empty();
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
