package org.marktwice.picture;

import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.NoninvertibleTransformException;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.joml.Matrix3d;
import org.joml.Matrix3dc;
import org.joml.Quaterniondc;
import org.joml.Vector3d;
import org.joml.Vector3dc;
import org.jspecify.annotations.Nullable;
import org.marktwice.timber.Size;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;

/**
 * A board in true isometric projection (ISO 5456-3): orthographic, the three axes of the bench at 30° to the horizontal or
 * upright, each drawn at √(2/3) of its length times the scale.
 *
 * <p>The bench's frame is right-handed like the job's: X to the right and away, Y to the back and away to the left, Z up; so
 * what looks left, front and up is seen. A board in the pose of no rotation shows face-1 on top, edge-1 on the right below
 * and end-1 on the left below. The screen's y runs down.
 */
public final class Isometric {
    /** The drawn length of a unit along an axis: √(2/3). */
    public static final double FACTOR = Math.sqrt(2.0 / 3.0);

    /** A shadow falls no farther than from so high, millimetres: a board on edge throws no long one. */
    private static final double SOFT = 45;

    /** Rows: to the right on the screen, up on the screen, towards the eye. A proper rotation of the bench's frame. */
    private static final Matrix3dc EYE = new Matrix3d()
            .setRow(0, new Vector3d(1, -1, 0).normalize())
            .setRow(1, new Vector3d(1, 1, 2).normalize())
            .setRow(2, new Vector3d(-1, -1, 1).normalize());

    private final Size size;
    private final Matrix3dc pose;
    private final Matrix3dc eye;
    private final Matrix3dc seen;
    private final double scale;
    private final double centreX;
    private final double centreY;
    private final @Nullable FormShown form;

    private Isometric(
            Size size,
            Matrix3dc pose,
            Matrix3dc eye,
            double scale,
            double centreX,
            double centreY,
            @Nullable FormShown form) {
        this.size = size;
        this.pose = new Matrix3d(pose);
        this.eye = new Matrix3d(eye);
        this.seen = eye.mul(pose, new Matrix3d());
        this.scale = scale;
        this.centreX = centreX;
        this.centreY = centreY;
        this.form = form;
    }

    /** The board lying in this pose at one pixel a millimetre, its middle at the origin of the screen. */
    public static Isometric of(Size size, Matrix3dc pose) {
        return new Isometric(size, pose, EYE, 1, 0, 0, null);
    }

    /** The board as large as the area holds it in this pose, in the middle of it. */
    public static Isometric fit(Size size, Matrix3dc pose, Rectangle2D area) {
        Isometric one = of(size, pose);
        return one.scaled(fitting(one.bounds(), area)).in(area);
    }

    /**
     * The board as large as the area holds it in every pose with its length along the same axis, so that it keeps its scale
     * while it is rolled and turned end for end.
     */
    public static Isometric steady(Size size, Matrix3dc pose, Rectangle2D area) {
        double least = Double.POSITIVE_INFINITY;
        for (int quarter = 0; quarter < 4; quarter++) {
            Matrix3d rolled = new Matrix3d(pose).rotateX(quarter * Math.PI / 2);
            least = Math.min(least, fitting(of(size, rolled).bounds(), area));
        }
        return of(size, pose).scaled(least).in(area);
    }

    private static double fitting(Rectangle2D bounds, Rectangle2D area) {
        return Math.max(1e-6, Math.min(area.getWidth() / bounds.getWidth(), area.getHeight() / bounds.getHeight()));
    }

    public Isometric posed(Matrix3dc other) {
        return new Isometric(size, other, eye, scale, centreX, centreY, form);
    }

    public Isometric posed(Quaterniondc other) {
        return posed(other.get(new Matrix3d()));
    }

    public Isometric scaled(double pxPerMm) {
        return new Isometric(size, pose, eye, pxPerMm, centreX, centreY, form);
    }

    /** Moved so that the board's middle stands here on the screen. */
    public Isometric centred(double x, double y) {
        return new Isometric(size, pose, eye, scale, x, y, form);
    }

    /** Moved so that the board's drawn extent is in the middle of the area. */
    public Isometric in(Rectangle2D area) {
        Rectangle2D b = centred(0, 0).bounds();
        return centred(area.getCenterX() - b.getCenterX(), area.getCenterY() - b.getCenterY());
    }

    /** Looked at from a little to one side or above, in radians; (0, 0) is isometric. */
    public Isometric tilted(double sideways, double upwards) {
        Matrix3d from = new Matrix3d().rotateX(upwards).mul(EYE).rotateZ(sideways);
        return new Isometric(size, pose, from, scale, centreX, centreY, form);
    }

    /** With the board's true shape; without one it is drawn as its box. */
    public Isometric formed(@Nullable FormShown shape) {
        return new Isometric(size, pose, eye, scale, centreX, centreY, shape);
    }

    /** As large as the area holds what is drawn of it now, in the middle of it. */
    public Isometric fitted(Rectangle2D area) {
        Isometric one = scaled(1).centred(0, 0);
        return one.scaled(fitting(one.bounds(), area)).in(area);
    }

    public Size size() {
        return size;
    }

    public Matrix3dc pose() {
        return pose;
    }

    public double scale() {
        return scale;
    }

    /** A point of the board's frame (millimetres) on the screen. */
    public Point2D.Double project(Vector3dc point) {
        Vector3d v = seen.transform(new Vector3d(
                point.x() - size.length() / 2, point.y() - size.width() / 2, point.z() - size.thickness() / 2));
        return new Point2D.Double(centreX + scale * v.x, centreY - scale * v.y);
    }

