package org.marktwice.picture;

import java.awt.Color;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joml.Vector3d;
import org.joml.Vector3dc;
import org.jspecify.annotations.Nullable;
import org.marktwice.bench.Bench;
import org.marktwice.drawing.Part;
import org.marktwice.fit.CutPart;
import org.marktwice.fit.DryFit;
import org.marktwice.rulebook.Verdict;
import org.marktwice.timber.Box;

/** The parts of a job put together dry, as the wood that they were cut to: to be seen from anywhere, together or apart. */
final class FitWood {
    /** Room for what is written about places at the job's outside. */
    private static final double MARGIN = 44;

    private static final double FADED = 0.62;
    private static final double SEAT = 0.5;
    private static final WoodRaster.Texture BORED = new WoodRaster.Texture(new int[] {0x5A3E28}, 1, 1, 0, 0, 1, 1);
    private static final WoodRaster.Texture BLANK = new WoodRaster.Texture(new int[1], 1, 1, 0, 0, 1, 1);

    private final DryFit fit;
    private final Bench bench;
    private final double unit;
    private final WoodSkins skins;
    private final Map<String, Vector3dc> apart;
    private final List<CutPart> parts;

    /**
     * The wood from one place: what is seen of its edges, and of the parts that have no board.
     *
     * @param raster whose owners are places in {@link #parts()}
     */
    record Frame(FitCamera.View view, WoodRaster raster, Path2D.Double edges, Path2D.Double missing) {}

    FitWood(DryFit fit, Bench bench, SurfacePainter painter) {
        this.fit = fit;
        this.bench = bench;
        this.unit = painter.font().getSize2D() / 13;
        this.skins = new WoodSkins(painter);
        this.apart = DrawnApart.of(fit.drawing());
        this.parts = fit.drawing().parts().stream()
                .flatMap(p -> fit.solid(p.id()).stream())
                .toList();
    }

    /** Those that have a board. */
    List<CutPart> parts() {
        return parts;
    }

    /** Forgets what was drawn of the wood, for it can be drawn finer now. */
    void forget() {
        skins.forget();
    }

    /** Where a part is drawn when the job is apart. */
    Vector3d apart(String part, double much) {
        return new Vector3d(apart.getOrDefault(part, new Vector3d())).mul(much);
    }

    /**
     * @param fine pixels for each unit of the area
     * @param withWood whether its figure is drawn, or only what stands before what
     */
    Frame frame(FitPicture.Shown shown, Rectangle2D area, double fine, Palette palette, boolean withWood) {
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
        missing.forEach(b -> JobView.edges(b).forEach(e -> places.addAll(List.of(e))));
        Rectangle2D pixels = new Rectangle2D.Double(0, 0, area.getWidth() * fine, area.getHeight() * fine);
        double margin = Math.min(MARGIN * unit * fine, Math.min(pixels.getWidth(), pixels.getHeight()) / 6);
        Rectangle2D inside =
                new Rectangle2D.Double(margin, margin, pixels.getWidth() - 2 * margin, pixels.getHeight() - 2 * margin);
        FitCamera.View view = shown.camera().fit(places, inside);
        WoodRaster raster = new WoodRaster((int) pixels.getWidth(), (int) pixels.getHeight());
        Map<String, Verdict> marked = new HashMap<>();
        for (FitPicture.Spot s : shown.spots())
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
        for (Box box : missing) for (Vector3d[] e : JobView.edges(box)) there.trace(view, e[0], e[1], to, null);
    }

    private void fill(
            WoodRaster raster,
            FitCamera.View view,
            WoodMesh mesh,
            int number,
            FitPicture.Shown shown,
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
}
