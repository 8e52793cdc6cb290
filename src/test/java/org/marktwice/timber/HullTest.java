package org.marktwice.timber;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** The farthest point, against every point looked at. */
class HullTest {
    private static double along(double x, double y, double z, double[] d) {
        return d[0] * x + d[1] * y + d[2] * z;
    }

    private static double farthest(double[] points, double[] d) {
        double most = Double.NEGATIVE_INFINITY;
        for (int k = 0; k < points.length; k += 3)
            most = Math.max(most, along(points[k], points[k + 1], points[k + 2], d));
        return most;
    }

    /** Round, flat, in one line, in one place and few, far off the middle of things as boards' ends are. */
    private static double[] points(Random random) {
        int count = 1 + random.nextInt(200);
        double[] stretch = {random.nextInt(4) * 10, random.nextInt(4) * 5, random.nextInt(4)};
        double[] points = new double[3 * count];
        for (int k = 0; k < points.length; k++) {
            points[k] =
                    300 * (k % 3) + stretch[k % 3] * (random.nextBoolean() ? random.nextDouble() : random.nextInt(3));
        }
        return points;
    }

    @Test
    void noPointLiesFarther() {
        Random random = new Random(3);
        for (int round = 0; round < 2000; round++) {
            double[] points = points(random);
            Hull hull = new Hull(points);
            for (int i = 0; i < 20; i++) {
                double[] d = {random.nextInt(3) - 1, random.nextGaussian(), random.nextGaussian() * random.nextInt(2)};
                int k = hull.farthest(d[0], d[1], d[2]);
                assertThat(along(hull.at(k), hull.at(k + 1), hull.at(k + 2), d)).isEqualTo(farthest(points, d));
            }
        }
    }

    @Test
    void itsMiddleIsTheMean() {
        Hull hull = new Hull(new double[] {0, 0, 0, 3, 0, 9, 6, 30, 0});
        assertThat(new double[] {hull.middle(0), hull.middle(1), hull.middle(2)})
                .containsExactly(3, 10, 3);
    }
}
