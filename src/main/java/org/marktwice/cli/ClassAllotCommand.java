package org.marktwice.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.marktwice.advice.ModelAnswer;
import org.marktwice.advice.Option;
import org.marktwice.classroom.ClassList;
import org.marktwice.classroom.Laying;
import org.marktwice.classroom.RackAllotment;
import org.marktwice.files.FileRefused;
import org.marktwice.files.RackFile;
import org.marktwice.print.LabelSheet;
import org.marktwice.print.SheetFile;
import org.marktwice.timber.Knot;
import org.marktwice.timber.KnotFit;
import org.marktwice.timber.MeasuredBoard.Fitted;
import org.marktwice.timber.Surface;
import picocli.CommandLine;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** The real boards of a rack to the parts of a job. */
@Command(
        name = "allot",
        description = {
            "Gives the real boards of a rack to the parts of a job that is made several times.",
            "It is the exact best for all together. Each knot's body is found from where it shows and from the "
                    + "pith; how far it can be relied on is told, and what to measure again, and what to buy where the "
                    + "rack doesn't go round."
        },
        footer = {
            "",
            "RACK is a table (*.csv), with a line for each place where a knot shows, and these columns:",
            "  board, species, length, width, thickness",
            "  moisture (12 where it is empty), planed-at (as it is now), sawn (surfaces that are not planed)",
            "  pith-y and pith-z, or ring (points of one ring on the end: \"0 4; 50 9; 100 5\")",
            "  knot, on (face-1 …), u, v (the middle of what shows, in the surface's coordinates)",
            "  along, across (its size), dead (yes, no)",
            "It may be written with commas, semicolons or tabs. Or JSON, see scenarios/schema/rack.schema.json.",
            "Labels fit self-adhesive sheets of fourteen: A4 99.1 × 38.1 mm, letter 4 × 1⅓ in.",
            "Chalk \"1\" on the face and the edge of each board that you call face-1 and edge-1.",
            "",
            "Exit 0: every part has a clear board. 1: it doesn't go round. 2: a file can't be read.",
            "",
            "--json writes one object; millimetres, unrounded:",
            "  scenario, times, parts, supplied, clear",
            "  jobs[]      learner (with --class), placings[] of board, part, facing, faceSide, faceEdge, trim,",
            "              clearance, clear",
            "  checks[]    to measure again before cutting: job (from 1), board, part, knot, clearance, margin, spread,",
            "              sureness",
            "  leftOver[]  board, why (where it serves no part)",
            "  buy[]       count, stuff, length, width, thickness, parts[], instead[] (boards that serve but are not clear)",
            "  rack[]      board, knots[] of id, x, azimuth, lean, halfAngle, maxRadius, surfaces (measured on so many),",
            "              worst (greatest difference from a reading), spread (one standard deviation), sureness",
            "              (sure, fair, doubtful); a knot whose readings lie on no one branch stands there once for each"
        })
final class ClassAllotCommand implements Callable<Integer> {
    private final Console console;

    @CommandLine.Spec
    CommandLine.Model.@Nullable CommandSpec spec;

    @Parameters(index = "0", paramLabel = "SCENARIO", description = "the job (*.scenario.json); its boards don't count")
    private Path scenarioFile = Path.of("");

    @Parameters(index = "1", paramLabel = "RACK", description = "the boards (*.csv, *.rack.json)")
    private Path rackFile = Path.of("");

    /** One or the other, or one job. */
    private static final class Jobs {
        @CommandLine.Option(
                names = "--times",
                required = true,
                paramLabel = "N",
                description = "how many jobs are made (default: 1)")
        int times;

        @CommandLine.Option(
                names = "--class",
                required = true,
                paramLabel = "LIST.csv",
                description = "a job for each learner of a list")
        @Nullable
        Path list;
    }

    @ArgGroup
    private @Nullable Jobs jobs;

    @CommandLine.Option(
            names = "--labels",
            paramLabel = "FILE",
            description = "write labels for the boards to FILE (*.pdf) as well")
    private @Nullable Path labels;

    @Mixin
    private final PaperOption paper = new PaperOption();

    @CommandLine.Option(names = "--json", description = "write the result as JSON, as described below")
    private boolean json;

    ClassAllotCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws FileRefused {
        var scenario = Inputs.scenario(scenarioFile);
        RackFile rack = RackFile.read(rackFile);
        List<String> names = names();
        RackAllotment allotment = RackAllotment.of(scenario, rack, names.size());
        if (labels != null) {
            SheetFile.save(labels, LabelSheet.of(allotment, names, paper.paper()), "Labels: " + scenario.title());
        }
        if (json) console.json(answer(allotment, names));
        else console.line(AllotmentText.of(allotment, names));
        return allotment.clear() == allotment.parts() ? Exit.DONE : Exit.NO;
    }

