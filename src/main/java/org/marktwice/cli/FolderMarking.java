package org.marktwice.cli;

import java.lang.reflect.InvocationTargetException;
import java.nio.file.Path;
import java.util.function.Consumer;
import org.marktwice.classroom.BulkMarking;
import org.marktwice.classroom.ExerciseSet;
import org.marktwice.classroom.Marked;
import org.marktwice.classroom.Marker;
import org.marktwice.classroom.Results;
import org.marktwice.files.FileRefused;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What the commands that mark a folder are told, and the marking itself with its progress. */
final class FolderMarking {
    @Parameters(
            index = "0",
            paramLabel = "SCENARIO",
            description = "the scenario (*.scenario.json), or a folder of variants")
    private Path scenarioFile = Path.of("");

    @Parameters(index = "1", paramLabel = "DIR", description = "the folder of attempts; folders in it are looked into")
    private Path folder = Path.of("");

    @Option(names = "--json", description = "write the result as JSON, as described below")
    boolean json;

    @Option(
            names = "--even-if-changed",
            description =
                    "mark attempts at an earlier version of the scenario on the present one, where that can be done")
    private boolean evenIfChanged;

    @Option(names = "--progress", description = "show the progress on standard error, even where it is no terminal")
    private boolean progress;

    ExerciseSet set() throws FileRefused {
        return ExerciseSet.read(scenarioFile);
    }

    BulkMarking files() throws FileRefused {
        return BulkMarking.of(folder);
    }

    void run(Console console, ExerciseSet set, BulkMarking files, Consumer<Marked> sink) throws InterruptedException {
        boolean shown = progress || atTerminal();
        int threads = Runtime.getRuntime().availableProcessors();
        try {
            files.run(new Marker(set, evenIfChanged), threads, sink, shown ? told(console) : BulkMarking.Progress.NONE);
        } finally {
            if (shown) console.progress("");
        }
    }

    /** The whole folder marked and summed up. */
    Results results(Console console, Results.Counting counting) throws FileRefused, InterruptedException {
        ExerciseSet set = set();
        Results.Collector collector = new Results.Collector(set);
        run(console, set, files(), collector);
        return collector.results(counting);
    }

    private static BulkMarking.Progress told(Console console) {
        return (done, of) -> {
            if (done == of || done % Math.max(1, of / 200) == 0) console.progress("marked " + done + " of " + of);
        };
    }

    /** From Java 22 on there is always a console, and it has to be asked whether it is a terminal. */
    static boolean atTerminal() {
        java.io.Console console = System.console();
        if (console == null) return false;
        try {
            return (Boolean) java.io.Console.class.getMethod("isTerminal").invoke(console);
        } catch (NoSuchMethodException e) {
            return true;
        } catch (IllegalAccessException | InvocationTargetException e) {
            return false;
        }
    }
}
