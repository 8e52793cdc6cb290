package org.marktwice.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.marktwice.bench.Acts.aside;
import static org.marktwice.bench.Acts.bench;
import static org.marktwice.bench.Acts.faceEdge;
import static org.marktwice.bench.Acts.faceSide;
import static org.marktwice.bench.Acts.gauge;
import static org.marktwice.bench.Acts.handIn;
import static org.marktwice.bench.Acts.line;
import static org.marktwice.bench.Acts.measure;
import static org.marktwice.bench.Acts.name;
import static org.marktwice.bench.Acts.redo;
import static org.marktwice.bench.Acts.rub;
import static org.marktwice.bench.Acts.turn;
import static org.marktwice.bench.Acts.undo;
import static org.marktwice.bench.Acts.waste;
import static org.marktwice.timber.Surface.EDGE_1;
import static org.marktwice.timber.Surface.EDGE_2;
import static org.marktwice.timber.Surface.END_1;
import static org.marktwice.timber.Surface.END_2;
import static org.marktwice.timber.Surface.FACE_1;
import static org.marktwice.timber.Surface.FACE_2;

import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.marktwice.Fixtures;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Placing;
import org.marktwice.drawing.Trim;
import org.marktwice.drawing.Turn;
import org.marktwice.scenario.Scenario;

class BenchTest {
    private static final Scenario SHELF = Fixtures.porchShelf();
    private static final Scenario WITH_UNDO = Fixtures.withAids(SHELF);

    @Test
    void beforeAnythingIsDoneTheBoardsLieOnTheRackUntouched() {
        Bench bench = Bench.of(SHELF);

        assertThat(bench.boards())
                .isEqualTo(SHELF.boards().stream().map(BoardState::fresh).toList());
        assertThat(bench.steps()).isZero();
        assertThat(bench.handedIn()).isFalse();
    }

    @Test
    void aMarkCarriesItsStep() {
        Bench bench = bench(SHELF, faceSide("A", FACE_1, EDGE_1), faceEdge("A", EDGE_1, FACE_1));

        assertThat(bench.board("A").marks())
                .containsExactly(
                        new Mark(Mark.Kind.FACE_SIDE, FACE_1, EDGE_1, 1),
                        new Mark(Mark.Kind.FACE_EDGE, EDGE_1, FACE_1, 2));
    }

    @Test
    void aSecondFaceSideIsAThirdMarkUntilItIsRubbedOut() {
        Bench three = bench(
                SHELF, faceSide("A", FACE_1, EDGE_1), faceEdge("A", EDGE_1, FACE_1), faceSide("A", FACE_2, EDGE_1));
        Bench two = bench(
                SHELF,
                faceSide("A", FACE_1, EDGE_1),
                faceEdge("A", EDGE_1, FACE_1),
                faceSide("A", FACE_2, EDGE_1),
                rub(1));

        assertThat(three.board("A").marks()).hasSize(3);
        assertThat(three.board("A").faceSide()).isEmpty();
        assertThat(two.board("A").faceSide()).contains(new Mark(Mark.Kind.FACE_SIDE, FACE_2, EDGE_1, 3));
    }

    @Test
    void aNewNameOrTurnReplacesTheOneBefore() {
        Bench bench = bench(
                SHELF,
                name("A", "upright-left"),
                turn("A", Direction.RIGHT, Direction.FRONT),
                name("A", "upright-right"),
                turn("A", Direction.LEFT, Direction.FRONT));

        assertThat(bench.board("A").named().orElseThrow().part()).isEqualTo("upright-right");
        assertThat(bench.board("A").named().orElseThrow().step()).isEqualTo(3);
        assertThat(bench.board("A").turned().orElseThrow().step()).isEqualTo(4);
        assertThat(bench.board("A").turned().orElseThrow().turn().of(FACE_1)).isEqualTo(Direction.LEFT);
    }

