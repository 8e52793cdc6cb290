package org.marktwice.picture;

import java.awt.BasicStroke;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.marktwice.rulebook.Verdict;

/** Small plates beside the places that they speak of, each with its verdict's sign; none lies on another. */
final class FitLabels {
    private static final double[] FAR = {26, 44, 66, 92, 124, 160};
    private static final int WAYS = 16;

    /** @param at the place on the screen */
    record Label(Point2D at, Verdict verdict, String text, boolean chosen) {}

    private final Graphics2D g;
    private final Rectangle2D area;
    private final Font font;
    private final Palette palette;
    private final double unit;
    private final List<Rectangle2D> taken = new ArrayList<>();

    FitLabels(Graphics2D g, Rectangle2D area, Font font, Palette palette) {
        this.g = g;
        this.area = area;
        this.font = font.deriveFont(font.getSize2D() * 12 / 13);
        this.palette = palette;
        this.unit = font.getSize2D() / 13;
    }

    /** The first ones get the best places. */
    void draw(List<Label> labels) {
        labels.forEach(l -> taken.add(new Rectangle2D.Double(l.at().getX() - 3, l.at().getY() - 3, 6, 6)));
        for (Label label : labels) draw(label);
    }

    private void draw(Label label) {
        FontMetrics m = g.getFontMetrics(font);
        double sign = 11 * unit;
        double pad = 6 * unit;
        double w = m.stringWidth(label.text()) + sign + 3 * pad;
        double h = m.getHeight() + pad;
        Rectangle2D plate = place(label.at(), w, h);
        if (plate == null) return;
        taken.add(plate);
        g.setColor(palette.of(Ink.of(label.verdict())));
        g.setStroke(new BasicStroke((float) (1.2 * unit)));
        g.draw(new Line2D.Double(label.at().getX(), label.at().getY(), plate.getCenterX(), plate.getCenterY()));
        double r = 3 * unit;
        g.fill(new Ellipse2D.Double(label.at().getX() - r, label.at().getY() - r, 2 * r, 2 * r));
        RoundRectangle2D box = new RoundRectangle2D.Double(plate.getX(), plate.getY(), w, h, 8 * unit, 8 * unit);
        g.setColor(palette.of(Ink.PANEL));
        g.fill(box);
        g.setColor(palette.of(Ink.of(label.verdict())));
        g.setStroke(new BasicStroke((float) ((label.chosen() ? 2 : 1.2) * unit)));
        g.draw(box);
        Sign.draw(g, label.verdict(), plate.getX() + pad, plate.getCenterY() + sign / 2, sign);
        g.setFont(font);
        g.drawString(label.text(), (float) (plate.getX() + 2 * pad + sign), (float)
                (plate.getY() + (h - m.getHeight()) / 2 + m.getAscent()));
    }

    /** The nearest free place round about; null where there is none. */
    private @org.jspecify.annotations.Nullable Rectangle2D place(Point2D at, double w, double h) {
        for (double far : FAR) {
            for (int way = 0; way < WAYS; way++) {
                // up and to the right first, then round in turns to either side
                double turn = Math.toRadians(-60 + 360.0 / WAYS * ((way % 2 == 0 ? 1 : -1) * ((way + 1) / 2)));
                double x = at.getX() + Math.cos(turn) * (far * unit + w / 2);
                double y = at.getY() + Math.sin(turn) * (far * unit + h / 2);
                Rectangle2D plate = new Rectangle2D.Double(x - w / 2, y - h / 2, w, h);
                Rectangle2D round = new Rectangle2D.Double(
                        plate.getX() - 4, plate.getY() - 4, plate.getWidth() + 8, plate.getHeight() + 8);
                if (area.contains(plate) && taken.stream().noneMatch(round::intersects)) return plate;
            }
        }
        return null;
    }
}
