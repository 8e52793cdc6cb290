package org.marktwice.view.bench;

import java.awt.geom.Point2D;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import org.marktwice.timber.SurfacePoint;

/** A view that shows some of a board's surfaces, so that one can point at them. */
interface PatchView {
    JComponent component();

    /** The surfaces to be seen, those in front first. */
    List<Patch> patches();

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
