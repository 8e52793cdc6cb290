package org.marktwice.view.desk;

import java.util.List;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import org.marktwice.classroom.Results;
import org.marktwice.classroom.Reteach;
import org.marktwice.picture.Ink;
import org.marktwice.view.Card;
import org.marktwice.view.Column;
import org.marktwice.view.Look;
import org.marktwice.view.Look.Style;

/** One page: what to teach again tomorrow, to whom, and whose work can be shown. */
final class Tomorrow extends JPanel {
    private static final long serialVersionUID = 1L;

    private final Column column =
            new Column(new MigLayout("insets 0, fillx, wrap 1", "push[grow,fill,400:820:880]push"));

    private final JScrollPane scroll;

    Tomorrow() {
        super(new MigLayout("insets 0, fill", "[grow,fill]", "[grow,fill]"));
        setOpaque(false);
        scroll = column.scrolling();
        add(scroll, "grow, hmin 0");
        Card page = page();
        page.add(prose("There are no results yet.", Ink.QUIET), "wmin 0, gaptop 8");
        column.add(page, "growx, wmin 0");
    }

    private static Card page() {
        Card page = new Card(new MigLayout("insets 28 32 28 32, gap 0 6, wrap 1, fillx", "[grow,fill]"));
        page.setName("tomorrow");
        page.add(Look.label("What to teach again tomorrow", Style.TITLE));
        return page;
    }

    void show(Results results) {
        Reteach reteach = Reteach.of(results);
        column.removeAll();
        Card page = page();
        page.add(Look.quiet(results.title() + " · " + learners(results.rows().size()), Style.NOTE), "gapbottom 12");
        if (results.rows().isEmpty()) {
            page.add(prose("Nothing could be marked.", Ink.INK), "wmin 0");
        } else if (reteach.points().isEmpty()) {
            page.add(prose("Nothing that many have in common. A word to each learner will do.", Ink.INK), "wmin 0");
        }
        int number = 1;
        for (Reteach.Point point : reteach.points()) page.add(point(point, number++), "growx, wmin 0, gapbottom 14");
        people(page, "Nearly everyone keeps: ", reteach.sure(), "; no need to go over it.");
        people(page, "Far below the rest, and worth a visit at the bench: ", reteach.help(), ".");
        column.add(page, "growx, wmin 0");
        column.revalidate();
        column.repaint();
        SwingUtilities.invokeLater(() -> scroll.getVerticalScrollBar().setValue(0));
    }

    private static void people(JPanel page, String before, List<String> who, String after) {
        if (who.isEmpty()) return;
        page.add(prose(before + String.join(", ", who) + after, Ink.QUIET), "wmin 0, gaptop 4");
    }

    private static JComponent point(Reteach.Point point, int number) {
        JPanel lines = new JPanel(new MigLayout("insets 0, gap 0 4, wrap 1, fillx", "[grow,fill]"));
        lines.setOpaque(false);
        lines.setName("point-" + point.rule());
        lines.add(Look.prose(number + ".  " + point.texts().title(), Style.SUBTITLE, Ink.INK), "wmin 0");
        lines.add(
                prose(
                        point.learners().size() + " of " + learners(point.of()) + ": "
                                + String.join(", ", point.learners()),
                        Ink.WRONG),
                "wmin 0");
        lines.add(prose(point.texts().why(), Ink.INK), "wmin 0");
        lines.add(prose("Instead: " + point.texts().instead(), Ink.INK), "wmin 0");
        if (!point.slips().isEmpty()) {
            lines.add(prose("For instance " + point.slips().get(0).example(), Ink.QUIET), "wmin 0");
        }
        if (!point.canShow().isEmpty()) {
            lines.add(prose("Can show it: " + String.join(", ", point.canShow()), Ink.SOUND), "wmin 0");
        }
        return lines;
    }

    private static JComponent prose(String words, Ink ink) {
        return Look.prose(words, Style.BODY, ink);
    }

    private static String learners(int n) {
        return n + (n == 1 ? " learner" : " learners");
    }
}
