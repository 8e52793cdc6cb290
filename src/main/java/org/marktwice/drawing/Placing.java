package org.marktwice.drawing;

import java.util.List;
import org.joml.Vector3d;
import org.joml.Vector3dc;
import org.marktwice.timber.Board;
import org.marktwice.timber.Box;
import org.marktwice.timber.Surface;

/**
 * A board laid in the job as one of its parts. Where the board is a little wider or thicker than the part, it lies
 * centred; along the grain it lies so that the trim comes off where it was set.
 */
public record Placing(Drawing drawing, Part part, Board board, Turn turn, Trim trim) {

    /** How much longer the board is than the part, millimetres; below 0 where it is too short. */
    public double surplus() {
        return board.size().length() - part.size().length();
    }

    /** What comes off this end, millimetres. */
    public double off(Surface end) {
        double one = trim.offEnd1(surplus());
        return end == Surface.END_1 ? one : surplus() - one;
    }

    /** The part's box in the board's frame: what is left of the board after trimming, before any joint is cut. */
    public Box partInBoard() {
        return toBoard(part.box());
    }

    /** What the part's joints take out of this board, in the board's frame. */
    public List<Cut> cuts() {
        return drawing.cuts(part).stream()
                .map(c ->
                        new Cut(c.joint(), c.boxes().stream().map(this::toBoard).toList()))
                .toList();
    }

    /** A point of the board's frame in the job's. */
    public Vector3d toJob(Vector3dc point) {
        Vector3dc centre = part.box().centre();
        Vector3d there = new Vector3d();
        for (int axis = 0; axis < 3; axis++) {
            Direction along = turn.along(axis);
            int to = along.axis();
            there.setComponent(to, centre.get(to) + along.sign() * (point.get(axis) - anchor(axis)));
        }
        return there;
    }

    /**
     * A coordinate of the board's frame along the job's axis on which that board axis lies.
     *
     * @param boardAxis 0 = x, 1 = y, 2 = z
     */
    public double toJob(int boardAxis, double at) {
        Direction along = turn.along(boardAxis);
        return part.box().centre().get(along.axis()) + along.sign() * (at - anchor(boardAxis));
    }

    /** A point of the job's frame in the board's. */
    public Vector3d toBoard(Vector3dc point) {
        return toBoard(point, part.box().centre());
    }

    private Vector3d toBoard(Vector3dc point, Vector3dc centre) {
        Vector3d there = new Vector3d();
        for (int axis = 0; axis < 3; axis++) {
            Direction along = turn.along(axis);
            int from = along.axis();
            there.setComponent(axis, anchor(axis) + along.sign() * (point.get(from) - centre.get(from)));
        }
        return there;
    }

    public Box toBoard(Box job) {
        Vector3dc centre = part.box().centre();
        return Box.between(toBoard(job.min(), centre), toBoard(job.max(), centre));
    }

    public Box toJob(Box inBoard) {
        return Box.between(toJob(inBoard.min()), toJob(inBoard.max()));
    }

    /** A coordinate of the point of the board that comes to lie at the middle of the part. */
    private double anchor(int axis) {
        return axis == 0
                ? off(Surface.END_1) + part.size().length() / 2
                : board.size().along(axis) / 2;
    }
}
