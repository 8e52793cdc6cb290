package org.marktwice.cli;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.marktwice.classroom.BulkMarking.Progress;
import org.marktwice.classroom.ClassList;
import org.marktwice.classroom.ClassSet;
import org.marktwice.classroom.ClassSet.Given;
import org.marktwice.classroom.Variants;
import org.marktwice.files.FileRefused;
import org.marktwice.scenario.Scenario;
import picocli.CommandLine;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** A variant of an exercise for each learner. */
@Command(
        name = "make",
        description = {
            "Makes a variant of an exercise for each learner: other boards, as hard as its own.",
            "The difficulty lies within a band round the exercise's. The same seed and the same learner give "
                    + "the same boards every time. The folder is what to hand out, on a stick or a share that nobody can "
                    + "write to; \"class mark FOLDER DIR\" marks what comes back."
        },
        footer = {
            "",
            "Call learners by numbers or initials: what is typed stands in the names of files and in the index,",
            "and nowhere else. Of a list only the column \"learner\" is kept, or the first where none is so called.",
            "\"class forget\" deletes what there is about a learner.",
            "",
            "Difficulty runs from 0 to 1: half by the share of wrong choices, three tenths by how near the best",
            "choice comes to a worse one, two tenths by how many boards there are. It compares sets of boards for",
            "the same drawing; between drawings it is a hint.",
            "",
            "A folder that holds another set, or one of more learners, is left as it is: they may be at work on it.",
            "",
            "Exit 0: made. 1: made, but some variant lies outside the band. 2: a file can't be read or written, or another",
            "set is in DIR.",
            "",
            "--json writes one object:",
            "  scenario, seed, target, band   target: the difficulty of the exercise",
            "  variants[]   learner, file, digest, difficulty, wrongChoices, closeness, crowd, boards, tries, inBand"
        })
final class MakeCommand implements Callable<Integer> {
    private final Console console;

    @CommandLine.Spec
    CommandLine.Model.@Nullable CommandSpec spec;

    @Parameters(index = "0", paramLabel = "SCENARIO", description = "the scenario (*.scenario.json)")
    private Path scenarioFile = Path.of("");

    /** One or the other. */
    private static final class Who {
        @Option(
                names = "--class",
                required = true,
                paramLabel = "LIST.csv",
                description = "a file with a learner a line; with a head, the column \"learner\"")
        @Nullable
        Path list;

        @Option(
                names = "--learners",
                required = true,
                paramLabel = "N",
                description = "how many learners; they are called P01, P02 …")
        int learners;
    }

    @ArgGroup(multiplicity = "1")
    private Who who = new Who();

    @Option(names = "--out", required = true, paramLabel = "DIR", description = "the folder to write to")
    private Path out = Path.of("");

    @Option(names = "--seed", paramLabel = "N", description = "another seed, other boards (default: 1)")
    private int seed = 1;

    @Option(
            names = "--band",
            paramLabel = "B",
            description = "how far difficulties may lie apart from the exercise's (default: 0.05)")
    private double band = Variants.BAND;

    @Option(names = "--json", description = "write the index as JSON, as described below")
    private boolean json;

    MakeCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws FileRefused {
        if (seed < 0) throw wrong("--seed: expected a whole number from 0");
        if (!(band >= 0 && band <= 1)) throw wrong("--band: expected a number from 0 to 1");
        Scenario scenario = Inputs.scenario(scenarioFile);
        ClassSet set = made(scenario, list());
        set.write(out);
        if (json) console.json(answer(set));
        else text(scenario, set);
        return set.allInBand() ? Exit.DONE : Exit.NO;
    }

    private ClassSet made(Scenario scenario, ClassList list) throws FileRefused {
        try {
            boolean shown = FolderMarking.atTerminal();
            Progress progress = shown
                    ? (done, of) -> console.progress(done == of ? "" : "made " + done + " of " + of)
                    : Progress.NONE;
            return ClassSet.make(Variants.of(scenario, seed, band), scenario.id(), list, progress);
        } catch (Variants.CannotVary e) {
            throw new FileRefused(scenarioFile.toString(), String.valueOf(e.getMessage()));
        }
    }

    private ClassList list() throws FileRefused {
        if (who.list != null) return ClassList.read(who.list);
        if (who.learners < 1 || who.learners > ClassList.MOST) {
            throw wrong("--learners: expected from 1 to " + ClassList.MOST + " learners, found " + who.learners);
        }
        return ClassList.numbered(who.learners);
    }

    private CommandLine.ParameterException wrong(String why) {
        return WrongUse.of(spec, why);
    }

    private static Map<String, @Nullable Object> answer(ClassSet set) {
        return Fields.with("scenario", set.exercise())
                .and("seed", set.seed())
                .and("target", set.target())
                .and("band", set.band())
                .and("variants", set.given().stream().map(MakeCommand::answer).toList())
                .map();
    }

    private static Map<String, @Nullable Object> answer(Given given) {
        Variants.Variant v = given.variant();
        return Fields.with("learner", v.learner())
                .and("file", given.file())
                .and("digest", v.scenario().digest())
                .and("difficulty", v.difficulty().value())
                .and("wrongChoices", v.difficulty().wrongChoices())
                .and("closeness", v.difficulty().closeness())
                .and("crowd", v.difficulty().crowd())
                .and("boards", v.scenario().boards().size())
                .and("tries", v.tries())
                .and("inBand", v.inBand())
                .map();
    }

    private void text(Scenario scenario, ClassSet set) {
        console.line(String.format(
                Locale.ROOT,
                "%s for %s: difficulty %.2f, within %.2f of it",
                scenario.title(),
                Text.count(set.given().size(), "learner", "learners"),
                set.target(),
                set.band()));
        console.line(Text.rule());
        for (Given given : set.given()) {
            Variants.Variant v = given.variant();
            console.line(String.format(
                            Locale.ROOT,
                            "%-16s %.2f  %-10s %-12s %s",
                            v.learner(),
                            v.difficulty().value(),
                            Text.count(v.scenario().boards().size(), "board", "boards"),
                            v.inBand() ? "" : "outside",
                            given.file())
                    .stripTrailing());
        }
        console.line(Text.rule());
        console.line("Written to " + out + ", with " + ClassSet.INDEX + " for the teacher.");
    }
}
