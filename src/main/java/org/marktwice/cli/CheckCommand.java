package org.marktwice.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.marktwice.advice.ModelAnswer;
import org.marktwice.bench.Action;
import org.marktwice.bench.Attempt;
import org.marktwice.drawing.Part;
import org.marktwice.files.AnyFile;
import org.marktwice.files.AttemptFile;
import org.marktwice.files.BoardFile;
import org.marktwice.files.FileRefused;
import org.marktwice.files.QuizFile;
import org.marktwice.files.RackFile;
import org.marktwice.rulebook.PracticeWords;
import org.marktwice.scenario.Draft;
import org.marktwice.scenario.Scenario;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Whether files are fine. */
@Command(
        name = "check",
        description = {
            "Says of each file whether it is fine.",
            "Files may be scenarios, drafts, attempts, boards, racks, records of finished jobs and quiz "
                    + "journals. Of a scenario it says as well whether it can be solved, and which joints "
                    + "aren't as large as its workshop has them. An attempt is tried on its "
                    + "scenario where that is among the files; otherwise only its shape and its words are checked."
        },
        footer = {
            "",
            "Of tables (*.csv) those of racks and of finished jobs are checked, told by the titles of their columns.",
            "",
            "Exit 0: all are fine. 1: a scenario can be read but not solved: some part can't be supplied clear;",
            "or a draft isn't finished.",
            "2: a file can't be read; the reason is on standard error, one line a file.",
            "",
            "--json writes a list, an item a file: file, state (fine; no: not solvable, or not finished; refused),",
            "  says[] (the lines)"
        })
final class CheckCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(paramLabel = "FILE", arity = "1..*", description = "files of any kind that the program has")
    private List<Path> files = new ArrayList<>();

    @Option(names = "--json", description = "write the result as JSON, as described below")
    private boolean json;

    private final List<String> said = new ArrayList<>();
    private final Map<Path, Map<String, @Nullable Object>> answers = new HashMap<>();

    CheckCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        int exit = Exit.DONE;
        Map<Path, AnyFile> read = new HashMap<>();
        Map<String, Scenario> scenarios = new HashMap<>();
        for (Path file : files) {
            try {
                AnyFile any = AnyFile.read(file);
                if (any instanceof AnyFile.OfScenario s) {
                    scenarios.put(s.scenario().id(), Inputs.checked(file.toString(), s.scenario()));
                }
                read.put(file, any);
            } catch (FileRefused e) {
                refuse(e);
                answers.put(file, answer(file, Exit.WRONG));
                exit = Exit.WRONG;
            }
        }
        for (Path file : files) {
            AnyFile any = read.get(file);
            if (any == null) continue;
            int one = report(file, any, scenarios);
            answers.put(file, answer(file, one));
            exit = Math.max(exit, one);
        }
        if (json) console.jsonList(files.stream().map(answers::get).toList());
        return exit;
    }

    private void say(String line) {
        said.add(line);
        if (!json) console.line(line);
    }

    private void refuse(FileRefused e) {
        String line = String.valueOf(e.getMessage());
        said.add(line);
        console.complain(line);
    }

    /** All that was said since the last file. */
    private Map<String, @Nullable Object> answer(Path file, int exit) {
        String state = exit == Exit.DONE ? "fine" : exit == Exit.NO ? "no" : "refused";
        Map<String, @Nullable Object> answer = Fields.with("file", file.toString())
                .and("state", state)
                .and("says", List.copyOf(said))
                .map();
        said.clear();
        return answer;
    }

    private int report(Path file, AnyFile any, Map<String, Scenario> scenarios) {
        if (any instanceof AnyFile.OfScenario s) return scenario(file, s.scenario());
        if (any instanceof AnyFile.OfAttempt a) return attempt(file, a.attempt(), scenarios);
        if (any instanceof AnyFile.OfDraft d) return draft(file, d.draft());
        if (any instanceof AnyFile.OfRecord r) {
            say(file + ": fine: record of " + Text.count(r.record().rows().size(), "finished job", "finished jobs"));
            return Exit.DONE;
        }
        if (any instanceof AnyFile.OfRack r) return rack(file, r.rack());
        if (any instanceof AnyFile.OfQuiz q) return quiz(file, q.quiz());
        BoardFile board = ((AnyFile.OfBoard) any).board();
        say(file + ": fine: board " + board.board().id() + ", "
                + Text.count(board.board().knots().size(), "knot", "knots") + ", "
                + Text.count(board.cuts().size(), "cut", "cuts"));
        return Exit.DONE;
    }

    private int quiz(Path file, QuizFile quiz) {
        say(file + ": fine: quiz journal of " + quiz.learner() + ", "
                + Text.count(quiz.answers().size(), "answer", "answers"));
        for (String notice : quiz.notices()) say(notice);
        return Exit.DONE;
    }

    private int rack(Path file, RackFile rack) {
        int knots = rack.boards().stream().mapToInt(b -> b.knots().size()).sum();
        say(file + ": fine: rack of " + Text.count(rack.boards().size(), "board", "boards") + ", "
                + Text.count(knots, "knot", "knots"));
        return Exit.DONE;
    }

    private int draft(Path file, Draft draft) {
        List<Draft.Gap> gaps = draft.gaps();
        String title = draft.title().isEmpty() ? "without a title" : '"' + draft.title() + '"';
        say(file + ": " + (gaps.isEmpty() ? "fine: " : "not finished: ") + "draft " + title
                + (gaps.isEmpty() ? "; nothing is missing" : ""));
        for (Draft.Gap gap : gaps) say("  " + gap.says());
        return gaps.isEmpty() ? Exit.DONE : Exit.NO;
    }

    private int scenario(Path file, Scenario scenario) {
        ModelAnswer answer = ModelAnswer.of(scenario);
        int parts = scenario.drawing().parts().size();
        String summary = "scenario \"" + scenario.title() + "\", level " + scenario.level() + ", "
                + Text.count(parts, "part", "parts") + ", "
                + Text.count(scenario.drawing().joints().size(), "joint", "joints") + ", "
                + Text.count(scenario.boards().size(), "board", "boards");
        if (SolveCommand.solved(scenario, answer)) {
            say(file + ": fine: " + summary + "; can be solved, least clearance " + Text.mm(answer.least()));
            for (String departs : PracticeWords.departures(scenario)) say("  " + departs);
            return Exit.DONE;
        }
        List<String> without = SolveCommand.unsupplied(scenario, answer).stream()
                .map(Part::name)
                .toList();
        say(file + ": can't be solved: " + summary + "; " + answer.clear() + " of "
                + Text.count(parts, "part", "parts") + " clear"
                + (without.isEmpty() ? "" : ", no board for " + String.join(", ", without)));
        return Exit.NO;
    }

    private int attempt(Path file, AttemptFile read, Map<String, Scenario> scenarios) {
        Attempt attempt = read.attempt();
        Scenario scenario = scenarios.get(attempt.scenario());
        try {
            if (scenario != null) Inputs.checked(read.on(scenario));
        } catch (FileRefused e) {
            refuse(e);
            return Exit.WRONG;
        }
        List<Action> actions = attempt.actions();
        boolean handedIn = attempt.handedIn();
        say(file + ": fine: attempt by " + attempt.learner() + " at \"" + attempt.scenario() + "\", "
                + Text.count(actions.size(), "action", "actions") + (handedIn ? ", handed in" : ", not handed in")
                + (scenario == null ? "; not tried on its scenario, which isn't among the files" : ""));
        for (String notice : read.notices()) say(notice);
        return Exit.DONE;
    }
}
