package org.marktwice.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.marktwice.classroom.Marked;
import org.marktwice.files.FileRefused;
import org.marktwice.print.Page;
import org.marktwice.print.SheetFile;
import org.marktwice.print.Sheets;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The mark sheets of a class in one file. */
@Command(
        name = "sheets",
        description = {
            "Marks a folder of attempts and writes a mark sheet for each to one file, to be printed and handed back.",
            "Each learner's sheets are numbered by themselves."
        },
        footer = {
            "",
            "Exit 0: written; files that can't be marked are listed. 1: none could be marked, and nothing was written.",
            "2: the scenario or the folder can't be read, or OUT can't be written.",
            "",
            "--json writes one object:",
            "  file, pages (how many), sheets[] of learner, file; leftOut[] of file, state, reason"
        })
final class ClassSheetsCommand implements Callable<Integer> {
    private final Console console;

    @Mixin
    private final FolderMarking marking = new FolderMarking();

    @Option(
            names = "--out",
            required = true,
            paramLabel = "OUT",
            description = "the file to write (.pdf, .svg or .png)")
    private Path out = Path.of("");

    @Mixin
    private final PaperOption paper = new PaperOption();

    ClassSheetsCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws FileRefused, InterruptedException {
        SheetFile.check(out);
        List<Marked> all = new ArrayList<>();
        marking.run(console, marking.set(), marking.files(), all::add);
        List<Marked> sheets = all.stream().filter(m -> m.sheet().isPresent()).toList();
        List<Marked> leftOut = all.stream().filter(m -> m.sheet().isEmpty()).toList();
        List<Page> pages = Sheets.marks(sheets, paper.paper());
        if (!pages.isEmpty()) SheetFile.save(out, pages, "Mark sheets");
        if (marking.json) json(sheets, leftOut, pages.size());
        else text(sheets, leftOut, pages.size());
        return pages.isEmpty() ? Exit.NO : Exit.DONE;
    }

    private void text(List<Marked> sheets, List<Marked> leftOut, int pages) {
        if (pages == 0) console.line("no attempt could be marked; nothing was written");
        else {
            console.line(out + ": " + Text.count(sheets.size(), "mark sheet", "mark sheets") + " on "
                    + Text.count(pages, "page", "pages"));
        }
        for (Marked one : leftOut) {
            console.line(
                    Text.wrapped("left out  ", one.file() + ": " + one.state().spoken() + ": " + one.reason()));
        }
    }

    private void json(List<Marked> sheets, List<Marked> leftOut, int pages) {
        console.json(Fields.with("file", out.toString())
                .and("pages", pages)
                .and(
                        "sheets",
                        sheets.stream()
                                .map(m -> Fields.with("learner", m.learner())
                                        .and("file", m.file())
                                        .map())
                                .toList())
                .and(
                        "leftOut",
                        leftOut.stream()
                                .map(m -> Fields.with("file", m.file())
                                        .and("state", m.state().id())
                                        .and("reason", m.reason())
                                        .map())
                                .toList())
                .map());
    }
}
