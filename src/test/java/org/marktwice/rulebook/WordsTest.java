package org.marktwice.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.marktwice.Fixtures;
import org.marktwice.bench.Reason;
import org.marktwice.bench.Tool;
import org.marktwice.drawing.Direction;
import org.marktwice.timber.Surface;

class WordsTest {
    private static final Words WORDS = new Words(Fixtures.porchShelfDrawing(), null);

    static List<Arguments> values() {
        return List.of(
                Arguments.of(9.96, "mm", "10 mm"),
                Arguments.of(3.25, "mm", "3.3 mm"),
                Arguments.of(-0.04, "mm", "0 mm"),
                Arguments.of(12, "mm", "12 mm"),
                Arguments.of(0.5, "degrees", "0.5 degrees"),
                Arguments.of(1.0, "degrees", "1 degree"),
                Arguments.of(11.0, "percent", "11 %"),
                Arguments.of(75.0, "ratio", "1 in 75"),
                Arguments.of(1, "count board|boards", "1 board"),
                Arguments.of(0, "count board|boards", "no boards"),
                Arguments.of(2, "plural is|are", "are"),
                Arguments.of(Surface.FACE_1, "surface", "face 1"),
                Arguments.of("edge-2", "surface", "edge 2"),
                Arguments.of(List.of(Surface.FACE_1, Surface.EDGE_2), "surface", "face 1 and edge 2"),
                Arguments.of(List.of(Surface.EDGE_1, Surface.EDGE_2), "surface-or", "edge 1 or edge 2"),
                Arguments.of("A", "board", "board A"),
                Arguments.of(List.of("A", "B", "C"), "board", "boards A, B and C"),
                Arguments.of(List.of("A"), "board", "board A"),
                Arguments.of("k1", "knot", "knot 1"),
                Arguments.of("shelf", "part", "Shelf"),
                Arguments.of(List.of("upright-left", "shelf"), "parts-or", "Left upright or Shelf"),
                Arguments.of("left-housing", "joint", "the housing for the Shelf"),
                Arguments.of(Direction.FRONT, "dir", "to the front"),
                Arguments.of("top", "dir", "up"),
                Arguments.of(List.of(Direction.LEFT, Direction.BOTTOM), "dir", "to the left or down"),
                Arguments.of(Direction.BOTTOM, "place", "at the bottom"),
                Arguments.of(Tool.STRAIGHT_EDGE, "tool", "straight-edge"),
                Arguments.of("winding-sticks", "tool", "winding sticks"),
                Arguments.of("try-square", "tool", "try-square"),
                Arguments.of(Reason.CUPPED, "reason", "cupped"),
                Arguments.of(List.of("along", "wind"), "trial", "the straight-edge along and the winding sticks"));
    }

    @ParameterizedTest(name = "{0} as {1} → {2}")
    @MethodSource("values")
    void valuesReadAsInASentence(Object value, String format, String reads) {
        assertThat(WORDS.of(value, format)).isEqualTo(reads);
    }

    @Test
    void aJointIsToldByThePartAtItsOtherSide() {
        assertThat(new Words(Fixtures.porchShelfDrawing(), "upright-left").of("left-housing", "joint"))
                .isEqualTo("the housing for the Shelf");
        assertThat(new Words(Fixtures.porchShelfDrawing(), "shelf").of("left-housing", "joint"))
                .isEqualTo("the housing in the Left upright");
    }

    @ParameterizedTest(name = "{0} as {1}")
    @CsvSource({"x, mm", "up, surface", "up, dir", "nobody, part", "nothing, joint", "A, sideways", "nap, reason"})
    void whatDoesNotSuitIsAnErrorOfTheProgram(String value, String format) {
        assertThatIllegalArgumentException().isThrownBy(() -> WORDS.of(value, format));
    }

    @Test
    void figuresThatAreNoNumbersAreRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> WORDS.of(Double.NaN, "mm"));
        assertThatIllegalArgumentException().isThrownBy(() -> WORDS.of(Double.POSITIVE_INFINITY, "mm"));
    }

    @Test
    void gapsAreFilledAndSentencesBeginWithACapital() {
        String filled = Template.fill(
                "{b:board} is {x:mm} long. {on:surface} has {n:count knot|knots}.",
                Map.of("b", "A", "x", 300.04, "on", Surface.FACE_2, "n", 1),
                WORDS);

        assertThat(filled).isEqualTo("Board A is 300 mm long. Face 2 has 1 knot.");
    }

    @ParameterizedTest
    @CsvSource({"{b:board} and {x:mm}", "{b:board} and {b:mm}", "{b:board", "{b board}"})
    void aGapIsNeverShown(String template) {
        assertThatIllegalArgumentException().isThrownBy(() -> Template.fill(template, Map.of("b", "A"), WORDS));
    }
}
