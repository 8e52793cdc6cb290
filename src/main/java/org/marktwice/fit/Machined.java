package org.marktwice.fit;

import org.joml.Vector3d;
import org.marktwice.timber.Board;
import org.marktwice.timber.Shape;
import org.marktwice.timber.Size;
import org.marktwice.timber.Surface;
import org.marktwice.timber.TrueForm;

/**
 * Where a board's surfaces are as tools bear on them. Distances through the wood count from face-1 and edge-1, which taper
 * and thickening are counted from; bow, spring, twist and cup bend both sides alike, and so change directions but no
 * distances.
 */
final class Machined {
    /** Over so much of a surface the stock of a square bears, millimetres: common for a schoolroom's square. */
    private static final double STOCK = 100;

    private final Board board;
    private final TrueForm form;

    Machined(Board board) {
        this.board = board;
        this.form = TrueForm.now(board);
    }

    /** The coordinate of a surface where it meets an adjoining one, so far along the board (x, millimetres). */
    double coordinate(Surface surface, Surface adjoining, double x) {
        Size size = board.size();
        Shape shape = board.shape();
        double along = x / size.length() - 0.5;
        return switch (surface) {
            case FACE_1 -> size.thickness();
            case FACE_2 -> -shape.thickening() * along;
            case EDGE_1 -> lean(surface, adjoining);
            case EDGE_2 -> size.width() + shape.taper() * along - lean(surface, adjoining);
            case END_1 -> lean(surface, adjoining);
            case END_2 -> size.length() - lean(surface, adjoining);
        };
    }

    /** What being out of square to face-1 does at the height of a face; nothing half-way. */
    private double lean(Surface surface, Surface face) {
        if (!face.isFace()) return 0;
        double fromMiddle = face.sign() * board.size().thickness() / 2;
        return fromMiddle * Math.tan(Math.toRadians(board.shape().outOfSquare(surface)));
    }

    /** The x of an end where it is met by the arris of two long surfaces. */
    double end(Surface end, Surface one, Surface other) {
        return coordinate(end, one.isFace() ? one : other, 0);
    }

    /**
     * How fast a long surface comes out along the board at x, millimetres a millimetre, as the stock of a square finds it:
     * at the arris with the surface that carries the line.
     */
    double comesOut(Surface surface, Surface carries, double x) {
        double length = board.size().length();
        double from = Math.max(0, Math.min(x - STOCK / 2, length - STOCK));
        double to = Math.min(length, from + STOCK);
        return (out(surface, carries, to) - out(surface, carries, from)) / (to - from);
    }

    private double out(Surface surface, Surface carries, double x) {
        Size size = board.size();
        Vector3d at = new Vector3d(x, 0, 0)
                .setComponent(surface.axis(), surface.sign() > 0 ? size.along(surface.axis()) : 0)
                .setComponent(carries.axis(), carries.sign() > 0 ? size.along(carries.axis()) : 0);
        return form.displacement(at).get(surface.axis()) * surface.sign();
    }
}
