package org.marktwice.timber;

/** Where the heart of the tree lies: a line parallel to the board's x axis at (y, z), in millimetres, mostly outside the board. */
public record Pith(double y, double z) {
    /** The distance of a point of the board's cross-section from the pith, in millimetres. */
    public double distance(double atY, double atZ) {
        return Math.hypot(atY - y, atZ - z);
    }
}
