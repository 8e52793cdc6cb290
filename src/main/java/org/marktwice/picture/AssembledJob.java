package org.marktwice.picture;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.joml.Vector3d;
import org.joml.Vector3dc;
import org.jspecify.annotations.Nullable;
import org.marktwice.drawing.Cut;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Placing;
import org.marktwice.timber.Box;
import org.marktwice.timber.Surface;
import org.marktwice.timber.Trace;

/**
 * The job put together from real boards, in isometric projection, from any of the four corners it can be walked round to.
 * What has no board yet is an outline. Places are in the job's frame, millimetres; {@link JobView#ISOMETRIC} looks from the
 * left and the front, so the job is turned under it by quarter turns.
 */
public final class AssembledJob {
    private static final double TOUCH = 1e-6;
    /** How near to a side other wood lies against it, millimetres. */
    private static final double BEFORE = 0.01;

    /** Where one may stand: at the left front corner, and on round to the right. */
    public static final int CORNERS = 4;

    /**
     * A part of it.
     *
     * @param cuts what its joints take out of it, and what of it stands in another part's wood
     * @param placing its board as it lies; null where there is none
     * @param picture what is on that board; null where there is none
     */
    public record Piece(
            Part part,
            List<Cut> cuts,
            @Nullable Placing placing,
            @Nullable BoardPicture picture) {
        public Piece {
            cuts = List.copyOf(cuts);
        }

        boolean isThere() {
            return placing != null && picture != null;
        }
    }

    private final int corner;
    private final List<Side> sides;
    private final List<FarToNear.Item<Piece>> boxes;
    private final Linework there;
    private final Linework outlines;
    private final Rectangle2D extent;

    private AssembledJob(
            int corner, List<FarToNear.Item<Piece>> boxes, Linework there, Linework outlines, Rectangle2D extent) {
        this.corner = corner;
        this.boxes = boxes;
        this.sides = sides(boxes);
        this.there = there;
        this.outlines = outlines;
        this.extent = extent;
    }

    /** @param corner 0 at the left front corner, 1 at the right front one, and on round */
    public static AssembledJob of(List<Piece> pieces, int corner) {
        List<FarToNear.Item<Piece>> items = new ArrayList<>();
        List<PartSolid> real = new ArrayList<>();
        List<PartSolid> all = new ArrayList<>();
        List<Box> extents = new ArrayList<>();
        for (Piece piece : pieces) {
            PartSolid solid = turned(PartSolid.of(piece.part(), piece.cuts()), corner);
            all.add(solid);
            extents.addAll(solid.boxes());
            if (!piece.isThere()) continue;
            real.add(solid);
            for (Box box : solid.boxes()) items.add(new FarToNear.Item<>(box, piece));
        }
        return new AssembledJob(
                corner,
                FarToNear.sorted(items),
                Linework.of(real, JobView.ISOMETRIC),
                Linework.of(all, JobView.ISOMETRIC),
                JobView.ISOMETRIC.bounds(extents));
    }

    private static PartSolid turned(PartSolid solid, int corner) {
        return new PartSolid(
                solid.part(),
                solid.boxes().stream().map(b -> turned(b, corner)).toList(),
                solid.edges().stream()
                        .map(e -> new PartSolid.Edge(turned(e.from(), corner), turned(e.to(), corner)))
                        .toList());
    }

    private static Box turned(Box box, int corner) {
        return Box.between(turned(box.min(), corner), turned(box.max(), corner));
    }

    /** By a quarter turn about what is upright for each corner walked on: what looked right then looks to the front. */
    private static Vector3d turned(Vector3dc p, int corner) {
        return switch (Math.floorMod(corner, CORNERS)) {
            case 0 -> new Vector3d(p);
            case 1 -> new Vector3d(p.y(), -p.x(), p.z());
            case 2 -> new Vector3d(-p.x(), -p.y(), p.z());
            default -> new Vector3d(-p.y(), p.x(), p.z());
        };
    }

    /** The direction of the job that is seen on this axis of the view: 0 on the left, 1 on the right, 2 on top. */
    Direction seen(int axis) {
        if (axis == 2) return Direction.TOP;
        Vector3d looks = turned(axis == 0 ? Direction.LEFT.unit() : Direction.FRONT.unit(), -corner);
        int along = Math.abs(looks.x()) > 0.5 ? 0 : 1;
        return Direction.on(along, looks.get(along) > 0 ? +1 : -1);
    }

    /** {@code from the left and the front}. */
    public static String from(int corner) {
        return switch (Math.floorMod(corner, CORNERS)) {
            case 0 -> "from the left and the front";
            case 1 -> "from the front and the right";
            case 2 -> "from the right and the back";
            default -> "from the back and the left";
        };
    }

    /** The corner from which this direction is seen best, the one stood at where it is seen from there. */
    public static int showing(Direction direction, int corner) {
        int other = switch (direction) {
            case LEFT -> 0;
            case FRONT -> 0;
            case RIGHT -> 1;
            case BACK -> 2;
            case TOP, BOTTOM -> corner;
        };
        int beside = switch (direction) {
            case LEFT -> 3;
            case FRONT -> 1;
            case RIGHT -> 2;
            case BACK -> 3;
            case TOP, BOTTOM -> corner;
        };
        return corner == beside ? corner : other;
    }

