package org.marktwice.view.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.marktwice.classroom.RackAllotment;

/** What is to be done before an allotment can be sawn: bought, and measured again. */
final class AllotWords {
    private AllotWords() {}

    /** @param notWhole boards that were left out, since their lines are not whole */
    static String of(RackAllotment a, List<String> notWhole) {
        List<String> said = new ArrayList<>();
        if (a.toBuy().isEmpty() && a.checks().isEmpty()) said.add("Nothing to buy, nothing to measure again.");
        paragraph(
                said,
                "To buy, free of knots near the joints:",
                a.toBuy().stream().map(AllotWords::purchase).toList());
        paragraph(
                said,
                "To measure again before anything is cut:",
                a.checks().stream().map(AllotWords::check).toList());
        List<String> left = a.leftOver().stream()
                .map(l -> l.board().id() + l.why().map(w -> " (" + w + ")").orElse(""))
                .toList();
        if (!left.isEmpty()) paragraph(said, "Left over:", left);
        if (!notWhole.isEmpty()) paragraph(said, "Left out, since their lines are not whole:", notWhole);
        return String.join("\n", said);
    }

    private static void paragraph(List<String> said, String head, List<String> lines) {
        if (lines.isEmpty()) return;
        said.add((said.isEmpty() ? "" : "\n") + head);
        for (String line : lines) said.add("· " + line);
    }

    private static String purchase(RackAllotment.Purchase p) {
        String instead = p.instead().isEmpty() ? "" : ", instead of " + String.join(", ", p.instead());
        return p.count() + " of " + NumberField.spoken(p.size().width()) + " × "
                + NumberField.spoken(p.size().thickness()) + " mm, "
                + NumberField.spoken(p.size().length()) + " mm long or longer, for "
                + String.join(", ", p.parts()) + instead;
    }

    private static String check(RackAllotment.Check c) {
        String found = Double.isInfinite(c.clearance())
                ? "found at no cut"
                : String.format(Locale.ROOT, "%.1f mm from the nearest cut, %.1f wanted", c.clearance(), c.margin());
        return "board " + c.option().placing().board().id() + ", knot "
                + c.fit().knot().id() + ": " + found
                + ", " + c.fit().mayBeOut();
    }
}
