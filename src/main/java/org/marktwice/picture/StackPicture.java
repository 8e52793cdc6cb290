package org.marktwice.picture;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.marktwice.fit.ToleranceStack;

/**
 * How an overall size comes out over many jobs made alike, as bars about the drawn size; beside them what is allowed, what is
 * likely, and where this job lies.
 *
 * @param limit ± what is allowed, millimetres
 * @param off how much too large this job came out; null where it isn't known
 */
public record StackPicture(
        ToleranceStack stack,
        ToleranceStack.Trial trial,
        double limit,
        @Nullable Double off) {
    private static final int BARS = 45;

    /** The farthest that is drawn on either side, millimetres. */
    private double most() {
        double most = Math.max(1.15 * limit, Math.min(stack.worst(), 1.9 * stack.likely()));
        return off == null ? most : Math.max(most, 1.1 * Math.abs(off));
    }

    public void paint(Graphics2D g, Rectangle2D area, Font font, Palette palette) {
        Graphics2D own = (Graphics2D) g.create();
        own.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        own.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        new Drawn(own, area, font, palette).all();
        own.dispose();
    }

    private final class Drawn {
        private final Graphics2D g;
        private final Rectangle2D area;
        private final Palette palette;
        private final FontMetrics metrics;
        private final double unit;
        private final double top;
        private final double foot;

        Drawn(Graphics2D g, Rectangle2D area, Font font, Palette palette) {
            this.g = g;
            this.area = area;
            this.palette = palette;
            this.unit = font.getSize2D() / 12;
            g.setFont(font);
            this.metrics = g.getFontMetrics();
            this.top = area.getY() + 2 * (metrics.getHeight() + 2 * unit);
            this.foot = area.getMaxY() - metrics.getHeight() - 7 * unit;
        }

        private double x(double mm) {
            return area.getCenterX() + mm / most() * area.getWidth() / 2;
        }

        void all() {
            bars();
            g.setColor(palette.of(Ink.QUIET));
            g.setStroke(new BasicStroke((float) unit));
            g.draw(new Line2D.Double(area.getX(), foot, area.getMaxX(), foot));
            ticks();
            double row = metrics.getHeight() + 2 * unit;
            upright(-limit, top - 2 * unit, Ink.ACTION, false);
            upright(limit, top - 2 * unit, Ink.ACTION, false);
            between(limit, area.getY() + row + metrics.getAscent(), "allowed ±" + figure(limit), Ink.ACTION);
            if (off != null) job(off);
        }

        private void bars() {
            int[] counts = trial.bars(BARS, most());
            int high = 1;
            for (int c : counts) high = Math.max(high, c);
            double wide = area.getWidth() / BARS;
            for (int i = 0; i < BARS; i++) {
                double middle = ((i + 0.5) / BARS * 2 - 1) * most();
                double tall = (foot - top) * counts[i] / high;
                if (counts[i] == 0) continue;
                boolean in = Math.abs(middle) <= limit;
                Color ink = palette.of(in ? Ink.SOUND : Ink.WRONG, in ? 0.55 : 0.6);
                g.setColor(ink);
                g.fill(new Rectangle2D.Double(
                        area.getX() + i * wide + 0.5 * unit, foot - tall, Math.max(0.5, wide - unit), tall));
            }
        }

        private void ticks() {
            double step = step(most());
            for (double mm = -Math.floor(most() / step) * step; mm <= most() + 1e-9; mm += step) {
                g.setColor(palette.of(Ink.QUIET));
                g.draw(new Line2D.Double(x(mm), foot, x(mm), foot + 4 * unit));
                String text = Math.abs(mm) < 1e-9 ? "as drawn" : (mm > 0 ? "+" : "−") + figure(Math.abs(mm));
                double w = metrics.stringWidth(text);
                if (x(mm) - w / 2 < area.getX() || x(mm) + w / 2 > area.getMaxX()) continue;
                g.drawString(text, (float) (x(mm) - w / 2), (float) (foot + 5 * unit + metrics.getAscent()));
            }
        }

        /** A round step that leaves room for its figures. */
        private double step(double most) {
            double room = Math.max(metrics.stringWidth("as drawn") * 0.8, 34 * unit);
            for (double s : new double[] {0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100}) {
                if (s / most * area.getWidth() / 2 >= room) return s;
            }
            return most;
        }

        private void upright(double mm, double from, Ink ink, boolean thick) {
            g.setColor(palette.of(ink));
            g.setStroke(new BasicStroke((float) ((thick ? 2 : 1.3) * unit)));
            g.draw(new Line2D.Double(x(mm), from, x(mm), foot));
        }

        /** Words between −mm and +mm, on a line with arrows. */
        private void between(double mm, double baseline, String text, Ink ink) {
            g.setColor(palette.of(ink));
            double w = metrics.stringWidth(text);
            double y = baseline - metrics.getAscent() * 0.36;
            boolean inside = x(mm) - x(-mm) > w + 24 * unit;
            double gap = w / 2 + 6 * unit;
            g.setStroke(new BasicStroke((float) unit));
            if (inside) {
                arrow(area.getCenterX() - gap, x(-mm), y);
                arrow(area.getCenterX() + gap, x(mm), y);
                g.drawString(text, (float) (area.getCenterX() - w / 2), (float) baseline);
            } else {
                g.drawString(text, (float) Math.min(x(mm) + 6 * unit, area.getMaxX() - w), (float) baseline);
            }
        }

        private void arrow(double from, double to, double y) {
            g.draw(new Line2D.Double(from, y, to, y));
            double back = Math.signum(from - to) * 6 * unit;
            Path2D.Double head = new Path2D.Double();
            head.moveTo(to + back, y - 2.5 * unit);
            head.lineTo(to, y);
            head.lineTo(to + back, y + 2.5 * unit);
            g.draw(head);
        }

        private void job(double mm) {
            upright(mm, area.getY() + metrics.getHeight(), Ink.INK, true);
            String amount = Math.abs(mm) < 0.05 ? "as drawn" : (mm > 0 ? "+" : "−") + figure(Math.abs(mm));
            String text = "this job " + amount;
            double w = metrics.stringWidth(text);
            double at = Math.max(area.getX(), Math.min(x(mm) - w / 2, area.getMaxX() - w));
            g.drawString(text, (float) at, (float) (area.getY() + metrics.getAscent()));
        }

        private String figure(double mm) {
            String s = String.format(Locale.ROOT, mm < 0.95 || mm % 1 > 0.04 ? "%.1f" : "%.0f", mm);
            return s;
        }
    }
}
