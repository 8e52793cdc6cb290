package org.marktwice.picture;

import java.util.List;
import org.joml.Matrix3d;
import org.joml.Matrix3dc;
import org.joml.Quaterniond;
import org.joml.Vector3d;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Turn;
import org.marktwice.timber.Surface;

/**
 * How a board lies on the bench before the learner. The bench's frame is right-handed: x runs to the right along the
 * board, y away from the learner, z up.
 *
 * @param up the surface that looks up
 * @param near the surface that looks at the learner
 */
public record Lie(Surface up, Surface near) {
    /** Face 1 up, edge 1 in front, so that end 1 is at the left. */
    public static final Lie FIRST = new Lie(Surface.FACE_1, Surface.EDGE_1);

    /** @throws IllegalArgumentException where the two don't adjoin, or the board's length would not lie along x */
    public Lie {
        if (!up.adjoins(near) || up.isEnd() || near.isEnd()) {
            throw new IllegalArgumentException(up.id() + " up, " + near.id() + " in front");
        }
    }

    /** The end that lies at the left. */
    public Surface left() {
        Vector3d left = near.normal().cross(up.normal(), new Vector3d());
        return Surface.on(0, left.x > 0 ? 1 : -1);
    }

    /** Rolled a quarter turn about its length, the upper surface coming to the front. */
    public Lie rollForward() {
        return new Lie(near.opposite(), up);
    }

    /** Rolled a quarter turn about its length, the front surface coming up. */
    public Lie rollBack() {
        return new Lie(near, up.opposite());
    }

    /** Turned end for end, the same surface staying up. */
    public Lie endForEnd() {
        return new Lie(up, near.opposite());
    }

    /** This lie rolled, if it must be, so that the surface looks up, in front or to the left. */
    public Lie showing(Surface surface) {
        if (surface.isEnd()) return surface == left() ? this : endForEnd();
        Lie lie = this;
        while (lie.up != surface) {
            lie = surface == lie.near ? lie.rollBack() : lie.rollForward();
        }
        return lie;
    }

    /** Whether the surface can be seen from where the learner stands. */
    public boolean shows(Surface surface) {
        return surface == up || surface == near || surface == left();
    }

    /** The rotation from the board's frame to the bench's. */
    public Matrix3dc matrix() {
        Matrix3d m = new Matrix3d();
        m.setRow(0, left().opposite().normal());
        m.setRow(1, near.opposite().normal());
        m.setRow(2, up.normal());
        return m;
    }

    public Quaterniond rotation() {
        return new Quaterniond().setFromNormalized(matrix());
    }

    /**
     * The directions of the job that come to lie up and in front when a part is looked at on the bench: the part's
     * thickness looks up and its width to the front, always towards left, front or top, so that the view gives nothing
     * away about which surface the drawing wants there.
     */
    public static List<Direction> seenFrom(Part part) {
        return List.of(
                towardsLearner(part.thickness().ordinal()),
                towardsLearner(part.width().ordinal()));
    }

    private static Direction towardsLearner(int jobAxis) {
        return switch (jobAxis) {
            case 0 -> Direction.LEFT;
            case 1 -> Direction.FRONT;
            default -> Direction.TOP;
        };
    }

    /** How a board turned so in the part lies when it is looked at on the bench. */
    public static Lie of(Turn turn, Part part) {
        List<Direction> seen = seenFrom(part);
        return new Lie(turn.looking(seen.get(0)), turn.looking(seen.get(1)));
    }

    /** The turn in the part that a board lying so would have. */
    public Turn turn(Part part) {
        List<Direction> seen = seenFrom(part);
        return Turn.facing(up, seen.get(0), near, seen.get(1)).orElseThrow();
    }
}
