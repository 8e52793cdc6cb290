package org.marktwice.view;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Window;
import java.awt.event.ActionEvent;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.Callable;
import java.util.concurrent.Future;
import javax.imageio.ImageIO;
import javax.swing.AbstractButton;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.MenuSelectionManager;
import javax.swing.RootPaneContainer;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;
import org.marktwice.bench.Attempt;
import org.marktwice.files.ActionWriter;
import org.marktwice.files.DraftFile;
import org.marktwice.files.RackFile;
import org.marktwice.files.ScenarioFile;
import org.marktwice.files.TypedRack;
import org.marktwice.rulebook.Slip;
import org.marktwice.rulebook.Slipped;
import org.marktwice.rulebook.Slips;
import org.marktwice.rulebook.WorkedAttempt;
import org.marktwice.scenario.Draft;
import org.marktwice.scenario.DraftPart;
import org.marktwice.scenario.Scenario;
import org.marktwice.timber.Board;
import org.marktwice.timber.KnotBody;
import org.marktwice.timber.MeasuredBoard;
import org.marktwice.timber.MeasuredBoard.Measured;
import org.marktwice.timber.Showing;
import org.marktwice.view.desk.DeskPixels;
import org.marktwice.view.desk.HeldMarking;

/** Draws the screens of the teacher's desk, as {@link Snapshots} does the learner's. */
public final class DeskSnapshots {
    private static final List<Dimension> SIZES = List.of(
            new Dimension(1600, 1000), new Dimension(1280, 800), new Dimension(1366, 768), new Dimension(1920, 1080));

    private final Path folder;
    private String screens = "";

    private DeskSnapshots(Path folder) {
        this.folder = folder;
    }

    /**
     * @param args the folder to write to; what the size's and light's name must contain; {@code set}, {@code class},
     *     {@code rack}, {@code record} or {@code print} for those screens alone. Nothing is all
     */
    public static void main(String[] args) throws Exception {
        System.setProperty("gui.screen", "cacio");
        // menus and dialogs keep to the screen: it has room for the largest window at twice the scale
        System.setProperty("cacio.managed.screensize", "3840x2160");
        Class.forName("com.github.caciocavallosilano.cacio.ctc.junit.CacioExtension");
        DeskSnapshots shots = new DeskSnapshots(Path.of(args.length > 0 ? args[0] : "target/snapshots"));
        Files.createDirectories(shots.folder);
        String only = args.length > 1 ? args[1] : "";
        shots.screens = args.length > 2 ? args[2] : "";
        int exit = 1;
        try {
            for (boolean dark : new boolean[] {false, true}) {
                for (Dimension size : SIZES) {
                    for (int density : new int[] {1, 2}) shots.walk(dark, size, density, only);
                }
            }
            exit = 0;
        } catch (Throwable e) {
            e.printStackTrace();
        } finally {
            System.exit(exit);
        }
    }

    private static Path home(boolean dark, int density) throws Exception {
        Path home = Files.createTempDirectory("marktwice");
        new LearnerFolder(home).save(new Settings("T", dark, density, false));
        Path desk = Files.createDirectories(home.resolve("Desk"));
        Files.write(
                desk.resolve("boot-bench.draft.json"),
                DraftFile.bytes(Draft.BLANK
                        .titled("Boot bench")
                        .plusPart(DraftPart.blank("seat").named("Seat").with(DraftPart.Figure.LENGTH, 620.0))));
        for (Scenario s : Shelf.scenarios()) {
            if (s.level() > 2) continue;
            Files.write(
                    desk.resolve(s.id() + "-ours.draft.json"),
                    DraftFile.bytes(Draft.of(s).withId("").titled(s.title() + ", ours")));
        }
        return home;
    }

    private void walk(boolean dark, Dimension size, int density, String only) throws Exception {
        String suffix = "-" + size.width + (dark ? "-dark" : "-light") + (density == 2 ? "@2x" : "");
        if (!suffix.contains(only) && !only.isEmpty()) return;
        LearnerFolder learner = new LearnerFolder(home(dark, density));
        Clock clock = Clock.fixed(Instant.parse("2026-01-12T09:30:00Z"), ZoneOffset.UTC);
        MainWindow window = on(() -> {
            Look.install(dark, density);
            MainWindow made = new MainWindow(new Walk(learner, Shelf.scenarios(), clock, System::nanoTime));
            made.setSize(density * size.width, density * size.height);
            made.setVisible(true);
            return made;
        });
        on(() -> click(window, "to-desk"));
        settle();
        if (wants("set")) set(window, suffix);
        if (wants("class")) aClass(window, learner.folder(), suffix);
        if (wants("rack")) rack(window, suffix);
        if (wants("record")) record(window, suffix);
        if (wants("print")) print(window, suffix);
        // left first, so that nothing asks whether to save
        on(() -> {
            window.walk().desk();
            return true;
        });
        settle();
        on(() -> {
            window.walk().close();
            return true;
        });
    }

