package org.marktwice.print;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import org.marktwice.classroom.JobRecord;
import org.marktwice.classroom.Marked;
import org.marktwice.feedback.Replayed;
import org.marktwice.picture.Figures;
import org.marktwice.scenario.Scenario;

/** Printed sheets: for an exercise, and for a class's attempts. {@link SheetFile} saves them. */
public final class Sheets {
    private Sheets() {}

    /** The sheets of these kinds, in the kinds' own order, numbered through. */
    public static List<Page> of(Scenario scenario, Collection<SheetKind> kinds, Paper paper) {
        return of(scenario, kinds, paper, Issue.BLANK);
    }

    /** @param issue what the title block of the drawing and the parts list says of where they come from */
    public static List<Page> of(Scenario scenario, Collection<SheetKind> kinds, Paper paper, Issue issue) {
        return of(scenario, kinds, paper, issue, new Wood());
    }

    /** @param wood what the boards look like */
    static List<Page> of(Scenario scenario, Collection<SheetKind> kinds, Paper paper, Issue issue, Figures wood) {
        if (kinds.isEmpty()) throw new IllegalArgumentException("no kind of sheet");
        List<Leaf> leaves = new ArrayList<>();
        for (SheetKind kind : EnumSet.copyOf(kinds)) leaves.addAll(leaves(kind, scenario, paper, issue, wood));
        return Leaf.bound(leaves, paper);
    }

    private static List<Leaf> leaves(SheetKind kind, Scenario scenario, Paper paper, Issue issue, Figures wood) {
        return switch (kind) {
            case DRAWING -> new DrawingSheet(scenario, paper, issue).leaves();
            case PARTS -> new PartsSheet(scenario, paper, issue).leaves();
            case WORKSHEET -> new Worksheet(scenario, paper, wood).leaves();
            case ANSWERS -> new AnswerSheet(scenario, paper, wood).leaves();
            case RULES -> RuleSheets.leaves(paper);
            case CAUTIONS -> CautionSheet.leaves(scenario, paper);
            case RECORD -> RecordForm.blank(JobRecord.blank(scenario)).leaves(paper);
        };
    }

    /** A mark sheet for each attempt that was marked, each numbered by itself, to be handed back. */
    public static List<Page> marks(List<Marked> marked, Paper paper) {
        List<Page> pages = new ArrayList<>();
        for (Marked one : marked) {
            if (one.sheet().isPresent()) pages.addAll(Leaf.bound(MarkSheets.leaves(one, paper), paper));
        }
        return List.copyOf(pages);
    }

    /** With the row that says where the sheet comes from. */
    static TitleBlock signed(SheetKind kind, Scenario scenario, String scale, Issue issue) {
        return new TitleBlock(kind.spoken(), scenario.title(), "level " + scenario.level(), scale)
                .signed(issue, scenario.id());
    }

    static TitleBlock block(SheetKind kind, Scenario scenario, String scale) {
        return new TitleBlock(
                kind.spoken(), scenario.title(), "level " + scenario.level() + " · " + scenario.id(), scale);
    }

    /** The mark sheet of one attempt. */
    public static List<Page> marks(Replayed replayed, Paper paper) {
        return Leaf.bound(MarkSheets.leaves(replayed, paper), paper);
    }
}
