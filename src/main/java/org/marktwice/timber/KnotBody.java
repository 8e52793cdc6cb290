package org.marktwice.timber;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.joml.Vector3d;
import org.joml.Vector3dc;
import org.jspecify.annotations.Nullable;

/**
 * The convex part of a knot that lies inside its board, in the board's frame (millimetres).
 *
 * <p>The body is {@code {origin + s·d + ρ : 0 ≤ s ≤ endsAt, ρ ⊥ d, |ρ| ≤ r(s)}} clipped to the board, and stands here
 * as the hull of points on its boundary. These lie at most 0.2 mm apart round the branch, so that the hull is less than
 * 0.01 mm smaller than the body (the sagitta between two neighbours), and distances from it are right to 0.05 mm even
 * where the knot only grazes a surface. That holds up to a radius of 40 mm; beyond, the errors grow with the radius.
 */
public final class KnotBody {
    /** What is thinner than this, in millimetres, only touches the board from outside. */
    private static final double THIN = 1e-3;

    private final Knot knot;
    private final Size size;
    private final Vector3dc origin;
    private final Vector3dc along;
    /** The distance along the branch at which this body begins. */
    private final double from;

    /** x, y, z of the corners after one another; none where the knot misses the board. */
    private final double[] corners;

    private final @Nullable Box bounds;
    private volatile @Nullable List<Trace> traces;
    private volatile @Nullable KnotBody dead;
    private volatile @Nullable Hull hull;

    private KnotBody(Knot knot, Size size, Vector3dc origin, double from) {
        this.knot = knot;
        this.size = size;
        this.origin = origin;
        this.from = from;
        along = knot.direction();
        double[] all = KnotPolytope.corners(knot, origin, from, size);
        Box around = all.length == 0 ? null : around(all);
        if (around == null || IntStream.range(0, 3).anyMatch(axis -> around.extent(axis) < THIN)) {
            corners = new double[0];
            bounds = null;
        } else {
            corners = all;
            bounds = around;
        }
    }

    /**
     * The part of the knot inside the board.
     *
     * @throws IllegalArgumentException where the board has no pith for a branch to start from
     */
    public static KnotBody of(Knot knot, Board.Facts board) {
        Pith pith = board.pith();
        if (pith == null) throw new IllegalArgumentException("board " + board.id() + " has knots, but no pith");
        return of(knot, board.size(), pith);
    }

    /** The part of the knot inside a board of that size. */
    static KnotBody of(Knot knot, Size size, Pith pith) {
        return new KnotBody(knot, size, new Vector3d(knot.x(), pith.y(), pith.z()), 0);
    }

    /**
     * Whether the knot has any volume inside the board: the opposite of {@link #isEmpty()}, without the body being made where
     * the branch's middle line runs through the board, as it mostly does.
     *
     * @throws IllegalArgumentException where the board has no pith for a branch to start from
     */
    public static boolean isInside(Knot knot, Board.Facts board) {
        Pith pith = board.pith();
        return pith != null && runsThrough(knot, pith, board.size())
                || !of(knot, board).isEmpty();
    }

    /** Whether a good piece of the branch's middle line lies inside the board, where the branch is more than {@link #THIN}. */
    private static boolean runsThrough(Knot knot, Pith pith, Size size) {
        Vector3d origin = new Vector3d(knot.x(), pith.y(), pith.z());
        Vector3dc along = knot.direction();
        Box box = size.box();
        double from = 0;
        double to = knot.endsAt();
        for (int axis = 0; axis < 3; axis++) {
            double one = (box.min(axis) + THIN - origin.get(axis)) / along.get(axis);
            double other = (box.max(axis) - THIN - origin.get(axis)) / along.get(axis);
            // square to the axis both are infinite or not a number; no comparison with the latter holds
            from = Math.max(from, Math.min(one, other));
            to = Math.min(to, Math.max(one, other));
        }
        return to - from > 1 && knot.radius((from + to) / 2) > 10 * THIN;
    }

    private static Box around(double[] points) {
        Vector3d low = new Vector3d(Double.POSITIVE_INFINITY);
        Vector3d high = new Vector3d(Double.NEGATIVE_INFINITY);
        Vector3d at = new Vector3d();
        for (int k = 0; k < points.length; k += 3) {
            at.set(points[k], points[k + 1], points[k + 2]);
            low.min(at);
            high.max(at);
        }
        return new Box(low, high);
    }

