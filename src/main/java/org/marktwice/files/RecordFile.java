package org.marktwice.files;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.marktwice.bench.LearnerName;

/**
 * What the finished jobs of a class measured, as JSON ({@code *.record.json}) or as a table ({@code *.csv}: a line a
 * learner, a column a measure, empty where nothing was measured). What the measures are follows from the drawing, and is
 * not known here.
 *
 * @param scenario the id of the exercise; empty where it is a table, which doesn't say
 * @param tolerance the id of the tolerances chosen; empty where the exercise's own count
 * @param gap the limit of a gap in millimetres; empty where the exercise's own counts
 * @param rows by learner, in the order in which they were written
 */
public record RecordFile(String scenario, String tolerance, OptionalDouble gap, List<Row> rows) {
    private static final List<String> KNOWN = List.of("format", "scenario", "tolerance", "gap", "learners");
    private static final String LEARNER = "learner";
    private static final int LONGEST = 60;
    private static final int MOST = 500;

    public RecordFile {
        rows = List.copyOf(rows);
    }

    /** @param measured by the measure's id, millimetres */
    public record Row(String learner, Map<String, Double> measured) {
        public Row {
            measured = Collections.unmodifiableMap(new LinkedHashMap<>(measured));
        }

        public OptionalDouble of(String measure) {
            Double value = measured.get(measure);
            return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
        }
    }

    /** Nothing measured yet. */
    public static RecordFile blank(String scenario, List<String> learners) {
        return new RecordFile(
                scenario,
                "",
                OptionalDouble.empty(),
                learners.stream().map(l -> new Row(l, Map.of())).toList());
    }

    /** With this entry put in or, where it is empty, taken out; a learner who is not there yet comes last. */
    public RecordFile with(String learner, String measure, OptionalDouble mm) {
        List<Row> changed = new ArrayList<>();
        boolean there = false;
        for (Row row : rows) {
            boolean is = row.learner().equals(learner);
            there |= is;
            changed.add(is ? entered(row, measure, mm) : row);
        }
        if (!there) changed.add(entered(new Row(learner, Map.of()), measure, mm));
        return new RecordFile(scenario, tolerance, gap, changed);
    }

    private static Row entered(Row row, String measure, OptionalDouble mm) {
        Map<String, Double> measured = new LinkedHashMap<>(row.measured());
        if (mm.isPresent()) measured.put(measure, mm.getAsDouble());
        else measured.remove(measure);
        return new Row(row.learner(), measured);
    }

    /** With these learners as well, after those who are there; the same however a name is typed. */
    public RecordFile withAll(List<String> learners) {
        Set<String> there = new HashSet<>();
        for (Row row : rows) there.add(LearnerName.key(row.learner()));
        List<Row> all = new ArrayList<>(rows);
        for (String learner : learners) if (there.add(LearnerName.key(learner))) all.add(new Row(learner, Map.of()));
        return new RecordFile(scenario, tolerance, gap, all);
    }

    public RecordFile without(String learner) {
        return new RecordFile(
                scenario,
                tolerance,
                gap,
                rows.stream().filter(r -> !r.learner().equals(learner)).toList());
    }

    public RecordFile judgedBy(String toleranceId, OptionalDouble gapLimit) {
        return new RecordFile(scenario, toleranceId, gapLimit, rows);
    }

    public static RecordFile read(Path file) throws FileRefused {
        return read(file.toString(), Bytes.read(file));
    }

    /** @param name what messages call the file; a name ending in {@code .csv} is a table's */
    public static RecordFile read(String name, byte[] bytes) throws FileRefused {
        if (name.toLowerCase(Locale.ROOT).endsWith(".csv")) return table(name, bytes);
        Json root = JsonTree.parse(name, Bytes.text(name, bytes), 1);
        Format.RECORD.check(root);
        Fields in = Fields.of(root, "a record (an object)", KNOWN);
        Optional<Json> tolerance = in.get("tolerance");
        List<Row> rows = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (Json item : Values.items(in.need("learners"), "a list of learners", 0)) {
            Fields one = Fields.of(item, "a learner (an object)", List.of(LEARNER, "measured"));
            String learner = Values.line(one.need(LEARNER), LONGEST);
            if (!seen.add(LearnerName.key(learner))) {
                throw one.need(LEARNER).place().refuse("the learner " + Words.quoted(learner) + " is there twice");
            }
            rows.add(new Row(learner, measured(one.need("measured"))));
        }
        if (rows.size() > MOST) throw in.place().refuse("more than " + MOST + " learners");
        return new RecordFile(
                Id.WORD.read(in.need("scenario")),
                tolerance.isPresent() ? Id.WORD.read(tolerance.get()) : "",
                in.has("gap") ? OptionalDouble.of(in.number("gap", Range.SIZE)) : OptionalDouble.empty(),
                rows);
    }

