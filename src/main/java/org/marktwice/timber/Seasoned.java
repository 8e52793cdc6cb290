package org.marktwice.timber;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import org.joml.Vector2d;
import org.jspecify.annotations.Nullable;

/**
 * A board's cross-section as it stands at some moisture, after it was planed true at its {@code planedAt}: the
 * stress-free map about the pith, {@code r → a·r}, {@code θ → (b/a)·θ}, with a and b the ratios of the radial and
 * tangential sizes. The direction from the pith to the middle of the section is kept.
 *
 * <p>A straight line at distance d from the pith, {@code r = d/cos θ}, becomes {@code r = a·d/cos(θ·a/b)}. That curve
 * bends one way only, towards the pith where b is above a and away from it where b is below, so that the deepest gap
 * under a straight-edge lies under the line between the two arrises, and there is one deepest place.
 */
public final class Seasoned {
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;
    /** Narrows the deepest place to a hundred-thousandth of the width, and the depth, flat there, to far less. */
    private static final int SEARCH_STEPS = 24;

    private final Size size;
    private final double moisture;
    /** Null where there is no movement to speak of: sheet stuff. */
    private final @Nullable Pith pith;

    private final double radial;
    private final double tangential;
    /** The kept direction, a unit vector from the pith. */
    private final double keptY;

    private final double keptZ;

    /** Cups that were asked for before: a board is asked for the same few after every action. */
    private final Map<Stretch, Double> deepest = new ConcurrentHashMap<>();

    private record Stretch(Surface face, double low, double high) {}

    private Seasoned(Board board, double moisture) {
        this.moisture = moisture;
        size = board.size();
        Species species = board.facts().species();
        pith = species == null ? null : board.facts().pith();
        double planedAt = board.facts().planedAt();
        radial = species == null ? 1 : Moisture.ratio(species.radial(), planedAt, moisture);
        tangential = species == null ? 1 : Moisture.ratio(species.tangential(), planedAt, moisture);
        double y = pith == null ? 0 : size.width() / 2 - pith.y();
        double z = pith == null ? 1 : size.thickness() / 2 - pith.z();
        double far = Math.hypot(y, z);
        keptY = far == 0 ? 0 : y / far;
        keptZ = far == 0 ? 1 : z / far;
    }

    public static Seasoned of(Board board, double moisture) {
        return new Seasoned(board, moisture);
    }

    /** The board at the moisture that it has now. */
    public static Seasoned now(Board board) {
        return board.now();
    }

    public double moisture() {
        return moisture;
    }

    /** Whether the section contains the pith, so that no stress-free map exists: expect a check. */
    public boolean boxedHeart() {
        return pith != null
                && pith.y() >= 0
                && pith.y() <= size.width()
                && pith.z() >= 0
                && pith.z() <= size.thickness();
    }

    /**
     * Where a point of the planed section has gone, in the board's (y, z); the pith has stayed.
     *
     * @throws IllegalStateException with a boxed heart
     */
    public Vector2d moved(double y, double z) {
        if (boxedHeart()) throw new IllegalStateException("boxed heart: no stress-free map");
        return map(y, z);
    }

    private Vector2d map(double y, double z) {
        if (pith == null || (radial == 1 && tangential == 1)) return new Vector2d(y, z);
        double fromY = y - pith.y();
        double fromZ = z - pith.z();
        double along = fromY * keptY + fromZ * keptZ;
        double aside = fromZ * keptY - fromY * keptZ;
        double r = radial * Math.hypot(along, aside);
        double angle = tangential / radial * Math.atan2(aside, along);
        double c = r * Math.cos(angle);
        double s = r * Math.sin(angle);
        return new Vector2d(pith.y() + c * keptY - s * keptZ, pith.z() + c * keptZ + s * keptY);
    }

    /** Width now at mid-thickness, straight across, in millimetres; empty with a boxed heart. */
    public OptionalDouble width() {
        double middle = size.thickness() / 2;
        return boxedHeart()
                ? OptionalDouble.empty()
                : OptionalDouble.of(map(0, middle).distance(map(size.width(), middle)));
    }

    /** Thickness now at mid-width, in millimetres; empty with a boxed heart. */
    public OptionalDouble thickness() {
        double middle = size.width() / 2;
        return boxedHeart()
                ? OptionalDouble.empty()
                : OptionalDouble.of(map(middle, 0).distance(map(middle, size.thickness())));
    }

    /**
     * The deepest departure from a straight-edge laid across a face: + hollow, − rounded, millimetres; empty with a boxed
     * heart; 0 for sheet stuff. Edges bend by the same map, and can be asked for too; ends stay flat.
     */
    public OptionalDouble cup(Surface face) {
        return cup(face, 0, face.isEnd() ? 0 : size.along(face.vAxis()));
    }

