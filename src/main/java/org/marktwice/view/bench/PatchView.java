package org.marktwice.view.bench;

import java.awt.geom.Point2D;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;

/** A view that shows some of a board's surfaces, so that one can point at them. */
interface PatchView {
    JComponent component();

    /** The board that is shown. */
    Board board();

    /** The surfaces to be seen, those in front first. */
    List<Patch> patches();

    /** A millimetre along a surface's outward normal, in pixels; empty where the surface is seen square on. */
    default Optional<Point2D.Double> rise(Surface surface) {
        return Optional.empty();
    }

    /** How many times over the board's departures from a true box are drawn. */
    default double times() {
        return 1;
    }

    /** The place on the board under a pixel. */
    default Optional<Place> place(Point2D pixel) {
        for (Patch patch : patches()) {
            Optional<SurfacePoint> at = patch.at(pixel);
            if (at.isPresent()) return Optional.of(new Place(patch, at.get()));
        }
        return Optional.empty();
    }

    /** A place on the board, and the patch it is seen through. */
    record Place(Patch patch, SurfacePoint at) {}
}
