package org.marktwice.view;

import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Objects;
import javax.imageio.ImageIO;
import javax.swing.SwingUtilities;
import org.marktwice.quiz.Kind;
import org.marktwice.quiz.Quiz;
import org.marktwice.view.quiz.QuizAtTheWindow;

/** Draws the quiz into pictures, each kind of question before and after it is answered, and how far one is. */
public final class QuizSnapshots {
    private final Path folder;

    private QuizSnapshots(Path folder) {
        this.folder = folder;
    }

    /** @param args the folder to write to; what names must contain, or nothing for all */
    public static void main(String[] args) throws Exception {
        System.setProperty("gui.screen", "cacio");
        Class.forName("com.github.caciocavallosilano.cacio.ctc.junit.CacioExtension");
        QuizSnapshots shots = new QuizSnapshots(Path.of(args.length > 0 ? args[0] : "target/snapshots"));
        Files.createDirectories(shots.folder);
        String only = args.length > 1 ? args[1] : "";
        int exit = 1;
        try {
            for (int density : new int[] {1, 2}) {
                for (boolean dark : new boolean[] {false, true}) {
                    for (Dimension size : List.of(new Dimension(1280, 800), new Dimension(1920, 1080))) {
                        for (Kind kind : Kind.values()) {
                            String suffix = (dark ? "-dark" : "-light")
                                    + (size.width > 1500 ? "-wide" : "")
                                    + (density == 2 ? "@2x" : "@1x");
                            if (!(kind.id() + suffix).contains(only)) continue;
                            shots.shoot(kind, dark, density, size, suffix);
                        }
                    }
                }
            }
            exit = 0;
        } catch (Exception e) {
            e.printStackTrace();
        } finally {
            System.exit(exit);
        }
    }

    private void shoot(Kind kind, boolean dark, int density, Dimension page, String suffix) throws Exception {
        Path home = Files.createTempDirectory("marktwice");
        LearnerFolder learner = new LearnerFolder(home);
        learner.save(new Settings("P07", dark, density, false));
        Files.writeString(learner.quizJournal("P07"), journal(kind));
        Clock clock = Clock.fixed(Instant.parse("2026-01-18T09:30:00Z"), ZoneOffset.UTC);
        MainWindow[] window = new MainWindow[1];
        SwingUtilities.invokeAndWait(() -> {
            Look.install(dark, density);
            window[0] = new MainWindow(new Walk(learner, Shelf.scenarios(), clock, System::nanoTime));
            Dimension size = new Dimension(page.width * density, page.height * density);
            window[0].setSize(size);
            window[0].setVisible(true);
        });
        if (kind == Kind.MARK_TAIL) paint(window[0], "quiz-start" + suffix);
        SwingUtilities.invokeAndWait(() -> window[0].walk().quiz());
        paint(window[0], "quiz-" + kind.id() + suffix);
        SwingUtilities.invokeAndWait(
                () -> QuizAtTheWindow.answer(Objects.requireNonNull(window[0].screen()), kind.ordinal() % 3 > 0));
        paint(window[0], "quiz-" + kind.id() + "-told" + suffix);
        if (kind == Kind.MARK_TAIL) {
            SwingUtilities.invokeAndWait(() -> QuizAtTheWindow.progress(Objects.requireNonNull(window[0].screen())));
            paint(window[0], "quiz-progress" + suffix);
        }
        SwingUtilities.invokeAndWait(() -> window[0].walk().close());
    }

    /** This kind is the longest overdue, and stands at its second level; some others were answered, one wrongly. */
    private static String journal(Kind kind) {
        StringBuilder lines = new StringBuilder("{\"format\":\"marktwice-quiz/1\",\"learner\":\"P07\"}\n");
        for (int day : new int[] {1, 2, 9}) {
            for (Kind one : Kind.values()) {
                if (one != kind && (kind != Kind.MARK_TAIL || day == 9 || one.ordinal() > 9)) continue;
                boolean wrong = one.ordinal() % 4 == 2 && kind == Kind.MARK_TAIL;
                String said = one.ordinal() == 0 || !wrong
                        ? Quiz.question(one, 1, day).answers().rightOne().text()
                        : "a";
                lines.append("{\"at\":\"2026-01-0" + day + "T18:0" + (one == kind ? 0 : 1) + ":00Z\",\"kind\":\""
                        + one.id() + "\",\"level\":1,\"seed\":" + day + ",\"said\":\"" + said + "\"}\n");
            }
        }
        return lines.toString();
    }

    private void paint(MainWindow window, String name) throws Exception {
        paint(window);
        window.walk().figures().settle();
        Thread.yield();
        ImageIO.write(paint(window), "png", folder.resolve(name + ".png").toFile());
    }

    private static BufferedImage paint(MainWindow window) throws Exception {
        BufferedImage[] image = new BufferedImage[1];
        SwingUtilities.invokeAndWait(() -> {
            var root = window.getRootPane();
            root.validate();
            image[0] = new BufferedImage(root.getWidth(), root.getHeight(), BufferedImage.TYPE_INT_RGB);
            Graphics2D g = image[0].createGraphics();
            root.paint(g);
            g.dispose();
        });
        return image[0];
    }
}
