package org.marktwice.view.desk;

import java.awt.Color;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Rectangle;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.ScrollPaneConstants;
import javax.swing.SwingConstants;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.TableColumn;
import org.jspecify.annotations.Nullable;
import org.marktwice.classroom.JobRecord;
import org.marktwice.classroom.JobRecord.Band;
import org.marktwice.classroom.JobRecord.Judged;
import org.marktwice.classroom.Measure;
import org.marktwice.picture.Ink;
import org.marktwice.view.Look;

/**
 * What the finished jobs measured: a line a learner, a column a measure, typed straight down with the sign of each figure's
 * band; then the job's marks, and those of the practice.
 */
final class RecordTable extends TypingTable {
    private static final long serialVersionUID = 1L;
    private static final int NAME = 112;
    private static final int MEASURE = 112;
    /** What a measure's column has where there is room for it. */
    private static final int WIDEST = 160;

    private static final int SHARE = 80;
    private static final int HEAD_LINES = 5;

    private final transient RecordModel model;
    private final transient Consumer<String> say;
    private final Cells cells;
    private final JTable names;
    private List<String> learners = List.of();
    private Map<String, Double> practice = Map.of();

    /** @param say is told, in one line, why something can't be taken */
    RecordTable(RecordModel model, Consumer<String> say) {
        super("record", "What the finished jobs measured", 30);
        this.model = model;
        this.say = say;
        cells = new Cells();
        names = new JTable(cells);
        setModel(cells);
        removeColumn(getColumnModel().getColumn(0));
        setAutoResizeMode(AUTO_RESIZE_OFF);
        setDefaultRenderer(Object.class, new Figure());
        for (int i = 0; i < getColumnCount(); i++) {
            boolean measured = i < model.measures().size();
            getColumnModel().getColumn(i).setPreferredWidth(Look.px(measured ? MEASURE : SHARE));
            getColumnModel().getColumn(i).setHeaderRenderer(new WrappedHead(HEAD_LINES, true));
        }
        dressNames();
        refresh();
    }

    private void dressNames() {
        while (names.getColumnCount() > 1)
            names.removeColumn(names.getColumnModel().getColumn(1));
        names.getColumnModel().getColumn(0).setHeaderRenderer(new WrappedHead(HEAD_LINES, false));
        names.setDefaultRenderer(Object.class, new Figure());
        names.setName("record-names");
        names.setRowHeight(getRowHeight());
        names.setFocusable(false);
        names.setRowSelectionAllowed(false);
        names.setIntercellSpacing(new Dimension(1, 1));
        names.setShowGrid(true);
        names.setGridColor(Look.colour(Ink.BORDER));
        names.getTableHeader().setReorderingAllowed(false);
        names.getTableHeader().setResizingAllowed(false);
        names.setPreferredScrollableViewportSize(new Dimension(Look.px(NAME), 0));
    }

