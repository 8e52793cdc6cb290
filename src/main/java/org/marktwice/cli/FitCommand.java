package org.marktwice.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.marktwice.bench.Bench;
import org.marktwice.files.AttemptFile;
import org.marktwice.files.FileRefused;
import org.marktwice.fit.DryFit;
import org.marktwice.fit.Hand;
import org.marktwice.fit.Tools;
import org.marktwice.print.FitReport;
import org.marktwice.print.Paper;
import org.marktwice.print.SheetFile;
import org.marktwice.rulebook.FitLimits;
import org.marktwice.rulebook.FitSheet;
import org.marktwice.scenario.Practice;
import org.marktwice.scenario.Scenario;
import org.marktwice.timber.Climate;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The job put together dry. */
@Command(
        name = "fit",
        description = "Puts the job together dry and says how it comes out.",
        footer = {
            "",
            "The boards are cut to the lines on them. Each joint is told: whether it meets, on which side and hand, and",
            "by how much it gapes or clashes; then the overall sizes, the diagonals and the flush faces, and where each",
            "figure comes from.",
            "",
            "NAME is drawing (the drawing's own, if nothing is said), strict, standard, first-attempt, or a class of",
            "ISO 2768-1: iso-2768-f, iso-2768-m, iso-2768-c, iso-2768-v. Gaps are judged by the drawing's limit.",
            "ROOM is a temperature and a relative humidity, such as 21.1C,50%%: the job once settled there.",
            "SEED is a whole number: the lines as a careful hand strikes them, which reads the rule to 0.2 mm and",
            "strikes to 0.1 mm; the same errors come with the same number.",
            "OUT gets the job together and apart, what was judged, and how the sizes add up, on sheets of paper.",
            "",
            "Exit 0: it goes together, within the tolerances. 1: it doesn't, or not everything is set out.",
            "2: a file can't be read or doesn't fit the other, a NAME, ROOM or SEED is none, or OUT can't be written.",
            "",
            "--json writes one object; figures are unrounded, lengths in millimetres:",
            "  scenario, learner, goesTogether, whole (whether everything is set out), says",
            "  tolerances    id, title, gap (limit of gaps, clashes and steps)",
            "  room          (with --room) celsius, humidity, moisture; hand (with --hand): its number",
            "  missing[]     what is still to be done before the job can be put together, in words",
            "  joints[]      joint, kind, in, takes, state (no-board, not-set-out, wrong-side, together), verdict, says;",
            "                where it is together: off (along the board that is farther out), gap, clash,",
            "                seats[] of axis, kind (touches, pegged), tight, wide (below 0 where they clash), hidden",
            "  sizes[]       axis, drawn, made, off, limit, verdict, says; stack where one leads through the job:",
            "    links[]       part, of (length, width, thickness, shoulder, gauged), size, plusMinus, sign",
            "    worst, likely ± the sum, and ± the root of the sum of squares",
            "    trial         jobs, seed, mean, deviation, within: the share of the jobs within the limit",
            "  diagonals[]   first, second, one, other, difference, limit, verdict, says",
            "  flush[]       joint, looks, one, other, step (how far the other stands out), limit, verdict, says",
            "  parts[]       part, board, moved [across, deep, high], wider, thicker (by the room)",
            "  Each joint, size and step has causes[] of board, step (the action; left out for the board's own size),",
            "  mm, says: the largest first."
        })
final class FitCommand implements Callable<Integer> {
    private final Console console;

    @Spec
    @Nullable
    CommandSpec spec;

    @Parameters(index = "0", paramLabel = "SCENARIO", description = "the scenario (*.scenario.json)")
    private Path scenarioFile = Path.of("");

    @Parameters(index = "1", paramLabel = "ATTEMPT", description = "the attempt at it (*.attempt.jsonl)")
    private Path attemptFile = Path.of("");

    @Option(names = "--tolerances", paramLabel = "NAME", description = "what it is judged by")
    private String tolerances = FitLimits.DRAWING;

    @Option(
            names = "--room",
            paramLabel = "ROOM",
            converter = RoomConverter.class,
            description = "the job once it has settled in this room")
    private @Nullable Climate room;

    @Option(names = "--hand", paramLabel = "SEED", description = "the lines as a careful hand strikes them")
    private @Nullable Long hand;

    @Option(names = "--json", description = "write the result as JSON, as described below")
    private boolean json;

    @Option(names = "--out", paramLabel = "OUT", description = "write it as pictures and tables (.pdf, .svg or .png)")
    private @Nullable Path out;

    @Option(
            names = "--paper",
            paramLabel = "PAPER",
            converter = PaperConverter.class,
            description = "with --out: a4 (if nothing is said) or letter")
    private Paper paper = Paper.A4;

    FitCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws FileRefused {
        Path picture = out;
        if (picture != null) SheetFile.check(picture);
        Scenario scenario = Inputs.scenario(scenarioFile);
        FitLimits limits = limits(scenario.practice());
        AttemptFile.Opened opened = Inputs.attempt(attemptFile, scenario);
        Bench bench = opened.bench();
        Long seed = hand;
        DryFit made = DryFit.of(bench, seed == null ? Hand.EXACT : Hand.careful(seed), Tools.TRUE);
        Climate in = room;
        FitSheet sheet = FitSheet.of(bench, in == null ? made : made.in(in), limits);
        FitText text = new FitText(sheet, opened, in, seed);
        if (picture != null) {
            FitReport report =
                    new FitReport(bench, sheet, opened.file().attempt().learner(), text.conditions());
            SheetFile.save(picture, report.pages(paper), scenario.title() + ", dry fit");
        }
        if (json) console.json(new FitJson(sheet, opened, in, seed).answer());
        else console.line(text.all());
        return sheet.goesTogether() ? Exit.DONE : Exit.NO;
    }

    private FitLimits limits(Practice practice) {
        Optional<FitLimits> named = FitLimits.named(practice, tolerances);
        if (named.isPresent()) return named.get();
        List<FitLimits> all = FitLimits.all(practice);
        String last = all.get(all.size() - 1).id();
        String known =
                all.subList(0, all.size() - 1).stream().map(FitLimits::id).collect(Collectors.joining(", "));
        String complaint = "--tolerances: expected " + known + " or " + last + ", found '" + tolerances + "'";
        throw WrongUse.of(spec, complaint);
    }
}
