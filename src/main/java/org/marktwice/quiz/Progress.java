package org.marktwice.quiz;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.marktwice.rulebook.Rule;
import org.marktwice.rulebook.RuleBook;
import org.marktwice.scenario.Scenario;

/**
 * How far a learner is, by rule.
 *
 * @param rows in the order of the rule book, ideas of one rule together
 */
public record Progress(List<Row> rows) {
    public Progress {
        rows = List.copyOf(rows);
    }

    /**
     * One idea.
     *
     * @param rule the rule that it is counted under
     * @param days until it is due; 0 where it is due, or was never met
     */
    public record Row(String rule, Kind kind, Standing.Word word, int right, int asked, long days) {
        public boolean isDue() {
            return word != Standing.Word.NOT_MET && days == 0;
        }
    }

    public static Progress of(Learning learning, LocalDate today) {
        Map<String, List<Row>> byRule = new LinkedHashMap<>();
        for (Rule rule : RuleBook.rules()) byRule.put(rule.id(), new ArrayList<>());
        for (Kind kind : Kind.values()) {
            Standing standing = learning.standing(kind);
            String rule = kind.rules().get(0);
            byRule.computeIfAbsent(rule, r -> new ArrayList<>())
                    .add(new Row(
                            rule,
                            kind,
                            learning.word(kind),
                            standing.right(),
                            standing.asked(),
                            learning.daysUntil(kind, today)));
        }
        return new Progress(byRule.values().stream().flatMap(List::stream).toList());
    }

    /** How many ideas stand so. */
    public long count(Standing.Word word) {
        return rows.stream().filter(r -> r.word() == word).count();
    }

    /** The idea that most wants work: one that is shaky, the one answered rightly least often first; empty where none is. */
    public Optional<Row> shakiest() {
        return rows.stream()
                .filter(r -> r.word() == Standing.Word.SHAKY)
                .min(Comparator.comparingDouble(r -> (double) r.right() / Math.max(1, r.asked())));
    }

    /** The easiest exercise at the bench that asks for a stage whose rules an idea practises; empty where none does. */
    public static Optional<Scenario> exercise(Kind kind, List<Scenario> exercises) {
        return kind.rules().stream()
                .flatMap(id -> RuleBook.rule(id).stream())
                .flatMap(rule -> exercises.stream().filter(s -> s.stages().contains(rule.stage())))
                .min(Comparator.comparingInt(Scenario::level));
    }
}
