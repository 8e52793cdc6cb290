package org.marktwice.picture;

import java.awt.Font;
import java.lang.Character.UnicodeScript;
import java.text.Normalizer;
import java.util.Locale;

/**
 * Text in the letters that a font has. What it lacks is said in words, {@code [3 Han letters]}, and doesn't come out as boxes
 * that say nothing; who reads it knows at least what to write in by hand.
 */
public final class Letters {
    private Letters() {}

    /** Letters with accents as one sign each, since marks that stand by themselves are not set over their letters. */
    public static String shown(String text, Font font) {
        String whole = Normalizer.isNormalized(text, Normalizer.Form.NFC)
                ? text
                : Normalizer.normalize(text, Normalizer.Form.NFC);
        return font.canDisplayUpTo(whole) < 0 ? whole : said(whole, font);
    }

    private static String said(String text, Font font) {
        StringBuilder all = new StringBuilder();
        int i = 0;
        while (i < text.length()) {
            int letter = text.codePointAt(i);
            if (font.canDisplay(letter)) {
                all.appendCodePoint(letter);
                i += Character.charCount(letter);
                continue;
            }
            UnicodeScript script = script(letter);
            int n = 0;
            while (i < text.length() && lacks(text.codePointAt(i), script, font)) {
                i += Character.charCount(text.codePointAt(i));
                n++;
            }
            all.append(words(n, script));
        }
        return all.toString();
    }

    private static boolean lacks(int letter, UnicodeScript script, Font font) {
        return !font.canDisplay(letter) && script(letter) == script;
    }

    /** What belongs to no script, or to the letter before it, is a sign. */
    private static UnicodeScript script(int letter) {
        UnicodeScript script = UnicodeScript.of(letter);
        return script == UnicodeScript.INHERITED || script == UnicodeScript.UNKNOWN ? UnicodeScript.COMMON : script;
    }

    private static String words(int n, UnicodeScript script) {
        if (script == UnicodeScript.COMMON) return n == 1 ? "[1 sign]" : "[" + n + " signs]";
        String name = script.name().charAt(0)
                + script.name().substring(1).toLowerCase(Locale.ROOT).replace('_', ' ');
        return "[" + n + " " + name + (n == 1 ? " letter]" : " letters]");
    }
}
