package org.marktwice.timber;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class KnotReachTest {
    private static final Size SIZE = new Size(300, 110, 20);

    private static Knot knot(Random random, Pith pith) {
        double towards = Math.toDegrees(Math.atan2(10 - pith.z(), 20 + 70 * random.nextDouble() - pith.y()));
        return Boards.knot(
                random.nextDouble() * 300,
                towards,
                40 + random.nextDouble() * 100,
                2 + random.nextDouble() * 8,
                3 + random.nextDouble() * 9,
                random.nextInt(4) == 0 ? 30 + random.nextDouble() * 60 : Double.POSITIVE_INFINITY);
    }

    /** Compared with the exact clearance. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void theGapIsNeverMoreThanTheClearanceAndHardlyLess(long seed) {
        Random random = new Random(seed);
        int tried = 0;
        while (tried < 150) {
            Pith pith = new Pith(random.nextDouble() * 110, -20 - random.nextDouble() * 60);
            Knot knot = knot(random, pith);
            KnotBody body = Boards.body(SIZE, pith, knot);
            if (body.isEmpty()) continue;
            double x = random.nextDouble() * 280;
            double depth = random.nextBoolean() ? 20 : 6;
            Box cut = Box.of(x, 0, 0, x + 18, 110, depth);
            double exact = body.clearance(cut);
            double gap = KnotReach.of(knot, pith, SIZE).gap(cut);
            assertThat(gap).isLessThanOrEqualTo(exact + 0.05);
            assertThat(KnotReach.of(knot, pith, SIZE).reaches(cut)).isGreaterThanOrEqualTo(exact - 0.05);
            if (depth == 20) assertThat(gap).isGreaterThan(exact - 2.5 * knot.maxRadius() - 1);
            tried++;
        }
    }

    @Test
    void bothBoundsAreNearWhereABranchRunsThroughTheBoard() {
        Pith pith = new Pith(55, -50);
        Knot knot = new Knot("k", 150, 90, 85, 5, 6, 200, Double.POSITIVE_INFINITY);
        KnotReach reach = KnotReach.of(knot, pith, SIZE);
        Box cut = SIZE.box().with(0, 185, 200);
        double exact = Boards.body(SIZE, pith, knot).clearance(cut);

        assertThat(reach.gap(cut)).isBetween(exact - 1, exact);
        assertThat(reach.reaches(cut)).isBetween(exact, exact + 1);
    }

    @Test
    void theDeadPartBeginsWhereTheBranchDied() {
        Pith pith = new Pith(55, -50);
        Box lower = SIZE.box().with(2, 0, 1);
        for (double deadFrom : new double[] {0, 40, 56, 62, 69}) {
            Knot knot = new Knot("k", 150, 90, 90, 5, 4, deadFrom, Double.POSITIVE_INFINITY);
            double away = Math.max(0, deadFrom - 51 - 4);
            assertThat(KnotReach.ofDeadPart(knot, pith, SIZE).gap(lower))
                    .as("dead from %s", deadFrom)
                    .isBetween(Math.max(0, away - 1), away + 0.01);
        }
        Knot live = new Knot("k", 150, 90, 90, 5, 4, 90, Double.POSITIVE_INFINITY);
        assertThat(KnotReach.ofDeadPart(live, pith, SIZE).gap(lower)).isInfinite();
    }

    @ParameterizedTest
    @ValueSource(longs = {5, 6, 7, 8})
    void whatIsInsideForCertainIsInside(long seed) {
        Random random = new Random(seed);
        int inside = 0;
        for (int i = 0; i < 400; i++) {
            Pith pith = new Pith(random.nextDouble() * 110, -20 - random.nextDouble() * 60);
            Knot knot = knot(random, pith);
            KnotBody body = Boards.body(SIZE, pith, knot);
            boolean certain = KnotReach.of(knot, pith, SIZE).isInside();
            if (certain) {
                inside++;
                assertThat(body.isEmpty()).as("%s in %s", knot, pith).isFalse();
            } else if (!body.isEmpty()) {
                // What is left out only grazes the board.
                Box bounds = body.bounds().orElseThrow();
                double thin = Math.min(bounds.extent(0), Math.min(bounds.extent(1), bounds.extent(2)));
                assertThat(thin).as("%s in %s", knot, pith).isLessThan(5);
            }
        }
        assertThat(inside).isGreaterThan(200);
    }
}
