package org.marktwice.view.desk;

import javax.swing.JComponent;
import javax.swing.JOptionPane;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import org.marktwice.picture.Ink;
import org.marktwice.print.Issue;
import org.marktwice.view.Look;
import org.marktwice.view.Look.Style;

/** Asks who issues a drawing, and when, for its title block; what is left empty is blank on the sheet. Kept while the desk is open. */
final class IssuedBy {
    private final JTextField owner = field("issue-owner", "The school or workshop");
    private final JTextField by = field("issue-by", "Who drew it");
    private final JTextField date = field("issue-date", "Date of issue, as it is to be written");
    private final JPanel form = new JPanel(new MigLayout("insets 0, gap 12 8, wrap 2", "[][grow,fill]"));
    private Issue issue = Issue.BLANK;

    IssuedBy() {
        form.add(Look.quiet("School or workshop", Style.BODY));
        form.add(owner);
        form.add(Look.quiet("Drawn by", Style.BODY));
        form.add(by);
        form.add(Look.quiet("Date of issue", Style.BODY));
        form.add(date);
        form.add(
                Look.prose("What is left empty is blank on the sheet, to be filled in by hand.", Style.NOTE, Ink.QUIET),
                "span 2, growx, wmin 0");
    }

    private static JTextField field(String name, String about) {
        JTextField field = new JTextField(28);
        field.setName(name);
        field.getAccessibleContext().setAccessibleName(about);
        return field;
    }

    Issue issue() {
        return issue;
    }

    /** Whether it was agreed to; else all stays as it was. */
    boolean ask(JComponent over) {
        owner.setText(issue.owner());
        by.setText(issue.by());
        date.setText(issue.date());
        int answer = JOptionPane.showConfirmDialog(
                over, form, "The drawing's title block", JOptionPane.OK_CANCEL_OPTION, JOptionPane.PLAIN_MESSAGE);
        if (answer != JOptionPane.OK_OPTION) return false;
        issue = new Issue(owner.getText(), by.getText(), date.getText());
        return true;
    }
}
