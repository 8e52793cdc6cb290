package org.marktwice.rulebook;

import java.util.List;
import java.util.Optional;
import org.joml.Matrix3d;
import org.joml.Matrix3dc;
import org.joml.Vector3d;
import org.joml.Vector3dc;
import org.marktwice.bench.Mark;
import org.marktwice.drawing.Cut;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Placing;
import org.marktwice.timber.Box;

/**
 * Where a part's joints come out when they are set out from the marks on its board: as far from face side and face edge as
 * the drawing has them, and from the same end. It carries the drawn part into the part as marked, turned or mirrored about
 * the part's own middle: mirrored, where the board is the other hand.
 */
record AsMarked(Vector3dc middle, Matrix3dc carry) {

    /** Empty where nothing can be set out from these marks: they adjoin on no long arris, or stand on the wrong kind of surface. */
    static Optional<AsMarked> of(Placing lies, Mark faceSide, Mark faceEdge) {
        Part part = lies.part();
        Direction side = lies.turn().of(faceSide.on());
        Direction edge = lies.turn().of(faceEdge.on());
        Direction drawnSide = nearest(part.faceSide(), side);
        Direction drawnEdge = nearest(part.faceEdge(), edge);
        int along = part.length().ordinal();
        boolean square = lies.board().isSquare();
        boolean broad = side.axis() == drawnSide.axis() && edge.axis() == drawnEdge.axis();
        if (side.axis() == edge.axis() || side.axis() == along || edge.axis() == along) return Optional.empty();
        if (drawnSide.axis() == drawnEdge.axis() || !broad && !square) return Optional.empty();
        Matrix3d carry = new Matrix3d();
        carry.setColumn(along, Direction.on(along, +1).unit());
        carry.setColumn(drawnSide.axis(), side.unit().mul(drawnSide.sign(), new Vector3d()));
        carry.setColumn(drawnEdge.axis(), edge.unit().mul(drawnEdge.sign(), new Vector3d()));
        return Optional.of(new AsMarked(part.box().centre(), carry));
    }

    /** Of the directions that the drawing allows the one in which it looks, else one on the same axis, else the first. */
    private static Direction nearest(List<Direction> allowed, Direction looks) {
        if (allowed.contains(looks)) return looks;
        return allowed.contains(looks.opposite()) ? looks.opposite() : allowed.get(0);
    }

    Box of(Box drawn) {
        return Box.between(of(drawn.min()), of(drawn.max()));
    }

    Cut of(Cut drawn) {
        return new Cut(drawn.joint(), drawn.boxes().stream().map(this::of).toList());
    }

    private Vector3d of(Vector3dc point) {
        return carry.transform(point.sub(middle, new Vector3d())).add(middle);
    }
}
