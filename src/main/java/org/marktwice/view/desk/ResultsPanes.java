package org.marktwice.view.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Predicate;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.ListSelectionModel;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;
import org.marktwice.classroom.Attempted;
import org.marktwice.classroom.Results;
import org.marktwice.classroom.Results.Item;
import org.marktwice.classroom.Results.SlipCount;
import org.marktwice.picture.Ink;
import org.marktwice.rulebook.Finding;
import org.marktwice.view.Card;
import org.marktwice.view.Look;
import org.marktwice.view.Look.Style;

/** The panes of a class's results: the learners first, then slips, rules, progress, and every file. */
final class ResultsPanes {
    private final LearnersPane learners = new LearnersPane();
    private final Rows<SlipCount> slips;
    private final Sheet<SlipCount> slipsSheet;
    private final Rows<Item> rules;
    private final Sheet<Item> rulesSheet;
    private final Plot items = new Plot();
    private final JTextArea alpha = Look.prose("", Style.NOTE, Ink.QUIET);
    private final Plot progress = new Plot();
    private final Rows<Attempted> attempts;
    private final Sheet<Attempted> attemptsSheet;
    private final Rows<Marking.Line> files;
    private final Sheet<Marking.Line> filesSheet;
    private final Tomorrow tomorrow = new Tomorrow();
    private transient @Nullable Results results;
    private transient Consumer<String> cantOpen = words -> {};

    ResultsPanes() {
        slips = new Rows<>(List.of(
                Rows.words("Rule", 3.4, SlipCount::title),
                Rows.number("Learners", 0.9, s -> (double) s.learners().size()),
                Rows.number("Of", 0.5, s -> (double) s.of()),
                Rows.number("Marks lost", 1, s -> tenth(s.lost())),
                Rows.words("Who", 1.8, s -> String.join(", ", s.learners())),
                Rows.words("For instance", 4.6, SlipCount::example)));
        slipsSheet = new Sheet<>("slips", "Slips, those that most learners made first", slips);
        rules = new Rows<>(List.of(
                Rows.words("Rule", 3, Item::title),
                Rows.number("Learners", 0.8, i -> (double) i.learners()),
                Rows.number(
                        "Reached",
                        0.8,
                        i -> i.facility(),
                        ResultsPanes::two,
                        "The share of its marks that was reached: low is hard"),
                Rows.number(
                        "Tells apart",
                        1,
                        i -> known(i.discrimination()),
                        ResultsPanes::two,
                        "How it goes with the rest of the marks: near 0 it tells nothing, below 0 it misleads"),
                Rows.words("What it tells", 2.4, ResultsPanes::tells)));
        rulesSheet = new Sheet<>("rules", "Rules with their figures", rules);
        attempts = new Rows<>(attempts(false));
        attemptsSheet = new Sheet<>("attempts", "Every marked attempt", attempts);
        files = new Rows<>(List.of(
                Rows.words("File", 3, Marking.Line::file),
                Rows.words("State", 1.5, Marking.Line::said),
                Rows.words("Learner", 1.2, Marking.Line::learner),
                Rows.number("Marks", 0.7, l -> l.isMarked() ? (Double) tenth(l.marks()) : null),
                Rows.number("Of", 0.6, l -> l.isMarked() ? (Double) tenth(l.outOf()) : null),
                Rows.words("Why", 5, Marking.Line::more)));
        filesSheet = new Sheet<>("files", "Every file with its state", files);
        for (Sheet<?> sheet : sheets()) {
            sheet.table().setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
            sheet.whenEmpty("There are no results yet.");
        }
        rulesSheet.onChoose(() -> items.choose(rulesSheet.chosen().map(Item::id).orElse("")));
        attemptsSheet.onChoose(() ->
                progress.choose(attemptsSheet.chosen().map(Attempted::learner).orElse("")));
    }

    private List<Sheet<?>> sheets() {
        return List.of(learners.sheet(), slipsSheet, rulesSheet, attemptsSheet, filesSheet);
    }

