package org.marktwice.timber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.joml.Vector3d;
import org.junit.jupiter.api.Test;

/** Laws that clearances keep, over knots, boards and cuts drawn from a seed, and dense samples of the true body. */
class ClearancePropertiesTest {
    private static final int ROUNDS = 400;

    /**
     * The least distance from the cut among points of the body: many at random first, then ever closer ones about the
     * best, which on a convex body leads to the nearest. Infinite where no point was found.
     */
    private static double sampled(KnotScene scene, Random random) {
        Vector3d best = new Vector3d();
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < 5000; i++) {
            Vector3d at = scene.inBranch(random);
            if (!scene.holds(at.x, at.y, at.z)) continue;
            double mm = KnotScene.distance(scene.cut(), at);
            if (mm < least) {
                least = mm;
                best = at;
            }
        }
        if (Double.isInfinite(least)) return least;
        double step = 8;
        while (step > 1e-4 && least > 0) {
            double before = least;
            for (int j = 0; j < 60; j++) {
                Vector3d at =
                        scene.drawnIn(new Vector3d(random.nextGaussian(), random.nextGaussian(), random.nextGaussian())
                                .mul(step)
                                .add(best));
                double mm = KnotScene.distance(scene.cut(), at);
                if (mm < least && scene.holds(at.x, at.y, at.z)) {
                    least = mm;
                    best = at;
                }
            }
            if (before - least < 0.1 * step) step *= 0.8;
        }
        return least;
    }

    @Test
    void agreesWithDenseSamplesOfTheTrueBody() {
        Random random = new Random(2024);
        int judged = 0;
        int apart = 0;
        for (int round = 0; round < ROUNDS; round++) {
            KnotScene scene = KnotScene.of(random);
            double least = sampled(scene, random);
            if (Double.isInfinite(least)) continue;
            double mm = scene.body().clearance(scene.cut());
            assertThat(mm).as("%s", scene).isCloseTo(least, within(0.05));
            judged++;
            if (mm > 0) apart++;
        }
        assertThat(judged).as("knots that hit their board").isGreaterThan(ROUNDS / 2);
        assertThat(apart).as("knots clear of the cut").isGreaterThan(ROUNDS / 5);
    }

    @Test
    void isZeroWhereAPointOfTheBodyLiesInTheCutAndOnlyThere() {
        Random random = new Random(7);
        int meeting = 0;
        for (int round = 0; round < ROUNDS; round++) {
            KnotScene scene = KnotScene.of(random);
            double mm = scene.body().clearance(scene.cut());
            boolean met = false;
            for (int i = 0; i < 2000 && !met; i++) {
                Vector3d at = scene.inBranch(random);
                met = scene.holds(at.x, at.y, at.z) && scene.cut().contains(at, -0.01);
            }
            if (met) {
                meeting++;
                assertThat(mm).as("%s", scene).isZero();
            }
        }
        assertThat(meeting).isGreaterThan(ROUNDS / 10);
    }

    @Test
    void isTheSameInTheMirrorOnAllThreeAxes() {
        Random random = new Random(31);
        for (int round = 0; round < ROUNDS; round++) {
            KnotScene scene = KnotScene.of(random);
            double mm = scene.body().clearance(scene.cut());
            for (int axis = 0; axis < 3; axis++) {
                KnotScene mirrored = mirrored(scene, axis);
                assertSame(mirrored.body().clearance(mirrored.cut()), mm, mirrored);
            }
        }
    }

    private static KnotScene mirrored(KnotScene scene, int axis) {
        Size size = scene.size();
        Knot k = scene.knot();
        double extent = size.along(axis);
        Box cut = scene.cut()
                .with(axis, extent - scene.cut().max(axis), extent - scene.cut().min(axis));
        double x = axis == 0 ? extent - k.x() : k.x();
        double lean = axis == 0 ? 180 - k.lean() : k.lean();
        double azimuth = axis == 1 ? 180 - k.azimuth() : axis == 2 ? -k.azimuth() : k.azimuth();
        Pith pith = new Pith(
                axis == 1 ? extent - scene.pith().y() : scene.pith().y(),
                axis == 2 ? extent - scene.pith().z() : scene.pith().z());
        Knot knot = new Knot(k.id(), x, azimuth, lean, k.halfAngle(), k.maxRadius(), k.deadFrom(), k.endsAt());
        return new KnotScene(size, pith, knot, cut);
    }

    @Test
    void slidingKnotAndCutAlongALongerBoardChangesNothing() {
        Random random = new Random(32);
        for (int round = 0; round < ROUNDS; round++) {
            KnotScene scene = KnotScene.of(random);
            Size longer = new Size(6000, scene.size().width(), scene.size().thickness());
            KnotScene here = moved(scene, longer, 2500);
            KnotScene there = moved(scene, longer, 2500 + random.nextInt(500));
            assertSame(there.body().clearance(there.cut()), here.body().clearance(here.cut()), there);
        }
    }

    private static KnotScene moved(KnotScene scene, Size size, double dx) {
        Knot k = scene.knot();
        // Kept short, so that it doesn't reach the ends.
        Knot knot = new Knot(
                k.id(),
                k.x() + dx,
                k.azimuth(),
                k.lean(),
                k.halfAngle(),
                k.maxRadius(),
                k.deadFrom(),
                Math.min(k.endsAt(), 900));
        return new KnotScene(size, scene.pith(), knot, scene.cut().moved(dx, 0, 0));
    }

    private static void assertSame(double mm, double expected, KnotScene scene) {
        if (Double.isInfinite(expected)) assertThat(mm).as("%s", scene).isInfinite();
        else assertThat(mm).as("%s", scene).isCloseTo(expected, within(0.01));
    }

    @Test
    void growsLessAsTheCutGrowsOrTheKnotDoes() {
        Random random = new Random(33);
        for (int round = 0; round < ROUNDS; round++) {
            KnotScene scene = KnotScene.of(random);
            KnotBody body = scene.body();
            double mm = body.clearance(scene.cut());
            double by = 10 * random.nextDouble();
            Box larger = new Box(
                    scene.cut().min().sub(by, 0, by, new Vector3d()),
                    scene.cut().max().add(0, by, by, new Vector3d()));
            assertThat(body.clearance(larger)).as("%s", scene).isLessThanOrEqualTo(mm + 1e-5);

            Knot k = scene.knot();
            Knot thicker = new Knot(
                    k.id(), k.x(), k.azimuth(), k.lean(), k.halfAngle(), k.maxRadius() * 1.1, k.deadFrom(), k.endsAt());
            assertThat(Boards.body(scene.size(), scene.pith(), thicker).clearance(scene.cut()))
                    .as("%s", scene)
                    .isLessThanOrEqualTo(mm + 0.01);
        }
    }

    @Test
    void nearestPointsAndCapAgreeWithTheClearance() {
        Random random = new Random(34);
        for (int round = 0; round < ROUNDS; round++) {
            KnotScene scene = KnotScene.of(random);
            KnotBody body = scene.body();
            if (body.isEmpty()) continue;
            double mm = body.clearance(scene.cut());
            double cap = 40 * random.nextDouble();
            assertThat(body.clearance(scene.cut(), cap)).as("%s", scene).isCloseTo(Math.min(cap, mm), within(1e-5));
            KnotBody.Nearest nearest = body.nearest(scene.cut()).orElseThrow();
            assertThat(nearest.mm()).isEqualTo(mm);
            assertThat(nearest.onKnot().distance(nearest.onCut()))
                    .as("%s", scene)
                    .isCloseTo(mm, within(1e-6));
            assertThat(scene.cut().contains(nearest.onCut(), 1e-6))
                    .as("%s", scene)
                    .isTrue();
            assertThat(body.bounds().orElseThrow().contains(nearest.onKnot(), 1e-6))
                    .as("%s", scene)
                    .isTrue();
        }
    }
}
