package org.marktwice.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.marktwice.Fixtures;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Trim;
import org.marktwice.fit.TrueLines;
import org.marktwice.scenario.Scenario;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;

/** What must hold of any walk over the bench; the walks are random, but the same ones each time. */
@ParameterizedTest(name = "seed {0}")
@ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
@java.lang.annotation.Retention(java.lang.annotation.RetentionPolicy.RUNTIME)
@interface Walks {}

class BenchLawsTest {
    private static final Scenario SCENARIO = Fixtures.withAids(Fixtures.porchShelf());
    private static final List<String> BOARDS = List.of("A", "B", "C", "D", "E");
    private static final List<String> PARTS = List.of("upright-left", "upright-right", "shelf", "lid");

    /** The live bench after each step that could be done, the fresh one first. */
    private static List<Bench> walk(int seed) {
        Random random = new Random(seed);
        List<Bench> live = new ArrayList<>(List.of(Bench.of(SCENARIO)));
        int refused = 0;
        for (int i = 0; i < 400; i++) {
            Bench now = live.get(live.size() - 1);
            Action action = any(random, now.steps());
            try {
                live.add(now.after(action));
            } catch (CannotDo e) {
                assertThat(e.getMessage()).isNotBlank().doesNotContain("\n");
                refused++;
            }
        }
        assertThat(live.size()).as("steps done").isGreaterThan(100);
        assertThat(refused).as("actions refused").isGreaterThan(50);
        return live;
    }

    private static Action any(Random r, int steps) {
        String board = pick(r, BOARDS);
        Surface one = pick(r, List.of(Surface.values()));
        Surface other = pick(r, List.of(Surface.values()));
        int step = r.nextInt(steps + 2);
        return switch (r.nextInt(18)) {
            case 0 -> new Action.Measure(steps, board, point(r), point(r));
            case 1 ->
                new Action.Test(steps, board, pick(r, List.of(Tool.values())), one, r.nextBoolean() ? null : 60.0);
            case 2 -> new Action.FaceSide(steps, board, one, other);
            case 3 -> new Action.FaceEdge(steps, board, one, other);
            case 4 -> new Action.Name(steps, board, pick(r, PARTS), point(r));
            case 5 ->
                new Action.Turning(
                        steps,
                        board,
                        Map.of(Surface.FACE_1, direction(r), Surface.EDGE_2, direction(r)),
                        r.nextBoolean() ? null : new Trim(Surface.END_1, r.nextInt(5)));
            case 6 -> new Action.SetAside(steps, board, pick(r, List.of(Reason.values())));
            case 7 ->
                new Action.Line(
                        steps,
                        board,
                        one,
                        other,
                        r.nextBoolean() ? new Action.Datum.End(Surface.END_1) : new Action.Datum.Step(step),
                        (double) r.nextInt(200),
                        null,
                        pick(r, List.of(Marker.values())));
            case 8 -> new Action.Gauge(steps, board, one, other, 1 + r.nextInt(20));
            case 9 -> new Action.Waste(steps, board, "left-housing", step, Math.max(1, step - 1 - r.nextInt(9)));
            case 10 -> new Action.RubOut(steps, step);
            case 11 -> new Action.Redo(steps);
            case 12 ->
                new Action.Bevel(
                        steps,
                        board,
                        one,
                        other,
                        new Action.Datum.End(Surface.END_2),
                        r.nextInt(200),
                        30 + r.nextInt(120),
                        pick(r, List.of(Marker.values())));
            case 13 -> new Action.Cut(steps, board, step, Cutter.SAW, pick(r, List.of(CutAt.values())));
            case 14 ->
                new Action.Cramp(
                        steps,
                        board,
                        pick(r, List.of(Surface.FACE_1, Surface.FACE_2)),
                        pick(r, List.of("A", "C")),
                        pick(r, List.of(Surface.FACE_1, Surface.FACE_2)),
                        Surface.END_1,
                        pick(r, List.of(Surface.END_1, Surface.END_2)));
            case 15 -> new Action.Uncramp(steps, board);
            default -> new Action.Undo(steps);
        };
    }

