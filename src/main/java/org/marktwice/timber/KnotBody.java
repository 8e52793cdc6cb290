package org.marktwice.timber;

import java.util.List;
import java.util.Optional;
import org.joml.Vector3dc;

/** The convex part of a knot that lies inside its board, in the board's frame (millimetres). */
public final class KnotBody {
    private final Knot knot;

    private KnotBody(Knot knot) {
        this.knot = knot;
    }

    /** The part of the knot inside the board. */
    public static KnotBody of(Knot knot, Board.Facts board) {
        return new KnotBody(knot);
    }

    public Knot knot() {
        return knot;
    }

    /** Whether no part of the knot lies inside the board. */
    public boolean isEmpty() {
        throw new UnsupportedOperationException();
    }

    /** The least distance from the body to the box, in millimetres; 0 where they meet; to 0.05 mm. */
    public double clearance(Box cut) {
        throw new UnsupportedOperationException();
    }

    /** Whether the point (board frame) lies in the knot and in the board. */
    public boolean contains(Vector3dc point) {
        throw new UnsupportedOperationException();
    }

    /** The traces on the board's surfaces, in the surfaces' order. */
    public List<Trace> traces() {
        throw new UnsupportedOperationException();
    }

    public Optional<Trace> trace(Surface surface) {
        return traces().stream().filter(t -> t.surface() == surface).findFirst();
    }
}
