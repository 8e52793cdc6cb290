package org.marktwice.view.bench;

import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;

/**
 * Where the learner points, in the board's own terms, whichever view it is pointed at in.
 *
 * @param at the very point, in surface millimetres
 * @param snap the nearest thing worth pointing at, within a few pixels; the very point, to half a millimetre, where there is none
 */
public record Aim(SurfacePoint at, Snap snap) {
    public Surface surface() {
        return at.surface();
    }
}
