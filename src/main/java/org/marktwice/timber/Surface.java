package org.marktwice.timber;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.joml.Vector3d;
import org.joml.Vector3dc;

/**
 * One of the six surfaces of a board, by its outward normal in the board's right-handed frame: x along the grain, y
 * across the width, z through the thickness.
 *
 * <p>A position on a surface is that surface's own two board coordinates, in millimetres: faces (x, y), edges (x, z),
 * ends (y, z).
 */
public enum Surface {
    FACE_1(2, +1),
    FACE_2(2, -1),
    EDGE_1(1, -1),
    EDGE_2(1, +1),
    END_1(0, -1),
    END_2(0, +1);

    /** The four surfaces that run along the grain, in the order in which a board is unrolled. */
    public static final List<Surface> LONG = List.of(FACE_1, EDGE_1, FACE_2, EDGE_2);

    // values() copies its array, and surfaces are looked up in inner loops
    private static final Surface[] ALL = values();

    private final int axis;
    private final int sign;

    Surface(int axis, int sign) {
        this.axis = axis;
        this.sign = sign;
    }

    /** The board axis that the normal lies on: 0 = x, 1 = y, 2 = z. */
    public int axis() {
        return axis;
    }

    /** The direction of the outward normal along {@link #axis()}: +1 or −1. */
    public int sign() {
        return sign;
    }

    /** The board axis of the surface's first coordinate. */
    public int uAxis() {
        return axis == 0 ? 1 : 0;
    }

    /** The board axis of the surface's second coordinate. */
    public int vAxis() {
        return axis == 2 ? 1 : 2;
    }

    /** The outward unit normal in the board's frame. */
    public Vector3dc normal() {
        return new Vector3d().setComponent(axis, sign);
    }

    public boolean isFace() {
        return axis == 2;
    }

    public boolean isEdge() {
        return axis == 1;
    }

    public boolean isEnd() {
        return axis == 0;
    }

    public Surface opposite() {
        return on(axis, -sign);
    }

    /** Whether the two surfaces meet in an arris. */
    public boolean adjoins(Surface other) {
        return axis != other.axis;
    }

    /** The surface whose outward normal lies on {@code axis} (0 = x, 1 = y, 2 = z) with this sign. */
    public static Surface on(int axis, int sign) {
        for (Surface s : ALL) {
            if (s.axis == axis && s.sign == sign) return s;
        }
        throw new IllegalArgumentException("no surface on axis " + axis + ", sign " + sign);
    }

    /** The name in files: {@code face-1}, {@code edge-2}, {@code end-1}. */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The name in a sentence: {@code face 1}. */
    public String spoken() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    public static Optional<Surface> of(String id) {
        return Stream.of(values()).filter(s -> s.id().equals(id)).findFirst();
    }
}
