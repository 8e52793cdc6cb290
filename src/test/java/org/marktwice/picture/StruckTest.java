package org.marktwice.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.marktwice.Fixtures;
import org.marktwice.bench.Action;
import org.marktwice.bench.Bench;
import org.marktwice.bench.CannotDo;
import org.marktwice.bench.Marker;
import org.marktwice.timber.Shape;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;

/** Board A is true, of 312 × 120 × 18; B tapers by 1 mm; D is 17.6 thick. */
class StruckTest {
    private static final Bench BENCH = Bench.of(Fixtures.withBoards(
            Fixtures.porchShelf(),
            List.of(
                    Fixtures.board("A").size(312, 120, 18).board(),
                    Fixtures.board("B")
                            .size(312, 120, 18)
                            .shape(new Shape(0, 0, 0, 1, 0, Map.of()))
                            .board(),
                    Fixtures.board("D").size(480, 120, 17.6).board())));

    private static List<Struck> struck(Action.OnBoard... actions) {
        Bench bench = BENCH;
        try {
            for (Action.OnBoard action : actions) bench = bench.after(action);
        } catch (CannotDo e) {
            throw new AssertionError(e);
        }
        return Struck.on(bench, bench.board(actions[0].board()));
    }

    private static Struck.Line across(int step, double x, Marker with) {
        return new Struck.Line(step, at(Surface.FACE_1, x, 0), at(Surface.FACE_1, x, 120), with);
    }

    private static SurfacePoint at(Surface on, double u, double v) {
        return new SurfacePoint(on, u, v);
    }

    private static Action.Line line(Action.Datum from, @Nullable Double at, @Nullable String mate, Marker with) {
        return new Action.Line(0, "A", Surface.FACE_1, Surface.EDGE_1, from, at, mate, with);
    }

    private static Action.Line knifed(Surface end, double at) {
        return line(new Action.Datum.End(end), at, null, Marker.KNIFE);
    }

    @Test
    void aDistanceRunsFromTheEndItIsTakenFrom() {
        assertThat(struck(
                        knifed(Surface.END_1, 86),
                        line(new Action.Datum.End(Surface.END_2), 86.0, null, Marker.PENCIL)))
                .containsExactly(across(1, 86, Marker.KNIFE), across(2, 226, Marker.PENCIL));
    }

    @Test
    void aDistanceFromALineGoesOnTheSameWay() {
        assertThat(struck(
                        knifed(Surface.END_2, 86),
                        line(new Action.Datum.Step(1), 18.0, null, Marker.KNIFE),
                        line(new Action.Datum.Step(2), null, "D", Marker.KNIFE)))
                .containsExactly(
                        across(1, 226, Marker.KNIFE),
                        across(2, 208, Marker.KNIFE),
                        across(3, 208 - 17.6, Marker.KNIFE));
    }

    /** Squared from the edge that tapers by 1 mm in 312, over 120 mm: 0.38 mm out at the far arris. */
    @Test
    void aLineSquaredFromATaperedBackEdgeIsDrawnOutOfLine() {
        Struck.Line line = (Struck.Line) struck(new Action.Line(
                        0,
                        "B",
                        Surface.FACE_1,
                        Surface.EDGE_2,
                        new Action.Datum.End(Surface.END_1),
                        86.0,
                        null,
                        Marker.KNIFE))
                .get(0);
        assertThat(line.to().u()).isCloseTo(86, within(1e-9));
        assertThat(Math.abs(line.from().u() - 86)).isCloseTo(120 / 312.0, within(0.01));
    }

    @Test
    void wasteLiesBetweenItsTwoLines() {
        List<Struck> all = struck(
                knifed(Surface.END_1, 86), knifed(Surface.END_1, 68), new Action.Waste(0, "A", "left-housing", 1, 2));
        assertThat(all.get(2))
                .isEqualTo(new Struck.Waste(
                        3,
                        List.of(
                                at(Surface.FACE_1, 86, 0),
                                at(Surface.FACE_1, 86, 120),
                                at(Surface.FACE_1, 68, 120),
                                at(Surface.FACE_1, 68, 0))));
    }

    /** A shoulder on face 1 and a gauge line on edge 1: what both cut off lies towards the nearer end. */
    @Test
    void wasteAtACornerLiesTowardsTheNearerEnd() {
        List<Struck> all = struck(
                knifed(Surface.END_2, 20),
                new Action.Gauge(0, "A", Surface.EDGE_1, Surface.FACE_2, 9),
                new Action.Waste(0, "A", "left-housing", 1, 2));
        assertThat(((Struck.Waste) all.get(2)).outline())
                .extracting(SurfacePoint::u)
                .containsExactly(292.0, 292.0, 312.0, 312.0);
    }

    @Test
    void aGaugeLineRunsAlongAtItsSettingFromTheFence() {
        assertThat(struck(
                        new Action.Gauge(0, "A", Surface.EDGE_1, Surface.FACE_1, 6),
                        new Action.Gauge(0, "A", Surface.FACE_1, Surface.EDGE_1, 40)))
                .containsExactly(
                        new Struck.Line(1, at(Surface.EDGE_1, 0, 12), at(Surface.EDGE_1, 312, 12), Marker.KNIFE),
                        new Struck.Line(2, at(Surface.FACE_1, 0, 40), at(Surface.FACE_1, 312, 40), Marker.KNIFE));
    }
}
