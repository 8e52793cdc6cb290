package org.marktwice.view.desk;

import java.awt.CardLayout;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JMenu;
import javax.swing.JPanel;
import javax.swing.JPopupMenu;
import javax.swing.JProgressBar;
import javax.swing.SwingWorker;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;
import org.marktwice.classroom.Results;
import org.marktwice.classroom.Results.Counting;
import org.marktwice.classroom.ResultsExport;
import org.marktwice.classroom.Reteach;
import org.marktwice.print.Paper;
import org.marktwice.print.ReteachSheet;
import org.marktwice.print.Sheets;
import org.marktwice.rulebook.Finding;
import org.marktwice.view.Bar;
import org.marktwice.view.Card;
import org.marktwice.view.Commands;
import org.marktwice.view.Commands.Command;
import org.marktwice.view.Commands.Deed;
import org.marktwice.view.Commands.Place;
import org.marktwice.view.Look;
import org.marktwice.view.Look.Style;
import org.marktwice.view.Screen;

/** Marking a folder of attempts, and what the class's results say. */
final class MarkScreen implements Screen {
    static final Command MARK =
            new Command("mark-folder", Place.MARK, "Mark", "menu ENTER", "Mark every file in the folder");
    static final Command STOP = new Command(
            "stop-marking", Place.MARK, "Stop", "menu PERIOD", "Stop marking; what was marked so far stands");
    static final Command LEARNERS =
            new Command("see-learners", Place.MARK, "Learners", "menu 1", "Learners and rules, with the totals");
    static final Command SLIPS =
            new Command("see-slips", Place.MARK, "Slips", "menu 2", "Slips, those that most learners made first");
    static final Command RULES = new Command(
            "see-rules", Place.MARK, "Rules", "menu 3", "How hard each rule was, and how well it tells learners apart");
    static final Command PROGRESS =
            new Command("see-progress", Place.MARK, "Progress", "menu 4", "From try to try, and every attempt");
    static final Command TOMORROW =
            new Command("see-tomorrow", Place.MARK, "Tomorrow", "menu 5", "What to teach again");
    static final Command FILES = new Command("see-files", Place.MARK, "Files", "menu 6", "Every file with its state");
    static final Command EXPORT = new Command(
            "export-results",
            Place.MARK,
            "Save table …",
            "menu S",
            "Save the results as CSV or for a spreadsheet (XLSX)");
    static final Command PRINT = new Command(
            "print-tomorrow",
            Place.MARK,
            "Print …",
            "menu P",
            "Save the page of what to teach again, or everyone's mark sheet (PDF)");
    static final Command DELETE = new Command(
            "delete-learner",
            Place.MARK,
            "Delete learner …",
            "menu DELETE",
            "Delete all that is kept of the learner picked out, on their request");
    static final Command BACK =
            new Command("leave-mark", Place.MARK, "Teacher's desk", "ESCAPE", "Go back to the desk");
    static final List<Command> ALL =
            List.of(MARK, STOP, LEARNERS, SLIPS, RULES, PROGRESS, TOMORROW, FILES, EXPORT, PRINT, DELETE, BACK);

    private static final List<Command> PANES = List.of(LEARNERS, SLIPS, RULES, PROGRESS, TOMORROW, FILES);

    private final Desk desk;
    private final PathField exercise;
    private final PathField folder;
    private final JCheckBox changed = new JCheckBox("even where the exercise was changed since");
    private final Choice<Counting> counts;
    private final JProgressBar progress = new JProgressBar();
    private final KeyButton stop;
    private final KeyButton printing;
    private final JLabel standing = Look.quiet("Choose the exercise and the folder of attempts, and mark.", Style.BODY);
    private final SaidLine line = new SaidLine();
    private final Tabs tabs = new Tabs();
    private final JPanel stage = new JPanel(new CardLayout());
    private final ResultsPanes panes = new ResultsPanes();
    private final List<Deed> deeds;
    private final JPanel page;
    private Counting counting = Counting.LAST;
    private transient @Nullable SwingWorker<?, ?> working;
    private transient Aside.Stop stopping = new Aside.Stop();
    private transient @Nullable Marking marking;
    private final transient Marking.Marks marks;

    /** @param set the scenario or the folder of variants to begin with; null for none */
    MarkScreen(Desk desk, @Nullable Path set) {
        this(desk, set, Marking::of);
    }