    private boolean wants(String group) {
        return screens.isEmpty() || screens.equals(group);
    }

    private void set(MainWindow window, String suffix) throws Exception {
        shoot(window, "desk" + suffix);
        on(() -> click(window, "change-exercise"));
        shoot(window, "set-half" + suffix);
        on(() -> click(window, "leave-set"));
        settle();
        on(() -> click(window, "new-exercise"));
        shoot(window, "set-new" + suffix);
        on(() -> {
            window.walk().desk();
            return true;
        });
        settle();
        on(() -> {
            javax.swing.JTable table = (javax.swing.JTable) Objects.requireNonNull(find(window, "exercises-set"));
            table.setRowSelectionInterval(table.getRowCount() - 1, table.getRowCount() - 1);
            return click(window, "change-exercise");
        });
        shoot(window, "set-job" + suffix);
        on(() -> click(window, "tab-set-boards"));
        settle();
        shoot(window, "set-boards-drawn" + suffix);
        on(() -> click(window, "boards-grown"));
        settle();
        shoot(window, "set-boards-grown" + suffix);
        on(() -> click(window, "tab-set-task"));
        shoot(window, "set-task" + suffix);
    }

    private void aClass(MainWindow window, Path home, String suffix) throws Exception {
        home(window, "hand-out");
        on(() -> {
            field(window, "learners", "14");
            return click(window, "make-set");
        });
        settle();
        shoot(window, "hand-out" + suffix);
        Path handedOut = home.resolve("Desk/Handed out/book-prop-ours");
        on(() -> click(window, "collect"));
        on(() -> {
            field(
                    window,
                    "mark-attempts",
                    attempts(handedOut, home.resolve("back")).toString());
            return click(window, "mark-folder");
        });
        settle();
        for (String pane : List.of("learners", "slips", "rules", "progress", "tomorrow", "files")) {
            on(() -> click(window, "tab-see-" + pane));
            choose(window, Map.of("progress", "attempts").getOrDefault(pane, pane));
            shoot(window, "mark-" + pane + suffix);
        }
        stopped(window, home, suffix);
    }

    /** Marking that stands still after some files, and then is stopped. */
    private void stopped(MainWindow window, Path home, String suffix) throws Exception {
        Path handedOut = home.resolve("Desk/Handed out/book-prop-ours");
        on(() -> {
            window.show(HeldMarking.screen(window.walk(), home.resolve("Desk"), handedOut, 9));
            field(window, "mark-attempts", home.resolve("back").toString());
            return click(window, "mark-folder");
        });
        while (!on(() -> ((JLabel) Objects.requireNonNull(find(window, "standing"))).getText())
                .startsWith("Marked 9 ")) Thread.onSpinWait();
        shoot(window, "mark-under-way" + suffix);
        on(() -> click(window, "stop-marking"));
        settle();
        shoot(window, "mark-stopped" + suffix);
    }

    /** Picks a cell out, where the pane has a table. */
    private static void choose(MainWindow window, String table) throws Exception {
        on(() -> {
            if (find(window, table) instanceof javax.swing.JTable of)
                of.changeSelection(3, Math.min(10, of.getColumnCount() - 1), false, false);
            return true;
        });
    }

    private void rack(MainWindow window, String suffix) throws Exception {
        home(window, "to-allot");
        shoot(window, "rack-empty" + suffix);
        on(() -> {
            field(window, "rack", aRack(Files.createTempDirectory("rack")).toString());
            return click(window, "open-rack");
        });
        settle();
        on(() -> {
            javax.swing.JTable table = (javax.swing.JTable) Objects.requireNonNull(find(window, "rack-table"));
            table.changeSelection(2, 10, false, false);
            return true;
        });
        shoot(window, "rack" + suffix);
        on(() -> {
            javax.swing.JTable table = (javax.swing.JTable) Objects.requireNonNull(find(window, "rack-table"));
            int below = table.getRowCount() - 1;
            table.setValueAt("R30", below, 0);
            table.setValueAt("scots", below, 1);
            table.setValueAt("310", below, 2);
            table.setValueAt("a hand", below, 3);
            table.changeSelection(below, 3, false, false);
            return true;
        });
        shoot(window, "rack-half" + suffix);
        on(() -> {
            field(window, "jobs", "3");
            return click(window, "allot");
        });
        settle();
        shoot(window, "rack-allotted" + suffix);
        on(() -> click(window, "tab-see-to-buy"));
        shoot(window, "rack-to-buy" + suffix);
    }

