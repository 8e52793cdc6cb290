package org.marktwice.view;

import java.util.List;
import java.util.Locale;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import net.miginfocom.swing.MigLayout;
import org.marktwice.picture.Ink;
import org.marktwice.rulebook.ExplanationWords.Row;
import org.marktwice.rulebook.Verdict;
import org.marktwice.view.Look.Style;

/** Why the model answer is the best: its sentences, and one board's table of parts and turns. */
final class WhyPane extends JPanel {
    private static final long serialVersionUID = 1L;
    private final Column column = new Column(new MigLayout("insets 0 0 8 12, gap 0, wrap 1", "[grow,fill]"));

    WhyPane() {
        super(new MigLayout("insets 0, fill", "[grow,fill]", "[grow,fill]"));
        setOpaque(false);
        JScrollPane scroll = column.scrolling();
        scroll.setName("reasons");
        scroll.getAccessibleContext().setAccessibleName("Why the model answer is the best");
        add(scroll, "grow, wmin 0, hmin 0");
    }

    void show(String board, List<String> why, List<Row> table) {
        column.removeAll();
        for (String sentence : why) column.add(Look.prose(sentence, Style.BODY, Ink.INK), "growx, wmin 0, gapbottom 6");
        column.add(
                Look.quiet(("Board " + board + ", every part and turn").toUpperCase(Locale.ROOT), Style.HEADING),
                "gaptop 10, gapbottom 4");
        String before = "";
        for (Row row : table) {
            String part = row.part().name();
            if (!part.equals(before)) column.add(Look.label(part, Style.STRONG), "gaptop 8, gapbottom 2");
            before = part;
            column.add(line(row), "growx, wmin 0, gapbottom 4");
        }
        column.revalidate();
        column.repaint();
    }

    private static JComponent line(Row row) {
        JPanel line = new JPanel(new MigLayout("insets 0, gap 8 0", "[14lp!,left][grow,fill]", "[top]"));
        line.setOpaque(false);
        JLabel sign = new JLabel(new Sign(row.clear() ? Verdict.SOUND : Verdict.WRONG));
        sign.getAccessibleContext().setAccessibleName(row.clear() ? "clear" : "will not do");
        line.add(sign, "aligny top");
        String lies = row.off().isEmpty() ? row.turn() : row.turn() + ", " + row.off();
        String text = lies.isEmpty() ? row.result() : lies + ": " + row.result();
        line.add(
                Look.prose(text, row.chosen() ? Style.STRONG : Style.NOTE, row.chosen() ? Ink.INK : Ink.QUIET),
                "growx, wmin 0");
        return line;
    }
}
