package org.marktwice.picture;

import java.awt.Color;

/** How well a colour can be read on another, as WCAG 2.1 measures it. */
public final class Contrast {
    /** What WCAG 2.1 asks of text, at the least (success criterion 1.4.3, level AA). */
    public static final double LEAST = 4.5;

    private Contrast() {}

    /** Relative luminance and contrast ratio as WCAG 2.1 defines them: from 1 to 21. */
    public static double of(Color a, Color b) {
        double one = luminance(a);
        double other = luminance(b);
        return (Math.max(one, other) + 0.05) / (Math.min(one, other) + 0.05);
    }

    private static double luminance(Color c) {
        return 0.2126 * linear(c.getRed()) + 0.7152 * linear(c.getGreen()) + 0.0722 * linear(c.getBlue());
    }

    private static double linear(int channel) {
        double s = channel / 255.0;
        return s <= 0.03928 ? s / 12.92 : Math.pow((s + 0.055) / 1.055, 2.4);
    }
}
