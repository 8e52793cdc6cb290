package org.marktwice.picture;

import java.awt.Font;
import java.awt.geom.Rectangle2D;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.jspecify.annotations.Nullable;
import org.marktwice.drawing.JobAxis;

/**
 * Where everything of a joint's detail goes, in pixels: the caption above, the views in their places, the picture below or
 * beside them.
 *
 * @param level the distance between two dimension lines, and of the first from its view
 * @param above whether the sizes along the page of the front and side views stand above these
 */
record DetailLayout(
        Map<JobAxis, Rectangle2D> views,
        Rectangle2D caption,
        Rectangle2D picture,
        double scale,
        double level,
        WorkingDrawing.Method method,
        boolean above) {

    /** The picture may be drawn so much smaller than the views before these give way to it. */
    private static final double SMALLER_PICTURE = 1.6;

    Rectangle2D of(JobAxis looking) {
        Rectangle2D place = views.get(looking);
        if (place == null) throw new IllegalArgumentException("not shown: " + looking);
        return place;
    }

    JobView view(JobAxis looking) {
        return JobView.along(looking, method);
    }

    /** Whether a view's sizes along the page stand above it. */
    boolean sizesAbove(JobAxis looking) {
        return looking == JobAxis.HIGH ? views.size() > 1 && method == WorkingDrawing.Method.THIRD_ANGLE : above;
    }

    /** Whether a view's upright sizes stand on its right. */
    boolean sizesRight(JobAxis looking) {
        return looking == JobAxis.ACROSS && views.size() > 1;
    }

    /** As large as there is room for; empty where there is none. */
    static Optional<DetailLayout> fitting(JointDetail detail, Rectangle2D area, DoubleUnaryOperator scales, Font font) {
        DetailLayout best = null;
        double most = -1;
        for (boolean beside : new boolean[] {false, true}) {
            for (double share = 0.24; share < 0.61; share += 0.04) {
                DetailLayout one = new Arranging(detail, area, scales, font).arranged(beside, share);
                if (one == null) continue;
                double worth =
                        Math.min(one.scale(), SMALLER_PICTURE * detail.picture().scale(one.picture()));
                if (worth > most) {
                    best = one;
                    most = worth;
                }
            }
        }
        return Optional.ofNullable(best);
    }

    private static final class Arranging {
        private final Map<JobAxis, Closeup> shown = new EnumMap<>(JobAxis.class);
        private final Rectangle2D area;
        private final DoubleUnaryOperator scales;
        private final double level;
        private final WorkingDrawing.Method method;
        private final boolean planBelow;

        Arranging(JointDetail detail, Rectangle2D area, DoubleUnaryOperator scales, Font font) {
            for (Closeup view : detail.views()) shown.put(view.looking(), view);
            this.area = area;
            this.scales = scales;
            this.level = font.getSize2D() * 1.55;
            this.method = detail.method();
            this.planBelow = method == WorkingDrawing.Method.FIRST_ANGLE;
        }

        /** With this share of the room for the picture; null where nothing is left for the views. */
        @Nullable
        DetailLayout arranged(boolean beside, double share) {
            double over = 0.8 * level; // what stands past the end of an upright size
            double captionHigh = 3.1 * level + over;
            double w = area.getWidth() * (beside ? 1 - share : 1);
            double h = (area.getHeight() - captionHigh - over) * (beside ? 1 : 1 - share);
            Closeup plan = shown.get(JobAxis.HIGH);
            Closeup front = shown.get(JobAxis.DEEP);
            Closeup side = shown.get(JobAxis.ACROSS);
            boolean alone = shown.size() == 1;
            boolean above = plan != null && planBelow && !alone;
            double left =
                    level * Math.max(count(front, false), Math.max(count(plan, false), alone ? count(side, false) : 0))
                            + 0.6 * level;
            double right = alone || side == null ? 1.6 * level : level * count(side, false) + 1.6 * level;
            double rowSizes = level * Math.max(count(front, true), count(side, true)) + 0.6 * level;
            double planSizes = level * count(plan, true) + 0.6 * level;
            double gap = 1.4 * level;
            boolean row = front != null || side != null;
            double wide = width(front) + width(side);
            if (front == null) wide = Math.max(width(plan), width(side));
            double gapAcross = front != null && side != null ? gap : 0;
            double gapDown = row && plan != null ? gap : 0;
            double rowHigh = Math.max(height(front), height(side));
            double sizesHigh = (row ? rowSizes : 0) + (plan != null ? planSizes : 0);
            double room = Math.min(
                    (w - left - right - gapAcross) / wide, (h - sizesHigh - gapDown) / (rowHigh + height(plan)));
            if (room <= 0.01) return null;
            double scale = scales.applyAsDouble(room);
            double x = area.getX() + Math.max(0, (w - left - right - gapAcross - scale * wide) / 2) + left;
            double high = scale * (rowHigh + height(plan)) + sizesHigh + gapDown;
            double y = area.getY() + captionHigh + Math.max(0, (h - high) / 2);
            double rowY;
            double planY;
            if (planBelow || plan == null) {
                rowY = y + (above ? rowSizes : 0);
                planY = row ? rowY + scale * rowHigh + gapDown : y;
            } else {
                planY = y + (row ? planSizes : 0);
                rowY = planY + scale * height(plan) + gapDown;
            }
            Map<JobAxis, Rectangle2D> places = new EnumMap<>(JobAxis.class);
            place(places, front, x, rowY, scale);
            place(places, side, front == null ? x : x + scale * width(front) + gapAcross, rowY, scale);
            place(places, plan, x, planY, scale);
            Rectangle2D caption = new Rectangle2D.Double(area.getX(), area.getY(), area.getWidth(), captionHigh);
            return new DetailLayout(places, caption, picture(beside, w, h, captionHigh), scale, level, method, above);
        }

        private Rectangle2D picture(boolean beside, double w, double h, double captionHigh) {
            double pad = 0.8 * level;
            return beside
                    ? new Rectangle2D.Double(
                            area.getX() + w + pad,
                            area.getY() + captionHigh + pad,
                            Math.max(1, area.getWidth() - w - 2 * pad),
                            Math.max(1, h - 2 * pad))
                    : new Rectangle2D.Double(
                            area.getX() + pad,
                            area.getY() + captionHigh + h + pad,
                            Math.max(1, area.getWidth() - 2 * pad),
                            Math.max(1, area.getHeight() - captionHigh - h - 2 * pad));
        }

        private static void place(
                Map<JobAxis, Rectangle2D> places, @Nullable Closeup view, double x, double y, double scale) {
            if (view == null) return;
            Rectangle2D e = view.extent();
            places.put(view.looking(), new Rectangle2D.Double(x, y, scale * e.getWidth(), scale * e.getHeight()));
        }

        private static int count(@Nullable Closeup view, boolean level) {
            return view == null ? 0 : view.sizes(level).size();
        }

        private static double width(@Nullable Closeup view) {
            return view == null ? 0 : view.extent().getWidth();
        }

        private static double height(@Nullable Closeup view) {
            return view == null ? 0 : view.extent().getHeight();
        }
    }
}