    /** Whose job each is. */
    private List<String> names() throws FileRefused {
        if (jobs != null && jobs.list != null) {
            ClassList list = ClassList.read(jobs.list);
            if (list.learners().size() > RackAllotment.MOST) {
                throw new FileRefused(jobs.list.toString(), "more than " + RackAllotment.MOST + " learners");
            }
            return list.learners();
        }
        int times = jobs == null ? 1 : jobs.times;
        if (times < 1 || times > RackAllotment.MOST) {
            throw WrongUse.of(spec, "--times: expected from 1 to " + RackAllotment.MOST + ", found " + times);
        }
        List<String> names = new ArrayList<>();
        for (int i = 1; i <= times; i++) names.add("Job " + i);
        return names;
    }

    private Map<String, @Nullable Object> answer(RackAllotment a, List<String> names) {
        List<Map<String, @Nullable Object>> made = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            ModelAnswer job = a.jobs().get(i);
            Fields fields = new Fields();
            if (jobs != null && jobs.list != null) fields.and("learner", names.get(i));
            made.add(fields.and(
                            "placings",
                            job.placings().stream()
                                    .map(ClassAllotCommand::placing)
                                    .toList())
                    .map());
        }
        return Fields.with("scenario", a.scenario().id())
                .and("times", names.size())
                .and("parts", a.parts())
                .and("supplied", a.supplied())
                .and("clear", a.clear())
                .and("jobs", made)
                .and("checks", a.checks().stream().map(ClassAllotCommand::check).toList())
                .and(
                        "leftOver",
                        a.leftOver().stream().map(ClassAllotCommand::left).toList())
                .and("buy", a.toBuy().stream().map(ClassAllotCommand::buy).toList())
                .and("rack", a.rack().stream().map(ClassAllotCommand::rack).toList())
                .map();
    }

    private static Map<String, @Nullable Object> placing(Option option) {
        Laying laying = Laying.of(option.placing());
        return Fields.with("board", option.placing().board().id())
                .and("part", option.placing().part().id())
                .and("facing", Fields.facing(option.placing()))
                .orNull("faceSide", laying.faceSide().map(Surface::id).orElse(null))
                .orNull("faceEdge", laying.faceEdge().map(Surface::id).orElse(null))
                .and("trim", ExplanationFields.trim(option.placing()))
                .and("clearance", option.clearance())
                .and("clear", option.clear())
                .map();
    }

    private static Map<String, @Nullable Object> check(RackAllotment.Check check) {
        return Fields.with("job", check.job() + 1)
                .and("board", check.option().placing().board().id())
                .and("part", check.option().placing().part().id())
                .and("knot", check.fit().knot().id())
                .orNull("clearance", Double.isInfinite(check.clearance()) ? null : check.clearance())
                .and("margin", check.margin())
                .and("spread", check.fit().spread())
                .and("sureness", check.fit().sureness().id())
                .map();
    }

    private static Map<String, @Nullable Object> left(RackAllotment.LeftOver left) {
        return Fields.with("board", left.board().id())
                .maybe("why", left.why().orElse(null))
                .map();
    }

    private static Map<String, @Nullable Object> buy(RackAllotment.Purchase buy) {
        return Fields.with("count", buy.count())
                .and("stuff", buy.stuff().id())
                .and("length", buy.size().length())
                .and("width", buy.size().width())
                .and("thickness", buy.size().thickness())
                .and("parts", buy.parts())
                .and("instead", buy.instead())
                .map();
    }

    private static Map<String, @Nullable Object> rack(Fitted fitted) {
        return Fields.with("board", fitted.board().id())
                .and("knots", fitted.fits().stream().map(ClassAllotCommand::fit).toList())
                .map();
    }

    private static Map<String, @Nullable Object> fit(KnotFit fit) {
        Knot knot = fit.knot();
        return Fields.with("id", knot.id())
                .and("x", knot.x())
                .and("azimuth", knot.azimuth())
                .and("lean", knot.lean())
                .and("halfAngle", knot.halfAngle())
                .and("maxRadius", knot.maxRadius())
                .and("surfaces", fit.surfaces())
                .and("worst", fit.worst())
                .and("spread", fit.spread())
                .and("sureness", fit.sureness().id())
                .map();
    }
}
