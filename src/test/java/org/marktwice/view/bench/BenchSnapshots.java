package org.marktwice.view.bench;

import java.awt.Component;
import java.awt.Container;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Objects;
import java.util.function.Consumer;
import javax.imageio.ImageIO;
import javax.swing.JPopupMenu;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;
import org.marktwice.bench.Action;
import org.marktwice.bench.CutAt;
import org.marktwice.bench.Cutter;
import org.marktwice.bench.Mark;
import org.marktwice.bench.Tool;
import org.marktwice.files.ScenarioFile;
import org.marktwice.picture.FigureCache;
import org.marktwice.timber.Climate;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;
import org.marktwice.view.Look;
import org.marktwice.view.Session;

/** Draws the bench in several states, sizes and looks into {@code target/bench-*.png}, to be looked at. */
public final class BenchSnapshots {
    private static final FigureCache CACHE = new FigureCache(60_000_000);

    private BenchSnapshots() {}

    /** @param args the beginning of the names that are wanted; all without one */
    public static void main(String[] args) throws Exception {
        Class.forName("com.github.caciocavallosilano.cacio.ctc.junit.CacioExtension");
        String only = args.length > 0 ? args[0] : "";
        Size large = new Size(1600, 1000, 1);
        Size small = new Size(1280, 800, 1);
        shoot(only, "settled-light", false, 1, large, m -> {});
        shoot(only, "settled-dark", true, 1, large, m -> {});
        shoot(only, "settled-2x-light", false, 2, new Size(3200, 2000, 1), m -> {});
        shoot(only, "small-2x-dark", true, 2, new Size(2560, 1600, 1), m -> {});
        shoot(only, "small-light", false, 1, small, m -> {});
        shoot(only, "text-large", false, 1.5, small, m -> {});
        shoot(only, "mark", false, 1, large, BenchSnapshots::marking);
        shoot(only, "rule", false, 1, large, BenchSnapshots::measuring);
        shoot(only, "dark-rule", true, 1, small, BenchSnapshots::measuring);
        shoot(only, "square", false, 1, large, m -> prove(m, Tool.TRY_SQUARE, Surface.EDGE_2, 9));
        shoot(only, "sticks", false, 1, large, m -> prove(m, Tool.WINDING_STICKS, Surface.FACE_1, 60));
        shoot(only, "straight", false, 1, large, m -> prove(m, Tool.STRAIGHT_EDGE, Surface.FACE_1, 60));
        shoot(only, "dark-straight", true, 1, small, m -> prove(m, Tool.STRAIGHT_EDGE, Surface.FACE_2, 60));
        shoot(only, "end-grain", false, 1, large, m -> prove(m, Tool.END_GRAIN, Surface.END_1, 9));
        shoot(only, "shape-10", false, 1, large, m -> shape(m, 10));
        shoot(only, "shape-20-2x-dark", true, 1, new Size(1600, 1000, 2), m -> shape(m, 20));
        shoot(only, "times-10-straight", false, 1, large, m -> shaped(m, Tool.STRAIGHT_EDGE, Surface.FACE_1, 60));
        shoot(only, "times-10-along", false, 1, large, m -> shaped(m, Tool.STRAIGHT_EDGE, Surface.FACE_1, -1));
        shoot(only, "times-10-sticks", false, 1, large, m -> shaped(m, Tool.WINDING_STICKS, Surface.FACE_1, 60));
        shoot(only, "times-10-square", false, 1, large, m -> shaped(m, Tool.TRY_SQUARE, Surface.EDGE_1, 16));
        shoot(only, "times-10-end", true, 1, small, m -> shaped(m, Tool.END_GRAIN, Surface.END_1, 9));
        strikes(only);
        shoot(only, "room", false, 1, large, m -> room(m));
        shoot(only, "room-2x-dark", true, 1, new Size(1280, 800, 2), m -> room(m));
        shoot(only, "turn", false, 1, large, BenchSnapshots::turning);
        for (String job : new String[] {"screen-frame", "glove-chest", "jar-shelf"}) {
            shoot(only, "drawing-" + job, false, 1, large, m -> {});
            shoot(only, "joint-" + job, false, 1, large, m -> {});
            shoot(only, "joint-dark-" + job, true, 1, small, m -> {});
            shoot(only, "joint-2x-" + job, false, 1, new Size(1280, 800, 2), m -> {});
        }
        shoot(only, "strike-menu", false, 1, large, BenchSnapshots::cut);
        shoot(only, "strike-menu-dark", true, 1, new Size(1280, 800, 2), BenchSnapshots::cut);
        shoot(only, "refused", false, 1, large, BenchSnapshots::refused);
        shoot(only, "told", false, 1, small, BenchSnapshots::told);
        System.exit(0);
    }

