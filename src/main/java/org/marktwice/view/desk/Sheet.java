package org.marktwice.view.desk;

import java.awt.BorderLayout;
import java.awt.Color;
import java.awt.Component;
import java.awt.Dimension;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.SwingConstants;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.TableCellRenderer;
import org.jspecify.annotations.Nullable;
import org.marktwice.picture.Ink;
import org.marktwice.view.Look;
import org.marktwice.view.Look.Style;

/** A plain table: words at the left of their cells, figures at the right, sorted by a click on a head. */
final class Sheet<T> extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final int ROW = 30;
    private static final int PAD = 10;

    private final transient Rows<T> rows;
    private final JTable table;

    Sheet(String name, String what, Rows<T> rows) {
        super(new BorderLayout());
        this.rows = rows;
        setOpaque(false);
        table = new Lines(rows);
        table.setName(name);
        table.getAccessibleContext().setAccessibleName(what);
        table.setFillsViewportHeight(true);
        table.setAutoCreateRowSorter(true);
        table.setShowVerticalLines(false);
        table.setShowHorizontalLines(true);
        table.setIntercellSpacing(new Dimension(0, 1));
        table.getTableHeader().setReorderingAllowed(false);
        rows.addTableModelListener(e -> {
            if (e.getFirstRow() == javax.swing.event.TableModelEvent.HEADER_ROW) dress();
        });
        dress();
        JScrollPane scroll = new JScrollPane(table);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        add(scroll);
    }

    private void dress() {
        for (int i = 0; i < table.getColumnCount(); i++) {
            Rows.Col<T> column = rows.column(i);
            table.getColumnModel().getColumn(i).setPreferredWidth((int) (100 * column.weight()));
            table.getColumnModel().getColumn(i).setHeaderRenderer(new Head(column.spoken() != null, column.help()));
        }
    }

    JTable table() {
        return table;
    }

    Optional<T> chosen() {
        int row = table.getSelectedRow();
        if (row < 0 || table.convertRowIndexToModel(row) >= rows.getRowCount()) return Optional.empty();
        return Optional.of(rows.at(table.convertRowIndexToModel(row)));
    }

    /** @param index of the line in the model's order */
    void choose(int index) {
        int row = table.convertRowIndexToView(index);
        table.getSelectionModel().setSelectionInterval(row, row);
    }

    private static final class Lines extends JTable {
        private static final long serialVersionUID = 1L;
        private final transient Rows<?> of;

        Lines(Rows<?> rows) {
            super(rows);
            of = rows;
            Look.styled(this, Style.BODY);
            setRowHeight(Look.px(ROW));
            // Enter and the arrows belong to the screen and to choosing a line
            getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(javax.swing.KeyStroke.getKeyStroke("ENTER"), "none");
        }

        @Override
        public void updateUI() {
            super.updateUI();
            setRowHeight(Look.px(ROW));
            setBackground(Look.colour(Ink.PANEL));
            setGridColor(Look.colour(Ink.BORDER));
            setSelectionBackground(Look.colour(Ink.PICKED));
            setSelectionForeground(Look.colour(Ink.INK));
        }

        @Override
        public TableCellRenderer getCellRenderer(int row, int column) {
            Rows.Col<?> col = of.column(convertColumnIndexToModel(column));
            return new Cell(col.spoken());
        }
    }

    private static final class Cell extends DefaultTableCellRenderer {
        private static final long serialVersionUID = 1L;
        private final transient java.util.function.@Nullable Function<Double, String> spoken;

        Cell(java.util.function.@Nullable Function<Double, String> spoken) {
            this.spoken = spoken;
        }

        @Override
        public Component getTableCellRendererComponent(
                JTable table, @Nullable Object value, boolean selected, boolean focused, int row, int column) {
            String text = value == null ? "" : value.toString();
            if (spoken != null && value instanceof Double number) text = spoken.apply(number);
            super.getTableCellRendererComponent(table, text, selected, false, row, column);
            setHorizontalAlignment(spoken == null ? SwingConstants.LEFT : SwingConstants.RIGHT);
            setBorder(BorderFactory.createEmptyBorder(0, Look.px(PAD), 0, Look.px(PAD)));
            setForeground(ink(text));
            setToolTipText(text.isEmpty() ? null : text);
            return this;
        }

        /** A line's sign and its words have the ink of what they mean. */
        private static Color ink(String text) {
            if (text.startsWith("✕")) return Look.colour(Ink.WRONG);
            if (text.startsWith("✓")) return Look.colour(Ink.SOUND);
            if (text.startsWith("~")) return Look.colour(Ink.CLOSE);
            return Look.colour(text.startsWith("○") ? Ink.QUIET : Ink.INK);
        }
    }

    private static final class Head implements TableCellRenderer {
        private final boolean figures;
        private final String help;

        Head(boolean figures, String help) {
            this.figures = figures;
            this.help = help;
        }

        @Override
        public Component getTableCellRendererComponent(
                JTable table, Object value, boolean selected, boolean focused, int row, int column) {
            TableCellRenderer usual = table.getTableHeader().getDefaultRenderer();
            Component shown = usual.getTableCellRendererComponent(table, value, selected, focused, row, column);
            if (shown instanceof javax.swing.JLabel label) {
                label.setHorizontalAlignment(figures ? SwingConstants.RIGHT : SwingConstants.LEFT);
                label.setFont(Style.NOTE.font());
                label.setForeground(Look.colour(Ink.QUIET));
                label.setToolTipText(help);
                label.setBorder(BorderFactory.createEmptyBorder(Look.px(6), Look.px(PAD), Look.px(6), Look.px(PAD)));
            }
            return shown;
        }
    }
}
