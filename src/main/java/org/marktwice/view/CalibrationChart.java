package org.marktwice.view;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import javax.accessibility.AccessibleRole;
import org.marktwice.advice.Option;
import org.marktwice.feedback.SheetModel;
import org.marktwice.picture.Ink;
import org.marktwice.view.Calibration.Point;
import org.marktwice.view.Look.Style;

/** How far the clearances estimated were off, a bar for each attempt, the latest at the right: shorter is better. */
final class CalibrationChart extends Painted {
    private static final long serialVersionUID = 1L;
    private static final int MOST = 12;

    private final transient List<Point> shown;

    CalibrationChart(Calibration calibration) {
        super(AccessibleRole.ICON, 220, 64);
        List<Point> all =
                calibration.points().stream().filter(p -> !p.off().isEmpty()).toList();
        shown = all.subList(Math.max(0, all.size() - MOST), all.size());
        setVisible(shown.size() > 1);
        setName("calibration");
        readAs("How far your clearances were off");
        getAccessibleContext().setAccessibleDescription(String.join(" ", calibration.words()));
    }

    @Override
    protected void draw(Graphics2D g) {
        double foot = getHeight() - Look.px(16);
        double room = foot - Look.px(14);
        double step = Math.min(Look.px(28), (double) getWidth() / Math.max(1, shown.size()));
        g.setColor(Look.colour(Ink.BORDER));
        g.fill(new Rectangle2D.Double(0, foot, step * shown.size(), 1));
        g.setFont(Style.HEADING.font());
        for (int i = 0; i < shown.size(); i++) {
            double off = shown.get(i).meanOff();
            double high = Math.max(1, room * Math.min(1, off / Option.CAP));
            g.setColor(Look.colour(Ink.ACTION));
            g.fill(new Rectangle2D.Double(i * step + Look.px(4), foot - high, step - Look.px(10), high));
            String figure = SheetModel.fixed(off, 0);
            int wide = g.getFontMetrics().stringWidth(figure);
            g.setColor(Look.colour(Ink.QUIET));
            g.drawString(
                    figure, (float) (i * step + (step - Look.px(2) - wide) / 2), (float) (getHeight() - Look.px(3)));
        }
    }
}
