package org.marktwice.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.marktwice.bench.Action;
import org.marktwice.bench.Attempt;
import org.marktwice.feedback.SheetModel;
import org.marktwice.files.AttemptFile;
import org.marktwice.files.FileRefused;
import org.marktwice.rulebook.Estimates;
import org.marktwice.rulebook.Finding;
import org.marktwice.rulebook.MarkSheet;
import org.marktwice.rulebook.Situation;
import org.marktwice.rulebook.Texts;
import org.marktwice.scenario.Scenario;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Marks an attempt. */
@Command(
        name = "mark",
        description = "Marks an attempt at a scenario and writes the mark sheet.",
        footer = {
            "",
            "Exit 0: marked, whatever the mark. 2: a file can't be read, or doesn't fit the other.",
            "",
            "--json writes one object; figures are unrounded, lengths in millimetres:",
            "  scenario, title, learner, started, handedIn",
            "  state         whole, or torn where the last line was cut off and is left out",
            "  notices[]     what was done about the file, in words",
            "  marks, outOf  marks = sum of credit × worth, outOf = sum of worth",
            "  findings[]    by rule in the rule book's order:",
            "    rule, stage, verdict (sound, close, wrong, open), credit (0 to 1), worth (its share)",
            "    board, part, joint   the ids, each where it applies",
            "    measured             value, unit, limit; where there is a figure to state",
            "    step, line           the action that decided it, counted from 1, and its line in the file",
            "    says, instead        what was found, and what would have been better on this board",
            "  notJudged[]   ids of rules that had nothing to judge: no pass, and worth nothing",
            "  hints[]       rule, board, part, joint, grade (1 to 3): the hints that were used",
            "  clearances[]  board, part, step, estimated, computed: estimates made before turning"
        })
final class MarkCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(index = "0", paramLabel = "SCENARIO", description = "the scenario (*.scenario.json)")
    private Path scenarioFile = Path.of("");

    @Parameters(index = "1", paramLabel = "ATTEMPT", description = "the attempt at it (*.attempt.jsonl)")
    private Path attemptFile = Path.of("");

    @Option(names = "--json", description = "write the result as JSON, as described below")
    private boolean json;

    MarkCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws FileRefused {
        Scenario scenario = Inputs.scenario(scenarioFile);
        AttemptFile.Opened opened = Inputs.attempt(attemptFile, scenario);
        SheetModel sheet = SheetModel.of(Situation.of(opened.bench()));
        if (json) console.json(answer(opened, sheet.sheet()));
        else console.line(MarkSheetText.of(opened, sheet));
        return Exit.DONE;
    }

    private static Map<String, @Nullable Object> answer(AttemptFile.Opened opened, MarkSheet sheet) {
        Scenario scenario = opened.bench().scenario();
        Attempt attempt = opened.file().attempt();
        return Fields.with("scenario", scenario.id())
                .and("title", scenario.title())
                .and("learner", attempt.learner())
                .and("started", attempt.started())
                .and("handedIn", opened.bench().handedIn())
                .and("state", opened.file().torn() ? "torn" : "whole")
                .and("notices", opened.file().notices())
                .and("marks", sheet.marks())
                .and("outOf", sheet.outOf())
                .and(
                        "findings",
                        sheet.entries().stream().map(e -> finding(e, opened)).toList())
                .and("notJudged", sheet.notJudged())
                .and(
                        "hints",
                        opened.bench().hints().stream().map(MarkCommand::hint).toList())
                .and(
                        "clearances",
                        Estimates.clearances(Situation.of(opened.bench())).stream()
                                .map(MarkCommand::clearance)
                                .toList())
                .map();
    }

    private static Map<String, @Nullable Object> hint(Action.Hint hint) {
        return Fields.with("rule", hint.rule())
                .maybe("board", hint.board())
                .maybe("part", hint.part())
                .maybe("joint", hint.joint())
                .and("grade", hint.grade())
                .map();
    }

    private static Map<String, @Nullable Object> clearance(Estimates.Clearance estimate) {
        return Fields.with("board", estimate.board())
                .and("part", estimate.part())
                .and("step", estimate.step())
                .and("estimated", estimate.estimated())
                .and("computed", estimate.computed())
                .map();
    }

    private static Map<String, @Nullable Object> finding(MarkSheet.Entry entry, AttemptFile.Opened opened) {
        Scenario scenario = opened.bench().scenario();
        Finding finding = entry.finding();
        return Fields.with("rule", finding.rule())
                .and("stage", entry.rule().stage().id())
                .and("verdict", finding.verdict().id())
                .and("credit", finding.credit())
                .and("worth", entry.worth())
                .maybe("board", finding.subject().board())
                .maybe("part", finding.subject().part())
                .maybe("joint", finding.subject().joint())
                .maybe("measured", measured(finding.measured()))
                .maybe("step", finding.step())
                .maybe("line", line(finding.step(), opened.file().lines()))
                .and("says", Texts.says(finding, scenario))
                .and("instead", Texts.instead(finding, scenario))
                .map();
    }

    private static @Nullable Integer line(@Nullable Integer step, List<Integer> lines) {
        return step == null ? null : lines.get(step - 1);
    }

    private static @Nullable Object measured(Finding.@Nullable Measured measured) {
        if (measured == null) return null;
        return Fields.with("value", measured.value())
                .and("unit", measured.unit())
                .and("limit", measured.limit())
                .map();
    }
}
