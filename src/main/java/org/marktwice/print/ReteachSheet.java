package org.marktwice.print;

import java.util.ArrayList;
import java.util.List;
import org.marktwice.classroom.Results;
import org.marktwice.classroom.Results.SlipCount;
import org.marktwice.classroom.Reteach;
import org.marktwice.picture.Ink;

/** What to teach again tomorrow, for the teacher's hand: one page. */
public final class ReteachSheet {
    private static final double INDENT = 72;
    private static final int MOST_EXAMPLES = 2;

    private ReteachSheet() {}

    public static List<Page> of(Results results, Reteach reteach, Paper paper) {
        int n = results.rows().size();
        TitleBlock block =
                new TitleBlock("to teach again", results.title(), n == 1 ? "1 learner" : n + " learners", "");
        List<Leaf> leaves = List.of();
        for (Detail detail : Detail.values()) {
            leaves = Leaf.flowing(block, paper, blocks(results, reteach, detail));
            if (leaves.size() == 1) break;
        }
        return Leaf.bound(leaves, paper);
    }

    /** What is left out, step by step, until all stands on one page. */
    private enum Detail {
        ALL,
        ONE_EXAMPLE,
        ONLY_WHAT_TO_TEACH,
        FOUR_POINTS,
        THREE_POINTS;

        int points() {
            return this == THREE_POINTS ? 3 : this == FOUR_POINTS ? 4 : Integer.MAX_VALUE;
        }

        int examples() {
            return this == ALL ? MOST_EXAMPLES : 1;
        }

        boolean sure() {
            return this == ALL || this == ONE_EXAMPLE;
        }
    }

    private static List<Block> blocks(Results results, Reteach reteach, Detail detail) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(Blocks.text("To teach again", Type.TITLE, Ink.INK));
        if (results.rows().isEmpty()) {
            blocks.add(Blocks.text("No attempt here could be marked.", Type.BODY, Ink.INK));
        } else if (reteach.points().isEmpty()) {
            blocks.add(Blocks.text("No slip was made by one learner in five or more.", Type.BODY, Ink.INK));
        }
        for (Reteach.Point point :
                reteach.points().stream().limit(detail.points()).toList()) {
            blocks.addAll(point(point, detail.examples()));
        }
        if (!reteach.help().isEmpty()) {
            blocks.add(Blocks.heading("At the bench first", "far below the rest"));
            blocks.add(Blocks.text(String.join(", ", reteach.help()), Type.BODY, Ink.INK));
        }
        if (!reteach.sure().isEmpty() && detail.sure()) {
            blocks.add(Blocks.heading("No need to go over", "kept by nearly everyone"));
            blocks.add(Blocks.text(String.join("; ", reteach.sure()), Type.BODY, Ink.QUIET));
        }
        return blocks;
    }

    private static List<Block> point(Reteach.Point point, int examples) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(Blocks.heading(point.texts().title(), point.learners().size() + " of " + point.of()));
        labelled(blocks, "who", String.join(", ", point.learners()));
        for (SlipCount slip : point.slips().stream().limit(examples).toList()) {
            labelled(blocks, "found", slip.example());
        }
        labelled(blocks, "why", point.texts().why());
        labelled(blocks, "instead", point.texts().instead());
        labelled(blocks, "caution", point.texts().safety());
        if (!point.canShow().isEmpty()) {
            labelled(blocks, "to show", "the work of " + String.join(", ", point.canShow()));
        }
        return blocks;
    }

    private static void labelled(List<Block> blocks, String label, String text) {
        if (!text.isEmpty()) blocks.add(Blocks.labelled(label, INDENT, text, Type.BODY, Ink.INK));
    }
}
