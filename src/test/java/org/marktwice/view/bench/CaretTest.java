package org.marktwice.view.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.joml.Vector3d;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.marktwice.Fixtures;
import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;

class CaretTest {
    private static final Board A = Fixtures.porchShelfBoards().get(0);

    @ParameterizedTest
    @CsvSource({
        "FACE_1, DOWN,  EDGE_1",
        "EDGE_1, DOWN,  FACE_2",
        "EDGE_2, DOWN,  FACE_1",
        "FACE_1, UP,    EDGE_2",
        "FACE_2, LEFT,  END_1",
        "FACE_2, RIGHT, END_2",
        "END_1,  RIGHT, FACE_1",
        "END_1,  LEFT,  END_1",
        "END_2,  LEFT,  FACE_1",
    })
    void the_arrows_go_from_surface_to_surface_as_the_board_lies_unrolled(
            Surface from, ToolKey.Stroke way, Surface to) {
        assertThat(Caret.towards(from, way)).isEqualTo(to);
    }

    @Test
    void going_down_over_the_arris_is_a_short_way_on_the_solid() {
        // Law: a step on the unrolled board never moves the place on the solid by more than the step.
        Random random = new Random(20);
        SurfacePoint at = Caret.middle(A, Surface.FACE_1);
        for (int i = 0; i < 3000; i++) {
            double right = random.nextInt(21) - 10;
            double down = random.nextInt(17) - 8;
            SurfacePoint next = Caret.moved(A, at, right, down);
            double way = new Vector3d(at.in(A.size())).distance(next.in(A.size()));
            assertThat(way).as("%s to %s", at, next).isLessThanOrEqualTo(Math.abs(right) + Math.abs(down) + 1e-9);
            at = next;
        }
    }

    @Test
    void all_four_long_surfaces_are_met_on_the_way_round() {
        SurfacePoint at = new SurfacePoint(Surface.FACE_1, 100, 119.5);
        StringBuilder met = new StringBuilder();
        double round = 2 * (A.size().width() + A.size().thickness());
        for (int i = 0; i < round; i++) {
            if (met.indexOf(at.surface().id()) < 0)
                met.append(at.surface().id()).append(' ');
            at = Caret.moved(A, at, 0, 1);
        }
        assertThat(met.toString().trim()).isEqualTo("face-1 edge-1 face-2 edge-2");
        assertThat(at.surface()).isEqualTo(Surface.FACE_1);
        assertThat(at.v()).isEqualTo(119.5, within(1e-9));
    }
}
