package org.marktwice.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.marktwice.bench.Action;
import org.marktwice.bench.BoardState;
import org.marktwice.bench.Marker;
import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;

/** A board of 312 × 120 × 18; the other board is 17.6 thick. */
class StruckTest {
    private final Board board = Samples.pine();

    private List<Struck> struck(Action.OnBoard... actions) {
        List<BoardState.Done<? extends Action.OnBoard>> done = new ArrayList<>();
        for (int i = 0; i < actions.length; i++) done.add(new BoardState.Done<>(i + 1, actions[i]));
        BoardState state = new BoardState(board, List.of(), null, null, null, List.of(), List.of(), List.copyOf(done));
        return Struck.on(state, id -> id.equals("D") ? 17.6 : 0);
    }

    private static Struck.Line across(int step, double x, Marker with) {
        return new Struck.Line(
                step, new SurfacePoint(Surface.FACE_1, x, 0), new SurfacePoint(Surface.FACE_1, x, 120), with);
    }

    private static Action.Line line(Action.Datum from, @Nullable Double at, @Nullable String mate, Marker with) {
        return new Action.Line(0, "A", Surface.FACE_1, Surface.EDGE_1, from, at, mate, with);
    }

    @Test
    void aDistanceRunsFromTheEndItIsTakenFrom() {
        assertThat(struck(
                        line(new Action.Datum.End(Surface.END_1), 86.0, null, Marker.KNIFE),
                        line(new Action.Datum.End(Surface.END_2), 86.0, null, Marker.PENCIL)))
                .containsExactly(across(1, 86, Marker.KNIFE), across(2, 226, Marker.PENCIL));
    }

    @Test
    void aDistanceFromALineGoesOnTheSameWay() {
        assertThat(struck(
                        line(new Action.Datum.End(Surface.END_2), 86.0, null, Marker.KNIFE),
                        line(new Action.Datum.Step(1), 18.0, null, Marker.KNIFE),
                        line(new Action.Datum.Step(2), null, "D", Marker.KNIFE)))
                .containsExactly(
                        across(1, 226, Marker.KNIFE),
                        across(2, 208, Marker.KNIFE),
                        across(3, 208 - 17.6, Marker.KNIFE));
    }

    @Test
    void wasteLiesBetweenItsTwoLines() {
        List<Struck> all = struck(
                line(new Action.Datum.End(Surface.END_1), 86.0, null, Marker.KNIFE),
                line(new Action.Datum.End(Surface.END_1), 68.0, null, Marker.KNIFE),
                new Action.Waste(0, "A", "left-housing", 1, 2));
        assertThat(all.get(2))
                .isEqualTo(new Struck.Waste(
                        3, new SurfacePoint(Surface.FACE_1, 68, 0), new SurfacePoint(Surface.FACE_1, 86, 120)));
    }

    @Test
    void aGaugeLineRunsAlongAtItsSettingFromTheFence() {
        assertThat(struck(
                        new Action.Gauge(0, "A", Surface.EDGE_1, Surface.FACE_1, 6),
                        new Action.Gauge(0, "A", Surface.FACE_1, Surface.EDGE_1, 40)))
                .containsExactly(
                        new Struck.Line(
                                1,
                                new SurfacePoint(Surface.EDGE_1, 0, 12),
                                new SurfacePoint(Surface.EDGE_1, 312, 12),
                                Marker.KNIFE),
                        new Struck.Line(
                                2,
                                new SurfacePoint(Surface.FACE_1, 0, 40),
                                new SurfacePoint(Surface.FACE_1, 312, 40),
                                Marker.KNIFE));
    }
}
