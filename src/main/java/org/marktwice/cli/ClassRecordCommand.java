package org.marktwice.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.marktwice.classroom.BulkMarking;
import org.marktwice.classroom.ClassList;
import org.marktwice.classroom.ExerciseSet;
import org.marktwice.classroom.JobRecord;
import org.marktwice.classroom.JobRecord.Beside;
import org.marktwice.classroom.JobRecord.Job;
import org.marktwice.classroom.Marker;
import org.marktwice.classroom.Measure;
import org.marktwice.classroom.Results;
import org.marktwice.files.FileRefused;
import org.marktwice.files.RecordFile;
import org.marktwice.files.Save;
import org.marktwice.fit.Tolerances;
import org.marktwice.print.Page;
import org.marktwice.print.Paper;
import org.marktwice.print.RecordSheets;
import org.marktwice.print.SheetFile;
import org.marktwice.scenario.Scenario;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The finished jobs of a class against the drawing. */
@Command(
        name = "record",
        description = {
            "Judges what the finished jobs of a class measured against the drawing.",
            "Overall sizes, places, diagonals and gaps are each in a band: good within half the limit, fair "
                    + "within it, poor beyond. With --attempts it sets the practice marks beside them. With --class and "
                    + "no RECORD it begins an empty record to fill in, in a file or on paper."
        },
        footer = {
            "",
            "RECORD is a table (*.csv): a line a learner, a column a measure, empty where nothing was measured; or JSON",
            "(*.record.json, see scenarios/schema/record.schema.json). Measures: across, deep, high; place-PART;",
            "diagonal-1-a and diagonal-1-b …, of which the difference counts; gap-JOINT. What there is on this job stands",
            "in the head of an empty record, which is never begun over a file that is there. On paper an empty cell is",
            "room to write in: an empty record is a blank for the bench, one filled in has its bands, and with",
            "--attempts the practice marks.",
            "",
            "Exit 0: done. 2: a file can't be read, or has a measure that this job hasn't.",
            "",
            "--json writes one object; millimetres, shares from 0 to 1:",
            "  scenario, tolerance, gap",
            "  measures[]  id, kind (size, place, diagonal, gap), title, drawn",
            "  jobs[]      learner, share, good, fair, poor (how many), judged[] of id, off, limit, band",
            "  class[]     id, jobs, mean, sd (of what they are out by), good, fair, poor",
            "  practice    (with --attempts) pairs[] of learner, practice, bench; correlation; onlyPractice[], onlyBench[]"
        })
final class ClassRecordCommand implements Callable<Integer> {
    private final Console console;

    @CommandLine.Spec
    CommandLine.Model.@Nullable CommandSpec spec;

    @Parameters(index = "0", paramLabel = "SCENARIO", description = "the job (*.scenario.json)")
    private Path scenarioFile = Path.of("");

    @Parameters(index = "1", arity = "0..1", paramLabel = "RECORD", description = "the record (*.csv, *.record.json)")
    private @Nullable Path recordFile;

    @Option(
            names = "--class",
            paramLabel = "LIST.csv",
            description = "begin an empty record for the learners of a list")
    private @Nullable Path list;

    @Option(names = "--attempts", paramLabel = "DIR", description = "a folder of attempts to set beside")
    private @Nullable Path attempts;

    @Option(
            names = "--set",
            paramLabel = "DIR",
            description = "the class set on which these attempts were made, where it was not SCENARIO itself")
    private @Nullable Path set;

    @Option(
            names = "--tolerance",
            paramLabel = "ID",
            description =
                    "strict, standard, first-attempt, iso-2768-f, -m, -c or -v (default: the record's, else the exercise's)")
    private @Nullable String tolerance;

    @Option(
            names = "--gap",
            paramLabel = "MM",
            description = "the limit of a gap (default: the record's, else the exercise's)")
    private @Nullable Double gap;

    @Option(
            names = "--out",
            paramLabel = "FILE",
            description =
                    "write the record to FILE as well (*.csv or *.record.json), or print it (*.pdf, *.svg, *.png); may be repeated")
    private List<Path> out = new ArrayList<>();

    @Option(names = "--each", description = "print a sheet for each learner, not one table of the class")
    private boolean each;

    @Option(
            names = "--paper",
            paramLabel = "PAPER",
            converter = PaperConverter.class,
            description = "for what is printed: a4 (if nothing is said) or letter")
    private Paper paper = Paper.A4;

    @Option(names = "--json", description = "write the result as JSON, as described below")
    private boolean json;

    ClassRecordCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws FileRefused, InterruptedException {
        Scenario scenario = Inputs.scenario(scenarioFile);
        RecordFile file = file(scenario);
        JobRecord record = JobRecord.of(scenario, file, String.valueOf(recordFile));
        for (Path one : out) check(one);
        Beside beside = attempts == null ? null : record.beside(practice(attempts));
        for (Path one : out) write(one, file, record, beside);
        if (json) console.json(answer(record, beside));
        else console.line(RecordText.of(record, beside));
        return Exit.DONE;
    }

