package org.marktwice.view.desk;

import java.awt.Color;
import java.awt.Component;
import java.awt.Graphics2D;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.accessibility.AccessibleRole;
import javax.swing.BorderFactory;
import javax.swing.JTable;
import javax.swing.SwingConstants;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;
import org.jspecify.annotations.Nullable;
import org.marktwice.files.RackColumn;
import org.marktwice.files.TypedRack.Trouble;
import org.marktwice.picture.Ink;
import org.marktwice.view.Look;
import org.marktwice.view.Look.Style;
import org.marktwice.view.Painted;

/**
 * The rack's table, typed into: Enter goes straight down, Tab on to the right, and below the last line there is always one
 * more. What isn't taken stands in its cell, crossed, with the reason.
 */
final class RackTableView extends TypingTable {
    private static final long serialVersionUID = 1L;
    private static final int ROW = 26;
    private static final Map<RackColumn, Head> HEADS = heads();

    private final transient RackModel model;

    /** @param above the group's word where a group of columns begins, else empty */
    private record Head(String above, String word, int width) {}

    private static Map<RackColumn, Head> heads() {
        Map<RackColumn, Head> all = new EnumMap<>(RackColumn.class);
        all.put(RackColumn.BOARD, new Head("Board", "", 58));
        all.put(RackColumn.SPECIES, new Head("", "species", 108));
        all.put(RackColumn.LENGTH, new Head("Size, mm", "length", 62));
        all.put(RackColumn.WIDTH, new Head("", "width", 56));
        all.put(RackColumn.THICKNESS, new Head("", "thick", 50));
        all.put(RackColumn.MOISTURE, new Head("Moisture", "now %", 64));
        all.put(RackColumn.PLANED_AT, new Head("", "planed %", 66));
        all.put(RackColumn.SAWN, new Head("", "as sawn", 66));
        all.put(RackColumn.PITH_Y, new Head("Pith, mm", "y", 62));
        all.put(RackColumn.PITH_Z, new Head("", "z", 54));
        all.put(RackColumn.RING, new Head("", "or a ring", 74));
        all.put(RackColumn.KNOT, new Head("Knot", "", 50));
        all.put(RackColumn.ON, new Head("", "on", 66));
        all.put(RackColumn.U, new Head("Middle, mm", "along", 78));
        all.put(RackColumn.V, new Head("", "across", 56));
        all.put(RackColumn.ALONG, new Head("Size, mm", "along", 66));
        all.put(RackColumn.ACROSS, new Head("", "across", 56));
        all.put(RackColumn.DEAD, new Head("", "dead", 46));
        return all;
    }

    RackTableView(RackModel model) {
        super("rack-table", "What is on the rack, a line for each place where a knot shows", ROW);
        this.model = model;
        setModel(new Cells());
        setAutoResizeMode(AUTO_RESIZE_ALL_COLUMNS);
        setDefaultRenderer(Object.class, new Cell());
        getTableHeader().setDefaultRenderer(new Heading());
        for (RackColumn column : RackColumn.values()) {
            int width = Look.px(head(column).width());
            getColumnModel().getColumn(column.ordinal()).setPreferredWidth(width);
            getColumnModel().getColumn(column.ordinal()).setMinWidth(Math.min(width, Look.px(44)));
        }
        changeSelection(0, 0, false, false);
    }

    private static Head head(RackColumn column) {
        return java.util.Objects.requireNonNull(HEADS.get(column));
    }

    @Override
    int[] below(int line, int column) {
        return new int[] {Math.min(line + 1, getRowCount() - 1), column};
    }

    @Override
    boolean isFigure(int column) {
        return isFigure(RackColumn.values()[column]);
    }

    @Override
    List<String> choices(int column) {
        return RackColumn.values()[column].choices();
    }

    @Override
    boolean isChosen(int column, String stands, String choice) {
        return words(stands).contains(choice);
    }

    /** Where several may stand, a choice is put in or taken out, and they stand in the surfaces' order. */
    @Override
    String chosen(int column, String before, String choice) {
        if (!RackColumn.values()[column].takesSeveral()) return choice;
        List<String> stand = words(before);
        return choices(column).stream()
                .filter(c -> c.equals(choice) != stand.contains(c))
                .collect(Collectors.joining(" "));
    }

    private static List<String> words(String cell) {
        return List.of(cell.split("[\\s;,]+"));
    }

    void go(int line, RackColumn column) {
        go(line, column.ordinal());
    }

    int line() {
        return Math.max(0, getSelectedRow());
    }

    RackColumn column() {
        return RackColumn.values()[Math.max(0, getSelectedColumn())];
    }

    /** Shows the rack as it is now, with the same cell chosen. */
    void refresh() {
        int line = line();
        RackColumn column = column();
        ((Cells) getModel()).fireTableDataChanged();
        changeSelection(Math.min(line, getRowCount() - 1), column.ordinal(), false, false);
    }

    private final class Cells extends AbstractTableModel {
        private static final long serialVersionUID = 1L;

