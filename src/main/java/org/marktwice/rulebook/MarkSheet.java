package org.marktwice.rulebook;

import java.util.List;

/**
 * A situation marked. A rule's worth is shared evenly among its findings, so that {@code marks = Σ credit · worth} and
 * {@code outOf = Σ worth} over the entries.
 *
 * @param entries the findings, by rule in the rule book's order
 * @param notJudged ids of the rules of the scenario's stages that had nothing to judge: no pass, and worth nothing
 */
public record MarkSheet(List<Entry> entries, List<String> notJudged) {
    /** @param worth this finding's share of the rule's worth */
    public record Entry(Finding finding, Rule rule, double worth) {
        public double lost() {
            return worth * (1 - finding.credit());
        }
    }

    public MarkSheet {
        entries = List.copyOf(entries);
        notJudged = List.copyOf(notJudged);
    }

    public double marks() {
        return entries.stream()
                .mapToDouble(e -> e.worth() * e.finding().credit())
                .sum();
    }

    public double outOf() {
        return entries.stream().mapToDouble(Entry::worth).sum();
    }
}
