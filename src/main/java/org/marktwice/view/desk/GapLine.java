package org.marktwice.view.desk;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import javax.swing.JLabel;
import org.marktwice.picture.Ink;
import org.marktwice.scenario.Draft;
import org.marktwice.view.Look;

/** One line beside a thing: what is wrong with it, or else what it lacks; hidden where there is neither. */
final class GapLine extends JLabel {
    private static final long serialVersionUID = 1L;
    private static final String MISSING = " is missing";
    private static final Pattern MARK = Pattern.compile(": say where its (face side|face edge) looks");

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
        List<Draft.Gap> wrong = gaps.stream().filter(g -> missing(g).isEmpty()).toList();
        if (!wrong.isEmpty()) {
            Look.inked(this, Look.Style.NOTE, Ink.WRONG);
            setText("×  " + wrong.get(0).says() + (wrong.size() == 1 ? "" : "; and " + (wrong.size() - 1) + " more"));
            setToolTipText(wrong.stream().map(Draft.Gap::says).collect(Collectors.joining("; ")));
        } else {
            Look.inked(this, Look.Style.NOTE, Ink.QUIET);
            setText("○  Still to fill in: "
                    + gaps.stream().flatMap(g -> missing(g).stream()).distinct().collect(Collectors.joining(", ")));
            setToolTipText(gaps.stream().map(Draft.Gap::says).collect(Collectors.joining("; ")));
        }
    }

    /** What only has not been filled in yet; empty where something is wrong. */
    private static Optional<String> missing(Draft.Gap gap) {
        String says = gap.says();
        if (gap.where().endsWith(".name")) return Optional.of("name");
        if (gap.where().equals("boards") && says.endsWith(" yet")) return Optional.of("a board");
        if (gap.where().equals("stages") && says.endsWith(" yet")) return Optional.of("a stage");
        Matcher mark = MARK.matcher(says);
        if (mark.find()) return Optional.of(mark.group(1));
        int its = says.lastIndexOf(": its ");
        return says.endsWith(MISSING) && its >= 0
                ? Optional.of(says.substring(its + 6, says.length() - MISSING.length()))
                : Optional.empty();
    }
}
