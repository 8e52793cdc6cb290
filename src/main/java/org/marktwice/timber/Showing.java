package org.marktwice.timber;

/**
 * Where somebody found a knot to show on a board, measured with a rule.
 *
 * @param u the middle of what shows, along the surface's first coordinate, millimetres
 * @param v the same along the second
 * @param length how much of the surface's first coordinate it takes up (along the grain, on long surfaces), millimetres
 * @param width the same of the second
 * @param dead whether it is dead there: encased in bark or loose
 */
public record Showing(Surface surface, double u, double v, double length, double width, boolean dead) {

    /** What is left to see of a trace. */
    public static Showing of(Trace trace) {
        SurfacePoint middle = trace.middle();
        return new Showing(trace.surface(), middle.u(), middle.v(), trace.length(), trace.width(), !trace.live());
    }

    /** The four readings in the order of the record. */
    double[] readings() {
        return new double[] {u, v, length, width};
    }

    /** The point in the board's frame. */
    double along(int axis, Size size) {
        if (axis == surface.uAxis()) return u;
        if (axis == surface.vAxis()) return v;
        return surface.sign() > 0 ? size.along(axis) : 0;
    }
}
