package org.marktwice.view;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import javax.swing.JFrame;
import javax.swing.SwingUtilities;
import org.marktwice.bench.Action;
import org.marktwice.bench.Bench;
import org.marktwice.bench.CannotDo;
import org.marktwice.feedback.OutcomeModel;
import org.marktwice.picture.FigureCache;
import org.marktwice.rulebook.Outcome;
import org.marktwice.rulebook.Situation;

/** Draws jobs as they would come out, for a look: flawed ones, half-done ones, in both looks and at two sizes of text. */
public final class JobSnapshots {
    private static final FigureCache FIGURES = new FigureCache(60_000_000);

    private JobSnapshots() {}

    /** @param args the folder to write to; the exercises, or nothing for a choice of them */
    public static void main(String[] args) throws Exception {
        System.setProperty("gui.screen", "cacio");
        Class.forName("com.github.caciocavallosilano.cacio.ctc.junit.CacioExtension");
        Path folder = Files.createDirectories(Path.of(args.length > 0 ? args[0] : "target/snapshots"));
        List<String> ids = args.length > 1
                ? List.of(args).subList(1, args.length)
                : List.of("book-prop", "boot-bench", "larder-door", "seed-box", "peg-rail");
        int exit = 1;
        try {
            for (String id : ids) {
                shoot(folder, id, "flawed", 1, false, 1600, 1000, 1);
                shoot(folder, id, "flawed", 1, true, 1280, 800, 1);
                shoot(folder, id, "flawed", 0.5, false, 1280, 800, 1);
                shoot(folder, id, "flawed", 0.5, true, 1920, 1080, 1);
                shoot(folder, id, "flawed", 1, true, 1280, 800, 2);
            }
            exit = 0;
        } finally {
            System.exit(exit);
        }
    }

    private static void shoot(
            Path folder, String id, String kind, double share, boolean dark, int width, int height, int density)
            throws Exception {
        List<Action> work = Samples.work(id, kind);
        Bench[] bench = {Bench.of(Samples.scenario(id))};
        for (Action action : work.subList(0, (int) (share * work.size()))) {
            try {
                bench[0] = bench[0].after(action);
            } catch (CannotDo e) {
                throw new IllegalStateException(e);
            }
        }
        BufferedImage[] image = new BufferedImage[1];
        JFrame[] frame = new JFrame[1];
        SwingUtilities.invokeAndWait(() -> {
            Look.install(dark, density);
            OutcomeModel model = OutcomeModel.of(Situation.of(bench[0]), Outcome.Shown.TOLD);
            JobScreen screen = new JobScreen(bench[0].scenario(), "as it stands now", model, FIGURES, "Back", () -> {});
            frame[0] = new JFrame();
            frame[0].setContentPane((javax.swing.JPanel) screen.component());
            frame[0].setSize(width * density, height * density);
            frame[0].setVisible(true);
            screen.focus();
        });
        for (int i = 0; i < 2; i++) {
            SwingUtilities.invokeAndWait(() -> {
                var root = frame[0].getRootPane();
                image[0] = new BufferedImage(root.getWidth(), root.getHeight(), BufferedImage.TYPE_INT_RGB);
                Graphics2D g = image[0].createGraphics();
                root.paint(g);
                g.dispose();
            });
            FIGURES.settle();
        }
        String name =
                id + (share < 1 ? "-half-" : "-") + width + (dark ? "-dark" : "-light") + (density == 2 ? "@2x" : "");
        ImageIO.write(
                image[0], "png", folder.resolve("outcome-" + name + ".png").toFile());
        SwingUtilities.invokeAndWait(frame[0]::dispose);
    }
}
