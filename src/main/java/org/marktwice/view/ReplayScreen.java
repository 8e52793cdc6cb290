package org.marktwice.view;

import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.Timer;
import net.miginfocom.swing.MigLayout;
import org.marktwice.bench.Bench;
import org.marktwice.bench.BoardState;
import org.marktwice.feedback.ActionWords;
import org.marktwice.feedback.BoardWords;
import org.marktwice.feedback.Pictures;
import org.marktwice.feedback.ReplayModel;
import org.marktwice.feedback.SheetModel;
import org.marktwice.picture.BoardPicture;
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

/** Every action of an attempt, one after another: the board as it was, and beside it as the model answer has it. */
final class ReplayScreen implements Screen {
    static final Command PLAY =
            new Command("play", Place.REPLAY, "Play or pause", "SPACE", "Let the steps run, or stop them");
    static final Command NEXT = new Command("step-on", Place.REPLAY, "Step on", "RIGHT", "Go one step on");
    static final Command BEFORE = new Command("step-back", Place.REPLAY, "Step back", "LEFT", "Go one step back");
    static final Command FIRST =
            new Command("to-start", Place.REPLAY, "To the start", "HOME", "Go to the untouched bench");
    static final Command LAST = new Command("to-end", Place.REPLAY, "To the end", "END", "Go to the last step");
    static final Command NEXT_FINDING = new Command(
            "on-to-finding",
            Place.REPLAY,
            "On to a finding",
            "shift RIGHT",
            "Go on to the next step that decided a finding");
    static final Command FINDING_BEFORE = new Command(
            "back-to-finding",
            Place.REPLAY,
            "Back to a finding",
            "shift LEFT",
            "Go back to a step that decided a finding");
    static final Command FASTER = new Command("faster", Place.REPLAY, "Faster", "UP", "Let the steps run faster");
    static final Command SLOWER = new Command("slower", Place.REPLAY, "Slower", "DOWN", "Let the steps run slower");
    static final Command WHY = new Command(
            "why-best",
            Place.REPLAY,
            "Why it is best",
            "W",
            "Show why the model answer is the best, or its board again");
    static final Command SAVE = new Command(
            "save-replay",
            Place.REPLAY,
            "Save …",
            "menu S",
            "Save the replay for a browser, or the mark sheet as PDF or text");
    static final Command SHEET =
            new Command("to-sheet", Place.REPLAY, "Mark sheet", "ESCAPE", "Back to the mark sheet");
    static final Command DRY_FIT = new Command(
            "dry-fit-at-step",
            Place.REPLAY,
            "Dry fit",
            "D",
            "See the job put together dry, as far as it was set out by then");
    static final List<Command> ALL = List.of(
            PLAY, NEXT, BEFORE, NEXT_FINDING, FINDING_BEFORE, FIRST, LAST, FASTER, SLOWER, WHY, DRY_FIT, SAVE, SHEET);

    /** How long a step stays at the usual speed, in milliseconds: long enough to read what was done. */
    private static final int STEP_MS = 1600;

    /** So many findings of a step are named beside its board. */
    private static final int MOST = 3;

    private static final double[] SPEEDS = {0.5, 1, 2, 4, 8};

    interface Host {
        void exercises();

        void showSheet(Session session);

        /** The job put together dry as it was after a step. */
        void dryFit(Session session, Bench then, int step);
    }

    private final Session session;
    private final ReplayModel model;
    private final ActionWords words;
    private final JLabel where = Look.quiet(" ", Style.HEADING);
    private final JLabel done = Look.label(" ", Style.SUBTITLE);
    private final JPanel decided = new JPanel(new MigLayout("insets 0, gap 0 2, wrap 1", "[grow,fill]"));
    private final BoardView board;
    private final UnrolledView unrolled;
    private final ModelPane models;
    private final TickBar ticks;
    private final JButton play = new JButton();
    private final JLabel line =
            Look.label("← → step, with Shift by finding   ·   Space play   ·   ↑ ↓ speed   ·   Home, End", Style.BODY);
    private final JLabel pace = Look.quiet("", Style.NOTE);
    private final Timer timer;
    private final List<Deed> deeds;
    private final JPanel page;
    private int step;
    private int speed = 1;

