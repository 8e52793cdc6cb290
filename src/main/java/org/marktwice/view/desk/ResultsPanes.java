package org.marktwice.view.desk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Predicate;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.ListSelectionModel;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;
import org.marktwice.classroom.Attempted;
import org.marktwice.classroom.Attempted.Score;
import org.marktwice.classroom.Results;
import org.marktwice.classroom.Results.Item;
import org.marktwice.classroom.Results.Row;
import org.marktwice.classroom.Results.SlipCount;
import org.marktwice.picture.Ink;
import org.marktwice.rulebook.Finding;
import org.marktwice.rulebook.Texts;
import org.marktwice.view.Card;
import org.marktwice.view.Look;
import org.marktwice.view.Look.Style;

/** The panes of a class's results: the learners first, then slips, rules, progress, and every file. */
final class ResultsPanes {
    /** Columns of the learners' table before the first rule's. */
    private static final int BEFORE_THE_RULES = 5;

    private final Rows<Row> learners = new Rows<>(List.of());
    private final Sheet<Row> learnersSheet = new Sheet<>("learners", "Learners and rules", learners);
    private final Plot distribution = new Plot();
    private final JTextArea spread = Look.prose("", Style.NOTE, Ink.QUIET);
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
                        "Facility",
                        0.8,
                        i -> i.facility(),
                        ResultsPanes::two,
                        "The share reached of what could be: low is hard"),
                Rows.number(
                        "Discrimination",
                        1,
                        i -> known(i.discrimination()),
                        ResultsPanes::two,
                        "How it goes with the rest of the marks: near 0 it tells nothing, below 0 it misleads"),
                Rows.words("What it tells", 2.4, ResultsPanes::tells)));
        rulesSheet = new Sheet<>("rules", "Rules with their figures", rules);
        attempts = new Rows<>(List.of(
                Rows.words("Learner", 1.5, Attempted::learner),
                Rows.words("Started", 1.5, a -> a.started().replace("T", " ").replace("Z", "")),
                Rows.number("Marks", 0.7, a -> tenth(a.total().marks())),
                Rows.number("Of", 0.6, a -> tenth(a.total().outOf())),
                Rows.words("File", 2.5, Attempted::file)));
        attemptsSheet = new Sheet<>("attempts", "Every marked attempt", attempts);
        files = new Rows<>(List.of(
                Rows.words("File", 3, Marking.Line::file),
                Rows.words("State", 1.5, Marking.Line::said),
                Rows.words("Learner", 1.2, Marking.Line::learner),
                Rows.number("Marks", 0.7, l -> l.isMarked() ? (Double) tenth(l.marks()) : null),
                Rows.number("Of", 0.6, l -> l.isMarked() ? (Double) tenth(l.outOf()) : null),
                Rows.words("Why", 5, Marking.Line::more)));
        filesSheet = new Sheet<>("files", "Every file with its state", files);
        for (Sheet<?> sheet : List.of(learnersSheet, slipsSheet, rulesSheet, attemptsSheet, filesSheet)) {
            sheet.table().setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        }
        rulesSheet.onChoose(() -> items.choose(rulesSheet.chosen().map(Item::id).orElse("")));
        attemptsSheet.onChoose(() ->
                progress.choose(attemptsSheet.chosen().map(Attempted::learner).orElse("")));
    }

    JComponent learners() {
        JPanel pane = new JPanel(new MigLayout("insets 0, gap 16, fill", "[grow,fill][270!,fill]", "[grow,fill]"));
        pane.setOpaque(false);
        Card table = card("[grow,fill]");
        table.add(learnersSheet, "grow, hmin 0, wmin 0");
        pane.add(table, "grow, hmin 0, wmin 0");
        Card plot = card("[][280:320:360,fill][]push");
        plot.add(Look.label("How the marks are spread", Style.SUBTITLE));
        plot.add(distribution, "grow, hmin 0, wmin 0");
        plot.add(spread, "wmin 0");
        pane.add(plot, "grow, hmin 0, wmin 0");
        return pane;
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
        Card plot = card("[][280:320:360,fill][]push");
        plot.add(Look.label("How hard, how telling", Style.SUBTITLE));
        plot.add(items, "grow, hmin 0, wmin 0");
        plot.add(alpha, "wmin 0");
        pane.add(plot, "grow, hmin 0, wmin 0");
        return pane;
    }

    JComponent progress() {
        JPanel pane = panel("[grow,fill]");
        Card table = card("[grow,fill]");
        table.add(attemptsSheet, "grow, hmin 0, wmin 0");
        pane.add(table, "grow, hmin 0, wmin 0, h 50%");
        Card plot = card("[][grow,fill]");
        plot.add(Look.label("From try to try", Style.SUBTITLE));
        plot.add(progress, "grow, hmin 0, wmin 0");
        pane.add(plot, "grow, hmin 0, wmin 0, h 50%");
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

    private static Card card(String rows) {
        return new Card(new MigLayout("insets 12 20 16 20, gap 0 8, wrap 1, fill", "[grow,fill]", rows));
    }

    /** An attempt that is to be seen, and which finding of it. */
    interface Opening {
        void open(String file, Predicate<Finding> sought);
    }

    /** @param to is told of a double click or of Enter: on a learner's rule, a slip, an attempt or a file */
    void onOpen(Opening to) {
        learnersSheet.onOpen((row, column) -> open(to, row, column));
        attemptsSheet.onOpen(a -> to.open(a.file(), any()));
        filesSheet.onOpen(l -> {
            if (l.isMarked()) to.open(l.file(), any());
        });
        slipsSheet.onOpen(s -> firstWith(s)
                .ifPresent(file -> to.open(
                        file, f -> f.rule().equals(s.rule()) && f.says().key().equals(s.key()))));
    }

    private static Predicate<Finding> any() {
        return f -> true;
    }

    private void open(Opening to, Row row, int column) {
        Optional<String> rule = rule(column).map(Item::id);
        Predicate<Finding> sought =
                rule.<Predicate<Finding>>map(id -> f -> f.rule().equals(id)).orElse(any());
        Comparator<Attempted> lost =
                Comparator.comparingDouble(a -> rule.map(id -> a.scores().getOrDefault(id, Score.NONE))
                        .orElseGet(a::total)
                        .lost());
        row.counted().stream().max(lost).ifPresent(a -> to.open(a.file(), sought));
    }

    /** The rule of a column of the learners' table. */
    private Optional<Item> rule(int column) {
        Results now = results;
        int at = column - BEFORE_THE_RULES;
        return now == null || at < 0 || at >= now.rules().size()
                ? Optional.empty()
                : Optional.of(now.rules().get(at));
    }

    /** @param told what the cell says that one is in */
    void onLook(Consumer<String> told) {
        learnersSheet.onChoose(() -> told.accept(learnersSheet
                .chosen()
                .map(r -> says(r, learnersSheet.chosenColumn()))
                .orElse("")));
    }

    /** The learner picked out; empty while none is. */
    Optional<String> learner() {
        return learnersSheet.chosen().map(Row::learner);
    }

    private String says(Row row, int column) {
        Optional<Item> rule = rule(column);
        Optional<Score> score = rule.isPresent() ? score(row, rule.get()) : Optional.of(row.total());
        String what = row.learner() + (rule.isPresent() ? ", " + rule.get().title() : ", in all");
        return what + ": "
                + score.map(s -> NumberField.spoken(tenth(s.marks())) + " of " + NumberField.spoken(tenth(s.outOf())))
                        .orElse("not put to them");
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
        learners.show(columns(now), now.rows());
        distribution.distribution(now);
        spread.setText(middle(now));
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
        attempts.show(now.attempts());
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

    private static List<Rows.Col<Row>> columns(Results now) {
        List<Rows.Col<Row>> columns = new ArrayList<>(List.of(
                Rows.words("Learner", 1.3, Row::learner),
                Rows.number("Tries", 0.55, r -> (double) r.tries()),
                Rows.number("Marks", 0.65, r -> tenth(r.total().marks())),
                Rows.number("Of", 0.55, r -> tenth(r.total().outOf())),
                Rows.number(
                        "Of 100",
                        0.65,
                        r -> 100 * r.total().share(),
                        n -> String.format(Locale.ROOT, "%.0f", n),
                        "Marks of 100")));
        for (Item rule : now.rules()) {
            columns.add(Rows.upright(
                    rule.title(),
                    rule.title() + ": " + Texts.of(rule.id()).why(),
                    r -> score(r, rule).map(s -> tenth(s.marks())).orElse(null),
                    r -> score(r, rule)
                            .filter(s -> s.outOf() > 0)
                            .map(s -> 1 - s.share())
                            .orElse(0.0)));
        }
        return columns;
    }

    private static Optional<Score> score(Row row, Item rule) {
        return Optional.ofNullable(row.scores().get(rule.id()));
    }

    private static String middle(Results now) {
        double[] shares = now.shares();
        if (shares.length == 0) return " ";
        double[] sorted = shares.clone();
        java.util.Arrays.sort(sorted);
        double middle = (sorted[(sorted.length - 1) / 2] + sorted[sorted.length / 2]) / 2;
        return String.format(
                Locale.ROOT,
                "Half of the class reached %.0f of 100 or more; the lowest %.0f, the highest %.0f.",
                100 * middle,
                100 * sorted[0],
                100 * sorted[sorted.length - 1]);
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
        return String.format(Locale.ROOT, "%.2f", n);
    }

    private static double tenth(double n) {
        return Math.rint(n * 10) / 10 + 0.0;
    }
}