    private static <T> T pick(Random r, List<T> from) {
        return from.get(r.nextInt(from.size()));
    }

    private static Direction direction(Random r) {
        return pick(r, List.of(Direction.values()));
    }

    private static SurfacePoint point(Random r) {
        return new SurfacePoint(pick(r, List.of(Surface.values())), r.nextInt(130), r.nextInt(20));
    }

    private static Attempt attempt(Bench bench) {
        return Acts.attempt(bench.log().toArray(Action[]::new));
    }

    private static void same(Bench found, Bench wanted) {
        assertThat(found.boards()).isEqualTo(wanted.boards());
        assertThat(found.log()).isEqualTo(wanted.log());
        assertThat(found.canUndo()).isEqualTo(wanted.canUndo());
        assertThat(found.canRedo()).isEqualTo(wanted.canRedo());
        assertThat(found.handedIn()).isEqualTo(wanted.handedIn());
    }

    @Walks
    void replayingTheLogGivesTheLiveState(int seed) throws CannotDo {
        List<Bench> live = walk(seed);
        Bench last = live.get(live.size() - 1);

        same(Bench.after(SCENARIO, attempt(last)), last);
    }

    @Walks
    void aPrefixOfALogIsALog(int seed) throws CannotDo {
        List<Bench> live = walk(seed);
        Attempt whole = attempt(live.get(live.size() - 1));

        for (int steps = 0; steps < live.size(); steps++) {
            same(Bench.after(SCENARIO, whole.upTo(steps)), live.get(steps));
        }
    }

    @Walks
    void everyLineLiesSomewhereAndAPairIsAPairFromEitherSide(int seed) {
        for (Bench bench : walk(seed)) {
            for (BoardState state : bench.boards()) {
                long struck = state.struck().stream()
                        .filter(d -> !(d.action() instanceof Action.Waste || d.action() instanceof Action.Cut))
                        .count();
                assertThat(TrueLines.of(bench, state).all())
                        .hasSize((int) struck)
                        .allMatch(l -> Double.isFinite(l.low()) && Double.isFinite(l.high()));
                String id = state.board().id();
                bench.paired(id)
                        .ifPresent(p -> assertThat(bench.paired(p.there()).orElseThrow())
                                .isEqualTo(p.fromTheOther())
                                .extracting(Pairing::there)
                                .isEqualTo(id));
            }
        }
    }

    @Walks
    void undoThenRedoLeavesEverythingAsItWas(int seed) throws CannotDo {
        for (Bench bench : walk(seed)) {
            if (!bench.canUndo()) continue;
            Bench back = bench.after(new Action.Undo(0));
            Bench again = back.after(new Action.Redo(0));

            assertThat(again.boards()).isEqualTo(bench.boards());
            assertThat(again.canUndo()).isEqualTo(bench.canUndo());
            assertThat(again.canRedo()).isEqualTo(bench.canRedo());
            assertThat(again.after(new Action.Undo(0)).boards()).isEqualTo(back.boards());
        }
    }

    @Walks
    void undoingEverythingLeavesTheBoardsUntouched(int seed) throws CannotDo {
        List<Bench> live = walk(seed);
        Bench bench = live.get(live.size() - 1);
        while (bench.canUndo()) bench = bench.after(new Action.Undo(0));

        assertThat(bench.boards()).isEqualTo(Bench.of(SCENARIO).boards());
    }

    @Walks
    void aRefusedActionLeavesTheBenchAsItWas(int seed) {
        Random random = new Random(seed);
        for (Bench bench : walk(seed)) {
            List<BoardState> before = bench.boards();
            int steps = bench.steps();
            try {
                bench.after(any(random, steps));
            } catch (CannotDo e) {
                assertThat(e.step()).isEmpty();
            }
            assertThat(bench.boards()).isEqualTo(before);
            assertThat(bench.steps()).isEqualTo(steps);
        }
    }
}
