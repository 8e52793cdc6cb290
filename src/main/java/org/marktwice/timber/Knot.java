package org.marktwice.timber;

import org.joml.Vector3d;
import org.joml.Vector3dc;

/**
 * A branch grown into the stem: it starts on the pith at {@code x} and runs along a unit vector; its radius at the
 * distance s along it is {@code min(s · tan(halfAngle), maxRadius)}, a cone and then a cylinder.
 *
 * @param id the name in its board
 * @param x where on the pith it starts, in millimetres from end-1
 * @param azimuth degrees in the y–z plane, from +y towards +z
 * @param lean degrees from the +x direction; 90 is square to the stem
 * @param halfAngle degrees between the cone's axis and its flank, above 0 and below 90
 * @param maxRadius millimetres, above 0
 * @param deadFrom millimetres along the branch from which it is dead (encased)
 * @param endsAt millimetres along the branch at which it ends; {@link Double#POSITIVE_INFINITY} where it runs on
 */
public record Knot(
        String id,
        double x,
        double azimuth,
        double lean,
        double halfAngle,
        double maxRadius,
        double deadFrom,
        double endsAt) {

    /** The unit vector along which the branch grows, in the board's frame. */
    public Vector3dc direction() {
        double a = Math.toRadians(azimuth);
        double l = Math.toRadians(lean);
        return new Vector3d(Math.cos(l), Math.sin(l) * Math.cos(a), Math.sin(l) * Math.sin(a));
    }

    /** The radius in millimetres at the distance {@code s} ≥ 0 along the branch. */
    public double radius(double s) {
        return Math.min(s * Math.tan(Math.toRadians(halfAngle)), maxRadius);
    }

    /** The distance along the branch at which the cone becomes a cylinder, in millimetres. */
    public double coneLength() {
        return maxRadius / Math.tan(Math.toRadians(halfAngle));
    }

    /** The greatest diameter, in millimetres; graders call it the knot's size when square to the branch. */
    public double diameter() {
        return 2 * maxRadius;
    }

    public boolean liveAt(double s) {
        return s < deadFrom;
    }
}