    @Test
    void settingAsideClearsNameAndTurnAndNamingTakesTheBoardUpAgain() {
        Bench away = bench(SHELF, name("A", "upright-left"), turn("A", Direction.RIGHT, Direction.FRONT), aside("A"));
        Bench back = bench(SHELF, name("A", "upright-left"), aside("A"), name("A", "upright-right"));

        assertThat(away.board("A").setAside()).contains(new BoardState.Aside(3, Reason.NOT_NEEDED));
        assertThat(away.board("A").named()).isEmpty();
        assertThat(away.board("A").turned()).isEmpty();
        assertThat(away.namedAs(Fixtures.UPRIGHT_LEFT)).isEmpty();
        assertThat(back.board("A").setAside()).isEmpty();
        assertThat(back.namedAs(Fixtures.UPRIGHT_RIGHT)).containsExactly(back.board("A"));
    }

    @Test
    void twoBoardsMayCarryTheSameName() {
        Bench bench = bench(SHELF, name("B", "upright-left"), name("A", "upright-left"));

        assertThat(bench.namedAs(Fixtures.UPRIGHT_LEFT)).containsExactly(bench.board("A"), bench.board("B"));
    }

    @Test
    void rubbingOutTakesAwayPencilOfEveryKind() {
        Bench bench = bench(
                SHELF,
                faceSide("A", FACE_1, EDGE_1),
                name("A", "upright-left"),
                line("A", FACE_1, EDGE_1, END_2, 86, Marker.PENCIL),
                line("A", FACE_1, EDGE_1, END_2, 104, Marker.KNIFE),
                waste("A", "left-housing", 3, 4),
                rub(1),
                rub(2),
                rub(5),
                rub(3));

        assertThat(bench.board("A").marks()).isEmpty();
        assertThat(bench.board("A").named()).isEmpty();
        assertThat(bench.board("A").struck())
                .singleElement()
                .satisfies(d -> assertThat(d.step()).isEqualTo(4));
    }

    @Test
    void measuringAndTestingAreKept() {
        Bench bench =
                bench(SHELF, measure("A", FACE_1, 0, 60, 71, 60), Acts.test("A", Tool.STRAIGHT_EDGE, FACE_1, 150.0));

        assertThat(bench.board("A").measurements())
                .extracting(BoardState.Done::step)
                .containsExactly(1);
        assertThat(bench.board("A").tests()).extracting(BoardState.Done::step).containsExactly(2);
    }

    @Test
    void undoTakesBackTheLatestThatStillCountsAndRedoRestoresItWithItsStep() {
        Bench bench = bench(WITH_UNDO, faceSide("A", FACE_1, EDGE_1), gauge("A", EDGE_1, FACE_1, 6), undo());
        assertThat(bench.board("A").struck()).isEmpty();
        assertThat(bench.counts(2)).isFalse();

        Bench both = bench(
                WITH_UNDO,
                faceSide("A", FACE_1, EDGE_1),
                gauge("A", EDGE_1, FACE_1, 6),
                undo(),
                undo(),
                redo(),
                redo());
        assertThat(both.steps()).isEqualTo(6);
        assertThat(both.board("A").marks()).extracting(Mark::step).containsExactly(1);
        assertThat(both.board("A").struck()).extracting(BoardState.Done::step).containsExactly(2);
        assertThat(both.canRedo()).isFalse();
    }

    @Test
    void undoBringsBackWhatWasRubbedOut() {
        Bench bench = bench(WITH_UNDO, faceSide("A", FACE_1, EDGE_1), rub(1), undo());

        assertThat(bench.board("A").faceSide()).isPresent();
    }

    @Test
    void aNewActionEndsWhatCouldBeDoneAgain() {
        Bench bench = bench(WITH_UNDO, name("A", "shelf"), undo(), name("B", "shelf"));

        assertThat(bench.canRedo()).isFalse();
        assertThat(bench.board("A").named()).isEmpty();
    }

