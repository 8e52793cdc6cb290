package org.marktwice.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;
import org.marktwice.bench.BoardState;
import org.marktwice.feedback.Pictures;
import org.marktwice.feedback.SheetModel;
import org.marktwice.picture.FigureCache;
import org.marktwice.picture.Ink;
import org.marktwice.rulebook.Cautions;
import org.marktwice.view.Commands.Command;
import org.marktwice.view.Commands.Deed;
import org.marktwice.view.Commands.Place;
import org.marktwice.view.Look.Style;
import org.marktwice.view.bench.BoardView;
import org.marktwice.view.bench.UnrolledView;
import org.marktwice.view.dryfit.FitScreen;

/** The mark sheet: the job as it would come out, the findings by board, and beside them the board that shows each. */
final class SheetScreen implements Screen {
    static final Command REPLAY = new Command("replay", Place.SHEET, "Replay", "R", "Step through what you did");
    static final Command NEXT =
            new Command("next-finding", Place.SHEET, "Next finding", "DOWN", "Open the next finding");
    static final Command BEFORE =
            new Command("finding-before", Place.SHEET, "Finding before", "UP", "Open the finding before");
    static final Command SAVE = new Command(
            "save-sheet",
            Place.SHEET,
            "Save …",
            "menu S",
            "Save the replay for a browser, or the mark sheet as PDF or text");
    static final Command JOB = new Command(
            "job-handed-in", Place.SHEET, "The job, larger", "J", "See the job as it would come out, part by part");
    static final Command DRY_FIT = new Command(
            "dry-fit-handed-in", Place.SHEET, "Dry fit", "D", "See the job put together dry, as it was handed in");
    static final List<Command> ALL = List.of(REPLAY, JOB, DRY_FIT, NEXT, BEFORE, SAVE);

    interface Host extends SheetSummary.Host {
        void exercises();

        /** How this learner's estimates have fared. */
        Calibration calibration(String learner);

        void showSheet(Session session);

        void showJob(Session session);

        void showReplay(Session session, SheetModel sheet, int step);

        /** The job put together dry as it was handed in. */
        void dryFit(Session session);
    }

    private final Host host;
    private final Session session;
    private final SheetModel model;
    private final List<FindingRow> rows = new ArrayList<>();
    private final List<JPanel> slots = new ArrayList<>();
    private final Column column = new Column(new MigLayout("insets 4 4 16 12, gap 0, wrap 1", "[grow,fill]"));
    private final JLabel shownTitle = Look.label(" ", Style.SUBTITLE);
    private final JLabel shownNote = Look.quiet(" ", Style.NOTE);
    private final BoardView board;
    private final UnrolledView unrolled;
    private final JLabel line = Look.label(" ", Style.BODY);
    private final List<Deed> deeds;
    private final JPanel page;
    private int open = -1;

    SheetScreen(Host host, Session session, FigureCache figures, boolean movement) {
        this.host = host;
        this.session = session;
        this.model = SheetModel.of(session.situation());
        board = new BoardView(figures).tiltable();
        unrolled = new UnrolledView(figures);
        board.setMovement(movement);
        Deed replay = new Deed(REPLAY, () -> host.showReplay(session, model, 0));
        Deed save = new Deed(SAVE, () -> saving().ask());
        Deed job = new Deed(JOB, () -> host.showJob(session));
        Deed dryFit =
                new Deed(DRY_FIT, () -> host.dryFit(session), () -> FitScreen.hasSomethingToFit(session.scenario()));
        deeds = List.of(replay, job, dryFit, new Deed(NEXT, () -> step(+1)), new Deed(BEFORE, () -> step(-1)), save);
        page = build(replay, save, job, dryFit);
        line.setName("line");
        Commands.install(page, deeds);
        if (!rows.isEmpty()) open(0);
    }

    private JPanel build(Deed replay, Deed save, Deed job, Deed dryFit) {
        JPanel whole = new JPanel(new MigLayout("insets 0, gap 0, wrap 1, fill", "[grow,fill]", "[][grow,fill][]"));
        JButton replayButton = Look.primary(new JButton(replay));
        replayButton.setName("replay");
        JButton saveButton = new JButton(save);
        saveButton.setName("save");
        JButton dryFitButton = new JButton(dryFit);
        dryFitButton.setName("dry-fit");
        dryFitButton.setVisible(dryFit.isEnabled());
        JButton exercises = new JButton("Exercises");
        exercises.setName("exercises-button");
        exercises.addActionListener(e -> host.exercises());
        String who = model.scenario().title() + ", level " + model.scenario().level() + " · "
                + session.attempt().learner();
        whole.add(Bar.top("Mark sheet", who, exercises, saveButton, dryFitButton, replayButton));
        JPanel body = new JPanel(new MigLayout(
                "insets 20, gap 20, fill",
                "[240:280:320,fill][530:580:,grow 3,fill][340:420:,grow 2,fill]",
                "[grow,fill]"));
        body.add(
                new SheetSummary(host, model, host.calibration(session.attempt().learner())).component(job),
                "growy, hmin 0");
        body.add(findings(), "growy, hmin 0, wmin 0");
        body.add(evidence(), "growy, hmin 0, wmin 0");
        whole.add(body, "grow, hmin 0");
        whole.add(Bar.bottom(line, Look.quiet(Cautions.LINE, Style.NOTE)));
        return whole;
    }

