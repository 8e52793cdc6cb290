package org.marktwice.files;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class PrintableTest {
    @Test
    void whatWouldBreakALineOrTurnItIsAQuestionMark() {
        assertThat(Printable.of("bell\u0007 \u202Etxt.\u2066x\n")).isEqualTo("bell? ?txt.?x?");
        assertThat(Printable.of("\u009B31m\u0085\u2028\u2029")).isEqualTo("?31m???");
        assertThat(Printable.lines("one\u0007\ntwo\u202E")).isEqualTo("one?\ntwo?");
    }

    @Test
    void lettersOfEveryScriptStayAsTheyAre() {
        String name = "\u05E0\u05D5\u05E2\u05D4 \u05DC\u05D5\u05D9, Jos\u00E9 \u200F1";
        assertThat(Printable.of(name)).isEqualTo(name);
    }
}
