package org.marktwice.timber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class KnotKindTest {
    private static final Size SIZE = new Size(1500, 120, 20);

    /** A flat-sawn board with one branch that has become a cylinder before it comes to the wood. */
    private static GradedKnot onFace1(double lean) {
        Board board = Boards.timber(SIZE, new Pith(60, -100), Boards.knot(100, 90, lean, 30, 5));
        return GradedKnot.of(board, board.traces(Surface.FACE_1).get(0));
    }

    /** EN 844-9, limits from memory: round to 1.5, oval to 4, splay beyond; a cylinder shows 1 : sin(lean). */
    @ParameterizedTest
    @CsvSource({"90, ROUND", "60, ROUND", "42.5, ROUND", "41, OVAL", "30, OVAL", "15, OVAL", "14, SPLAY"})
    void theKindFollowsFromTheBranchsLean(double lean, KnotKind kind) {
        assertThat(onFace1(lean).kind()).isEqualTo(kind);
    }

    @ParameterizedTest
    @CsvSource({"80, 1.015", "70, 1.064", "60, 1.155", "45, 1.414", "30, 2.0"})
    void longestToShortestIsOneToTheSineOfTheLean(double lean, double ratio) {
        assertThat(KnotKind.ratio(onFace1(lean).trace().outline())).isCloseTo(ratio, within(0.005));
    }

    @Test
    void theRatioDoesNotDependOnHowTheOutlineLies() {
        for (int degrees = 0; degrees < 180; degrees += 7) {
            double turned = Math.toRadians(degrees);
            List<SurfacePoint> ellipse = IntStream.range(0, 360)
                    .mapToDouble(Math::toRadians)
                    .mapToObj(t -> {
                        double a = 12 * Math.cos(t);
                        double b = 4 * Math.sin(t);
                        return new SurfacePoint(
                                Surface.FACE_1,
                                a * Math.cos(turned) - b * Math.sin(turned),
                                a * Math.sin(turned) + b * Math.cos(turned));
                    })
                    .toList();
            assertThat(KnotKind.ratio(ellipse)).as("%d°", degrees).isCloseTo(3, within(0.002));
        }
    }

    /** However it leans, a branch on the middle of a flat-sawn face is as wide as it is thick. */
    @ParameterizedTest
    @CsvSource({"90", "60", "30", "20"})
    void theSizeIsMeasuredAcrossTheBoard(double lean) {
        assertThat(onFace1(lean).size()).isCloseTo(10, within(0.02));
    }

    @Test
    void whereItShowsIsSaidByItsSurfaceUnlessAnArrisCutsIt() {
        Board board = Boards.timber(
                SIZE,
                new Pith(60, -100),
                new Knot("middle", 100, 90, 90, 5, 5, 500, Double.POSITIVE_INFINITY),
                new Knot("end", 1495, 90, 90, 30, 12, 500, Double.POSITIVE_INFINITY));
        assertThat(places(board, "middle")).containsExactly("face-1 face", "face-2 face");
        assertThat(places(board, "end")).containsExactly("face-1 face", "face-2 face", "end-2 end");
    }

    @Test
    void aKnotThatAnArrisCutsIsAnArrisKnotOnBothItsSurfaces() {
        // The branch comes out where face 1 and edge 2 meet, 60 across and 120 up from the pith.
        double azimuth = Math.toDegrees(Math.atan2(120, 60));
        Board board = Boards.timber(SIZE, new Pith(60, -100), Boards.knot(100, azimuth, 90, 5, 5));
        assertThat(places(board, "k")).containsExactly("face-1 arris", "face-2 face", "edge-2 arris");
        // Level with the middle of the board, and thinner than it.
        Board edge = Boards.timber(SIZE, new Pith(160, 10), Boards.knot(100, 180, 90, 10, 4));
        assertThat(places(edge, "k")).containsExactly("edge-1 edge", "edge-2 edge");
    }

    private static List<String> places(Board board, String knot) {
        return board.traces().stream()
                .filter(t -> t.knot().equals(knot))
                .map(t ->
                        t.surface().id() + " " + GradedKnot.of(board, t).place().id())
                .toList();
    }

    @Test
    void itIsSpokenOfAsGradersDo() {
        assertThat(onFace1(90).spoken()).isEqualTo("dead round face knot");
        Board live = Boards.timber(SIZE, new Pith(60, -10), Boards.knot(100, 90, 30, 5, 5));
        assertThat(GradedKnot.of(live, live.traces(Surface.FACE_2).get(0)).spoken())
                .isEqualTo("live oval face knot");
    }
}
