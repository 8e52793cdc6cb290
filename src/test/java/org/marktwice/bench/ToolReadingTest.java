package org.marktwice.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.marktwice.timber.Board;
import org.marktwice.timber.Pith;
import org.marktwice.timber.Seasoned;
import org.marktwice.timber.Shape;
import org.marktwice.timber.Size;
import org.marktwice.timber.SpeciesTable;
import org.marktwice.timber.Stuff;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;

/** Readings are the board's own figures, as finely as a tool tells them. */
class ToolReadingTest {
    private static BoardState board(double moisture, Pith pith, Shape shape) {
        return BoardState.fresh(Board.of(new Board.Facts(
                "A",
                Stuff.TIMBER,
                SpeciesTable.byId("scots-pine").orElseThrow(),
                new Size(400, 120, 20),
                14,
                moisture,
                EnumSet.allOf(Surface.class),
                pith,
                2.5,
                List.of(),
                shape,
                1)));
    }

    private static BoardState machined(Shape shape) {
        return board(14, new Pith(60, -40), shape);
    }

    private static double reads(BoardState state, Tool tool, Surface on, @Nullable Double at) {
        return ToolReading.of(state, new Action.Test(0, "A", tool, on, at)).orElseThrow();
    }

    @ParameterizedTest
    @CsvSource({"0.04, 0", "-0.049, 0", "0.05, 0.1", "0.14, 0.1", "0.16, 0.2", "-0.16, -0.2", "1.25, 1.3", "-1.25, -1.3"
    })
    void gapsAreReadToATenthAndLessThanHalfOfThatIsNoLight(double bow, double reads) {
        BoardState state = machined(new Shape(bow, 0, 0, 0, 0, Map.of()));
        assertThat(reads(state, Tool.STRAIGHT_EDGE, Surface.FACE_1, null)).isEqualTo(reads);
    }

    @ParameterizedTest
    @CsvSource({"63.24, 63", "63.25, 63.5", "63.74, 63.5", "63.75, 64", "0.2, 0"})
    void theRuleIsReadToHalfAMillimetre(double mm, double reads) {
        SurfacePoint from = new SurfacePoint(Surface.FACE_1, 0, 0);
        assertThat(ToolReading.of(from, new SurfacePoint(Surface.FACE_1, mm, 0)))
                .isEqualTo(reads);
    }

    /** The cup of the wood itself, hollow on the bark side as it dries and rounded on the heart side. */
    @Test
    void theStraightEdgeAcrossReadsTheCup() {
        BoardState state = board(8, new Pith(60, -40), Shape.TRUE);
        double cup = Seasoned.now(state.board()).cup(Surface.FACE_1).orElseThrow();
        assertThat(cup).isGreaterThan(0.3);
        assertThat(reads(state, Tool.STRAIGHT_EDGE, Surface.FACE_1, 100.0)).isCloseTo(cup, within(0.0501));
        assertThat(reads(state, Tool.STRAIGHT_EDGE, Surface.FACE_2, 100.0)).isNegative();
    }

    @Test
    void aBoxedHeartHasNoReadingAcross() {
        BoardState state = board(8, new Pith(60, 10), Shape.TRUE);
        assertThat(ToolReading.of(state, new Action.Test(0, "A", Tool.STRAIGHT_EDGE, Surface.FACE_1, 100.0)))
                .isEmpty();
        assertThat(ToolReading.noted(state, new Action.Test(0, "A", Tool.STRAIGHT_EDGE, Surface.FACE_1, 100.0))
                        .reads())
                .isNull();
    }

    @Test
    void windingSticksReadTheRiseOfTheFarCorner() {
        BoardState state = machined(new Shape(0, 0, -0.84, 0, 0, Map.of()));
        assertThat(reads(state, Tool.WINDING_STICKS, Surface.FACE_1, null)).isEqualTo(-0.8);
        assertThat(reads(state, Tool.WINDING_STICKS, Surface.EDGE_1, null)).isEqualTo(-0.1);
    }

    /** tan 0.5° = 0.00873: over 20 mm 0.17, over 120 mm 1.05, and over no more than the blade's 150 mm 1.31. */
    @ParameterizedTest
    @CsvSource({
        "EDGE_1, FACE_1, 0.2",
        "EDGE_1, FACE_2, -0.2",
        "FACE_1, EDGE_1, 1.0",
        "END_2, FACE_1, 0.2",
        "FACE_1, END_2, 1.3",
        "END_2, EDGE_1, 0"
    })
    void theTrySquareReadsTheGapOverItsBladeFromTheStocksSide(Surface on, Surface stock, double reads) {
        BoardState state = machined(new Shape(0, 0, 0, 0, 0, Map.of(Surface.EDGE_1, 0.5, Surface.END_2, 0.5)));
        Double at = on.isEnd() ? null : Double.valueOf(200);
        Action.Test test = new Action.Test(0, "A", Tool.TRY_SQUARE, on, at, stock, null);
        assertThat(ToolReading.of(state, test).orElseThrow()).isEqualTo(reads);
        assertThat(ToolReading.noted(state, test).reads()).isEqualTo(reads);
    }

    @Test
    void theStockBearsOnTheFaceSideUnlessOneSaysOtherwise() {
        BoardState plain = machined(Shape.TRUE);
        Mark side = new Mark(Mark.Kind.FACE_SIDE, Surface.FACE_2, Surface.EDGE_1, 1);
        BoardState marked = plain.marked(List.of(side));
        Action.Test test = new Action.Test(0, "A", Tool.TRY_SQUARE, Surface.EDGE_1, 10.0);
        assertThat(ToolReading.stock(plain, test)).isEqualTo(Surface.FACE_1);
        assertThat(ToolReading.stock(marked, test)).isEqualTo(Surface.FACE_2);
        assertThat(ToolReading.usualStock(marked, Surface.FACE_1)).isEqualTo(Surface.EDGE_1);
        Action.Test said = new Action.Test(0, "A", Tool.TRY_SQUARE, Surface.EDGE_1, 10.0, Surface.FACE_1, null);
        assertThat(ToolReading.stock(marked, said)).isEqualTo(Surface.FACE_1);
    }

    @ParameterizedTest
    @CsvSource({"60, -38, 40", "60, 57, 35", "-30, -40, 50", "60, 10, 0"})
    void theEndGrainTellsHowFarOutsideThePithLies(double y, double z, double reads) {
        BoardState state = board(14, new Pith(y, z), Shape.TRUE);
        assertThat(reads(state, Tool.END_GRAIN, Surface.END_1, null)).isEqualTo(reads);
    }
}
