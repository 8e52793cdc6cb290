package org.marktwice.timber;

/** The line where two adjoining surfaces of a board meet. The order of the two does not matter. */
public record Arris(Surface one, Surface other) {
    /** @throws IllegalArgumentException where the two surfaces are the same or opposite */
    public Arris {
        if (!one.adjoins(other)) {
            throw new IllegalArgumentException(one.id() + " and " + other.id() + " share no arris");
        }
        if (one.compareTo(other) > 0) {
            Surface swap = one;
            one = other;
            other = swap;
        }
    }

    public boolean bounds(Surface surface) {
        return surface == one || surface == other;
    }

    /** The axis along which the arris runs: 0 = x, 1 = y, 2 = z. */
    public int axis() {
        return 3 - one.axis() - other.axis();
    }
}
