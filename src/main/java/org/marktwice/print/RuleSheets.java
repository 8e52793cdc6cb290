package org.marktwice.print;

import java.util.ArrayList;
import java.util.List;
import org.marktwice.picture.Ink;
import org.marktwice.rulebook.Rule;
import org.marktwice.rulebook.RuleBook;
import org.marktwice.rulebook.Texts;
import org.marktwice.scenario.Stage;

/** The rule book, made from the rules themselves. */
final class RuleSheets {
    private static final double INDENT = 44;

    private RuleSheets() {}

    static List<Leaf> leaves(Paper paper) {
        List<Block> blocks = new ArrayList<>();
        for (Stage stage : Stage.values()) {
            List<Rule> rules =
                    RuleBook.rules().stream().filter(r -> r.stage() == stage).toList();
            if (rules.isEmpty()) continue;
            blocks.add(Blocks.heading(stage.title(), rules.size() + (rules.size() == 1 ? " rule" : " rules")));
            for (Rule rule : rules) blocks.add(rule(rule));
        }
        TitleBlock block = new TitleBlock(
                SheetKind.RULES.spoken(), "The rules, and why", RuleBook.rules().size() + " rules", "");
        return Leaf.flowing(block, paper, blocks);
    }

    private static Block rule(Rule rule) {
        Texts.RuleTexts texts = Texts.of(rule.id());
        List<Block> blocks = new ArrayList<>();
        blocks.add(Blocks.space(5));
        String worth = Figure.number(rule.worth());
        blocks.add(Blocks.title(texts.title(), "worth " + worth));
        blocks.add(Blocks.labelled("why", INDENT, texts.why(), Type.BODY, Ink.INK));
        blocks.add(Blocks.labelled("instead", INDENT, texts.instead(), Type.BODY, Ink.INK));
        blocks.add(Blocks.labelled("source", INDENT, texts.source(), Type.NOTE, Ink.QUIET));
        if (!texts.safety().isEmpty()) {
            blocks.add(Blocks.labelled("caution", INDENT, texts.safety(), Type.BODY, Ink.WRONG));
        }
        return Blocks.together(blocks);
    }
}