    /**
     * The same over a part of the face only, between two positions across the width (board y, millimetres; on an edge
     * board z), in either order; what lies beyond the face doesn't count.
     */
    public OptionalDouble cup(Surface face, double from, double to) {
        if (boxedHeart()) return OptionalDouble.empty();
        if (pith == null || face.isEnd()) return OptionalDouble.of(0);
        double extent = size.along(face.vAxis());
        double low = Math.min(Math.max(Math.min(from, to), 0), extent);
        double high = Math.max(Math.min(Math.max(from, to), extent), 0);
        if (high <= low) return OptionalDouble.of(0);
        return OptionalDouble.of(
                deepest.computeIfAbsent(new Stretch(face, low, high), s -> new Span(face, low, high).deepest()));
    }

    /**
     * How far a long surface stands out beyond the line between its two arrises, at {@code samples} places evenly spread
     * across it, in millimetres; all 0 with a boxed heart and for sheet stuff.
     */
    double[] profile(Surface surface, int samples) {
        double[] heights = new double[samples];
        if (pith == null || boxedHeart() || surface.isEnd()) return heights;
        double extent = size.along(surface.vAxis());
        Span whole = new Span(surface, 0, extent);
        for (int i = 0; i < samples; i++) heights[i] = -whole.depth(extent * i / (samples - 1));
        return heights;
    }

    /**
     * What the map adds to the right angle in the wood between a face and an edge at their arris, in degrees: foresters
     * call it diamonding. 0 with a boxed heart and for sheet stuff.
     */
    double diamonding(Surface face, Surface edge) {
        if (pith == null || boxedHeart()) return 0;
        double fromY = (edge.sign() > 0 ? size.width() : 0) - pith.y();
        double fromZ = (face.sign() > 0 ? size.thickness() : 0) - pith.z();
        double r = Math.hypot(fromY, fromZ);
        // The two surfaces' directions from the arris into the board, by their radial and tangential parts.
        Vector2d alongFace = new Vector2d(-edge.sign() * fromY / r, edge.sign() * fromZ / r).mul(radial, tangential);
        Vector2d alongEdge = new Vector2d(-face.sign() * fromZ / r, -face.sign() * fromY / r).mul(radial, tangential);
        return Math.abs(Math.toDegrees(alongFace.angle(alongEdge))) - 90;
    }

    /** A part of a surface's line in the section, and the straight-edge over it. */
    private final class Span {
        private final Surface surface;
        private final double from;
        private final double to;
        private final Vector2d start;
        private final Vector2d inward;

        Span(Surface surface, double from, double to) {
            this.surface = surface;
            this.from = from;
            this.to = to;
            start = at(from);
            Vector2d along = at(to).sub(start).normalize();
            // Seen along the rising coordinate, the wood is to the right on face-1 and edge-1, to the left on the
            // others.
            int right = surface == Surface.FACE_1 || surface == Surface.EDGE_1 ? 1 : -1;
            inward = new Vector2d(right * along.y, -right * along.x);
        }

        private Vector2d at(double v) {
            double across = surface.sign() > 0 ? size.along(surface.axis()) : 0;
            return surface.isFace() ? map(v, across) : map(across, v);
        }

        /** How deep the surface lies below the line between the span's ends; negative where it stands above. */
        double depth(double v) {
            return at(v).sub(start).dot(inward);
        }

        /** By golden section: there is one deepest, or one highest, place. */
        double deepest() {
            double sign = depth((from + to) / 2) < 0 ? -1 : 1;
            double low = from;
            double high = to;
            double left = high - GOLDEN * (high - low);
            double right = low + GOLDEN * (high - low);
            double atLeft = sign * depth(left);
            double atRight = sign * depth(right);
            for (int step = 0; step < SEARCH_STEPS; step++) {
                if (atLeft < atRight) {
                    low = left;
                    left = right;
                    atLeft = atRight;
                    right = low + GOLDEN * (high - low);
                    atRight = sign * depth(right);
                } else {
                    high = right;
                    right = left;
                    atRight = atLeft;
                    left = high - GOLDEN * (high - low);
                    atLeft = sign * depth(left);
                }
            }
            return sign * Math.max(atLeft, atRight);
        }
    }

    /** The face that looks away from the pith; empty for sheet stuff, or where neither does because the pith lies level with the board. */
    public static Optional<Surface> barkSide(Board board) {
        return board.pith().flatMap(pith -> {
            if (pith.z() < 0) return Optional.of(Surface.FACE_1);
            if (pith.z() > board.size().thickness()) return Optional.of(Surface.FACE_2);
            return Optional.<Surface>empty();
        });
    }
}
