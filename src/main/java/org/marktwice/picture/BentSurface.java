package org.marktwice.picture;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.image.BufferedImage;
import java.util.function.Function;
import org.marktwice.timber.SurfacePoint;

/**
 * A surface drawn as it is bent: painted flat once, and laid down in patches small enough for each to be flat to the eye.
 * Neighbouring patches share their corners, and overlap by less than a pixel so that no seam shows.
 */
final class BentSurface {
    /** A departure smaller than this isn't seen, pixels. */
    private static final double UNSEEN = 0.3;

    private static final int MOST_ALONG = 28;
    private static final int MOST_ACROSS = 12;
    private static final double OVERLAP = 0.6;
    private static final double MOST_PIXELS = 4_000_000;
    private static final int SIDE = 32;

    private final SurfaceFrame frame;
    private final Function<SurfacePoint, Point2D.Double> project;

    /** @param project from the bent surface to the view's pixels */
    BentSurface(SurfaceFrame frame, Function<SurfacePoint, Point2D.Double> project) {
        this.frame = frame;
        this.project = project;
    }

    /** Whether the bend can be seen where the true surface would be laid by this map from its (u, v). */
    boolean shows(AffineTransform flat) {
        for (double x : new double[] {0, 0.5, 1}) {
            for (double y : new double[] {0, 0.5, 1}) {
                double u = x * frame.width();
                double v = y * frame.height();
                Point2D there = flat.transform(new Point2D.Double(u, v), null);
                if (there.distance(project.apply(new SurfacePoint(frame.surface(), u, v))) > UNSEEN) return true;
            }
        }
        return false;
    }

    /** The outline on the view. */
    Path2D.Double outline() {
        Path2D.Double path = new Path2D.Double();
        double[][] corners = {{0, 0}, {1, 0}, {1, 1}, {0, 1}, {0, 0}};
        for (int side = 0; side < 4; side++) {
            for (int i = 0; i < SIDE; i++) {
                double share = i / (double) SIDE;
                double x = corners[side][0] + share * (corners[side + 1][0] - corners[side][0]);
                double y = corners[side][1] + share * (corners[side + 1][1] - corners[side][1]);
                Point2D.Double p = page(x, y);
                if (path.getCurrentPoint() == null) path.moveTo(p.x, p.y);
                else path.lineTo(p.x, p.y);
            }
        }
        path.closePath();
        return path;
    }

    /** A place of the page, 0 to 1 either way, on the view. */
    private Point2D.Double page(double x, double y) {
        return project.apply(frame.toSurface(new Point2D.Double(x * frame.width(), y * frame.height())));
    }

    /** Draws the surface; g's user space is the view's. */
    void paint(Graphics2D g, BoardPicture p, SurfacePainter painter, double pxPerMm, Palette palette) {
        double fine = pxPerMm * Math.sqrt(Math.abs(g.getTransform().getDeterminant()));
        double scale = Math.min(fine, Math.sqrt(MOST_PIXELS / (frame.width() * frame.height())));
        BufferedImage flat = flat(p.rule(null), painter, pxPerMm, scale, palette);
        int along = patches(sagAlong(), MOST_ALONG);
        int across = patches(sagAcross(), MOST_ACROSS);
        while (along * across * UNSEEN < wind() && along < MOST_ALONG) along++;
        Graphics2D own = (Graphics2D) g.create();
        own.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        for (int i = 0; i < along; i++) {
            for (int j = 0; j < across; j++) {
                patch(own, flat, i / (double) along, j / (double) across, 1.0 / along, 1.0 / across);
            }
        }
        own.dispose();
        rule(g, p, painter, pxPerMm, palette);
    }

    private BufferedImage flat(BoardPicture p, SurfacePainter painter, double pxPerMm, double scale, Palette palette) {
        int w = Math.max(1, (int) Math.ceil(frame.width() * scale));
        int h = Math.max(1, (int) Math.ceil(frame.height() * scale));
        BufferedImage image = new BufferedImage(w, h, BufferedImage.TYPE_INT_RGB);
        Graphics2D on = image.createGraphics();
        on.scale(w / frame.width(), h / frame.height());
        on.transform(frame.toPage());
        painter.paint(on, p, frame.surface(), pxPerMm, palette);
        on.dispose();
        return image;
    }

    private static int patches(double sag, int most) {
        return (int) Math.max(1, Math.min(most, Math.ceil(Math.sqrt(sag / UNSEEN))));
    }

    private double sagAlong() {
        double most = 0;
        for (double y : new double[] {0, 0.5, 1}) most = Math.max(most, sag(page(0, y), page(0.5, y), page(1, y)));
        return most;
    }

    private double sagAcross() {
        double most = 0;
        for (double x : new double[] {0, 0.5, 1}) most = Math.max(most, sag(page(x, 0), page(x, 0.5), page(x, 1)));
        return most;
    }

