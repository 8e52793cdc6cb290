package org.marktwice.rulebook;

import java.util.Locale;

/** What a finding comes to. Always shown with its sign and its word, never by colour alone. */
public enum Verdict {
    SOUND('✓'),
    CLOSE('~'),
    WRONG('✕'),
    OPEN('○');

    private final char sign;

    Verdict(char sign) {
        this.sign = sign;
    }

    public char sign() {
        return sign;
    }

    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }
}
