package org.marktwice.print;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.marktwice.bench.Attempt;
import org.marktwice.bench.Bench;
import org.marktwice.bench.CannotDo;
import org.marktwice.classroom.Marked;
import org.marktwice.feedback.JobVerdicts;
import org.marktwice.feedback.Replayed;
import org.marktwice.feedback.SheetModel;
import org.marktwice.picture.Ink;
import org.marktwice.picture.JobPicture;
import org.marktwice.rulebook.Cautions;
import org.marktwice.rulebook.PracticeWords;
import org.marktwice.rulebook.Verdict;
import org.marktwice.scenario.Scenario;

/**
 * A learner's mark sheet, to be handed back: findings by board, worst first, the reasons once each; what was estimated and
 * which hints were used; the settings that it was marked by.
 */
final class MarkSheets {
    private static final double INDENT = 48;
    /** For the names of settings. */
    private static final double WIDE = 74;

    private final SheetModel sheet;
    private final String learner;
    private final List<String> notes;
    private final Paper paper;
    private final Set<String> explained = new HashSet<>();

    private MarkSheets(SheetModel sheet, String learner, List<String> notes, Paper paper) {
        this.sheet = sheet;
        this.learner = learner.isBlank() ? "no name given" : learner;
        this.notes = notes;
        this.paper = paper;
    }

    /** @param marked one that has a sheet */
    static List<Leaf> leaves(Marked marked, Paper paper) {
        Attempt attempt = marked.attempt().orElseThrow();
        try {
            Bench bench = Bench.after(marked.scenario().orElseThrow(), attempt);
            SheetModel sheet = SheetModel.of(bench, marked.sheet().orElseThrow());
            List<String> notes = marked.reason().isEmpty() ? List.of() : List.of(marked.reason());
            return new MarkSheets(sheet, marked.learner(), notes, paper).leaves();
        } catch (CannotDo e) {
            throw new IllegalStateException("what was marked can be done", e);
        }
    }

    static List<Leaf> leaves(Replayed replayed, Paper paper) {
        List<String> notes = new ArrayList<>(replayed.notices());
        if (!replayed.sheet().bench().handedIn()) notes.add("not handed in yet");
        return new MarkSheets(replayed.sheet(), replayed.attempt().learner(), notes, paper).leaves();
    }

    private List<Leaf> leaves() {
        Scenario scenario = sheet.scenario();
        String exercise = scenario.title() + ", level " + scenario.level();
        TitleBlock block = new TitleBlock("mark sheet", learner, exercise, "");
        List<Block> blocks = new ArrayList<>();
        blocks.add(Blocks.text(learner + ": " + sheet.total() + " marks", Type.TITLE, Ink.INK));
        blocks.add(Blocks.text(exercise, Type.BODY, Ink.QUIET));
        for (String note : notes) blocks.add(Blocks.text("Note: " + ended(note), Type.BODY, Ink.CLOSE));
        JobPicture job = JobPicture.of(scenario.drawing());
        blocks.add(Blocks.picture(
                Paper.points(44),
                (pen, place) -> JobVerdicts.paint(pen.g, job, sheet, place, 16, Pen.PALETTE),
                "the job as it would come out, the worst verdict on each part"));
        for (SheetModel.Group group : sheet.groups()) blocks.addAll(group(group));
        estimates(blocks);
        hints(blocks);
        practice(blocks);
        foot(blocks);
        return Leaf.flowing(block, paper, blocks);
    }

    private static String ended(String sentence) {
        return sentence.endsWith(".") ? sentence : sentence + ".";
    }

    private List<Block> group(SheetModel.Group group) {
        List<Block> all = new ArrayList<>();
        String marks = Figure.number(group.marks()) + " of " + Figure.number(group.outOf());
        all.add(Blocks.heading(group.title(), marks));
        List<SheetModel.Line> kept = new ArrayList<>();
        for (SheetModel.Line line : group.lines()) {
            if (line.verdict() == Verdict.SOUND) kept.add(line);
            else all.add(found(line));
        }
        if (!kept.isEmpty()) all.add(kept(kept));
        return all;
    }