    /** @param marks what marks a folder */
    MarkScreen(Desk desk, @Nullable Path set, Marking.Marks marks) {
        this.desk = desk;
        this.marks = marks;
        exercise = new PathField(
                "mark-exercise",
                "The exercise's file, or the folder that was handed out",
                PathField.Kind.EITHER,
                () -> {});
        folder = new PathField("mark-attempts", "The folder with the attempts", PathField.Kind.FOLDER, () -> {});
        counts = new Choice<>("counting", "Which of several tries counts", MarkScreen::words, c -> {
            counting = c;
            showResults();
        });
        counts.show(List.of(Counting.values()), counting);
        exercise.show(set);
        deeds = List.of(
                new Deed(MARK, this::mark, () -> working == null),
                new Deed(STOP, this::stop, () -> working != null && !stopping.asked()),
                new Deed(LEARNERS, () -> showPane(LEARNERS)),
                new Deed(SLIPS, () -> showPane(SLIPS)),
                new Deed(RULES, () -> showPane(RULES)),
                new Deed(PROGRESS, () -> showPane(PROGRESS)),
                new Deed(TOMORROW, () -> showPane(TOMORROW)),
                new Deed(FILES, () -> showPane(FILES)),
                new Deed(EXPORT, this::export, () -> marking != null),
                new Deed(PRINT, this::print, () -> marking != null),
                new Deed(
                        DELETE,
                        this::deleteLearner,
                        () -> panes.learner().isPresent() && working == null && tabs.isChosen(0)),
                new Deed(BACK, desk::home));
        stop = KeyButton.of(deed(STOP));
        printing = KeyButton.of(deed(PRINT));
        page = build();
        panes.onOpen(this::replay);
        panes.onCantOpen(line::say);
        panes.onLook(words -> {
            line.say(words);
            deeds.forEach(Deed::refresh);
        });
        Commands.install(page, deeds);
        tabs.choose(0);
    }

    private static String words(Counting counting) {
        return "the " + counting.name().toLowerCase(Locale.ROOT) + " try counts";
    }

    private JPanel build() {
        JPanel whole = new JPanel(new MigLayout("insets 0, gap 0, wrap 1, fill", "[grow,fill]", "[][][][grow,fill][]"));
        whole.add(Bar.top(
                "Mark",
                "What came back, and what to teach next",
                KeyButton.of(deed(DELETE)),
                printing,
                KeyButton.of(deed(EXPORT)),
                KeyButton.of(deed(BACK))));
        JPanel top = new JPanel(new MigLayout("insets 16 20 4 20, fill", "[grow,fill]"));
        top.add(choices(), "grow, wmin 0");
        whole.add(top, "wmin 0");
        JPanel head = new JPanel(new MigLayout("insets 8 20 4 20, gapx 16, fillx", "[][grow,right]"));
        for (Command command : PANES) tabs.add(deed(command));
        head.add(tabs);
        standing.setName("standing");
        head.add(standing, "wmin 0, al right");
        whole.add(head, "wmin 0");
        stage.add(panes.learners(), LEARNERS.id());
        stage.add(panes.slips(), SLIPS.id());
        stage.add(panes.rules(), RULES.id());
        stage.add(panes.progress(), PROGRESS.id());
        stage.add(panes.tomorrow(), TOMORROW.id());
        stage.add(panes.files(), FILES.id());
        JPanel padded = new JPanel(new MigLayout("insets 4 20 20 20, fill", "[grow,fill]", "[grow,fill]"));
        padded.add(stage, "grow, hmin 0, wmin 0");
        whole.add(padded, "grow, hmin 0, wmin 0");
        whole.add(Bar.bottom(
                line, Look.quiet("Double-click, or Enter, opens the replay at the step that decided it.", Style.NOTE)));
        return whole;
    }

    private JComponent choices() {
        Card card = new Card(new MigLayout(
                "insets 14 20 14 20, gap 12 8, fillx, wrap 5, hidemode 2", "[][grow 1,fill][][grow 1,fill][]"));
        changed.setName("even-if-changed");
        changed.setOpaque(false);
        Look.styled(changed, Style.BODY);
        progress.setName("progress");
        progress.setVisible(false);
        card.add(Look.quiet("Exercise", Style.BODY));
        card.add(exercise, "wmin 0");
        card.add(Look.quiet("Attempts", Style.BODY));
        card.add(folder, "wmin 0");
        card.add(KeyButton.primary(deed(MARK)));
        card.add(counts, "skip 1, split 2, growx 0");
        card.add(changed);
        card.add(progress, "span 2, growx, h 6!");
        stop.setVisible(false);
        card.add(stop, "growx, hidemode 0");
        return card;
    }

    private void showPane(Command command) {
        tabs.choose(PANES.indexOf(command));
        ((CardLayout) stage.getLayout()).show(stage, command.id());
        panes.focus(command.id());
        line.say("");
        deeds.forEach(Deed::refresh);
    }

    // Marking

