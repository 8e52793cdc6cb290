package org.marktwice.rulebook;

import org.marktwice.scenario.Scenario;

/** The words of the rule book: a rule's title, why, what to do instead, source, safety note, and the sentences of its findings. */
public final class Texts {
    private Texts() {}

    /**
     * One rule's words.
     *
     * @param why why it matters at the bench
     * @param instead what to do instead, in general
     * @param source where the trade says so, with its mark
     * @param safety a caution that belongs to it; empty where none does
     */
    public record RuleTexts(String title, String why, String instead, String source, String safety) {}

    public static RuleTexts of(String ruleId) {
        throw new UnsupportedOperationException();
    }

    /** What was found, as one sentence or two. */
    public static String says(Finding finding, Scenario scenario) {
        throw new UnsupportedOperationException();
    }

    /** What would have been better on this board; the rule's general advice where the finding has none of its own; empty for a sound finding. */
    public static String instead(Finding finding, Scenario scenario) {
        throw new UnsupportedOperationException();
    }
}
