package org.marktwice.picture;

import java.awt.Font;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.jspecify.annotations.Nullable;
import org.marktwice.drawing.JobAxis;
import org.marktwice.drawing.Overall;

/**
 * Where everything of a working drawing goes on its sheet, in pixels.
 *
 * @param scale pixels a millimetre in the three views
 * @param dimensions those that there is room for, each axis' shortest first
 * @param level the distance between two dimension lines, and of the first from its view
 */
record SheetLayout(
        Rectangle2D front,
        Rectangle2D side,
        Rectangle2D plan,
        Rectangle2D picture,
        Rectangle2D symbol,
        double scale,
        double level,
        WorkingDrawing.Method method,
        List<Dimension> dimensions) {

    /** The order of a dimension among those of its axis: 0 stands nearest to the view. */
    int levelOf(Dimension d) {
        int n = 0;
        for (Dimension other : dimensions) {
            if (other.equals(d)) return n;
            if (other.axis() == d.axis()) n++;
        }
        throw new IllegalArgumentException("not on this sheet: " + d);
    }

    /** Where the sizes stand beside the views. */
    List<Rectangle2D> measured() {
        Rectangle2D across = method == WorkingDrawing.Method.FIRST_ANGLE ? plan : front;
        double left = level * count(dimensions, JobAxis.HIGH);
        double below = level * count(dimensions, JobAxis.ACROSS);
        double belowSide = level * count(dimensions, JobAxis.DEEP);
        return List.of(
                new Rectangle2D.Double(front.getX() - left, front.getY(), left, front.getHeight()),
                new Rectangle2D.Double(across.getX(), across.getMaxY(), across.getWidth(), below),
                new Rectangle2D.Double(side.getX(), side.getMaxY(), side.getWidth() + 2 * level, belowSide));
    }

    /** A picture to scale is at least so wide, pixels: 35 mm on paper. */
    private static final double PICTURE = 100;

    /**
     * @param scales gives the scale to be used for the largest that there is room for: then no size is left out for a larger
     *     picture, and the scale comes next; null where any scale will do
     */
    static SheetLayout of(
            Rectangle2D area,
            Overall overall,
            WorkingDrawing.Method method,
            double pictureAspect,
            List<Dimension> all,
            Font font,
            @Nullable DoubleUnaryOperator scales) {
        DoubleUnaryOperator to = scales == null ? scale -> scale : scales;
        SheetLayout best = null;
        double[] bestWorth = {};
        for (int joints = 4; joints >= 0; joints--) {
            List<Dimension> kept = keep(all, joints);
            for (boolean beside : new boolean[] {false, true}) {
                for (double share = 0.26; share <= 0.66; share += 0.04) {
                    SheetLayout one = arranged(area, overall, method, kept, font, beside, share, to);
                    if (one == null) continue;
                    double shown = pictureScale(one.picture(), pictureAspect);
                    double large = Math.min(one.scale() * across(overall), 0.85 * shown);
                    double[] worth = scales != null
                            ? new double[] {kept.size(), shown >= PICTURE ? 1 : 0, one.scale(), large}
                            : new double[] {large * (1 + 0.09 * joints)};
                    if (Arrays.compare(worth, bestWorth) > 0) {
                        best = one;
                        bestWorth = worth;
                    }
                }
            }
        }
        if (best == null) throw new IllegalArgumentException("no room for a drawing in " + area);
        return best;
    }

    private static double across(Overall o) {
        return o.across() + o.deep();
    }

    private static double pictureScale(Rectangle2D area, double aspect) {
        return Math.min(area.getWidth(), area.getHeight() / Math.max(1e-6, aspect));
    }

    /** The overall sizes, and of each axis so many joints: those spread best, the first always among them. */
    private static List<Dimension> keep(List<Dimension> all, int joints) {
        List<Dimension> out = new ArrayList<>();
        for (JobAxis axis : JobAxis.values()) {
            List<Dimension> places =
                    all.stream().filter(d -> d.axis() == axis && !d.overall()).toList();
            int n = Math.min(joints, places.size());
            for (int i = 0; i < n; i++) out.add(places.get(n == places.size() ? i : i * places.size() / n));
            all.stream().filter(d -> d.axis() == axis && d.overall()).forEach(out::add);
        }
        return out;
    }

    /** The picture above (or to the right of) the views, with this share of the height (or width); null without room. */
    private static @Nullable SheetLayout arranged(
            Rectangle2D area,
            Overall o,
            WorkingDrawing.Method method,
            List<Dimension> dims,
            Font font,
            boolean beside,
            double share,
            DoubleUnaryOperator scales) {
        double level = font.getSize2D() * 1.55;
        double gap = level * 1.3;
        double w = area.getWidth() * (beside ? 1 - share : 1);
        double h = area.getHeight() * (beside ? 1 : 1 - share);
        double left = level * count(dims, JobAxis.HIGH) + level * 0.6;
        double below = level * count(dims, JobAxis.ACROSS) + level * 0.6;
        double belowSide = level * count(dims, JobAxis.DEEP) + level * 0.6;
        boolean first = method == WorkingDrawing.Method.FIRST_ANGLE;
        double between = first ? Math.max(gap, belowSide + 4) : gap;
        double foot = first ? below : Math.max(below, belowSide);
        // a short size across the side view has its text beside it
        double right = level * 2.4;
        double symbolRoom = level * 1.5;
        double scale = scales.applyAsDouble(Math.min(
                (w - left - gap - right) / (o.across() + o.deep()),
                (h - foot - between - symbolRoom) / (o.high() + o.deep())));
        if (scale <= 0.004) return null;
        double wide = left + scale * (o.across() + o.deep()) + gap + right;
        double x = area.getX() + Math.max(0, (w - wide) / 2) + left;
        double high = scale * (o.high() + o.deep()) + between + foot;
        double y = area.getMaxY() - (beside ? Math.max(symbolRoom, (area.getHeight() - high) / 2) : symbolRoom) - high;
        double frontY = first ? y : y + scale * o.deep() + between;
        double planY = first ? y + scale * o.high() + between : y;
        Rectangle2D front = new Rectangle2D.Double(x, frontY, scale * o.across(), scale * o.high());
        Rectangle2D plan = new Rectangle2D.Double(x, planY, scale * o.across(), scale * o.deep());
        Rectangle2D side =
                new Rectangle2D.Double(x + scale * o.across() + gap, frontY, scale * o.deep(), scale * o.high());
        double pad = level * 0.8;
        Rectangle2D picture = beside
                ? new Rectangle2D.Double(
                        area.getX() + w + pad,
                        area.getY() + pad,
                        area.getWidth() - w - 2 * pad,
                        h - 2 * pad - symbolRoom)
                : new Rectangle2D.Double(
                        area.getX() + pad, area.getY() + 2, area.getWidth() - 2 * pad, y - area.getY() - gap);
        if (picture.getWidth() < 10 || picture.getHeight() < 10) return null;
        double mark = level * 1.1;
        Rectangle2D symbol =
                new Rectangle2D.Double(area.getMaxX() - 2.4 * mark, area.getMaxY() - mark, 2.4 * mark, mark);
        return new SheetLayout(front, side, plan, picture, symbol, scale, level, method, List.copyOf(dims));
    }

    private static long count(List<Dimension> dims, JobAxis axis) {
        return dims.stream().filter(d -> d.axis() == axis).count();
    }
}
