package org.marktwice.view.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.AffineTransform;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.marktwice.Fixtures;
import org.marktwice.bench.BoardState;
import org.marktwice.drawing.Cut;
import org.marktwice.timber.Board;
import org.marktwice.timber.Box;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;
import org.marktwice.timber.Trace;

class SnapperTest {
    private static final Board A = Fixtures.porchShelfBoards().get(0);
    private static final BoardState STATE = BoardState.fresh(A);
    private static final AffineTransform ONE = new AffineTransform();

    /** Board A is 312 × 120 × 18; reach is 8 pixels. */
    @ParameterizedTest
    @CsvSource({
        "1,   60.2, 1,  0,   60,    ARRIS,   in reach of end 1",
        "5,   60.2, 1,  0,   60,    ARRIS,   still in reach",
        "9,   60.2, 1,  9,   60,    NOTHING, out of reach: to half a millimetre",
        "3,   60.2, 4,  3,   60,    NOTHING, at four pixels a millimetre twelve pixels away",
        "200.3, 117, 1, 200.5, 120, ARRIS,   the arris with edge 2",
        "200.3, 4, 1,   200.5, 0,   ARRIS,   the arris with edge 1",
        "3,   2,    1,  0,   0,     CORNER,  a corner goes before an arris",
        "310, 118,  1,  312, 120,   CORNER,  the far corner",
        "400, 60,   1,  312, 60,    NOTHING, never off the board",
        "250.26, 33.74, 1, 250.5, 33.5, NOTHING, free points go to the nearest half",
    })
    void takes_to_the_nearest_thing_in_reach(
            double u, double v, double scale, double toU, double toV, Snap.To to, String why) {
        AffineTransform view = AffineTransform.getScaleInstance(scale, scale);
        Snap snap = new Snapper(STATE, Surface.FACE_1, List.of()).snap(u, v, view, 8);
        assertThat(snap.to()).as(why).isEqualTo(to);
        assertThat(snap.point()).as(why).isEqualTo(new SurfacePoint(Surface.FACE_1, toU, toV));
    }

    @Test
    void takes_to_the_edge_of_a_knot_and_names_it() {
        Trace knot = A.traces(Surface.FACE_1).get(0);
        double left = knot.middle().u() - knot.length() / 2;
        Snap snap = new Snapper(STATE, Surface.FACE_1, List.of())
                .snap(left - 2, knot.middle().v(), ONE, 8);
        assertThat(snap.to()).isEqualTo(Snap.To.KNOT);
        assertThat(snap.what()).isEqualTo("knot 1");
        assertThat(snap.point().u()).isEqualTo(left, within(1e-9));
    }

    @Test
    void takes_to_cuts_only_where_they_are_shown_and_reach_the_surface() {
        Cut housing = new Cut("j", List.of(Box.of(150, 0, 12, 168, 120, 18)));
        Snapper shown = new Snapper(STATE, Surface.FACE_1, List.of(housing));
        Snapper hidden = new Snapper(STATE, Surface.FACE_1, List.of());
        Snapper below = new Snapper(STATE, Surface.FACE_2, List.of(housing));
        assertThat(shown.snap(147, 60, ONE, 8).point()).isEqualTo(new SurfacePoint(Surface.FACE_1, 150, 60));
        assertThat(shown.snap(147, 60, ONE, 8).to()).isEqualTo(Snap.To.CUT);
        assertThat(hidden.snap(147, 60, ONE, 8).to()).isEqualTo(Snap.To.NOTHING);
        assertThat(below.snap(147, 60, ONE, 8).to()).isEqualTo(Snap.To.NOTHING);
    }

    @Test
    void reach_is_measured_in_the_view_whatever_its_slant() {
        // A view that squeezes the width to a quarter: 20 mm across are 5 pixels.
        AffineTransform squeezed = AffineTransform.getScaleInstance(1, 0.25);
        Snap snap = new Snapper(STATE, Surface.FACE_1, List.of()).snap(200, 100, squeezed, 8);
        assertThat(snap.point()).isEqualTo(new SurfacePoint(Surface.FACE_1, 200, 120));
    }

    @Test
    void stepping_by_key_goes_round_all_that_can_be_measured_from() {
        List<Snap> stops = new Snapper(STATE, Surface.FACE_1, List.of()).stops();
        SurfacePoint at = new SurfacePoint(Surface.FACE_1, 0, 0);
        for (int i = 0; i < stops.size(); i++) {
            at = Caret.next(STATE, at, List.of(), List.of(), true).point();
        }
        assertThat(at).isEqualTo(new SurfacePoint(Surface.FACE_1, 0, 0));
        assertThat(Caret.next(STATE, at, List.of(), List.of(), false).point())
                .isEqualTo(stops.get(stops.size() - 1).point());
    }
}
