package org.marktwice.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Point2D;
import org.joml.Vector3d;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.marktwice.timber.Size;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;

class SurfaceFrameTest {
    private static final Size SIZE = new Size(300, 90, 20);

    /** Page right × page up points out of the board, at whoever looks: a mirrored frame would point into it. */
    @ParameterizedTest
    @EnumSource(Surface.class)
    void noSurfaceIsMirrored(Surface s) {
        Vector3d right = on(s, 11, 10).sub(on(s, 10, 10));
        Vector3d up = on(s, 10, 9).sub(on(s, 10, 10));
        Vector3d out = right.cross(up, new Vector3d());
        assertThat(out.distance(s.normal())).isLessThan(1e-12);
    }

    private static Vector3d on(Surface s, double pageX, double pageY) {
        return new Vector3d(SurfaceFrame.of(s, SIZE)
                .toSurface(new Point2D.Double(pageX, pageY))
                .in(SIZE));
    }

    @ParameterizedTest
    @EnumSource(Surface.class)
    void theFramesCornersAreTheSurfacesCorners(Surface s) {
        SurfaceFrame frame = SurfaceFrame.of(s, SIZE);
        Point2D.Double a = frame.toPage(0, 0);
        Point2D.Double b = frame.toPage(SIZE.along(s.uAxis()), SIZE.along(s.vAxis()));
        assertThat(Math.min(a.x, b.x)).isZero();
        assertThat(Math.min(a.y, b.y)).isZero();
        assertThat(Math.max(a.x, b.x)).isEqualTo(frame.width());
        assertThat(Math.max(a.y, b.y)).isEqualTo(frame.height());
    }

    @ParameterizedTest
    @EnumSource(Surface.class)
    void thereAndBackIsWhereOneWas(Surface s) {
        SurfaceFrame frame = SurfaceFrame.of(s, SIZE);
        SurfacePoint p = new SurfacePoint(s, 7, 13);
        SurfacePoint back = frame.toSurface(frame.toPage(p));
        assertThat(back.u()).isCloseTo(7, within(1e-12));
        assertThat(back.v()).isCloseTo(13, within(1e-12));
        Point2D byMap = frame.toPage().transform(new Point2D.Double(7, 13), null);
        assertThat(byMap.distance(frame.toPage(p))).isLessThan(1e-12);
    }

    /** Each strip's foot is the next one's head: what runs over an arris goes on below. */
    @Test
    void theUnrolledStripsShareTheirArrises() {
        for (int i = 0; i < 4; i++) {
            Surface upper = Surface.LONG.get(i);
            Surface lower = Surface.LONG.get((i + 1) % 4);
            Vector3d foot = on(upper, 40, SurfaceFrame.of(upper, SIZE).height());
            Vector3d head = on(lower, 40, 0);
            assertThat(foot.distance(head)).as(upper + " to " + lower).isLessThan(1e-12);
        }
    }

    @ParameterizedTest
    @EnumSource(names = {"END_1", "END_2"})
    void bothEndsAreSeenWithFaceOneAtTheTop(Surface end) {
        assertThat(on(end, 10, 0).z).isEqualTo(SIZE.thickness());
    }
}
