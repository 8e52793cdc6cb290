package org.marktwice.picture;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.joml.Vector3d;
import org.jspecify.annotations.Nullable;
import org.marktwice.bench.Bench;
import org.marktwice.fit.CutPart;
import org.marktwice.fit.DryFit;
import org.marktwice.fit.Seat;
import org.marktwice.rulebook.Verdict;
import org.marktwice.timber.Box;

/**
 * The job put together dry, from the boards as they were cut: from any corner, together or drawn apart, what it is out by as
 * it is or drawn larger, and gaps and clashes picked out in place. For one thread.
 */
public final class FitPicture {
    /** Of the job's longest diagonal: what is out is drawn no larger than this. */
    private static final double OUT = 0.035;

    private static final double[] TIMES = {1, 2, 5, 10, 20, 50};

    private final DryFit fit;
    private final Font font;
    private final FitWood wood;
    private final FitSpots spots;
    private @Nullable Kept kept;

    /**
     * A place to be picked out.
     *
     * @param text what stands beside it
     * @param chosen whether it is what is being looked at
     */
    public record Spot(Seat seat, DryFit.Faces faces, Verdict verdict, String text, boolean chosen) {}

    /**
     * How the job is shown.
     *
     * @param apart 0 together, 1 wholly apart
     * @param times how many times over it is drawn what is out
     * @param picked the parts that are being looked at; none where all of them are
     */
    public record Shown(FitCamera camera, double apart, double times, Set<String> picked, List<Spot> spots) {
        public Shown {
            picked = Set.copyOf(picked);
            spots = List.copyOf(spots);
        }
    }

    /** A raster, and what it shows. */
    private record Kept(Shown shown, Rectangle2D area, double fine, Palette palette, FitWood.Frame frame) {}

    public FitPicture(DryFit fit, Bench bench, SurfacePainter painter) {
        this.fit = fit;
        this.font = painter.font();
        this.wood = new FitWood(fit, bench, painter);
        this.spots = new FitSpots(wood, font);
    }

    /** Forgets what was drawn of the wood, for it can be drawn finer now. */
    public void refresh() {
        wood.forget();
        kept = null;
    }

    /** How many times over what is out has to be drawn to be seen, and not more. */
    public double times() {
        double most = wood.parts().stream().mapToDouble(FitPicture::out).max().orElse(0);
        Box all = fit.drawing().box();
        double room = OUT * new Vector3d(all.max()).distance(all.min());
        double times = 1;
        for (double t : TIMES) if (most > 0.01 && most * t <= room) times = t;
        return times;
    }

    /** The next larger, or smaller, of the ways of drawing what is out. */
    public static double times(double now, int step) {
        int at = 0;
        for (int i = 0; i < TIMES.length; i++) if (TIMES[i] <= now) at = i;
        return TIMES[Math.max(0, Math.min(TIMES.length - 1, at + step))];
    }

    /** The most that any side of the part is out. */
    private static double out(CutPart part) {
        List<CutPart.Side> all = new ArrayList<>(part.whole().sides());
        part.gone().forEach(b -> all.addAll(b.sides()));
        Box box = part.part().box();
        double most = 0;
        for (CutPart.Side side : all) {
            for (int i = 0; i < 8; i++) {
                double lean = side.lean().at(JobView.corner(box, i));
                most = Math.max(most, Math.abs(side.made() - side.drawn() + lean));
            }
        }
        return most;
    }

    /** Of the eight corners, the one from which most of a seat is seen; this one where none shows more. */
    public FitCamera showing(Spot spot, Shown shown) {
        FitCamera best = shown.camera();
        double most = seen(spot, shown, best) + 15;
        for (boolean above : new boolean[] {true, false}) {
            for (int corner = 0; corner < 4; corner++) {
                FitCamera there = FitCamera.from(corner, above);
                double seen = seen(spot, shown, there);
                if (seen <= most) continue;
                most = seen;
                best = there;
            }
        }
        return best;
    }

    private double seen(Spot spot, Shown shown, FitCamera from) {
        Rectangle2D small = new Rectangle2D.Double(0, 0, 260, 220);
        Shown there = new Shown(from, shown.apart(), shown.times(), Set.of(), List.of());
        FitWood.Frame frame = wood.frame(there, small, 1, Palette.LIGHT, false);
        double count = 0;
        for (Vector3d[] edge : JobView.edges(spots.opening(spot, shown).get(0))) {
            for (int i = 0; i <= 12; i++) {
                Vector3d p = new Vector3d(edge[0]).lerp(edge[1], i / 12.0);
                Point2D.Double at = frame.view().at(p);
                if (frame.raster().isSeen(at.x, at.y, frame.view().near(p))) count++;
            }
        }
        // what is seen squarely is seen better, and from above rather than from below
        return count + 12 * Math.abs(from.towards().get(spot.seat().axis())) + (from.height() > 0 ? 30 : 0);
    }

    /**
     * Draws it as large as the area holds it.
     *
     * @param fine pixels of the wood for each unit of the area
     */
    public void paint(Graphics2D g, Rectangle2D area, Shown shown, double fine, Palette palette) {
        Graphics2D own = (Graphics2D) g.create();
        own.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        own.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        own.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        FitWood.Frame frame = frame(area, shown, fine, palette);
        AffineTransform device = AffineTransform.getTranslateInstance(area.getX(), area.getY());
        device.scale(1 / fine, 1 / fine);
        own.drawImage(frame.raster().image(), device, null);
        float unit = font.getSize2D() / 13;
        own.setStroke(new BasicStroke(1.1f * unit, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        own.setColor(new Color(0x4A, 0x33, 0x1E, 215));
        own.draw(device.createTransformedShape(frame.edges()));
        own.setColor(palette.of(Ink.QUIET));
        own.setStroke(spots.dashed(12, 4, 3, 4));
        own.draw(device.createTransformedShape(frame.missing()));
        for (Spot spot : shown.spots()) spots.pick(own, spot, shown, frame, device);
        new FitLabels(own, area, font, palette).draw(spots.labels(shown, frame, device));
        own.dispose();
    }

    private FitWood.Frame frame(Rectangle2D area, Shown shown, double fine, Palette palette) {
        Kept known = kept;
        if (known != null
                && known.shown().equals(shown)
                && known.area().equals(area)
                && known.fine() == fine
                && known.palette() == palette) return known.frame();
        FitWood.Frame made = wood.frame(shown, area, fine, palette, true);
        kept = new Kept(shown, (Rectangle2D) area.clone(), fine, palette, made);
        return made;
    }

    /** The part that is seen at a point of the area that was painted last. */
    public Optional<String> partAt(Point2D at) {
        Kept known = kept;
        if (known == null) return Optional.empty();
        int owner = known.frame()
                .raster()
                .owner(
                        (at.getX() - known.area().getX()) * known.fine(),
                        (at.getY() - known.area().getY()) * known.fine());
        return owner < 0
                ? Optional.empty()
                : Optional.of(wood.parts().get(owner).part().id());
    }
}
