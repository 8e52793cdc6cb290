package org.marktwice.view.bench;

import java.awt.BorderLayout;
import java.awt.Point;
import java.awt.event.ActionEvent;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JPopupMenu;
import javax.swing.JScrollPane;
import javax.swing.ScrollPaneConstants;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;
import org.marktwice.bench.Action;
import org.marktwice.bench.Mark;
import org.marktwice.bench.Marker;
import org.marktwice.bench.Tool;
import org.marktwice.picture.FigureCache;
import org.marktwice.picture.Ink;
import org.marktwice.picture.Lie;
import org.marktwice.timber.SurfacePoint;
import org.marktwice.view.Commands;
import org.marktwice.view.Commands.Command;
import org.marktwice.view.Commands.Deed;
import org.marktwice.view.Look;
import org.marktwice.view.Session;

/** The bench: the rack, the board in two views, the tools, the working drawing, the parts, and the line that answers. */
public final class BenchScreen extends JPanel {
    private static final long serialVersionUID = 1L;
    /** Below this width, at the usual text size, there is no room for three columns. */
    private static final int NARROW = 1080;

    private static final String WIDE = "[222lp!,fill][0:0:,grow,fill][250lp:22%:312lp,fill]";
    private static final String TIGHT = "[160lp!,fill][0:0:,grow,fill][200lp!,fill]";
    private static final String WITHOUT_DRAWING = "[160lp:17%:222lp,fill][grow,fill]";

    private final transient BenchModel model;
    private final transient List<Deed> deeds = new ArrayList<>();
    private final transient Choosers chooser;
    private final transient Help help;
    private final transient Doors doors;
    private final transient Runnable follow = this::refresh;
    private final WordButton dryFitWord = new WordButton(BenchCommands.DRY_FIT, () -> run(BenchCommands.DRY_FIT));
    private final BoardView boardView;
    private final UnrolledView unrolledView;
    private final HeaderPanel header;
    private final RackPanel rack;
    private final BoardPanel boardPanel;
    private final UnrolledPanel unrolledPanel;
    private final DrawingPanel drawing;
    private final PartsPanel parts;
    private final WordButton job = new WordButton(BenchCommands.JOB, () -> run(BenchCommands.JOB));
    private final LinePanel line = new LinePanel();
    private final TwoViews split;
    private final JPanel right = new JPanel(new MigLayout(
            "insets 0, gap 0 14lp, wrap 1, fill", "[grow,fill]", "[180lp:380lp:,grow,fill][0:pref:pref]"));
    private final transient MigLayout columns =
            new MigLayout("insets 16lp 20lp 16lp 20lp, gap 20lp 0, fill, hidemode 3", WIDE, "[grow,fill]");
    private transient @Nullable Stamp shown;
    private boolean narrowBefore;

    /** What the slower panels depend on; they are filled anew only when it changes. */
    private record Stamp(
            int steps,
            String board,
            @Nullable BenchTool tool,
            @Nullable TurnTrial trial,
            Lie lie,
            ShapeShown shape,
            Marker marker,
            String choice) {}

    /** What leads away from the bench: handing in, a look at the job as it would come out, and the job put together dry. */
    public record Doors(Runnable handIn, Runnable job, Runnable dryFit) {}

    /**
     * @param session the attempt that is worked on
     * @param cache where figures of the wood are kept
     */
    public BenchScreen(Session session, FigureCache cache, Doors doors) {
        super(new BorderLayout());
        this.doors = doors;
        setName("bench");
        model = new BenchModel(session);
        boardView = new BoardView(cache);
        unrolledView = new UnrolledView(cache);
        chooser = new Choosers(model, boardView, unrolledView);
        help = new Help(model, chooser);
        addDeeds();
        header = new HeaderPanel(
                model,
                deed(BenchCommands.UNDO),
                deed(BenchCommands.REDO),
                deed(BenchCommands.NAME_SLIP),
                deed(BenchCommands.HINT),
                deed(BenchCommands.HAND_IN));
        rack = new RackPanel(model, cache);
        boardPanel = new BoardPanel(model, boardView, this::run);
        unrolledPanel = new UnrolledPanel(model, unrolledView, this::run);
        drawing = new DrawingPanel(model, cache, () -> run(BenchCommands.JOINT));
        parts = new PartsPanel(model);
        split = new TwoViews(session.scenario().boards(), boardPanel, unrolledPanel);
        arrange();
        for (PatchView view : List.<PatchView>of(boardView, unrolledView)) {
            ToolMouse.attach(view, model, this::openMenu);
            ToolKeys.attach(view.component(), model);
        }
        Commands.install(this, deeds);
        model.addListener(this::refresh);
        session.addListener(follow);
        refresh();
    }

