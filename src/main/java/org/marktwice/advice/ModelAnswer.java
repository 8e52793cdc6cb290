package org.marktwice.advice;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.marktwice.advice.Assignment.Worth;
import org.marktwice.advice.Options.Sifted;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Drawing;
import org.marktwice.drawing.JobAxis;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.PartStuff;
import org.marktwice.drawing.Placing;
import org.marktwice.scenario.Scenario;
import org.marktwice.timber.Board;
import org.marktwice.timber.Box;
import org.marktwice.timber.Size;

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
        List<Part> parts = scenario.drawing().parts();
        List<List<Optional<Sifted>>> options = options(scenario);
        int[] boardOf = Assignment.best(options.stream()
                .map(row -> row.stream().map(o -> o.map(ModelAnswer::worth)).toList())
                .toList());
        List<Option> placings = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            if (boardOf[i] < 0) continue;
            Placing like = options.get(i).get(boardOf[i]).orElseThrow().placing();
            placings.add(Options.judge(
                    scenario, new Placing(scenario.drawing(), parts.get(i), like.board(), like.turn(), like.trim())));
        }
        return new ModelAnswer(placings);
    }

    private static Worth worth(Sifted option) {
        return Worth.of(option.clear(), option.clearance());
    }

    /** Each part's best use of each board; like parts are judged once, and share the placings of the first of them. */
    private static List<List<Optional<Sifted>>> options(Scenario scenario) {
        Map<Likeness, List<Optional<Sifted>>> judged = new HashMap<>();
        List<List<Optional<Sifted>>> options = new ArrayList<>();
        for (Part part : scenario.drawing().parts()) {
            options.add(judged.computeIfAbsent(
                    Likeness.of(scenario.drawing(), part),
                    like -> scenario.boards().stream()
                            .map(board -> Options.bestTurn(scenario, board, part))
                            .toList()));
        }
        return options;
    }

    /** All that a board's use as a part depends on: parts that agree in it are served alike by the same board. */
    private record Likeness(
            PartStuff stuff,
            Size size,
            JobAxis length,
            JobAxis width,
            Set<Direction> faceSide,
            Set<Direction> faceEdge,
            Set<Box> cuts) {
        static Likeness of(Drawing drawing, Part part) {
            Set<Box> cuts = drawing.cuts(part).stream()
                    .flatMap(c -> c.boxes().stream())
                    .map(b -> b.moved(-part.at().x(), -part.at().y(), -part.at().z()))
                    .collect(Collectors.toSet());
            return new Likeness(
                    part.stuff(),
                    part.size(),
                    part.length(),
                    part.width(),
                    Set.copyOf(part.faceSide()),
                    Set.copyOf(part.faceEdge()),
                    cuts);
        }
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
