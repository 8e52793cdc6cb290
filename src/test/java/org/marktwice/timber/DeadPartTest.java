package org.marktwice.timber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import org.joml.Vector3d;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What of a knot is dead. The board is 300 × 100 × 20 and its pith lies 40 mm under the middle of face-2, so that a branch
 * straight up at x = 150 is in the board from s = 40 to s = 60.
 */
class DeadPartTest {
    private static KnotBody knot(double halfAngle, double maxRadius, double deadFrom) {
        Knot knot = new Knot("k", 150, 90, 90, halfAngle, maxRadius, deadFrom, Double.POSITIVE_INFINITY);
        Board.Facts facts = new Board.Facts(
                "A",
                Stuff.TIMBER,
                null,
                new Size(300, 100, 20),
                12,
                12,
                Set.of(),
                new Pith(50, -40),
                2,
                List.of(knot),
                Shape.TRUE,
                0);
        return KnotBody.of(knot, facts);
    }

    /** A cylinder of radius 8 in the whole board: it begins deadFrom − 40 above face-2, and reaches down from there. */
    @ParameterizedTest
    @CsvSource({"30, 0", "45, 5", "50, 10", "59, 19"})
    void beginsWhereTheBranchDied(double deadFrom, double above) {
        KnotBody dead = knot(80, 8, deadFrom).deadPart();

        assertThat(dead.clearance(Box.of(0, 0, 0, 300, 100, 0))).isCloseTo(above, within(0.05));
        assertThat(dead.contains(new Vector3d(150, 50, Math.max(0, above - 0.5))))
                .isEqualTo(above == 0);
        assertThat(dead.contains(new Vector3d(150, 50, above + 0.5))).isTrue();
    }

    @Test
    void showsOnlyWhereItIsDead() {
        KnotBody body = knot(80, 8, 50);

        assertThat(body.traces()).extracting(Trace::surface).containsExactly(Surface.FACE_1, Surface.FACE_2);
        assertThat(body.deadPart().traces()).extracting(Trace::surface).containsExactly(Surface.FACE_1);
        assertThat(body.deadPart().trace(Surface.FACE_1)).isEqualTo(body.trace(Surface.FACE_1));
    }

    /**
     * Cone of 10°: the radius is s · tan 10°, 8.816 at s = 50 and 10.580 at s = 60, where the cone still runs. Square to its flank it
     * is (50 − 30 − 8.816) · cos 10° = 11.014 from the line 20 to the side of its axis at s = 50.
     */
    @Test
    void keepsTheConesTaper() {
        KnotBody dead = knot(10, 20, 50).deadPart();

        assertThat(dead.clearance(Box.of(0, 0, 20, 100, 100, 20))).isCloseTo(50 - 10.580, within(0.05));
        assertThat(dead.clearance(Box.of(0, 0, 0, 300, 30, 10))).isCloseTo(11.014, within(0.05));
    }

    @ParameterizedTest
    @CsvSource({"60", "70", "Infinity"})
    void isEmptyWhereTheBranchIsLiveThroughoutTheBoard(double deadFrom) {
        assertThat(knot(80, 8, deadFrom).deadPart().isEmpty()).isTrue();
    }

    @ParameterizedTest
    @CsvSource({"0", "40"})
    void isAllOfTheKnotWhereItDiedBeforeTheBoard(double deadFrom) {
        KnotBody body = knot(80, 8, deadFrom);

        for (Box cut : List.of(Box.of(0, 0, 0, 100, 100, 20), Box.of(155, 80, 5, 300, 90, 9))) {
            assertThat(body.deadPart().clearance(cut)).isCloseTo(body.clearance(cut), within(1e-9));
        }
    }
}