    /** @param several whether there are several exercises to tell apart */
    private static List<Rows.Col<Attempted>> attempts(boolean several) {
        List<Rows.Col<Attempted>> columns = new ArrayList<>(List.of(
                Rows.words("Learner", 1.2, Attempted::learner),
                Rows.words("Started", 1.6, a -> a.started().replace("T", " ").replace("Z", "")),
                Rows.number("Marks", 0.6, a -> tenth(a.total().marks())),
                Rows.number("Of", 0.5, a -> tenth(a.total().outOf())),
                Rows.words("File", 2.4, Attempted::file)));
        if (several) columns.add(1, Rows.words("Exercise", 1.2, Attempted::scenario));
        return columns;
    }

    /** Takes the focus to a pane's table, so that arrows and Enter go on there. @param pane its command's id */
    void focus(String pane) {
        sheets().stream()
                .map(Sheet::table)
                .filter(t -> pane.equals("see-" + (t == attemptsSheet.table() ? "progress" : t.getName())))
                .forEach(JTable::requestFocusInWindow);
    }

    JComponent learners() {
        return learners;
    }

    /** The learner picked out; empty while none is. */
    Optional<String> learner() {
        return learners.learner();
    }

    /** @param told what the learners' cell says that one is in */
    void onLook(Consumer<String> told) {
        learners.onLook(told);
    }

    JComponent slips() {
        return readable(slipsSheet, "slip-says", SlipCount::example);
    }

    JComponent rules() {
        alpha.setName("alpha");
        JPanel pane = new JPanel(new MigLayout("insets 0, gap 16, fill", "[grow,fill][300!,fill]", "[grow,fill]"));
        pane.setOpaque(false);
        Card table = card("[grow,fill]");
        table.add(rulesSheet, "grow, hmin 0, wmin 0");
        pane.add(table, "grow, hmin 0, wmin 0");
        Card plot = card("[][150:320:360,fill][pref!]16:push");
        plot.add(Look.label("How hard, how telling", Style.SUBTITLE));
        plot.add(items, "grow, hmin 0, wmin 0");
        plot.add(alpha, "wmin 0");
        pane.add(plot, "grow, hmin 0, wmin 0");
        return pane;
    }

    JComponent progress() {
        JPanel pane = new JPanel(new MigLayout("insets 0, gap 16, fill", "[grow,fill][40%!,fill]", "[grow,fill]"));
        pane.setOpaque(false);
        Card table = card("[grow,fill]");
        table.add(attemptsSheet, "grow, hmin 0, wmin 0");
        pane.add(table, "grow, hmin 0, wmin 0");
        Card plot = card("[][150:440:520,fill]16:push");
        plot.add(Look.label("From try to try", Style.SUBTITLE));
        plot.add(progress, "grow, hmin 0, wmin 0");
        pane.add(plot, "grow, hmin 0, wmin 0");
        return pane;
    }

    JComponent files() {
        return readable(filesSheet, "file-says", Marking.Line::more);
    }

    JComponent tomorrow() {
        return tomorrow;
    }

    /** A table, and below it in full what its last column has no room for. */
    private static <T> JComponent readable(Sheet<T> sheet, String name, Function<T, String> says) {
        JPanel pane = panel("[grow,fill]");
        Card card = card("[grow,fill][]");
        card.add(sheet, "grow, hmin 0, wmin 0");
        JTextArea full = Look.prose("", Style.BODY, Ink.INK);
        full.setName(name);
        full.setRows(2);
        sheet.onChoose(() -> full.setText(sheet.chosen().map(says).orElse("")));
        card.add(full, "wmin 0");
        pane.add(card, "grow, hmin 0, wmin 0");
        return pane;
    }

    private static JPanel panel(String rows) {
        JPanel pane = new JPanel(new MigLayout("insets 0, gap 0 16, wrap 1, fill", "[grow,fill]", rows));
        pane.setOpaque(false);
        return pane;
    }

    static Card card(String rows) {
        return new Card(new MigLayout("insets 12 20 16 20, gap 0 8, wrap 1, fill", "[grow,fill]", rows));
    }

