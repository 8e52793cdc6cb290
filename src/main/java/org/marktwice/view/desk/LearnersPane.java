package org.marktwice.view.desk;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Predicate;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;
import org.marktwice.classroom.Attempted;
import org.marktwice.classroom.Attempted.Score;
import org.marktwice.classroom.Results;
import org.marktwice.classroom.Results.Item;
import org.marktwice.classroom.Results.Row;
import org.marktwice.picture.Ink;
import org.marktwice.rulebook.Finding;
import org.marktwice.rulebook.Texts;
import org.marktwice.view.Card;
import org.marktwice.view.Look;
import org.marktwice.view.Look.Style;

/** Learners × rules, with what each reached in all and what the class reached of each; and how the marks are spread. */
final class LearnersPane extends JPanel {
    private static final long serialVersionUID = 1L;
    /** Columns of the learners' table before the first rule's. */
    private static final int BEFORE_THE_RULES = 5;

    private final Rows<Row> learners = new Rows<>(List.of());
    private final Sheet<Row> learnersSheet = new Sheet<>("learners", "Learners and rules", learners);
    private final Plot distribution = new Plot();
    private final JTextArea spread = Look.prose("", Style.NOTE, Ink.QUIET);
    private transient @Nullable Results results;

    LearnersPane() {
        super(new MigLayout("insets 0, gap 16, fill", "[grow,fill][270!,fill]", "[grow,fill]"));
        setOpaque(false);
        Card table = ResultsPanes.card("[grow,fill]");
        table.add(learnersSheet, "grow, hmin 0, wmin 0");
        add(table, "grow, hmin 0, wmin 0");
        Card plot = ResultsPanes.card("[][150:320:360,fill][pref!]16:push");
        plot.add(Look.label("How the marks are spread", Style.SUBTITLE));
        plot.add(distribution, "grow, hmin 0, wmin 0");
        plot.add(spread, "wmin 0");
        add(plot, "grow, hmin 0, wmin 0");
    }

    Sheet<Row> sheet() {
        return learnersSheet;
    }

    void show(Results now) {
        results = now;
        learners.show(columns(now), now.rows());
        learnersSheet.foot(now.rows().isEmpty() ? List.of() : all(now));
        distribution.distribution(now);
        spread.setText(middle(now));
    }

    /** @param to is told of a double click or of Enter on a learner's rule */
    void onOpen(ResultsPanes.Opening to) {
        learnersSheet.onOpen((row, column) -> open(to, row, column));
    }

    private void open(ResultsPanes.Opening to, Row row, int column) {
        Optional<String> rule = rule(column).map(Item::id);
        Predicate<Finding> sought =
                rule.<Predicate<Finding>>map(id -> f -> f.rule().equals(id)).orElse(f -> true);
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
                + score.map(s -> NumberField.spoken(ResultsPanes.tenth(s.marks())) + " of "
                                + NumberField.spoken(ResultsPanes.tenth(s.outOf())))
                        .orElse("not put to them");
    }

    private static List<Rows.Col<Row>> columns(Results now) {
        List<Rows.Col<Row>> columns = new ArrayList<>(List.of(
                Rows.words("Learner", 1.3, Row::learner),
                Rows.number("Tries", 0.55, r -> (double) r.tries()),
                Rows.number("Marks", 0.65, r -> ResultsPanes.tenth(r.total().marks())),
                Rows.number("Of", 0.55, r -> ResultsPanes.tenth(r.total().outOf())),
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
                    r -> score(r, rule).map(s -> ResultsPanes.tenth(s.marks())).orElse(null),
                    r -> score(r, rule)
                            .filter(s -> s.outOf() > 0)
                            .map(s -> 1 - s.share())
                            .orElse(0.0)));
        }
        return columns;
    }

    /** The class in all: of what could be had, what it reached, by rule. */
    private static List<String> all(Results now) {
        int n = now.rows().size();
        List<String> words =
                new ArrayList<>(List.of(n == 1 ? "1 learner, of 100" : "All " + n + ", of 100", "", "", ""));
        words.add(hundredths(Arrays.stream(now.shares()).average().orElse(Double.NaN)));
        for (Item rule : now.rules()) words.add(hundredths(rule.facility()));
        return words;
    }

    private static String hundredths(double share) {
        return Double.isNaN(share) ? "" : String.format(Locale.ROOT, "%.0f", 100 * share);
    }

    private static Optional<Score> score(Row row, Item rule) {
        return Optional.ofNullable(row.scores().get(rule.id()));
    }

    private static String middle(Results now) {
        double[] shares = now.shares();
        if (shares.length == 0) return missing(now).strip();
        double[] sorted = shares.clone();
        Arrays.sort(sorted);
        double middle = (sorted[(sorted.length - 1) / 2] + sorted[sorted.length / 2]) / 2;
        return String.format(
                        Locale.ROOT,
                        "Half of the class reached %.0f of 100 or more; the lowest %.0f, the highest %.0f.",
                        100 * middle,
                        100 * sorted[0],
                        100 * sorted[sorted.length - 1])
                + missing(now);
    }

    private static String missing(Results now) {
        return now.missing().isEmpty() ? "" : "\n\nNothing marked of " + String.join(", ", now.missing()) + ".";
    }
}
