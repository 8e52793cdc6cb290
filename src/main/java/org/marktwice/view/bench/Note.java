package org.marktwice.view.bench;

import org.jspecify.annotations.Nullable;
import org.marktwice.rulebook.Verdict;

/**
 * A line for the learner, with the sign that goes with it.
 *
 * @param words one sentence or two
 */
public record Note(Tone tone, String words) {
    public static final Note SILENT = new Note(Tone.PLAIN, "");

    /** What kind of line it is. What matters carries a sign of its own, so that it never rests on colour alone. */
    public enum Tone {
        PLAIN("", null),
        READ("", null),
        REFUSED("!", null),
        SOUND("✓", Verdict.SOUND),
        CLOSE("~", Verdict.CLOSE),
        /** Written with the cross that the program's font has. */
        WRONG("✗", Verdict.WRONG),
        OPEN("○", Verdict.OPEN);

        private final String sign;
        private final @Nullable Verdict verdict;

        Tone(String sign, @Nullable Verdict verdict) {
            this.sign = sign;
            this.verdict = verdict;
        }

        public String sign() {
            return sign;
        }

        /** The verdict that it tells; null for what is no verdict. */
        public @Nullable Verdict verdict() {
            return verdict;
        }

        static Tone of(Verdict verdict) {
            return switch (verdict) {
                case SOUND -> SOUND;
                case CLOSE -> CLOSE;
                case WRONG -> WRONG;
                case OPEN -> OPEN;
            };
        }
    }

    static Note plain(String words) {
        return new Note(Tone.PLAIN, words);
    }

    static Note read(String words) {
        return new Note(Tone.READ, words);
    }

    static Note refused(String why) {
        return new Note(Tone.REFUSED, why);
    }

    /** As it is shown and read out: sign and words. */
    public String line() {
        return tone.sign().isEmpty() ? words : tone.sign() + " " + words;
    }
}