    public Knot knot() {
        return knot;
    }

    /** What of it is dead (encased) and may fall out: the body from {@code deadFrom} on; empty where it is live throughout. */
    public KnotBody deadPart() {
        KnotBody known = dead;
        if (known == null) {
            double start = Math.max(from, knot.deadFrom());
            known = start > from ? new KnotBody(knot, size, origin, start) : this;
            dead = known;
        }
        return known;
    }

    Size boardSize() {
        return size;
    }

    /** Whether no part of the knot that has any volume lies inside the board: it misses the board, or touches it. */
    public boolean isEmpty() {
        return bounds == null;
    }

    /** The box around the part inside the board; empty where there is none. */
    public Optional<Box> bounds() {
        return Optional.ofNullable(bounds);
    }

    /** Points on the boundary whose hull is the body; none where {@link #isEmpty()}. */
    public List<Vector3dc> corners() {
        return IntStream.range(0, corners.length / 3)
                .mapToObj(i -> (Vector3dc) new Vector3d(corners[3 * i], corners[3 * i + 1], corners[3 * i + 2]))
                .toList();
    }

    /**
     * The least distance from the body to the box, in millimetres; 0 where they meet; to 0.05 mm.
     * {@link Double#POSITIVE_INFINITY} where no part of the knot lies inside the board.
     */
    public double clearance(Box cut) {
        return clearance(cut, Double.POSITIVE_INFINITY);
    }

    /**
     * The smaller of the clearance and {@code cap}. Cheaper than the clearance where that is greater, since the search
     * ends as soon as it is sure of it.
     */
    public double clearance(Box cut, double cap) {
        Box around = bounds;
        if (around == null) return cap;
        double apart = apart(around, cut);
        if (apart >= cap) return cap;
        if (apart == 0 && reaches(cut)) return 0;
        return Math.min(cap, new ConvexDistance(hull(), cut).solve(cap));
    }

    private Hull hull() {
        Hull known = hull;
        if (known == null) {
            known = new Hull(corners);
            hull = known;
        }
        return known;
    }

    /** Whether one of its corners lies in the box; the quick answer where the knot runs right into it. */
    private boolean reaches(Box box) {
        for (int k = 0; k < corners.length; k += 3) {
            boolean in = true;
            for (int axis = 0; axis < 3 && in; axis++) {
                double at = corners[k + axis];
                in = at >= box.min(axis) && at <= box.max(axis);
            }
            if (in) return true;
        }
        return false;
    }

    private static double apart(Box one, Box other) {
        double square = 0;
        for (int axis = 0; axis < 3; axis++) {
            double gap = Math.max(0, Math.max(one.min(axis) - other.max(axis), other.min(axis) - one.max(axis)));
            square += gap * gap;
        }
        return Math.sqrt(square);
    }

    /** Where the clearance is: its figure, and the points at its ends; empty where {@link #isEmpty()}. */
    public Optional<Nearest> nearest(Box cut) {
        if (isEmpty()) return Optional.empty();
        ConvexDistance distance = new ConvexDistance(hull(), cut);
        double mm = distance.solve(Double.POSITIVE_INFINITY);
        return Optional.of(new Nearest(mm, distance.onHull(), distance.onBox()));
    }

    /**
     * A clearance and the two points between which it lies, in the board's frame.
     *
     * @param mm the clearance; where it is 0 the two points are one that both bodies hold
     */
    public record Nearest(double mm, Vector3dc onKnot, Vector3dc onCut) {}

    /** Whether the point (board frame) lies in the knot and in the board; of the true body, both boundaries included. */
    public boolean contains(Vector3dc point) {
        return size.box().contains(point, 0) && KnotPolytope.holds(knot, origin, along, from, point);
    }

    /** The distance along the branch of a point in the board's frame, in millimetres. */
    public double along(Vector3dc point) {
        return point.sub(origin, new Vector3d()).dot(along);
    }

    /** The traces on the board's surfaces, in the surfaces' order. */
    public List<Trace> traces() {
        List<Trace> known = traces;
        if (known == null) {
            known = Stream.of(Surface.values())
                    .flatMap(s -> KnotTraces.trace(this, corners, s).stream())
                    .toList();
            traces = known;
        }
        return known;
    }

    public Optional<Trace> trace(Surface surface) {
        return traces().stream().filter(t -> t.surface() == surface).findFirst();
    }
}
