package org.marktwice.feedback;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.marktwice.rulebook.Cautions;
import org.marktwice.rulebook.PracticeWords;

/** A mark sheet as plain text, to keep, print or hand over. */
public final class SheetText {
    private static final int WIDTH = 92;

    private SheetText() {}

    public static String of(SheetModel model, String learner) {
        List<String> out = new ArrayList<>();
        out.add(model.scenario().title() + ", level " + model.scenario().level());
        out.add("Learner: " + learner);
        out.add("Marks: " + model.total());
        SheetModel.Estimate estimate = model.estimate();
        if (estimate.given()) {
            out.add("");
            out.add("Estimated before handing in");
            list(out, "expected to lose marks, and did", estimate.foreseen());
            list(out, "expected to lose marks, and did not", estimate.held());
            list(out, "lost marks without expecting it", estimate.missed());
            SheetModel.Estimate parts = model.parts();
            list(out, "parts expected to lose marks, and did", parts.foreseen());
            if (parts.given()) {
                list(out, "parts expected to lose marks, and did not", parts.held());
                list(out, "parts that lost marks unexpectedly", parts.missed());
            }
        }
        List<String> clearances = model.clearances();
        if (!clearances.isEmpty()) {
            out.add("");
            out.add("Clearances estimated before turning");
            clearances.forEach(c -> wrap(out, "  ", c));
        }
        if (!model.hints().isEmpty()) {
            out.add("");
            out.add("Hints used");
            model.hints().forEach(h -> wrap(out, "  ", h));
        }
        for (SheetModel.Group group : model.groups()) {
            out.add("");
            out.add(group.title() + " (" + SheetModel.number(group.marks()) + " of " + SheetModel.number(group.outOf())
                    + ")");
            for (SheetModel.Line line : group.lines()) finding(out, line);
        }
        if (!model.notJudged().isEmpty()) {
            out.add("");
            out.add("Nothing to judge, and worth nothing here");
            model.notJudged().forEach(t -> out.add("  " + t));
        }
        out.add("");
        out.add("The workshop's practice in force");
        for (PracticeWords.Setting set : PracticeWords.all(model.scenario().practice())) wrap(out, "  ", set.line());
        out.add("");
        wrap(out, "", Cautions.LINE);
        return String.join("\n", out) + "\n";
    }

    private static void list(List<String> out, String what, List<String> titles) {
        if (!titles.isEmpty()) wrap(out, "  ", what + ": " + String.join("; ", titles));
    }

    private static void finding(List<String> out, SheetModel.Line line) {
        double worth = line.entry().worth();
        String marks = SheetModel.number(worth - line.entry().lost()) + " of " + SheetModel.number(worth);
        String figure = line.figure().isEmpty() ? "" : " (" + line.figure() + ")";
        out.add(String.format(
                Locale.ROOT, "  %s %-5s  %s%s: %s", line.verdict().sign(), line.word(), line.title(), figure, marks));
        wrap(out, "           ", line.says());
        if (!line.instead().isEmpty()) wrap(out, "           ", "Better: " + line.instead());
    }

    private static void wrap(List<String> out, String indent, String text) {
        StringBuilder row = new StringBuilder(indent);
        for (String word : text.split("\\s+")) {
            boolean empty = row.length() == indent.length();
            if (!empty && row.length() + 1 + word.length() > WIDTH) {
                out.add(row.toString());
                row = new StringBuilder(indent);
                empty = true;
            }
            if (!empty) row.append(' ');
            row.append(word);
        }
        out.add(row.toString());
    }
}