    /** The learners stay in sight however far to the right one is. */
    JScrollPane scrolling() {
        JScrollPane scroll = new JScrollPane(this);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.setRowHeaderView(names);
        scroll.setCorner(ScrollPaneConstants.UPPER_LEFT_CORNER, names.getTableHeader());
        scroll.getViewport().addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent event) {
                stretch(scroll.getViewport().getWidth());
            }
        });
        return scroll;
    }

    /** Where there is room the columns of measures are wider, up to {@link #WIDEST}. */
    private void stretch(int room) {
        int measures = model.measures().size();
        int shares = (getColumnCount() - measures) * Look.px(SHARE);
        int wide = Math.max(Look.px(MEASURE), Math.min(Look.px(WIDEST), (room - shares) / Math.max(1, measures)));
        for (int i = 0; i < measures; i++) getColumnModel().getColumn(i).setPreferredWidth(wide);
        revalidate();
    }

    /** Shows the record as it is now. One stays in the cell one was in, unless the learners are others. */
    void refresh() {
        practice = model.practice();
        for (int i = 0; i < getColumnCount(); i++) {
            TableColumn column = getColumnModel().getColumn(i);
            column.setHeaderValue(cells.getColumnName(column.getModelIndex()));
        }
        if (learners.equals(model.learners())) {
            if (!learners.isEmpty()) cells.fireTableRowsUpdated(0, learners.size() - 1);
        } else {
            learners = model.learners();
            cells.fireTableDataChanged();
            if (!learners.isEmpty()) changeSelection(0, 0, false, false);
            scrollRectToVisible(new Rectangle(0, 0, 1, 1));
        }
        getTableHeader().repaint();
    }

    @Override
    boolean isFigure(int column) {
        return true;
    }

    /** Straight down a column, and on to the head of the next. */
    @Override
    int[] below(int line, int column) {
        boolean last = line + 1 >= getRowCount();
        return last ? new int[] {0, Math.min(column + 1, model.measures().size() - 1)} : new int[] {line + 1, column};
    }

    @Override
    boolean takes(int line, int column, String typed) {
        boolean taken = RecordModel.takes(typed);
        say.accept(
                taken
                        ? ""
                        : "\"" + typed + "\" is no figure in millimetres: "
                                + model.measures().get(column).title() + ", "
                                + model.learners().get(line));
        return taken;
    }

    @Override
    void giveUp() {
        if (isEditing()) say.accept("");
        super.giveUp();
    }

    private final class Cells extends AbstractTableModel {
        private static final long serialVersionUID = 1L;

        private Optional<Measure> measure(int column) {
            return column >= 1 && column <= model.measures().size()
                    ? Optional.of(model.measures().get(column - 1))
                    : Optional.empty();
        }

        private boolean isJob(int column) {
            return column == model.measures().size() + 1;
        }

        @Override
        public int getRowCount() {
            return learners.size();
        }

        @Override
        public int getColumnCount() {
            return model == null ? 0 : model.measures().size() + 3;
        }

        @Override
        public String getColumnName(int column) {
            if (column == 0) return "Learner";
            return measure(column)
                    .map(m -> m.title() + limit(m))
                    .orElse(isJob(column) ? "Job of 100" : "Practice of 100");
        }

        /** What the drawing says, and how far one may be from it. */
        private String limit(Measure measure) {
            JobRecord by = model.judged();
            // a figure and its limit stay on one line
            String drawn = ", " + NumberField.spoken(Math.rint(measure.drawn() * 10) / 10);
            return switch (measure.kind()) {
                case GAP -> ", up\u00a0to\u00a0" + NumberField.spoken(by.gap());
                case DIAGONAL -> drawn;
                default ->
                    drawn + "\u00a0±\u00a0" + NumberField.spoken(by.tolerances().plusMinus(measure.drawn()));
            };
        }

        @Override
        public boolean isCellEditable(int row, int column) {
            return measure(column).isPresent();
        }

        @Override
        public Object getValueAt(int row, int column) {
            if (column == 0) return learners.get(row);
            Optional<Measure> measure = measure(column);
            if (measure.isPresent()) {
                OptionalDouble read = model.at(row, measure.get());
                return read.isPresent() ? NumberField.spoken(read.getAsDouble()) : "";
            }
            double share = isJob(column)
                    ? model.judged().jobs().get(row).share()
                    : practice.getOrDefault(learners.get(row), Double.NaN);
            return Double.isNaN(share) ? "" : String.format(Locale.ROOT, "%.0f", 100 * share);
        }

        @Override
        public void setValueAt(Object value, int row, int column) {
            model.type(row, measure(column).orElseThrow(), String.valueOf(value));
        }
    }

    /** A figure with the sign of its band. */
    private final class Figure extends DefaultTableCellRenderer {
        private static final long serialVersionUID = 1L;

        @Override
        public Component getTableCellRendererComponent(
                JTable of, @Nullable Object value, boolean selected, boolean focused, int row, int shown) {
            int column = of.convertColumnIndexToModel(shown);
            Optional<Judged> judged = cells.measure(column)
                    .filter(m -> model.at(row, m).isPresent())
                    .flatMap(m -> model.judged(row, m));
            String sign = judged.map(j -> sign(j.band())).orElse("");
            super.getTableCellRendererComponent(of, sign + (value == null ? "" : value), selected, focused, row, shown);
            setBorder(BorderFactory.createEmptyBorder(0, Look.px(8), 0, Look.px(8)));
            if (selected && focused) {
                setBorder(BorderFactory.createCompoundBorder(
                        BorderFactory.createLineBorder(Look.colour(Ink.ACTION), Look.px(1)),
                        BorderFactory.createEmptyBorder(0, Look.px(7), 0, Look.px(7))));
            }
            setHorizontalAlignment(column == 0 ? SwingConstants.LEFT : SwingConstants.RIGHT);
            if (!selected) setBackground(Look.colour(Ink.PANEL));
            // an ink of a verdict can't be read on the ground of what is chosen; its sign stays
            setForeground(judged.filter(j -> !selected).map(j -> ink(j.band())).orElse(Look.colour(Ink.INK)));
            setToolTipText(judged.map(j ->
                            String.format(Locale.ROOT, "%s: %+.1f, limit ± %.1f mm", j.title(), j.off(), j.limit()))
                    .orElse(column == 0 ? String.valueOf(value) : null));
            return this;
        }

        private String sign(Band band) {
            return switch (band) {
                case GOOD -> "✓ ";
                case FAIR -> "~ ";
                case POOR -> "× ";
            };
        }

        private Color ink(Band band) {
            return Look.colour(
                    switch (band) {
                        case GOOD -> Ink.SOUND;
                        case FAIR -> Ink.CLOSE;
                        case POOR -> Ink.WRONG;
                    });
        }
    }
}
