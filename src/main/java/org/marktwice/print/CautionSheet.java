package org.marktwice.print;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.marktwice.picture.Ink;
import org.marktwice.rulebook.Cautions;
import org.marktwice.rulebook.Rule;
import org.marktwice.rulebook.RuleBook;
import org.marktwice.rulebook.Texts;
import org.marktwice.scenario.Scenario;

/** What is said before real work, and room for the workshop's own rules, which come first. */
final class CautionSheet {
    /** Lines for the workshop's own rules, where the page is full without them. */
    private static final int FEWEST = 6;

    private CautionSheet() {}

    static List<Leaf> leaves(Scenario scenario, Paper paper) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(Blocks.text("Before real work", Type.TITLE, Ink.INK));
        blocks.add(Blocks.space(6));
        int number = 1;
        for (String caution : Cautions.ALL) {
            blocks.add(Blocks.labelled(number++ + "", 18, caution, Type.HEAD_PLAIN, Ink.INK));
            blocks.add(Blocks.space(5));
        }
        Set<String> own = ofRules(scenario);
        if (!own.isEmpty()) blocks.add(Blocks.heading("For this exercise", ""));
        for (String caution : own) blocks.add(Blocks.labelled("•", 18, caution, Type.BODY, Ink.INK));
        blocks.add(Blocks.heading("The rules of this workshop", "they come first"));
        Rectangle2D room = TitleBlock.inside(paper, false);
        double used =
                blocks.stream().mapToDouble(b -> b.height(room.getWidth())).sum();
        int lines = (int) ((room.getHeight() - used) / line().height(room.getWidth()));
        for (int i = 0; i < Math.max(FEWEST, lines); i++) blocks.add(line());
        return Leaf.flowing(Sheets.block(SheetKind.CAUTIONS, scenario, ""), paper, blocks);
    }

    /** Those that belong to a rule of the exercise's stages. */
    private static Set<String> ofRules(Scenario scenario) {
        Set<String> found = new LinkedHashSet<>();
        for (Rule rule : RuleBook.rules()) {
            String safety = Texts.of(rule.id()).safety();
            if (scenario.stages().contains(rule.stage()) && !safety.isEmpty()) found.add(safety);
        }
        return found;
    }

    private static Block line() {
        return Blocks.of(Paper.points(9), (pen, x, y, width) -> {
            double base = y + Paper.points(8);
            pen.line(x, base, x + width, base, Pen.NARROW, Ink.BORDER);
        });
    }
}