    private void arrange() {
        add(header, BorderLayout.NORTH);
        add(line, BorderLayout.SOUTH);
        JPanel middle = new JPanel(columns);
        middle.setOpaque(false);
        middle.add(rack, "cell 0 0, hmin 0");
        middle.add(split, "cell 1 0, hmin 0, wmin 0, grow");
        right.setOpaque(false);
        right.add(drawing, "hmin 0, wmin 0");
        right.add(partsSheet(), "wmin 0, hmin 0");
        middle.add(right, "cell 2 0, hmin 0, wmin 0");
        add(middle, BorderLayout.CENTER);
    }

    /** In a narrow window, or with large text, the boards need the room: the drawing is shown when it is asked for. */
    @Override
    public void setBounds(int x, int y, int width, int height) {
        boolean narrow = width < Look.px(NARROW);
        if (width > 0 && narrow != narrowBefore) {
            narrowBefore = narrow;
            showDrawing(!narrow);
        }
        super.setBounds(x, y, width, height);
    }

    private void showDrawing(boolean shown) {
        right.setVisible(shown);
        columns.setColumnConstraints(!shown ? WITHOUT_DRAWING : narrowBefore ? TIGHT : WIDE);
        revalidate();
    }

    private void showJoint() {
        if (!right.isVisible()) showDrawing(true);
        drawing.nextDetail();
    }

