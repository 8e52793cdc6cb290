package org.marktwice.print;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.marktwice.classroom.Marked;
import org.marktwice.drawing.Part;
import org.marktwice.picture.Ink;
import org.marktwice.rulebook.Cautions;
import org.marktwice.rulebook.Finding;
import org.marktwice.rulebook.MarkSheet;
import org.marktwice.rulebook.Texts;
import org.marktwice.rulebook.Verdict;
import org.marktwice.scenario.Scenario;

/** A learner's mark sheet, to be handed back: findings by board and part, worst first; the reasons once each. */
final class MarkSheets {
    private static final double INDENT = 48;

    private final Marked marked;
    private final MarkSheet sheet;
    private final Scenario scenario;
    private final Paper paper;
    private final Set<String> explained = new HashSet<>();

    MarkSheets(Marked marked, Paper paper) {
        this.marked = marked;
        this.sheet = marked.sheet().orElseThrow();
        this.scenario = marked.scenario().orElseThrow();
        this.paper = paper;
    }

    List<Leaf> leaves() {
        String learner = marked.learner().isBlank() ? "no name given" : marked.learner();
        TitleBlock block = new TitleBlock("mark sheet", learner, scenario.title() + ", level " + scenario.level(), "");
        List<Block> blocks = new ArrayList<>();
        String total = Figure.number(sheet.marks()) + " of " + Figure.number(sheet.outOf()) + " marks";
        blocks.add(Blocks.text(learner + ": " + total, Type.TITLE, Ink.INK));
        blocks.add(Blocks.text(scenario.title() + ", level " + scenario.level(), Type.BODY, Ink.QUIET));
        if (!marked.reason().isEmpty()) blocks.add(Blocks.text("Note: " + marked.reason() + ".", Type.BODY, Ink.CLOSE));
        groups().forEach((title, entries) -> blocks.addAll(group(title, entries)));
        foot(blocks);
        return Leaf.flowing(block, paper, blocks);
    }

    private Map<String, List<MarkSheet.Entry>> groups() {
        Map<String, List<MarkSheet.Entry>> groups = new LinkedHashMap<>();
        sheet.entries().stream()
                .sorted(Comparator.comparingDouble(MarkSheet.Entry::lost).reversed())
                .forEach(e -> groups.computeIfAbsent(subject(e.finding()), t -> new ArrayList<>())
                        .add(e));
        return groups;
    }

    private String subject(Finding finding) {
        String board = finding.subject().board();
        String part = part(finding.subject().part());
        if (board == null) return part == null ? "The job as a whole" : part;
        return "Board " + board + (part == null ? "" : " · " + part);
    }

    private @Nullable String part(@Nullable String id) {
        return id == null ? null : scenario.drawing().part(id).map(Part::name).orElse(id);
    }

    private List<Block> group(String title, List<MarkSheet.Entry> entries) {
        List<Block> all = new ArrayList<>();
        double marks = entries.stream().mapToDouble(e -> e.worth() - e.lost()).sum();
        double outOf = entries.stream().mapToDouble(MarkSheet.Entry::worth).sum();
        all.add(Blocks.heading(title, Figure.number(marks) + " of " + Figure.number(outOf)));
        for (MarkSheet.Entry entry : entries) all.addAll(found(entry));
        return all;
    }

    private List<Block> found(MarkSheet.Entry entry) {
        Finding finding = entry.finding();
        Texts.RuleTexts texts = Texts.of(finding.rule());
        List<Block> all = new ArrayList<>();
        String marks = Figure.number(entry.worth() - entry.lost()) + " of " + Figure.number(entry.worth());
        all.add(Blocks.verdict(finding.verdict(), texts.title(), figure(finding), marks));
        if (finding.verdict() == Verdict.SOUND) return all;
        all.add(say("found", Texts.says(finding, scenario)));
        String instead = Texts.instead(finding, scenario);
        if (!instead.isEmpty()) all.add(say("better", instead));
        if (explained.add(finding.rule())) {
            all.add(say("why", texts.why()));
            if (!texts.safety().isEmpty()) all.add(say("caution", texts.safety()));
        }
        return List.of(Blocks.together(all));
    }

    private static Block say(String label, String text) {
        return Blocks.labelled(label, INDENT, text, Type.TABLE, Ink.INK);
    }

    /** What was measured against its limit; a limit of nought goes without saying, and so does a count that is right. */
    static String figure(Finding finding) {
        Finding.Measured m = finding.measured();
        if (m == null || (m.unit().equals("count") && finding.verdict() == Verdict.SOUND)) return "";
        String value = amount(m.value(), m.unit());
        return m.limit() == 0 ? value : value + ", limit " + amount(m.limit(), m.unit());
    }

    private static String amount(double value, String unit) {
        return switch (unit) {
            case "mm" -> Figure.tenth(value) + " mm";
            case "degrees" -> Figure.tenth(value) + "°";
            case "%" -> String.format(Locale.ROOT, "%.0f %%", value);
            case "ratio", "count" -> Figure.number(value);
            default -> Figure.number(value) + " " + unit;
        };
    }

    private void foot(List<Block> blocks) {
        if (!sheet.notJudged().isEmpty()) {
            List<String> titles =
                    sheet.notJudged().stream().map(r -> Texts.of(r).title()).toList();
            blocks.add(Blocks.heading("Nothing to judge, and worth nothing here", ""));
            blocks.add(Blocks.text(String.join("; ", titles) + ".", Type.NOTE, Ink.QUIET));
        }
        blocks.add(Blocks.space(8));
        blocks.add(Blocks.text(Cautions.LINE, Type.NOTE, Ink.QUIET));
    }
}