    /** An attempt that is to be seen, and which finding of it. */
    interface Opening {
        void open(String file, Predicate<Finding> sought);
    }

    /** @param to is told of a double click or of Enter: on a learner's rule, a slip, an attempt or a file */
    void onOpen(Opening to) {
        learners.onOpen(to);
        attemptsSheet.onOpen(a -> to.open(a.file(), any()));
        filesSheet.onOpen(l -> {
            if (l.isMarked()) to.open(l.file(), any());
            else cantOpen.accept("Not marked, so there is no replay: " + l.more());
        });
        slipsSheet.onOpen(s -> firstWith(s)
                .ifPresent(file -> to.open(
                        file, f -> f.rule().equals(s.rule()) && f.says().key().equals(s.key()))));
    }

    /** @param say is told in one line why something has no replay */
    void onCantOpen(Consumer<String> say) {
        cantOpen = say;
    }

    private static Predicate<Finding> any() {
        return f -> true;
    }

    /** The attempt of the first learner who made a slip. */
    private Optional<String> firstWith(SlipCount slip) {
        Results now = results;
        if (now == null || slip.learners().isEmpty()) return Optional.empty();
        return now.rows().stream()
                .filter(r -> r.learner().equals(slip.learners().get(0)))
                .flatMap(r -> r.counted().stream())
                .filter(a -> a.slips().stream()
                        .anyMatch(s -> s.key().equals(slip.key()) && s.rule().equals(slip.rule())))
                .map(Attempted::file)
                .findFirst();
    }

    void show(Results now, List<Marking.Line> lines) {
        results = now;
        for (Sheet<?> sheet : sheets()) sheet.whenEmpty("Nothing could be marked.");
        slipsSheet.whenEmpty(now.rows().isEmpty() ? "Nothing could be marked." : "Nobody made a slip.");
        filesSheet.whenEmpty("There is no file in the folder.");
        learners.show(now);
        slips.show(now.slips());
        rules.show(items(now));
        items.items(items(now));
        Results.Reliability reliability = now.reliability();
        alpha.setText(
                reliability.alpha().isPresent()
                        ? String.format(
                                Locale.ROOT,
                                "Cronbach's alpha %.2f, over %d rules put to all of %d learners. %s",
                                reliability.alpha().getAsDouble(),
                                reliability.rules(),
                                reliability.learners(),
                                weight(reliability.alpha().getAsDouble()))
                        : "Cronbach's alpha can't be told: it needs two learners and two rules that were put to all.");
        progress.progress(now.progress());
        attempts.show(attempts(now.exercises().size() > 1), now.attempts());
        files.show(lines);
        tomorrow.show(now);
    }

    private static String weight(double alpha) {
        if (alpha >= 0.8) return "The rules agree well: one total says it.";
        return alpha >= 0.6
                ? "The rules agree fairly."
                : "The rules ask for different things: look at them one by one, not at the total.";
    }

    /** The rules; and the exercises after them, where there are several. */
    private static List<Item> items(Results now) {
        List<Item> items = new ArrayList<>(now.rules());
        if (now.exercises().size() > 1) items.addAll(now.exercises());
        return items;
    }

    private static String tells(Item item) {
        double d = item.discrimination().orElse(Double.NaN);
        if (item.facility() >= 0.95) return "✓ nearly everyone keeps it";
        if (d < -0.2) return "× misleads: look at how it is set";
        if (item.facility() < 0.4) return "× hard: teach it again";
        if (d < 0.2) return "~ tells little between learners";
        return "";
    }

    private static @Nullable Double known(OptionalDouble value) {
        return value.isPresent() ? (Double) value.getAsDouble() : null;
    }

    private static String two(double n) {
        // a hundredth that rounds to nothing has no sign
        return String.format(Locale.ROOT, "%.2f", Math.rint(100 * n) / 100 + 0.0);
    }

    static double tenth(double n) {
        return Math.rint(n * 10) / 10 + 0.0;
    }
}
