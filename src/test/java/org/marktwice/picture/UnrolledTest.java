package org.marktwice.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Font;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;

class UnrolledTest {
    private final Font font = Contact.font();
    private final Board board = Samples.pine();
    private final Unrolled unrolled = Unrolled.in(new Rectangle2D.Double(16, 16, 868, 388), board, font);

    @ParameterizedTest
    @EnumSource(Surface.class)
    void pickingWhereAPointIsDrawnGivesThePoint(Surface s) {
        Random r = new Random(s.ordinal());
        for (int i = 0; i < 40; i++) {
            SurfacePoint p = IsometricTest.anyPoint(s, r);
            SurfacePoint seen = unrolled.pick(unrolled.project(p)).orElseThrow();
            assertThat(seen.surface()).isEqualTo(s);
            assertThat(seen.u()).isCloseTo(p.u(), within(1e-9));
            assertThat(seen.v()).isCloseTo(p.v(), within(1e-9));
        }
    }

    @Test
    void betweenTheStripsNothingIsPicked() {
        Rectangle2D face = unrolled.place(Surface.FACE_1);
        assertThat(unrolled.pick(new Point2D.Double(face.getCenterX(), face.getMaxY() + 3)))
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"868, 388", "500, 900", "2000, 260"})
    void everySurfaceIsToOneScaleInsideTheAreaAndClearOfTheOthers(double width, double height) {
        Rectangle2D area = new Rectangle2D.Double(5, 7, width, height);
        Unrolled u = Unrolled.in(area, board, font);
        for (Surface s : Surface.values()) {
            Rectangle2D place = u.place(s);
            assertThat(place.getWidth()).isCloseTo(u.scale() * board.uExtent(s), within(1e-9));
            assertThat(place.getHeight()).isCloseTo(u.scale() * board.vExtent(s), within(1e-9));
            for (Surface other : Surface.values()) {
                assertThat(other != s && place.intersects(u.place(other))).isFalse();
            }
        }
        Rectangle2D b = u.bounds();
        Rectangle2D grown = new Rectangle2D.Double(5 - 1e-9, 7 - 1e-9, width + 2e-9, height + 2e-9);
        assertThat(grown.contains(b)).as("%s in %s", b, area).isTrue();
    }

    /** A pith below face-2 puts the bark on face-1. Common practice, by the direction of the rings. */
    @Test
    void theNotesTellPlanedFromSawnAndBarkFromHeart() {
        assertThat(board.pith().orElseThrow().z()).isLessThan(0);
        assertThat(Unrolled.note(board, Surface.FACE_1)).isEqualTo("planed · bark side");
        assertThat(Unrolled.note(board, Surface.FACE_2)).isEqualTo("planed · heart side");
        assertThat(Unrolled.note(board, Surface.EDGE_1)).isEqualTo("planed");
        assertThat(Unrolled.note(Samples.sheet(), Surface.EDGE_2)).isEqualTo("plies");
    }
}
