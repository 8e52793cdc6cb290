package org.marktwice.view;

import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Set;
import javax.imageio.ImageIO;
import javax.swing.SwingUtilities;
import org.marktwice.bench.Action;
import org.marktwice.bench.CannotDo;
import org.marktwice.scenario.Scenario;

/** Draws every screen into pictures, for a look at one's own work: sizes, densities, light and dark. */
public final class Snapshots {
    private final Path folder;
    private long nanos;

    private Snapshots(Path folder) {
        this.folder = folder;
    }

    /** @param args the folder to write to; what names must contain, or nothing for all */
    public static void main(String[] args) throws Exception {
        System.setProperty("gui.screen", "cacio");
        Class.forName("com.github.caciocavallosilano.cacio.ctc.junit.CacioExtension");
        Snapshots shots = new Snapshots(Path.of(args.length > 0 ? args[0] : "target/snapshots"));
        Files.createDirectories(shots.folder);
        String only = args.length > 1 ? args[1] : "";
        int exit = 1;
        try {
            for (boolean dark : new boolean[] {false, true}) {
                for (Dimension size : List.of(new Dimension(1600, 1000), new Dimension(1280, 800))) {
                    shots.walk(dark, size, only);
                }
            }
            exit = 0;
        } finally {
            System.exit(exit);
        }
    }

    private void walk(boolean dark, Dimension size, String only) throws Exception {
        String suffix = "-" + size.width + (dark ? "-dark" : "-light");
        if (!suffix.contains(only) && !only.isEmpty()) return;
        Path home = Files.createTempDirectory("marktwice");
        LearnerFolder learner = new LearnerFolder(home);
        learner.save(new Settings("P07", dark, 1.0, false));
        Scenario scenario = Shelf.scenarios().stream()
                .filter(s -> s.id().equals("porch-shelf"))
                .findFirst()
                .orElseThrow();
        Clock clock = Clock.fixed(Instant.parse("2026-01-12T09:30:00Z"), ZoneOffset.UTC);
        MainWindow[] window = new MainWindow[1];
        SwingUtilities.invokeAndWait(() -> {
            Look.install(dark, 1.0);
            window[0] = new MainWindow(new Walk(learner, Shelf.scenarios(), clock, () -> nanos += 2_100_000_000L));
            window[0].setSize(size);
            window[0].setVisible(true);
        });
        shoot(window[0], "start" + suffix);
        Walk walk = window[0].walk();
        SwingUtilities.invokeAndWait(() -> walk.begin(scenario));
        shoot(window[0], "bench-fresh" + suffix);
        for (Action action : Samples.work("porch-shelf", "flawed")) {
            SwingUtilities.invokeAndWait(() -> perform(walk, action));
        }
        shoot(window[0], "bench" + suffix);
        SwingUtilities.invokeAndWait(walk::toHandIn);
        shoot(window[0], "hand-in" + suffix);
        SwingUtilities.invokeAndWait(() -> walk.handIn(Set.of("knot-clear-of-joint", "handed-pair")));
        shoot(window[0], "sheet" + suffix);
        SwingUtilities.invokeAndWait(() -> {
            Session session = walk.session().orElseThrow();
            walk.showReplay(session, SheetModel.of(session.situation()), 12);
        });
        shoot(window[0], "replay" + suffix);
        SwingUtilities.invokeAndWait(walk::exercises);
        shoot(window[0], "start-marked" + suffix);
        SwingUtilities.invokeAndWait(walk::close);
    }

    private static void perform(Walk walk, Action action) {
        try {
            walk.session().orElseThrow().perform(t -> action);
        } catch (CannotDo e) {
            throw new IllegalStateException(e);
        }
    }

    /** Painted once to ask for the figures of the wood, and again when these are there. */
    private void shoot(MainWindow window, String name) throws Exception {
        for (double density : new double[] {1, 2}) {
            paint(window, density);
            Thread.sleep(1500);
            BufferedImage image = paint(window, density);
            write(image, name + (density == 2 ? "@2x" : ""));
        }
    }

    private void write(BufferedImage image, String name) throws IOException {
        ImageIO.write(image, "png", folder.resolve(name + ".png").toFile());
    }

    private static BufferedImage paint(MainWindow window, double density) throws Exception {
        BufferedImage[] image = new BufferedImage[1];
        SwingUtilities.invokeAndWait(() -> {
            var root = window.getRootPane();
            image[0] = new BufferedImage(
                    (int) (root.getWidth() * density), (int) (root.getHeight() * density), BufferedImage.TYPE_INT_RGB);
            Graphics2D g = image[0].createGraphics();
            g.scale(density, density);
            root.paint(g);
            g.dispose();
        });
        return image[0];
    }
}