    /** What a teacher measured with a rule: boards of the exercise, each knot where it shows, to the millimetre. */
    private static Path aRack(Path folder) throws Exception {
        List<MeasuredBoard> boards = new ArrayList<>();
        Scenario prop = Shelf.scenarios().stream()
                .filter(s -> s.id().equals("book-prop"))
                .findFirst()
                .orElseThrow();
        for (int copy = 0; copy < 3; copy++) {
            for (Board board : prop.boards()) {
                List<Measured> knots = new ArrayList<>();
                for (KnotBody body : board.bodies()) {
                    List<Showing> shows = body.traces().stream()
                            .filter(t -> !t.surface().isEnd())
                            .map(Showing::of)
                            .map(DeskSnapshots::toTheMillimetre)
                            .limit(copy == 1 ? 1 : 4)
                            .toList();
                    if (!shows.isEmpty()) knots.add(new Measured(body.knot().id(), shows));
                }
                boards.add(new MeasuredBoard(
                        new Board.Facts(
                                "R" + (boards.size() + 1),
                                board.facts().stuff(),
                                board.facts().species(),
                                board.size(),
                                12,
                                11,
                                board.facts().dressed(),
                                board.facts().pith(),
                                2,
                                List.of(),
                                board.facts().shape(),
                                0),
                        knots));
            }
        }
        Path file = folder.resolve("rack.csv");
        Files.write(file, TypedRack.of(new RackFile(boards)).csv());
        return file;
    }

    private static Showing toTheMillimetre(Showing s) {
        return new Showing(
                s.surface(),
                Math.rint(s.u()),
                Math.rint(s.v()),
                Math.max(1, Math.rint(s.length())),
                Math.max(1, Math.rint(s.width())),
                s.dead());
    }

    private void home(MainWindow window, String way) throws Exception {
        on(() -> {
            window.walk().desk();
            return true;
        });
        settle();
        on(() -> {
            javax.swing.JTable table = (javax.swing.JTable) Objects.requireNonNull(find(window, "exercises-set"));
            for (int i = 0; i < table.getRowCount(); i++) {
                if (table.getValueAt(i, 0).equals("Book prop, ours")) table.setRowSelectionInterval(i, i);
            }
            return click(window, way);
        });
        settle();
    }

    private void record(MainWindow window, String suffix) throws Exception {
        home(window, "to-record");
        on(() -> {
            javax.swing.JTable table = (javax.swing.JTable) Objects.requireNonNull(find(window, "record"));
            for (int r = 0; r < Math.min(16, table.getRowCount()); r++) {
                table.setValueAt(String.valueOf(320 + (r * 7 % 5) * 0.4), r, 0);
                table.setValueAt(String.valueOf(140 + (r * 3 % 4) * 0.5), r, 1);
            }
            return true;
        });
        shoot(window, "record" + suffix);
    }

    /** What drops from the buttons that print, and what they ask. */
    private void print(MainWindow window, String suffix) throws Exception {
        home(window, "print-sheets");
        shoot(window, "print-menu" + suffix);
        asking(window, "print-title-block-…", "print-title-block" + suffix);
        home(window, "to-record");
        on(() -> {
            ((javax.swing.JTable) Objects.requireNonNull(find(window, "record"))).setValueAt("320.4", 0, 0);
            return click(window, "print-record");
        });
        shoot(window, "print-record" + suffix);
        on(() -> {
            MenuSelectionManager.defaultManager().clearSelectedPath();
            return true;
        });
        home(window, "to-allot");
        on(() -> {
            field(window, "rack", aRack(Files.createTempDirectory("rack")).toString());
            return click(window, "open-rack");
        });
        settle();
        on(() -> {
            javax.swing.JTable table = (javax.swing.JTable) Objects.requireNonNull(find(window, "rack-table"));
            table.changeSelection(0, 1, false, false);
            table.getActionMap().get("offer").actionPerformed(new ActionEvent(table, 0, ""));
            return true;
        });
        shoot(window, "rack-choice" + suffix);
        on(() -> {
            MenuSelectionManager.defaultManager().clearSelectedPath();
            return true;
        });
    }