    private JComponent findings() {
        Card card = new Card(new MigLayout("insets 12 12 4 4, fill", "[grow,fill]", "[grow,fill]"));
        for (SheetModel.Group group : model.groups()) {
            JPanel head = new JPanel(new MigLayout("insets 14 12 6 12", "[grow][]"));
            head.setOpaque(false);
            head.add(Look.label(group.title(), Style.SUBTITLE));
            head.add(Look.quiet(
                    SheetModel.number(group.marks()) + " of " + SheetModel.number(group.outOf()), Style.NOTE));
            column.add(head, "growx");
            for (SheetModel.Line finding : group.lines()) addRow(finding);
        }
        JScrollPane scroll = column.scrollingBehindArrows();
        scroll.setName("findings");
        scroll.getAccessibleContext().setAccessibleName("Findings by board, worst first");
        card.add(scroll, "grow, hmin 0, wmin 0");
        return card;
    }

    private void addRow(SheetModel.Line finding) {
        FindingRow row = new FindingRow(finding);
        int index = rows.size();
        row.addActionListener(e -> open(index == open ? -1 : index));
        rows.add(row);
        JPanel slot = new JPanel(new MigLayout("insets 0", "[grow,fill]"));
        slot.setOpaque(false);
        slots.add(slot);
        column.add(row, "growx, wmin 0");
        column.add(slot, "growx, wmin 0, hidemode 3");
    }

    private JComponent evidence() {
        Card card = new Card(new MigLayout(
                "insets 18 20 16 20, gap 0, wrap 1, fill", "[grow,fill]", "[]2[]8[grow 3,fill]8[grow 2,fill]"));
        card.add(shownTitle, "wmin 0");
        card.add(shownNote, "wmin 0");
        card.add(board, "grow, wmin 0, hmin 0");
        card.add(unrolled, "grow, wmin 0, hmin 0");
        return card;
    }

    private void step(int by) {
        int next = Math.max(0, Math.min(rows.size() - 1, open + by));
        open(next);
        rows.get(next).requestFocusInWindow();
        rows.get(next)
                .scrollRectToVisible(new java.awt.Rectangle(
                        0,
                        -Look.px(40),
                        rows.get(next).getWidth(),
                        rows.get(next).getHeight() + Look.px(220)));
    }

    /** Opens one finding and closes the others; −1 closes all. */
    private void open(int index) {
        open = index;
        for (int i = 0; i < rows.size(); i++) {
            boolean on = i == index;
            rows.get(i).open(on);
            JPanel slot = slots.get(i);
            slot.removeAll();
            slot.setVisible(on);
            if (on) {
                SheetModel.Line finding = rows.get(i).line();
                slot.add(new FindingBody(finding, () -> replayFrom(finding)), "growx, wmin 0");
            }
        }
        column.revalidate();
        column.repaint();
        if (index >= 0) show(rows.get(index).line());
    }

    private void replayFrom(SheetModel.Line finding) {
        Integer step = finding.finding().step();
        host.showReplay(session, model, step == null ? 0 : step);
    }

    /** The board that shows the finding, turned so that the evidence faces whoever looks. */
    private void show(SheetModel.Line finding) {
        line.setText(finding.title());
        @Nullable String id = finding.board();
        board.setVisible(id != null);
        unrolled.setVisible(id != null);
        if (id == null) {
            shownTitle.setText("The job as a whole");
            shownNote.setText("No one board shows this.");
            return;
        }
        BoardState state = model.bench().board(id);
        var picture = Pictures.learners(model.bench(), state)
                .evidence(finding.finding().evidence(), Ink.of(finding.verdict()));
        shownTitle.setText("Board " + id + " · " + model.role(state));
        shownNote.setText(finding.title() + (finding.figure().isEmpty() ? "" : ": " + finding.figure()));
        board.getAccessibleContext().setAccessibleName("Board " + id);
        board.getAccessibleContext().setAccessibleDescription(finding.says());
        board.showEvidence(picture);
        unrolled.show(picture);
    }

    /** To a file that is asked for. */
    Saving saving() {
        return new Saving(page, session, line::setText);
    }

    @Override
    public JComponent component() {
        return page;
    }

    @Override
    public String title() {
        return model.scenario().title() + ": mark sheet";
    }

    @Override
    public String menu() {
        return "Mark sheet";
    }

    @Override
    public List<Deed> deeds() {
        return deeds;
    }

    @Override
    public void setMovement(boolean shown) {
        board.setMovement(shown);
    }

    @Override
    public Optional<Workshop> workshop() {
        return Workshop.of(session.scenario());
    }

    @Override
    public void focus() {
        if (rows.isEmpty()) page.requestFocusInWindow();
        else rows.get(0).requestFocusInWindow();
    }
}
