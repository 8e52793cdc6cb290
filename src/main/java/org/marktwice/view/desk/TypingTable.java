package org.marktwice.view.desk;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.event.ActionEvent;
import java.awt.event.KeyEvent;
import java.util.EventObject;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.DefaultCellEditor;
import javax.swing.JTable;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.SwingConstants;
import org.jspecify.annotations.Nullable;
import org.marktwice.picture.Ink;
import org.marktwice.view.Look;
import org.marktwice.view.Look.Style;

/**
 * A table that is filled in as on paper: what is typed takes the place of what stood there, Enter goes straight down, Tab
 * to the right, Delete empties.
 */
abstract class TypingTable extends JTable {
    private static final long serialVersionUID = 1L;

    private final JTextField field = new JTextField();
    private final int row;

    /** @param row the height of a line */
    TypingTable(String name, String what, int row) {
        this.row = row;
        setName(name);
        getAccessibleContext().setAccessibleName(what);
        Look.styled(this, Style.BODY);
        setCellSelectionEnabled(true);
        setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        setFillsViewportHeight(true);
        setShowGrid(true);
        setIntercellSpacing(new Dimension(1, 1));
        putClientProperty("terminateEditOnFocusLost", true);
        setSurrendersFocusOnKeystroke(true);
        Look.styled(field, Style.BODY);
        // the focus may come after the first letter, which the second must not take the place of
        field.putClientProperty(
                FlatClientProperties.SELECT_ALL_ON_FOCUS_POLICY, FlatClientProperties.SELECT_ALL_ON_FOCUS_POLICY_NEVER);
        // the field has the focus while one types, and Enter with it
        field.addActionListener(e -> down());
        setDefaultEditor(Object.class, new Editor(field));
        getTableHeader().setReorderingAllowed(false);
        on("ENTER", "down", this::down);
        on("DELETE", "empty", this::empty);
        on("BACK_SPACE", "empty", this::empty);
        dress();
    }

    private void on(String key, String name, Runnable does) {
        getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke(key), name);
        getActionMap().put(name, new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent event) {
                does.run();
            }
        });
    }

    /** Whether figures stand in this column, which are written at the right. */
    abstract boolean isFigure(int column);

    /** Where Enter leads from a cell: a line and a column. */
    abstract int[] below(int line, int column);

    /** Whether a cell can hold what was typed; one stays in a cell that can't until it is put right or given up. */
    boolean takes(int line, int column, String typed) {
        return true;
    }

    private void down() {
        int line = isEditing() ? getEditingRow() : Math.max(0, getSelectedRow());
        int column = isEditing() ? getEditingColumn() : Math.max(0, getSelectedColumn());
        if (isEditing() && !getCellEditor().stopCellEditing()) return;
        int[] next = below(line, column);
        go(next[0], next[1]);
    }

    private void empty() {
        int line = getSelectedRow();
        int column = getSelectedColumn();
        if (line >= 0 && column >= 0 && isCellEditable(line, column)) setValueAt("", line, column);
    }

    /** Takes what is being typed, or gives it up where it can't be taken. */
    void settle() {
        if (isEditing() && !getCellEditor().stopCellEditing()) giveUp();
    }

    /** Gives up what is being typed. */
    void giveUp() {
        if (isEditing()) getCellEditor().cancelCellEditing();
    }

    void go(int line, int column) {
        changeSelection(line, column, false, false);
        requestFocusInWindow();
    }

    /** A cell is begun by what is typed, and not by a command's key. */
    @Override
    protected boolean processKeyBinding(KeyStroke key, KeyEvent event, int condition, boolean pressed) {
        boolean command = event.isMetaDown() || event.isControlDown() != event.isAltDown() || event.isActionKey();
        // Escape leaves the screen, and is no letter
        boolean letter = event.getKeyCode() != KeyEvent.VK_ESCAPE && event.getKeyChar() != KeyEvent.VK_ESCAPE;
        putClientProperty("JTable.autoStartsEdit", letter && !command);
        return super.processKeyBinding(key, event, condition, pressed);
    }

    /** A field that is outlined while what stands in it can't be taken. */
    private final class Editor extends DefaultCellEditor {
        private static final long serialVersionUID = 1L;

        Editor(JTextField field) {
            super(field);
        }

        @Override
        public Component getTableCellEditorComponent(
                JTable table, Object value, boolean selected, int line, int column) {
            outline(Ink.ACTION);
            return super.getTableCellEditorComponent(table, value, selected, line, column);
        }

        @Override
        public boolean stopCellEditing() {
            if (!isEditing() || takes(getEditingRow(), getEditingColumn(), field.getText())) {
                return super.stopCellEditing();
            }
            outline(Ink.WRONG);
            field.selectAll();
            return false;
        }

        private void outline(Ink ink) {
            field.setBorder(BorderFactory.createLineBorder(Look.colour(ink)));
        }
    }

    @Override
    public boolean editCellAt(int line, int column, @Nullable EventObject event) {
        boolean begun = super.editCellAt(line, column, event);
        if (begun) {
            field.setHorizontalAlignment(isFigure(column) ? SwingConstants.RIGHT : SwingConstants.LEFT);
            boolean typed = event instanceof KeyEvent key && key.getKeyCode() != KeyEvent.VK_F2;
            if (typed) field.selectAll();
        }
        return begun;
    }

    @Override
    public void updateUI() {
        super.updateUI();
        dress();
    }

    private void dress() {
        if (row > 0) setRowHeight(Look.px(row));
        setBackground(Look.colour(Ink.PANEL));
        setGridColor(Look.colour(Ink.BORDER));
        setSelectionBackground(Look.colour(Ink.PICKED));
        setSelectionForeground(Look.colour(Ink.INK));
    }
}