    private JComponent partsSheet() {
        Sheet sheet = new Sheet(new MigLayout("insets 12lp 16lp 6lp 16lp, gap 0 8lp, wrap 1, fill", "[grow,fill]"));
        sheet.add(Look.quiet("PARTS", Look.Style.HEADING), "split 2, h 24lp!, growx, wmin 0");
        sheet.add(job, "growx 0");
        JScrollPane scroll = new JScrollPane(
                parts,
                ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED,
                ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.setOpaque(false);
        scroll.getViewport().setOpaque(false);
        scroll.setBorder(null);
        sheet.add(scroll, "wmin 0, hmin 0, grow, pushy");
        sheet.add(dryFitWord, "growx 0, hidemode 3");
        return sheet;
    }

    // Doing

    private void addDeeds() {
        take(BenchCommands.FACE_SIDE, new MarkTool(model, Mark.Kind.FACE_SIDE));
        take(BenchCommands.FACE_EDGE, new MarkTool(model, Mark.Kind.FACE_EDGE));
        take(BenchCommands.NAME, new NameTool(model, chooser));
        take(BenchCommands.RULE, new RuleTool(model));
        take(BenchCommands.STRAIGHT_EDGE, new ProveTool(model, Tool.STRAIGHT_EDGE));
        take(BenchCommands.WINDING_STICKS, new ProveTool(model, Tool.WINDING_STICKS));
        take(BenchCommands.TRY_SQUARE, new ProveTool(model, Tool.TRY_SQUARE));
        take(BenchCommands.END_GRAIN, new ProveTool(model, Tool.END_GRAIN));
        take(BenchCommands.TURN, new TurnTool(model, false));
        take(BenchCommands.TRIM, new TurnTool(model, true));
        add(BenchCommands.SET_ASIDE, this::setAside);
        takeSettingOut(BenchCommands.LINE, new LineTool(model));
        takeSettingOut(BenchCommands.BEVEL, new BevelTool(model));
        takeSettingOut(BenchCommands.GAUGE, new GaugeTool(model));
        takeSettingOut(BenchCommands.MATE, new MateTool(model));
        takeSettingOut(BenchCommands.CRAMP, new CrampTool(model));
        takeSettingOut(BenchCommands.WASTE, new WasteTool(model, chooser));
        takeSettingOut(BenchCommands.CUT, new CutTool(model, chooser));
        take(BenchCommands.RUB_OUT, new RubOutTool(model));
        add(BenchCommands.MARKER, model::takeOtherMarker);
        add(BenchCommands.CHOICE, this::chooseNext);
        add(BenchCommands.PUT_DOWN, model::putDown);
        key(BenchCommands.LEFT, ToolKey.Stroke.LEFT);
        key(BenchCommands.RIGHT, ToolKey.Stroke.RIGHT);
        key(BenchCommands.UP, ToolKey.Stroke.UP);
        key(BenchCommands.DOWN, ToolKey.Stroke.DOWN);
        key(BenchCommands.ENTER, ToolKey.Stroke.ENTER);
        add(BenchCommands.SHAPE, () -> model.show(model.shape().stepped(1)));
        add(BenchCommands.SHAPE_BACK, () -> model.show(model.shape().stepped(-1)));
        add(BenchCommands.ROOM, () -> unrolledPanel.another());
        add(BenchCommands.NEXT_BOARD, () -> model.selectNext(1));
        add(BenchCommands.BOARD_BEFORE, () -> model.selectNext(-1));
        add(BenchCommands.UNDO, model::undo);
        add(BenchCommands.REDO, model::redo);
        add(BenchCommands.DRAWING, () -> showDrawing(!right.isVisible()));
        deeds.add(new Deed(BenchCommands.JOINT, this::showJoint, () -> drawing.hasDetails()));
        add(BenchCommands.JOB, () -> help.job(doors.job()));
        add(BenchCommands.REPORT, this::report);
        add(BenchCommands.MENU, this::menuAtCaret);
        deeds.add(new Deed(BenchCommands.HINT, help::hint, help::mayHint));
        add(BenchCommands.ESTIMATE, help::estimate);
        deeds.add(new Deed(BenchCommands.NAME_SLIP, help::nameSlip, help::mayNameSlip));
        deeds.add(new Deed(BenchCommands.LESS_HELP, help::less, help::mayFade));
        deeds.add(new Deed(BenchCommands.DRY_FIT, doors.dryFit(), help::mayDryFit));
        add(BenchCommands.HAND_IN, doors.handIn());
    }

    private void add(Command command, Runnable does) {
        deeds.add(new Deed(command, does));
    }

    private void take(Command command, BenchTool tool) {
        add(command, () -> {
            model.take(tool);
            focus();
        });
    }

    private void takeSettingOut(Command command, BenchTool tool) {
        deeds.add(new Deed(
                command,
                () -> {
                    model.take(tool);
                    focus();
                },
                model::setsOut));
    }

    private void chooseNext() {
        model.tool().ifPresent(t -> {
            t.chooseNext();
            model.changed();
        });
    }

    private void key(Command command, ToolKey.Stroke stroke) {
        add(command, () -> ToolKeys.strike(model, ToolKey.of(stroke)));
    }

    private Deed deed(Command command) {
        return Deed.of(deeds, command);
    }

    private void run(Command command) {
        deed(command).actionPerformed(new ActionEvent(this, ActionEvent.ACTION_PERFORMED, command.id()));
    }

    private void setAside() {
        chooser.reason(reason -> {
            String id = model.board().board().id();
            SurfacePoint where = Caret.middle(model.board().board(), model.lie().up());
            String said = "Board " + id + " is set aside: " + reason.spoken();
            model.perform(where, t -> new Action.SetAside(t, id, reason), said);
        });
    }

    private void report() {
        ReportDialog.show(this, model);
    }

    private void menuAtCaret() {
        SurfacePoint at =
                model.byKeys() ? model.caret() : model.aim().map(Aim::at).orElse(model.caret());
        chooser.showAt(PointerMenu.of(model, chooser, this::run, at), at);
    }

    private void openMenu(PatchView view, Point where, @Nullable Aim aim) {
        JPopupMenu menu = PointerMenu.of(model, chooser, this::run, aim == null ? null : aim.at());
        menu.show(view.component(), where.x, where.y);
    }

    // Showing

    private void refresh() {
        Scene scene = Scene.of(model);
        Scene above = scene.in(false, model);
        Scene flat = scene.in(true, model);
        boardView.show(model.shape());
        unrolledView.show(model.shape());
        boardView.show(above.picture(), above.over(), model.lie());
        unrolledView.show(flat.picture(), flat.over());
        line.show(model.line());
        boolean stepping = model.tool().map(BenchTool::snaps).orElse(false);
        boardView.setFocusTraversalKeysEnabled(!stepping);
        unrolledView.setFocusTraversalKeysEnabled(!stepping);
        Stamp now = new Stamp(
                model.session().bench().steps(),
                model.board().board().id(),
                model.tool().orElse(null),
                model.trial().orElse(null),
                model.lie(),
                model.shape(),
                model.marker(),
                model.tool().flatMap(BenchTool::choice).orElse(""));
        if (now.equals(shown)) return;
        shown = now;
        header.refresh();
        rack.refresh();
        boardPanel.refresh();
        unrolledPanel.refresh();
        drawing.refresh();
        parts.refresh();
        job.setVisible(help.maySeeJob());
        dryFitWord.setVisible(help.mayDryFit());
    }

    @Override
    protected void paintComponent(java.awt.Graphics g) {
        g.setColor(Look.colour(Ink.PAPER));
        g.fillRect(0, 0, getWidth(), getHeight());
    }

    /** What can be done here, in the menu's order. */
    public List<Deed> deeds() {
        return List.copyOf(deeds);
    }

    /** Takes the focus to the board. */
    public void focus() {
        if (!unrolledView.isFocusOwner()) boardView.requestFocusInWindow();
    }

    /** Whether turns are shown moving. */
    public void setMovement(boolean moving) {
        boardView.setMovement(moving);
    }

    /** The screen is shown no more. */
    public void left() {
        model.putDown();
        model.session().removeListener(follow);
    }

    public BenchModel model() {
        return model;
    }

    BoardView boardView() {
        return boardView;
    }

    UnrolledView unrolledView() {
        return unrolledView;
    }
}
