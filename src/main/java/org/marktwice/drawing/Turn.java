package org.marktwice.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joml.Matrix3d;
import org.joml.Matrix3dc;
import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;

/**
 * How a board lies in the job: a proper rotation that takes the board's axes to directions of the job. Never a mirror
 * image, which is why a left part and a right part are not the same board.
 *
 * @param x where the board's +x (end-2) looks
 * @param y where the board's +y (edge-2) looks
 * @param z where the board's +z (face-1) looks
 */
public record Turn(Direction x, Direction y, Direction z) {
    /** @throws IllegalArgumentException where two axes fall together or the three make a mirror image */
    public Turn {
        if (determinant(x, y, z) != 1) {
            throw new IllegalArgumentException("no rotation: " + x.id() + ", " + y.id() + ", " + z.id());
        }
    }

    private static int determinant(Direction x, Direction y, Direction z) {
        if (x.axis() == y.axis() || y.axis() == z.axis() || z.axis() == x.axis()) return 0;
        int order = (x.axis() + 1) % 3 == y.axis() ? 1 : -1;
        return order * x.sign() * y.sign() * z.sign();
    }

    /**
     * The turn that makes two adjoining surfaces look in these directions; the third direction follows. Empty where the
     * surfaces are the same or opposite, or the directions are.
     */
    public static Optional<Turn> facing(Surface one, Direction oneLooks, Surface other, Direction otherLooks) {
        if (!one.adjoins(other) || oneLooks.axis() == otherLooks.axis()) return Optional.empty();
        Direction[] to = new Direction[3];
        to[one.axis()] = one.sign() > 0 ? oneLooks : oneLooks.opposite();
        to[other.axis()] = other.sign() > 0 ? otherLooks : otherLooks.opposite();
        int third = 3 - one.axis() - other.axis();
        for (int sign : new int[] {+1, -1}) {
            to[third] = Direction.on(3 - oneLooks.axis() - otherLooks.axis(), sign);
            if (determinant(to[0], to[1], to[2]) == 1) return Optional.of(new Turn(to[0], to[1], to[2]));
        }
        throw new IllegalStateException("two perpendicular axes always have a third");
    }

    /**
     * The turns that lay length on length: four for a flat board, and for square stock the four more that swap width and
     * thickness.
     */
    public static List<Turn> in(Part part, boolean square) {
        List<Turn> turns = new ArrayList<>();
        int[] signs = {+1, -1};
        for (int swap = 0; swap < (square ? 2 : 1); swap++) {
            int yAxis = (swap == 0 ? part.width() : part.thickness()).ordinal();
            int zAxis = (swap == 0 ? part.thickness() : part.width()).ordinal();
            for (int sx : signs) {
                for (int sy : signs) {
                    for (int sz : signs) {
                        Direction x = Direction.on(part.length().ordinal(), sx);
                        Direction y = Direction.on(yAxis, sy);
                        Direction z = Direction.on(zAxis, sz);
                        if (determinant(x, y, z) == 1) turns.add(new Turn(x, y, z));
                    }
                }
            }
        }
        return List.copyOf(turns);
    }

    /**
     * The turns in which the part's marks can look as drawn and stand on dressed surfaces; all of them for a part without
     * marks.
     */
    public static List<Turn> allowed(Board board, Part part) {
        List<Turn> turns = in(part, board.isSquare() && part.size().isSquare(Board.SIZE_TOLERANCE));
        if (!part.takesMarks()) return turns;
        return turns.stream().filter(t -> t.canCarryMarks(board, part)).toList();
    }

    private boolean canCarryMarks(Board board, Part part) {
        boolean side =
                part.faceSide().stream().map(this::looking).anyMatch(s -> board.isBroad(s) && board.isDressed(s));
        boolean edge =
                part.faceEdge().stream().map(this::looking).anyMatch(s -> board.isNarrow(s) && board.isDressed(s));
        return side && edge;
    }

    /** Whether it lays a board's length on the part's length, and so on: it is one of those {@link #in} the part. */
    public boolean isIn(Part part, boolean square) {
        if (x.axis() != part.length().ordinal()) return false;
        return y.axis() == part.width().ordinal() || square;
    }

    /** Where a surface looks. */
    public Direction of(Surface surface) {
        Direction plus = along(surface.axis());
        return surface.sign() > 0 ? plus : plus.opposite();
    }

    /** The surface that looks in this direction. */
    public Surface looking(Direction direction) {
        for (Surface s : Surface.values()) {
            if (of(s) == direction) return s;
        }
        throw new IllegalStateException("every direction has a surface");
    }

    /** Where the board axis points: 0 = x, 1 = y, 2 = z. */
    public Direction along(int boardAxis) {
        return switch (boardAxis) {
            case 0 -> x;
            case 1 -> y;
            default -> z;
        };
    }

    /** The turn as a file names it: where face-1 and edge-1 look. */
    public Map<Surface, Direction> named() {
        return Map.of(Surface.FACE_1, of(Surface.FACE_1), Surface.EDGE_1, of(Surface.EDGE_1));
    }

    /** The rotation from the board's frame to the job's. */
    public Matrix3dc rotation() {
        return new Matrix3d().setColumn(0, x.unit()).setColumn(1, y.unit()).setColumn(2, z.unit());
    }
}
