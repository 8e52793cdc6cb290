package org.marktwice.quiz;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.joml.Matrix3dc;
import org.jspecify.annotations.Nullable;
import org.marktwice.drawing.Overall;
import org.marktwice.picture.Isometric;
import org.marktwice.picture.Palette;
import org.marktwice.picture.SurfacePainter;
import org.marktwice.timber.Size;

/** A question's picture laid out in an area: drawn, and pointed at. */
public final class PicturePainter {
    private static final double GAP = 28;

    private final List<Pane> panes = new ArrayList<>();

    private PicturePainter() {}

    public static PicturePainter in(Picture picture, Rectangle2D area, Font font) {
        return in(picture, area, font, null);
    }

    /** @param pose how a board that lies is turned just now, on its way to where it will lie; null where it is there */
    public static PicturePainter in(Picture picture, Rectangle2D area, Font font, @Nullable Matrix3dc pose) {
        PicturePainter all = new PicturePainter();
        all.add(picture, area, font, pose);
        return all;
    }

    private void add(Picture picture, Rectangle2D area, Font font, @Nullable Matrix3dc pose) {
        if (picture instanceof Picture.Beside beside) {
            beside(beside, area, font);
        } else if (picture instanceof Picture.Lying lying) {
            panes.add(LyingPane.in(lying, pose == null ? lying.turn().rotation() : pose, area, font));
        } else if (picture instanceof Picture.Unrolled unrolled) {
            panes.add(UnrolledPane.in(unrolled, area, font));
        } else if (picture instanceof Picture.SquareOn square) {
            panes.add(new SquareOnPane(square, area, font));
        } else if (picture instanceof Picture.Job job) {
            panes.add(JobPane.in(job, area));
        }
    }

    /** Beside one another or one under another, whichever shows them larger; each gets room by its form. */
    private void beside(Picture.Beside beside, Rectangle2D area, Font font) {
        List<Picture> pictures = beside.pictures();
        double gaps = GAP * (pictures.size() - 1);
        double wide = Math.max(1, area.getWidth() - gaps);
        double high = Math.max(1, area.getHeight() - gaps);
        List<Double> forms = pictures.stream().map(PicturePainter::form).toList();
        List<Double> across =
                shares(forms.stream().map(f -> area.getHeight() * f).toList(), wide);
        List<Double> down = shares(forms.stream().map(f -> area.getWidth() / f).toList(), high);
        double drawnAcross = 0;
        double drawnDown = 0;
        for (int i = 0; i < forms.size(); i++) {
            // the side of a square as large as what is drawn
            drawnAcross += Math.min(across.get(i), area.getHeight() * forms.get(i)) / Math.sqrt(forms.get(i));
            drawnDown += Math.min(down.get(i), area.getWidth() / forms.get(i)) * Math.sqrt(forms.get(i));
        }
        boolean isAcross = !beside.isStacked() && drawnAcross > drawnDown;
        double at = isAcross ? area.getX() : area.getY();
        for (int i = 0; i < forms.size(); i++) {
            double share = isAcross ? across.get(i) : down.get(i);
            Rectangle2D place = isAcross
                    ? new Rectangle2D.Double(at, area.getY(), share, area.getHeight())
                    : new Rectangle2D.Double(area.getX(), at, area.getWidth(), share);
            add(pictures.get(i), place, font, null);
            at += share + GAP;
        }
    }

    /** Room shared out: those that want little get it, the others as much as one another. What is left over is shared too. */
    static List<Double> shares(List<Double> wanted, double room) {
        List<Double> sorted = wanted.stream().sorted().toList();
        double left = room;
        double most = 0;
        for (int i = 0; i < sorted.size(); i++) {
            most = left / (sorted.size() - i);
            if (sorted.get(i) >= most) break;
            left -= sorted.get(i);
            most = sorted.get(i);
        }
        double limit = most;
        double given = wanted.stream().mapToDouble(w -> Math.min(w, limit)).sum();
        double over = (room - given) / wanted.size();
        return wanted.stream().map(w -> Math.min(w, limit) + over).toList();
    }

    /** About how much wider a picture is than high. */
    public static double form(Picture picture) {
        if (picture instanceof Picture.Lying lying) {
            Rectangle2D b = Isometric.of(
                            lying.board().board().size(), lying.turn().rotation())
                    .bounds();
            return b.getWidth() / b.getHeight();
        }
        if (picture instanceof Picture.Unrolled unrolled) {
            Size size = unrolled.board().board().size();
            // the ends stand beside the strips, and the names beside both
            return 1.25 * (size.length() + size.width()) / (2 * (size.width() + size.thickness()));
        }
        if (picture instanceof Picture.SquareOn square) {
            return (square.to() - square.from()) / (square.high() - square.low());
        }
        if (picture instanceof Picture.Job job) {
            Overall o = job.drawing().overall();
            return (o.across() + o.deep()) * Math.cos(Math.PI / 6) / (o.high() + (o.across() + o.deep()) / 2);
        }
        List<Picture> pictures = ((Picture.Beside) picture).pictures();
        return pictures.stream().mapToDouble(PicturePainter::form).average().orElse(1);
    }

    public void paint(Graphics2D g, SurfacePainter painter, Palette palette, Offer.@Nullable Place pointed) {
        Graphics2D own = (Graphics2D) g.create();
        own.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        own.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        own.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        for (Pane pane : panes) pane.paint(own, painter, palette, pointed);
        own.dispose();
    }

    /** What is pointed at, were it an answer. */
    public Optional<Offer.Place> at(Point2D point) {
        return panes.stream().flatMap(p -> p.at(point).stream()).findFirst();
    }

    /** Where a place is to be seen; empty where the picture doesn't show it. */
    public Optional<Shape> shape(Offer.Place place) {
        return panes.stream().flatMap(p -> p.shape(place).stream()).findFirst();
    }
}
