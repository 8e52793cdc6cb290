package org.marktwice.classroom;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.marktwice.advice.Difficulty;
import org.marktwice.advice.ModelAnswer;
import org.marktwice.drawing.Drawing;
import org.marktwice.drawing.PartStuff;
import org.marktwice.files.FileRefused;
import org.marktwice.files.ScenarioFile;
import org.marktwice.files.ScenarioWriter;
import org.marktwice.scenario.Rack;
import org.marktwice.scenario.Scenario;
import org.marktwice.scenario.Stock;
import org.marktwice.timber.Board;
import org.marktwice.timber.Chance;
import org.marktwice.timber.Species;

/**
 * Other boards for the same drawing, as hard as those of the exercise they are made from. What a learner gets hangs on
 * the seed and on what the learner is called, not on who else is in the class: a set that is made again with one learner
 * more gives the others the same. (Should chance ever deal two learners the same boards, the second gets others.)
 */
public final class Variants {
    /** Sets of boards that are tried for a learner before the nearest is taken. */
    static final int MOST_TRIES = 60;
    /** So many tries long, only the inner half of the band will do, so that the class doesn't gather at its edge. */
    private static final int CHOOSY = 20;
    /** Where the teacher doesn't say. */
    public static final double BAND = 0.05;

    private final Scenario exercise;
    private final Species species;
    private final int spare;
    private final double start;
    private final double target;
    private final double band;
    private final int seed;
    private final Set<List<Board>> given = new HashSet<>();

    private Variants(Scenario exercise, Species species, double target, double band, int seed) {
        this.exercise = exercise;
        this.species = species;
        this.target = target;
        this.band = band;
        this.seed = seed;
        this.spare = spare(exercise);
        this.start = exercise.stock()
                .map(Stock::difficulty)
                .orElseGet(() -> Difficulty.of(exercise).wrongChoices());
    }

    /**
     * A learner's own boards.
     *
     * @param scenario its digest is that of the file, as attempts at it will have it
     * @param bytes the scenario's file
     * @param tries how many sets of boards were tried
     * @param inBand whether its difficulty lies within the band
     */
    public record Variant(
            String learner, Scenario scenario, byte[] bytes, Difficulty difficulty, int tries, boolean inBand) {}

    /** @throws CannotVary where the exercise has no timber boards, or no log gives boards for it */
    public static Variants of(Scenario exercise, int seed, double band) throws CannotVary {
        Optional<String> refusal = Rack.refusal(exercise.drawing());
        if (refusal.isPresent()) throw new CannotVary(refusal.get());
        Species species = exercise.boards().stream()
                .flatMap(b -> b.species().stream())
                .findFirst()
                .orElseThrow(() -> new CannotVary("there is no timber board in it, and so nothing to vary"));
        return new Variants(exercise, species, Difficulty.of(exercise).value(), band, seed);
    }

    /** An exercise of which no variants can be made, with the reason. */
    public static final class CannotVary extends Exception {
        private static final long serialVersionUID = 1L;

        CannotVary(String why) {
            super(why);
        }
    }

    private static int spare(Scenario exercise) {
        Drawing drawing = exercise.drawing();
        long boards = exercise.boards().stream().filter(b -> !b.isSheet()).count();
        long parts = drawing.parts().stream()
                .filter(p -> p.stuff() != PartStuff.SHEET)
                .count();
        return (int) Math.max(0, Math.min(Stock.MOST_SPARE, boards - parts));
    }

    /** The difficulty of the exercise, which the variants come near to. */
    public double target() {
        return target;
    }

    public double band() {
        return band;
    }

    public int seed() {
        return seed;
    }

    /** The learner's variant: the first well in the band, or else the nearest that was found. */
    public Variant of(String learner) {
        Chance chance = Chance.of(seed(learner));
        double hard = start;
        Found nearest = null;
        for (int tried = 1; tried <= MOST_TRIES; tried++) {
            Found found = grown(chance.whole(0, Integer.MAX_VALUE - 1), hard, tried);
            if (found != null && (nearest == null || found.off() < nearest.off())) nearest = found;
            if (nearest != null && nearest.off() <= (tried < CHOOSY ? band / 2 : band)) break;
            // ask for a little more or less than came out too easy or too hard
            if (found != null)
                hard = Math.max(
                        0, Math.min(1, hard + (target - found.difficulty().value()) / 2));
        }
        if (nearest == null) nearest = given();
        given.add(nearest.boards());
        return variant(learner, nearest);
    }

    private record Found(List<Board> boards, Difficulty difficulty, double off, int tries) {}

    /** Null where some part can't be supplied clear, or another learner has the same boards. */
    private @Nullable Found grown(int stockSeed, double hard, int tries) {
        Stock stock = new Stock(stockSeed, species, spare, rounded(hard));
        List<Board> boards = Rack.fill(stock, exercise.drawing(), exercise.practice());
        if (given.contains(boards)) return null;
        Scenario scenario = exercise.withBoards(boards);
        ModelAnswer answer = ModelAnswer.of(scenario);
        if (answer.clear() < exercise.drawing().parts().size()) return null;
        Difficulty difficulty = Difficulty.of(scenario, answer);
        return new Found(boards, difficulty, rounded(Math.abs(difficulty.value() - target)), tries);
    }

    /** The exercise's own boards, where nothing else can be had. */
    private Found given() {
        return new Found(exercise.boards(), Difficulty.of(exercise), 0, MOST_TRIES);
    }

    /** So coarsely that the last digits of a machine's arithmetic decide nothing. */
    private static double rounded(double value) {
        return Math.round(value * 1e6) / 1e6;
    }

    /** Read back, so that it is what the learner will have. */
    private Variant variant(String learner, Found found) {
        byte[] bytes = ScenarioWriter.bytes(exercise.withBoards(found.boards()));
        try {
            Scenario scenario = ScenarioFile.read(exercise.id(), bytes);
            return new Variant(learner, scenario, bytes, found.difficulty(), found.tries(), found.off() <= band);
        } catch (FileRefused e) {
            throw new IllegalStateException("what was written can be read: " + e.getMessage(), e);
        }
    }

    private long seed(String learner) {
        byte[] hash = sha256(
                (seed + "/" + exercise.id() + "/" + learner.toLowerCase(Locale.ROOT)).getBytes(StandardCharsets.UTF_8));
        long bits = 0;
        for (int i = 0; i < 8; i++) bits = bits << 8 | hash[i] & 0xff;
        return bits;
    }

    private static byte[] sha256(byte[] bytes) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(bytes);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
