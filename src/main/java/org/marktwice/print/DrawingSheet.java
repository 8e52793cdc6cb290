package org.marktwice.print;

import java.awt.Font;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.marktwice.picture.JointDetail;
import org.marktwice.picture.WorkingDrawing;
import org.marktwice.scenario.Scenario;

/**
 * The job's views and sizes, to a scale that a rule can read; upright or lying, whichever gives the larger. The details of its
 * joints stand beside them where there is room, else on sheets of their own.
 */
final class DrawingSheet {
    /** Views are made so much smaller, and no more, to have the details beside them. */
    private static final double SMALLER = 0.6;
    /** A detail beside the views is at least so many times as large as they are. */
    private static final double LARGER = 1.9;
    /** As many details as stand beside the views. */
    private static final int BESIDE = 3;
    /** Shares of the sheet that details may take. */
    private static final double[] SHARES = {0.5, 0.46, 0.42, 0.38, 0.34, 0.3, 0.26, 0.22};

    private static final double GAP = Paper.points(6);
    private static final JointDetail.Enlarging SCALES = new JointDetail.Enlarging(
            room -> Figure.detailScale(room / Paper.points(1)) * Paper.points(1),
            scale -> Figure.detailText(scale / Paper.points(1)));

    private final Scenario scenario;
    private final Paper paper;
    private final Issue issue;
    private final WorkingDrawing drawing;
    private final Font font = Type.BODY.font();

    DrawingSheet(Scenario scenario, Paper paper, Issue issue) {
        this.scenario = scenario;
        this.paper = paper;
        this.issue = issue;
        // first angle where the paper is ISO's, third where it is North America's
        WorkingDrawing.Method method =
                paper == Paper.LETTER ? WorkingDrawing.Method.THIRD_ANGLE : WorkingDrawing.Method.FIRST_ANGLE;
        this.drawing = WorkingDrawing.toScale(scenario.drawing(), method, room -> Paper.points(1) / Figure.scale(room))
                .lettered();
    }

    List<Leaf> leaves() {
        List<JointDetail> details = drawing.details();
        boolean landscape = scale(views(true, 0)) >= scale(views(false, 0));
        double alone = scale(views(landscape, 0));
        Optional<Arranged> together = together().filter(a -> a.scale() >= SMALLER * alone);
        if (together.isPresent()) {
            Arranged a = together.get();
            return List.of(leaf(a.landscape(), scaleText(a.scale()), a.details(), views(a.landscape(), a.share())));
        }
        List<Leaf> leaves = new ArrayList<>();
        leaves.add(leaf(landscape, scaleText(alone), List.of(), views(landscape, 0)));
        for (int i = 0; i < details.size(); i += 4)
            leaves.add(apart(landscape, details.subList(i, Math.min(i + 4, details.size()))));
        return leaves;
    }

    private static String scaleText(double pointsPerMm) {
        return Figure.scaleText(Paper.points(1) / pointsPerMm);
    }

    /** Views and details on one sheet. @param scale of the views, points a millimetre */
    private record Arranged(boolean landscape, double share, double scale, List<Placed> details) {}

    /** The way that makes the views largest, and of those the one that leaves most for the details. */
    private Optional<Arranged> together() {
        int n = drawing.details().size();
        if (n == 0 || n > BESIDE) return Optional.empty();
        Arranged best = null;
        for (boolean landscape : new boolean[] {false, true}) {
            for (double share : SHARES) {
                double scale = scale(views(landscape, share));
                List<Placed> details = places(landscape, share);
                boolean large =
                        details.stream().allMatch(d -> d.detail().scale(d.place(), SCALES, font) >= LARGER * scale);
                if (large && (best == null || scale > best.scale() + 1e-9)) {
                    best = new Arranged(landscape, share, scale, details);
                }
            }
        }
        return Optional.ofNullable(best);
    }

    /** Details by themselves, four to a sheet at most; one or two have half of it each, three on a lying one a third. */
    private Leaf apart(boolean landscape, List<JointDetail> details) {
        Rectangle2D room = TitleBlock.insideSigned(paper, landscape);
        List<Placed> placed = new ArrayList<>();
        int n = details.size();
        int across = landscape && n == 3 ? 3 : n > 2 || landscape ? 2 : 1;
        int down = n > across || !landscape ? 2 : 1;
        double w = (room.getWidth() - (across - 1) * GAP) / across;
        double h = (room.getHeight() - (down - 1) * GAP) / down;
        for (int i = 0; i < n; i++) {
            Rectangle2D place = new Rectangle2D.Double(
                    room.getX() + i % across * (w + GAP), room.getY() + i / across * (h + GAP), w, h);
            placed.add(new Placed(details.get(i), place));
        }
        return leaf(landscape, "as shown", placed, null);
    }

    private record Placed(JointDetail detail, Rectangle2D place) {}

    private Leaf leaf(boolean landscape, String scale, List<Placed> details, @Nullable Rectangle2D views) {
        return new Leaf(landscape, Sheets.signed(SheetKind.DRAWING, scenario, scale, issue), (pen, place) -> {
            if (views != null) drawing.paint(pen.g, views, null, Pen.PALETTE, font);
            for (Placed p : details) p.detail().paint(pen.g, p.place(), SCALES, Pen.PALETTE, font);
        });
    }

    /** The room for the views, with this share below them on an upright sheet, to the right of them on a lying one. */
    private Rectangle2D views(boolean landscape, double share) {
        Rectangle2D r = TitleBlock.insideSigned(paper, landscape);
        if (share == 0) return r;
        return landscape
                ? new Rectangle2D.Double(r.getX(), r.getY(), (1 - share) * r.getWidth() - GAP, r.getHeight())
                : new Rectangle2D.Double(r.getX(), r.getY(), r.getWidth(), (1 - share) * r.getHeight() - GAP);
    }

    private List<Placed> places(boolean landscape, double share) {
        Rectangle2D r = TitleBlock.insideSigned(paper, landscape);
        List<Placed> placed = new ArrayList<>();
        int n = drawing.details().size();
        double wide = landscape ? share * r.getWidth() : (r.getWidth() - (n - 1) * GAP) / n;
        double high = landscape ? (r.getHeight() - (n - 1) * GAP) / n : share * r.getHeight();
        for (int i = 0; i < n; i++) {
            double x = landscape ? r.getMaxX() - wide : r.getX() + i * (wide + GAP);
            double y = landscape ? r.getY() + i * (high + GAP) : r.getMaxY() - high;
            placed.add(new Placed(drawing.details().get(i), new Rectangle2D.Double(x, y, wide, high)));
        }
        return placed;
    }

    private double scale(Rectangle2D room) {
        return drawing.scale(room, font);
    }
}
