package org.marktwice.view.desk;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.marktwice.bench.LearnerName;
import org.marktwice.classroom.JobRecord;
import org.marktwice.classroom.JobRecord.Judged;
import org.marktwice.classroom.Measure;
import org.marktwice.classroom.Results;
import org.marktwice.files.FileRefused;
import org.marktwice.files.RecordFile;
import org.marktwice.scenario.Scenario;

/** The finished jobs of a class, measured: the record step by step, and how it is judged. It knows no component. */
final class RecordModel {
    private static final Pattern FIGURE = Pattern.compile("\\d+([.,]\\d*)?|[.,]\\d+");
    /** No job is larger, millimetres. */
    private static final double MOST = 100_000;

    private final Scenario scenario;
    private final Steps<RecordFile> steps;
    private final List<Measure> measures;
    private @Nullable RecordFile judgedOf;
    private @Nullable JobRecord judged;
    private @Nullable Results practice;

    RecordModel(Scenario scenario, RecordFile first) {
        this.scenario = scenario;
        steps = new Steps<>(first);
        measures = Measure.of(scenario.drawing());
    }

    Steps<RecordFile> steps() {
        return steps;
    }

    List<Measure> measures() {
        return measures;
    }

    List<String> learners() {
        return steps.now().rows().stream().map(RecordFile.Row::learner).toList();
    }

    /** What was measured; empty where nothing was yet. */
    OptionalDouble at(int row, Measure measure) {
        return steps.now().rows().get(row).of(measure.id());
    }

    /** Whether this can be typed into a cell: a figure in millimetres, with a point or a comma, or nothing. */
    static boolean takes(String typed) {
        String text = typed.strip();
        return text.isEmpty() || FIGURE.matcher(text).matches() && Double.parseDouble(text.replace(',', '.')) <= MOST;
    }

    /** Puts what was typed into a cell, where it {@linkplain #takes can be}; an empty text takes out what is there. */
    void type(int row, Measure measure, String typed) {
        if (!takes(typed)) return;
        String text = typed.strip().replace(',', '.');
        OptionalDouble mm = text.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(text));
        steps.edit(steps.now().with(learners().get(row), measure.id(), mm));
    }

    /** Begins with this record. */
    void begin(RecordFile read) {
        steps.amend(read);
        steps.saved();
    }

    /** Puts another record in the place of this; that too is undone. */
    void open(RecordFile read) {
        steps.edit(read);
        steps.saved();
    }

    /** Whether nothing was measured yet. */
    boolean isBlank() {
        return steps.now().measures().isEmpty();
    }

    /** The record judged against the drawing. */
    JobRecord judged() {
        RecordFile now = steps.now();
        JobRecord known = judged;
        if (known != null && now.equals(judgedOf)) return known;
        try {
            JobRecord fresh = JobRecord.of(scenario, now, "the record");
            judged = fresh;
            judgedOf = now;
            return fresh;
        } catch (FileRefused e) {
            throw new IllegalStateException("its measures and tolerances were chosen from what there is", e);
        }
    }

    /** The band of a cell; of two diagonals it stands at both once both are measured. */
    Optional<Judged> judged(int row, Measure measure) {
        String id = measure.kind() == Measure.Kind.DIAGONAL
                ? measure.id().substring(0, measure.id().length() - 2)
                : measure.id();
        return judged().jobs().get(row).judged().stream()
                .filter(j -> j.id().equals(id))
                .findFirst();
    }

    /** By an id of the tolerances; empty for the exercise's own. */
    void judgeBy(String tolerances) {
        steps.edit(steps.now().judgedBy(tolerances, steps.now().gap()));
    }

    void beside(@Nullable Results results) {
        practice = results;
    }

    /** The practice marks that were set beside; null before any were. */
    JobRecord.@Nullable Beside beside() {
        Results known = practice;
        return known == null ? null : judged().beside(known);
    }

    /** Practice marks by learner, 0 to 1. */
    Map<String, Double> practice() {
        Map<String, Double> shares = new HashMap<>();
        Results known = practice;
        if (known == null) return shares;
        Map<String, Double> byKey = new HashMap<>();
        for (Results.Row row : known.rows())
            byKey.put(LearnerName.key(row.learner()), row.total().share());
        for (String learner : learners()) {
            Double share = byKey.get(LearnerName.key(learner));
            if (share != null) shares.put(learner, share);
        }
        return shares;
    }

    /** Whether practice paid, in one line; empty without practice marks. */
    String paid() {
        Results known = practice;
        if (known == null) return "";
        JobRecord.Beside beside = judged().beside(known);
        String pairs = beside.pairs().size() + (beside.pairs().size() == 1 ? " learner has" : " learners have")
                + " both practice marks and a measured job";
        if (beside.correlation().isEmpty()) return pairs + "; too few, or too alike, to say whether practice paid.";
        double r = beside.correlation().getAsDouble();
        String says = r >= 0.5
                ? "those who practised well built well"
                : r > 0.1 ? "practice tells a little" : "practice doesn't tell";
        return String.format(java.util.Locale.ROOT, "%s; correlation %.2f: %s.", pairs, r, says);
    }

    /** What the class as a whole is out by, the worst first: the setting-out's fault, and no hand's. */
    List<String> outBy() {
        List<JobRecord.Column> columns = new ArrayList<>(judged().columns());
        columns.sort(java.util.Comparator.comparingDouble(c -> -Math.abs(c.mean())));
        return columns.stream()
                .filter(c -> c.jobs() > 1 && Math.abs(c.mean()) >= 0.3)
                .limit(4)
                .map(c -> String.format(
                        java.util.Locale.ROOT, "%s %+.1f mm on average over %d", c.title(), c.mean(), c.jobs()))
                .toList();
    }
}
