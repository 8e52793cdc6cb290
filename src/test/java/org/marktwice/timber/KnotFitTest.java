package org.marktwice.timber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.marktwice.timber.KnotFit.Sureness;

/** A knot is made, its traces are taken off, the knot is found again from them, and the two are compared. */
class KnotFitTest {
    private static final Size SIZE = new Size(600, 120, 20);

    private record Made(Knot knot, Pith pith, KnotBody body) {}

    /** A branch that comes through both faces well inside them. */
    private static Made made(Random random) {
        while (true) {
            Pith pith = new Pith(20 + 80 * random.nextDouble(), -15 - 60 * random.nextDouble());
            double slope = 0.06 + 0.2 * random.nextDouble();
            Knot knot = new Knot(
                    "k1",
                    100 + 400 * random.nextDouble(),
                    60 + 60 * random.nextDouble(),
                    60 + 60 * random.nextDouble(),
                    Math.toDegrees(Math.atan(slope)),
                    3 + 9 * random.nextDouble(),
                    Double.POSITIVE_INFINITY,
                    Double.POSITIVE_INFINITY);
            KnotBody body = KnotBody.of(knot, SIZE, pith);
            if (body.traces().size() == 2 && body.traces().get(1).width() > 2) return new Made(knot, pith, body);
        }
    }

    private static List<Showing> showings(KnotBody body) {
        return body.traces().stream().map(Showing::of).toList();
    }

    private static Showing rounded(Showing s) {
        return new Showing(
                s.surface(), Math.rint(s.u()), Math.rint(s.v()), Math.rint(s.length()), Math.rint(s.width()), s.dead());
    }

