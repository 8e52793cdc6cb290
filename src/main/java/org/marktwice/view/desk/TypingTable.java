package org.marktwice.view.desk;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.BasicStroke;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.ActionEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseEvent;
import java.util.EventObject;
import java.util.List;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.DefaultCellEditor;
import javax.swing.JCheckBoxMenuItem;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
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
 * to the right, Delete empties. Where there is something to choose from, the cell one is in has a mark that drops it.
 */
abstract class TypingTable extends JTable {
    private static final long serialVersionUID = 1L;
    /** How wide the mark of a cell is. */
    private static final int MARK = 18;

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
        on("alt DOWN", "offer", () -> offer(getSelectedRow(), getSelectedColumn()));
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

    /** What there is to choose from in a cell; empty where it is only typed. */
    List<String> choices(int column) {
        return List.of();
    }

    /** What a choice makes of what stands in a cell. */
    String chosen(int column, String before, String choice) {
        return choice;
    }

    /** Whether a choice is one of those that stand in a cell. */
    boolean isChosen(int column, String stands, String choice) {
        return choice.equals(stands);
    }

    private void down() {
        int line = isEditing() ? getEditingRow() : Math.max(0, getSelectedRow());
        int column = isEditing() ? getEditingColumn() : Math.max(0, getSelectedColumn());
        if (isEditing() && !getCellEditor().stopCellEditing()) return;
        int[] next = below(line, column);
        go(next[0], next[1]);
    }

    private void empty() {
        empty(getSelectedRow(), getSelectedColumn());
    }

    private void empty(int line, int column) {
        if (line >= 0 && column >= 0 && isCellEditable(line, column)) setValueAt("", line, column);
    }

    /** Takes what is being typed. @return false where it can't be taken: one stays in it, and why has been said */
    boolean settles() {
        return !isEditing() || getCellEditor().stopCellEditing();
    }

    /** Takes what is being typed, or gives it up where it can't be taken. */
    void settle() {
        if (!settles()) giveUp();
    }

    /** Takes what is being typed, to be undone like anything else; what can't be taken is given up, and nothing before it. */
    void undo(Runnable step) {
        if (settles()) step.run();
        else giveUp();
    }

    /** Gives up what is being typed. */
    void giveUp() {
        if (isEditing()) getCellEditor().cancelCellEditing();
    }

    void go(int line, int column) {
        changeSelection(line, column, false, false);
        requestFocusInWindow();
    }

    // By the mouse

    @Override
    protected void processMouseEvent(MouseEvent event) {
        boolean opens = event.getID() == MouseEvent.MOUSE_PRESSED && isOnMark(event.getPoint());
        super.processMouseEvent(event);
        int line = rowAtPoint(event.getPoint());
        int column = columnAtPoint(event.getPoint());
        if (line < 0 || column < 0 || !opens && !event.isPopupTrigger()) return;
        if (!settles()) return;
        changeSelection(line, column, false, false);
        offer(line, column);
    }

    /** Whether a point is on the mark of the cell one is in. */
    private boolean isOnMark(Point at) {
        if (!hasMark(getSelectedRow(), getSelectedColumn()) || isEditing()) return false;
        Rectangle cell = getCellRect(getSelectedRow(), getSelectedColumn(), false);
        return cell.contains(at) && at.x >= cell.x + cell.width - Look.px(MARK);
    }

    /** Whether a cell shows the mark that drops its choices. */
    private boolean hasMark(int line, int column) {
        return line >= 0
                && line == getSelectedRow()
                && column == getSelectedColumn()
                && !choices(column).isEmpty();
    }

    /** What can be chosen in a cell, below it; and to empty it. */
    private void offer(int line, int column) {
        if (line < 0 || column < 0 || !isCellEditable(line, column)) return;
        String stands = String.valueOf(getValueAt(line, column));
        JPopupMenu menu = new JPopupMenu();
        for (String choice : choices(column)) {
            JMenuItem item = new JCheckBoxMenuItem(choice, isChosen(column, stands, choice));
            item.setName("choose-" + choice);
            item.addActionListener(e -> put(line, column, chosen(column, stands, choice)));
            menu.add(item);
        }
        if (menu.getComponentCount() > 0) menu.addSeparator();
        JMenuItem empty = new JMenuItem("Empty");
        empty.setName("empty-cell");
        empty.setEnabled(!stands.isEmpty());
        empty.addActionListener(e -> empty(line, column));
        menu.add(empty);
        Rectangle cell = getCellRect(line, column, true);
        menu.show(this, cell.x, cell.y + cell.height);
    }

    private void put(int line, int column, String text) {
        setValueAt(text, line, column);
        go(line, column);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        super.paintComponent(graphics);
        if (isEditing() || !hasMark(getSelectedRow(), getSelectedColumn())) return;
        Rectangle cell = getCellRect(getSelectedRow(), getSelectedColumn(), false);
        Graphics2D g = Look.smooth((Graphics2D) graphics.create());
        g.setColor(getSelectionBackground());
        g.fillRect(cell.x + cell.width - Look.px(MARK), cell.y + 2, Look.px(MARK) - 2, cell.height - 4);
        int half = Look.px(4);
        int x = cell.x + cell.width - Look.px(MARK) / 2 - 1;
        int y = cell.y + cell.height / 2 - half / 4;
        g.setColor(Look.colour(Ink.ACTION));
        g.setStroke(new BasicStroke(Look.px(3) / 2f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.drawPolyline(new int[] {x - half, x, x + half}, new int[] {y - half / 2, y + half / 2, y - half / 2}, 3);
        g.dispose();
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