    /** Picks an item of an open menu that asks something, draws what it asks, and answers no. */
    private void asking(MainWindow window, String item, String name) throws Exception {
        // the dialog holds up whoever asked for it
        SwingUtilities.invokeLater(() -> {
            Container menu = (Container)
                    MenuSelectionManager.defaultManager().getSelectedPath()[0].getComponent();
            MenuSelectionManager.defaultManager().clearSelectedPath();
            ((AbstractButton) Objects.requireNonNull(find(menu, item), item)).doClick();
        });
        while (on(() -> over(window).stream().noneMatch(JDialog.class::isInstance))) Thread.onSpinWait();
        shoot(window, name);
        on(() -> {
            over(window).forEach(Window::dispose);
            return true;
        });
    }

    /** Menus and dialogs over the window. */
    private static List<Window> over(MainWindow window) {
        return Arrays.stream(window.getOwnedWindows()).filter(Window::isShowing).toList();
    }

    private static void field(MainWindow window, String name, String text) {
        javax.swing.JTextField field = (javax.swing.JTextField) Objects.requireNonNull(find(window, name));
        field.setText(text);
        field.postActionEvent();
    }

    /** What a class hands in: most with some slips, some twice, one damaged, one not there at all. */
    private static Path attempts(Path handedOut, Path back) throws Exception {
        Files.createDirectories(back);
        List<Slip> slips = List.of(Slip.values());
        for (int i = 1; i <= 13; i++) {
            String who = String.format(java.util.Locale.ROOT, "P%02d", i);
            Path file;
            try (var all = Files.list(handedOut)) {
                file = all.filter(f -> f.toString().contains("-" + who + "."))
                        .findFirst()
                        .orElseThrow();
            }
            Scenario scenario = ScenarioFile.read(file);
            for (int tried = 0; tried < (i % 3 == 0 ? 3 : 1); tried++) {
                Attempt attempt =
                        WorkedAttempt.of(scenario, who, "2026-02-0" + (3 + tried) + "T09:10:0" + i % 10 + "Z");
                int count = Math.max(0, i % 5 - tried);
                List<Slip> some = slips.subList((i * 3) % 8, Math.min(slips.size(), (i * 3) % 8 + 2 * count));
                List<Slipped> made = Slips.several(some, scenario, attempt, i);
                if (!made.isEmpty()) attempt = made.get(made.size() - 1).attempt();
                String text = ActionWriter.text(attempt);
                if (i == 4) text = text.substring(0, text.length() - 25);
                if (i == 7) text = text.replaceFirst("\"do\":\"", "\"do\":\"hold ");
                Files.writeString(back.resolve(who + "-" + (tried + 1) + ".attempt.jsonl"), text);
            }
        }
        Files.writeString(back.resolve("timetable.txt"), "Tuesday: workshop");
        return back;
    }

    private static <T> T on(Callable<T> what) throws Exception {
        Object[] answer = new Object[1];
        Exception[] thrown = new Exception[1];
        SwingUtilities.invokeAndWait(() -> {
            try {
                answer[0] = what.call();
            } catch (Exception e) {
                thrown[0] = e;
            }
        });
        if (thrown[0] != null) throw thrown[0];
        @SuppressWarnings("unchecked")
        T typed = (T) answer[0];
        return typed;
    }

    /** Waits until all that the desk works at aside has come back to the screen. */
    private static void settle() throws Exception {
        for (List<Future<?>> left = on(DeskPixels::underWay); !left.isEmpty(); left = on(DeskPixels::underWay)) {
            for (Future<?> one : left) {
                if (!one.isCancelled()) one.get();
            }
        }
    }

    static boolean click(MainWindow window, String name) {
        ((AbstractButton) Objects.requireNonNull(find(window.getRootPane(), name), name)).doClick();
        return true;
    }

    static @Nullable Component find(Container in, String name) {
        for (Component c : in.getComponents()) {
            if (name.equals(c.getName()) && c.isVisible()) return c;
            if (c instanceof Container more) {
                Component found = find(more, name);
                if (found != null) return found;
            }
        }
        return null;
    }

    private void shoot(MainWindow window, String name) throws Exception {
        paint(window);
        window.walk().figures().settle();
        ImageIO.write(paint(window), "png", folder.resolve(name + ".png").toFile());
    }

    private static BufferedImage paint(MainWindow window) throws Exception {
        return on(() -> {
            var root = window.getRootPane();
            BufferedImage image = new BufferedImage(root.getWidth(), root.getHeight(), BufferedImage.TYPE_INT_RGB);
            Graphics2D g = image.createGraphics();
            root.paint(g);
            for (Window more : over(window)) {
                Container shown = ((RootPaneContainer) more).getRootPane();
                Point at = SwingUtilities.convertPoint(shown, 0, 0, root);
                Graphics2D there = (Graphics2D) g.create(at.x, at.y, shown.getWidth(), shown.getHeight());
                shown.paint(there);
                there.dispose();
            }
            g.dispose();
            return image;
        });
    }
}
