package org.marktwice.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Turn;
import org.marktwice.scenario.Scenario;
import org.marktwice.timber.Board;

/**
 * How hard it is to choose and turn a scenario's boards. Three figures, each 0 to 1, and one made of them. What they are
 * made of is computed; how they are weighed is a choice of this program's own, good for comparing sets of boards for the
 * same drawing, and no more than a hint between different drawings.
 *
 * @param wrongChoices of the ways to lay a board of the right stuff and size into a part, the share that is wrong: cupped
 *     too much, or with a knot too near to a joint; the mean over the parts
 * @param closeness how near the best choice comes to one that is worse: 1 where there is nothing between them, 1/2 where
 *     {@link #CLOSE} millimetres of clearance are; the mean over the parts of the model answer, 0 where nothing is worse
 * @param crowd how many boards there are to look through: 0 for one, 1/2 for four, 2/3 for nine
 */
public record Difficulty(double wrongChoices, double closeness, double crowd) {
    /** At this difference in clearance a choice is as near as it is far, millimetres. */
    public static final double CLOSE = 10;
    /** Clearances that differ by less are as good, millimetres. */
    private static final double AS_GOOD = 0.5;

    private static final double OF_WRONG = 0.5;
    private static final double OF_CLOSE = 0.3;
    private static final double OF_CROWD = 0.2;

    public static Difficulty of(Scenario scenario) {
        return of(scenario, ModelAnswer.of(scenario));
    }

    /** @param answer the scenario's own model answer, where it is known already */
    public static Difficulty of(Scenario scenario, ModelAnswer answer) {
        List<Double> wrong = new ArrayList<>();
        List<Double> close = new ArrayList<>();
        for (Part part : scenario.drawing().parts()) {
            List<Choice> choices = choices(scenario, part);
            if (choices.isEmpty()) continue;
            wrong.add(choices.stream().filter(c -> !c.right()).count() / (double) choices.size());
            answer.of(part).ifPresent(best -> close.add(closeness(best, choices)));
        }
        double crowd = 1 - 1 / Math.sqrt(Math.max(1, scenario.boards().size()));
        return new Difficulty(mean(wrong), mean(close), crowd);
    }

    /** The three weighed: half by the wrong choices, three tenths by the closeness, two tenths by the crowd. */
    public double value() {
        return OF_WRONG * wrongChoices + OF_CLOSE * closeness + OF_CROWD * crowd;
    }

    /** A board turned so in a part; the clearance is 0 where the board is cupped too much to be used at all. */
    private record Choice(Board board, boolean right, double clearance) {}

    private static List<Choice> choices(Scenario scenario, Part part) {
        List<Choice> choices = new ArrayList<>();
        for (Board board : scenario.boards()) {
            // other boards are told apart by the rule at once, and make nothing harder
            if (!Options.hasSize(board, part)) continue;
            boolean unfit = Options.unfit(scenario, board, part).isPresent();
            for (Turn turn : Options.turns(board, part)) {
                choices.add(unfit ? new Choice(board, false, 0) : judged(scenario, board, part, turn));
            }
        }
        return choices;
    }

    private static Choice judged(Scenario scenario, Board board, Part part, Turn turn) {
        Option option = Options.best(scenario, board, part, turn);
        return new Choice(board, option.clear(), option.clearance());
    }

    private static double closeness(Option best, List<Choice> choices) {
        Optional<Double> second = choices.stream()
                .filter(c -> c.board().equals(best.placing().board()))
                .filter(c -> (best.clear() && !c.right()) || c.clearance() < best.clearance() - AS_GOOD)
                .map(Choice::clearance)
                .max(Double::compare);
        return second.map(s -> 1 / (1 + Math.max(0, best.clearance() - s) / CLOSE))
                .orElse(0.0);
    }

    private static double mean(List<Double> values) {
        return values.stream().mapToDouble(v -> v).average().orElse(0);
    }
}
