package org.marktwice.view;

import java.awt.Graphics2D;
import java.awt.Point;
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
import java.util.Objects;
import java.util.Set;
import javax.imageio.ImageIO;
import javax.swing.JDialog;
import javax.swing.JPopupMenu;
import javax.swing.MenuElement;
import javax.swing.MenuSelectionManager;
import javax.swing.SwingUtilities;
import org.marktwice.bench.Action;
import org.marktwice.bench.CannotDo;
import org.marktwice.rulebook.SlipWords;
import org.marktwice.scenario.Scenario;
import org.marktwice.view.bench.BenchCommands;

/** Draws, for a look, what helps and what examines: finding the fault, hints, estimates over time, a kept examination. */
public final class HelpSnapshots {
    private final Path folder;
    private final boolean dark;
    private final int width;
    private final int height;
    private final int density;
    private long nanos;

    private HelpSnapshots(Path folder, boolean dark, int width, int height, int density) {
        this.folder = folder;
        this.dark = dark;
        this.width = width;
        this.height = height;
        this.density = density;
    }

    /** @param args the folder to write to */
    public static void main(String[] args) throws Exception {
        System.setProperty("gui.screen", "cacio");
        Class.forName("com.github.caciocavallosilano.cacio.ctc.junit.CacioExtension");
        Path folder = Files.createDirectories(Path.of(args.length > 0 ? args[0] : "target/snapshots"));
        int exit = 1;
        try {
            new HelpSnapshots(folder, false, 1600, 1000, 1).walk();
            new HelpSnapshots(folder, true, 1280, 800, 1).walk();
            new HelpSnapshots(folder, true, 1600, 1000, 2).walk();
            exit = 0;
        } catch (Exception e) {
            e.printStackTrace();
        } finally {
            System.exit(exit);
        }
    }

    private void walk() throws Exception {
        LearnerFolder learner = new LearnerFolder(Files.createTempDirectory("marktwice"));
        learner.save(new Settings("P07", dark, density, false));
        Clock clock = Clock.fixed(Instant.parse("2026-01-12T09:30:00Z"), ZoneOffset.UTC);
        MainWindow[] window = new MainWindow[1];
        SwingUtilities.invokeAndWait(() -> {
            Look.install(dark, density);
            window[0] = new MainWindow(new Walk(learner, Shelf.scenarios(), clock, () -> nanos += 2_100_000_000L));
            window[0].setSize(density * width, density * height);
            window[0].setVisible(true);
        });
        Walk walk = window[0].walk();
        shoot(window[0], "start");
        practice(window[0]);
        fault(window[0], walk);
        for (int i = 0; i < 3; i++) sheet(walk, "pot-stand", i == 2 ? "perfect" : "flawed", i);
        shoot(window[0], "calibration");
        SwingUtilities.invokeAndWait(walk::exercises);
        sheet(walk, "wall-cupboard", "flawed", 0);
        shoot(window[0], "kept");
        SwingUtilities.invokeAndWait(walk::close);
    }

    private void practice(MainWindow owner) throws Exception {
        SwingUtilities.invokeAndWait(() -> {
            JDialog page = PracticeSheet.of(
                    owner, Screen.Workshop.of(scenario("herb-trough")).orElseThrow());
            page.addNotify();
            page.validate();
            var root = page.getRootPane();
            BufferedImage image = new BufferedImage(root.getWidth(), root.getHeight(), BufferedImage.TYPE_INT_RGB);
            Graphics2D g = image.createGraphics();
            root.print(g);
            g.dispose();
            try {
                ImageIO.write(image, "png", folder.resolve(file("practice")).toFile());
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
            page.dispose();
        });
    }

    private void fault(MainWindow window, Walk walk) throws Exception {
        SwingUtilities.invokeAndWait(() -> walk.findFault(scenario("porch-shelf")));
        shoot(window, "fault-bench");
        SwingUtilities.invokeAndWait(() -> doDeed(window, BenchCommands.NAME_SLIP));
        shoot(window, "fault-slips");
        SwingUtilities.invokeAndWait(() -> {
            MenuSelectionManager.defaultManager().clearSelectedPath();
            String unsound = SlipWords.toBeNamed().get(2).id();
            String lefts = SlipWords.toBeNamed().get(4).id();
            perform(walk, new Action.Fault(300, "A", unsound));
            perform(walk, new Action.Fault(310, "C", lefts));
            doDeed(window, BenchCommands.HINT);
        });
        shoot(window, "fault-hint");
        SwingUtilities.invokeAndWait(() -> doDeed(window, BenchCommands.TURN));
        SwingUtilities.invokeAndWait(() -> doDeed(window, BenchCommands.ESTIMATE));
        shoot(window, "estimate-menu");
        SwingUtilities.invokeAndWait(() -> {
            MenuSelectionManager.defaultManager().clearSelectedPath();
            walk.handInWithoutEstimate();
        });
        shoot(window, "fault-sheet");
        SwingUtilities.invokeAndWait(walk::exercises);
    }

    private static void sheet(Walk walk, String id, String kind, int run) throws Exception {
        List<Action> work = Samples.work(id, kind);
        SwingUtilities.invokeAndWait(() -> {
            walk.exercises();
            walk.begin(scenario(id));
            for (Action action : work) {
                if (action instanceof Action.Turning turn) {
                    double guess = 5.0 * (run + 1);
                    perform(walk, new Action.EstimateClearance(turn.t(), turn.board(), guess));
                }
                perform(walk, action);
            }
            walk.handIn(run == 0 ? Set.of("handed-pair") : Set.of(), Set.of());
        });
    }

    private static Scenario scenario(String id) {
        return Shelf.scenarios().stream()
                .filter(s -> s.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static void doDeed(MainWindow window, Commands.Command command) {
        Objects.requireNonNull(window.screen())
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

    private void shoot(MainWindow window, String name) throws Exception {
        BufferedImage[] image = new BufferedImage[1];
        for (int i = 0; i < 2; i++) {
            SwingUtilities.invokeAndWait(() -> {
                var root = window.getRootPane();
                image[0] = new BufferedImage(root.getWidth(), root.getHeight(), BufferedImage.TYPE_INT_RGB);
                Graphics2D g = image[0].createGraphics();
                root.paint(g);
                for (MenuElement open : MenuSelectionManager.defaultManager().getSelectedPath()) {
                    if (!(open instanceof JPopupMenu menu) || !menu.isShowing()) continue;
                    Point from = root.getLocationOnScreen();
                    Point to = menu.getLocationOnScreen();
                    Graphics2D over = (Graphics2D) g.create();
                    over.translate(to.x - from.x, to.y - from.y);
                    menu.paint(over);
                    over.dispose();
                }
                g.dispose();
            });
            window.walk().figures().settle();
        }
        ImageIO.write(image[0], "png", folder.resolve(file(name)).toFile());
    }

    private String file(String name) {
        return "help-" + name + "-" + width + (dark ? "-dark" : "-light") + (density == 2 ? "@2x" : "") + ".png";
    }
}
