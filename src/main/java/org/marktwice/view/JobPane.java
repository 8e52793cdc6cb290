package org.marktwice.view;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import org.jspecify.annotations.Nullable;
import org.marktwice.drawing.Part;
import org.marktwice.feedback.SheetModel;
import org.marktwice.picture.Ink;
import org.marktwice.picture.JobPicture;
import org.marktwice.rulebook.Verdict;
import org.marktwice.scenario.Scenario;

/** The finished job in isometric projection; on a mark sheet each part with the verdict on it and that verdict's sign. */
final class JobPane extends JComponent {
    private static final long serialVersionUID = 1L;
    private static final Map<Scenario, JobPicture> DRAWN = new HashMap<>();
    private static final int SIGN = 16;

    private transient @Nullable Scenario scenario;
    private transient Map<String, Verdict> verdicts = Map.of();

    void show(Scenario job) {
        scenario = job;
        verdicts = Map.of();
        repaint();
    }

    /** The job as a mark sheet judges it. */
    void show(SheetModel sheet) {
        scenario = sheet.scenario();
        verdicts = sheet.verdicts();
        repaint();
    }

    /** Draws a job as large as the area holds it. */
    static void paint(Graphics2D g, Scenario job, Rectangle2D area) {
        drawn(job).paint(g, area, JobPicture.Style.PLAIN, Look.palette());
    }

    private static JobPicture drawn(Scenario job) {
        return DRAWN.computeIfAbsent(job, s -> JobPicture.of(s.drawing()));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Scenario job = scenario;
        if (job == null) return;
        Graphics2D g = Look.smooth((Graphics2D) graphics.create());
        int margin = Look.px(8);
        Rectangle2D area = new Rectangle2D.Double(margin, margin, getWidth() - 2 * margin, getHeight() - 2 * margin);
        if (area.getWidth() > 0 && area.getHeight() > 0) {
            Map<String, Ink> inks = new HashMap<>();
            verdicts.forEach((part, verdict) -> inks.put(part, Ink.of(verdict)));
            drawn(job).paint(g, area, new JobPicture.Style(null, inks), Look.palette());
            for (Part part : job.drawing().parts()) sign(g, job, part, area);
        }
        g.dispose();
    }

    /** A verdict is never told by colour alone: its sign stands on the part. */
    private void sign(Graphics2D g, Scenario job, Part part, Rectangle2D area) {
        Verdict verdict = verdicts.get(part.id());
        Optional<Point2D> at = seen(job, part, area);
        if (verdict == null || at.isEmpty()) return;
        double side = Look.px(SIGN);
        double r = side * 0.85;
        g.setColor(Look.colour(Ink.PANEL));
        g.fill(new java.awt.geom.Ellipse2D.Double(at.get().getX() - r, at.get().getY() - r, 2 * r, 2 * r));
        g.setColor(Look.colour(Ink.of(verdict)));
        g.setStroke(new java.awt.BasicStroke(1.2f));
        g.draw(new java.awt.geom.Ellipse2D.Double(at.get().getX() - r, at.get().getY() - r, 2 * r, 2 * r));
        double inner = side * 0.8;
        new Sign(verdict).paint(g, at.get().getX() - inner / 2, at.get().getY() - inner / 2, inner);
    }

    /** The middle of what is seen of a part, taken from a grid of points; empty where it is hidden. */
    private static Optional<Point2D> seen(Scenario job, Part part, Rectangle2D area) {
        JobPicture picture = drawn(job);
        List<Point2D> points = new java.util.ArrayList<>();
        int steps = 36;
        for (int i = 0; i <= steps; i++) {
            for (int j = 0; j <= steps; j++) {
                Point2D p = new Point2D.Double(
                        area.getX() + area.getWidth() * i / steps, area.getY() + area.getHeight() * j / steps);
                if (picture.partAt(p, area).filter(part.id()::equals).isPresent()) points.add(p);
            }
        }
        if (points.isEmpty()) return Optional.empty();
        double x = points.stream().mapToDouble(Point2D::getX).average().orElse(0);
        double y = points.stream().mapToDouble(Point2D::getY).average().orElse(0);
        return points.stream().min(java.util.Comparator.comparingDouble(p -> p.distanceSq(x, y)));
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(Look.px(260), Look.px(200));
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(Look.px(80), Look.px(60));
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new AccessibleJComponent() {
                private static final long serialVersionUID = 1L;

                @Override
                public AccessibleRole getAccessibleRole() {
                    return AccessibleRole.ICON;
                }
            };
        }
        return accessibleContext;
    }
}