    ReplayScreen(Host host, Session session, ReplayModel model, int first, FigureCache figures, boolean movement) {
        this.session = session;
        this.model = model;
        this.words = new ActionWords(session.scenario());
        this.ticks = new TickBar(model, this::go);
        this.timer = new Timer(STEP_MS, e -> playOn());
        board = new BoardView(figures).tiltable();
        unrolled = new UnrolledView(figures);
        models = new ModelPane(session, figures);
        setMovement(movement);
        board.setName("replay-board");
        where.setName("step");
        done.setName("done");
        deeds = List.of(
                new Deed(PLAY, this::playOrPause),
                new Deed(NEXT, () -> go(step + 1), () -> step < model.last()),
                new Deed(BEFORE, () -> go(step - 1), () -> step > 0),
                new Deed(NEXT_FINDING, () -> goToFinding(true)),
                new Deed(FINDING_BEFORE, () -> goToFinding(false)),
                new Deed(FIRST, () -> go(0)),
                new Deed(LAST, () -> go(model.last())),
                new Deed(FASTER, () -> speed(+1)),
                new Deed(SLOWER, () -> speed(-1)),
                new Deed(WHY, models::toggleReasons),
                new Deed(
                        DRY_FIT,
                        () -> host.dryFit(session, model.after(step), step),
                        () -> FitScreen.hasSomethingToFit(session.scenario())),
                new Deed(SAVE, () -> saving().ask()),
                new Deed(SHEET, () -> host.showSheet(session)));
        page = build(host);
        line.setName("line");
        Commands.install(page, deeds);
        speed(0);
        go(first);
    }

    private JPanel build(Host host) {
        JPanel whole = new JPanel(new MigLayout("insets 0, gap 0, wrap 1, fill", "[grow,fill]", "[][grow,fill][][]"));
        JButton sheet = Look.primary(new JButton(deed(SHEET)));
        sheet.setName("to-sheet");
        JButton exercises = new JButton("Exercises");
        exercises.addActionListener(e -> host.exercises());
        String note = session.scenario().title() + ", level "
                + session.scenario().level() + " · " + session.attempt().learner();
        JButton save = new JButton(deed(SAVE));
        save.setName("save");
        JButton dryFit = new JButton(deed(DRY_FIT));
        dryFit.setName("dry-fit");
        dryFit.setVisible(dryFit.isEnabled());
        whole.add(Bar.top("Replay", note, exercises, dryFit, save, sheet));
        JPanel body = new JPanel(new MigLayout(
                "insets 20 20 12 20, gap 20, fill", "[grow,fill,sg board][grow,fill,sg board]", "[grow,fill]"));
        body.add(learners(), "growy, hmin 0, wmin 0");
        body.add(models, "growy, hmin 0, wmin 0");
        whole.add(body, "grow, hmin 0");
        whole.add(transport(), "growx");
        whole.add(Bar.bottom(line, Look.quiet(Cautions.LINE, Style.NOTE)));
        return whole;
    }

    private JComponent learners() {
        Card card = new Card(new MigLayout(
                "insets 18 20 16 20, gap 0, wrap 1, fill",
                "[grow,fill]",
                "[]4[]6[70lp::]4[grow 3,fill]8[grow 2,fill]"));
        decided.setOpaque(false);
        card.add(where, "wmin 0");
        card.add(done, "wmin 0");
        card.add(decided, "wmin 0, growx, aligny top");
        card.add(board, "grow, wmin 0, hmin 0");
        card.add(unrolled, "grow, wmin 0, hmin 0");
        return card;
    }

    private JComponent transport() {
        Card card = new Card(new MigLayout("insets 4 8 10 8, gap 0, wrap 1, fillx", "[grow,fill]", "[]0[]"));
        card.add(ticks, "growx, wmin 0, h pref!");
        JPanel row = new JPanel(new MigLayout("insets 0 20 0 20, gapx 8", "[][][][][]16[][][]push[][]"));
        row.setOpaque(false);
        row.add(button(FIRST, "To the start"));
        row.add(button(BEFORE, "← Back"));
        play.setAction(deed(PLAY));
        play.setName("play");
        row.add(focusBack(play), "sg play, wmin 88lp");
        row.add(button(NEXT, "On →"));
        row.add(button(LAST, "To the end"));
        row.add(button(SLOWER, "Slower"));
        row.add(button(FASTER, "Faster"));
        pace.setName("pace");
        row.add(pace, "wmin 72lp");
        row.add(button(FINDING_BEFORE, "Back to a finding"));
        row.add(button(NEXT_FINDING, "On to a finding"));
        card.add(row, "growx");
        JPanel around = new JPanel(new MigLayout("insets 0 20 16 20, fill", "[grow,fill]"));
        around.add(card, "growx, wmin 0");
        return around;
    }

