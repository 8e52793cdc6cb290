package org.marktwice.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.marktwice.bench.CannotDo;
import org.marktwice.feedback.Replayed;
import org.marktwice.files.AttemptFile;
import org.marktwice.files.FileRefused;
import org.marktwice.print.Paper;
import org.marktwice.print.html.ReplayFile;
import org.marktwice.scenario.Scenario;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** An attempt to be handed on: as a page to step through, or as its mark sheet on paper. */
@Command(
        name = "replay",
        description = {
            "Writes a marked attempt to a file, to be handed on.",
            "With a name that ends in .html it is a page for a browser, with every step, the board as it was, the model",
            "answer beside it and the mark sheet; in .pdf, .svg or .png the mark sheet for paper."
        },
        footer = {
            "",
            "The page needs nothing but itself: it can be mailed, and opens without a network. It bears no date but that",
            "of the attempt. An old file of that name is replaced once the new one is whole.",
            "",
            "Exit 0: written. 2: a file can't be read, doesn't fit the other, or OUT can't be written.",
            "",
            "--json writes one object:",
            "  scenario, learner, file, marks, outOf, steps (how many)",
            "  pages         how many sheets of paper; 0 for a page in a browser"
        })
final class ReplayCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(index = "0", paramLabel = "SCENARIO", description = "the scenario (*.scenario.json)")
    private Path scenarioFile = Path.of("");

    @Parameters(index = "1", paramLabel = "ATTEMPT", description = "the attempt at it (*.attempt.jsonl)")
    private Path attemptFile = Path.of("");

    @Option(
            names = "--out",
            required = true,
            paramLabel = "OUT",
            description = "the file to write (.html; .pdf, .svg or .png)")
    private Path out = Path.of("");

    @Option(
            names = "--paper",
            paramLabel = "PAPER",
            converter = PaperConverter.class,
            description = "for a mark sheet: a4 (if nothing is said) or letter")
    private Paper paper = Paper.A4;

    @Option(names = "--json", description = "write what was made as JSON, as described below")
    private boolean json;

    ReplayCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws FileRefused, CannotDo {
        ReplayFile.check(out);
        Scenario scenario = Inputs.scenario(scenarioFile);
        AttemptFile attempt = Inputs.attempt(attemptFile, scenario).file();
        Replayed replayed = Replayed.of(scenario, attempt.attempt(), attempt.notices());
        int pages = ReplayFile.save(out, replayed, paper);
        int steps = replayed.steps().last();
        if (json) {
            console.json(Fields.with("scenario", scenario.id())
                    .and("learner", attempt.attempt().learner())
                    .and("file", out.toString())
                    .and("marks", replayed.sheet().sheet().marks())
                    .and("outOf", replayed.sheet().sheet().outOf())
                    .and("steps", steps)
                    .and("pages", pages)
                    .map());
        } else {
            console.line(out + ": "
                    + (pages == 0 ? Text.count(steps, "step", "steps") : Text.count(pages, "page", "pages")));
        }
        return Exit.DONE;
    }
}
