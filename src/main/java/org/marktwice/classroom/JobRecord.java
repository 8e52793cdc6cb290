package org.marktwice.classroom;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.marktwice.bench.LearnerName;
import org.marktwice.classroom.Results.Row;
import org.marktwice.files.FileRefused;
import org.marktwice.files.RecordFile;
import org.marktwice.fit.Tolerances;
import org.marktwice.scenario.Scenario;

/**
 * The finished jobs of a class against the drawing: every size, place and gap with its band, and what the class as a whole
 * is out by. Bands are computed from the measurements each time, never stored.
 *
 * @param tolerances by which sizes, places and the difference of diagonals are judged
 * @param gap the limit of a gap, millimetres
 * @param measures all that can be measured on this job
 * @param jobs by learner, in the record's order
 */
public record JobRecord(Scenario scenario, Tolerances tolerances, double gap, List<Measure> measures, List<Job> jobs) {
    private static final double SLACK = 1e-9;
    /** Fewer pairs than this lie on a line by chance. */
    private static final int TELLING = 5;

    public JobRecord {
        measures = List.copyOf(measures);
        jobs = List.copyOf(jobs);
    }

    /** How well a figure keeps to its limit. */
    public enum Band {
        /** Within half of it. */
        GOOD(1),
        /** Within it. */
        FAIR(0.5),
        /** Beyond it. */
        POOR(0);

        private final double credit;

        Band(double credit) {
            this.credit = credit;
        }

        /** 0 to 1. */
        public double credit() {
            return credit;
        }

        public String id() {
            return name().toLowerCase(Locale.ROOT);
        }

        static Band of(double off, double limit) {
            double abs = Math.abs(off);
            if (abs <= limit / 2 + SLACK) return GOOD;
            return abs <= limit + SLACK ? FAIR : POOR;
        }
    }

    /**
     * A figure judged.
     *
     * @param id the measure's; of two diagonals {@code diagonal-1}
     * @param off from the drawing, + too large; of diagonals how they differ, the first less the second
     * @param limit ± millimetres
     */
    public record Judged(String id, String title, double off, double limit, Band band) {}

    /** @param judged what was measured, in the order of the measures */
    public record Job(String learner, List<Judged> judged) {
        public Job {
            judged = List.copyOf(judged);
        }

        public int count(Band band) {
            return (int) judged.stream().filter(j -> j.band() == band).count();
        }

        /** The mean credit of what was measured, 0 to 1; NaN where nothing was. */
        public double share() {
            return judged.stream().mapToDouble(j -> j.band().credit()).average().orElse(Double.NaN);
        }
    }

    /**
     * One figure over the whole class.
     *
     * @param mean how far it is out on the mean: what lies far from 0 is a fault of the setting-out, not of a hand
     * @param deviation of the sample; NaN for one job
     */
    public record Column(
            String id, String title, int jobs, double mean, double deviation, int good, int fair, int poor) {}

    /**
     * The measures of a scenario's job judged.
     *
     * @param name what messages call the record's file
     * @throws FileRefused where the record is of another exercise, or has a measure that this job hasn't
     */
    public static JobRecord of(Scenario scenario, RecordFile file, String name) throws FileRefused {
        if (!file.scenario().isEmpty() && !file.scenario().equals(scenario.id())) {
            throw new FileRefused(
                    name, "this is a record of \"" + file.scenario() + "\", not of \"" + scenario.id() + "\"");
        }
        List<Measure> measures = Measure.of(scenario.drawing());
        List<String> ids = measures.stream().map(Measure::id).toList();
        for (String measure : file.measures()) {
            if (!ids.contains(measure)) {
                throw new FileRefused(
                        name, "nothing on this job is called \"" + measure + "\"; there are " + String.join(", ", ids));
            }
        }
        Tolerances tolerances = tolerances(scenario, file.tolerance(), name);
        double gap = file.gap().orElse(scenario.practice().gap());
        List<Job> jobs = file.rows().stream()
                .map(r -> new Job(r.learner(), judged(r, measures, tolerances, gap)))
                .toList();
        return new JobRecord(scenario, tolerances, gap, measures, jobs);
    }

    private static Tolerances tolerances(Scenario scenario, String id, String name) throws FileRefused {
        if (id.isEmpty()) return Tolerances.of(scenario.practice().size());
        Optional<Tolerances> preset = Tolerances.preset(id);
        if (preset.isPresent()) return preset.get();
        List<String> known = Tolerances.presets().stream().map(Tolerances::id).toList();
        throw new FileRefused(
                name, "there are no tolerances called \"" + id + "\"; there are " + String.join(", ", known));
    }

