package org.marktwice.view.desk;

import javax.swing.JComponent;
import javax.swing.JOptionPane;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import javax.swing.event.AncestorEvent;
import javax.swing.event.AncestorListener;
import net.miginfocom.swing.MigLayout;
import org.marktwice.print.Issue;
import org.marktwice.view.Look;
import org.marktwice.view.Look.Style;

/** Asks who issues a drawing, and when, for its title block; what is left empty is blank on the sheet. Kept while the desk is open. */
final class IssuedBy {
    private Issue issue = Issue.BLANK;

    Issue issue() {
        return issue;
    }

    /** Whether it was agreed to; else all stays as it was. */
    boolean ask(JComponent over) {
        Form form = new Form(issue);
        int answer = JOptionPane.showConfirmDialog(
                over, form, "The drawing's title block", JOptionPane.OK_CANCEL_OPTION, JOptionPane.PLAIN_MESSAGE);
        if (answer != JOptionPane.OK_OPTION) return false;
        issue = form.issue();
        return true;
    }

    /** What is asked; made anew each time, in the light and size that the window has by then. */
    private static final class Form extends JPanel {
        private static final long serialVersionUID = 1L;

        private final JTextField owner = field("issue-owner", "The school or workshop");
        private final JTextField by = field("issue-by", "Who drew it");
        private final JTextField date = field("issue-date", "Date of issue, as it is to be written");

        Form(Issue now) {
            super(new MigLayout("insets 0 0 8 0, gap 16 8, wrap 2", "[][grow,fill]"));
            owner.setText(now.owner());
            by.setText(now.by());
            date.setText(now.date());
            add(Look.quiet("School or workshop", Style.BODY));
            add(owner);
            add(Look.quiet("Drawn by", Style.BODY));
            add(by);
            add(Look.quiet("Date of issue", Style.BODY));
            add(date);
            add(
                    Look.quiet("What is left empty is blank on the sheet, to be filled in by hand.", Style.NOTE),
                    "skip 1, gaptop 2");
            owner.addAncestorListener(new AncestorListener() {
                @Override
                public void ancestorAdded(AncestorEvent event) {
                    // one begins to type at once, and need not point first
                    SwingUtilities.invokeLater(owner::requestFocusInWindow);
                }

                @Override
                public void ancestorRemoved(AncestorEvent event) {}

                @Override
                public void ancestorMoved(AncestorEvent event) {}
            });
        }

        private static JTextField field(String name, String about) {
            JTextField field = new JTextField(28);
            Look.styled(field, Style.BODY);
            field.setName(name);
            field.getAccessibleContext().setAccessibleName(about);
            return field;
        }

        Issue issue() {
            return new Issue(owner.getText(), by.getText(), date.getText());
        }
    }
}