    private static void strikes(String only) throws Exception {
        Size large = new Size(1600, 1000, 1);
        Size small = new Size(1280, 800, 1);
        shoot(only, "strike-line", false, 1, large, m -> square(m, Surface.FACE_1, 98));
        shoot(only, "strike-dark-line", true, 1, small, m -> square(m, Surface.EDGE_1, 98));
        shoot(only, "strike-back", false, 1, large, m -> {
            m.show(new ShapeShown(10, null));
            square(m, Surface.FACE_2, 210);
        });
        shoot(only, "strike-bevel", false, 1, large, BenchSnapshots::bevel);
        shoot(only, "strike-gauge", false, 1, large, m -> gauge(m, Surface.EDGE_1));
        shoot(only, "strike-2x-gauge-dark", true, 1, new Size(1280, 800, 2), m -> gauge(m, Surface.FACE_1));
        shoot(only, "strike-mate", false, 1, large, BenchSnapshots::mate);
        shoot(only, "strike-pair", false, 1, large, m -> pair(m, false));
        shoot(only, "strike-cramped-dark", true, 1, small, m -> pair(m, true));
        shoot(only, "strike-waste", false, 1, large, m -> waste(m, false));
        shoot(only, "strike-cut", false, 1, large, BenchSnapshots::cut);
        shoot(only, "strike-shaded-dark", true, 1, small, m -> waste(m, true));
    }

    private static void square(BenchModel m, Surface on, double x) {
        m.select("B");
        m.show(on);
        LineTool tool = new LineTool(m);
        m.take(tool);
        m.point(aim(m, new SurfacePoint(on, x, on.isFace() ? 60 : 9)));
    }

    private static void bevel(BenchModel m) {
        m.select("B");
        m.show(Surface.FACE_1);
        BevelTool tool = new BevelTool(m);
        m.take(tool);
        m.point(aim(m, new SurfacePoint(Surface.FACE_1, 120, 20)));
    }

    private static void gauge(BenchModel m, Surface on) {
        lined(m);
        m.show(on);
        GaugeTool tool = new GaugeTool(m);
        m.take(tool);
        m.point(aim(m, new SurfacePoint(on, 120, on.isFace() ? 3 : 16)));
    }

    private static void lined(BenchModel m) {
        m.select("B");
        LineTool tool = new LineTool(m);
        m.take(tool);
        for (Surface on : new Surface[] {Surface.FACE_1, Surface.EDGE_1}) {
            tool.press(aim(m, new SurfacePoint(on, 80, 12)));
            tool.release(aim(m, new SurfacePoint(on, 80, 12)));
        }
    }

    private static void mate(BenchModel m) {
        lined(m);
        MateTool tool = new MateTool(m);
        m.take(tool);
        m.point(aim(m, new SurfacePoint(Surface.FACE_1, 84, 50)));
    }

