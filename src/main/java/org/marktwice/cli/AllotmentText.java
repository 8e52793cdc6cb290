package org.marktwice.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.marktwice.advice.Option;
import org.marktwice.classroom.Laying;
import org.marktwice.classroom.RackAllotment;
import org.marktwice.classroom.RackAllotment.Check;
import org.marktwice.classroom.RackAllotment.LeftOver;
import org.marktwice.classroom.RackAllotment.Purchase;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Placing;
import org.marktwice.timber.KnotFit;
import org.marktwice.timber.Showing;
import org.marktwice.timber.Size;
import org.marktwice.timber.Surface;

/** What goes to whom, for a terminal or a sheet of paper. */
final class AllotmentText {
    private final RackAllotment allotment;
    private final List<String> names;
    private final List<String> lines = new ArrayList<>();

    private AllotmentText(RackAllotment allotment, List<String> names) {
        this.allotment = allotment;
        this.names = names;
    }

    /** @param names whose job each is */
    static String of(RackAllotment allotment, List<String> names) {
        AllotmentText text = new AllotmentText(allotment, names);
        text.head();
        for (int i = 0; i < names.size(); i++) text.job(i);
        text.checks();
        text.leftOver();
        text.buy();
        return String.join("\n", text.lines);
    }

    private void head() {
        lines.add(allotment.scenario().title() + ", " + Text.count(names.size(), "job", "jobs") + " from "
                + Text.count(allotment.rack().size(), "board", "boards") + ": " + allotment.supplied() + " of "
                + Text.count(allotment.parts(), "part", "parts") + " supplied, " + allotment.clear() + " clear");
    }

    private void title(String title) {
        lines.add("");
        lines.add(title);
        lines.add(Text.rule());
    }

    private void job(int job) {
        title(names.get(job));
        for (Part part : allotment.scenario().drawing().parts()) {
            String lead = String.format(Locale.ROOT, "  %-20s ", part.name());
            lines.add(allotment
                    .jobs()
                    .get(job)
                    .of(part)
                    .map(o -> Text.wrapped(lead, laid(o)))
                    .orElse(lead + "no board"));
        }
    }

    private static String laid(Option option) {
        Placing placing = option.placing();
        String near = option.nearest()
                .map(n -> (option.clear() ? "" : "NOT CLEAR: ") + "knot " + n.knot() + " keeps "
                        + Text.mm(n.clearance()) + " from " + n.joint())
                .orElse("no knot near a cut");
        return "board " + placing.board().id() + ": " + Laying.of(placing).spoken() + "; " + Laying.trimmed(placing)
                + "; " + near;
    }

    private void checks() {
        if (allotment.checks().isEmpty()) return;
        title("To measure again before anything is cut");
        for (Check check : allotment.checks()) {
            KnotFit fit = check.fit();
            String lead = "  board " + check.option().placing().board().id() + ", knot "
                    + fit.knot().id() + ": ";
            String found = Double.isInfinite(check.clearance())
                    ? "found at no cut"
                    : Text.mm(check.clearance()) + " from the nearest cut, margin " + Text.mm(check.margin());
            lines.add(Text.wrapped(lead, found + ", " + fit.mayBeOut() + "; " + from(fit)));
        }
    }

    private static String from(KnotFit fit) {
        String on =
                fit.given().stream().map(Showing::surface).map(Surface::spoken).collect(Collectors.joining(" and "));
        if (!fit.onOneBranch()) return "what shows on " + on + " belongs to no one branch from this pith";
        return "found from " + on + (fit.surfaces() == 1 ? " only" : "");
    }

    private void leftOver() {
        if (allotment.leftOver().isEmpty()) return;
        title("Left over");
        List<String> usable = allotment.leftOver().stream()
                .filter(l -> l.why().isEmpty())
                .map(l -> l.board().id())
                .toList();
        if (!usable.isEmpty()) lines.add(Text.wrapped("  ", String.join(", ", usable)));
        for (LeftOver left : allotment.leftOver()) {
            left.why().ifPresent(why -> lines.add(Text.wrapped("  ", why)));
        }
    }

    private void buy() {
        if (allotment.toBuy().isEmpty()) return;
        title("To buy, free of knots near the joints");
        for (Purchase p : allotment.toBuy()) {
            Size size = p.size();
            String what = String.format(
                    Locale.ROOT,
                    "%s %s × %s mm, %s mm long or longer, for %s",
                    Text.count(p.count(), "board", "boards"),
                    Text.number(size.width()),
                    Text.number(size.thickness()),
                    Text.number(size.length()),
                    String.join(", ", p.parts()));
            String instead = p.instead().isEmpty() ? "" : ", instead of " + String.join(", ", p.instead());
            lines.add(Text.wrapped("  ", what + instead));
        }
    }
}
