package org.marktwice.timber;

import java.util.stream.Stream;
import org.joml.Vector2d;
import org.joml.Vector3d;
import org.joml.Vector3dc;

/**
 * The shape that a board really has: where each point of the true box {@code 0..L × 0..W × 0..T} has gone through
 * machining and a change of moisture, in the board's frame, millimetres. It is a map of the solid, so that neighbouring
 * surfaces stay together along their arris; {@link Trueness} gives what tools read on it.
 *
 * <p>The board keeps its place and its size: the sizes hold half-way along it and half-way through it, the middle of bow
 * and spring stays where it was, and what a change of moisture adds to width and thickness is left out, as is any turning
 * of the whole section. All departures are small against the sizes, and are added up. With a boxed heart only the machining
 * counts.
 */
public final class TrueForm {
    private final Board board;
    private final Size size;
    private final Seasoned seasoned;
    private final boolean bends;
    private final Vector2d middle;
    private final double widens;
    private final double thickens;
    private final double turns;
    /** What being out of square leans by, a millimetre of height, by surface. */
    private final double[] leans = new double[Surface.values().length];

    TrueForm(Board board, Seasoned seasoned) {
        this.board = board;
        this.size = board.size();
        this.seasoned = seasoned;
        this.bends = !board.isSheet() && !seasoned.boxedHeart();
        for (Surface s : Surface.values()) {
            leans[s.ordinal()] = Math.tan(Math.toRadians(board.shape().outOfSquare(s)));
        }
        double w = size.width();
        double t = size.thickness();
        this.middle = gone(w / 2, t / 2);
        this.widens = (gone(w, t / 2).x - gone(0, t / 2).x) / w;
        this.thickens = (gone(w / 2, t).y - gone(w / 2, 0).y) / t;
        double above = (gone(w, t).y - gone(0, t).y) / w;
        double below = (gone(w, 0).y - gone(0, 0).y) / w;
        this.turns = (above + below) / 2;
    }

    /** The board as it is now. */
    public static TrueForm now(Board board) {
        return board.form();
    }

    /** The board once it has come to this moisture, in percent. */
    public static TrueForm at(Board board, double moisture) {
        return new TrueForm(board, Seasoned.of(board, moisture));
    }

    public Board board() {
        return board;
    }

    /** The moisture that it stands at, percent. */
    public double moisture() {
        return seasoned.moisture();
    }

    /** Where a surface's point has gone, its departure from the true box taken {@code times} over: 1 is as it is. */
    public Vector3d place(SurfacePoint point, double times) {
        Vector3dc true1 = point.in(size);
        return displacement(true1).mul(times).add(true1);
    }

    /** How far a point of the true box has moved. */
    public Vector3d displacement(Vector3dc at) {
        Shape shape = board.shape();
        double along = at.x() / size.length();
        double fromMiddleY = at.y() - size.width() / 2;
        double fromMiddleZ = at.z() - size.thickness() / 2;
        // Twist turns the section evenly; about its middle, that the board stays in its place.
        double turned = shape.twist() * (along - 0.5) / size.width();
        // A parabola whose mean is nought.
        double sag = 4 * along * (1 - along) - 2.0 / 3;
        Vector3d moved = section(at.y(), at.z());
        moved.y += shape.spring() * sag - turned * fromMiddleZ;
        moved.z += turned * fromMiddleY - shape.bow() * sag;
        moved.y += at.y() / size.width() * shape.taper() * (along - 0.5);
        moved.z -= (1 - at.z() / size.thickness()) * shape.thickening() * (along - 0.5);
        moved.y += fromMiddleZ * between(Surface.EDGE_1, Surface.EDGE_2, at.y() / size.width());
        moved.x += fromMiddleZ * between(Surface.END_1, Surface.END_2, along);
        return moved;
    }

    /** The lean of two opposite surfaces off square to face-1, going over evenly from the one to the other. */
    private double between(Surface first, Surface second, double share) {
        double one = leans[first.ordinal()];
        double two = -leans[second.ordinal()];
        return one + (two - one) * share;
    }

    /** What the change of moisture does to the section's shape. */
    private Vector3d section(double y, double z) {
        Vector2d gone = gone(y, z).sub(middle);
        double fromMiddleY = y - size.width() / 2;
        double fromMiddleZ = z - size.thickness() / 2;
        return new Vector3d(
                0,
                gone.x - widens * fromMiddleY + turns * fromMiddleZ,
                gone.y - thickens * fromMiddleZ - turns * fromMiddleY);
    }

    private Vector2d gone(double y, double z) {
        return bends ? seasoned.moved(y, z).sub(y, z) : new Vector2d();
    }

    /** How far a surface's point stands out beyond the true box, millimetres; negative where it lies below. */
    public double out(SurfacePoint point) {
        return displacement(point.in(size)).dot(point.surface().normal());
    }

    /** The farthest that anything of the board lies from the true box, millimetres. */
    public double greatest() {
        double most = 0;
        for (double x : new double[] {0, 0.5, 1}) {
            for (double y : new double[] {0, 0.5, 1}) {
                most = Stream.of(0, 1)
                        .map(z -> new Vector3d(x * size.length(), y * size.width(), z * size.thickness()))
                        .mapToDouble(p -> displacement(p).length())
                        .reduce(most, Math::max);
            }
        }
        return most;
    }
}
