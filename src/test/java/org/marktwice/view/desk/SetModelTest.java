package org.marktwice.view.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.joml.Vector3d;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.JobAxis;
import org.marktwice.drawing.Joint;
import org.marktwice.scenario.Draft;
import org.marktwice.scenario.DraftPart;
import org.marktwice.scenario.DraftPart.Figure;
import org.marktwice.timber.Board;
import org.marktwice.timber.Knot;
import org.marktwice.timber.Pith;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;
import org.marktwice.timber.Trace;

/** The model behind setting an exercise, without a window. */
class SetModelTest {
    private static DraftPart part(String id, double[] size, double[] at, JobAxis length, JobAxis width) {
        DraftPart part = DraftPart.blank(id).named(id).running(length, width);
        Figure[] figures = Figure.values();
        for (int i = 0; i < 3; i++) part = part.with(figures[i], size[i]).with(figures[3 + i], at[i]);
        return part;
    }

    private static DraftPart side(String id, double left) {
        return part(id, new double[] {300, 120, 18}, new double[] {left, 0, 0}, JobAxis.HIGH, JobAxis.DEEP)
                .marked(List.of(left == 0 ? Direction.RIGHT : Direction.LEFT), List.of(Direction.FRONT));
    }

    private static DraftPart shelf(double left, double length) {
        return part("shelf", new double[] {length, 120, 18}, new double[] {left, 0, 80}, JobAxis.ACROSS, JobAxis.DEEP)
                .marked(List.of(Direction.TOP), List.of(Direction.FRONT));
    }

    private static Draft job() {
        return Draft.BLANK.ofParts(List.of(side("left", 0), side("right", 482), shelf(12, 476)));
    }

    @Test
    void joiningPointsAtTwoPartsAndIsOneStep() {
        SetModel model = new SetModel(job());
        model.beginJoining();
        model.point("left");
        assertThat(model.line()).contains("now point at the part that it takes");
        model.point("left");
        assertThat(model.line()).startsWith("A part can't be joined to itself");
        model.point("right");
        assertThat(model.line()).contains("point at another part");
        model.point("shelf");
        assertThat(model.isJoining()).isFalse();
        assertThat(model.draft().joints())
                .singleElement()
                .isEqualTo(new Joint.ThroughHousing("joint-1", "left", "shelf"));
        model.beginJoining();
        model.point("shelf");
        model.point("left");
        assertThat(model.line()).contains("joined already");
        model.stopJoining();
        model.steps().undo();
        assertThat(model.draft()).isEqualTo(job());
    }

    @Test
    void onlyKindsThatCanBeCutAreOffered() {
        assertThat(JointIdeas.possible(job(), "j", "left", "shelf"))
                .extracting(Joint::kind)
                .startsWith("through-housing")
                .contains("stopped-housing")
                .doesNotContain("butt", "dowelled", "bridle");
        Draft touching = Draft.BLANK.ofParts(List.of(side("left", 0), shelf(18, 400)));
        assertThat(JointIdeas.possible(touching, "j", "left", "shelf"))
                .extracting(Joint::kind)
                .containsExactly("dowelled", "butt");
        assertThat(JointIdeas.refusal(Draft.BLANK.ofParts(List.of(side("left", 0), shelf(40, 400))), "left", "shelf"))
                .contains("do not touch");
    }

    @Test
    void theOppositePartIsTheMirrorImageInTheJob() {
        Draft job = Draft.BLANK.ofParts(List.of(side("Left side", 0), shelf(12, 476)));
        DraftPart opposite = Moving.opposite(job, job.parts().get(0));
        assertThat(opposite.name()).isEqualTo("Right side");
        assertThat(opposite.id()).isEqualTo("right-side");
        assertThat(opposite.figures()).containsEntry(Figure.FROM_LEFT, 470.0);
        assertThat(opposite.faceSide()).containsExactly(Direction.LEFT);
    }