    /** What was kept, in one paragraph: a line each would take more paper than all there is to learn from. */
    private static Block kept(List<SheetModel.Line> lines) {
        if (lines.size() == 1) {
            SheetModel.Line only = lines.get(0);
            return Blocks.verdict(only.verdict(), only.title(), only.figure(), only.marks());
        }
        double marks = lines.stream().mapToDouble(l -> l.entry().worth()).sum();
        List<String> said = lines.stream()
                .map(l -> l.figure().isEmpty() ? l.title() : l.title() + " (" + l.figure() + ")")
                .toList();
        return Blocks.together(List.of(
                Blocks.verdict(
                        Verdict.SOUND,
                        lines.size() + " rules kept",
                        "",
                        Figure.number(marks) + " of " + Figure.number(marks)),
                Blocks.labelled("", INDENT, String.join("; ", said) + ".", Type.TABLE, Ink.INK)));
    }

    private Block found(SheetModel.Line line) {
        List<Block> all = new ArrayList<>();
        all.add(Blocks.verdict(line.verdict(), line.title(), line.figure(), line.marks()));
        say(all, "found", line.says());
        // the heading names the board
        if (!line.where().equals("board " + line.board())) say(all, "where", line.where());
        say(all, "better", line.instead());
        if (explained.add(line.finding().rule())) {
            say(all, "why", line.why());
            say(all, "caution", line.safety());
            say(all, "source", line.source());
        }
        return Blocks.together(all);
    }

    private static void say(List<Block> into, String label, String text) {
        if (!text.isEmpty()) into.add(Blocks.labelled(label, INDENT, text, Type.TABLE, Ink.INK));
    }

    private void estimates(List<Block> blocks) {
        SheetModel.Estimate said = sheet.parts().given() ? sheet.parts() : sheet.estimate();
        List<String> lines = new ArrayList<>();
        if (said.given()) {
            line(lines, "Expected, and lost marks: ", said.foreseen());
            line(lines, "Expected, and lost none: ", said.held());
            line(lines, "Lost marks unexpectedly: ", said.missed());
            if (lines.isEmpty()) lines.add("Expected to lose no marks, and lost none.");
        }
        sheet.clearances().forEach(c -> lines.add(c + "."));
        if (lines.isEmpty()) lines.add("Handed in without one.");
        section(blocks, "Estimates", lines);
    }

    private static void line(List<String> into, String label, List<String> titles) {
        if (!titles.isEmpty()) into.add(label + String.join("; ", titles) + ".");
    }

    private void hints(List<Block> blocks) {
        List<String> used = sheet.hints().stream().map(h -> h + ".").toList();
        section(blocks, "Hints used", used.isEmpty() ? List.of("None.") : used);
    }

    private static void section(List<Block> blocks, String title, List<String> lines) {
        List<Block> all = new ArrayList<>(List.of(Blocks.heading(title, "")));
        for (String line : lines) all.add(Blocks.text(line, Type.TABLE, Ink.INK));
        blocks.addAll(Blocks.table(all));
    }

    private void practice(List<Block> blocks) {
        List<Block> all = new ArrayList<>(List.of(Blocks.heading("The workshop’s practice in force", "")));
        for (PracticeWords.Setting set : PracticeWords.all(sheet.scenario().practice()))
            all.add(Blocks.labelled(set.name(), WIDE, set.value(), Type.TABLE, Ink.INK));
        blocks.addAll(Blocks.table(all));
    }

    private void foot(List<Block> blocks) {
        if (!sheet.notJudged().isEmpty()) {
            blocks.add(Blocks.heading("Nothing to judge, and worth nothing here", ""));
            blocks.add(Blocks.text(String.join("; ", sheet.notJudged()) + ".", Type.NOTE, Ink.QUIET));
        }
        blocks.add(Blocks.space(8));
        blocks.add(Blocks.text(Cautions.LINE, Type.NOTE, Ink.QUIET));
    }
}
