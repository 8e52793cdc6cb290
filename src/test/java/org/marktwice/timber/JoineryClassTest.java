package org.marktwice.timber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Limits of EN 942:2007, from memory. */
class JoineryClassTest {
    /** On a wide surface the limit in millimetres decides. */
    @ParameterizedTest
    @CsvSource({
        "0, J10",
        "10, J10",
        "10.1, J20",
        "20, J20",
        "20.1, J30",
        "30, J30",
        "30.1, J40",
        "40, J40",
        "40.1, J50",
        "50, J50"
    })
    void onAWideSurface(double knot, JoineryClass expected) {
        assertThat(JoineryClass.of(knot, 200)).contains(expected);
    }

    /** On a narrow one the share of its width: 30 %, for J40 40 %, for J50 50 %. */
    @ParameterizedTest
    @CsvSource({"6, J10", "6.1, J40", "8, J40", "8.1, J50", "10, J50"})
    void onANarrowSurface(double knot, JoineryClass expected) {
        assertThat(JoineryClass.of(knot, 20)).contains(expected);
    }

    @ParameterizedTest
    @CsvSource({"50.1, 200", "10.1, 20"})
    void largerThanAnyClassAllows(double knot, double width) {
        assertThat(JoineryClass.of(knot, width)).isEmpty();
    }

    /** The second knot is the larger, and is measured across. */
    @Test
    void theLargestKnotDecides() {
        Board board = Boards.timber(
                new Size(900, 120, 20),
                new Pith(60, -100),
                new Knot("small", 100, 90, 90, 5, 4, 500, Double.POSITIVE_INFINITY),
                new Knot("large", 200, 90, 30, 30, 12, 500, Double.POSITIVE_INFINITY));
        assertThat(JoineryClass.largestKnot(board, Surface.FACE_1)).isCloseTo(24, within(0.02));
        assertThat(JoineryClass.of(board, Surface.FACE_1)).contains(JoineryClass.J30);
        assertThat(JoineryClass.of(board, Surface.EDGE_1)).as("clear").contains(JoineryClass.J10);
    }

    @ParameterizedTest
    @EnumSource(Surface.class)
    void sheetStuffAndEndsHaveNoClass(Surface surface) {
        assertThat(JoineryClass.of(Boards.sheet(new Size(400, 120, 6)), surface))
                .isEmpty();
        Board timber = Boards.timber(new Size(400, 120, 20), new Pith(60, -100));
        assertThat(JoineryClass.of(timber, surface).isPresent()).isEqualTo(!surface.isEnd());
    }
}
