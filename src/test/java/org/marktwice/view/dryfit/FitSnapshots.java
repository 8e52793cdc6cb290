package org.marktwice.view.dryfit;

import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import javax.imageio.ImageIO;
import javax.swing.JFrame;
import javax.swing.SwingUtilities;
import org.marktwice.bench.Bench;
import org.marktwice.files.AttemptFile;
import org.marktwice.files.ScenarioFile;
import org.marktwice.picture.FigureCache;
import org.marktwice.scenario.Scenario;
import org.marktwice.view.Commands.Command;
import org.marktwice.view.Look;

/** Draws the dry fit of sample attempts into pictures, for a look: two window sizes, 1× and 2×, light and dark. */
public final class FitSnapshots {
    private final Path folder;
    private final String only;

    private FitSnapshots(Path folder, String only) {
        this.folder = folder;
        this.only = only;
    }

    /** @param args the folder to write to; what names must contain, or nothing for all */
    public static void main(String[] args) throws Exception {
        System.setProperty("gui.screen", "cacio");
        Class.forName("com.github.caciocavallosilano.cacio.ctc.junit.CacioExtension");
        FitSnapshots shots = new FitSnapshots(Path.of(args[0]), args.length > 1 ? args[1] : "");
        Files.createDirectories(shots.folder);
        int exit = 1;
        try {
            shots.all("jar-shelf");
            shots.all("screen-frame");
            shots.all("glove-chest");
            exit = 0;
        } catch (Exception e) {
            e.printStackTrace();
        } finally {
            System.exit(exit);
        }
    }

    private void all(String exercise) throws Exception {
        Scenario scenario = ScenarioFile.read(Path.of("scenarios", exercise + ".scenario.json"));
        for (String how : List.of("perfect", "flawed")) {
            Bench bench = AttemptFile.open(
                            Path.of("scenarios/attempts", exercise + "-" + how + ".attempt.jsonl"), scenario)
                    .bench();
            String name = exercise + "-" + how;
            each(bench, name, screen -> {});
            each(bench, name + "-first", screen -> press(screen, FitScreen.NEXT));
            each(bench, name + "-apart", screen -> {
                for (int i = 0; i < 6; i++) press(screen, FitScreen.APART);
                press(screen, FitScreen.NEXT);
            });
            each(bench, name + "-size", screen -> {
                press(screen, FitScreen.ROOM);
                press(screen, FitScreen.HAND);
                for (int i = 0; i <= scenario.drawing().joints().size(); i++) press(screen, FitScreen.NEXT);
            });
        }
        each(Bench.of(scenario), exercise + "-nothing", screen -> {});
    }

    private static void press(FitScreen screen, Command command) {
        screen.deed(command)
                .actionPerformed(new java.awt.event.ActionEvent(
                        screen, java.awt.event.ActionEvent.ACTION_PERFORMED, command.id()));
    }

    private void each(Bench bench, String name, Consumer<FitScreen> does) throws Exception {
        for (boolean dark : new boolean[] {false, true}) {
            for (Dimension size :
                    List.of(new Dimension(1600, 1000), new Dimension(1280, 800), new Dimension(1920, 1080))) {
                for (int density : new int[] {1, 2}) {
                    String suffix = "-" + size.width + (dark ? "-dark" : "-light") + (density == 2 ? "@2x" : "");
                    if (!(name + suffix).matches(".*" + only + ".*")) continue;
                    shoot(bench, name + suffix, dark, size, density, does);
                }
            }
        }
    }

    private void shoot(Bench bench, String name, boolean dark, Dimension size, int density, Consumer<FitScreen> does)
            throws Exception {
        FigureCache figures = new FigureCache();
        JFrame[] frame = new JFrame[1];
        SwingUtilities.invokeAndWait(() -> {
            Look.install(dark, density);
            FitScreen screen = new FitScreen(bench, "P07", figures, false, "Back to the bench", () -> {});
            frame[0] = new JFrame();
            frame[0].setContentPane((javax.swing.JPanel) screen.component());
            frame[0].setSize(density * size.width, density * size.height);
            frame[0].setVisible(true);
            does.accept(screen);
        });
        paint(frame[0]);
        figures.settle();
        SwingUtilities.invokeAndWait(() -> {});
        ImageIO.write(paint(frame[0]), "png", folder.resolve(name + ".png").toFile());
        SwingUtilities.invokeAndWait(() -> frame[0].dispose());
        figures.close();
    }

    private static BufferedImage paint(JFrame window) throws Exception {
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
