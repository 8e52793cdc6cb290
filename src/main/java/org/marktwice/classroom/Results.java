package org.marktwice.classroom;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.marktwice.classroom.Attempted.Score;
import org.marktwice.rulebook.Rule;
import org.marktwice.rulebook.RuleBook;
import org.marktwice.rulebook.Texts;
import org.marktwice.rulebook.Verdict;

/**
 * A class's results: one row a learner, and what the rows together say about the rules and the exercises. Of several
 * attempts of a learner at the same exercise one counts; all of them are kept for the progress.
 *
 * @param rows by learner
 * @param rules the rules that were judged, in the rule book's order
 * @param exercises the exercises that were worked at, by id
 * @param slips the one that most learners made first
 * @param attempts every marked attempt, once, by learner and then by the time it was started
 * @param repeats files that hold one of these attempts once more, or not yet as far
 * @param leftOut the files that could not be marked, by name
 * @param missing learners of a class set of whom nothing could be marked
 */
public record Results(
        String title,
        List<Row> rows,
        List<Item> rules,
        List<Item> exercises,
        List<SlipCount> slips,
        Reliability reliability,
        List<Attempted> attempts,
        List<Repeat> repeats,
        List<LeftOut> leftOut,
        List<String> missing) {
    public Results {
        rows = List.copyOf(rows);
        rules = List.copyOf(rules);
        exercises = List.copyOf(exercises);
        slips = List.copyOf(slips);
        attempts = List.copyOf(attempts);
        repeats = List.copyOf(repeats);
        leftOut = List.copyOf(leftOut);
        missing = List.copyOf(missing);
    }

    private static final Comparator<Attempted> BY_TIME =
            Comparator.comparing(Attempted::who).thenComparing(Results::started).thenComparing(Attempted::file);

    /** Which of a learner's attempts at the same exercise counts. */
    public enum Counting {
        LAST,
        BEST,
        FIRST
    }

    /**
     * @param scores by rule, over the attempts that count
     * @param counted the attempts that count, one an exercise
     * @param tries how many attempts there are in all
     */
    public record Row(String learner, Map<String, Score> scores, List<Attempted> counted, int tries) {
        public Score total() {
            return scores.values().stream().reduce(Score.NONE, Score::plus);
        }
    }

    /**
     * A rule or an exercise over all learners to whom it was put.
     *
     * @param facility the share reached of what could be reached, 0 to 1: low is hard
     * @param discrimination correlation with the rest of the learners' marks: near 0 it tells nothing, below 0 it
     *     misleads; empty where there is no telling
     */
    public record Item(String id, String title, int learners, double facility, OptionalDouble discrimination) {}

    /**
     * @param learners who made it, by name
     * @param of to how many learners the rule was put
     * @param lost marks that it cost in all
     * @param example how it was found with the first of them
     */
    public record SlipCount(
            String rule,
            String title,
            Verdict verdict,
            String key,
            List<String> learners,
            int of,
            double lost,
            String example) {}

    /** @param alpha Cronbach's, over so many rules that were put to all of so many learners; empty where there is none */
    public record Reliability(OptionalDouble alpha, int rules, int learners) {}

    /** @param of the file that counts: it holds all of the same attempt, begun by the same learner at the same time */
    public record Repeat(String file, String of) {}

    public record LeftOut(String file, Marked.State state, String reason) {}

    /**
     * A learner's attempts at one exercise, one after the other.
     *
     * @param shares of the marks, 0 to 1, in the order in which the attempts were started
     */
    public record Progress(String learner, String exercise, List<Double> shares) {
        public double gained() {
            return shares.get(shares.size() - 1) - shares.get(0);
        }
    }

    /** Of learners who tried an exercise more than once, by learner and exercise. */
    public List<Progress> progress() {
        Map<List<String>, List<Attempted>> tries = attempts.stream()
                .collect(Collectors.groupingBy(
                        a -> List.of(a.who(), a.scenario()), LinkedHashMap::new, Collectors.toList()));
        return tries.values().stream()
                .filter(t -> t.size() > 1)
                .map(t -> new Progress(
                        t.get(0).learner(),
                        t.get(0).scenario(),
                        t.stream().map(a -> a.total().share()).toList()))
                .toList();
    }

    /** The rows' totals as shares, 0 to 1. */
    public double[] shares() {
        return rows.stream().mapToDouble(r -> r.total().share()).toArray();
    }

    /** How many totals lie in each tenth, the lowest first; full marks are in the last. */
    public int[] distribution() {
        int[] tenths = new int[10];
        // a share such as 0.7 must not fall into the tenth below for its last digit
        for (double share : shares()) tenths[Math.max(0, Math.min(9, (int) Math.floor(share * 10 + 1e-9)))]++;
        return tenths;
    }

    /** Takes in what comes out of a folder, and keeps no more of it than the results need. */
    public static final class Collector implements Consumer<Marked> {
        private final ExerciseSet set;
        private final List<Attempted> attempts = new ArrayList<>();
        private final List<LeftOut> leftOut = new ArrayList<>();

        public Collector(ExerciseSet set) {
            this.set = set;
        }

        @Override
        public void accept(Marked marked) {
            if (marked.sheet().isPresent()) take(Attempted.of(marked));
            else leftOut.add(new LeftOut(marked.file(), marked.state(), marked.reason()));
        }

        void take(Attempted attempted) {
            attempts.add(attempted);
        }

        public Results results(Counting counting) {
            attempts.sort(BY_TIME);
            List<Repeat> repeats = new ArrayList<>();
            List<Attempted> once = once(attempts, repeats);
            List<Row> rows = rows(once, counting);
            Table byRule = Table.ofRules(rows);
            return new Results(
                    set.title(),
                    rows,
                    byRule.items(),
                    Table.ofExercises(rows, set).items(),
                    slips(rows),
                    byRule.reliability(),
                    once,
                    repeats,
                    leftOut,
                    set.missing(once.stream().map(Attempted::learner).toList()));
        }
    }

    /** Each attempt once, as far as it went. @param repeats takes what else there is of them */
    private static List<Attempted> once(List<Attempted> all, List<Repeat> repeats) {
        Map<List<String>, List<Attempted>> together = all.stream()
                .collect(Collectors.groupingBy(
                        a -> List.of(a.who(), a.scenario(), a.started()), LinkedHashMap::new, Collectors.toList()));
        List<Attempted> once = new ArrayList<>();
        for (List<Attempted> some : together.values()) {
            List<Attempted> kept = new ArrayList<>();
            some.sort(Comparator.comparingInt(a -> -a.trail().length()));
            for (Attempted one : some) {
                kept.stream()
                        .filter(one::isIn)
                        .findFirst()
                        .ifPresentOrElse(in -> repeats.add(new Repeat(one.file(), in.file())), () -> kept.add(one));
            }
            once.addAll(kept);
        }
        once.sort(BY_TIME);
        return once;
    }

    private static long started(Attempted attempted) {
        return OffsetDateTime.parse(attempted.started()).toInstant().toEpochMilli();
    }

    private static List<Row> rows(List<Attempted> attempts, Counting counting) {
        Map<String, List<Attempted>> byLearner =
                attempts.stream().collect(Collectors.groupingBy(Attempted::who, TreeMap::new, Collectors.toList()));
        List<Row> rows = new ArrayList<>();
        for (List<Attempted> tries : byLearner.values()) {
            Map<String, List<Attempted>> byExercise = tries.stream()
                    .collect(Collectors.groupingBy(Attempted::scenario, TreeMap::new, Collectors.toList()));
            List<Attempted> counted =
                    byExercise.values().stream().map(t -> counts(t, counting)).toList();
            rows.add(new Row(tries.get(0).learner(), scores(counted), counted, tries.size()));
        }
        return rows;
    }

    /** @param tries in the order in which they were started */
    private static Attempted counts(List<Attempted> tries, Counting counting) {
        return switch (counting) {
            case LAST -> tries.get(tries.size() - 1);
            case FIRST -> tries.get(0);
            case BEST ->
                tries.stream()
                        .max(Comparator.comparingDouble(a -> a.total().share()))
                        .orElseThrow();
        };
    }

    private static Map<String, Score> scores(List<Attempted> counted) {
        Map<String, Score> scores = new LinkedHashMap<>();
        for (Rule rule : RuleBook.rules()) {
            for (Attempted attempted : counted) {
                Score score = attempted.scores().get(rule.id());
                if (score != null) scores.merge(rule.id(), score, Score::plus);
            }
        }
        return scores;
    }

    private record SlipKey(String rule, Verdict verdict, String key) {}

    private static List<SlipCount> slips(List<Row> rows) {
        Map<SlipKey, Set<String>> who = new LinkedHashMap<>();
        Map<SlipKey, Double> lost = new LinkedHashMap<>();
        Map<SlipKey, String> example = new LinkedHashMap<>();
        for (Row row : rows) {
            for (Attempted attempted : row.counted()) {
                for (Attempted.Slip slip : attempted.slips()) {
                    SlipKey key = new SlipKey(slip.rule(), slip.verdict(), slip.key());
                    who.computeIfAbsent(key, k -> new LinkedHashSet<>()).add(row.learner());
                    lost.merge(key, slip.lost(), Double::sum);
                    example.putIfAbsent(key, row.learner() + ": " + slip.said());
                }
            }
        }
        List<SlipCount> slips = new ArrayList<>();
        who.forEach((key, learners) -> slips.add(new SlipCount(
                key.rule(),
                Texts.of(key.rule()).title(),
                key.verdict(),
                key.key(),
                List.copyOf(learners),
                put(rows, key.rule()),
                lost.getOrDefault(key, 0.0),
                example.getOrDefault(key, ""))));
        slips.sort(
                Comparator.comparingInt((SlipCount s) -> -s.learners().size()).thenComparingDouble(s -> -s.lost()));
        return slips;
    }

    private static int put(Collection<Row> rows, String rule) {
        return (int) rows.stream().filter(r -> r.scores().containsKey(rule)).count();
    }
}
