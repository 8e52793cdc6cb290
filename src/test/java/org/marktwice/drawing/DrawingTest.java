package org.marktwice.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.marktwice.Fixtures.SHELF;
import static org.marktwice.Fixtures.UPRIGHT_LEFT;
import static org.marktwice.Fixtures.UPRIGHT_RIGHT;
import static org.marktwice.Fixtures.timber;

import java.util.List;
import org.joml.Vector3d;
import org.junit.jupiter.api.Test;
import org.marktwice.Fixtures;
import org.marktwice.timber.Box;

class DrawingTest {
    /** A flat frame, 300 × 200 overall: stiles and rails 40 × 20 with corner halvings, all flush in front. */
    static Drawing frame() {
        return Fixtures.drawing(
                new Overall(300, 20, 200),
                List.of(stile("left", 0), stile("right", 260), rail("bottom", 0), rail("top", 160)),
                halving("lb", "left", "bottom"),
                halving("lt", "left", "top"),
                halving("rb", "right", "bottom"),
                halving("rt", "right", "top"));
    }

    private static Part stile(String id, double x) {
        return timber(id, id)
                .size(200, 40, 20)
                .at(x, 0, 0)
                .runs(JobAxis.HIGH, JobAxis.ACROSS)
                .marks(List.of(Direction.FRONT), List.of(x == 0 ? Direction.RIGHT : Direction.LEFT))
                .part();
    }

    private static Part rail(String id, double z) {
        return timber(id, id)
                .size(300, 40, 20)
                .at(0, 0, z)
                .runs(JobAxis.ACROSS, JobAxis.HIGH)
                .marks(List.of(Direction.FRONT), List.of(z == 0 ? Direction.TOP : Direction.BOTTOM))
                .part();
    }

    private static Joint halving(String id, String in, String takes) {
        return new Joint.Halving(id, in, takes, Direction.FRONT);
    }

    @Test
    void aThroughHousingTakesTheWholeOverlapOutOfOnePart() {
        Drawing drawing = Fixtures.porchShelfDrawing();

        assertThat(drawing.cuts(UPRIGHT_LEFT))
                .containsExactly(new Cut("left-housing", List.of(Box.of(12, 0, 80, 18, 120, 98))));
        assertThat(drawing.cuts(UPRIGHT_RIGHT))
                .containsExactly(new Cut("right-housing", List.of(Box.of(482, 0, 80, 488, 120, 98))));
        assertThat(drawing.cuts(SHELF)).isEmpty();
    }

    @Test
    void aRebateTakesTheWholeOverlapOutOfOnePart() {
        Part side = upright("side");
        Part top = timber("top", "Top")
                .size(200, 120, 18)
                .at(6, 0, 282)
                .runs(JobAxis.ACROSS, JobAxis.DEEP)
                .marks(List.of(Direction.BOTTOM), List.of(Direction.FRONT))
                .part();
        Drawing drawing = Fixtures.drawing(
                new Overall(206, 120, 300), List.of(side, top), new Joint.Rebate("corner", "side", "top"));

        assertThat(drawing.cuts(side)).containsExactly(new Cut("corner", List.of(Box.of(6, 0, 282, 18, 120, 300))));
        assertThat(drawing.cuts(top)).isEmpty();
    }

    @Test
    void aButtTakesNothing() {
        Part side = upright("side");
        Part top = timber("top", "Top")
                .size(200, 120, 18)
                .at(0, 0, 300)
                .runs(JobAxis.ACROSS, JobAxis.DEEP)
                .marks(List.of(Direction.BOTTOM), List.of(Direction.FRONT))
                .part();
        Drawing drawing = Fixtures.drawing(
                new Overall(200, 120, 318), List.of(side, top), new Joint.Butt("nailed", "top", "side"));

        assertThat(drawing.cuts(side)).isEmpty();
        assertThat(drawing.cuts(top)).isEmpty();
        assertThat(drawing.overlap(drawing.joints().get(0))).isEmpty();
    }

    private static Part upright(String id) {
        return timber(id, "Side")
                .size(300, 120, 18)
                .runs(JobAxis.HIGH, JobAxis.DEEP)
                .marks(List.of(Direction.RIGHT), List.of(Direction.FRONT))
                .part();
    }

    @Test
    void aHalvingTakesItsSideOfTheOverlapFromOnePartAndTheOtherSideFromTheOther() {
        Drawing frame = frame();

        assertThat(frame.cuts(frame.part("left").orElseThrow()))
                .containsExactly(
                        new Cut("lb", List.of(Box.of(0, 0, 0, 40, 10, 40))),
                        new Cut("lt", List.of(Box.of(0, 0, 160, 40, 10, 200))));
        assertThat(frame.cuts(frame.part("bottom").orElseThrow()))
                .containsExactly(
                        new Cut("lb", List.of(Box.of(0, 10, 0, 40, 20, 40))),
                        new Cut("rb", List.of(Box.of(260, 10, 0, 300, 20, 40))));
    }