    private RecordFile file(Scenario scenario) throws FileRefused {
        RecordFile file;
        if (recordFile != null) {
            if (list != null) throw wrong("--class begins a record; there is one already");
            file = RecordFile.read(recordFile);
        } else if (list != null) {
            file = RecordFile.blank(scenario.id(), ClassList.read(list).learners());
        } else {
            throw wrong("expected a RECORD, or --class LIST.csv to begin one");
        }
        if (tolerance != null && Tolerances.preset(tolerance).isEmpty()) throw wrong(noTolerances(tolerance));
        if (set != null && attempts == null) throw wrong("--set: expected --attempts as well");
        if (gap != null && !(gap > 0 && gap <= 100)) throw wrong("--gap: expected a number above 0 up to 100");
        RecordFile named = new RecordFile(scenario.id(), file.tolerance(), file.gap(), file.rows());
        if (!file.scenario().isEmpty()) named = file;
        return named.judgedBy(
                tolerance == null ? file.tolerance() : tolerance, gap == null ? file.gap() : OptionalDouble.of(gap));
    }

    private static String noTolerances(String found) {
        return "--tolerance: expected one of "
                + Tolerances.presets().stream().map(Tolerances::id).collect(Collectors.joining(", ")) + ", found \""
                + found + "\"";
    }

    private CommandLine.ParameterException wrong(String why) {
        return WrongUse.of(spec, why);
    }

    private void check(Path to) throws FileRefused {
        if (SheetFile.named(to).isPresent()) return;
        if (isTable(to) || isJson(to)) {
            if (recordFile != null || !Files.exists(to)) return;
            throw new FileRefused(
                    to.toString(),
                    "there is a file already, and it is left as it is: give it as RECORD to go on with it, or name another");
        }
        throw new FileRefused(
                to.toString(),
                "expected a file *.csv or *.record.json to write to, or *.pdf, *.svg or *.png to print to");
    }

    private static boolean isTable(Path to) {
        return to.toString().toLowerCase(Locale.ROOT).endsWith(".csv");
    }

    private static boolean isJson(Path to) {
        return to.toString().toLowerCase(Locale.ROOT).endsWith(".json");
    }

    private void write(Path to, RecordFile file, JobRecord record, @Nullable Beside beside) throws FileRefused {
        if (isTable(to)) {
            Save.whole(to, file.csv(record.measures().stream().map(Measure::id).toList()));
        } else if (isJson(to)) {
            Save.whole(to, file.bytes());
        } else {
            List<Page> pages = each
                    ? RecordSheets.each(record, file, beside, paper)
                    : RecordSheets.table(record, file, beside, paper);
            SheetFile.save(to, pages, "Finished jobs: " + record.scenario().title());
        }
    }

    private Results practice(Path folder) throws FileRefused, InterruptedException {
        ExerciseSet exercises = ExerciseSet.read(set == null ? scenarioFile : set);
        Results.Collector collector = new Results.Collector(exercises);
        BulkMarking.of(folder)
                .run(
                        new Marker(exercises, false),
                        Runtime.getRuntime().availableProcessors(),
                        collector,
                        BulkMarking.Progress.NONE);
        return collector.results(Results.Counting.LAST);
    }

    private static Map<String, @Nullable Object> answer(JobRecord record, @Nullable Beside beside) {
        Fields fields = Fields.with("scenario", record.scenario().id())
                .and("tolerance", record.tolerances().id())
                .and("gap", record.gap())
                .and(
                        "measures",
                        record.measures().stream()
                                .map(m -> Fields.with("id", m.id())
                                        .and("kind", m.kind().name().toLowerCase(Locale.ROOT))
                                        .and("title", m.title())
                                        .and("drawn", m.drawn())
                                        .map())
                                .toList())
                .and("jobs", record.jobs().stream().map(ClassRecordCommand::job).toList())
                .and(
                        "class",
                        record.columns().stream()
                                .map(ClassRecordCommand::column)
                                .toList());
        if (beside != null) fields.and("practice", beside(beside));
        return fields.map();
    }

    private static Map<String, @Nullable Object> job(Job job) {
        return Fields.with("learner", job.learner())
                .orNull("share", number(job.share()))
                .and("good", job.count(JobRecord.Band.GOOD))
                .and("fair", job.count(JobRecord.Band.FAIR))
                .and("poor", job.count(JobRecord.Band.POOR))
                .and(
                        "judged",
                        job.judged().stream()
                                .map(j -> Fields.with("id", j.id())
                                        .and("off", j.off())
                                        .and("limit", j.limit())
                                        .and("band", j.band().id())
                                        .map())
                                .toList())
                .map();
    }

    private static Map<String, @Nullable Object> column(JobRecord.Column column) {
        return Fields.with("id", column.id())
                .and("jobs", column.jobs())
                .and("mean", column.mean())
                .orNull("sd", number(column.deviation()))
                .and("good", column.good())
                .and("fair", column.fair())
                .and("poor", column.poor())
                .map();
    }

    private static Map<String, @Nullable Object> beside(Beside beside) {
        OptionalDouble r = beside.correlation();
        return Fields.with(
                        "pairs",
                        beside.pairs().stream()
                                .map(p -> Fields.with("learner", p.learner())
                                        .orNull("practice", number(p.practice()))
                                        .and("bench", p.bench())
                                        .map())
                                .toList())
                .orNull("correlation", r.isPresent() ? r.getAsDouble() : null)
                .and("onlyPractice", beside.onlyPractice())
                .and("onlyBench", beside.onlyBench())
                .map();
    }

    private static @Nullable Double number(double value) {
        return Double.isNaN(value) ? null : value;
    }
}
