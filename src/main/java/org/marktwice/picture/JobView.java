package org.marktwice.picture;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.joml.Vector3d;
import org.joml.Vector3dc;
import org.marktwice.drawing.JobAxis;
import org.marktwice.timber.Box;

/**
 * A direction in which the assembled job is looked at, orthographically. Drawn coordinates are millimetres, to the right
 * and down.
 *
 * @param right where the page's right points in the job's frame; its length is the scale along it
 * @param up where the page's up points
 * @param towards the way to the eye
 */
record JobView(String title, Vector3dc right, Vector3dc up, Vector3dc towards) {
    static final JobView FRONT = along("front", new Vector3d(1, 0, 0), new Vector3d(0, 0, 1));
    static final JobView PLAN = along("plan", new Vector3d(1, 0, 0), new Vector3d(0, 1, 0));
    static final JobView FROM_RIGHT = along("right side", new Vector3d(0, 1, 0), new Vector3d(0, 0, 1));
    static final JobView FROM_LEFT = along("left side", new Vector3d(0, -1, 0), new Vector3d(0, 0, 1));
    /** Isometric, as {@link Isometric} sees the bench: what looks left, front and up is seen. */
    static final JobView ISOMETRIC =
            along("isometric", new Vector3d(1, -1, 0).normalize(), new Vector3d(1, 1, 2).normalize());

    /** The view in which one looks along an axis of the job, as a method of projection has it. */
    static JobView along(JobAxis axis, WorkingDrawing.Method method) {
        return switch (axis) {
            case ACROSS -> method == WorkingDrawing.Method.FIRST_ANGLE ? FROM_LEFT : FROM_RIGHT;
            case DEEP -> FRONT;
            case HIGH -> PLAN;
        };
    }

    private static JobView along(String title, Vector3d right, Vector3d up) {
        return new JobView(title, right, up, right.cross(up, new Vector3d()));
    }

    Point2D.Double project(Vector3dc p) {
        return new Point2D.Double(right.dot(p), -up.dot(p));
    }

    Rectangle2D bounds(Iterable<Box> boxes) {
        Rectangle2D all = null;
        for (Box box : boxes) {
            for (int i = 0; i < 8; i++) {
                Point2D p = project(corner(box, i));
                if (all == null) all = new Rectangle2D.Double(p.getX(), p.getY(), 0, 0);
                else all.add(p);
            }
        }
        return all == null ? new Rectangle2D.Double() : all;
    }

    static Vector3d corner(Box box, int i) {
        return new Vector3d(
                (i & 1) == 0 ? box.min(0) : box.max(0),
                (i & 2) == 0 ? box.min(1) : box.max(1),
                (i & 4) == 0 ? box.min(2) : box.max(2));
    }

    /** A box's twelve edges, each by its ends. */
    static List<Vector3d[]> edges(Box box) {
        List<Vector3d[]> all = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            for (int bit = 1; bit < 8; bit <<= 1) {
                if ((i & bit) == 0) all.add(new Vector3d[] {corner(box, i), corner(box, i | bit)});
            }
        }
        return all;
    }
}
