package org.marktwice.view;

import java.util.List;
import java.util.Locale;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.marktwice.feedback.SheetModel;
import org.marktwice.picture.Ink;
import org.marktwice.rulebook.PracticeWords;
import org.marktwice.scenario.Practice;
import org.marktwice.scenario.Scenario;
import org.marktwice.view.Commands.Deed;
import org.marktwice.view.Look.Style;

/** The mark sheet's left side: the job as it would come out, the total, the estimate beside it, and what it was judged by. */
final class SheetSummary {
    /** With this share of the marks one can do with less help. */
    private static final double WELL = 0.8;

    interface Host {
        void beginWithLess(Scenario scenario, Practice.Guidance guidance);

        void practice();
    }

    private final Host host;
    private final SheetModel model;
    private final Calibration calibration;

    /** @param calibration how the learner's estimates have fared over time */
    SheetSummary(Host host, SheetModel model, Calibration calibration) {
        this.host = host;
        this.model = model;
        this.calibration = calibration;
    }

    /** @param job leads to the job drawn larger */
    JComponent component(Deed job) {
        Card card = new Card(new MigLayout("insets 4, fill", "[grow,fill]", "[grow,fill]"));
        Column column = new Column(new MigLayout("insets 14 16 16 16, gap 0, wrap 1", "[grow,fill]"));
        heading(column, "The job as it would come out", "0");
        JobPane picture = new JobPane();
        picture.show(model);
        picture.getAccessibleContext().setAccessibleName("The job, each part with its verdict");
        column.add(picture, "growx, h 200lp!, wmin 0");
        JButton larger = Look.link(new JButton(job));
        larger.setText(job.command().word() + " →");
        larger.setName("job");
        column.add(larger, "growx 0, alignx left");
        JLabel total = Look.label(model.total(), Style.TITLE);
        total.setName("total");
        column.add(total, "gaptop 12, split 2, growx 0");
        column.add(Look.quiet("marks", Style.BODY), "growx, gapleft 8");
        lessHelp(column);
        estimate(column);
        hints(column);
        if (!model.notJudged().isEmpty()) {
            heading(column, "Nothing to judge", "24");
            for (String title : model.notJudged()) prose(column, title, Ink.QUIET);
        }
        heading(column, "The workshop's practice", "24");
        for (PracticeWords.Setting set : PracticeWords.all(model.scenario().practice()))
            prose(column, set.line(), set.departs() ? Ink.INK : Ink.QUIET);
        JButton practice = Look.link(new JButton("What each means →"));
        practice.setName("practice");
        practice.setToolTipText(Commands.Keys.tooltip(WindowCommands.PRACTICE));
        practice.addActionListener(e -> host.practice());
        column.add(practice, "growx 0, alignx left, gaptop 4");
        card.add(column.scrolling(), "grow, hmin 0, wmin 0");
        return card;
    }

    private void estimate(JPanel into) {
        heading(into, "Your estimates", "24");
        SheetModel.Estimate parts = model.parts();
        SheetModel.Estimate rules = model.estimate();
        if (parts.given()) beside(into, parts);
        else if (rules.given()) beside(into, rules);
        List<String> clearances = model.clearances();
        if (!clearances.isEmpty()) into.add(Look.label("Clearances, before turning", Style.NOTE), "gaptop 6");
        for (String line : clearances) prose(into, line, Ink.QUIET);
        if (!rules.given() && clearances.isEmpty()) prose(into, "You handed in without one.", Ink.QUIET);
        if (!calibration.isEmpty()) {
            into.add(Look.label("Over time", Style.NOTE), "gaptop 10");
            for (String line : calibration.words()) prose(into, line, Ink.QUIET);
            if (calibration.points().size() > 1)
                into.add(new CalibrationChart(calibration), "growx, gaptop 6, h 64lp!");
        }
    }

    private static void beside(JPanel into, SheetModel.Estimate estimate) {
        list(into, "Expected, and lost marks", estimate.foreseen());
        list(into, "Expected, and lost none", estimate.held());
        list(into, "Lost marks unexpectedly", estimate.missed());
        boolean nothing = estimate.foreseen().isEmpty()
                && estimate.held().isEmpty()
                && estimate.missed().isEmpty();
        if (nothing) prose(into, "You expected to lose no marks, and lost none.", Ink.INK);
    }

    private void hints(JPanel into) {
        List<String> hints = model.hints();
        if (hints.isEmpty()) return;
        heading(into, "Hints used", "24");
        for (String hint : hints) prose(into, hint, Ink.QUIET);
    }

    /** An offer, to whoever did well while being told early, to be told later next time. */
    private void lessHelp(JPanel into) {
        Practice.Guidance next = SheetModel.lessHelp(model.bench().guidance()).orElse(null);
        double share = model.sheet().outOf() > 0
                ? model.sheet().marks() / model.sheet().outOf()
                : 0;
        if (next == null || share < WELL) return;
        heading(into, "Next time", "24");
        prose(
                into,
                "You were told " + PracticeWords.told(model.bench().guidance()) + ". You could do it being told "
                        + PracticeWords.told(next) + ".",
                Ink.QUIET);
        JButton again = Look.link(new JButton("Again with less help →"));
        again.setName("less-help");
        again.addActionListener(e -> host.beginWithLess(model.scenario(), next));
        into.add(again, "growx 0, alignx left, gaptop 4");
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