    private static Map<String, Double> measured(Json json) throws FileRefused {
        Map<String, Double> measured = new LinkedHashMap<>();
        for (var member : Fields.object(json, "an object of millimetres by measure")
                .members()
                .entrySet()) {
            if (!Id.MEASURE.matches(member.getKey())) {
                throw member.getValue().name().refuse("no measure is called " + Words.quoted(member.getKey()));
            }
            measured.put(member.getKey(), Values.number(member.getValue().value(), Range.DISTANCE));
        }
        return measured;
    }

    private static RecordFile table(String name, byte[] bytes) throws FileRefused {
        List<Tables.Line> lines = Tables.readEven(name, bytes);
        if (lines.isEmpty() || !lines.get(0).cell(0).equalsIgnoreCase(LEARNER)) {
            throw new FileRefused(name, 1, 0, "", "expected a head whose first column is \"learner\"");
        }
        Tables.Line head = lines.get(0);
        Set<String> titles = new HashSet<>();
        for (int column = 0; column < head.size(); column++) {
            String title = head.cell(column);
            if (!title.isEmpty() && !titles.add(title)) {
                throw new FileRefused(name, head.number(), 0, "", "two columns are called " + Words.quoted(title));
            }
        }
        Set<String> seen = new HashSet<>();
        List<Row> rows = new ArrayList<>();
        for (Tables.Line line : lines.subList(1, lines.size())) {
            String learner = Tables.text(line.cell(0));
            int number = line.number();
            if (learner.isEmpty()) continue;
            if (learner.length() > LONGEST || learner.chars().anyMatch(Character::isISOControl)) {
                throw new FileRefused(name, number, 0, "", "expected a learner's name of 1 to " + LONGEST + " letters");
            }
            if (!seen.add(LearnerName.key(learner))) {
                throw new FileRefused(name, number, 0, "", "the learner " + Words.quoted(learner) + " is there twice");
            }
            rows.add(new Row(learner, measured(name, head, line)));
        }
        if (rows.size() > MOST) throw new FileRefused(name, "more than " + MOST + " learners");
        return new RecordFile("", "", OptionalDouble.empty(), rows);
    }

    private static Map<String, Double> measured(String name, Tables.Line head, Tables.Line line) throws FileRefused {
        Map<String, Double> measured = new LinkedHashMap<>();
        for (int column = 1; column < head.size(); column++) {
            String measure = head.cell(column);
            String text = line.cell(column);
            if (measure.isEmpty() || text.isEmpty()) continue;
            double value = Tables.number(text);
            if (!Range.DISTANCE.contains(value)) {
                String expected = "expected " + Range.DISTANCE.spoken() + ", found " + Words.quoted(text);
                throw new FileRefused(name, line.number(), 0, Words.printable(measure), expected);
            }
            measured.put(measure, value);
        }
        return measured;
    }

    /** Every measure that anybody has, in the order in which they first come. */
    public Collection<String> measures() {
        Set<String> all = new LinkedHashSet<>();
        for (Row row : rows) all.addAll(row.measured().keySet());
        return all;
    }

    /** As JSON. */
    public byte[] bytes() {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("format", Format.RECORD.written());
        out.put("scenario", scenario);
        if (!tolerance.isEmpty()) out.put("tolerance", tolerance);
        if (gap.isPresent()) out.put("gap", gap.getAsDouble());
        out.put(
                "learners",
                rows.stream()
                        .map(r -> ScenarioWriter.pair(LEARNER, r.learner(), "measured", r.measured()))
                        .toList());
        return JsonText.pretty(out).getBytes(StandardCharsets.UTF_8);
    }

    /** As a table to fill in or to take elsewhere. @param measures the columns */
    public byte[] csv(List<String> measures) {
        List<List<?>> table = new ArrayList<>();
        List<Object> head = new ArrayList<>(List.of(LEARNER));
        head.addAll(measures);
        table.add(head);
        for (Row row : rows) {
            List<Object> line = new ArrayList<>(List.of(Tables.plain(row.learner())));
            for (String measure : measures) {
                OptionalDouble value = row.of(measure);
                line.add(value.isPresent() ? JsonText.number(value.getAsDouble()) : "");
            }
            table.add(line);
        }
        return Tables.csv(table);
    }
}
