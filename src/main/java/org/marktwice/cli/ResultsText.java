package org.marktwice.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.marktwice.classroom.Attempted.Score;
import org.marktwice.classroom.ItemStatistics;
import org.marktwice.classroom.Results;
import org.marktwice.classroom.Results.Item;
import org.marktwice.classroom.Results.Row;
import org.marktwice.classroom.Results.SlipCount;
import org.marktwice.rulebook.Rule;
import org.marktwice.rulebook.RuleBook;
import org.marktwice.rulebook.Verdict;
import org.marktwice.scenario.Stage;

/** A class's results for a terminal: learners by stage, then rules, then slips. */
final class ResultsText {
    private static final int MOST_SLIPS = 12;

    private final Results results;
    private final List<String> lines = new ArrayList<>();

    private ResultsText(Results results) {
        this.results = results;
    }

    static String of(Results results) {
        ResultsText text = new ResultsText(results);
        text.learners();
        if (!results.rows().isEmpty()) {
            text.distribution();
            text.items("Rules", results.rules());
            if (results.exercises().size() > 1) text.items("Exercises", results.exercises());
            text.reliability();
            text.slips();
            text.progress();
        }
        text.leftOut();
        return String.join("\n", text.lines);
    }

    private static String format(String form, Object... values) {
        return String.format(Locale.ROOT, form, values).stripTrailing();
    }

    private void head(String title, String right) {
        if (!lines.isEmpty()) lines.add("");
        lines.add(Text.ends(title, right));
        lines.add(Text.rule());
    }

    private void learners() {
        head("Results: " + results.title(), Text.count(results.rows().size(), "learner", "learners"));
        List<Stage> stages = new ArrayList<>();
        for (Item item : results.rules()) {
            Stage stage = stage(item.id());
            if (!stages.contains(stage)) stages.add(stage);
        }
        StringBuilder titles = new StringBuilder(format("%-16s", "learner"));
        for (Stage stage : stages) titles.append(String.format(Locale.ROOT, "%14s", stage.title()));
        lines.add(
                String.format(Locale.ROOT, "%-16s", titles) + String.format(Locale.ROOT, "%16s", "marks") + "   share");
        for (Row row : results.rows()) {
            StringBuilder line = new StringBuilder(String.format(Locale.ROOT, "%-16s", row.learner()));
            for (Stage stage : stages) line.append(String.format(Locale.ROOT, "%14s", marks(of(row, stage))));
            line.append(String.format(Locale.ROOT, "%16s", marks(row.total())))
                    .append(percent(row.total().share()));
            lines.add(line + tries(row));
        }
    }

    private static String tries(Row row) {
        int more = row.tries() - row.counted().size();
        return more == 0 ? "" : "  (" + Text.count(more, "attempt", "attempts") + " not counted)";
    }

    private static Stage stage(String rule) {
        return RuleBook.rule(rule).map(Rule::stage).orElseThrow();
    }

    private static Score of(Row row, Stage stage) {
        Score sum = Score.NONE;
        for (var one : row.scores().entrySet()) if (stage(one.getKey()) == stage) sum = sum.plus(one.getValue());
        return sum;
    }

    private static String marks(Score score) {
        return score.outOf() == 0 ? "–" : Text.number(score.marks()) + " of " + Text.number(score.outOf());
    }

    private static String percent(double share) {
        return Double.isNaN(share) ? "       –" : String.format(Locale.ROOT, "%6.0f %%", 100 * share);
    }

    private void distribution() {
        double[] shares = results.shares();
        head(
                "Distribution",
                format(
                        "mean%s   median%s",
                        percent(ItemStatistics.mean(shares)), percent(ItemStatistics.quantile(shares, 0.5))));
        int[] tenths = results.distribution();
        for (int i = 0; i < tenths.length; i++) {
            String upTo = i == 9 ? "100" : "below " + (i + 1) * 10;
            lines.add(format("%3d to %-9s %% %4d  %s", i * 10, upTo, tenths[i], "█".repeat(Math.min(60, tenths[i]))));
        }
    }

    private void items(String title, List<Item> items) {
        head(title, "reached      tells apart");
        for (Item item : items) {
            String told = item.discrimination().isPresent() ? figure(item.discrimination()) : "–";
            lines.add(Text.ends(
                    item.title() + " (" + item.id() + ")",
                    String.format(Locale.ROOT, "%s   %14s", percent(item.facility()), told)));
        }
    }

    private static String figure(OptionalDouble value) {
        // a hundredth that rounds to nothing has no sign
        return String.format(Locale.ROOT, "%.2f", Math.rint(100 * value.orElse(0)) / 100 + 0.0);
    }

    private void reliability() {
        Results.Reliability r = results.reliability();
        String over = " over " + Text.count(r.rules(), "rule", "rules") + " that were put to all "
                + Text.count(r.learners(), "learner", "learners");
        lines.add("");
        lines.add("Reached: share of the marks, low is hard. Tells apart: correlation with the rest of the");
        lines.add("marks; near 0 a rule tells nothing about who is strong, – where all did alike.");
        lines.add("Cronbach's alpha: " + (r.alpha().isPresent() ? figure(r.alpha()) + over : "none," + over));
    }

    private void slips() {
        head("Slips", "learners");
        for (SlipCount slip : results.slips().stream().limit(MOST_SLIPS).toList()) {
            String sign =
                    slip.verdict().sign() + " " + slip.title() + (slip.verdict() == Verdict.OPEN ? " (left open)" : "");
            lines.add(Text.ends(sign, slip.learners().size() + " of " + slip.of()));
            lines.add(Text.wrapped("    ", slip.example()));
        }
        int more = results.slips().size() - MOST_SLIPS;
        if (more > 0)
            lines.add("  and " + Text.count(more, "other", "others") + ": --out FILE.xlsx or --json has them all");
    }

    private void progress() {
        List<Results.Progress> all = results.progress();
        if (all.isEmpty()) return;
        double mean = ItemStatistics.mean(
                all.stream().mapToDouble(Results.Progress::gained).toArray());
        head("Progress over attempts", format("gained on the mean%s", signed(mean)));
        for (Results.Progress one : all) {
            String shares = one.shares().stream().map(s -> percent(s).strip()).collect(Collectors.joining(" → "));
            lines.add(Text.ends(
                    String.format(Locale.ROOT, "%-16s %s: %s", one.learner(), one.exercise(), shares),
                    signed(one.gained())));
        }
    }

    private static String signed(double share) {
        return Double.isNaN(share) ? "       –" : String.format(Locale.ROOT, "%+6.0f %%", 100 * share);
    }

    private void leftOut() {
        if (!results.missing().isEmpty()) {
            lines.add("");
            lines.add(Text.wrapped("Nothing marked of: ", String.join(", ", results.missing())));
        }
        if (!results.repeats().isEmpty()) {
            head("Handed in more than once", Text.count(results.repeats().size(), "file", "files"));
            for (Results.Repeat file : results.repeats()) {
                lines.add(Text.wrapped("  ", file.file() + ": the attempt of " + file.of() + ", which counts"));
            }
        }
        if (results.leftOut().isEmpty()) return;
        head("Not marked", Text.count(results.leftOut().size(), "file", "files"));
        for (Results.LeftOut file : results.leftOut()) {
            lines.add(Text.wrapped("  ", file.file() + ": " + file.state().spoken() + ": " + file.reason()));
        }
    }
}
