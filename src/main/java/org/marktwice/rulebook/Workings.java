package org.marktwice.rulebook;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.marktwice.advice.ModelAnswer;
import org.marktwice.advice.Option;
import org.marktwice.advice.Options;
import org.marktwice.bench.Kept;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Placing;
import org.marktwice.drawing.Trim;
import org.marktwice.drawing.Turn;
import org.marktwice.fit.FitWorkings;
import org.marktwice.rulebook.TruenessLimits.Reading;
import org.marktwice.scenario.Scenario;
import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;

/**
 * What follows from one scenario alone, whatever is done at the bench, computed when first asked for and kept: the rules
 * are judged after every action, and nearly all of their work is the same each time. Safe for several threads.
 */
final class Workings {
    /** Of what holds findings so many are kept: more than the ways in which a class lays and marks its boards. */
    private static final int MANY = 512;

    private final Scenario scenario;
    private final FitWorkings fit;
    private final Kept<Pairing, Optional<Option>> best = new Kept<>();
    private final Kept<Pairing, List<Turn>> turns = new Kept<>();
    private final Kept<Pairing, Boolean> fits = new Kept<>();
    private final Kept<Lie, Laid> laid = new Kept<>(MANY);
    private final Kept<Together, List<Finding>> findings = new Kept<>(MANY);
    private final Kept<AsItIsMarked.Key, AsItIsMarked> marked = new Kept<>(MANY);
    private final Kept<Facing, Option> facing = new Kept<>();
    private final Kept<Integer, Faulty> faulty = new Kept<>();
    private final Kept<Surfaces, List<Reading>> readings = new Kept<>();
    private volatile @Nullable ModelAnswer model;

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

    /** What a rule finds about boards that lie so. */
    private record Together(Rule rule, List<Laid> boards) {}

    private record Surfaces(
            String board, Surface on, @Nullable Surface side) {}

    Workings(Scenario scenario) {
        this.scenario = scenario;
        this.fit = new FitWorkings(scenario.drawing());
    }

    FitWorkings fit() {
        return fit;
    }

    ModelAnswer model() {
        ModelAnswer known = model;
        return known == null ? soughtOnce() : known;
    }

    /** It takes longest of all this, so that other threads rather wait than seek it too. */
    private synchronized ModelAnswer soughtOnce() {
        ModelAnswer known = model;
        if (known == null) {
            known = ModelAnswer.of(scenario);
            model = known;
        }
        return known;
    }

    Optional<Option> best(Board board, Part part) {
        return best.of(Pairing.of(board, part), () -> Options.best(scenario, board, part));
    }

    List<Turn> turns(Board board, Part part) {
        return turns.of(Pairing.of(board, part), () -> Options.turns(board, part));
    }

    Option best(Board board, Part part, Turn turn) {
        return facing.of(new Facing(board.id(), part.id(), turn), () -> Options.best(scenario, board, part, turn));
    }

    boolean fits(Board board, Part part) {
        return fits.of(
                Pairing.of(board, part),
                () -> Options.unfit(scenario, board, part).isEmpty());
    }

    Laid laid(Placing placing) {
        return laid.of(Lie.of(placing), () -> new Laid(scenario, placing));
    }

    List<Finding> findings(Rule rule, List<Laid> boards, Supplier<List<Finding>> found) {
        return findings.of(new Together(rule, boards), found);
    }

    AsItIsMarked asItIsMarked(AsItIsMarked.Key key) {
        return marked.of(key, AsItIsMarked::new);
    }

    Faulty faulty(int seed) {
        return faulty.of(seed, () -> Faulty.of(scenario, seed));
    }

    /** What straight-edge and winding sticks read on a surface that is to be the face side. */
    List<Reading> readings(Board board, Surface side) {
        return readings.of(
                new Surfaces(board.id(), side, null),
                () -> TruenessLimits.DEFAULT.ofSide(
                        board, side, scenario.practice().cupRatio()));
    }

    /** What straight-edge and square read on a surface that is to be the face edge. */
    List<Reading> readings(Board board, Surface edge, Surface side) {
        return readings.of(
                new Surfaces(board.id(), edge, side), () -> TruenessLimits.DEFAULT.ofEdge(board, edge, side));
    }
}
