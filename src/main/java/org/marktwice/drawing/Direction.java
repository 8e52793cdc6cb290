package org.marktwice.drawing;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.joml.Vector3d;
import org.joml.Vector3dc;

/** A direction of the assembled job: X to the right, Y to the back, Z up. */
public enum Direction {
    LEFT(0, -1),
    RIGHT(0, +1),
    FRONT(1, -1),
    BACK(1, +1),
    BOTTOM(2, -1),
    TOP(2, +1);

    // values() copies its array, and turns are worked out in inner loops
    private static final Direction[] ALL = values();

    private final int axis;
    private final int sign;

    Direction(int axis, int sign) {
        this.axis = axis;
        this.sign = sign;
    }

    /** 0 = X, 1 = Y, 2 = Z. */
    public int axis() {
        return axis;
    }

    public int sign() {
        return sign;
    }

    public Vector3dc unit() {
        return new Vector3d().setComponent(axis, sign);
    }

    public Direction opposite() {
        return on(axis, -sign);
    }

    public static Direction on(int axis, int sign) {
        for (Direction d : ALL) {
            if (d.axis == axis && d.sign == sign) return d;
        }
        throw new IllegalArgumentException("no direction on axis " + axis + ", sign " + sign);
    }

    /** The name in files and in a sentence. */
    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Optional<Direction> of(String id) {
        return Stream.of(values()).filter(d -> d.id().equals(id)).findFirst();
    }
}