    private static List<Judged> judged(RecordFile.Row row, List<Measure> measures, Tolerances tolerances, double gap) {
        List<Judged> judged = new ArrayList<>();
        for (Measure measure : measures) {
            OptionalDouble read = row.of(measure.id());
            if (read.isEmpty()) continue;
            if (measure.kind() == Measure.Kind.DIAGONAL) {
                diagonals(row, measure, tolerances).ifPresent(judged::add);
                continue;
            }
            double off = read.getAsDouble() - measure.drawn();
            double limit = limit(measure, tolerances, gap);
            judged.add(new Judged(measure.id(), measure.title(), off, limit, Band.of(off, limit)));
        }
        return judged;
    }

    private static double limit(Measure measure, Tolerances tolerances, double gap) {
        return measure.kind() == Measure.Kind.GAP ? gap : tolerances.plusMinus(measure.drawn());
    }

    /** How far a measure may be out and still be fair, ± millimetres; of diagonals, how much they may differ. */
    public double limit(Measure measure) {
        return limit(measure, tolerances, gap);
    }

    /** The job judged by the exercise's own limits, before anything was measured. */
    public static JobRecord blank(Scenario scenario) {
        return new JobRecord(
                scenario,
                Tolerances.of(scenario.practice().size()),
                scenario.practice().gap(),
                Measure.of(scenario.drawing()),
                List.of());
    }

    /** Told at the first of the two, where both were measured. */
    private static Optional<Judged> diagonals(RecordFile.Row row, Measure measure, Tolerances tolerances) {
        String id = measure.id().substring(0, measure.id().length() - 2);
        OptionalDouble one = row.of(id + "-a");
        OptionalDouble other = row.of(id + "-b");
        if (!measure.id().endsWith("a") || one.isEmpty() || other.isEmpty()) return Optional.empty();
        double off = one.getAsDouble() - other.getAsDouble();
        double limit = tolerances.plusMinus(measure.drawn());
        String title = measure.title().replaceFirst("One diagonal", "Diagonals");
        return Optional.of(new Judged(id, title, off, limit, Band.of(off, limit)));
    }

    /** What the class as a whole is out by, in the order of the measures. */
    public List<Column> columns() {
        Map<String, List<Judged>> byId = new LinkedHashMap<>();
        for (Measure measure : measures) {
            String id = measure.kind() == Measure.Kind.DIAGONAL
                    ? measure.id().substring(0, measure.id().length() - 2)
                    : measure.id();
            byId.computeIfAbsent(id, k -> new ArrayList<>());
        }
        for (Job job : jobs) {
            for (Judged one : job.judged())
                byId.getOrDefault(one.id(), new ArrayList<>()).add(one);
        }
        List<Column> columns = new ArrayList<>();
        byId.forEach((id, all) -> {
            if (!all.isEmpty()) columns.add(column(id, all));
        });
        return columns;
    }

    private static Column column(String id, List<Judged> all) {
        double[] off = all.stream().mapToDouble(Judged::off).toArray();
        int[] bands = new int[Band.values().length];
        for (Judged one : all) bands[one.band().ordinal()]++;
        return new Column(
                id,
                all.get(0).title(),
                all.size(),
                ItemStatistics.mean(off),
                Math.sqrt(ItemStatistics.variance(off)),
                bands[0],
                bands[1],
                bands[2]);
    }

    /** @param practice share of the marks; @param bench share of the bands' credit, both 0 to 1 */
    public record Pair(String learner, double practice, double bench) {}

    /**
     * Practice marks beside the finished jobs.
     *
     * @param pairs of learners who have both
     * @param correlation near 1 where those who practised well built well; empty with fewer than five pairs, or where one of the two doesn't vary
     * @param onlyPractice learners without a measured job
     * @param onlyBench learners without a marked attempt
     */
    public record Beside(
            List<Pair> pairs, OptionalDouble correlation, List<String> onlyPractice, List<String> onlyBench) {
        public Beside {
            pairs = List.copyOf(pairs);
            onlyPractice = List.copyOf(onlyPractice);
            onlyBench = List.copyOf(onlyBench);
        }
    }

    public Beside beside(Results results) {
        Map<String, Row> practice = new HashMap<>();
        for (Row row : results.rows()) practice.put(LearnerName.key(row.learner()), row);
        List<Pair> pairs = new ArrayList<>();
        List<String> onlyBench = new ArrayList<>();
        for (Job job : jobs) {
            if (Double.isNaN(job.share())) continue;
            Row row = practice.remove(LearnerName.key(job.learner()));
            if (row == null) onlyBench.add(job.learner());
            else pairs.add(new Pair(job.learner(), row.total().share(), job.share()));
        }
        double[] marks = pairs.stream().mapToDouble(Pair::practice).toArray();
        double[] built = pairs.stream().mapToDouble(Pair::bench).toArray();
        List<String> onlyPractice = results.rows().stream()
                .map(Row::learner)
                .filter(l -> practice.containsKey(LearnerName.key(l)))
                .toList();
        OptionalDouble correlation =
                pairs.size() < TELLING ? OptionalDouble.empty() : ItemStatistics.correlation(marks, built);
        return new Beside(pairs, correlation, onlyPractice, onlyBench);
    }
}
