package org.marktwice.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import org.marktwice.files.FileRefused;
import org.marktwice.print.Issue;
import org.marktwice.print.Page;
import org.marktwice.print.SheetFile;
import org.marktwice.print.SheetKind;
import org.marktwice.print.Sheets;
import org.marktwice.scenario.Scenario;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.TypeConversionException;

/** Sheets of paper for an exercise. */
@Command(
        name = "print",
        description = {
            "Writes the sheets of an exercise to a file, to be handed out.",
            "These are the working drawing, parts list, worksheet, answer sheet, rule book, cautions and record "
                    + "sheet, in this order, numbered through."
        },
        footer = {
            "",
            "The worksheet shows the boards unrolled, to be marked in pencil, and holds no answers. On A4 the drawing",
            "is in first angle, on letter in third. Sheets bear no date; with --date the drawing and parts list do. An",
            "old file of that name is replaced; SVG and PNG, which hold one page, get them one under another.",
            "",
            "Exit 0: written. 2: SCENARIO can't be read, or OUT can't be written.",
            "",
            "--json writes one object:",
            "  scenario, file, paper.paper(), sheets[] (kinds), pages (how many)"
        })
final class PrintCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(paramLabel = "SCENARIO", description = "the scenario (*.scenario.json)")
    private Path file = Path.of("");

    @Option(
            names = "--out",
            required = true,
            paramLabel = "OUT",
            description = "the file to write (.pdf, .svg or .png)")
    private Path out = Path.of("");

    @Option(
            names = "--sheet",
            paramLabel = "KIND",
            arity = "1..*",
            converter = KindConverter.class,
            description =
                    "drawing, parts, worksheet, answers, rules, cautions, record; more than one may be named; if none is, all")
    private List<SheetKind> kinds = new ArrayList<>();

    @Mixin
    private final PaperOption paper = new PaperOption();

    @Option(
            names = "--date",
            paramLabel = "DATE",
            description = "date of issue of the drawing, as it is to be written, or today")
    private String date = "";

    @Option(names = "--by", paramLabel = "NAME", description = "who drew it")
    private String by = "";

    @Option(names = "--owner", paramLabel = "NAME", description = "the school or workshop")
    private String owner = "";

    @Option(names = "--json", description = "write what was made as JSON, as described below")
    private boolean json;

    PrintCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws FileRefused {
        SheetFile.check(out);
        Scenario scenario = Inputs.scenario(file);
        Set<SheetKind> wanted = kinds.isEmpty() ? EnumSet.allOf(SheetKind.class) : EnumSet.copyOf(kinds);
        List<Page> pages = Sheets.of(scenario, wanted, paper.paper(), issue());
        SheetFile.save(out, pages, scenario.title());
        if (json) {
            console.json(Fields.with("scenario", scenario.id())
                    .and("file", out.toString())
                    .and("paper", paper.paper().id())
                    .and("sheets", wanted.stream().map(SheetKind::id).toList())
                    .and("pages", pages.size())
                    .map());
        } else {
            console.line(out + ": " + Text.count(pages.size(), "page", "pages"));
        }
        return Exit.DONE;
    }

    /** The clock is asked only where today is asked for. */
    private Issue issue() {
        boolean today = date.strip().equalsIgnoreCase("today");
        return new Issue(
                owner, by, today ? LocalDate.now(ZoneId.systemDefault()).toString() : date);
    }

    /** A kind of sheet by its id. */
    static final class KindConverter implements ITypeConverter<SheetKind> {
        @Override
        public SheetKind convert(String text) {
            return SheetKind.of(text)
                    .orElseThrow(() -> new TypeConversionException(
                            "expected drawing, parts, worksheet, answers, rules, cautions or record, found \"" + text
                                    + "\""));
        }
    }
}
