package org.marktwice.cli;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.marktwice.bench.Action;
import org.marktwice.bench.Attempt;
import org.marktwice.files.AttemptFile;
import org.marktwice.rulebook.Verdict;
import org.marktwice.scenario.Practice;
import org.marktwice.scenario.Scenario;
import org.marktwice.view.Cautions;
import org.marktwice.view.SheetModel;

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
        Practice p = sheet.scenario().practice();
        List<String> words = new ArrayList<>();
        words.add("face side " + spoken(p.faceSide()));
        words.add(
                p.heartSide() == Practice.HeartSide.ANY
                        ? "heart side any way"
                        : "heart side " + spoken(p.heartSide()) + " from the middle of the job");
        words.add("knots keep the larger of " + Text.number(p.knotMargin().mm()) + " mm and "
                + Text.number(p.knotMargin().diameters()) + " of their diameter");
        words.add("cup clear to 1 in " + Text.number(p.cupRatio().clear()) + ", poor to 1 in "
                + Text.number(p.cupRatio().poor()));
        words.add("sizes ±" + Text.number(p.size()) + " mm");
        words.add("gaps to " + Text.number(p.gap()) + " mm");
        words.add("told " + told(p.guidance()));
        words.add("aids: " + (p.aids().isEmpty() ? "none" : String.join(", ", aids(p))));
        if (!p.worth().isEmpty()) words.add("worth set here: " + worth(p.worth()));
        lines.add(Text.wrapped("Practice in force: ", String.join("; ", words) + "."));
    }

    private static String told(Practice.Guidance guidance) {
        return switch (guidance) {
            case EACH_STEP -> "after each step";
            case EACH_PART -> "after each part";
            case AT_HAND_IN -> "at hand-in";
            case EXAMINATION -> "at hand-in only, as in an examination";
        };
    }

    private static List<String> aids(Practice practice) {
        return practice.aids().stream().sorted().map(MarkSheetText::spoken).toList();
    }

    private static String worth(Map<String, Double> worth) {
        List<String> words = new ArrayList<>();
        new TreeMap<>(worth).forEach((rule, marks) -> words.add(rule + " " + Text.number(marks)));
        return String.join(", ", words);
    }

    private static String spoken(Enum<?> word) {
        return word.name().toLowerCase(Locale.ROOT).replace('_', ' ');
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
