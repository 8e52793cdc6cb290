package org.marktwice.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
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

/** Each part's best use of each board, and the best set of them. */
final class Allotment {
    private final Scenario scenario;
    /** By part and board, in the drawing's and the rack's order. */
    private final List<List<Optional<Sifted>>> options;

    private Allotment(Scenario scenario, List<List<Optional<Sifted>>> options) {
        this.scenario = scenario;
        this.options = options;
    }

    /** Like parts are judged once, and share the placings of the first of them. */
    static Allotment of(Scenario scenario) {
        Map<Likeness, List<Optional<Sifted>>> judged = new HashMap<>();
        List<List<Optional<Sifted>>> options = new ArrayList<>();
        for (Part part : scenario.drawing().parts()) {
            options.add(judged.computeIfAbsent(
                    Likeness.of(scenario.drawing(), part),
                    like -> scenario.boards().stream()
                            .map(board -> Options.bestTurn(scenario, board, part))
                            .toList()));
        }
        return new Allotment(scenario, options);
    }

    /** Whether this board can serve this part. @param clear whether it is to be clear there */
    boolean serves(int part, int board, boolean clear) {
        return options.get(part).get(board).filter(o -> o.clear() || !clear).isPresent();
    }

    ModelAnswer best() {
        return best(option -> true);
    }

    /** The best set of those in which this board serves less well than so, or not at all. */
    ModelAnswer bestBelow(Board board, Option asNow) {
        Worth now = Worth.of(asNow.clear(), asNow.clearance());
        return best(o -> !o.placing().board().equals(board) || isLess(Worth.of(o.clear(), o.clearance()), now));
    }

    private static boolean isLess(Worth one, Worth other) {
        return one.clear() == other.clear() ? one.microns() < other.microns() : other.clear();
    }

    private ModelAnswer best(Predicate<Sifted> may) {
        int[] boardOf = Assignment.best(worth(may));
        List<Option> placings = new ArrayList<>();
        for (int part = 0; part < boardOf.length; part++) {
            if (boardOf[part] >= 0) placings.add(placed(part, boardOf[part]));
        }
        return new ModelAnswer(placings);
    }

    /**
     * The best that the boards allow for so many jobs together. Which of like parts goes to which job is free: the first
     * jobs get whole sets, and those that are clear.
     */
    List<ModelAnswer> best(int times) {
        List<List<Optional<Worth>>> once = worth(option -> true);
        List<List<Optional<Worth>>> table = new ArrayList<>();
        for (int i = 0; i < times; i++) table.addAll(once);
        int[] boardOf = Assignment.best(table);
        List<List<Option>> jobs = new ArrayList<>();
        for (int i = 0; i < times; i++) jobs.add(new ArrayList<>());
        for (int part = 0; part < once.size(); part++) {
            List<Option> own = new ArrayList<>();
            for (int i = 0; i < times; i++) {
                int board = boardOf[i * once.size() + part];
                if (board >= 0) own.add(placed(part, board));
            }
            // a stable sort keeps the order of the rack among those that are as good
            own.sort(Comparator.comparing((Option o) -> !o.clear()));
            for (int i = 0; i < own.size(); i++) jobs.get(i).add(own.get(i));
        }
        return jobs.stream().map(ModelAnswer::new).toList();
    }

    /** By part and board. */
    private List<List<Optional<Worth>>> worth(Predicate<Sifted> may) {
        return options.stream()
                .map(row -> row.stream()
                        .map(o -> o.filter(may).map(s -> Worth.of(s.clear(), s.clearance())))
                        .toList())
                .toList();
    }

    private Option placed(int which, int board) {
        Part part = scenario.drawing().parts().get(which);
        Placing like = options.get(which).get(board).orElseThrow().placing();
        return Options.judge(scenario, new Placing(scenario.drawing(), part, like.board(), like.turn(), like.trim()));
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
}
