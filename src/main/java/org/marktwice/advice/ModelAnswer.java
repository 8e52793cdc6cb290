package org.marktwice.advice;

import java.util.List;
import java.util.Optional;
import org.marktwice.drawing.Part;
import org.marktwice.scenario.Scenario;
import org.marktwice.timber.Board;

/**
 * The best set of placings: one board a part, boards may be left over. An exact optimum in this order: most parts
 * supplied, most parts clear, greatest least clearance, greatest sum of clearances.
 *
 * @param placings in the parts' order
 */
public record ModelAnswer(List<Option> placings) {
    public ModelAnswer {
        placings = List.copyOf(placings);
    }

    /** The best set that the scenario's boards allow. */
    public static ModelAnswer of(Scenario scenario) {
        return Allotment.of(scenario).best();
    }

    /**
     * The best that the scenario's boards allow for so many jobs of its drawing together, one answer a job: an exact
     * optimum over all of them in the same order.
     */
    public static List<ModelAnswer> of(Scenario scenario, int times) {
        return Allotment.of(scenario).best(times);
    }

    public int supplied() {
        return placings.size();
    }

    public int clear() {
        return (int) placings.stream().filter(Option::clear).count();
    }

    /** The least clearance in the set; {@link Option#CAP} where nothing is supplied. */
    public double least() {
        return placings.stream().mapToDouble(Option::clearance).min().orElse(Option.CAP);
    }

    public double sum() {
        return placings.stream().mapToDouble(Option::clearance).sum();
    }

    public Optional<Option> of(Part part) {
        return placings.stream().filter(o -> o.placing().part().equals(part)).findFirst();
    }

    public Optional<Option> of(Board board) {
        return placings.stream().filter(o -> o.placing().board().equals(board)).findFirst();
    }
}