        @Override
        public int getRowCount() {
            return model == null ? 1 : model.rack().lines().size() + 1;
        }

        @Override
        public int getColumnCount() {
            return RackColumn.values().length;
        }

        @Override
        public String getColumnName(int column) {
            return RackColumn.values()[column].id();
        }

        @Override
        public boolean isCellEditable(int row, int column) {
            return true;
        }

        @Override
        public Object getValueAt(int row, int column) {
            var lines = model.rack().lines();
            return row < lines.size() ? lines.get(row).at(RackColumn.values()[column]) : "";
        }

        @Override
        public void setValueAt(Object value, int row, int column) {
            model.type(row, RackColumn.values()[column], String.valueOf(value));
        }
    }

    /** A figure; what is still to come is a ring, what can't be is crossed, and a board goes on quietly below itself. */
    private final class Cell extends DefaultTableCellRenderer {
        private static final long serialVersionUID = 1L;

        @Override
        public Component getTableCellRendererComponent(
                JTable of, @Nullable Object value, boolean selected, boolean focused, int row, int at) {
            RackColumn column = RackColumn.values()[at];
            Optional<Trouble> trouble = model.trouble(row, column);
            String text = String.valueOf(value);
            boolean goesOn = column == RackColumn.BOARD
                    && text.isEmpty()
                    && row < model.rack().lines().size()
                    && !model.rack().lines().get(row).cells().isEmpty();
            String shown = goesOn ? model.rack().boardOf(row) : shortly(text);
            if (trouble.isPresent()) shown = trouble.get().missing() ? "○" : "× " + text;
            super.getTableCellRendererComponent(of, shown, selected, focused, row, at);
            setHorizontalAlignment(isFigure(column) ? SwingConstants.RIGHT : SwingConstants.LEFT);
            setBorder(BorderFactory.createEmptyBorder(0, Look.px(6), 0, Look.px(6)));
            Ink ink = goesOn ? Ink.QUIET : Ink.INK;
            if (trouble.isPresent()) ink = trouble.get().missing() ? Ink.CLOSE : Ink.WRONG;
            // no other ink can be read on the ground of what is chosen; the sign stays
            if (selected) ink = Ink.INK;
            setForeground(Look.colour(ink));
            if (!selected) setBackground(ground(row));
            if (selected && focused) setBorder(outlined());
            setToolTipText(trouble.map(Trouble::says).orElse(column.help()));
            return this;
        }

        /** A figure that was reckoned, to the hundredth; the cell itself keeps all of it. */
        private static String shortly(String text) {
            if (!text.matches("-?\\d+\\.\\d{3,}")) return text;
            return NumberField.spoken(Math.rint(100 * Double.parseDouble(text)) / 100);
        }

        private javax.swing.border.Border outlined() {
            return BorderFactory.createCompoundBorder(
                    BorderFactory.createLineBorder(Look.colour(Ink.ACTION), Look.px(1)),
                    BorderFactory.createEmptyBorder(0, Look.px(5), 0, Look.px(5)));
        }

        /** The lines of the board that is being looked at lie on paper. */
        private Color ground(int row) {
            boolean same = model.at(line()).filter(b -> b.lines().contains(row)).isPresent();
            return Look.colour(same ? Ink.PAPER : Ink.PANEL);
        }
    }

    private static boolean isFigure(RackColumn column) {
        return switch (column) {
            case BOARD, SPECIES, SAWN, RING, KNOT, ON, DEAD -> false;
            default -> true;
        };
    }

    /** Two lines: the group's word above, the column's below. */
    private static final class Heading extends Painted implements javax.swing.table.TableCellRenderer {
        private static final long serialVersionUID = 1L;
        private transient Head head = new Head("", "", 0);
        private boolean right;
        private boolean begins;

        Heading() {
            super(AccessibleRole.COLUMN_HEADER, 40, 42);
        }

        @Override
        public Component getTableCellRendererComponent(
                JTable of, Object value, boolean selected, boolean focused, int row, int at) {
            RackColumn column = RackColumn.values()[at];
            head = head(column);
            right = isFigure(column);
            begins = !head.above().isEmpty();
            setToolTipText(column.help());
            return this;
        }

        @Override
        protected void draw(Graphics2D g) {
            g.setColor(Look.colour(Ink.PANEL));
            g.fillRect(0, 0, getWidth(), getHeight());
            g.setColor(Look.colour(Ink.BORDER));
            g.fillRect(0, getHeight() - 1, getWidth(), 1);
            if (begins) g.fillRect(0, 0, 1, getHeight());
            g.setFont(Style.NOTE.font());
            var metrics = g.getFontMetrics();
            int pad = Look.px(6);
            g.setColor(Look.colour(Ink.INK));
            g.drawString(head.above(), pad, Look.px(4) + metrics.getAscent());
            g.setColor(Look.colour(Ink.QUIET));
            int x = right ? getWidth() - pad - metrics.stringWidth(head.word()) : pad;
            g.drawString(head.word(), x, Look.px(21) + metrics.getAscent());
        }
    }
}