    @ParameterizedTest
    @CsvSource({"100.4, 112", "3.2, 18", "-11, 0", "-5.5, 6", "469, 482"})
    void aDraggedPartGoesToWholeMillimetresOrFlush(double by, double left) {
        Draft moved = Moving.moved(job(), "shelf", new Vector3d(by, 0, 0), 4);
        assertThat(moved.parts().get(2).figures()).containsEntry(Figure.FROM_LEFT, left);
        assertThat(moved.parts().get(2).figures()).containsEntry(Figure.FROM_BOTTOM, 80.0);
    }

    @Test
    void draggingIsNoStepUntilItIsLetGo() {
        SetModel model = new SetModel(job());
        model.move("shelf", job(), new Vector3d(0, 0, 20), false);
        model.move("shelf", job(), new Vector3d(0, 0, 40), false);
        assertThat(model.steps().canUndo()).isFalse();
        assertThat(model.draft().parts().get(2).figures()).containsEntry(Figure.FROM_BOTTOM, 120.0);
        model.move("shelf", job(), new Vector3d(0, 0, 40), true);
        model.steps().undo();
        assertThat(model.draft()).isEqualTo(job());
        assertThat(model.steps().canUndo()).isFalse();
    }

    /** However one goes back and forth, every value is one that was there, and the last one comes back. */
    @Test
    void stepsGoBackAndForthToWhatWasThere() {
        Random random = new Random(5);
        for (int run = 0; run < 50; run++) {
            Steps<Integer> steps = new Steps<>(0);
            for (int i = 0; i < 20; i++) steps.edit(random.nextInt(4));
            int last = steps.now();
            int back = 0;
            while (steps.canUndo()) {
                steps.undo();
                back++;
            }
            assertThat(steps.now()).isZero();
            for (int i = 0; i < back; i++) steps.redo();
            assertThat(steps.now()).isEqualTo(last);
            assertThat(steps.canRedo()).isFalse();
        }
    }

    @Test
    void aKnotComesOutWhereItIsDraggedTo() {
        Board board = BoardEdits.fresh(job());
        Random random = new Random(11);
        for (int i = 0; i < 60; i++) {
            Surface surface = Surface.LONG.get(random.nextInt(4));
            SurfacePoint place = new SurfacePoint(
                    surface, 60 + random.nextDouble() * 180, board.vExtent(surface) * (0.25 + random.nextDouble() / 2));
            Board with = BoardEdits.freshThrough(board, place)
                    .map(k -> BoardEdits.with(board, k))
                    .orElseThrow();
            Optional<Trace> trace = with.traces(surface).stream().findFirst();
            // nearer to the pith than this surface lies, the branch is through it on its way in and out
            assertThat(trace).as(place.toString()).isPresent();
            assertThat(trace.get().middle().u())
                    .isCloseTo(place.u(), within(trace.get().length() / 2 + 0.5));
        }
    }

    @Test
    void thePithTakesItsKnotsWithIt() {
        Board board = BoardEdits.fresh(job());
        Knot knot = BoardEdits.freshThrough(board, new SurfacePoint(Surface.FACE_1, 150, 60))
                .orElseThrow();
        Board knotted = BoardEdits.with(board, knot);
        Board moved = BoardEdits.pith(knotted, new Pith(20, -40));
        assertThat(moved.traces(Surface.FACE_1).get(0).middle().v())
                .isCloseTo(knotted.traces(Surface.FACE_1).get(0).middle().v() - 40, within(0.5));
        assertThat(BoardEdits.without(knotted, knot.id())).isEqualTo(board);
    }

    @Test
    void boardsAreLetteredInTurn() {
        Draft draft = job();
        for (int i = 0; i < 28; i++) {
            List<Board> more = new java.util.ArrayList<>(draft.boards());
            more.add(BoardEdits.fresh(draft));
            draft = draft.onBoards(more);
        }
        assertThat(draft.boards()).extracting(Board::id).startsWith("A", "B").endsWith("Z", "AA", "AB");
        assertThat(draft.boards().get(0).size().length()).isEqualTo(310);
    }
}
