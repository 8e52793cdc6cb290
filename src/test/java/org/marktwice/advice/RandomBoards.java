package org.marktwice.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.marktwice.Fixtures;
import org.marktwice.timber.Board;
import org.marktwice.timber.Knot;
import org.marktwice.timber.Surface;

/** Boards 120 × 18 with knots anywhere, the same ones for the same seed. */
final class RandomBoards {
    private RandomBoards() {}

    /** @param most the greatest number of knots */
    static Board knotty(Random random, String id, double length, int most) {
        List<Knot> knots = new ArrayList<>();
        int count = random.nextInt(most + 1);
        for (int i = 0; i < count; i++) {
            knots.add(new Knot(
                    "k" + i,
                    random.nextDouble() * length,
                    60 + random.nextDouble() * 60,
                    60 + random.nextDouble() * 60,
                    4 + random.nextDouble() * 4,
                    3 + random.nextDouble() * 7,
                    60,
                    Double.POSITIVE_INFINITY));
        }
        Surface[] dressed = random.nextInt(4) == 0
                ? new Surface[] {Surface.FACE_1, Surface.FACE_2, Surface.EDGE_1}
                : Surface.values();
        return Fixtures.board(id)
                .size(length, 120, 18)
                .pith(20 + random.nextDouble() * 80, -30 - random.nextDouble() * 60)
                .dressed(dressed)
                .knots(knots.toArray(Knot[]::new))
                .board();
    }
}
