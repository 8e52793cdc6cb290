package org.marktwice.cli;

import java.util.ArrayList;
import java.util.List;
import org.marktwice.classroom.Results;
import org.marktwice.classroom.Results.SlipCount;
import org.marktwice.classroom.Reteach;

/** What to reteach tomorrow, on one page of a terminal or of paper. */
final class ReteachText {
    private static final int MOST_EXAMPLES = 2;

    private ReteachText() {}

    static String of(Results results, Reteach reteach) {
        List<String> lines = new ArrayList<>();
        lines.add(Text.ends(
                "To teach again: " + results.title(), Text.count(results.rows().size(), "learner", "learners")));
        lines.add(Text.rule());
        if (results.rows().isEmpty()) lines.add("No attempt here could be marked.");
        else if (reteach.points().isEmpty()) lines.add("No slip was made by one learner in five or more.");
        int n = 0;
        for (Reteach.Point point : reteach.points()) {
            if (n > 0) lines.add("");
            point(lines, ++n, point);
        }
        foot(lines, reteach);
        return String.join("\n", lines);
    }

    private static void point(List<String> lines, int n, Reteach.Point point) {
        lines.add(Text.ends(n + ". " + point.texts().title(), point.learners().size() + " of " + point.of()));
        lines.add(Text.wrapped("   who      ", String.join(", ", point.learners())));
        for (SlipCount slip : point.slips().stream().limit(MOST_EXAMPLES).toList()) {
            lines.add(Text.wrapped("   found    ", slip.example()));
        }
        lines.add(Text.wrapped("   why      ", point.texts().why()));
        lines.add(Text.wrapped("   instead  ", point.texts().instead()));
        if (!point.texts().safety().isEmpty())
            lines.add(Text.wrapped("   caution  ", point.texts().safety()));
        if (!point.canShow().isEmpty()) {
            lines.add(Text.wrapped("   to show  ", "the work of " + String.join(", ", point.canShow())));
        }
    }

    private static void foot(List<String> lines, Reteach reteach) {
        if (!reteach.help().isEmpty()) {
            lines.add("");
            lines.add(Text.wrapped("At the bench first: ", String.join(", ", reteach.help())));
        }
        if (!reteach.sure().isEmpty()) {
            lines.add("");
            lines.add(Text.wrapped("No need to go over: ", String.join("; ", reteach.sure())));
        }
    }
}
