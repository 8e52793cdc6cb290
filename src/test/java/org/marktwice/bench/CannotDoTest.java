package org.marktwice.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.junit.jupiter.params.provider.Arguments.arguments;
import static org.marktwice.bench.Acts.aside;
import static org.marktwice.bench.Acts.bench;
import static org.marktwice.bench.Acts.faceEdge;
import static org.marktwice.bench.Acts.faceSide;
import static org.marktwice.bench.Acts.gauge;
import static org.marktwice.bench.Acts.line;
import static org.marktwice.bench.Acts.lineFrom;
import static org.marktwice.bench.Acts.lineMate;
import static org.marktwice.bench.Acts.measure;
import static org.marktwice.bench.Acts.name;
import static org.marktwice.bench.Acts.redo;
import static org.marktwice.bench.Acts.rub;
import static org.marktwice.bench.Acts.test;
import static org.marktwice.bench.Acts.turn;
import static org.marktwice.bench.Acts.undo;
import static org.marktwice.bench.Acts.waste;
import static org.marktwice.timber.Surface.EDGE_1;
import static org.marktwice.timber.Surface.EDGE_2;
import static org.marktwice.timber.Surface.END_1;
import static org.marktwice.timber.Surface.END_2;
import static org.marktwice.timber.Surface.FACE_1;
import static org.marktwice.timber.Surface.FACE_2;

import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.marktwice.Fixtures;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Trim;

/** What is refused on a bench with these steps done, and in which words. */
class CannotDoTest {
    private static final Bench BENCH = bench(
            Fixtures.withAids(Fixtures.porchShelf()),
            faceSide("A", FACE_1, EDGE_1), // 1
            name("A", "upright-left"), // 2
            line("A", FACE_1, EDGE_1, END_2, 86, Marker.KNIFE), // 3
            gauge("A", EDGE_1, FACE_1, 6), // 4
            turn("A", Direction.RIGHT, Direction.FRONT), // 5
            line("A", FACE_1, EDGE_1, END_2, 200, Marker.PENCIL), // 6
            rub(6), // 7
            aside("C"), // 8
            measure("A", FACE_1, 0, 0, 10, 0), // 9
            faceEdge("A", EDGE_1, FACE_1), // 10
            undo(), // 11
            name("B", "upright-right"), // 12
            name("B", "upright-left")); // 13