    private static void cut(BenchModel m) {
        m.select("B");
        LineTool line = new LineTool(m);
        m.take(line);
        for (double x : new double[] {202, 220}) {
            line.press(aim(m, new SurfacePoint(Surface.FACE_1, x, 60)));
            line.release(aim(m, new SurfacePoint(Surface.FACE_1, x, 60)));
        }
        int last = m.session().bench().steps();
        m.perform(
                new SurfacePoint(Surface.FACE_1, 202, 60),
                t -> new Action.Cut(t, "B", last - 1, Cutter.SAW, CutAt.WASTE));
        m.take(new CutTool(m, new Choosers(m, new BoardView(CACHE), new UnrolledView(CACHE))));
        m.point(aim(m, new SurfacePoint(Surface.FACE_1, 221, 60)));
        m.show(Surface.FACE_1);
    }

    private static void pair(BenchModel m, boolean made) {
        m.select("B");
        m.show(Surface.FACE_1);
        CrampTool tool = new CrampTool(m);
        m.take(tool);
        SurfacePoint at = new SurfacePoint(Surface.FACE_1, 60, 50);
        m.point(aim(m, at));
        if (!made) return;
        tool.release(aim(m, at));
        LineTool line = new LineTool(m);
        m.take(line);
        m.point(aim(m, new SurfacePoint(Surface.EDGE_1, 202, 9)));
        line.release(aim(m, new SurfacePoint(Surface.EDGE_1, 202, 9)));
    }

    private static void waste(BenchModel m, boolean shaded) {
        mate(m);
        m.tool().ifPresent(t -> t.release(aim(m, new SurfacePoint(Surface.FACE_1, 84, 50))));
        WasteTool tool = new WasteTool(m, new Choosers(m, new BoardView(CACHE), new UnrolledView(CACHE)));
        m.take(tool);
        SurfacePoint at = new SurfacePoint(Surface.FACE_1, 88, 50);
        m.point(aim(m, at));
        if (!shaded) return;
        tool.release(aim(m, at));
        m.putDown();
    }

    private record Size(int width, int height, int zoom) {}

    private static void marking(BenchModel m) {
        m.select("B");
        m.take(new MarkTool(m, Mark.Kind.FACE_SIDE));
        m.point(aim(m, new SurfacePoint(Surface.FACE_1, 100, 20)));
    }

    private static void measuring(BenchModel m) {
        RuleTool tool = new RuleTool(m);
        m.take(tool);
        tool.press(aim(m, new SurfacePoint(Surface.FACE_1, 0, 60)));
        tool.drag(aim(m, new SurfacePoint(Surface.FACE_1, 63.5, 60)));
    }

    private static void prove(BenchModel m, Tool tool, Surface surface, double v) {
        m.select("C");
        lay(m, tool, surface, v);
    }

    /** @param v across the surface; −1 lays a straight-edge along it */
    private static void lay(BenchModel m, Tool tool, Surface surface, double v) {
        m.show(surface);
        ProveTool taken = new ProveTool(m, tool);
        m.take(taken);
        SurfacePoint at = new SurfacePoint(surface, surface.isEnd() ? 60 : 150, Math.abs(v));
        Aim aim = new Aim(at, aim(m, at).snap(), v < 0);
        taken.press(aim);
        taken.release(aim);
        m.changed();
    }

    private static void shape(BenchModel m, int times) {
        m.select("B");
        m.show(new ShapeShown(times, null));
    }

    private static void shaped(BenchModel m, Tool tool, Surface surface, double v) {
        shape(m, 10);
        lay(m, tool, surface, v);
    }

    private static void room(BenchModel m) {
        m.select("B");
        m.show(new ShapeShown(10, new ShapeShown.Room("21 °C, 40 %", new Climate(21, 40).settledMoisture())));
    }

    private static void turning(BenchModel m) {
        TurnTool tool = new TurnTool(m, false);
        m.take(tool);
        tool.key(ToolKey.of(ToolKey.Stroke.UP));
        tool.key(ToolKey.shifted(ToolKey.Stroke.RIGHT));
        m.changed();
    }

    private static void refused(BenchModel m) {
        MarkTool tool = new MarkTool(m, Mark.Kind.FACE_SIDE);
        m.take(tool);
        tool.release(aim(m, new SurfacePoint(Surface.FACE_1, 120, 8)));
    }

