package org.marktwice.rulebook;

import java.util.List;

/** All rules, in the order of the stages. */
public final class RuleBook {
    private RuleBook() {}

    public static List<Rule> rules() {
        return List.of();
    }

    /** The situation judged by the rules of the scenario's stages. */
    public static MarkSheet judge(Situation situation) {
        throw new UnsupportedOperationException();
    }
}
