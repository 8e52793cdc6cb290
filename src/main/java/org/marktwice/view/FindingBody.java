package org.marktwice.view;

import javax.swing.JButton;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.marktwice.feedback.SheetModel;
import org.marktwice.picture.Ink;
import org.marktwice.view.Look.Style;

/** A finding opened: what was found, why it matters, what would have been better, and where the trade says so. */
final class FindingBody extends JPanel {
    private static final long serialVersionUID = 1L;

    /** @param replay shows the deciding step */
    FindingBody(SheetModel.Line line, Runnable replay) {
        super(new MigLayout("insets 4 34 16 24, gap 8 8, wrap 2", "[42lp!,left][grow,fill]"));
        setOpaque(false);
        add(Look.prose(line.says(), Style.BODY, Ink.INK), "skip 1, growx, wmin 0");
        entry("Better", line.instead());
        entry("Why", line.why());
        entry("Care", line.safety());
        entry("Source", line.source());
        Integer step = line.finding().step();
        if (step != null) {
            JButton show = Look.link(new JButton("Step " + step + " in the replay →"));
            show.setName("show-step");
            show.addActionListener(e -> replay.run());
            add(show, "skip 1, growx 0, alignx left");
        }
    }

    private void entry(String word, String text) {
        if (text.isEmpty()) return;
        add(Look.quiet(word, Style.NOTE), "aligny top");
        add(
                Look.prose(
                        text,
                        word.equals("Source") ? Style.NOTE : Style.BODY,
                        word.equals("Source") ? Ink.QUIET : Ink.INK),
                "growx, wmin 0");
    }
}
