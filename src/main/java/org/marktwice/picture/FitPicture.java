package org.marktwice.picture;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.joml.Vector3d;
import org.joml.Vector3dc;
import org.jspecify.annotations.Nullable;
import org.marktwice.bench.Bench;
import org.marktwice.drawing.Part;
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
    /** Room for what is written about places at the job's outside. */
    private static final double MARGIN = 44;

    private static final double FADED = 0.62;
    private static final double SEAT = 0.5;

    private final DryFit fit;
    private final Bench bench;
    private final Font font;
    private final WoodSkins skins;
    private final Map<String, Vector3dc> apart;
    private final List<CutPart> parts;
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
    private record Kept(Shown shown, Rectangle2D area, double fine, Palette palette, Frame frame) {}

    private record Frame(FitCamera.View view, WoodRaster raster, Path2D.Double edges, Path2D.Double missing) {}

    public FitPicture(DryFit fit, Bench bench, SurfacePainter painter) {
        this.fit = fit;
        this.bench = bench;
        this.font = painter.font();
        this.skins = new WoodSkins(painter);
        this.apart = DrawnApart.of(fit.drawing());
        this.parts = fit.drawing().parts().stream()
                .flatMap(p -> fit.solid(p.id()).stream())
                .toList();
    }

    /** Forgets what was drawn of the wood, for it can be drawn finer now. */
    public void refresh() {
        skins.forget();
        kept = null;
    }

    /** How many times over what is out has to be drawn to be seen, and not more. */
    public double times() {
        double most = parts.stream().mapToDouble(FitPicture::out).max().orElse(0);
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
        Frame frame = frame(there, small, 1, Palette.LIGHT, false);
        double count = 0;
        for (Vector3d[] edge : edges(opening(spot, shown).get(0))) {
            for (int i = 0; i <= 12; i++) {
                Vector3d p = new Vector3d(edge[0]).lerp(edge[1], i / 12.0);
                Point2D.Double at = frame.view().at(p);
                if (frame.raster().isSeen(at.x, at.y, frame.view().near(p))) count++;
            }
        }
        // what is seen squarely is seen better, and from above rather than from below
        return count + 12 * Math.abs(from.towards().get(spot.seat().axis())) + (from.height() > 0 ? 30 : 0);
    }

    /** Where a part is drawn when the job is apart. */
    private Vector3d apart(String part, double much) {
        return new Vector3d(apart.getOrDefault(part, new Vector3d())).mul(much);
    }

    /** What is open, or where wood would have to go into wood: one box, or where the job is apart, a flat one at either part. */
    private List<Box> opening(Spot spot, Shown shown) {
        Seat seat = spot.seat();
        int axis = seat.axis();
        double in = seat.at() + shown.times() * (spot.faces().in() - seat.at());
        double takes = seat.at() + shown.times() * (spot.faces().takes() - seat.at());
        if (shown.apart() < 0.02) return List.of(seat.flat().with(axis, Math.min(in, takes), Math.max(in, takes)));
        Vector3d one = apart(seat.joint().in(), shown.apart());
        Vector3d other = apart(seat.joint().takes(), shown.apart());
        return List.of(
                seat.flat().with(axis, in, in).moved(one.x, one.y, one.z),
                seat.flat().with(axis, takes, takes).moved(other.x, other.y, other.z));
    }

    private static List<Vector3d[]> edges(Box box) {
        List<Vector3d[]> all = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            for (int bit = 1; bit < 8; bit <<= 1) {
                if ((i & bit) == 0) all.add(new Vector3d[] {JobView.corner(box, i), JobView.corner(box, i | bit)});
            }
        }
        return all;
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
        Frame frame = frame(area, shown, fine, palette);
        AffineTransform device = AffineTransform.getTranslateInstance(area.getX(), area.getY());
        device.scale(1 / fine, 1 / fine);
        own.drawImage(frame.raster().image(), device, null);
        own.setStroke(new BasicStroke(1.1f * unit(), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        own.setColor(new Color(0x4A, 0x33, 0x1E, 215));
        own.draw(device.createTransformedShape(frame.edges()));
        own.setColor(palette.of(Ink.QUIET));
        own.setStroke(dashed(12, 4, 3, 4));
        own.draw(device.createTransformedShape(frame.missing()));
        for (Spot spot : shown.spots()) pick(own, spot, shown, frame, device);
        new FitLabels(own, area, font, palette).draw(places(shown, frame, device));
        own.dispose();
    }

    private float unit() {
        return font.getSize2D() / 13;
    }

    private BasicStroke dashed(double... dashes) {
        float[] pattern = new float[dashes.length];
        for (int i = 0; i < dashes.length; i++) pattern[i] = (float) dashes[i] * unit();
        return new BasicStroke(1.1f * unit(), BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, pattern, 0);
    }

    private Frame frame(Rectangle2D area, Shown shown, double fine, Palette palette) {
        Kept known = kept;
        if (known != null
                && known.shown().equals(shown)
                && known.area().equals(area)
                && known.fine() == fine
                && known.palette() == palette) return known.frame();
        Frame made = frame(shown, area, fine, palette, true);
        kept = new Kept(shown, (Rectangle2D) area.clone(), fine, palette, made);
        return made;
    }

    private Frame frame(Shown shown, Rectangle2D area, double fine, Palette palette, boolean withWood) {
        List<WoodMesh> meshes = parts.stream()
                .map(p -> WoodMesh.of(p, shown.times(), apart(p.part().id(), shown.apart())))
                .toList();
        List<Vector3dc> places = new ArrayList<>();
        meshes.forEach(m -> m.pieces().forEach(p -> places.addAll(List.of(p.corners()))));
        List<Box> missing = fit.drawing().parts().stream()
                .filter(p -> fit.solid(p.id()).isEmpty())
                .map(p -> {
                    Vector3d by = apart(p.id(), shown.apart());
                    return p.box().moved(by.x, by.y, by.z);
                })
                .toList();
        missing.forEach(b -> edges(b).forEach(e -> places.addAll(List.of(e))));
        Rectangle2D pixels = new Rectangle2D.Double(0, 0, area.getWidth() * fine, area.getHeight() * fine);
        double margin = Math.min(MARGIN * unit() * fine, Math.min(pixels.getWidth(), pixels.getHeight()) / 6);
        Rectangle2D inside =
                new Rectangle2D.Double(margin, margin, pixels.getWidth() - 2 * margin, pixels.getHeight() - 2 * margin);
        FitCamera.View view = shown.camera().fit(places, inside);
        WoodRaster raster = new WoodRaster((int) pixels.getWidth(), (int) pixels.getHeight());
        Map<String, Verdict> marked = new HashMap<>();
        for (Spot s : shown.spots())
            if (s.verdict() != Verdict.SOUND) marked.put(s.seat().joint().id(), s.verdict());
        for (int i = 0; i < meshes.size(); i++) fill(raster, view, meshes.get(i), i, shown, marked, palette, withWood);
        Path2D.Double edges = new Path2D.Double();
        for (WoodMesh mesh : meshes) {
            for (WoodMesh.Edge e : mesh.edges()) raster.trace(view, e.from(), e.to(), edges, null);
            for (WoodMesh.Mouth m : mesh.mouths()) {
                if (view.towards().get(m.axis()) * m.sign() <= 1e-6) continue;
                for (int i = 0; i < m.ring().size(); i++) {
                    raster.trace(
                            view,
                            m.ring().get(i),
                            m.ring().get((i + 1) % m.ring().size()),
                            edges,
                            null);
                }
            }
        }
        Path2D.Double outlines = new Path2D.Double();
        if (!missing.isEmpty()) outline(missing, meshes, view, pixels, outlines);
        return new Frame(view, raster, edges, outlines);
    }

    /** What would be seen of parts that have no board, were they there. */
    private static void outline(
            List<Box> missing, List<WoodMesh> meshes, FitCamera.View view, Rectangle2D pixels, Path2D.Double to) {
        WoodRaster there = new WoodRaster((int) pixels.getWidth(), (int) pixels.getHeight());
        WoodRaster.Skin skin = new WoodRaster.Skin(BLANK, new Color(0, true), Color.BLACK, 0);
        double[][] uv = new double[4][2];
        for (WoodMesh mesh : meshes) {
            for (WoodMesh.Piece piece : mesh.pieces()) there.fill(view, piece.corners(), uv, skin, 0);
        }
        for (Box box : missing) {
            for (int axis = 0; axis < 3; axis++) {
                for (double at : new double[] {box.min(axis), box.max(axis)}) {
                    there.fill(view, WoodMesh.corners(box, axis, at), uv, skin, 0);
                }
            }
        }
        for (Box box : missing) for (Vector3d[] e : edges(box)) there.trace(view, e[0], e[1], to, null);
    }

    private void fill(
            WoodRaster raster,
            FitCamera.View view,
            WoodMesh mesh,
            int number,
            Shown shown,
            Map<String, Verdict> marked,
            Palette palette,
            boolean withWood) {
        String id = mesh.part().part().id();
        boolean faded = !shown.picked().isEmpty() && !shown.picked().contains(id);
        double scale = WoodSkins.scale(view.scale() * Isometric.FACTOR);
        BoardPicture picture = picture(mesh.part());
        for (WoodMesh.Piece piece : mesh.pieces()) {
            if (view.towards().get(piece.axis()) * piece.sign() <= 1e-6) continue;
            WoodRaster.Texture texture = !withWood
                    ? BLANK
                    : piece.outer()
                            ? skins.outer(picture, piece.surface(), scale)
                            : skins.inner(mesh.part().placing().board(), piece, Math.min(scale, 2));
            Vector3d normal = new Vector3d().setComponent(piece.axis(), piece.sign());
            Verdict verdict = piece.joint() == null ? null : marked.get(piece.joint());
            Color over = faded ? palette.of(Ink.PANEL) : Palette.LIGHT.of(verdict == null ? Ink.INK : Ink.of(verdict));
            double share = faded ? FADED : verdict == null ? (piece.outer() ? 0 : 0.06) : SEAT;
            double[][] uv = new double[4][];
            for (int i = 0; i < 4; i++) {
                Vector3d p = piece.onBoard()[i];
                uv[i] = new double[] {
                    p.get(piece.surface().uAxis()), p.get(piece.surface().vAxis())
                };
            }
            raster.fill(
                    view, piece.corners(), uv, new WoodRaster.Skin(texture, shade(normal, view), over, share), number);
        }
        mesh.mouths().forEach(m -> bore(raster, view, m, number, faded, marked.get(m.joint()), palette));
    }

    /** Dark inside, as a bored hole is. */
    private static void bore(
            WoodRaster raster,
            FitCamera.View view,
            WoodMesh.Mouth mouth,
            int number,
            boolean faded,
            @Nullable Verdict verdict,
            Palette palette) {
        if (view.towards().get(mouth.axis()) * mouth.sign() <= 1e-6) return;
        Color over = faded ? palette.of(Ink.PANEL) : Palette.LIGHT.of(verdict == null ? Ink.INK : Ink.of(verdict));
        WoodRaster.Skin skin =
                new WoodRaster.Skin(BORED, new Color(0, true), over, faded ? FADED : verdict == null ? 0 : SEAT);
        double[][] uv = new double[4][2];
        for (int i = 0; i < mouth.ring().size(); i++) {
            Vector3d next = mouth.ring().get((i + 1) % mouth.ring().size());
            raster.fill(view, new Vector3dc[] {mouth.middle(), mouth.ring().get(i), next, next}, uv, skin, number);
        }
    }

    private static final WoodRaster.Texture BORED = new WoodRaster.Texture(new int[] {0x5A3E28}, 1, 1, 0, 0, 1, 1);
    private static final WoodRaster.Texture BLANK = new WoodRaster.Texture(new int[1], 1, 1, 0, 0, 1, 1);

    /** Lit from over the shoulder, whichever corner one stands at. */
    private static Color shade(Vector3dc normal, FitCamera.View view) {
        double side = normal.dot(view.right());
        double lit = 0.9 * Math.abs(normal.z()) + (normal.z() != 0 ? 0 : side > 0 ? 0.35 : 0.62);
        return new Color(0x2A, 0x1C, 0x10, (int) Math.round(255 * 0.26 * (1 - Math.min(1, lit))));
    }

    private BoardPicture picture(CutPart part) {
        Optional<String> name =
                part.state().named().flatMap(n -> fit.drawing().part(n.part())).map(Part::name);
        return BoardPicture.of(part.state(), name.orElse(null)).struck(Struck.on(bench, part.state()));
    }

    private void pick(Graphics2D g, Spot spot, Shown shown, Frame frame, AffineTransform device) {
        if (!spot.chosen() && spot.verdict() == Verdict.SOUND) return;
        // it lies on wood, which is light in any window
        Color ink = Palette.LIGHT.of(Ink.of(spot.verdict()));
        List<Point2D.Double> middles = new ArrayList<>();
        for (Box box : opening(spot, shown)) {
            Path2D.Double seen = new Path2D.Double();
            Path2D.Double hidden = new Path2D.Double();
            for (Vector3d[] e : edges(box)) frame.raster().trace(frame.view(), e[0], e[1], seen, hidden);
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
            g.setStroke(new BasicStroke(
                    (spot.chosen() ? 2f : 1.3f) * unit(), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
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
    private List<FitLabels.Label> places(Shown shown, Frame frame, AffineTransform device) {
        List<FitLabels.Label> labels = new ArrayList<>();
        for (Spot spot : shown.spots()) {
            if (spot.text().isEmpty()) continue;
            Box box = opening(spot, shown).get(0);
            Point2D.Double best = null;
            double near = Double.NEGATIVE_INFINITY;
            for (Vector3d[] e : edges(box)) {
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
                : Optional.of(parts.get(owner).part().id());
    }
}
