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
        assertThat(Contrast.of(palette.of(ink), palette.of(ground))).isGreaterThanOrEqualTo(Contrast.LEAST);
    }

    /** Black on white is 21 and a colour on itself 1, by the definition in WCAG 2.1. */
    @Test
    void theMeasureIsTheStandards() {
        assertThat(Contrast.of(Color.BLACK, Color.WHITE)).isCloseTo(21, within(1e-9));
        assertThat(Contrast.of(Color.RED, Color.RED)).isCloseTo(1, within(1e-9));
        assertThat(Contrast.of(new Color(0x777777), Color.WHITE)).isCloseTo(4.48, within(0.005));
    }

    @ParameterizedTest
    @EnumSource(Ink.class)
    void everyInkHasAColourInBothPalettes(Ink ink) {
        assertThat(Palette.LIGHT.of(ink).getAlpha()).isEqualTo(255);
        assertThat(Palette.DARK.of(ink).getAlpha()).isEqualTo(255);
        assertThat(Palette.DARK.of(ink, 0.5).getAlpha()).isEqualTo(128);
    }
}
