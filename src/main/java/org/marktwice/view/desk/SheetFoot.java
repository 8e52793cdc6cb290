package org.marktwice.view.desk;

import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.util.List;
import javax.accessibility.AccessibleRole;
import javax.swing.JTable;
import javax.swing.event.ChangeEvent;
import javax.swing.event.ListSelectionEvent;
import javax.swing.event.TableColumnModelEvent;
import javax.swing.event.TableColumnModelListener;
import org.marktwice.picture.Ink;
import org.marktwice.view.Look;
import org.marktwice.view.Look.Style;
import org.marktwice.view.Painted;

/** A last line below a table, which stays in sight and where it is however the lines above are sorted. */
final class SheetFoot extends Painted {
    private static final long serialVersionUID = 1L;
    private static final int HIGH = 30;

    private final JTable of;
    private List<Cell> cells = List.of();

    /**
     * @param words empty for nothing
     * @param pad at either side, as in the cells above
     * @param right whether it is written at the right
     */
    record Cell(String words, int pad, boolean right) {}

    SheetFoot(JTable of) {
        super(AccessibleRole.LABEL, 40, HIGH);
        this.of = of;
        setVisible(false);
        of.getColumnModel().addColumnModelListener(new TableColumnModelListener() {
            @Override
            public void columnMarginChanged(ChangeEvent event) {
                repaint();
            }

            @Override
            public void columnAdded(TableColumnModelEvent event) {}

            @Override
            public void columnRemoved(TableColumnModelEvent event) {}

            @Override
            public void columnMoved(TableColumnModelEvent event) {}

            @Override
            public void columnSelectionChanged(ListSelectionEvent event) {}
        });
    }

    /** @param next a cell a column; none hides it */
    void show(List<Cell> next) {
        cells = List.copyOf(next);
        setVisible(!cells.isEmpty());
        StringBuilder said = new StringBuilder();
        for (int i = 0; i < cells.size() && i < of.getColumnCount(); i++) {
            if (!cells.get(i).words().isEmpty())
                said.append(of.getColumnName(i))
                        .append(": ")
                        .append(cells.get(i).words())
                        .append("; ");
        }
        readAs(said.toString());
        repaint();
    }

    @Override
    protected void draw(Graphics2D g) {
        g.setColor(Look.colour(Ink.QUIET));
        g.fillRect(0, 0, of.getWidth(), Math.max(1, Look.px(1)));
        g.setFont(Style.STRONG.font());
        g.setColor(Look.colour(Ink.INK));
        FontMetrics metrics = g.getFontMetrics();
        int base = (getHeight() - metrics.getHeight()) / 2 + metrics.getAscent();
        int x = 0;
        for (int i = 0; i < cells.size() && i < of.getColumnCount(); i++) {
            Cell cell = cells.get(i);
            int wide = of.getColumnModel().getColumn(i).getWidth();
            int pad = Look.px(cell.pad());
            int at = cell.right() ? x + wide - pad - metrics.stringWidth(cell.words()) : x + pad;
            g.drawString(cell.words(), at, base);
            x += wide;
        }
    }
}
