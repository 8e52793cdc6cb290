package org.marktwice.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.marktwice.classroom.Attempted;
import org.marktwice.classroom.Attempted.Score;
import org.marktwice.classroom.ItemStatistics;
import org.marktwice.classroom.Results;
import org.marktwice.classroom.Results.Item;
import org.marktwice.classroom.Results.Row;
import org.marktwice.classroom.Results.SlipCount;
import org.marktwice.classroom.ResultsExport;
import org.marktwice.files.FileRefused;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** A class's results. */
@Command(
        name = "results",
        description = {
            "Marks a folder of attempts and tells the class's results.",
            "It tells learners and their marks, which rules were hard and which told learners apart, and the "
                    + "slips by how many made them."
        },
        footer = {
            "",
            "Exit 0: done; files that can't be marked are listed. 2: the scenario or the folder can't be read.",
            "",
            "--json writes one object; marks are unrounded, shares run from 0 to 1:",
            "  title",
            "  learners[]    learner, marks, outOf, share, tries, files[] (those that count),",
            "                rules: by id, marks and outOf; absent where the rule had nothing to judge",
            "  rules[], exercises[]   id, title, learners (to whom it was put), facility (share reached),",
            "                discrimination (correlation with the rest of the marks; null where there is none)",
            "  slips[]       rule, title, verdict (wrong, open), key, learners[], of, lost, example;",
            "                by how many made them",
            "  reliability   alpha (Cronbach's, null where there is none), over so many rules and learners",
            "  distribution  mean, sd, median, quartiles [lower, upper], tenths[10]; of the shares",
            "  attempts[]    every one that was marked, once: learner, scenario, started, state, marks, outOf, file",
            "  progress[]    of learners who tried an exercise more than once: learner, scenario, shares[] in the order",
            "                of the attempts, gained",
            "  repeats[]     file, of: holds once more, or not yet as far, the attempt that counts",
            "  leftOut[]     file, state, reason",
            "  missing[]     learners of a class set of whom nothing could be marked"
        })
final class ClassResultsCommand implements Callable<Integer> {
    private final Console console;

    @Mixin
    private final FolderMarking marking = new FolderMarking();

    @Mixin
    private final CountingOption counting = new CountingOption();

    @Option(
            names = "--out",
            paramLabel = "FILE",
            description =
                    "write the tables to FILE as well (*.csv: learners and rules; *.xlsx: everything); may be repeated")
    private List<Path> out = new ArrayList<>();

    ClassResultsCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws FileRefused, InterruptedException {
        Results results = marking.results(console, counting.counting());
        for (Path file : out) ResultsExport.write(results, file);
        if (marking.json) console.json(answer(results));
        else console.line(ResultsText.of(results));
        return Exit.DONE;
    }

    private static Map<String, @Nullable Object> answer(Results results) {
        Results.Reliability reliability = results.reliability();
        return Fields.with("title", results.title())
                .and(
                        "learners",
                        results.rows().stream().map(ClassResultsCommand::row).toList())
                .and(
                        "rules",
                        results.rules().stream().map(ClassResultsCommand::item).toList())
                .and(
                        "exercises",
                        results.exercises().stream()
                                .map(ClassResultsCommand::item)
                                .toList())
                .and(
                        "slips",
                        results.slips().stream().map(ClassResultsCommand::slip).toList())
                .and(
                        "reliability",
                        new Fields()
                                .orNull("alpha", number(reliability.alpha()))
                                .and("rules", reliability.rules())
                                .and("learners", reliability.learners())
                                .map())
                .and("distribution", distribution(results))
                .and(
                        "attempts",
                        results.attempts().stream()
                                .map(ClassResultsCommand::attempt)
                                .toList())
                .and(
                        "progress",
                        results.progress().stream()
                                .map(ClassResultsCommand::progress)
                                .toList())
                .and(
                        "repeats",
                        results.repeats().stream()
                                .map(r -> Fields.with("file", r.file())
                                        .and("of", r.of())
                                        .map())
                                .toList())
                .and(
                        "leftOut",
                        results.leftOut().stream()
                                .map(f -> Fields.with("file", f.file())
                                        .and("state", f.state().id())
                                        .and("reason", f.reason())
                                        .map())
                                .toList())
                .and("missing", results.missing())
                .map();
    }

    private static Map<String, @Nullable Object> row(Row row) {
        Map<String, Object> rules = new LinkedHashMap<>();
        row.scores()
                .forEach((rule, score) ->
                        rules.put(rule, score(new Fields(), score).map()));
        return score(Fields.with("learner", row.learner()), row.total())
                .orNull("share", number(row.total().share()))
                .and("tries", row.tries())
                .and("files", row.counted().stream().map(Attempted::file).toList())
                .and("rules", rules)
                .map();
    }

    private static Fields score(Fields fields, Score score) {
        return fields.and("marks", score.marks()).and("outOf", score.outOf());
    }

    private static Map<String, @Nullable Object> item(Item item) {
        return Fields.with("id", item.id())
                .and("title", item.title())
                .and("learners", item.learners())
                .orNull("facility", number(item.facility()))
                .orNull("discrimination", number(item.discrimination()))
                .map();
    }

    private static Map<String, @Nullable Object> slip(SlipCount slip) {
        return Fields.with("rule", slip.rule())
                .and("title", slip.title())
                .and("verdict", slip.verdict().id())
                .and("key", slip.key())
                .and("learners", slip.learners())
                .and("of", slip.of())
                .and("lost", slip.lost())
                .and("example", slip.example())
                .map();
    }

    private static Map<String, @Nullable Object> distribution(Results results) {
        double[] shares = results.shares();
        return new Fields()
                .orNull("mean", number(ItemStatistics.mean(shares)))
                .orNull("sd", number(Math.sqrt(ItemStatistics.variance(shares))))
                .orNull("median", number(ItemStatistics.quantile(shares, 0.5)))
                .and(
                        "quartiles",
                        shares.length == 0
                                ? List.of()
                                : List.of(ItemStatistics.quantile(shares, 0.25), ItemStatistics.quantile(shares, 0.75)))
                .and("tenths", results.distribution())
                .map();
    }

    private static Map<String, @Nullable Object> attempt(Attempted attempted) {
        Fields fields = Fields.with("learner", attempted.learner())
                .and("scenario", attempted.scenario())
                .and("started", attempted.started())
                .and("state", attempted.state().id());
        return score(fields, attempted.total()).and("file", attempted.file()).map();
    }

    private static Map<String, @Nullable Object> progress(Results.Progress progress) {
        return Fields.with("learner", progress.learner())
                .and("scenario", progress.exercise())
                .and(
                        "shares",
                        progress.shares().stream()
                                .map(ClassResultsCommand::number)
                                .toList())
                .orNull("gained", number(progress.gained()))
                .map();
    }

    private static @Nullable Double number(double value) {
        return Double.isNaN(value) ? null : value;
    }

    private static @Nullable Double number(OptionalDouble value) {
        return value.isPresent() ? value.getAsDouble() : null;
    }
}
