package org.marktwice.feedback;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.marktwice.bench.Action;
import org.marktwice.bench.CutAt;
import org.marktwice.bench.Cutter;
import org.marktwice.bench.Marker;
import org.marktwice.bench.Reason;
import org.marktwice.bench.Tool;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Trim;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;
import org.marktwice.view.Jobs;

class ActionWordsTest {
    private static final SurfacePoint HERE = new SurfacePoint(Surface.FACE_1, 10, 20.5);

    static Stream<Arguments> actions() {
        return Stream.of(
                Arguments.of(
                        new Action.Measure(0, "A", HERE, new SurfacePoint(Surface.FACE_1, 70, 20.5)),
                        "Board A: measured from face 1 (10, 20.5) to face 1 (70, 20.5)"),
                Arguments.of(
                        new Action.Test(0, "A", Tool.STRAIGHT_EDGE, Surface.FACE_2, 150.0),
                        "Board A: tried face 2 at 150 mm from end 1 with the straight edge"),
                Arguments.of(
                        new Action.Test(0, "A", Tool.TRY_SQUARE, Surface.EDGE_1, null),
                        "Board A: tried edge 1 with the try square"),
                Arguments.of(
                        new Action.Test(0, "A", Tool.TRY_SQUARE, Surface.EDGE_1, 80.0, Surface.FACE_2, 0.2),
                        "Board A: tried edge 1 at 80 mm from end 1 with the try square, stock on face 2"),
                Arguments.of(
                        new Action.Test(0, "A", Tool.END_GRAIN, Surface.END_1, null),
                        "Board A: read the end grain of end 1"),
                Arguments.of(
                        new Action.FaceSide(0, "A", Surface.FACE_1, Surface.EDGE_1),
                        "Board A: face side marked on face 1, pointing to edge 1"),
                Arguments.of(
                        new Action.FaceEdge(0, "A", Surface.EDGE_1, Surface.FACE_1),
                        "Board A: face edge marked on edge 1, pointing to face 1"),
                Arguments.of(new Action.Name(0, "A", "shelf", HERE), "Board A: named “Shelf” on face 1 (10, 20.5)"),
                Arguments.of(
                        new Action.Turning(
                                0,
                                "A",
                                Map.of(Surface.FACE_1, Direction.TOP, Surface.EDGE_1, Direction.FRONT),
                                new Trim(Surface.END_1, 6)),
                        "Board A: turned: face 1 up, edge 1 to the front, 6 mm off end 1"),
                Arguments.of(new Action.SetAside(0, "A", Reason.CUPPED), "Board A: set aside, cupped"),
                Arguments.of(
                        new Action.Line(
                                0,
                                "A",
                                Surface.FACE_1,
                                Surface.EDGE_1,
                                new Action.Datum.End(Surface.END_1),
                                80.0,
                                null,
                                Marker.KNIFE),
                        "Board A: knife line squared across face 1, 80 mm from end 1, stock on edge 1"),
                Arguments.of(
                        new Action.Gauge(0, "A", Surface.EDGE_1, Surface.FACE_1, 6),
                        "Board A: gauged 6 mm on edge 1, fence on face 1"),
                Arguments.of(
                        new Action.Bevel(
                                0,
                                "A",
                                Surface.FACE_1,
                                Surface.EDGE_1,
                                new Action.Datum.End(Surface.END_2),
                                50,
                                80.5,
                                Marker.PENCIL),
                        "Board A: pencil line at 80.5° across face 1, 50 mm from end 2, stock on edge 1"),
                Arguments.of(
                        new Action.Cramp(0, "A", Surface.FACE_1, "C", Surface.FACE_1, Surface.END_1, Surface.END_2),
                        "Board A: cramped to board C, face 1 against its face 1, end 1 level with its end 2"),
                Arguments.of(
                        new Action.Cut(0, "A", 7, Cutter.SAW, CutAt.WASTE),
                        "Board A: sawn on the waste side of the line of step 7"),
                Arguments.of(new Action.Uncramp(0, "A"), "Board A: taken out of the cramp"),
                Arguments.of(new Action.RubOut(0, 3), "Rubbed out the pencil of step 3"),
                Arguments.of(new Action.Undo(0), "Took the last step back"),
                Arguments.of(new Action.Redo(0), "Did it again after all"),
                Arguments.of(new Action.Estimate(0, Set.of()), "Expected to lose no marks"),
                Arguments.of(
                        new Action.Estimate(0, Set.of("handed-pair", "rule-of-another-time")),
                        "Expected to lose marks on: Opposite parts are a pair of hands; rule-of-another-time"),
                Arguments.of(new Action.HandIn(0), "Handed in"));
    }

    @ParameterizedTest
    @MethodSource("actions")
    void everyActionIsSaidInWords(Action action, String words) {
        assertThat(new ActionWords(Jobs.oneBoard()).of(action)).isEqualTo(words);
    }
}