    private void mark() {
        Optional<Path> set = exercise.path();
        Optional<Path> from = folder.path();
        if (set.isEmpty() || from.isEmpty()) {
            line.say(set.isEmpty() ? "Say which exercise it is" : "Say which folder the attempts are in");
            return;
        }
        boolean even = changed.isSelected();
        line.say("");
        progress.setValue(0);
        progress.setVisible(true);
        stop.setVisible(true);
        standing.setText("Marking …");
        Aside.Stop early = new Aside.Stop();
        stopping = early;
        working = Aside.run(
                told -> early.during(() -> marks.of(set.get(), from.get(), even, told)),
                (done, of) -> {
                    progress.setMaximum(of);
                    progress.setValue(done);
                    if (working != null && !early.asked()) standing.setText("Marked " + done + " of " + of);
                },
                this::come,
                why -> {
                    ended();
                    standing.setText(early.asked() ? "Stopped before any file was marked." : "Nothing was marked.");
                    if (!early.asked()) line.say(why);
                });
        deeds.forEach(Deed::refresh);
    }

    private void stop() {
        stopping.ask();
        standing.setText("Stopping …");
        deeds.forEach(Deed::refresh);
    }

    private void ended() {
        working = null;
        progress.setVisible(false);
        stop.setVisible(false);
        deeds.forEach(Deed::refresh);
    }

    private void come(Marking done) {
        marking = done;
        ended();
        standing.setText(done.says());
        standing.setToolTipText(done.says());
        showResults();
        PANES.stream().filter(c -> tabs.isChosen(PANES.indexOf(c))).forEach(c -> panes.focus(c.id()));
    }

    private void showResults() {
        Marking now = marking;
        if (now == null) return;
        Results results = now.results(counting);
        panes.show(results, now.lines(results));
        tabs.note(0, String.valueOf(results.rows().size()));
        tabs.note(1, String.valueOf(results.slips().size()));
        long left = now.leftOut();
        tabs.note(5, left == 0 ? "" : left + " left out");
    }

    private void replay(String file, Predicate<Finding> sought) {
        Marking now = marking;
        if (now == null) return;
        Aside.run(() -> now.open(file), o -> desk.replay(o.scenario(), o.attempt(), sought), line::say);
    }

    private void deleteLearner() {
        List<Path> folders = new ArrayList<>(List.of(desk.folder().folder()));
        folder.path().ifPresent(folders::add);
        exercise.path().ifPresent(folders::add);
        panes.learner().ifPresent(who -> DeleteLearner.ask(page, who, folders, this::mark, line::say));
    }

    // Saving

    private void export() {
        Printing.ask(page, "results.xlsx", this::export);
    }

    /** Saves the results, of the kind that the name says. */
    void export(Path to) {
        Marking now = marking;
        if (now == null) return;
        Results results = now.results(counting);
        Aside.run(
                () -> {
                    ResultsExport.write(results, to);
                    return to;
                },
                saved -> line.say("Saved: " + saved + now.caution()),
                line::say);
    }

    private void print() {
        JPopupMenu menu = Printing.onA4();
        JMenu letter = new JMenu("On letter paper");
        for (Paper paper : List.of(Paper.A4, Paper.LETTER)) {
            JComponent into = paper == Paper.A4 ? menu : letter;
            into.add(Printing.item(
                    "Tomorrow's page", () -> Printing.ask(page, "teach-again.pdf", to -> print(to, paper))));
            into.add(Printing.item(
                    "Everyone's mark sheet",
                    () -> Printing.ask(page, "mark-sheets.pdf", to -> printSheets(to, paper))));
        }
        menu.addSeparator();
        menu.add(letter);
        Printing.drop(menu, printing);
    }

    /** Saves a mark sheet for each attempt, in one file; they are marked once more for it. */
    void printSheets(Path to, Paper paper) {
        Marking now = marking;
        if (now == null) return;
        Printing.save(to, () -> new Printing.Bound(Sheets.marks(now.sheets(), paper), "Mark sheets"), line::say);
    }

    /** Saves the page of what to teach again, of the kind that the name says. */
    void print(Path to, Paper paper) {
        Marking now = marking;
        if (now == null) return;
        Results results = now.results(counting);
        Printing.save(
                to,
                () -> new Printing.Bound(
                        ReteachSheet.of(results, Reteach.of(results), paper), "To teach again: " + results.title()),
                line::say);
    }

    @Override
    public JComponent component() {
        return page;
    }

    @Override
    public String title() {
        return "Mark";
    }

    @Override
    public String menu() {
        return "Mark";
    }

    @Override
    public List<Deed> deeds() {
        return deeds;
    }

    @Override
    public void focus() {
        page.requestFocusInWindow();
    }

    @Override
    public void left() {
        SwingWorker<?, ?> now = working;
        if (now != null) now.cancel(true);
    }
}