    /** A surface's point on the screen, where the board's shape has put it. */
    public Point2D.Double project(SurfacePoint p) {
        FormShown shape = form;
        return project(shape == null ? p.in(size) : shape.place(p));
    }

    /** What a millimetre along a surface's outward normal comes to on the screen. */
    public Point2D.Double rise(Surface surface) {
        Vector3d v = seen.transform(surface.normal(), new Vector3d());
        return new Point2D.Double(scale * v.x, -scale * v.y);
    }

    /** The surface with its bends; empty where it is drawn flat, because it has none that could be seen. */
    Optional<BentSurface> bent(Surface surface) {
        if (form == null) return Optional.empty();
        BentSurface bent = new BentSurface(SurfaceFrame.of(surface, size), this::project);
        return Optional.of(bent).filter(b -> b.shows(transform(surface)));
    }

    /** How squarely a surface is seen: 1 from straight in front, 0 on edge, below 0 from behind. */
    public double facing(Surface surface) {
        return seen.transform(surface.normal(), new Vector3d()).z;
    }

    /** Where a surface's outward normal points on the bench: X right, Y back, Z up. */
    public Vector3d normal(Surface surface) {
        return pose.transform(surface.normal(), new Vector3d());
    }

    /** The surfaces that are seen, the one most on edge first; they never hide each other. */
    public List<Surface> visible() {
        List<Surface> out = new ArrayList<>();
        for (Surface s : Surface.values()) if (facing(s) > 1e-9) out.add(s);
        out.sort(Comparator.comparingDouble(this::facing));
        return List.copyOf(out);
    }

    /** From the (u, v) of a surface of the true box, in millimetres, to the screen. */
    public AffineTransform transform(Surface surface) {
        Point2D.Double o = project(new SurfacePoint(surface, 0, 0).in(size));
        Point2D.Double u = project(new SurfacePoint(surface, 1, 0).in(size));
        Point2D.Double v = project(new SurfacePoint(surface, 0, 1).in(size));
        return new AffineTransform(u.x - o.x, u.y - o.y, v.x - o.x, v.y - o.y, o.x, o.y);
    }

    /** The place on the board that is seen at this point of the screen. */
    public Optional<SurfacePoint> pick(Point2D screen) {
        for (Surface surface : visible()) {
            try {
                Point2D at = transform(surface).inverseTransform(screen, null);
                SurfacePoint p = new SurfacePoint(surface, at.getX(), at.getY());
                if (inside(p)) return Optional.of(p);
            } catch (NoninvertibleTransformException onEdge) {
                continue;
            }
        }
        return Optional.empty();
    }

    private boolean inside(SurfacePoint p) {
        double slack = 1e-9;
        return p.u() >= -slack
                && p.v() >= -slack
                && p.u() <= size.along(p.surface().uAxis()) + slack
                && p.v() <= size.along(p.surface().vAxis()) + slack;
    }

    /** A surface's outline on the screen, as a closed path. */
    public Path2D.Double shape(Surface surface) {
        Optional<BentSurface> bent = bent(surface);
        if (bent.isPresent()) return bent.get().outline();
        double u = size.along(surface.uAxis());
        double v = size.along(surface.vAxis());
        double[][] corners = {{0, 0}, {u, 0}, {u, v}, {0, v}};
        Path2D.Double path = new Path2D.Double();
        for (int i = 0; i < corners.length; i++) {
            Point2D.Double p = project(new SurfacePoint(surface, corners[i][0], corners[i][1]));
            if (i == 0) path.moveTo(p.x, p.y);
            else path.lineTo(p.x, p.y);
        }
        path.closePath();
        return path;
    }

    /** The board's outline on the screen. */
    public Path2D.Double outline() {
        if (form == null) return Hull.of(corners().stream().map(this::project).toList());
        Area all = new Area();
        visible().forEach(s -> all.add(new Area(shape(s))));
        return new Path2D.Double(all);
    }

    /** What the board covers on the screen, pixels. */
    public Rectangle2D bounds() {
        return outline().getBounds2D();
    }

    /**
     * The shadow it casts on a bench it lies on, as an outline on the screen: light falls steeply from behind on the left.
     */
    public Path2D.Double shadow() {
        List<Vector3d> lying = rim().stream()
                .map(c ->
                        pose.transform(new Vector3d(c).sub(size.length() / 2, size.width() / 2, size.thickness() / 2)))
                .toList();
        double floor = lying.stream().mapToDouble(v -> v.z).min().orElse(0);
        List<Point2D.Double> cast = lying.stream()
                .map(v -> {
                    double up = SOFT * (1 - Math.exp(-(v.z - floor) / SOFT));
                    Vector3d on = eye.transform(new Vector3d(v.x + 0.22 * up, v.y - 0.42 * up, floor));
                    return new Point2D.Double(centreX + scale * on.x, centreY - scale * on.y);
                })
                .toList();
        return Hull.of(cast);
    }

    /** The corners, and places along the long arrises between them, where the board's shape has put them. */
    private List<Vector3d> rim() {
        FormShown shape = form;
        if (shape == null) return corners();
        List<Vector3d> out = new ArrayList<>();
        for (Surface face : List.of(Surface.FACE_1, Surface.FACE_2)) {
            for (int i = 0; i <= 8; i++) {
                double x = size.length() * i / 8;
                out.add(shape.place(new SurfacePoint(face, x, 0)));
                out.add(shape.place(new SurfacePoint(face, x, size.width())));
            }
        }
        return out;
    }

    private List<Vector3d> corners() {
        List<Vector3d> out = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            out.add(new Vector3d(
                    (i & 1) == 0 ? 0 : size.length(),
                    (i & 2) == 0 ? 0 : size.width(),
                    (i & 4) == 0 ? 0 : size.thickness()));
        }
        return out;
    }
}