    /**
     * A side of a piece's wood that may be seen, laid bare by no other wood of the same piece.
     *
     * @param box the wood that it bounds, turned as it is seen
     * @param axis the axis of the view that it is square to
     */
    record Side(Piece piece, Box box, int axis) {}

    /** From far to near: whatever hides another comes after it. */
    List<Side> sides() {
        return sides;
    }

    private static List<Side> sides(List<FarToNear.Item<Piece>> boxes) {
        List<Side> out = new ArrayList<>();
        for (FarToNear.Item<Piece> item : boxes) {
            for (int axis = 0; axis < 3; axis++) {
                if (!isCovered(item, axis, boxes)) out.add(new Side(item.of(), item.box(), axis));
            }
        }
        return List.copyOf(out);
    }

    /** Whether other wood of the same piece lies against all of a side. */
    private static boolean isCovered(FarToNear.Item<Piece> item, int axis, List<FarToNear.Item<Piece>> boxes) {
        double at = axis == 2 ? item.box().max(axis) : item.box().min(axis);
        List<Box> bare = List.of(item.box().with(axis, at - BEFORE, at + BEFORE));
        for (FarToNear.Item<Piece> other : boxes) {
            if (other == item || other.of() != item.of()) continue;
            double touching = axis == 2 ? other.box().min(axis) : other.box().max(axis);
            if (Math.abs(touching - at) > BEFORE / 2) continue;
            Box against = other.box().with(axis, at - BEFORE, at + BEFORE);
            bare = bare.stream().flatMap(b -> b.less(against, TOUCH).stream()).toList();
            if (bare.isEmpty()) return true;
        }
        return false;
    }

    /** The edges of what is there. */
    List<Linework.Piece> edges() {
        return there.seen();
    }

    /** The edges that are seen of the part, were every part there. */
    List<Linework.Piece> outline(Piece piece) {
        return outlines.seen().stream()
                .filter(p -> p.part().equals(piece.part().id()))
                .toList();
    }

    /** From the view's drawn millimetres to the screen, as large as the area holds it. */
    AffineTransform placed(Rectangle2D area) {
        double scale = Math.max(
                1e-6,
                Math.min(
                        area.getWidth() / Math.max(1e-6, extent.getWidth()),
                        area.getHeight() / Math.max(1e-6, extent.getHeight())));
        AffineTransform t = AffineTransform.getTranslateInstance(area.getCenterX(), area.getCenterY());
        t.scale(scale, scale);
        t.translate(-extent.getCenterX(), -extent.getCenterY());
        return t;
    }

    /** Where a place of the job is on the screen. */
    public Point2D at(Vector3dc inJob, Rectangle2D area) {
        return placed(area).transform(JobView.ISOMETRIC.project(turned(inJob, corner)), null);
    }

    /** A box of the job as it is seen, its outline on the screen. */
    public Path2D.Double outline(Box inJob, Rectangle2D area) {
        List<Point2D.Double> corners = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            Point2D p = at(JobView.corner(inJob, i), area);
            corners.add(new Point2D.Double(p.getX(), p.getY()));
        }
        return Hull.of(corners);
    }

    /** A knot's body as it would be seen through the wood: what lies between where it shows. Empty where it shows nowhere. */
    public Optional<Path2D.Double> knot(Placing placing, String knot, Rectangle2D area) {
        List<Point2D.Double> rim = new ArrayList<>();
        for (Trace trace : placing.board().traces()) {
            if (!trace.knot().equals(knot)) continue;
            trace.outline().forEach(p -> {
                Point2D q = at(placing.toJob(p.in(placing.board().size())), area);
                rim.add(new Point2D.Double(q.getX(), q.getY()));
            });
        }
        return rim.size() < 3 ? Optional.empty() : Optional.of(Hull.of(rim));
    }

    /** The part whose board is seen at a point of the area that it was painted in. */
    public Optional<String> partAt(Point2D screen, Rectangle2D area) {
        AffineTransform to = placed(area);
        for (int i = boxes.size() - 1; i >= 0; i--) {
            for (int axis = 0; axis < 3; axis++) {
                if (to.createTransformedShape(side(boxes.get(i).box(), axis)).contains(screen)) {
                    return Optional.of(boxes.get(i).of().part().id());
                }
            }
        }
        return Optional.empty();
    }

    /** The side of a turned box that is seen along an axis of the view. */
    static Path2D.Double side(Box box, int axis) {
        return JobPicture.side(box, axis);
    }

    /** From a surface's own (u, v), at its place on the board, to the screen. */
    AffineTransform onto(Placing placing, Surface surface, double at, Rectangle2D area) {
        Vector3d origin = new Vector3d().setComponent(surface.axis(), at);
        Point2D o = at(placing.toJob(origin), area);
        Point2D u = at(placing.toJob(new Vector3d(origin).setComponent(surface.uAxis(), 1)), area);
        Point2D v = at(placing.toJob(new Vector3d(origin).setComponent(surface.vAxis(), 1)), area);
        return new AffineTransform(
                u.getX() - o.getX(), u.getY() - o.getY(), v.getX() - o.getX(), v.getY() - o.getY(), o.getX(), o.getY());
    }

    /** A turned box where it is in the job. */
    Box inJob(Box turned) {
        return turned(turned, -corner);
    }
}
