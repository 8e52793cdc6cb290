package org.marktwice.view.bench;

import java.awt.geom.Point2D;
import java.util.Optional;
import org.marktwice.timber.SurfacePoint;

/**
 * The plane of a tool that stands upright on a line over a surface. In the isometric view it is seen as it stands; where the
 * surface is seen square on it is drawn fallen over to one side, as a draughtsman turns a section into the plane of the
 * paper.
 */
final class Standing {
    private final Patch patch;
    private final SurfacePoint from;
    private final SurfacePoint to;
    private final Point2D up;
    private final boolean fallen;

    /** @param rise a millimetre along the surface's normal in pixels; empty where the surface is seen square on */
    Standing(Patch patch, SurfacePoint from, SurfacePoint to, Optional<Point2D.Double> rise) {
        this.patch = patch;
        this.from = from;
        this.to = to;
        this.fallen = rise.isEmpty();
        this.up = rise.isPresent() ? rise.get() : aside();
    }

    /** To the right of a line that runs up the page, above one that runs along it. */
    private Point2D aside() {
        Point2D.Double a = patch.toView(from);
        Point2D.Double b = patch.toView(to);
        double long1 = Math.max(1e-9, a.distance(b));
        double x = (a.y - b.y) / long1;
        double y = (b.x - a.x) / long1;
        double turn = Math.abs(x) > Math.abs(y) ? Math.signum(x) : -Math.signum(y);
        return new Point2D.Double(x * turn * patch.scale(), y * turn * patch.scale());
    }

    /** Whether it is drawn fallen over, so that what lies under it has to be drawn beside it. */
    boolean isFallen() {
        return fallen;
    }

    /** Which way up is on the view. */
    Point2D up() {
        return up;
    }

    double length() {
        return Math.hypot(to.u() - from.u(), to.v() - from.v());
    }

    /** The place so much of the way along the line (0 to 1, or beyond), at a height above the surface in millimetres. */
    Point2D.Double at(double share, double height) {
        Point2D.Double foot =
                patch.toView(from.u() + (to.u() - from.u()) * share, from.v() + (to.v() - from.v()) * share);
        return raised(foot, height);
    }

    Point2D.Double raised(Point2D foot, double height) {
        return new Point2D.Double(foot.getX() + up.getX() * height, foot.getY() + up.getY() * height);
    }

    /** A straight line through the places at 0 and 1, each at its height. */
    Point2D.Double straight(double share, double heightAt0, double heightAt1) {
        Point2D.Double a = at(0, heightAt0);
        Point2D.Double b = at(1, heightAt1);
        return new Point2D.Double(a.x + (b.x - a.x) * share, a.y + (b.y - a.y) * share);
    }
}
