package org.marktwice.rulebook;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.marktwice.advice.ModelAnswer;
import org.marktwice.bench.Bench;
import org.marktwice.bench.BoardState;
import org.marktwice.drawing.Part;
import org.marktwice.scenario.Practice;
import org.marktwice.scenario.Scenario;

/** What the rules judge: a scenario and what has been done so far. The model answer is computed once, when first asked for. */
public final class Situation {
    private final Bench bench;
    private final ModelAnswers answers;

    private Situation(Bench bench, ModelAnswers answers) {
        this.bench = bench;
        this.answers = answers;
    }

    public static Situation of(Bench bench) {
        return new Situation(bench, new ModelAnswers());
    }

    /** The same scenario after other actions, without computing its model answer anew. */
    public Situation at(Bench later) {
        if (!later.scenario().equals(scenario())) return of(later);
        return new Situation(later, answers);
    }

    public Bench bench() {
        return bench;
    }

    public Scenario scenario() {
        return bench.scenario();
    }

    public Practice practice() {
        return scenario().practice();
    }

    public ModelAnswer modelAnswer() {
        return answers.of(scenario());
    }

    /** The part that this board is named as; empty where it carries no name or is set aside. */
    public Optional<Part> partOf(BoardState board) {
        if (board.setAside().isPresent()) return Optional.empty();
        return board.named().flatMap(n -> scenario().drawing().part(n.part()));
    }

    /** The one scenario's model answer, kept. */
    private static final class ModelAnswers {
        private @Nullable ModelAnswer known;

        synchronized ModelAnswer of(Scenario scenario) {
            ModelAnswer answer = known;
            if (answer == null) {
                answer = ModelAnswer.of(scenario);
                known = answer;
            }
            return answer;
        }
    }
}
