package org.marktwice.view.bench;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.Window;
import java.awt.event.ActionEvent;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import org.marktwice.view.Look;

/** The board in words, to be read or read out. */
final class ReportDialog {
    private ReportDialog() {}

    static void show(JComponent over, BenchModel model) {
        Window window = SwingUtilities.getWindowAncestor(over);
        JDialog dialog = new JDialog(window, "Board " + model.board().board().id() + " in words");
        dialog.setName("report");
        JTextArea text = new JTextArea(
                BoardReport.of(model.session().scenario(), model.board(), model.placing(), model.lines()));
        text.setName("report-text");
        text.setEditable(false);
        text.setLineWrap(true);
        text.setWrapStyleWord(true);
        text.setCaretPosition(0);
        text.setBorder(BorderFactory.createEmptyBorder(Look.px(16), Look.px(18), Look.px(16), Look.px(18)));
        text.getAccessibleContext().setAccessibleName("Board in words");
        dialog.add(new JScrollPane(text), BorderLayout.CENTER);
        dialog.getRootPane()
                .getInputMap(JComponent.WHEN_IN_FOCUSED_WINDOW)
                .put(KeyStroke.getKeyStroke("ESCAPE"), "close");
        dialog.getRootPane().getActionMap().put("close", new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent e) {
                dialog.dispose();
            }
        });
        dialog.setSize(new Dimension(Look.px(560), Look.px(520)));
        dialog.setLocationRelativeTo(over);
        dialog.setVisible(true);
        text.requestFocusInWindow();
    }
}
