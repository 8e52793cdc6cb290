package org.marktwice.timber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.stream.DoubleStream;
import org.joml.Vector3d;
import org.junit.jupiter.api.Test;

/** Hulls whose distance from a box is known without searching. */
class ConvexDistanceTest {
    private static double distance(Box box, double... points) {
        return new ConvexDistance(new Hull(points), box).solve(Double.POSITIVE_INFINITY);
    }

    private static double[] corners(Box box) {
        double[] points = new double[24];
        for (int i = 0; i < 8; i++) {
            points[3 * i] = (i & 1) == 0 ? box.min(0) : box.max(0);
            points[3 * i + 1] = (i & 2) == 0 ? box.min(1) : box.max(1);
            points[3 * i + 2] = (i & 4) == 0 ? box.min(2) : box.max(2);
        }
        return points;
    }

    @Test
    void pointsSegmentsAndSheets() {
        Box box = Box.of(0, 0, 0, 10, 10, 10);
        assertThat(distance(box, 13, 14, 5)).isCloseTo(5, within(1e-6));
        assertThat(distance(box, 5, 5, 5)).isZero();
        assertThat(distance(box, 10, 10, 10)).isZero();
        assertThat(distance(box, 13, -50, 5, 13, 50, 5)).isCloseTo(3, within(1e-6));
        assertThat(distance(box, 14, -14, 5, -14, 14, 5))
                .as("a segment through it")
                .isZero();
        assertThat(distance(box, 20, 0, 5, 0, 20, 5))
                .as("a segment on its arris")
                .isCloseTo(0, within(1e-6));
        assertThat(distance(box, 26, 0, 5, 0, 26, 5)).isCloseTo(6 / Math.sqrt(2), within(1e-6));
        assertThat(distance(box, -50, -50, 12, 50, -50, 12, 0, 80, 12)).isCloseTo(2, within(1e-6));
        assertThat(distance(box, 12, 5, 5, 12, 5, 5, 12, 5, 5))
                .as("one point three times")
                .isCloseTo(2, within(1e-6));
        assertThat(distance(box, 12, 5, 5, 13, 5, 5, 14, 5, 5, 15, 5, 5))
                .as("in one line")
                .isCloseTo(2, within(1e-6));
    }

    @Test
    void boxesFromBoxes() {
        Random random = new Random(5);
        int meeting = 0;
        for (int round = 0; round < 5000; round++) {
            Box one = box(random);
            Box other = box(random);
            double x = gap(one, other, 0);
            double y = gap(one, other, 1);
            double z = gap(one, other, 2);
            double expected = Math.sqrt(x * x + y * y + z * z);
            if (expected == 0) meeting++;
            assertThat(distance(other, corners(one)))
                    .as("%s from %s", one, other)
                    .isCloseTo(expected, within(2e-6));
        }
        assertThat(meeting).isBetween(100, 4000);
    }

    /** Coordinates on a coarse grid, so that sides often touch, lie in one plane or have no thickness. */
    private static Box box(Random random) {
        return Box.between(
                new Vector3d(random.nextInt(9), random.nextInt(9), random.nextInt(9)),
                new Vector3d(random.nextInt(9), random.nextInt(9), random.nextInt(9)));
    }

    private static double gap(Box one, Box other, int axis) {
        return Math.max(0, Math.max(one.min(axis) - other.max(axis), other.min(axis) - one.max(axis)));
    }

    @Test
    void aBallOfPointsKeepsItsDistance() {
        Random random = new Random(6);
        double[] ball = DoubleStream.generate(random::nextGaussian).limit(60000).toArray();
        for (int k = 0; k < ball.length; k += 3) {
            Vector3d at = new Vector3d(ball[k], ball[k + 1], ball[k + 2]).normalize(20);
            ball[k] = at.x;
            ball[k + 1] = at.y;
            ball[k + 2] = at.z;
        }
        assertThat(distance(Box.of(30, 40, -5, 60, 60, 5), ball)).isCloseTo(30, within(0.05));
        assertThat(distance(Box.of(-1, -1, 21, 1, 1, 30), ball)).isCloseTo(1, within(0.05));
        assertThat(distance(Box.of(-1, -1, 19.5, 1, 1, 30), ball)).isZero();
    }

    @Test
    void endsEarlyOnceItIsSureOfEnough() {
        Box box = Box.of(0, 0, 0, 10, 10, 10);
        assertThat(new ConvexDistance(new Hull(new double[] {40, 5, 5, 60, 5, 5}), box).solve(12))
                .isBetween(12.0, 30.0);
    }
}
