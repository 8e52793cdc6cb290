package org.marktwice.view;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.HashMap;
import java.util.Map;
import javax.accessibility.AccessibleRole;
import org.jspecify.annotations.Nullable;
import org.marktwice.feedback.JobVerdicts;
import org.marktwice.feedback.SheetModel;
import org.marktwice.picture.JobPicture;
import org.marktwice.scenario.Scenario;

/** The finished job in isometric projection; on a mark sheet each part with the verdict on it and that verdict's sign. */
final class JobPane extends Painted {
    private static final long serialVersionUID = 1L;
    private static final Map<Scenario, JobPicture> DRAWN = new HashMap<>();
    private static final int SIGN = 27;

    private transient @Nullable Scenario scenario;
    private transient @Nullable SheetModel sheet;

    JobPane() {
        super(AccessibleRole.ICON, 260, 200);
        setLeast(80, 60);
    }

    void show(Scenario job) {
        scenario = job;
        sheet = null;
        repaint();
    }

    /** The job as a mark sheet judges it. */
    void show(SheetModel judged) {
        scenario = judged.scenario();
        sheet = judged;
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
    protected void draw(Graphics2D g) {
        Scenario job = scenario;
        if (job == null) return;
        int margin = Look.px(8);
        Rectangle2D area = new Rectangle2D.Double(margin, margin, getWidth() - 2 * margin, getHeight() - 2 * margin);
        if (area.getWidth() > 0 && area.getHeight() > 0) {
            SheetModel judged = sheet;
            if (judged == null) paint(g, job, area);
            else JobVerdicts.paint(g, drawn(job), judged, area, Look.px(SIGN), Look.palette());
        }
    }
}
