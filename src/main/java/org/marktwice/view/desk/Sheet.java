package org.marktwice.view.desk;

import java.awt.BorderLayout;
import java.awt.Color;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.event.ActionEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import javax.swing.SwingConstants;
import javax.swing.event.TableModelEvent;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.TableCellRenderer;
import org.jspecify.annotations.Nullable;
import org.marktwice.files.Printable;
import org.marktwice.picture.Ink;
import org.marktwice.view.Look;
import org.marktwice.view.Look.Style;

/** A plain table: words at the left of their cells, figures at the right, sorted by a click on a head. */
final class Sheet<T> extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final int ROW = 30;
    private static final int PAD = 10;
    private static final int NARROW = 5;
    private static final int ARROW = 14;

    private final transient Rows<T> rows;
    private final Lines table;
    private final SheetFoot foot;

    Sheet(String name, String what, Rows<T> rows) {
        super(new BorderLayout());
        this.rows = rows;
        setOpaque(false);
        table = new Lines(rows, this::dress);
        table.setName(name);
        table.getAccessibleContext().setAccessibleName(what);
        table.setFillsViewportHeight(true);
        table.setAutoCreateRowSorter(true);
        table.setShowVerticalLines(false);
        table.setShowHorizontalLines(true);
        table.setIntercellSpacing(new Dimension(0, 1));
        table.getTableHeader().setReorderingAllowed(false);
        dress();
        JScrollPane scroll = new JScrollPane(table);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        add(scroll);
        foot = new SheetFoot(table);
        add(foot, BorderLayout.SOUTH);
    }

    /** Shows a last line that isn't sorted. @param words of each column, in the model's order; none for no such line */
    void foot(List<String> words) {
        List<SheetFoot.Cell> cells = new ArrayList<>();
        for (int i = 0; i < words.size(); i++) {
            Rows.Col<T> column = rows.column(i);
            cells.add(new SheetFoot.Cell(words.get(i), column.isUpright() ? NARROW : PAD, column.spoken() != null));
        }
        foot.show(cells);
        revalidate();
    }

    private void dress() {
        for (int i = 0; i < table.getColumnCount(); i++) {
            Rows.Col<T> column = rows.column(i);
            table.getColumnModel().getColumn(i).setPreferredWidth(Look.px(100 * column.weight()));
            if (column.isUpright()) {
                table.getColumnModel().getColumn(i).setMinWidth(Look.px(28));
                table.getColumnModel().getColumn(i).setMaxWidth(Look.px(60));
                table.getColumnModel().getColumn(i).setHeaderRenderer(new UprightHead(column.help()));
            } else {
                // a figure is never cut, nor its head with the arrow of the order
                int head = getFontMetrics(Style.NOTE.font()).stringWidth(column.title()) + Look.px(2 * PAD + ARROW);
                int least = column.spoken() == null ? Look.px(74) : Math.max(Look.px(54), head);
                table.getColumnModel().getColumn(i).setMinWidth(least);
                table.getColumnModel().getColumn(i).setHeaderRenderer(new Head(column.spoken() != null, column.help()));
            }
        }
    }

    /** Told of a line that is clicked twice, or on which Enter is pressed. */
    void onOpen(Consumer<T> opened) {
        onOpen((line, column) -> opened.accept(line));
    }

    /** Told of the line and of the column, as the model counts it, where one clicked twice or pressed Enter. */
    void onOpen(BiConsumer<T, Integer> opened) {
        Runnable open = () -> chosen().ifPresent(line -> opened.accept(line, chosenColumn()));
        table.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent event) {
                if (event.getClickCount() == 2) open.run();
            }
        });
        table.getActionMap().put("open", new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent event) {
                open.run();
            }
        });
        table.getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke("ENTER"), "open");
    }

    /** Told whenever another line or column is chosen. */
    void onChoose(Runnable chosen) {
        table.getSelectionModel().addListSelectionListener(e -> chosen.run());
        table.getColumnModel().getSelectionModel().addListSelectionListener(e -> chosen.run());
    }

    /** As the model counts it; 0 where none was chosen yet. */
    int chosenColumn() {
        int column = table.getColumnModel().getSelectionModel().getLeadSelectionIndex();
        return column < 0 ? 0 : table.convertColumnIndexToModel(column);
    }

    JTable table() {
        return table;
    }

    /** What stands in it while it has no lines. */
    void whenEmpty(String words) {
        table.nothing = words;
        table.repaint();
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

        private transient @Nullable Runnable dress;
        private String nothing = "";

        Lines(Rows<?> rows, Runnable dress) {
            super(rows);
            of = rows;
            this.dress = dress;
            Look.styled(this, Style.BODY);
            setRowHeight(Look.px(ROW));
            // Enter and the arrows belong to the screen and to choosing a line
            getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke("ENTER"), "none");
        }

        @Override
        public void tableChanged(TableModelEvent event) {
            super.tableChanged(event);
            Runnable known = dress;
            // the columns are new, and plain again
            if (known != null && event.getFirstRow() == TableModelEvent.HEADER_ROW) known.run();
        }

        @Override
        protected void paintComponent(Graphics graphics) {
            super.paintComponent(graphics);
            if (getRowCount() > 0 || nothing.isEmpty()) return;
            Graphics2D g = Look.smooth((Graphics2D) graphics.create());
            g.setFont(Style.BODY.font());
            g.setColor(Look.colour(Ink.QUIET));
            int wide = g.getFontMetrics().stringWidth(nothing);
            g.drawString(
                    nothing, Math.max(Look.px(PAD), (getWidth() - wide) / 2), Math.min(getHeight() / 2, Look.px(120)));
            g.dispose();
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
            return new Cell(col.spoken(), shade(col, convertRowIndexToModel(row)), col.isUpright() ? NARROW : PAD);
        }

        private <R> double shade(Rows.Col<R> col, int row) {
            @SuppressWarnings("unchecked")
            R line = (R) of.at(row);
            return col.shade() == null ? 0 : col.shade().apply(line);
        }
    }

    private static final class Cell extends DefaultTableCellRenderer {
        private static final long serialVersionUID = 1L;
        private final transient java.util.function.@Nullable Function<Double, String> spoken;

        private final double shade;
        private final int pad;

        Cell(java.util.function.@Nullable Function<Double, String> spoken, double shade, int pad) {
            this.spoken = spoken;
            this.shade = shade;
            this.pad = pad;
        }

        @Override
        public Component getTableCellRendererComponent(
                JTable table, @Nullable Object value, boolean selected, boolean focused, int row, int column) {
            String text = value == null ? "" : Printable.of(value.toString());
            if (spoken != null && value instanceof Double number) text = spoken.apply(number);
            super.getTableCellRendererComponent(table, text, selected, false, row, column);
            setHorizontalAlignment(spoken == null ? SwingConstants.LEFT : SwingConstants.RIGHT);
            int in = Look.px(pad);
            setBorder(BorderFactory.createEmptyBorder(0, in, 0, in));
            if (focused && pad == NARROW) {
                setBorder(BorderFactory.createCompoundBorder(
                        BorderFactory.createLineBorder(Look.colour(Ink.ACTION), Look.px(1)),
                        BorderFactory.createEmptyBorder(0, in - Look.px(1), 0, in - Look.px(1))));
            }
            // an ink of a verdict can't be read on the ground of what is chosen; its sign and word stay
            setForeground(selected ? table.getSelectionForeground() : ink(text));
            setToolTipText(text.isEmpty() ? null : text);
            Color ground = selected ? table.getSelectionBackground() : table.getBackground();
            setBackground(mixed(ground, Look.colour(Ink.WRONG), (selected ? 0.2 : 0.34) * shade));
            return this;
        }

        private static Color mixed(Color a, Color b, double share) {
            return new Color(
                    (int) Math.round(a.getRed() + (b.getRed() - a.getRed()) * share),
                    (int) Math.round(a.getGreen() + (b.getGreen() - a.getGreen()) * share),
                    (int) Math.round(a.getBlue() + (b.getBlue() - a.getBlue()) * share));
        }

        /** A line's sign and its words have the ink of what they mean. */
        private static Color ink(String text) {
            if (text.startsWith("×")) return Look.colour(Ink.WRONG);
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
                label.setVerticalAlignment(SwingConstants.BOTTOM);
                label.setBorder(BorderFactory.createEmptyBorder(Look.px(6), Look.px(PAD), Look.px(6), Look.px(PAD)));
            }
            return shown;
        }
    }
}
