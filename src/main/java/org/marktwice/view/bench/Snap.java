package org.marktwice.view.bench;

import org.marktwice.timber.SurfacePoint;

/**
 * A point that the rule takes to.
 *
 * @param to what it lies on
 * @param what that thing in words; empty for {@link To#NOTHING}
 */
public record Snap(SurfacePoint point, To to, String what) {
    /** What a point can lie on, the more telling first. */
    public enum To {
        CORNER,
        KNOT,
        CUT,
        LINE,
        ARRIS,
        NOTHING
    }
}
