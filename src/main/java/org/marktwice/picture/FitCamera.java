package org.marktwice.picture;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import org.joml.Vector3d;
import org.joml.Vector3dc;

/**
 * From where a job put together is looked at: orthographically, from a corner, isometric unless it is tilted for a look.
 *
 * @param corner how many quarter turns the job has been walked round: 0 from the left and the front, 1 from the front and the
 *     right, and so on; between two while one walks
 * @param height 1 from above, −1 from below; between them while one stoops
 * @param sideways a tilt, radians; so is {@code upwards}
 */
public record FitCamera(double corner, double height, double sideways, double upwards) {
    public static final FitCamera FIRST = new FitCamera(0, 1, 0, 0);

    private static final double ISOMETRIC = Math.atan(Math.sqrt(0.5));

    public static FitCamera from(int corner, boolean above) {
        return new FitCamera(corner, above ? 1 : -1, 0, 0);
    }

    public FitCamera tilted(double sideways, double upwards) {
        return new FitCamera(corner, height, sideways, upwards);
    }

    private double azimuth() {
        return Math.toRadians(225 + 90 * corner) + sideways;
    }

    private double elevation() {
        return Math.max(-1.5, Math.min(1.5, ISOMETRIC * height + upwards));
    }

    /** The way to the eye. */
    Vector3d towards() {
        double e = elevation();
        return new Vector3d(Math.cos(e) * Math.cos(azimuth()), Math.cos(e) * Math.sin(azimuth()), Math.sin(e));
    }

    Vector3d right() {
        return new Vector3d(-Math.sin(azimuth()), Math.cos(azimuth()), 0);
    }

    Vector3d up() {
        return towards().cross(right());
    }

    /** {@code from the left and the front}. */
    public String spoken() {
        String[] corners = {
            "from the left and the front",
            "from the front and the right",
            "from the right and the back",
            "from the back and the left"
        };
        String from = corners[Math.floorMod((int) Math.round(corner), 4)];
        return height < 0 ? from + ", from below" : from;
    }

    /** A view of the job from here at a scale. @param scale pixels a millimetre */
    record View(Vector3dc right, Vector3dc up, Vector3dc towards, double scale, double x, double y) {
        Point2D.Double at(Vector3dc p) {
            return new Point2D.Double(x + scale * right.dot(p), y - scale * up.dot(p));
        }

        /** How near the eye, pixels. */
        double near(Vector3dc p) {
            return scale * towards.dot(p);
        }
    }

    /** As large as the area holds all these places. */
    View fit(Iterable<? extends Vector3dc> places, Rectangle2D area) {
        Vector3d right = right();
        Vector3d up = up();
        double left = Double.POSITIVE_INFINITY;
        double far = Double.NEGATIVE_INFINITY;
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (Vector3dc p : places) {
            left = Math.min(left, right.dot(p));
            far = Math.max(far, right.dot(p));
            low = Math.min(low, up.dot(p));
            high = Math.max(high, up.dot(p));
        }
        if (left > far) return new View(right, up, towards(), 1, area.getCenterX(), area.getCenterY());
        double scale = Math.min(area.getWidth() / Math.max(1, far - left), area.getHeight() / Math.max(1, high - low));
        return new View(
                right,
                up,
                towards(),
                scale,
                area.getCenterX() - scale * (left + far) / 2,
                area.getCenterY() + scale * (low + high) / 2);
    }
}