    private static void told(BenchModel m) {
        m.select("B");
        SurfacePoint at = new SurfacePoint(Surface.FACE_1, 90, 60);
        m.show(
                new Callout(at, Note.Tone.WRONG, "Proved before it is marked", "wrong"),
                new Note(
                        Note.Tone.WRONG,
                        "Board B was marked before it had been tried with the straight-edge along it, the straight-edge"
                                + " across it, the winding sticks and the try-square on the edge. See to these too: marks"
                                + " share an arris."));
    }

    private static Aim aim(BenchModel model, SurfacePoint at) {
        Snapper snapper = new Snapper(model.board(), at.surface(), model.shownCuts());
        return new Aim(at, snapper.snap(at.u(), at.v(), new AffineTransform(), 3));
    }

    private static void shoot(
            String only, String name, boolean dark, double text, Size size, Consumer<BenchModel> state)
            throws Exception {
        if (!name.startsWith(only)) return;
        Session session = session(name);
        BufferedImage image =
                new BufferedImage(size.width() * size.zoom(), size.height() * size.zoom(), BufferedImage.TYPE_INT_RGB);
        BenchScreen[] made = new BenchScreen[1];
        SwingUtilities.invokeAndWait(() -> {
            Look.install(dark, text);
            BenchScreen screen = new BenchScreen(session, CACHE, new BenchScreen.Doors(() -> {}, () -> {}, () -> {}));
            made[0] = screen;
            screen.setSize(size.width(), size.height());
            lay(screen);
            lay(screen);
            state.accept(screen.model());
            if (name.startsWith("joint"))
                Objects.requireNonNull(drawing(screen)).nextDetail();
            lay(screen);
            lay(screen);
            paint(screen, image, size.zoom());
        });
        // The fine figures are rendered aside.
        CACHE.settle();
        SwingUtilities.invokeAndWait(() -> {
            paint(made[0], image, size.zoom());
            if (name.startsWith("strike-menu")) paintMenu(made[0].model(), image, size.zoom());
        });
        write(image, name);
    }

    /** What can be done near the line at 220 mm. */
    private static void paintMenu(BenchModel model, BufferedImage image, int zoom) {
        Choosers chooser = new Choosers(model, new BoardView(CACHE), new UnrolledView(CACHE));
        JPopupMenu menu = PointerMenu.of(model, chooser, c -> {}, new SurfacePoint(Surface.FACE_1, 221, 40));
        menu.setSize(menu.getPreferredSize());
        lay(menu);
        Graphics2D g = image.createGraphics();
        g.scale(zoom, zoom);
        g.translate(520, 120);
        menu.paint(g);
        g.dispose();
    }

    private static Session session(String name) throws Exception {
        if (name.startsWith("joint") || name.startsWith("drawing")) {
            String job = name.replaceFirst("^(joint|drawing)-(dark-|2x-)?", "");
            return Worked.fresh(ScenarioFile.read(Path.of("scenarios", job + ".scenario.json")));
        }
        return name.startsWith("strike") ? Worked.settingOut() : Worked.outOfTrue();
    }

    private static @Nullable DrawingPanel drawing(Container in) {
        for (Component c : in.getComponents()) {
            if (c instanceof DrawingPanel panel) return panel;
            if (c instanceof Container inner) {
                DrawingPanel found = drawing(inner);
                if (found != null) return found;
            }
        }
        return null;
    }

    private static void write(BufferedImage image, String name) throws IOException {
        File file = new File("target/bench-" + name + ".png");
        ImageIO.write(image, "png", file);
        System.out.println(file);
    }

    private static void lay(Component c) {
        c.doLayout();
        if (c instanceof Container container) {
            for (Component child : container.getComponents()) lay(child);
        }
    }

    private static void paint(Component screen, BufferedImage image, int zoom) {
        Graphics2D g = image.createGraphics();
        g.scale(zoom, zoom);
        screen.paint(g);
        g.dispose();
    }
}