    static Stream<Arguments> refused() {
        return Stream.of(
                arguments(name("Q", "shelf"), "Board Q is not on the rack"),
                arguments(name("A", "lid"), "The drawing has no part \"lid\""),
                arguments(
                        name("A", "shelf", FACE_1, 313, 10),
                        "313 mm lies off face 1 of board A, which measures 312 mm along the grain"),
                arguments(
                        name("A", "shelf", END_1, 30, -0.5),
                        "-0.5 mm lies off end 1 of board A, which measures 18 mm through the thickness"),
                arguments(
                        measure("A", FACE_1, 0, 0, 10, 121),
                        "121 mm lies off face 1 of board A, which measures 120 mm across the width"),
                arguments(
                        measure("A", FACE_1, Double.NaN, 0, 10, 12),
                        "NaN mm lies off face 1 of board A, which measures 312 mm along the grain"),
                arguments(
                        test("A", Tool.STRAIGHT_EDGE, FACE_2, 400.0),
                        "400 mm lies off face 2 of board A, which measures 312 mm along the grain"),
                arguments(
                        test("A", Tool.WINDING_STICKS, END_1, null),
                        "Winding sticks need the length of a board: try a face or an edge"),
                arguments(test("A", Tool.TRY_SQUARE, END_1, 4.0), "An end has no position along the grain"),
                arguments(
                        test("A", Tool.END_GRAIN, FACE_1, null),
                        "The arcs of the end grain show on an end: look at end 1 or end 2"),
                arguments(
                        new Action.Test(1, "A", Tool.TRY_SQUARE, FACE_1, 100.0, FACE_2, null),
                        "Face 1 and face 2 share no arris: the stock of the square bears on an adjoining surface"),
                arguments(
                        new Action.Test(1, "A", Tool.STRAIGHT_EDGE, FACE_1, 100.0, EDGE_1, null),
                        "Only a try-square has a stock that bears on a surface"),
                arguments(
                        faceSide("A", FACE_1, FACE_2),
                        "Face 1 and face 2 share no arris: a mark points at an adjoining surface"),
                arguments(
                        faceSide("A", FACE_1, FACE_1),
                        "Face 1 and face 1 share no arris: a mark points at an adjoining surface"),
                arguments(faceSide("A", END_1, FACE_1), "A face side mark goes on a long surface, not on an end"),
                arguments(faceEdge("A", END_2, FACE_1), "A face edge mark goes on a long surface, not on an end"),
                arguments(faceSide("A", FACE_1, EDGE_1), "Face 1 of board A carries that mark already"),
                arguments(
                        turn("A", Direction.RIGHT, Direction.LEFT),
                        "No board lies so: face 1 cannot look right while edge 1 looks left"),
                arguments(
                        new Action.Turning(1, "A", Map.of(FACE_1, Direction.LEFT, FACE_2, Direction.FRONT), null),
                        "No board lies so: face 1 cannot look left while face 2 looks front"),
                arguments(
                        new Action.Turning(1, "A", Map.of(FACE_1, Direction.LEFT), null),
                        "A turn is named by where two adjoining surfaces look"),
                arguments(
                        turn("A", Direction.RIGHT, Direction.FRONT, new Trim(END_1, 12.5)),
                        "Board A has 12 mm to spare for Left upright: 12.5 mm cannot come off"),
                arguments(
                        turn("D", Direction.TOP, Direction.FRONT, new Trim(END_1, 480)),
                        "Board D is 480 mm long: 480 mm cannot come off"),
                arguments(
                        turn("C", Direction.RIGHT, Direction.FRONT),
                        "Board C is set aside: name it to take it up again"),
                arguments(
                        line("C", FACE_1, EDGE_1, END_1, 20, Marker.KNIFE),
                        "Board C is set aside: name it to take it up again"),
                arguments(
                        line("A", END_1, FACE_1, END_1, 20, Marker.KNIFE),
                        "A line is squared across a long surface; use the gauge on an end"),
                arguments(
                        line("A", FACE_1, END_1, END_1, 20, Marker.KNIFE),
                        "The stock of the square bears on a face or an edge, not on an end"),
                arguments(
                        line("A", FACE_1, FACE_2, END_1, 20, Marker.KNIFE),
                        "Face 1 and face 2 share no arris: the stock of the square bears on an adjoining surface"),
                arguments(
                        line("A", FACE_1, EDGE_1, EDGE_2, 20, Marker.KNIFE),
                        "A distance runs from an end or from a line, not from edge 2"),
                arguments(
                        line("A", FACE_1, EDGE_1, END_1, 313, Marker.KNIFE),
                        "That line would lie 313 mm from end 1; board A is 312 mm long"),
                arguments(
                        line("A", FACE_1, EDGE_1, END_2, 320, Marker.KNIFE),
                        "That line would lie -8 mm from end 1; board A is 312 mm long"),
                // step 3 lies 86 from end 2, so 226 from end 1, and distances go on towards end 1
                arguments(lineFrom("A", 3, 230), "That line would lie -4 mm from end 1; board A is 312 mm long"),
                arguments(lineFrom("A", 3, -90), "That line would lie 316 mm from end 1; board A is 312 mm long"),
                arguments(lineFrom("A", 14, 10), "There is no step 14 yet"),
                arguments(lineFrom("A", 0, 10), "There is no step 0 yet"),
                arguments(lineFrom("A", 1, 10), "Step 1 is no line"),
                arguments(lineFrom("A", 4, 10), "Step 4 is no line squared across the board"),
                arguments(lineFrom("A", 6, 10), "The line of step 6 is no longer on board A"),
                arguments(lineFrom("B", 3, 10), "The line of step 3 is on board A, not on board B"),
                arguments(lineMate("A", 3, "Q"), "Board Q is not on the rack"),
                arguments(lineMate("A", 3, "A"), "Board A cannot be its own mate"),
                arguments(
                        new Action.Line(1, "A", FACE_1, EDGE_1, new Action.Datum.End(END_1), null, null, Marker.KNIFE),
                        "A line needs either a distance or a mate, not both"),
                arguments(
                        new Action.Line(1, "A", FACE_1, EDGE_1, new Action.Datum.End(END_1), 5.0, "D", Marker.KNIFE),
                        "A line needs either a distance or a mate, not both"),
                arguments(
                        new Action.Bevel(1, "A", FACE_1, EDGE_1, new Action.Datum.End(END_1), 5.0, 3, Marker.KNIFE),
                        "A bevel is set between 5 and 175 degrees"),
                arguments(
                        new Action.Bevel(1, "A", END_1, FACE_1, new Action.Datum.End(END_1), 5.0, 45, Marker.KNIFE),
                        "A line is squared across a long surface; use the gauge on an end"),
                arguments(new Action.Cut(1, "A", 1, Cutter.SAW, CutAt.WASTE), "Step 1 is no line"),
                arguments(
                        new Action.Cut(1, "B", 3, Cutter.SAW, CutAt.WASTE),
                        "The line of step 3 is on board A, not on board B"),
                arguments(
                        gauge("A", EDGE_1, EDGE_2, 6),
                        "Edge 1 and edge 2 share no arris: the fence bears on an adjoining surface"),
                arguments(
                        gauge("A", EDGE_1, FACE_1, 18),
                        "Set to 18 mm the gauge misses edge 1 of board A, which measures 18 mm through the thickness"),
                arguments(
                        gauge("A", EDGE_1, FACE_1, 0),
                        "Set to 0 mm the gauge misses edge 1 of board A, which measures 18 mm through the thickness"),
                arguments(waste("A", "hinge", 3, 4), "The drawing has no joint \"hinge\""),
                arguments(waste("A", "left-housing", 3, 3), "Waste lies between two lines, not at one"),
                arguments(waste("A", "left-housing", 3, 9), "Step 9 is no line"),
                arguments(waste("A", "left-housing", 3, 6), "The line of step 6 is no longer on board A"),
                arguments(rub(20), "There is no step 20 yet"),
                arguments(rub(3), "A knife line is cut in: it cannot be rubbed out"),
                arguments(rub(4), "A gauge line is scratched in: it cannot be rubbed out"),
                arguments(rub(5), "Step 5 left no pencil to rub out"),
                arguments(rub(7), "Step 7 left no pencil to rub out"),
                arguments(rub(8), "Step 8 left no pencil to rub out"),
                arguments(rub(9), "Step 9 left no pencil to rub out"),
                arguments(rub(11), "Step 11 left no pencil to rub out"),
                arguments(rub(6), "The pencil of step 6 is no longer on board A"),
                arguments(rub(10), "Step 10 was taken back: nothing of it is left"),
                arguments(rub(12), "The pencil of step 12 is no longer on board B"),
                arguments(redo(), "There is nothing to do again"));
    }

