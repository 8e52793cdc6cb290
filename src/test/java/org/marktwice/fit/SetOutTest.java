package org.marktwice.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.marktwice.Fixtures;
import org.marktwice.bench.Action;
import org.marktwice.drawing.AnyJoint;
import org.marktwice.timber.Surface;

/** Which line was struck for which side of which cut. */
class SetOutTest {
    private static final int JOBS = 40;

    /** The porch shelf on true boards, 6 mm longer; in the left upright the housing is at x 204–222 from end-1. */
    private static Laid porchShelf() {
        return Laid.true_(Fixtures.porchShelfDrawing(), 6);
    }

    @ParameterizedTest
    @EnumSource(AnyJoint.Kind.class)
    void whatACarefulHandStrikesIsWhereTheDrawingHasIt(AnyJoint.Kind kind) {
        Random random = new Random(kind.ordinal());
        for (int i = 0; i < JOBS; i++) {
            Laid laid = Laid.true_(AnyJoint.drawing(kind, random), i % 2 == 0 ? 0 : 9)
                    .setsOut();
            for (String board : new String[] {"A", "B"}) {
                SetOut out = laid.setOut(board);
                assertThat(out.marked()).hasSameSizeAs(CutSides.of(laid.placing(board)));
                assertThat(out.marked()).allSatisfy(m -> {
                    assertThat(m.line()).as("%s of %s", m.side(), kind).isNotNull();
                    assertThat(m.off()).isEqualTo(0, within(1e-6));
                    assertThat(m.onItsSurface()).isTrue();
                    assertThat(m.round().stream().map(TrueLine::on))
                            .containsExactlyInAnyOrderElementsOf(m.side().shows());
                });
                assertThat(out.strays()).isEmpty();
            }
        }
    }

    /** On boards that are not true the lines are still read off where the drawing has them, at the arris they were read at. */
    @ParameterizedTest
    @EnumSource(
            value = AnyJoint.Kind.class,
            names = {"THROUGH_HOUSING", "HALVING", "TENON"})
    void onAnyBoardItIsReadOffWhereTheDrawingHasIt(AnyJoint.Kind kind) {
        Random random = new Random(kind.ordinal());
        for (int i = 0; i < JOBS; i++) {
            Laid laid = Laid.any(AnyJoint.drawing(kind, random), random).setsOut();
            assertThat(laid.setOut("A").marked())
                    .allSatisfy(m -> assertThat(m.off()).isEqualTo(0, within(0.05)));
        }
    }

    @Test
    void aHousingHasTwoShouldersAndABottom() {
        SetOut out = porchShelf().setsOut("A").setOut("A");

        assertThat(out.marked("left-housing")).hasSize(3);
        assertThat(out.marked("left-housing").stream().filter(m -> m.side().isSquared()))
                .extracting(m -> m.side().shows().size())
                .containsOnly(3);
        assertThat(out.marked().stream().filter(m -> m.side().isEnd())).hasSize(2);
        assertThat(out.wastes("left-housing")).hasSize(1);
        assertThat(out.isSetOut("left-housing")).isTrue();
    }

    @Test
    void wasteSaysWhichLinesAreMeantHoweverFarOut() {
        // set out from the wrong end: 80 and 98 from end-1
        Laid laid = porchShelf();
        laid.does(line("A", 80)).does(line("A", 98));
        int first = laid.bench().steps() - 1;
        assertThat(laid.setOut("A").isSetOut("left-housing")).isFalse();

        laid.does(new Action.Waste(9, "A", "left-housing", first, first + 1));
        assertThat(laid.setOut("A").marked("left-housing").stream()
                        .filter(m -> m.side().isSquared()))
                .allSatisfy(m -> assertThat(m.off()).isEqualTo(-124, within(1e-6)));
    }

    @Test
    void aLineNearASideIsTakenToBeMeantForIt() {
        SetOut out = porchShelf().does(line("A", 214)).setOut("A");

        assertThat(out.marked("left-housing").stream().filter(m -> m.line() != null))
                .singleElement()
                .satisfies(m -> assertThat(m.off()).isEqualTo(-8, within(1e-6)));
    }

    @Test
    void oneLineIsNotTakenForBothSides() {
        SetOut out = porchShelf().does(line("A", 213)).setOut("A");

        assertThat(out.marked("left-housing").stream().filter(m -> m.line() != null))
                .hasSize(1);
    }

    @Test
    void aLineFarFromEverySideIsAStray() {
        SetOut out = porchShelf().does(line("A", 120)).setOut("A");

        assertThat(out.strays()).hasSize(1);
        assertThat(out.isSetOut("left-housing")).isFalse();
    }

    @Test
    void aLineOnTheWrongSurfaceIsSeenToBe() {
        Laid laid = porchShelf().does(line("A", Surface.FACE_2, 204)).does(line("A", Surface.FACE_2, 222));

        assertThat(laid.setOut("A").marked("left-housing").stream().filter(m -> m.line() != null))
                .hasSize(2)
                .noneMatch(SetOut.Marked::onItsSurface);
    }

    private static Action line(String board, double at) {
        return line(board, Surface.FACE_1, at);
    }

    private static Action line(String board, Surface on, double at) {
        return new Action.Line(
                3,
                board,
                on,
                Surface.EDGE_1,
                new Action.Datum.End(Surface.END_1),
                at,
                null,
                org.marktwice.bench.Marker.KNIFE);
    }
}