    @Test
    void whatTheJointsLeaveFillsTheAssembledJobOnceAndOnlyOnce() {
        // counted cell by cell, 2 × 10 × 2 mm each: no cut of these drawings ends within a cell
        for (Drawing drawing : List.of(frame(), Fixtures.porchShelfDrawing())) {
            Box all = drawing.box();
            int cells = 0;
            for (double x = all.min(0) + 1; x < all.max(0); x += 2) {
                for (double y = all.min(1) + 5; y < all.max(1); y += 10) {
                    for (double z = all.min(2) + 1; z < all.max(2); z += 2) {
                        Vector3d cell = new Vector3d(x, y, z);
                        long drawn = drawing.parts().stream()
                                .filter(p -> p.box().contains(cell, 0))
                                .count();
                        if (left(drawing, cell) != Math.min(1, drawn)) throw new AssertionError("at " + cell);
                        cells++;
                    }
                }
            }
            assertThat(cells).isGreaterThan(20_000);
        }
    }

    private static long left(Drawing drawing, Vector3d cell) {
        return drawing.parts().stream()
                .filter(p -> p.box().contains(cell, 0))
                .filter(p -> drawing.cuts(p).stream()
                        .flatMap(c -> c.boxes().stream())
                        .noneMatch(b -> b.contains(cell, 0)))
                .count();
    }

    @Test
    void bothHalvesOfAHalvingFillItsOverlap() {
        Drawing frame = frame();
        for (Joint joint : frame.joints()) {
            double cut = frame.parts().stream()
                    .flatMap(p -> frame.cuts(p).stream())
                    .filter(c -> c.joint().equals(joint.id()))
                    .flatMap(c -> c.boxes().stream())
                    .mapToDouble(Box::volume)
                    .sum();
            assertThat(cut).isCloseTo(frame.overlap(joint).orElseThrow().volume(), within(1e-6));
        }
    }

    @Test
    void uprightsAreAPairAcrossAndTheShelfHasNone() {
        assertThat(Fixtures.porchShelfDrawing().pairs())
                .containsExactly(new Pair(UPRIGHT_LEFT, UPRIGHT_RIGHT, JobAxis.ACROSS));
    }

    @Test
    void stilesAndRailsOfAFramePairOverTheirWidth() {
        Drawing frame = frame();

        assertThat(frame.pairs())
                .containsExactly(
                        new Pair(frame.parts().get(0), frame.parts().get(1), JobAxis.ACROSS),
                        new Pair(frame.parts().get(2), frame.parts().get(3), JobAxis.HIGH));
    }

    @Test
    void partsWhoseCutsAreNoMirrorImagesAreNoPair() {
        Part lowShelf = timber("low", "Low shelf")
                .size(241, 120, 18)
                .at(12, 0, 80)
                .runs(JobAxis.ACROSS, JobAxis.DEEP)
                .marks(List.of(Direction.TOP), List.of(Direction.FRONT))
                .part();
        Part middle = timber("middle", "Middle")
                .size(300, 120, 18)
                .at(241, 0, 0)
                .runs(JobAxis.HIGH, JobAxis.DEEP)
                .marks(List.of(Direction.LEFT), List.of(Direction.FRONT))
                .part();
        Part highShelf = timber("high", "High shelf")
                .size(241, 120, 18)
                .at(247, 0, 180)
                .runs(JobAxis.ACROSS, JobAxis.DEEP)
                .marks(List.of(Direction.TOP), List.of(Direction.FRONT))
                .part();
        // the low shelf runs into the left upright and the middle, the high one into the middle and the right upright
        Drawing drawing = Fixtures.drawing(
                new Overall(500, 120, 300),
                List.of(UPRIGHT_LEFT, UPRIGHT_RIGHT, middle, lowShelf, highShelf),
                new Joint.ThroughHousing("a", "upright-left", "low"),
                new Joint.ThroughHousing("b", "middle", "low"),
                new Joint.ThroughHousing("c", "middle", "high"),
                new Joint.ThroughHousing("d", "upright-right", "high"));

        assertThat(drawing.pairs()).isEmpty();
    }

    @Test
    void theSameDrawingTwiceIsEqual() {
        assertThat(Fixtures.porchShelfDrawing())
                .isEqualTo(Fixtures.porchShelfDrawing())
                .isNotEqualTo(frame());
        assertThat(Fixtures.porchShelfDrawing()).hasSameHashCodeAs(Fixtures.porchShelfDrawing());
    }
}
