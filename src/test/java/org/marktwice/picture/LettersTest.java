package org.marktwice.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Font;
import java.awt.geom.Rectangle2D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.marktwice.print.Faces;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;

/** No letter that the program's font lacks comes out as an empty box. */
class LettersTest {
    private static final Font FONT = Faces.regular();

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Žofie Nováková",
                "Øyvind Håkonsen",
                "Groß",
                "Ελένη Παπαδοπούλου",
                "Ирина Соколова",
                "Çağla Yıldız",
                "x ± 0.5 – ‘a’"
            })
    void whatTheFontHasIsLeftAsItIs(String name) {
        assertThat(Letters.shown(name, FONT)).isEqualTo(name);
    }

    @ParameterizedTest
    @CsvSource({
        "王小明, [3 Han letters]",
        "Lin 王, Lin [1 Han letter]",
        "ليلى, [4 Arabic letters]",
        "Mo 🪚🪵 Smith, Mo [2 signs] Smith",
        "佐藤さくら, [2 Han letters][3 Hiragana letters]"
    })
    void whatItLacksIsSaidInWords(String name, String shown) {
        assertThat(Letters.shown(name, FONT)).isEqualTo(shown);
    }

    @Test
    void anAccentThatStandsByItselfIsPutOnItsLetter() {
        assertThat(Letters.shown("Z\u030Cofie", FONT)).isEqualTo("Žofie");
    }

    @ParameterizedTest
    @ValueSource(strings = {"Øre", "Łuk", "Straße", "Ορθοστάτης", "左侧板"})
    void aNameWrittenByHandLeavesSomethingForEveryLetter(String name) {
        var frame = SurfaceFrame.of(Surface.FACE_1, Samples.pine());
        Rectangle2D written = Handwriting.written(name, frame, new SurfacePoint(Surface.FACE_1, 150, 60))
                .getBounds2D();
        assertThat(written.getWidth()).isGreaterThan(4.0 * name.length());
    }
}
