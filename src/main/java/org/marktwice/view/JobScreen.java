package org.marktwice.view;

import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import org.marktwice.feedback.OutcomeModel;
import org.marktwice.picture.AssembledJob;
import org.marktwice.picture.FigureCache;
import org.marktwice.picture.Ink;
import org.marktwice.rulebook.Cautions;
import org.marktwice.rulebook.OutcomeWords;
import org.marktwice.scenario.Scenario;
import org.marktwice.view.Commands.Command;
import org.marktwice.view.Commands.Deed;
import org.marktwice.view.Commands.Place;
import org.marktwice.view.Look.Style;

/** The job as it would come out with the choices made so far, and what follows for each joint and part. */
final class JobScreen implements Screen {
    static final Command ON =
            new Command("walk-on", Place.JOB, "Walk round", "RIGHT", "See the job from the next corner");
    static final Command BACK_ROUND =
            new Command("walk-back", Place.JOB, "Walk back", "LEFT", "See the job from the corner before");
    static final Command NEXT =
            new Command("next-outcome", Place.JOB, "Next line", "DOWN", "Pick out what the next line is about");
    static final Command BEFORE =
            new Command("outcome-before", Place.JOB, "Line before", "UP", "Pick out what the line before is about");
    static final Command LEAVE =
            new Command("leave-job", Place.JOB, "Back", "ESCAPE", "Go back to where you came from");
    static final List<Command> ALL = List.of(ON, BACK_ROUND, NEXT, BEFORE, LEAVE);

    private static final String OUTLINES = "Parts that have no board yet are drawn in outline.";
    private static final String SEEN =
            "Look for yourself: the marks, the hands, the joints as they come out of the marks. What is amiss is told at"
                    + " hand-in.";

    private final Scenario exercise;
    private final OutcomeModel model;
    private final AssembledPane pane;
    private final JLabel from = Look.quiet(" ", Style.NOTE);
    private final List<OutcomeRow> rows = new ArrayList<>();
    private final List<Deed> deeds;
    private final JPanel page;
    private int chosen = -1;

    /**
     * @param how of what state of the work it is, such as {@code as it stands now}
     * @param back the word of the way back
     */
    JobScreen(Scenario exercise, String how, OutcomeModel model, FigureCache figures, String back, Runnable leave) {
        this.exercise = exercise;
        this.model = model;
        pane = new AssembledPane(model, figures);
        Deed on = new Deed(ON, () -> walk(+1));
        Deed before = new Deed(BACK_ROUND, () -> walk(-1));
        Deed leaving = new Deed(LEAVE, leave);
        deeds = List.of(on, before, new Deed(NEXT, () -> step(+1)), new Deed(BEFORE, () -> step(-1)), leaving);
        page = build(how, on, before, leaving, back);
        Commands.install(page, deeds);
        pane.walkTo(0);
        if (!rows.isEmpty()) choose(model.first());
        told();
    }

    private JPanel build(String how, Deed on, Deed before, Deed leaving, String back) {
        JPanel whole = new JPanel(new MigLayout("insets 0, gap 0, wrap 1, fill", "[grow,fill]", "[][grow,fill][]"));
        JButton leave = Look.primary(new JButton(leaving));
        leave.setText(back);
        leave.setName("leave-job");
        whole.add(Bar.top("The job as it would come out", exercise.title() + " · " + how, leave));
        JPanel body = new JPanel(
                new MigLayout("insets 20, gap 20, fill", "[0:0:,grow,fill][340lp:30%:440lp,fill]", "[grow,fill]"));
        Card picture = new Card(new MigLayout("insets 16 20 14 20, gap 8, fill", "[grow,fill][][]", "[grow,fill][]"));
        picture.add(pane, "spanx 3, wrap, hmin 0, wmin 0");
        from.setName("seen-from");
        picture.add(from, "wmin 0");
        picture.add(turning(before, "← Walk back"));
        picture.add(turning(on, "Walk round →"));
        body.add(picture, "hmin 0, wmin 0");
        body.add(lines(), "hmin 0, wmin 0");
        whole.add(body, "grow, hmin 0");
        JLabel ghosts =
                Look.label(model.outcome().parts().stream().allMatch(p -> p.lies()) ? " " : OUTLINES, Style.BODY);
        whole.add(Bar.bottom(ghosts, Look.quiet(Cautions.LINE, Style.NOTE)));
        return whole;
    }

