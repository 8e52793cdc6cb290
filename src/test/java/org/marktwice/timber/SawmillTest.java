package org.marktwice.timber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.joml.Vector3d;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SawmillTest {
    private static final Species PINE = SpeciesTable.byId("scots-pine").orElseThrow();
    private static final Size SIZE = new Size(310, 110, 18);

    private static Board.Facts blank(Size size) {
        return new Board.Facts(
                "A", Stuff.TIMBER, PINE, size, 13, 11, EnumSet.copyOf(Surface.LONG), null, 0, List.of(), Shape.TRUE, 1);
    }

    /** Any board will do. */
    private static List<SawnBoard> boards(Species species, long seed, int count) {
        Chance chance = Chance.of(seed);
        Sawmill mill = new Sawmill(species, 18, 110, 0.7, chance.split());
        List<SawnBoard> boards = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            SawnBoard.Lie lie = SawnBoard.Lie.values()[chance.whole(0, 3)];
            boards.add(mill.saw(blank(SIZE), lie, b -> 0));
        }
        return boards;
    }

    private static List<SawnBoard> boards(long seed) {
        return boards(PINE, seed, 24);
    }

    @Test
    void theSameSeedGivesTheSameBoards() {
        assertThat(boards(7)).isEqualTo(boards(7));
        assertThat(boards(7)).isNotEqualTo(boards(8));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void boardsOfOneLogNeverShareWoodAndLeaveTheSawItsKerf(long seed) {
        List<SawnBoard> boards = boards(seed);
        for (int i = 0; i < boards.size(); i++) {
            Box one = boards.get(i).inLog();
            Box grown = Box.of(
                    one.min(0) - 2.9, one.min(1), one.min(2) - 2.9, one.max(0) + 2.9, one.max(1), one.max(2) + 2.9);
            for (int j = 0; j < i; j++) {
                if (!boards.get(i).log().equals(boards.get(j).log())) continue;
                assertThat(grown.overlap(boards.get(j).inLog(), 0)).isEmpty();
            }
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void everyBoardLiesInItsLogAndBesideTheHeart(long seed) {
        for (SawnBoard sawn : boards(seed)) {
            Box box = sawn.inLog();
            assertThat(box.min(0)).isGreaterThanOrEqualTo(0);
            assertThat(box.max(0)).isLessThanOrEqualTo(sawn.log().length());
            double y = Math.max(Math.abs(box.min(1)), Math.abs(box.max(1)));
            double z = Math.max(Math.abs(box.min(2)), Math.abs(box.max(2)));
            assertThat(Math.hypot(y, z)).isLessThan(sawn.log().radius());
            assertThat(Seasoned.now(sawn.board()).boxedHeart()).isFalse();
        }
    }

    /** A point of the board's frame in the log's. */
    private static Vector3d inLog(SawnBoard sawn, double x, double y, double z) {
        double[] p = {x, y, z};
        Vector3d out = new Vector3d();
        for (int axis = 0; axis < 3; axis++) {
            Box box = sawn.inLog();
            out.setComponent(axis, sawn.lie().sign(axis) > 0 ? box.min(axis) + p[axis] : box.max(axis) - p[axis]);
        }
        return out;
    }

    private static Vector3d towards(SawnBoard sawn, Knot knot) {
        Vector3d d = new Vector3d(knot.direction());
        for (int axis = 0; axis < 3; axis++)
            d.setComponent(axis, d.get(axis) * sawn.lie().sign(axis));
        return d;
    }

    private static Optional<Knot> branch(SawnBoard sawn, Knot knot) {
        double x = inLog(sawn, knot.x(), 0, 0).x;
        return sawn.log().branches().stream()
                .filter(b -> Math.abs(b.x() - x) < 0.06
                        && b.direction().distance(towards(sawn, knot)) < 0.002
                        && b.maxRadius() == knot.maxRadius()
                        && b.deadFrom() == knot.deadFrom())
                .findFirst();
    }

    /** However the board was turned, its pith and its knots are the log's. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void turnedBackIntoItsLogABoardHasTheLogsPithAndBranches(long seed) {
        int knots = 0;
        for (SawnBoard sawn : boards(seed)) {
            Pith pith = sawn.board().pith().orElseThrow();
            Vector3d heart = inLog(sawn, 0, pith.y(), pith.z());
            assertThat(Math.hypot(heart.y, heart.z)).isLessThan(0.08);
            for (Knot knot : sawn.board().knots()) {
                assertThat(branch(sawn, knot)).as("%s of %s", knot, sawn).isPresent();
                knots++;
            }
        }
        assertThat(knots).isGreaterThan(10);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void allKnotsLieInTheBoard(long seed) {
        for (SawnBoard sawn : boards(seed)) {
            assertThat(sawn.board().bodies()).noneMatch(KnotBody::isEmpty);
            assertThat(sawn.board().knots())
                    .extracting(Knot::id)
                    .containsExactlyElementsOf(
                            IntStream.rangeClosed(1, sawn.board().knots().size())
                                    .mapToObj(i -> "k" + i)
                                    .toList());
        }
    }

    /** A trace on one side of the saw's way lies where the branch leads from its trace on the other side. */
    @Test
    void neighboursAgreeAlongTheSawKerf() {
        int seen = 0;
        for (long seed = 1; seed <= 12; seed++) {
            List<SawnBoard> boards = boards(seed);
            for (SawnBoard low : boards) {
                for (SawnBoard high : boards) {
                    double gap = high.inLog().min(2) - low.inLog().max(2);
                    if (!low.log().equals(high.log()) || gap < 0 || gap > 8) continue;
                    seen += agree(low, high, gap);
                }
            }
        }
        assertThat(seen).isGreaterThan(20);
    }

    private static int agree(SawnBoard low, SawnBoard high, double gap) {
        int seen = 0;
        for (Knot knot : low.board().knots()) {
            Knot branch = branch(low, knot).orElseThrow();
            Optional<Vector3d> from = shows(low, knot, low.lie().sign(2) > 0 ? Surface.FACE_1 : Surface.FACE_2);
            Optional<Vector3d> to = high.board().knots().stream()
                    .filter(k -> branch(high, k).orElseThrow().equals(branch))
                    .flatMap(k -> shows(high, k, high.lie().sign(2) > 0 ? Surface.FACE_2 : Surface.FACE_1).stream())
                    .findFirst();
            double run = gap / branch.direction().z();
            // Nearly level branches run a long way in the saw's dust.
            if (from.isEmpty() || to.isEmpty() || Math.abs(run) > 20) continue;
            Vector3d led = new Vector3d(branch.direction()).mul(run).add(from.get());
            assertThat(to.get().distance(led)).as("%s and %s", low, high).isCloseTo(0, within(3.0));
            seen++;
        }
        return seen;
    }

    /** The middle of the knot's trace, in the log; empty where there is none or an arris cuts it. */
    private static Optional<Vector3d> shows(SawnBoard sawn, Knot knot, Surface face) {
        return sawn.board().traces(face).stream()
                .filter(t -> t.knot().equals(knot.id()))
                .filter(t -> KnotPlace.of(sawn.board(), t) == KnotPlace.FACE)
                .filter(t -> t.outline().stream()
                        .allMatch(
                                p -> p.u() > 1e-6 && p.u() < sawn.board().size().length() - 1e-6))
                .map(t -> {
                    double z = face == Surface.FACE_1 ? sawn.board().size().thickness() : 0;
                    return inLog(sawn, t.middle().u(), t.middle().v(), z);
                })
                .findFirst();
    }

    @Test
    void theCheapestBoardIsTakenAndAnotherLogFetchedWhereNoneWillDo() {
        Sawmill mill = new Sawmill(PINE, 18, 110, 0.9, Chance.of(11));
        SawnBoard knotty = mill.saw(
                blank(SIZE), SawnBoard.Lie.AS_SAWN, b -> 1.0 / (1 + b.knots().size()));
        SawnBoard any = mill.saw(blank(SIZE), SawnBoard.Lie.AS_SAWN, b -> 0);
        assertThat(knotty.board().knots()).hasSizeGreaterThanOrEqualTo(2);
        assertThat(any.log()).isEqualTo(knotty.log());
        SawnBoard clear =
                mill.saw(blank(SIZE), SawnBoard.Lie.AS_SAWN, b -> b.knots().isEmpty() ? 0 : Double.POSITIVE_INFINITY);
        assertThat(clear.board().knots()).isEmpty();
    }

    /** When nothing will do, a pruned log gives a board without knots from as far out as it can. */
    @Test
    void whereNothingWillDoTheBoardIsClearAllTheSame() {
        Sawmill mill = new Sawmill(PINE, 18, 110, 1, Chance.of(12));
        SawnBoard sawn = mill.saw(blank(SIZE), SawnBoard.Lie.TUMBLED, b -> Double.POSITIVE_INFINITY);
        assertThat(sawn.board().knots()).isEmpty();
        assertThat(Math.abs(sawn.inLog().min(2) + sawn.inLog().max(2)) / 2).isGreaterThan(70);
    }

    @Test
    void theLargestBoardCanBeSawn() {
        Sawmill mill = new Sawmill(PINE, Sawmill.LARGEST.thickness(), Sawmill.LARGEST.width(), 0, Chance.of(13));
        SawnBoard sawn = mill.saw(blank(Sawmill.LARGEST), SawnBoard.Lie.AS_SAWN, b -> 0);
        assertThat(sawn.board().size()).isEqualTo(Sawmill.LARGEST);
    }

    @Test
    void flatSawnAndQuarterSawnBoardsBothComeOffTheSaw() {
        List<SawnBoard> boards = boards(PINE, 3, 40);
        assertThat(boards).anyMatch(s -> Seasoned.barkSide(s.board()).isEmpty());
        assertThat(boards).anyMatch(s -> {
            Pith pith = s.board().pith().orElseThrow();
            return pith.y() > 20 && pith.y() < 90;
        });
    }
}
