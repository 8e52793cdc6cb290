package org.marktwice.feedback;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.marktwice.picture.Ink;
import org.marktwice.picture.JobPicture;
import org.marktwice.picture.Palette;
import org.marktwice.picture.Sign;
import org.marktwice.rulebook.Verdict;

/** The job as a mark sheet judges it: each part in the ink of its worst verdict, with that verdict's sign on it. */
public final class JobVerdicts {
    private static final int GRID = 36;

    private JobVerdicts() {}

    /**
     * Draws it as large as the area holds it.
     *
     * @param job the picture of the sheet's own drawing
     * @param side how large a sign is, with its ring
     */
    public static void paint(
            Graphics2D g, JobPicture job, SheetModel sheet, Rectangle2D area, double side, Palette palette) {
        Map<String, Verdict> verdicts = sheet.verdicts();
        Map<String, Ink> inks = new HashMap<>();
        verdicts.forEach((part, verdict) -> inks.put(part, Ink.of(verdict)));
        job.paint(g, area, new JobPicture.Style(null, inks), palette);
        seen(job, area).forEach((part, at) -> {
            Verdict verdict = verdicts.get(part);
            if (verdict != null) sign(g, verdict, at, side, palette);
        });
    }

    /** A verdict is never told by colour alone. */
    private static void sign(Graphics2D g, Verdict verdict, Point2D at, double side, Palette palette) {
        double r = side / 2;
        Ellipse2D ring = new Ellipse2D.Double(at.getX() - r, at.getY() - r, 2 * r, 2 * r);
        g.setColor(palette.of(Ink.PANEL));
        g.fill(ring);
        g.setColor(palette.of(Ink.of(verdict)));
        g.setStroke(new BasicStroke((float) (side * 0.045)));
        g.draw(ring);
        double inner = side * 0.47;
        Sign.draw(g, verdict, at.getX() - inner / 2, at.getY() + inner / 2, inner);
    }

    /** The middle of what is seen of each part, taken from a grid of points; a part that is hidden has none. */
    private static Map<String, Point2D> seen(JobPicture job, Rectangle2D area) {
        Map<String, List<Point2D>> points = new TreeMap<>();
        for (int i = 0; i <= GRID; i++) {
            for (int j = 0; j <= GRID; j++) {
                Point2D p = new Point2D.Double(
                        area.getX() + area.getWidth() * i / GRID, area.getY() + area.getHeight() * j / GRID);
                job.partAt(p, area)
                        .ifPresent(part -> points.computeIfAbsent(part, x -> new ArrayList<>())
                                .add(p));
            }
        }
        Map<String, Point2D> middles = new TreeMap<>();
        points.forEach((part, all) -> middles.put(part, middle(all)));
        return middles;
    }

    private static Point2D middle(List<Point2D> points) {
        double x = points.stream().mapToDouble(Point2D::getX).average().orElseThrow();
        double y = points.stream().mapToDouble(Point2D::getY).average().orElseThrow();
        return points.stream()
                .min(Comparator.comparingDouble(p -> p.distanceSq(x, y)))
                .orElseThrow();
    }
}