    private static double sag(Point2D.Double a, Point2D.Double middle, Point2D.Double b) {
        return Math.hypot(middle.x - (a.x + b.x) / 2, middle.y - (a.y + b.y) / 2);
    }

    /** How far the corners are from a parallelogram, as it shows in one patch. */
    private double wind() {
        Point2D.Double a = page(0, 0);
        Point2D.Double b = page(1, 0);
        Point2D.Double c = page(1, 1);
        Point2D.Double d = page(0, 1);
        return Math.hypot(a.x + c.x - b.x - d.x, a.y + c.y - b.y - d.y) / 4;
    }

    private void patch(Graphics2D g, BufferedImage flat, double x, double y, double dx, double dy) {
        Point2D.Double[] p = {page(x, y), page(x + dx, y), page(x + dx, y + dy), page(x, y + dy)};
        double midX = (p[0].x + p[1].x + p[2].x + p[3].x) / 4;
        double midY = (p[0].y + p[1].y + p[2].y + p[3].y) / 4;
        double w = dx * flat.getWidth();
        double h = dy * flat.getHeight();
        double ux = (p[1].x - p[0].x + p[2].x - p[3].x) / 2 / w;
        double uy = (p[1].y - p[0].y + p[2].y - p[3].y) / 2 / w;
        double vx = (p[3].x - p[0].x + p[2].x - p[1].x) / 2 / h;
        double vy = (p[3].y - p[0].y + p[2].y - p[1].y) / 2 / h;
        double cx = x * flat.getWidth() + w / 2;
        double cy = y * flat.getHeight() + h / 2;
        AffineTransform lay = new AffineTransform(ux, uy, vx, vy, midX - ux * cx - vx * cy, midY - uy * cx - vy * cy);
        Graphics2D own = (Graphics2D) g.create();
        own.clip(enlarged(p, midX, midY));
        own.drawImage(flat, lay, null);
        own.dispose();
    }

    private static Path2D enlarged(Point2D.Double[] p, double midX, double midY) {
        Path2D.Double path = new Path2D.Double();
        for (Point2D.Double corner : p) {
            double away = Math.max(1e-6, Math.hypot(corner.x - midX, corner.y - midY));
            double out = 1 + OVERLAP * Math.sqrt(2) / away;
            double x = midX + (corner.x - midX) * out;
            double y = midY + (corner.y - midY) * out;
            if (path.getCurrentPoint() == null) path.moveTo(x, y);
            else path.lineTo(x, y);
        }
        path.closePath();
        return path;
    }

    /** The rule is steel: it lies straight from where it begins to where it is read. */
    private void rule(Graphics2D g, BoardPicture p, SurfacePainter painter, double pxPerMm, Palette palette) {
        BoardPicture.LaidRule laid = p.rule();
        if (laid == null || laid.from().surface() != frame.surface()) return;
        Graphics2D own = (Graphics2D) g.create();
        own.transform(between(laid.from(), laid.to()));
        painter.paintRule(own, p, frame.surface(), pxPerMm, palette);
        own.dispose();
    }

    /** The flat map from (u, v) to the view that is true at two points, and to either side of the first. */
    private AffineTransform between(SurfacePoint from, SurfacePoint to) {
        AffineTransform about = about(from);
        double du = to.u() - from.u();
        double dv = to.v() - from.v();
        double length = Math.hypot(du, dv);
        if (to.surface() != from.surface() || length < 1e-6) return about;
        Point2D.Double start = project.apply(from);
        Point2D.Double end = project.apply(to);
        double cos = du / length;
        double sin = dv / length;
        Point2D aside = about.deltaTransform(new Point2D.Double(-sin, cos), null);
        AffineTransform along = new AffineTransform(
                (end.x - start.x) / length, (end.y - start.y) / length, aside.getX(), aside.getY(), start.x, start.y);
        along.concatenate(new AffineTransform(cos, -sin, sin, cos, 0, 0));
        along.translate(-from.u(), -from.v());
        return along;
    }

    /** The flat map from (u, v) to the view that is true about a point. */
    AffineTransform about(SurfacePoint at) {
        Point2D.Double o = project.apply(at);
        double du = at.u() > frame.width() / 2 ? -1 : 1;
        double dv = at.v() > frame.height() / 2 ? -1 : 1;
        Point2D.Double u = project.apply(new SurfacePoint(at.surface(), at.u() + du, at.v()));
        Point2D.Double v = project.apply(new SurfacePoint(at.surface(), at.u(), at.v() + dv));
        double ux = (u.x - o.x) * du;
        double uy = (u.y - o.y) * du;
        double vx = (v.x - o.x) * dv;
        double vy = (v.y - o.y) * dv;
        return new AffineTransform(ux, uy, vx, vy, o.x - ux * at.u() - vx * at.v(), o.y - uy * at.u() - vy * at.v());
    }
}
