package org.marktwice.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class PaletteTest {
    private static final double LEAST = 4.5;

    static List<Arguments> writing() {
        List<Arguments> out = new ArrayList<>();
        for (Palette p : List.of(Palette.LIGHT, Palette.DARK)) {
            for (Ink ground : List.of(Ink.PAPER, Ink.PANEL)) {
                for (Ink ink : List.of(Ink.INK, Ink.QUIET, Ink.ACTION, Ink.SOUND, Ink.CLOSE, Ink.WRONG)) {
                    out.add(Arguments.of(p, ink, ground));
                }
            }
            out.add(Arguments.of(p, Ink.ON_ACTION, Ink.ACTION));
            out.add(Arguments.of(p, Ink.INK, Ink.PART));
            out.add(Arguments.of(p, Ink.INK, Ink.PICKED));
            out.add(Arguments.of(p, Ink.GRADUATION, Ink.STEEL));
        }
        return out;
    }

    @ParameterizedTest(name = "{1} on {2}")
    @MethodSource("writing")
    void textCanBeReadOnItsGround(Palette palette, Ink ink, Ink ground) {
        assertThat(contrast(palette.of(ink), palette.of(ground))).isGreaterThanOrEqualTo(LEAST);
    }

    /** Black on white is 21 and a colour on itself 1, by the definition in WCAG 2.1. */
    @Test
    void theMeasureIsTheStandards() {
        assertThat(contrast(Color.BLACK, Color.WHITE)).isCloseTo(21, within(1e-9));
        assertThat(contrast(Color.RED, Color.RED)).isCloseTo(1, within(1e-9));
        assertThat(contrast(new Color(0x777777), Color.WHITE)).isCloseTo(4.48, within(0.005));
    }

    @ParameterizedTest
    @EnumSource(Ink.class)
    void everyInkHasAColourInBothPalettes(Ink ink) {
        assertThat(Palette.LIGHT.of(ink).getAlpha()).isEqualTo(255);
        assertThat(Palette.DARK.of(ink).getAlpha()).isEqualTo(255);
        assertThat(Palette.DARK.of(ink, 0.5).getAlpha()).isEqualTo(128);
    }

    /** Relative luminance and contrast ratio as WCAG 2.1 defines them. */
    static double contrast(Color a, Color b) {
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
