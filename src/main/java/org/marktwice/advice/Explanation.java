package org.marktwice.advice;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Turn;
import org.marktwice.scenario.Scenario;
import org.marktwice.timber.Board;

/**
 * Why the model answer is the best: what each board could be used as, what the next best allotment would lose, and, where
 * not every part can be supplied or be clear, the parts and boards that prove it. Figures only; the words are the rule
 * book's.
 */
public final class Explanation {
    /** The next best is found by solving once more for each part: with more parts than these it isn't looked for. */
    private static final int PARTS_WITH_NEXT_BEST = 40;

    private static final Comparator<ModelAnswer> BETTER_FIRST = Comparator.comparingInt(ModelAnswer::supplied)
            .thenComparingInt(ModelAnswer::clear)
            .thenComparingDouble(ModelAnswer::least)
            .thenComparingDouble(ModelAnswer::sum)
            .reversed();

    private final Scenario scenario;
    private final Allotment allotment;
    private final ModelAnswer answer;

    private Explanation(Scenario scenario, Allotment allotment, ModelAnswer answer) {
        this.scenario = scenario;
        this.allotment = allotment;
        this.answer = answer;
    }

    public static Explanation of(Scenario scenario) {
        Allotment allotment = Allotment.of(scenario);
        return new Explanation(scenario, allotment, allotment.best());
    }

    /**
     * A board as a part.
     *
     * @param unfit why it can't be, in one sentence; empty where it can
     * @param ways every way to lay it there, in the order of the turns; none where it is unfit
     */
    public record Use(Board board, Part part, Optional<String> unfit, List<Way> ways) {
        public Use {
            ways = List.copyOf(ways);
        }
    }

    /**
     * One turn, with its best trim.
     *
     * @param allowed whether the drawing and the planing allow it
     * @param chosen whether the model answer lays the board so
     */
    public record Way(Option option, boolean allowed, boolean chosen) {}

    public Scenario scenario() {
        return scenario;
    }

    public ModelAnswer answer() {
        return answer;
    }

    /** What a board could be used as: parts × turns. */
    public List<Use> uses(Board board) {
        return scenario.drawing().parts().stream().map(p -> use(board, p)).toList();
    }

    private Use use(Board board, Part part) {
        Optional<String> unfit = Options.unfit(scenario, board, part);
        if (unfit.isPresent()) return new Use(board, part, unfit, List.of());
        Optional<Option> laid = answer.of(part).filter(o -> o.placing().board().equals(board));
        List<Turn> allowed = Options.turns(board, part);
        boolean square = board.isSquare() && part.size().isSquare(Board.SIZE_TOLERANCE);
        List<Way> ways = Turn.in(part, square).stream()
                .map(t -> {
                    Optional<Option> chosen =
                            laid.filter(o -> o.placing().turn().equals(t));
                    Option best = chosen.orElseGet(() -> Options.best(scenario, board, part, t));
                    return new Way(best, allowed.contains(t), chosen.isPresent());
                })
                .toList();
        return new Use(board, part, unfit, ways);
    }

    /**
     * The best of all sets in which at least one board of the model answer serves less well than there, or not at all:
     * what comes after the model answer, apart from boards that merely change places at no loss. As good as the model
     * answer only where a board left over could stand in. Empty where nothing is supplied, or the parts are too many to try.
     */
    public Optional<ModelAnswer> nextBest() {
        if (answer.placings().size() > PARTS_WITH_NEXT_BEST) return Optional.empty();
        return answer.placings().stream()
                .map(o -> allotment.bestBelow(o.placing().board(), o))
                .min(BETTER_FIRST);
    }

    /** What proves that not every part can be supplied, and that not every part can be clear; none where all can. */
    public List<Shortage> shortages() {
        Optional<Shortage> fitting = Shortage.of(scenario, allotment, false);
        Optional<Shortage> clear = Shortage.of(scenario, allotment, true)
                .filter(s ->
                        fitting.isEmpty() || !s.parts().equals(fitting.get().parts()));
        return Stream.of(fitting, clear).flatMap(Optional::stream).toList();
    }
}
