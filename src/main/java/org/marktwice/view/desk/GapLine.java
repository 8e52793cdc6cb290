package org.marktwice.view.desk;

import java.util.List;
import java.util.stream.Collectors;
import javax.swing.JLabel;
import org.marktwice.picture.Ink;
import org.marktwice.scenario.Draft;
import org.marktwice.view.Look;

/** One line beside a thing: what is wrong with it, or else what it lacks; hidden where there is neither. */
final class GapLine extends JLabel {
    private static final long serialVersionUID = 1L;
    private static final String MISSING = " is missing";

    GapLine(String name) {
        setName(name);
        setVisible(false);
    }

    void show(List<Draft.Gap> gaps) {
        setVisible(!gaps.isEmpty());
        if (gaps.isEmpty()) {
            setText("");
            return;
        }
        List<Draft.Gap> wrong = gaps.stream().filter(g -> !isMissing(g)).toList();
        if (wrong.isEmpty()) {
            Look.inked(this, Look.Style.NOTE, Ink.QUIET);
            setText("○  Still to fill in: "
                    + gaps.stream().map(GapLine::what).distinct().collect(Collectors.joining(", ")));
        } else {
            Look.inked(this, Look.Style.NOTE, Ink.WRONG);
            setText("×  " + wrong.get(0).says());
        }
        setToolTipText(getText());
    }

    private static boolean isMissing(Draft.Gap gap) {
        return gap.says().endsWith(MISSING) || gap.where().endsWith(".name");
    }

    private static String what(Draft.Gap gap) {
        if (gap.where().endsWith(".name")) return "name";
        String says = gap.says();
        int its = says.lastIndexOf(": its ");
        return says.substring(its + 6, says.length() - MISSING.length());
    }
}
