package org.marktwice.timber;

import org.joml.Vector3d;
import org.joml.Vector3dc;

/** A position on a board's surface, in that surface's own two board coordinates (millimetres). */
public record SurfacePoint(Surface surface, double u, double v) {
    /** The same point in the board's frame, on a true box of this size. */
    public Vector3dc in(Size size) {
        return new Vector3d()
                .setComponent(surface.uAxis(), u)
                .setComponent(surface.vAxis(), v)
                .setComponent(surface.axis(), surface.sign() > 0 ? size.along(surface.axis()) : 0);
    }
}
