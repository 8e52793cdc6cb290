package org.marktwice.classroom;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.marktwice.bench.Action;
import org.marktwice.bench.LearnerName;
import org.marktwice.rulebook.Finding;
import org.marktwice.rulebook.MarkSheet;
import org.marktwice.rulebook.Texts;
import org.marktwice.rulebook.Verdict;
import org.marktwice.scenario.Scenario;

/**
 * What results keep of a marked attempt: its scores by rule and its slips, without the sheet.
 *
 * @param learner as the attempt has it
 * @param started ISO 8601
 * @param scenario the scenario's id
 * @param trail what was done and when, action by action, as hashes of this run: of an attempt that was handed in before it
 *     went on, the trail begins in the same way
 * @param scores by rule, in the rule book's order; a rule that had nothing to judge is not among them
 */
public record Attempted(
        String file,
        Marked.State state,
        String learner,
        String started,
        String scenario,
        String trail,
        Map<String, Score> scores,
        List<Slip> slips) {

    /** Marks of so many. */
    public record Score(double marks, double outOf) {
        public static final Score NONE = new Score(0, 0);

        public Score plus(Score other) {
            return new Score(marks + other.marks, outOf + other.outOf);
        }

        /** 0 to 1; NaN where nothing was to be had. */
        public double share() {
            return marks / outOf;
        }

        public double lost() {
            return outOf - marks;
        }
    }

    /**
     * Something done wrong, or left open.
     *
     * @param key what was found, as the rule's texts call it: the same slip has the same key
     * @param said the sentence that was found here
     */
    public record Slip(String rule, Verdict verdict, String key, String said, double lost) {}

    /** @throws java.util.NoSuchElementException where it was not marked */
    static Attempted of(Marked marked) {
        MarkSheet sheet = marked.sheet().orElseThrow();
        Scenario scenario = marked.scenario().orElseThrow();
        Map<String, Score> scores = new LinkedHashMap<>();
        List<Slip> slips = new ArrayList<>();
        for (MarkSheet.Entry entry : sheet.entries()) {
            Finding finding = entry.finding();
            scores.merge(finding.rule(), new Score(entry.worth() * finding.credit(), entry.worth()), Score::plus);
            if (finding.verdict() == Verdict.WRONG || finding.verdict() == Verdict.OPEN) {
                slips.add(new Slip(
                        finding.rule(),
                        finding.verdict(),
                        finding.says().key(),
                        Texts.says(finding, scenario),
                        entry.lost()));
            }
        }
        return new Attempted(
                marked.file(),
                marked.state(),
                marked.learner(),
                marked.attempt().orElseThrow().started(),
                scenario.id(),
                trail(marked.attempt().orElseThrow().actions()),
                scores,
                List.copyOf(slips));
    }

    private static String trail(List<Action> actions) {
        StringBuilder trail = new StringBuilder();
        for (Action action : actions) {
            int hash = action.hashCode();
            trail.append((char) (hash >>> 16)).append((char) hash);
        }
        return trail.toString();
    }

    /** Whether all that was done in this was done in that one as well, and in the same way. */
    boolean isIn(Attempted other) {
        return other.trail.startsWith(trail);
    }

    public Score total() {
        return scores.values().stream().reduce(Score.NONE, Score::plus);
    }

    /** The same for one learner, see {@link LearnerName#key}. */
    String who() {
        return LearnerName.key(learner);
    }
}