    @Test
    void whatWasLastExpectedIsTheEstimate() {
        Action first = new Action.Estimate(1, Set.of("handed-pair"));
        Action second = new Action.Estimate(2, Set.of());

        assertThat(Bench.of(SHELF).estimate()).isEmpty();
        assertThat(bench(SHELF, first).estimate()).contains(Set.of("handed-pair"));
        assertThat(bench(SHELF, first, second).estimate()).contains(Set.of());
        assertThat(bench(WITH_UNDO, first, second, undo()).estimate()).contains(Set.of("handed-pair"));
    }

    @Test
    void afterHandInNothingCanBeDoneOrTakenBack() {
        Bench bench = bench(WITH_UNDO, name("A", "shelf"), handIn());

        assertThat(bench.handedIn()).isTrue();
        assertThat(bench.canUndo()).isFalse();
        for (Action action : List.of(undo(), redo(), handIn(), name("B", "shelf"), rub(1))) {
            assertThat(catchThrowableOfType(CannotDo.class, () -> bench.after(action)))
                    .hasMessage("Already handed in");
        }
    }

    @Test
    void anAttemptThatCannotBeDoneNamesItsStep() {
        Attempt attempt = Acts.attempt(name("A", "shelf"), rub(1), rub(1), handIn());

        CannotDo e = catchThrowableOfType(CannotDo.class, () -> Bench.after(SHELF, attempt));

        assertThat(e).hasMessage("step 3: The pencil of step 1 is no longer on board A");
        assertThat(e.step()).isEqualTo(OptionalInt.of(3));
        assertThat(e.why()).isEqualTo("The pencil of step 1 is no longer on board A");
    }

    @Test
    void aBoardNamedAndTurnedIsPlaced() {
        Bench bench = bench(
                SHELF, name("A", "upright-left"), turn("A", Direction.RIGHT, Direction.FRONT, new Trim(END_1, 6)));

        Turn turn =
                Turn.facing(FACE_1, Direction.RIGHT, EDGE_1, Direction.FRONT).orElseThrow();
        assertThat(bench.placing(bench.board("A")))
                .contains(new Placing(
                        SHELF.drawing(),
                        Fixtures.UPRIGHT_LEFT,
                        SHELF.board("A").orElseThrow(),
                        turn,
                        new Trim(END_1, 6)));
    }

    @Test
    void aBoardThatIsNotBothNamedAndTurnedOrLiesOtherwiseIsNotPlaced() {
        for (Bench bench : List.of(
                bench(SHELF, name("A", "upright-left")),
                bench(SHELF, turn("A", Direction.RIGHT, Direction.FRONT)),
                // on its edge, and across the job: an upright stands
                bench(SHELF, name("A", "upright-left"), turn("A", Direction.FRONT, Direction.LEFT)),
                bench(SHELF, name("A", "upright-left"), turn("A", Direction.TOP, Direction.FRONT)),
                // too short for the shelf
                bench(SHELF, name("A", "shelf"), turn("A", Direction.TOP, Direction.FRONT)),
                // turned with 12 mm off, then named as a part that leaves nothing to come off
                bench(SHELF, turn("A", Direction.TOP, Direction.FRONT, new Trim(END_2, 12)), name("A", "shelf")))) {
            assertThat(bench.placing(bench.board("A"))).isEmpty();
        }
    }

    @Test
    void slipsOfTheTradeStayPossible() {
        Bench bench = bench(
                SHELF,
                faceSide("A", EDGE_1, FACE_1), // a face side on an edge
                faceEdge("A", FACE_1, EDGE_2), // a face edge on a face
                faceSide("A", EDGE_2, FACE_1), // on a sawn surface, and one mark too many
                faceSide("B", FACE_1, END_1), // towards an end
                name("A", "shelf"), // too short
                name("D", "upright-left"), // far too long
                line("A", FACE_2, EDGE_2, END_1, 10, Marker.PENCIL), // from the back edge
                gauge("A", EDGE_1, FACE_2, 6), // from the back
                aside("B"));

        assertThat(bench.steps()).isEqualTo(9);
    }
}
