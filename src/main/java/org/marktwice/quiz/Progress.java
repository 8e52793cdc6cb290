package org.marktwice.quiz;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.marktwice.drawing.Drawing;
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

    /** The ideas that most want work: those that are shaky, the ones answered rightly least often first. */
    public List<Row> shaky() {
        return rows.stream()
                .filter(r -> r.word() == Standing.Word.SHAKY)
                .sorted(Comparator.comparingDouble(r -> (double) r.right() / Math.max(1, r.asked())))
                .toList();
    }

    /**
     * The easiest exercise at the bench that trains what an idea practises, and the rule for which it does; empty where none
     * does.
     */
    public static Optional<Training> training(Row row, List<Scenario> exercises) {
        return row.kind().rules().stream()
                .flatMap(id -> RuleBook.rule(id).stream())
                .flatMap(rule -> exercises.stream()
                        .filter(s -> trains(s, rule))
                        .min(Comparator.comparingInt(Scenario::level))
                        .map(s -> new Training(s, rule.id()))
                        .stream())
                .findFirst();
    }

    /** An exercise, and the rule that it is to train. */
    public record Training(Scenario exercise, String rule) {}

    /** Whether an exercise asks for a rule's stage and has what the rule is about. */
    private static boolean trains(Scenario exercise, Rule rule) {
        Drawing drawing = exercise.drawing();
        boolean has = switch (rule.id()) {
            case "handed-pair" -> !drawing.pairs().isEmpty();
            case "every-part-named", "board-fits-part" -> drawing.parts().size() > 1;
            case "knot-clear-of-joint", "best-turn" ->
                !drawing.joints().isEmpty()
                        && exercise.boards().stream().anyMatch(b -> !b.knots().isEmpty());
            default -> true;
        };
        return has && exercise.stages().contains(rule.stage());
    }
}
