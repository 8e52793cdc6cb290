package org.marktwice.classroom;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.marktwice.classroom.Attempted.Score;
import org.marktwice.classroom.Results.Item;
import org.marktwice.classroom.Results.Row;
import org.marktwice.classroom.Results.SlipCount;
import org.marktwice.rulebook.Texts;
import org.marktwice.rulebook.Texts.RuleTexts;

/**
 * What to teach again tomorrow: the rules that most learners slipped on, what is said about them, who needs it most and
 * whose work can be shown.
 *
 * @param points the most common first
 * @param sure rules that nearly everyone keeps: no need to go over them
 * @param help learners far below the rest, the lowest first
 */
public record Reteach(List<Point> points, List<String> sure, List<String> help) {
    private static final int MOST_POINTS = 5;
    /** Slips of fewer than one learner in so many are a word to the learner, not a lesson. */
    private static final int ONE_IN = 5;
    /** From this facility on a rule is kept by nearly everyone. */
    private static final double SURE = 0.95;
    /** A learner this far below the class's median, as a share of the marks, needs a bench visit. */
    private static final double FAR_BELOW = 0.2;

    /**
     * One thing to teach again.
     *
     * @param slips what was found, the most common first; all about this rule
     * @param learners who made any of them
     * @param of to how many learners the rule was put
     * @param canShow learners who lost nothing on it, up to three, the best in all first
     */
    public record Point(
            String rule, RuleTexts texts, List<SlipCount> slips, List<String> learners, int of, List<String> canShow) {}

    public static Reteach of(Results results) {
        List<Point> points = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (SlipCount slip : results.slips()) {
            if (!seen.add(slip.rule())) continue;
            Point point = point(results, slip.rule());
            if (point.learners().size() * ONE_IN >= point.of()) points.add(point);
        }
        points.sort(Comparator.comparingInt((Point p) -> -p.learners().size())
                .thenComparingDouble(
                        p -> -p.slips().stream().mapToDouble(SlipCount::lost).sum()));
        List<String> sure = results.rules().stream()
                .filter(i -> i.facility() >= SURE)
                .map(Item::title)
                .toList();
        return new Reteach(points.stream().limit(MOST_POINTS).toList(), sure, help(results));
    }

    private static Point point(Results results, String rule) {
        List<SlipCount> slips =
                results.slips().stream().filter(s -> s.rule().equals(rule)).toList();
        Set<String> learners = new LinkedHashSet<>();
        slips.forEach(s -> learners.addAll(s.learners()));
        List<String> canShow = results.rows().stream()
                .filter(r -> r.scores().containsKey(rule)
                        && r.scores().getOrDefault(rule, Score.NONE).lost() < 1e-9)
                .sorted(Comparator.comparingDouble(r -> -r.total().share()))
                .map(Row::learner)
                .limit(3)
                .toList();
        return new Point(
                rule, Texts.of(rule), slips, List.copyOf(learners), slips.get(0).of(), canShow);
    }

    private static List<String> help(Results results) {
        double median = ItemStatistics.quantile(results.shares(), 0.5);
        return results.rows().stream()
                .filter(r -> r.total().share() < median - FAR_BELOW)
                .sorted(Comparator.comparingDouble(r -> r.total().share()))
                .map(Row::learner)
                .toList();
    }
}