    private static JButton turning(Deed deed, String word) {
        JButton button = new JButton(deed);
        button.setText(word);
        button.setName(deed.command().id());
        button.setFocusable(false);
        return button;
    }

    private JComponent lines() {
        Card card = new Card(new MigLayout("insets 16 8 8 8, gap 0, wrap 1, fill", "[grow,fill]", "[][][grow,fill]"));
        card.add(Look.prose(model.sum(), Style.SUBTITLE, Ink.INK), "gapleft 12, gapright 12, gapbottom 4, wmin 0");
        JComponent note = Look.prose(model.isTold() ? "" : SEEN, Style.NOTE, Ink.QUIET);
        card.add(note, "gapleft 12, gapright 12, gaptop 4, wmin 0" + (model.isTold() ? ", h 0!" : ""));
        Column column = new Column(new MigLayout("insets 8 0 8 0, gap 0 2, wrap 1", "[grow,fill]"));
        for (OutcomeWords.Line line : model.lines()) {
            int index = rows.size();
            boolean first = index > 0 && rows.get(index - 1).line().joint() != null && line.joint() == null;
            OutcomeRow row = new OutcomeRow(line, () -> choose(index));
            rows.add(row);
            column.add(row, "growx, wmin 0" + (first ? ", gaptop 12" : ""));
        }
        JScrollPane scroll = column.scrollingBehindArrows();
        scroll.setName("outcomes");
        scroll.getAccessibleContext().setAccessibleName("What follows, joint by joint and part by part");
        card.add(scroll, "grow, hmin 0, wmin 0");
        return card;
    }

    private void walk(int by) {
        pane.walkTo(pane.corner() + by);
        told();
    }

    private void told() {
        from.setText("Seen " + AssembledJob.from(pane.corner()));
        pane.getAccessibleContext().setAccessibleName("The job, seen " + AssembledJob.from(pane.corner()));
        pane.getAccessibleContext().setAccessibleDescription(model.sum());
    }

    private void step(int by) {
        if (rows.isEmpty()) return;
        choose(Math.max(0, Math.min(rows.size() - 1, chosen + by)));
    }

    /** Scrolls the chosen line into sight. */
    private void reveal() {
        if (chosen < 0) return;
        OutcomeRow row = rows.get(chosen);
        row.scrollRectToVisible(new Rectangle(0, 0, row.getWidth(), row.getHeight()));
    }

    private void choose(int index) {
        chosen = index;
        for (int i = 0; i < rows.size(); i++) rows.get(i).choose(i == index);
        OutcomeRow row = rows.get(index);
        row.requestFocusInWindow();
        reveal();
        pane.choose(row.line());
        if (model.isTold()) pane.walkTo(model.corner(row.line(), pane.corner()));
        told();
    }

    @Override
    public JComponent component() {
        return page;
    }

    @Override
    public String title() {
        return exercise.title() + ": the job";
    }

    @Override
    public String menu() {
        return "The job";
    }

    @Override
    public List<Deed> deeds() {
        return deeds;
    }

    @Override
    public Optional<Workshop> workshop() {
        return Workshop.of(exercise);
    }

    @Override
    public void focus() {
        if (rows.isEmpty()) page.requestFocusInWindow();
        else rows.get(chosen).requestFocusInWindow();
        SwingUtilities.invokeLater(this::reveal);
    }
}
