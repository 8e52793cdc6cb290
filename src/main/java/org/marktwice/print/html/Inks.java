package org.marktwice.print.html;

import java.awt.Color;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.marktwice.picture.Ink;
import org.marktwice.picture.Palette;

/** Colours by meaning, as variables of a style sheet that differ with the reader's light. */
final class Inks {
    /** Shadows are pictures, and lie on a light ground as well as on a dark one. */
    private static final Color SHADOW = new Color(0x14, 0x10, 0x0A);

    /** What lies on wood keeps its colours; every other ink is a mark that {@link #spelled} turns into its variable. */
    static final Palette PALETTE = Palette.standingFor(Inks::mark);

    private static final Pattern MARK = Pattern.compile("rgb\\(1,2,(\\d+)\\)");

    private Inks() {}

    private static Color mark(Ink ink) {
        return ink == Ink.SHADOW ? SHADOW : new Color(1, 2, ink.ordinal());
    }

    /** A drawing's colours with the marks spelled as variables. */
    static String spelled(String colour) {
        Matcher m = MARK.matcher(colour);
        return m.matches() ? variable(Ink.values()[Integer.parseInt(m.group(1))]) : colour;
    }

    static String variable(Ink ink) {
        return "var(" + name(ink) + ")";
    }

    private static String name(Ink ink) {
        return "--" + ink.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The variables as a palette has them. */
    static String declared(Palette palette) {
        StringBuilder out = new StringBuilder();
        for (Ink ink : Ink.values()) {
            Color c = palette.of(ink);
            out.append(name(ink))
                    .append(String.format(Locale.ROOT, ":#%02x%02x%02x;", c.getRed(), c.getGreen(), c.getBlue()));
        }
        return out.toString();
    }
}
