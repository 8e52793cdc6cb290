package org.marktwice.view.desk;

import java.util.List;
import java.util.function.Function;
import javax.swing.table.AbstractTableModel;
import org.jspecify.annotations.Nullable;

/** A table's lines, each a thing of the same kind, and what its columns say of it. */
final class Rows<T> extends AbstractTableModel {
    private static final long serialVersionUID = 1L;

    /**
     * A column.
     *
     * @param weight how much of the width it takes
     * @param spoken how a figure is written; null where the cell is words
     * @param value a text or a number; null for an empty cell
     * @param shade how far the cell is shaded, 0 to 1; null for none. The head of a shaded column stands upright
     */
    record Col<T>(
            String title,
            double weight,
            @Nullable Function<Double, String> spoken,
            Function<T, @Nullable Object> value,
            String help,
            @Nullable Function<T, Double> shade) {
        boolean isUpright() {
            return shade != null;
        }
    }

    /** A narrow column of figures under an upright head, each shaded by how much of it is lacking. */
    static <T> Col<T> upright(
            String title, String help, Function<T, @Nullable Double> value, Function<T, Double> shade) {
        return new Col<>(title, 0.48, NumberField::spoken, value::apply, help, shade);
    }

    private transient List<Col<T>> columns;
    private transient List<T> rows = List.of();

    Rows(List<Col<T>> columns) {
        this.columns = List.copyOf(columns);
    }

    static <T> Col<T> words(String title, double weight, Function<T, String> value) {
        return new Col<>(title, weight, null, value::apply, title, null);
    }

    static <T> Col<T> number(String title, double weight, Function<T, @Nullable Double> value) {
        return number(title, weight, value, NumberField::spoken, title);
    }

    static <T> Col<T> number(
            String title,
            double weight,
            Function<T, @Nullable Double> value,
            Function<Double, String> spoken,
            String help) {
        return new Col<>(title, weight, spoken, value::apply, help, null);
    }

    void show(List<T> next) {
        rows = List.copyOf(next);
        fireTableDataChanged();
    }

    /** Other columns and lines at once. */
    void show(List<Col<T>> other, List<T> next) {
        columns = List.copyOf(other);
        rows = List.copyOf(next);
        fireTableStructureChanged();
    }

    List<T> all() {
        return rows;
    }

    T at(int row) {
        return rows.get(row);
    }

    Col<T> column(int index) {
        return columns.get(index);
    }

    @Override
    public int getRowCount() {
        return rows.size();
    }

    @Override
    public int getColumnCount() {
        return columns.size();
    }

    @Override
    public String getColumnName(int column) {
        return columns.get(column).title();
    }

    @Override
    public Class<?> getColumnClass(int column) {
        return columns.get(column).spoken() == null ? String.class : Double.class;
    }

    @Override
    public @Nullable Object getValueAt(int row, int column) {
        return columns.get(column).value().apply(rows.get(row));
    }
}
