package org.marktwice.view.desk;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;
import javax.accessibility.AccessibleRole;
import javax.swing.JTable;
import javax.swing.table.TableCellRenderer;
import org.marktwice.picture.Ink;
import org.marktwice.view.Look;
import org.marktwice.view.Look.Style;
import org.marktwice.view.Painted;

/** A table's head of several words, which goes on in a line below where its column is narrow; all end on one line. */
final class WrappedHead extends Painted implements TableCellRenderer {
    private static final long serialVersionUID = 1L;
    private static final int PAD = 8;

    private final int lines;
    private final boolean right;
    private String words = "";

    /**
     * @param lines as many as it may have
     * @param right whether what stands below is written at the right
     */
    WrappedHead(int lines, boolean right) {
        super(AccessibleRole.COLUMN_HEADER);
        this.lines = lines;
        this.right = right;
    }

    @Override
    public Component getTableCellRendererComponent(
            JTable table, Object value, boolean selected, boolean focused, int row, int column) {
        words = String.valueOf(value);
        setToolTipText(words);
        return this;
    }

    @Override
    public Dimension getPreferredSize() {
        FontMetrics metrics = getFontMetrics(Style.NOTE.font());
        return new Dimension(Look.px(40), lines * metrics.getHeight() + Look.px(12));
    }

    @Override
    protected void draw(Graphics2D g) {
        g.setColor(Look.colour(Ink.PANEL));
        g.fillRect(0, 0, getWidth(), getHeight());
        g.setColor(Look.colour(Ink.BORDER));
        g.fillRect(0, getHeight() - 1, getWidth(), 1);
        g.fillRect(getWidth() - 1, 0, 1, getHeight());
        g.setFont(Style.NOTE.font());
        g.setColor(Look.colour(Ink.QUIET));
        FontMetrics metrics = g.getFontMetrics();
        List<String> shown = wrapped(metrics, getWidth() - Look.px(2 * PAD));
        int base = getHeight() - Look.px(6) - metrics.getDescent() - (shown.size() - 1) * metrics.getHeight();
        for (String line : shown) {
            int x = right ? getWidth() - Look.px(PAD) - metrics.stringWidth(line) : Look.px(PAD);
            g.drawString(line, x, base);
            base += metrics.getHeight();
        }
    }

    private List<String> wrapped(FontMetrics metrics, int room) {
        List<String> all = new ArrayList<>();
        String line = "";
        for (String word : words.split(" ")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            boolean fits = metrics.stringWidth(longer) <= room || line.isEmpty();
            if (!fits && all.size() + 1 < lines) {
                all.add(line);
                line = word;
            } else {
                line = longer;
            }
        }
        String last = line;
        while (last.length() > 1 && metrics.stringWidth(last) > room) {
            last = last.substring(0, last.length() - 2).stripTrailing() + "…";
        }
        all.add(last);
        return all;
    }
}