    /** How far the two bodies' clearances from cuts all over the board differ at most. */
    private static double differ(KnotBody one, KnotBody other) {
        double most = 0;
        for (int x = 20; x < 580; x += 35) {
            for (int end : new int[] {0, 10}) {
                Box cut = Box.of(x, 0, end, x + 12, 120, end + 10);
                double a = one.clearance(cut, 60);
                most = Math.max(most, Math.abs(a - other.clearance(cut, 60)));
            }
        }
        return most;
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void fromBothFacesTheBodyIsFoundAgain(long seed) {
        Made made = made(new Random(seed));

        KnotFit fit = KnotFit.of("k1", showings(made.body()), made.pith(), SIZE);

        assertThat(fit.worst()).isLessThan(0.5);
        assertThat(fit.sureness()).isEqualTo(Sureness.SURE);
        assertThat(fit.knot().x()).isCloseTo(made.knot().x(), within(3.0));
        assertThat(differ(made.body(), KnotBody.of(fit.knot(), SIZE, made.pith())))
                .isLessThan(0.6);
    }

    @Test
    void readToAWholeMillimetreTheBodyIsFoundAsNearlyAsTheSpreadSays() {
        Random random = new Random(77);
        int within = 0;
        int tried = 60;
        for (int i = 0; i < tried; i++) {
            Made made = made(random);
            List<Showing> read = new ArrayList<>();
            for (Showing one : showings(made.body())) read.add(rounded(one));
            KnotFit fit = KnotFit.of("k1", read, made.pith(), SIZE);
            double off = differ(made.body(), KnotBody.of(fit.knot(), SIZE, made.pith()));
            assertThat(off).as("%s", made.knot()).isLessThan(3);
            if (off <= fit.spread()) within++;
        }
        assertThat(within).isGreaterThan(tried * 9 / 10);
    }

    @Test
    void fromOneFaceTheSpreadCoversWhatIsLeftOpen() {
        Random random = new Random(78);
        int within = 0;
        int tried = 60;
        for (int i = 0; i < tried; i++) {
            Made made = made(random);
            Showing seen = showings(made.body()).get(i % 2);
            KnotFit fit = KnotFit.of("k1", List.of(seen), made.pith(), SIZE);
            assertThat(fit.surfaces()).isEqualTo(1);
            assertThat(fit.sureness()).isNotEqualTo(Sureness.SURE);
            if (differ(made.body(), KnotBody.of(fit.knot(), SIZE, made.pith())) <= 2 * fit.spread()) within++;
        }
        assertThat(within).isGreaterThan(tried * 9 / 10);
    }

    @Test
    void overAnArrisBothSurfacesTell() {
        Pith pith = new Pith(60, -30);
        Knot knot = new Knot("k1", 300, 44, 75, 9, 8, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);
        KnotBody body = KnotBody.of(knot, SIZE, pith);
        assertThat(body.traces()).extracting(Trace::surface).contains(Surface.FACE_1, Surface.EDGE_2);

        KnotFit fit = KnotFit.of("k1", showings(body), pith, SIZE);

        assertThat(fit.worst()).isLessThan(0.7);
        assertThat(differ(body, KnotBody.of(fit.knot(), SIZE, pith))).isLessThan(1.5);
    }

    @Test
    void whatLiesOnNoBranchFromThisPithIsDoubtful() {
        Made made = made(new Random(3));
        List<Showing> right = showings(made.body());
        Showing moved = right.get(1);
        List<Showing> wrong = List.of(
                right.get(0),
                new Showing(moved.surface(), moved.u(), 118 - moved.v(), moved.length(), moved.width(), false));

        assertThat(KnotFit.of("k1", wrong, made.pith(), SIZE).sureness()).isEqualTo(Sureness.DOUBTFUL);
    }

    @Test
    void whereItIsDeadIsKeptBetweenWhatShows() {
        Pith pith = new Pith(60, -40);
        Knot knot = new Knot("k1", 300, 90, 80, 9, 6, 52, Double.POSITIVE_INFINITY);
        KnotBody body = KnotBody.of(knot, SIZE, pith);

        KnotFit fit = KnotFit.of("k1", showings(body), pith, SIZE);

        assertThat(fit.knot().deadFrom()).isBetween(42.0, 62.0);
        assertThat(KnotBody.of(fit.knot(), SIZE, pith).traces())
                .extracting(Trace::live)
                .isEqualTo(body.traces().stream().map(Trace::live).toList());
    }

    @Test
    void theQuickModelOfATraceAgreesWithTheBody() {
        Random random = new Random(5);
        int compared = 0;
        for (int i = 0; i < 300; i++) {
            Pith pith = new Pith(-40 + 200 * random.nextDouble(), -80 + 180 * random.nextDouble());
            Knot knot = new Knot(
                    "k1",
                    600 * random.nextDouble(),
                    360 * random.nextDouble(),
                    40 + 100 * random.nextDouble(),
                    2 + 12 * random.nextDouble(),
                    2 + 10 * random.nextDouble(),
                    Double.POSITIVE_INFINITY,
                    Double.POSITIVE_INFINITY);
            TraceModel model = new TraceModel(pith, SIZE);
            for (Trace trace : KnotBody.of(knot, SIZE, pith).traces()) {
                if (trace.area() < 1) continue;
                double[] expected = Showing.of(trace).readings();
                assertThat(model.readings(knot, trace.surface()).orElseThrow())
                        .as("%s %s", knot, pith)
                        .containsExactly(expected, within(0.1 + 0.02 * (trace.length() + trace.width())));
                compared++;
            }
        }
        assertThat(compared).isGreaterThan(150);
    }

    static List<double[]> arcs() {
        return List.of(new double[] {60, -40, 20}, new double[] {20, -70, 8}, new double[] {-30, 90, 25});
    }

    @ParameterizedTest
    @MethodSource("arcs")
    void thePithIsTheMiddleOfARing(double[] circle) {
        Pith pith = new Pith(circle[0], circle[1]);
        double radius = pith.distance(60, 10);
        double middle = Math.atan2(10 - pith.z(), 60 - pith.y());
        List<RingFit.Point> points = new ArrayList<>();
        for (double turn : new double[] {-0.4, -0.2, 0, 0.15, 0.4}) {
            points.add(new RingFit.Point(
                    pith.y() + radius * Math.cos(middle + turn), pith.z() + radius * Math.sin(middle + turn)));
        }

        assertThat(RingFit.pith(points.subList(0, 3)).orElseThrow().distance(pith.y(), pith.z()))
                .isLessThan(1e-3);
        assertThat(RingFit.pith(points).orElseThrow().distance(pith.y(), pith.z()))
                .isLessThan(1e-3);
    }

    @Test
    void aStraightRingTellsNoPith() {
        var a = new RingFit.Point(0, 5);
        var b = new RingFit.Point(60, 5);
        assertThat(RingFit.pith(List.of(a, b))).isEmpty();
        assertThat(RingFit.pith(List.of(a, b, new RingFit.Point(120, 5)))).isEmpty();
        assertThat(RingFit.pith(List.of(a, b, new RingFit.Point(120, 5.5)))).isEmpty();
    }
}
