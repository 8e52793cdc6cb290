package org.marktwice.timber;

import java.util.OptionalDouble;

/** What the measuring tools read on a board's true shape: machining departures and cup together. All in millimetres. */
public final class Trueness {
    private Trueness() {}

    /** Straight-edge laid across a surface at x: the deepest gap, + hollow, − rounded; empty with a boxed heart. */
    public static OptionalDouble across(Board board, Surface surface, double x) {
        throw new UnsupportedOperationException();
    }

    /** Straight-edge laid along a long surface: + hollow, − rounded. */
    public static double along(Board board, Surface surface) {
        throw new UnsupportedOperationException();
    }

    /** Winding sticks on a face: the rise of the far corner; 0 out of wind. */
    public static double wind(Board board, Surface face) {
        throw new UnsupportedOperationException();
    }

    /** Try-square, stock on one surface and blade on an adjoining one: degrees off 90, + where the angle in the wood is more than 90. */
    public static double square(Board board, Surface stock, Surface blade) {
        throw new UnsupportedOperationException();
    }

    /** The least distance between two parallel planes that hold the surface between them; what {@code truest-in} compares. */
    public static double departure(Board board, Surface surface) {
        throw new UnsupportedOperationException();
    }
}
