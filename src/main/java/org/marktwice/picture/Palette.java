package org.marktwice.picture;

import java.awt.Color;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.Function;

/** Colours by meaning. Paper output is always {@link #LIGHT}. */
public final class Palette {
    public static final Palette LIGHT = light();
    public static final Palette DARK = dark();

    private final Map<Ink, Color> colours;
    private final boolean dark;

    private Palette(Map<Ink, Color> colours, boolean dark) {
        this.colours = colours;
        this.dark = dark;
    }

    /**
     * Light wood on a ground whose colours are told apart later: for files that are shown by whichever light their reader
     * has. What lies on wood keeps its colours.
     *
     * @param others the colour that stands for each other ink until then
     */
    public static Palette standingFor(Function<Ink, Color> others) {
        Map<Ink, Color> c = onWood();
        for (Ink ink : Ink.values()) c.computeIfAbsent(ink, others);
        return new Palette(c, false);
    }

    public boolean isDark() {
        return dark;
    }

    public Color of(Ink ink) {
        Color colour = colours.get(ink);
        if (colour == null) throw new IllegalStateException("no colour for " + ink);
        return colour;
    }

    /** The colour let through by so much: 0 = not to be seen, 1 = solid. */
    public Color of(Ink ink, double opacity) {
        Color c = of(ink);
        return new Color(c.getRed(), c.getGreen(), c.getBlue(), (int) Math.round(255 * opacity));
    }

    private static Palette light() {
        Map<Ink, Color> c = onWood();
        c.put(Ink.PAPER, new Color(0xF4F0E7));
        c.put(Ink.PANEL, new Color(0xFBF9F4));
        c.put(Ink.BORDER, new Color(0xDDD6C8));
        c.put(Ink.INK, new Color(0x22303C));
        c.put(Ink.QUIET, new Color(0x5F5E57));
        c.put(Ink.ACTION, new Color(0x2F5D8C));
        c.put(Ink.ON_ACTION, new Color(0xFBF9F4));
        c.put(Ink.SOUND, new Color(0x1F7A6B));
        c.put(Ink.CLOSE, new Color(0x946200));
        c.put(Ink.WRONG, new Color(0xA63D2F));
        c.put(Ink.PART, new Color(0xFFFEFB));
        c.put(Ink.PICKED, new Color(0xD3E0EE));
        c.put(Ink.SHADOW, new Color(0x4A3C28));
        return new Palette(c, false);
    }

    private static Palette dark() {
        Map<Ink, Color> c = onWood();
        c.put(Ink.PAPER, new Color(0x1D2126));
        c.put(Ink.PANEL, new Color(0x262B31));
        c.put(Ink.BORDER, new Color(0x3A4048));
        c.put(Ink.INK, new Color(0xE9E3D6));
        c.put(Ink.QUIET, new Color(0xA9A69C));
        c.put(Ink.ACTION, new Color(0x8DB4DC));
        c.put(Ink.ON_ACTION, new Color(0x1D2126));
        c.put(Ink.SOUND, new Color(0x6CC3B2));
        c.put(Ink.CLOSE, new Color(0xE0B35A));
        c.put(Ink.WRONG, new Color(0xEC9285));
        c.put(Ink.PART, new Color(0x30363D));
        c.put(Ink.PICKED, new Color(0x3B5470));
        c.put(Ink.SHADOW, new Color(0x000000));
        return new Palette(c, true);
    }

    /** The inks that lie on wood or steel, which look the same by any light of the window. */
    private static Map<Ink, Color> onWood() {
        Map<Ink, Color> c = new EnumMap<>(Ink.class);
        c.put(Ink.PENCIL, new Color(0x39393D));
        c.put(Ink.KNIFE, new Color(0x15151A));
        c.put(Ink.STEEL, new Color(0xD9DCDD));
        c.put(Ink.GRADUATION, new Color(0x2A2D30));
        c.put(Ink.TOOL_WOOD, new Color(0x6B3F26));
        c.put(Ink.LIGHT, new Color(0xFFF3B0));
        return c;
    }
}
