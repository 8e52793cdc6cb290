package org.marktwice.view.bench;

import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;

/**
 * Where the learner points, in the board's own terms, whichever view it is pointed at in.
 *
 * @param at the very point, in surface millimetres
 * @param snap the nearest thing worth pointing at, within a few pixels; the very point, to half a millimetre, where there is none
 * @param shift whether Shift is held meanwhile
 */
public record Aim(SurfacePoint at, Snap snap, boolean shift) {
    public Aim(SurfacePoint at, Snap snap) {
        this(at, snap, false);
    }

    public Surface surface() {
        return at.surface();
    }
}
