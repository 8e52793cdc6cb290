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

    /** Nearer than this to what was asked for is near enough: a share of the ways to lay a board. */
    static final double NEAR = 0.05;

    /** How far the boards are from being as hard as was asked for; 0 where they were not grown. */
    static double off(Draft draft, Grown grown) {
        return draft.stock()
                .map(s -> Math.abs(s.difficulty() - grown.difficulty().wrongChoices()))
                .orElse(0.0);
    }

    /**
     * The seed, of this many after the draft's own, whose boards come nearest to what is asked for; the first that comes
     * near enough. The draft's own where none comes nearer than that.
     */
    static Stock nearest(Draft draft, int tries) {
        Stock best = draft.stock().orElseThrow();
        double nearest = of(draft).map(g -> off(draft, g)).orElse(Double.POSITIVE_INFINITY);
        for (int i = 1; i <= tries && nearest > NEAR; i++) {
            Stock next = new Stock(
                    (draft.stock().get().seed() + i) % 1_000_000_000, best.species(), best.spare(), best.difficulty());
            Draft with = draft.grownFrom(next);
            Optional<Grown> grown = of(with).filter(Grown::isSolvable);
            if (grown.isEmpty() || off(with, grown.get()) >= nearest - 1e-9) continue;
            nearest = off(with, grown.get());
            best = next;
        }
        return best;
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
        String clear = answer.least() >= Option.CAP
                ? String.format(Locale.ROOT, "every knot %.0f mm or more from the cuts", Option.CAP)
                : String.format(Locale.ROOT, "the nearest knot %.1f mm from a cut", answer.least());
        return String.format(
                Locale.ROOT,
                "Can be solved, %s. Difficulty %.2f: %.0f of 100 ways to lay a board are wrong.",
                clear,
                difficulty.value(),
                100 * difficulty.wrongChoices());
    }
}
