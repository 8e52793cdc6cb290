package org.marktwice.view;

import java.util.List;
import java.util.Locale;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.marktwice.picture.Ink;
import org.marktwice.view.Look.Style;

/** The mark sheet's left side: the job as it would come out, the total, the estimate beside it, and what it was judged by. */
final class SheetSummary {
    private final SheetModel model;

    SheetSummary(SheetModel model) {
        this.model = model;
    }

    JComponent component() {
        Card card = new Card(new MigLayout("insets 4, fill", "[grow,fill]", "[grow,fill]"));
        Column column = new Column(new MigLayout("insets 14 16 16 16, gap 0, wrap 1", "[grow,fill]"));
        heading(column, "The job as it would come out", "0");
        JobPane picture = new JobPane();
        picture.show(model);
        picture.getAccessibleContext().setAccessibleName("The job, each part with its verdict");
        column.add(picture, "growx, h 200lp!, wmin 0");
        JLabel total = Look.label(model.total(), Style.TITLE);
        total.setName("total");
        column.add(total, "gaptop 12, split 2, growx 0");
        column.add(Look.quiet("marks", Style.BODY), "growx, gapleft 8");
        estimate(column);
        if (!model.notJudged().isEmpty()) {
            heading(column, "Nothing to judge", "24");
            for (String title : model.notJudged()) prose(column, title, Ink.QUIET);
        }
        heading(column, "The workshop's practice", "24");
        for (String setting : SheetText.practice(model.scenario().practice())) prose(column, setting, Ink.QUIET);
        card.add(column.scrolling(), "grow, hmin 0, wmin 0");
        return card;
    }

    private void estimate(JPanel into) {
        heading(into, "Your estimate", "24");
        SheetModel.Estimate estimate = model.estimate();
        if (!estimate.given()) {
            prose(into, "You handed in without one.", Ink.QUIET);
            return;
        }
        list(into, "Expected, and lost marks", estimate.foreseen());
        list(into, "Expected, and lost none", estimate.held());
        list(into, "Lost marks unexpectedly", estimate.missed());
        if (estimate.foreseen().isEmpty()
                && estimate.held().isEmpty()
                && estimate.missed().isEmpty()) {
            prose(into, "You expected to lose no marks, and lost none.", Ink.INK);
        }
    }

    private static void list(JPanel into, String what, List<String> titles) {
        if (titles.isEmpty()) return;
        into.add(Look.label(what, Style.NOTE), "gaptop 6");
        for (String title : titles) prose(into, title, Ink.QUIET);
    }

    private static void prose(JPanel into, String text, Ink ink) {
        into.add(Look.prose(text, Style.NOTE, ink), "growx, wmin 0, gaptop 4");
    }

    private static void heading(JPanel into, String text, String gap) {
        into.add(Look.quiet(text.toUpperCase(Locale.ROOT), Style.HEADING), "gaptop " + gap + ", gapbottom 4");
    }
}
