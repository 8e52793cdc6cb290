package org.marktwice.picture;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.joml.Vector3d;
import org.marktwice.fit.Seat;
import org.marktwice.rulebook.Verdict;
import org.marktwice.timber.Box;

/** Gaps and clashes picked out in place, over the wood as it is seen, and what is written beside them. */
final class FitSpots {
    private final FitWood wood;
    private final float unit;

    FitSpots(FitWood wood, Font font) {
        this.wood = wood;
        this.unit = font.getSize2D() / 13;
    }

    /** What is open, or where wood would have to go into wood: one box, or where the job is apart, a flat one at either part. */
    List<Box> opening(FitPicture.Spot spot, FitPicture.Shown shown) {
        Seat seat = spot.seat();
        int axis = seat.axis();
        double in = seat.at() + shown.times() * (spot.faces().in() - seat.at());
        double takes = seat.at() + shown.times() * (spot.faces().takes() - seat.at());
        if (shown.apart() < 0.02) return List.of(seat.flat().with(axis, Math.min(in, takes), Math.max(in, takes)));
        Vector3d one = wood.apart(seat.joint().in(), shown.apart());
        Vector3d other = wood.apart(seat.joint().takes(), shown.apart());
        return List.of(
                seat.flat().with(axis, in, in).moved(one.x, one.y, one.z),
                seat.flat().with(axis, takes, takes).moved(other.x, other.y, other.z));
    }

    /** Outlines one: whole where it is seen, dashed where it isn't. */
    void pick(Graphics2D g, FitPicture.Spot spot, FitPicture.Shown shown, FitWood.Frame frame, AffineTransform device) {
        if (!spot.chosen() && spot.verdict() == Verdict.SOUND) return;
        // it lies on wood, which is light in any window
        Color ink = Palette.LIGHT.of(Ink.of(spot.verdict()));
        List<Point2D.Double> middles = new ArrayList<>();
        for (Box box : opening(spot, shown)) {
            Path2D.Double seen = new Path2D.Double();
            Path2D.Double hidden = new Path2D.Double();
            for (Vector3d[] e : JobView.edges(box)) frame.raster().trace(frame.view(), e[0], e[1], seen, hidden);
            middles.add(frame.view().at(box.centre()));
            if (spot.chosen()) {
                List<Point2D.Double> corners = new ArrayList<>();
                for (int i = 0; i < 8; i++) corners.add(frame.view().at(JobView.corner(box, i)));
                g.setColor(new Color(ink.getRed(), ink.getGreen(), ink.getBlue(), 54));
                g.fill(device.createTransformedShape(Hull.of(corners)));
                g.setColor(ink);
                g.setStroke(dashed(4, 3));
                g.draw(device.createTransformedShape(hidden));
            }
            g.setColor(ink);
            g.setStroke(
                    new BasicStroke((spot.chosen() ? 2f : 1.3f) * unit, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
            g.draw(device.createTransformedShape(seen));
        }
        if (spot.chosen() && middles.size() == 2) {
            g.setStroke(dashed(2, 4));
            Path2D.Double way = new Path2D.Double();
            way.moveTo(middles.get(0).x, middles.get(0).y);
            way.lineTo(middles.get(1).x, middles.get(1).y);
            g.draw(device.createTransformedShape(way));
        }
    }

    /** Where each spot's label points: the place of it that is seen, nearest the eye. */
    List<FitLabels.Label> labels(FitPicture.Shown shown, FitWood.Frame frame, AffineTransform device) {
        List<FitLabels.Label> labels = new ArrayList<>();
        for (FitPicture.Spot spot : shown.spots()) {
            if (spot.text().isEmpty()) continue;
            Box box = opening(spot, shown).get(0);
            Point2D.Double best = null;
            double near = Double.NEGATIVE_INFINITY;
            for (Vector3d[] e : JobView.edges(box)) {
                Vector3d p = new Vector3d(e[0]).lerp(e[1], 0.5);
                Point2D.Double at = frame.view().at(p);
                boolean seen = frame.raster().isSeen(at.x, at.y, frame.view().near(p));
                double rank = frame.view().near(p) + (seen ? 1e6 : 0);
                if (rank <= near) continue;
                near = rank;
                best = at;
            }
            if (best == null) continue;
            labels.add(new FitLabels.Label(device.transform(best, null), spot.verdict(), spot.text(), spot.chosen()));
        }
        labels.sort(Comparator.comparing((FitLabels.Label l) -> !l.chosen()));
        return labels;
    }

    /** A thin line of such dashes, in lengths of the usual text size. */
    BasicStroke dashed(double... dashes) {
        float[] pattern = new float[dashes.length];
        for (int i = 0; i < dashes.length; i++) pattern[i] = (float) dashes[i] * unit;
        return new BasicStroke(1.1f * unit, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, pattern, 0);
    }
}
