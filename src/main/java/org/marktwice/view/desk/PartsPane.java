package org.marktwice.view.desk;

import java.util.List;
import java.util.Locale;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import org.marktwice.drawing.Overall;
import org.marktwice.picture.Ink;
import org.marktwice.scenario.Draft;
import org.marktwice.view.Card;
import org.marktwice.view.Column;
import org.marktwice.view.Commands.Deed;
import org.marktwice.view.Look;
import org.marktwice.view.Look.Style;

/** The job's parts and joints, and beside them the drawing that comes of them, to point and drag at. */
final class PartsPane extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final String POINTING =
            "Point at a part, or go from one to the next by the arrow keys; drag it in one of the three views.";

    private final transient SetModel model;
    private final PartsForm parts;
    private final JointsForm joints;
    private final JobSheet sheet;
    private final JLabel overall = Look.quiet("", Style.NOTE);
    private final JTextArea help = Look.prose(POINTING, Style.NOTE, Ink.QUIET);

    /** @param add adds a part; {@code opposite} and {@code remove} are of the one that is picked; {@code join} joins two */
    PartsPane(SetModel model, Deed add, Deed opposite, Deed remove, Deed join) {
        super(new MigLayout("insets 8 20 20 20, gap 20, fill", "[814:920:1040,fill][grow,fill]", "[grow,fill]"));
        this.model = model;
        parts = new PartsForm(model);
        joints = new JointsForm(model);
        sheet = new JobSheet(model);
        Column column = new Column(new MigLayout("insets 0, gap 0 16, wrap 1, fillx", "[grow,fill]"));
        Card partsCard = new Card(new MigLayout("insets 16 20 20 20, gap 8 10, wrap 1, fillx", "[grow,fill]"));
        JPanel words = row();
        words.add(Look.label("Parts", Style.SUBTITLE), "growx, pushx");
        words.add(KeyButton.of(add));
        words.add(KeyButton.of(opposite));
        words.add(KeyButton.of(remove));
        partsCard.add(words);
        partsCard.add(parts, "wmin 0");
        column.add(partsCard, "wmin 0");
        Card jointsCard = new Card(new MigLayout("insets 16 20 20 20, gap 8 10, wrap 1, fillx", "[grow,fill]"));
        JPanel more = row();
        more.add(Look.label("Joints", Style.SUBTITLE), "growx, pushx");
        more.add(KeyButton.of(join));
        jointsCard.add(more);
        jointsCard.add(joints, "wmin 0");
        column.add(jointsCard, "wmin 0");
        JScrollPane scroll = column.scrolling();
        add(scroll, "grow, hmin 0, wmin 0");
        Card drawing =
                new Card(new MigLayout("insets 16 20 16 20, gap 0 8, wrap 1, fill", "[grow,fill]", "[][grow,fill][]"));
        drawing.add(Look.label("Drawing", Style.SUBTITLE), "split 2, growx");
        overall.setName("overall");
        drawing.add(overall, "growx 0, wmin 0");
        drawing.add(sheet, "grow, hmin 0, wmin 0");
        drawing.add(help, "wmin 0, h 36lp::");
        add(drawing, "grow, hmin 0, wmin 0");
    }

    private static JPanel row() {
        JPanel row = new JPanel(new MigLayout("insets 0, gapx 8, fillx"));
        row.setOpaque(false);
        return row;
    }

    /** @param gaps of the whole exercise */
    void refresh(List<Draft.Gap> gaps) {
        parts.refresh(gaps);
        joints.refresh(gaps);
        sheet.refresh();
        overall.setText(model.draft().drawn().map(d -> overall(d.overall())).orElse(""));
        help.setText(model.isJoining() ? model.line() : POINTING);
        Look.inked(help, Style.NOTE, model.isJoining() ? Ink.ACTION : Ink.QUIET);
    }

    /** To where a part can be picked. */
    void focusDrawing() {
        sheet.requestFocusInWindow();
    }

    private static String overall(Overall of) {
        return String.format(
                Locale.ROOT,
                "%s across, %s deep, %s high",
                NumberField.spoken(of.across()),
                NumberField.spoken(of.deep()),
                NumberField.spoken(of.high()));
    }
}
