package org.marktwice.view.desk;

import java.awt.Component;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.util.List;
import javax.accessibility.AccessibleRole;
import javax.swing.JTable;
import javax.swing.table.TableCellRenderer;
import org.marktwice.picture.Ink;
import org.marktwice.view.Look;
import org.marktwice.view.Look.Style;
import org.marktwice.view.Painted;

/** A head that is read from below, in two lines at most, so that many narrow columns stand side by side. */
final class UprightHead extends Painted implements TableCellRenderer {
    private static final long serialVersionUID = 1L;
    private static final int HIGH = 152;
    private String words = "";

    UprightHead(String help) {
        super(AccessibleRole.COLUMN_HEADER, 40, HIGH);
        setToolTipText(help);
    }

    @Override
    public Component getTableCellRendererComponent(
            JTable table, Object value, boolean selected, boolean focused, int row, int column) {
        words = sorted(table, table.convertColumnIndexToModel(column)) + value;
        return this;
    }

    private static String sorted(JTable table, int column) {
        return table.getRowSorter().getSortKeys().stream()
                .limit(1)
                .filter(k -> k.getColumn() == column)
                .map(k -> switch (k.getSortOrder()) {
                    case ASCENDING -> "↑ ";
                    case DESCENDING -> "↓ ";
                    case UNSORTED -> "";
                })
                .findFirst()
                .orElse("");
    }

    @Override
    protected void draw(Graphics2D g) {
        g.setColor(Look.colour(Ink.PANEL));
        g.fillRect(0, 0, getWidth(), getHeight());
        g.setFont(Style.NOTE.font());
        g.setColor(Look.colour(Ink.QUIET));
        FontMetrics metrics = g.getFontMetrics();
        List<String> lines = lines(words, metrics, getHeight() - Look.px(14));
        g.rotate(-Math.PI / 2);
        int line = metrics.getAscent() + Look.px(2);
        int base = (getWidth() - line * lines.size()) / 2 + metrics.getAscent() - Look.px(1);
        for (String one : lines) {
            g.drawString(one, -getHeight() + Look.px(7), base);
            base += line;
        }
    }

    private static List<String> lines(String words, FontMetrics metrics, int room) {
        if (metrics.stringWidth(words) <= room) return List.of(words);
        int at = words.length();
        while (at > 0 && metrics.stringWidth(words.substring(0, at)) > room) at = words.lastIndexOf(' ', at - 1);
        if (at <= 0) return List.of(clipped(words, metrics, room));
        return List.of(words.substring(0, at), clipped(words.substring(at + 1), metrics, room));
    }

    private static String clipped(String words, FontMetrics metrics, int room) {
        String shown = words;
        while (!shown.isEmpty() && metrics.stringWidth(shown.equals(words) ? words : shown + "…") > room) {
            shown = shown.substring(0, shown.length() - 1);
        }
        return shown.equals(words) ? words : shown.stripTrailing() + "…";
    }
}
