package org.marktwice.view.desk;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.marktwice.advice.Difficulty;
import org.marktwice.advice.ModelAnswer;
import org.marktwice.advice.Option;
import org.marktwice.drawing.Drawing;
import org.marktwice.drawing.Part;
import org.marktwice.scenario.Draft;
import org.marktwice.scenario.Rack;
import org.marktwice.scenario.Scenario;
import org.marktwice.scenario.Stock;
import org.marktwice.timber.Board;

/**
 * The boards of an exercise as they come out, and what can be done with them. Reckoned away from the event thread.
 *
 * @param refused why there are no boards, in one line; empty where there are
 */
record Grown(Scenario scenario, ModelAnswer answer, Difficulty difficulty, String refused) {

    /** Empty while the drawing isn't whole, or there are no boards. */
    static Optional<Grown> of(Draft draft) {
        Optional<Drawing> drawing = draft.drawing();
        if (drawing.isEmpty() || (draft.stock().isEmpty() && draft.boards().isEmpty())) return Optional.empty();
        Optional<String> refusal = draft.stock().isPresent() ? Rack.refusal(drawing.get()) : Optional.empty();
        List<Board> boards = draft.boards();
        if (draft.stock().isPresent() && refusal.isEmpty()) {
            Stock stock = draft.stock().get();
            boards = Rack.fill(stock, drawing.get(), draft.practice());
        }
        Scenario scenario = new Scenario(
                draft.named(),
                draft.title(),
                draft.level(),
                draft.brief(),
                draft.stages(),
                draft.practice(),
                drawing.get(),
                boards,
                "");
        ModelAnswer answer = ModelAnswer.of(scenario);
        return Optional.of(new Grown(scenario, answer, Difficulty.of(scenario, answer), refusal.orElse("")));
    }

    /** Whether every part can be supplied clear. */
    boolean isSolvable() {
        return answer.clear() == scenario.drawing().parts().size();
    }

    /** The part that the model answer makes of a board; empty where it is left over. */
    Optional<Option> use(Board board) {
        return answer.of(board);
    }

    /** What can be done with the boards, in one line. */
    String says() {
        if (!refused.isEmpty()) return refused;
        int parts = scenario.drawing().parts().size();
        if (!isSolvable()) {
            List<String> without = scenario.drawing().parts().stream()
                    .filter(p -> answer.of(p).isEmpty())
                    .map(Part::name)
                    .toList();
            return answer.clear() + " of " + parts + " parts can be had clear of knots"
                    + (without.isEmpty() ? "" : "; no board for " + String.join(", ", without));
        }
        return String.format(
                Locale.ROOT,
                "Can be solved, the nearest knot %.1f mm from a cut. Difficulty %.2f: %.0f of 100 ways to lay a board are wrong.",
                answer.least(),
                difficulty.value(),
                100 * difficulty.wrongChoices());
    }
}
