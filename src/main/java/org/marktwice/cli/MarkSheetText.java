package org.marktwice.cli;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.marktwice.bench.Action;
import org.marktwice.bench.Attempt;
import org.marktwice.feedback.SheetModel;
import org.marktwice.files.AttemptFile;
import org.marktwice.rulebook.Cautions;
import org.marktwice.rulebook.PracticeWords;
import org.marktwice.rulebook.Verdict;
import org.marktwice.scenario.Scenario;

/** A mark sheet on paper: what a teacher hands back. */
final class MarkSheetText {
    private final AttemptFile.Opened opened;
    private final SheetModel sheet;
    private final List<String> lines = new ArrayList<>();

    private MarkSheetText(AttemptFile.Opened opened, SheetModel sheet) {
        this.opened = opened;
        this.sheet = sheet;
    }

    static String of(AttemptFile.Opened opened, SheetModel sheet) {
        MarkSheetText text = new MarkSheetText(opened, sheet);
        text.head();
        text.practice();
        text.sheet.groups().forEach(text::group);
        text.foot();
        return String.join("\n", text.lines);
    }

    private void head() {
        Scenario scenario = sheet.scenario();
        Attempt attempt = opened.file().attempt();
        lines.add(Text.ends("Mark sheet", sheet.total() + " marks"));
        lines.add(Text.rule());
        lines.add("Learner    " + attempt.learner());
        lines.add("Exercise   " + scenario.title() + ", level " + scenario.level() + " (" + scenario.id() + ")");
        lines.add("Started    " + attempt.started());
        String steps = Text.count(attempt.actions().size(), "step", "steps");
        lines.add((sheet.bench().handedIn() ? "Handed in  after " : "NOT HANDED IN YET; so far ") + time(attempt) + ", "
                + steps);
        for (String notice : opened.file().notices()) lines.add(Text.wrapped("Notice     ", notice));
        lines.add("");
    }

    private static String time(Attempt attempt) {
        List<Action> actions = attempt.actions();
        long seconds = actions.isEmpty()
                ? 0
                : Math.round(actions.get(actions.size() - 1).t());
        return seconds < 60 ? seconds + " s" : seconds / 60 + " min " + seconds % 60 + " s";
    }

    private void practice() {
        lines.add("Practice in force");
        for (PracticeWords.Setting set : PracticeWords.all(sheet.scenario().practice())) {
            lines.add(Text.wrapped("  " + set.name() + ": ", set.value()));
        }
    }

    private void group(SheetModel.Group group) {
        lines.add("");
        lines.add(Text.ends(group.title(), Text.number(group.marks()) + " of " + Text.number(group.outOf())));
        lines.add(Text.rule());
        Set<String> explained = new HashSet<>();
        for (SheetModel.Line line : group.lines()) {
            found(line);
            if (line.verdict() != Verdict.SOUND)
                explain(line, explained.add(line.finding().rule()));
        }
    }

    private void found(SheetModel.Line line) {
        Verdict verdict = line.verdict();
        String marks = Text.number(line.entry().worth() - line.entry().lost()) + " of "
                + Text.number(line.entry().worth());
        lines.add(Text.ends(
                verdict.sign() + " " + String.format(Locale.ROOT, "%-5s", line.word()) + "  " + line.title()
                        + step(line),
                marks));
        if (!line.figure().isEmpty()) say("measured", line.figure());
        say("found", line.says());
    }

    /** @param first whether the rule comes up for the first time in this group: its reasons are the same each time */
    private void explain(SheetModel.Line line, boolean first) {
        if (first) say("why", line.why());
        boolean general = line.finding().instead() == null;
        if (!line.instead().isEmpty() && (first || !general)) say("instead", line.instead());
        if (first) say("source", line.source());
        if (first && !line.safety().isEmpty()) say("caution", line.safety());
    }

    private static String step(SheetModel.Line line) {
        Integer step = line.finding().step();
        return step == null ? "" : " (step " + step + ")";
    }

    private void say(String what, String text) {
        lines.add(Text.wrapped(String.format(Locale.ROOT, "         %-9s ", what), text));
    }

    private void foot() {
        lines.add("");
        SheetModel.Estimate estimate = sheet.estimate();
        if (estimate.given()) estimate(estimate);
        SheetModel.Estimate parts = sheet.parts();
        if (parts.given()) estimate(parts);
        for (String clearance : sheet.clearances()) lines.add(Text.wrapped("Clearance: ", clearance + "."));
        if (!sheet.hints().isEmpty()) {
            lines.add(Text.wrapped("Hints used: ", String.join("; ", sheet.hints()) + "."));
        }
        List<String> notJudged = sheet.notJudged();
        if (!notJudged.isEmpty()) {
            lines.add(Text.wrapped(
                    "Nothing to judge (no pass, and worth nothing): ", String.join("; ", notJudged) + "."));
        }
        lines.add("Signs: ✓ sound   ~ close   ✕ wrong   ○ open, not decided");
        lines.add("");
        lines.add("Before real work:");
        for (String caution : Cautions.ALL) lines.add(Text.wrapped("  - ", caution));
    }

    private void estimate(SheetModel.Estimate estimate) {
        String expected = "Expected to lose marks on: ";
        if (!estimate.foreseen().isEmpty()) {
            lines.add(Text.wrapped(expected, String.join("; ", estimate.foreseen()) + ": rightly."));
        }
        if (!estimate.held().isEmpty()) {
            lines.add(Text.wrapped(expected, String.join("; ", estimate.held()) + ": but it held."));
        }
        if (!estimate.missed().isEmpty()) {
            lines.add(Text.wrapped("Lost marks without expecting it on: ", String.join("; ", estimate.missed()) + "."));
        }
    }
}
