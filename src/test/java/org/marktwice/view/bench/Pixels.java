package org.marktwice.view.bench;

import java.awt.Point;
import java.awt.geom.Point2D;
import org.marktwice.timber.SurfacePoint;

/** Where a place on a board is on the screen, for tests outside this package. To be asked on the event thread. */
public final class Pixels {
    private Pixels() {}

    public static Point of(BoardView view, SurfacePoint at) {
        return of((PatchView) view, at);
    }

    public static Point of(UnrolledView view, SurfacePoint at) {
        return of((PatchView) view, at);
    }

    private static Point of(PatchView view, SurfacePoint at) {
        Point2D p = view.patches().stream()
                .filter(patch -> patch.surface() == at.surface())
                .findFirst()
                .orElseThrow(() -> new AssertionError(at.surface() + " is not to be seen"))
                .toView(at);
        return new Point((int) Math.round(p.getX()), (int) Math.round(p.getY()));
    }
}