    @ParameterizedTest(name = "{1}")
    @MethodSource("refused")
    void isRefusedWithAReason(Action action, String why) {
        assertThat(catchThrowableOfType(CannotDo.class, () -> BENCH.after(action)))
                .hasMessage(why);
    }

    @Test
    void nothingCanBeTakenBackBeforeAnythingIsDone() {
        Bench fresh = Bench.of(Fixtures.withAids(Fixtures.porchShelf()));

        assertThat(catchThrowableOfType(CannotDo.class, () -> fresh.after(undo())))
                .hasMessage("There is nothing to take back");
        assertThat(fresh.canUndo()).isFalse();
    }

    @Test
    void undoIsAnAidThatTheExerciseGrants() {
        Bench bench = bench(Fixtures.porchShelf(), name("A", "shelf"));

        assertThat(bench.canUndo()).isFalse();
        assertThat(catchThrowableOfType(CannotDo.class, () -> bench.after(undo())))
                .hasMessage("This exercise has no undo: rub out the pencil, or do it again");
    }

    @Test
    void trimmingAPartialMillimetreOfAllThereIsToSpareIsPossible() throws CannotDo {
        assertThat(BENCH.after(turn("A", Direction.RIGHT, Direction.FRONT, new Trim(END_2, 12)))
                        .steps())
                .isEqualTo(14);
    }
}
