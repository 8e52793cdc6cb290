package org.marktwice.cli;

import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.marktwice.classroom.Results;
import org.marktwice.classroom.Reteach;
import org.marktwice.classroom.Reteach.Point;
import org.marktwice.files.FileRefused;
import org.marktwice.print.ReteachSheet;
import org.marktwice.print.SheetFile;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What to reteach tomorrow, on one page. */
@Command(
        name = "reteach",
        description = {
            "Marks a folder of attempts and writes one page: what to teach again tomorrow.",
            "It says to whom, and how it shows at the bench. At most five points, each made by one learner in "
                    + "five or more."
        },
        footer = {
            "",
            "Exit 0: done. 2: the scenario or the folder can't be read.",
            "",
            "--json writes one object:",
            "  title, learners (how many)",
            "  points[]   rule, title, why, instead, safety, learners[] who slipped, of, canShow[],",
            "             slips[] of key, learners[], example",
            "  sure[]     titles of the rules that nearly everyone keeps",
            "  help[]     learners more than a fifth of the marks below the median"
        })
final class ClassReteachCommand implements Callable<Integer> {
    private final Console console;

    @Mixin
    private final FolderMarking marking = new FolderMarking();

    @Mixin
    private final CountingOption counting = new CountingOption();

    @Option(
            names = "--out",
            paramLabel = "FILE",
            description = "write the page to FILE (*.pdf, *.svg or *.png) as well")
    private @Nullable Path out;

    @Mixin
    private final PaperOption paper = new PaperOption();

    ClassReteachCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws FileRefused, InterruptedException {
        Results results = marking.results(console, counting.counting());
        Reteach reteach = Reteach.of(results);
        if (out != null) {
            SheetFile.save(out, ReteachSheet.of(results, reteach, paper.paper()), "To teach again: " + results.title());
        }
        if (marking.json) console.json(answer(results, reteach));
        else console.line(ReteachText.of(results, reteach));
        return Exit.DONE;
    }

    private static Map<String, @Nullable Object> answer(Results results, Reteach reteach) {
        return Fields.with("title", results.title())
                .and("learners", results.rows().size())
                .and(
                        "points",
                        reteach.points().stream()
                                .map(ClassReteachCommand::point)
                                .toList())
                .and("sure", reteach.sure())
                .and("help", reteach.help())
                .map();
    }

    private static Map<String, @Nullable Object> point(Point point) {
        return Fields.with("rule", point.rule())
                .and("title", point.texts().title())
                .and("why", point.texts().why())
                .and("instead", point.texts().instead())
                .and("safety", point.texts().safety())
                .and("learners", point.learners())
                .and("of", point.of())
                .and("canShow", point.canShow())
                .and(
                        "slips",
                        point.slips().stream()
                                .map(s -> Fields.with("key", s.key())
                                        .and("learners", s.learners())
                                        .and("example", s.example())
                                        .map())
                                .toList())
                .map();
    }
}
