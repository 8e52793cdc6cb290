package org.marktwice.view;

import java.awt.Dimension;
import java.awt.Frame;
import java.awt.Graphics2D;
import java.awt.event.ActionEvent;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Function;
import javax.imageio.ImageIO;
import javax.swing.JDialog;
import javax.swing.SwingUtilities;
import org.marktwice.bench.Action;
import org.marktwice.bench.CannotDo;
import org.marktwice.feedback.SheetModel;
import org.marktwice.scenario.Scenario;
import org.marktwice.view.bench.BenchCommands;

/**
 * Draws every screen into pictures, for a look at one's own work: two window sizes, light and dark, each at the usual text
 * size and at twice that in a window twice as large ({@code @2x}), as on a dense screen.
 */
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
                    for (int density : new int[] {1, 2}) shots.walk(dark, size, density, only);
                }
            }
            exit = 0;
        } finally {
            System.exit(exit);
        }
    }

    private void walk(boolean dark, Dimension size, int density, String only) throws Exception {
        String suffix = "-" + size.width + (dark ? "-dark" : "-light") + (density == 2 ? "@2x" : "");
        if (!suffix.contains(only) && !only.isEmpty()) return;
        Path home = Files.createTempDirectory("marktwice");
        LearnerFolder learner = new LearnerFolder(home);
        learner.save(new Settings("P07", dark, density, false));
        Scenario scenario = named("porch-shelf");
        Clock clock = Clock.fixed(Instant.parse("2026-01-12T09:30:00Z"), ZoneOffset.UTC);
        MainWindow[] window = new MainWindow[1];
        SwingUtilities.invokeAndWait(() -> {
            Look.install(dark, density);
            window[0] = new MainWindow(new Walk(learner, Shelf.scenarios(), clock, () -> nanos += 2_100_000_000L));
            window[0].setSize(density * size.width, density * size.height);
            window[0].setVisible(true);
        });
        shoot(window[0], "start" + suffix);
        Walk walk = window[0].walk();
        SwingUtilities.invokeAndWait(() -> walk.begin(scenario));
        shoot(window[0], "bench-fresh" + suffix);
        for (Action action : Samples.work("porch-shelf", "flawed")) {
            if (action instanceof Action.Turning turn && turn.board().equals("D")) {
                Action estimate = new Action.EstimateClearance(turn.t(), turn.board(), 10);
                SwingUtilities.invokeAndWait(() -> perform(walk, estimate));
            }
            SwingUtilities.invokeAndWait(() -> perform(walk, action));
        }
        SwingUtilities.invokeAndWait(() -> {
            doDeed(window[0], BenchCommands.HINT);
            doDeed(window[0], BenchCommands.HINT);
        });
        shoot(window[0], "bench" + suffix);
        SwingUtilities.invokeAndWait(() -> doDeed(window[0], BenchCommands.JOB));
        shoot(window[0], "job-seen" + suffix);
        SwingUtilities.invokeAndWait(() -> doDeed(window[0], JobScreen.LEAVE));
        SwingUtilities.invokeAndWait(walk::toHandIn);
        shoot(window[0], "hand-in" + suffix);
        SwingUtilities.invokeAndWait(() -> walk.handIn(Set.of("knot-clear-of-joint", "handed-pair"), Set.of("shelf")));
        shoot(window[0], "sheet" + suffix);
        SwingUtilities.invokeAndWait(() -> doDeed(window[0], SheetScreen.JOB));
        shoot(window[0], "job-told" + suffix);
        SwingUtilities.invokeAndWait(() -> doDeed(window[0], JobScreen.LEAVE));
        SwingUtilities.invokeAndWait(() -> {
            Session session = walk.session().orElseThrow();
            walk.showReplay(session, SheetModel.of(session.situation()), 20);
        });
        shoot(window[0], "replay" + suffix);
        SwingUtilities.invokeAndWait(() -> doDeed(window[0], ReplayScreen.WHY));
        shoot(window[0], "replay-why" + suffix);
        SwingUtilities.invokeAndWait(walk::exercises);
        SwingUtilities.invokeAndWait(() -> walk.begin(named("jar-shelf")));
        shoot(window[0], "bench-set-out" + suffix);
        SwingUtilities.invokeAndWait(walk::toHandIn);
        shoot(window[0], "hand-in-set-out" + suffix);
        SwingUtilities.invokeAndWait(walk::exercises);
        SwingUtilities.invokeAndWait(
                () -> ((StartScreen) java.util.Objects.requireNonNull(window[0].screen())).select(scenario));
        shoot(window[0], "start-marked" + suffix);
        for (JDialog dialog : List.of(dialog(KeySheet::keys, window[0]), dialog(KeySheet::cautions, window[0]))) {
            dialogShot(dialog, dialog.getName().replace(' ', '-').toLowerCase(Locale.ROOT) + suffix);
        }
        SwingUtilities.invokeAndWait(walk::close);
    }

    private static Scenario named(String id) {
        return Shelf.scenarios().stream()
                .filter(s -> s.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static JDialog dialog(Function<Frame, JDialog> made, MainWindow owner) throws Exception {
        JDialog[] dialog = new JDialog[1];
        SwingUtilities.invokeAndWait(() -> {
            dialog[0] = made.apply(owner);
            dialog[0].addNotify();
            dialog[0].validate();
        });
        return dialog[0];
    }

    private void dialogShot(JDialog dialog, String name) throws Exception {
        SwingUtilities.invokeAndWait(() -> {
            var root = dialog.getRootPane();
            BufferedImage image = new BufferedImage(root.getWidth(), root.getHeight(), BufferedImage.TYPE_INT_RGB);
            Graphics2D g = image.createGraphics();
            root.print(g);
            g.dispose();
            try {
                ImageIO.write(image, "png", folder.resolve(name + ".png").toFile());
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
            dialog.dispose();
        });
    }

    private static void doDeed(MainWindow window, Commands.Command command) {
        java.util.Objects.requireNonNull(window.screen())
                .deed(command)
                .actionPerformed(new ActionEvent(window, ActionEvent.ACTION_PERFORMED, command.id()));
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
        paint(window);
        window.walk().figures().settle();
        BufferedImage image = paint(window);
        ImageIO.write(image, "png", folder.resolve(name + ".png").toFile());
    }

    private static BufferedImage paint(MainWindow window) throws Exception {
        BufferedImage[] image = new BufferedImage[1];
        SwingUtilities.invokeAndWait(() -> {
            var root = window.getRootPane();
            image[0] = new BufferedImage(root.getWidth(), root.getHeight(), BufferedImage.TYPE_INT_RGB);
            Graphics2D g = image[0].createGraphics();
            root.paint(g);
            g.dispose();
        });
        return image[0];
    }
}