    private JButton button(Command command, String text) {
        JButton button = new JButton(deed(command));
        button.setText(text);
        button.setName(command.id());
        button.getAccessibleContext().setAccessibleName(command.word());
        return focusBack(button);
    }

    /** Whoever points at a button goes on with the bar's keys, Space among them. */
    private JButton focusBack(JButton button) {
        button.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseReleased(MouseEvent event) {
                ticks.requestFocusInWindow();
            }
        });
        return button;
    }

    private void go(int to) {
        step = Math.max(0, Math.min(model.last(), to));
        ticks.at(step);
        showStep();
        deeds.forEach(Deed::refresh);
    }

    private void goToFinding(boolean forwards) {
        model.nextDeciding(step, forwards).ifPresent(this::go);
    }

    private void speed(int by) {
        speed = Math.max(0, Math.min(SPEEDS.length - 1, speed + by));
        int delay = (int) Math.round(STEP_MS / SPEEDS[speed]);
        timer.setDelay(delay);
        timer.setInitialDelay(delay);
        pace.setText("speed ×" + SheetModel.number(SPEEDS[speed]));
        play.setText(timer.isRunning() ? "Pause" : "Play");
    }

    private void playOrPause() {
        if (timer.isRunning()) {
            timer.stop();
        } else {
            if (step == model.last()) go(0);
            timer.start();
        }
        speed(0);
    }

    private void playOn() {
        if (step < model.last()) go(step + 1);
        if (step == model.last()) timer.stop();
        speed(0);
    }

    private void showStep() {
        Bench bench = model.after(step);
        String id = model.boardAt(step);
        String time = model.time(step);
        where.setText((model.place(step) + (time.isEmpty() ? "" : " · " + time)).toUpperCase(Locale.ROOT));
        done.setText(step == 0 ? "Before the first step" : words.of(model.action(step)));
        decided.removeAll();
        BoardState state = bench.board(id);
        String nearest = BoardWords.nearest(bench, state);
        note(BoardWords.standing(bench, state) + (nearest.isEmpty() ? "" : " · " + nearest));
        List<SheetModel.Line> found = step == 0 ? List.of() : model.decidedBy(step);
        int shown = found.size() > MOST ? MOST - 1 : found.size();
        found.subList(0, shown).forEach(l -> decided.add(verdict(l), "wmin 0"));
        if (shown < found.size()) note("and " + (found.size() - shown) + " more, on the mark sheet");
        decided.revalidate();
        decided.repaint();
        BoardPicture picture = Pictures.after(model, step);
        board.show(picture, Pictures.lie(model, step));
        board.getAccessibleContext().setAccessibleName("Board " + id + " after step " + step);
        board.getAccessibleContext().setAccessibleDescription(done.getText());
        unrolled.show(picture);
        models.show(bench, id);
    }

    private void note(String words) {
        decided.add(Look.quiet(words, Style.NOTE), "wmin 0");
    }

    private static JLabel verdict(SheetModel.Line line) {
        JLabel label = Look.inked(
                new JLabel(line.word() + ": " + line.title() + (line.figure().isEmpty() ? "" : ", " + line.figure())),
                Style.NOTE,
                Ink.of(line.verdict()));
        label.setIcon(new Sign(line.verdict()));
        label.setIconTextGap(Look.px(8));
        return label;
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
        return session.scenario().title() + ": replay";
    }

    @Override
    public String menu() {
        return "Replay";
    }

    @Override
    public List<Deed> deeds() {
        return deeds;
    }

    @Override
    public Optional<Workshop> workshop() {
        return Workshop.of(session.scenario());
    }

    @Override
    public void focus() {
        ticks.requestFocusInWindow();
    }

    @Override
    public void setMovement(boolean shown) {
        board.setMovement(shown);
        models.setMovement(shown);
    }

    @Override
    public void left() {
        timer.stop();
    }
}
