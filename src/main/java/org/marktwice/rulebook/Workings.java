package org.marktwice.rulebook;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import org.marktwice.advice.ModelAnswer;
import org.marktwice.advice.Option;
import org.marktwice.advice.Options;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Placing;
import org.marktwice.drawing.Trim;
import org.marktwice.drawing.Turn;
import org.marktwice.scenario.Scenario;
import org.marktwice.timber.Board;

/**
 * What follows from one scenario alone, whatever is done at the bench, computed when first asked for and kept: the rules
 * are judged after every action, and nearly all of their work is the same each time. Safe for several threads.
 */
final class Workings {
    private final Scenario scenario;
    private final Map<Pairing, Optional<Option>> best = new ConcurrentHashMap<>();
    private final Map<Pairing, List<Turn>> turns = new ConcurrentHashMap<>();
    private final Map<Pairing, Boolean> fits = new ConcurrentHashMap<>();
    private final Map<Lie, Option> judged = new ConcurrentHashMap<>();
    private final Map<Lie, List<Nearness>> near = new ConcurrentHashMap<>();
    private final Map<Facing, Option> facing = new ConcurrentHashMap<>();
    private final Map<Integer, Faulty> faulty = new ConcurrentHashMap<>();
    private @Nullable ModelAnswer model;

    private record Facing(String board, String part, Turn turn) {}

    private record Pairing(String board, String part) {
        static Pairing of(Board board, Part part) {
            return new Pairing(board.id(), part.id());
        }
    }

    private record Lie(String board, String part, Turn turn, Trim trim) {
        static Lie of(Placing p) {
            return new Lie(p.board().id(), p.part().id(), p.turn(), p.trim());
        }
    }

    Workings(Scenario scenario) {
        this.scenario = scenario;
    }

    synchronized ModelAnswer model() {
        ModelAnswer known = model;
        if (known == null) {
            known = ModelAnswer.of(scenario);
            model = known;
        }
        return known;
    }

    Optional<Option> best(Board board, Part part) {
        return best.computeIfAbsent(Pairing.of(board, part), key -> Options.best(scenario, board, part));
    }

    List<Turn> turns(Board board, Part part) {
        return turns.computeIfAbsent(Pairing.of(board, part), key -> Options.turns(board, part));
    }

    Option best(Board board, Part part, Turn turn) {
        return facing.computeIfAbsent(
                new Facing(board.id(), part.id(), turn), key -> Options.best(scenario, board, part, turn));
    }

    boolean fits(Board board, Part part) {
        return fits.computeIfAbsent(
                Pairing.of(board, part),
                key -> Options.unfit(scenario, board, part).isEmpty());
    }

    Option judged(Placing placing) {
        return judged.computeIfAbsent(Lie.of(placing), key -> Options.judge(scenario, placing));
    }

    /** Not computed inside the map: it judges by these workings' like. */
    Faulty faulty(int seed) {
        Faulty known = faulty.get(seed);
        if (known != null) return known;
        Faulty made = Faulty.of(scenario, seed);
        faulty.put(seed, made);
        return made;
    }

    List<Nearness> near(Placing placing) {
        return near.computeIfAbsent(
                Lie.of(placing),
                key -> Nearness.all(placing, scenario.practice().knotMargin()));
    }
}
