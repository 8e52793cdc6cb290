package org.marktwice.view.desk;

import java.awt.CardLayout;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import org.marktwice.files.DraftFile;
import org.marktwice.scenario.Draft;
import org.marktwice.view.Bar;
import org.marktwice.view.Commands;
import org.marktwice.view.Commands.Command;
import org.marktwice.view.Commands.Deed;
import org.marktwice.view.Commands.Place;
import org.marktwice.view.Look;
import org.marktwice.view.Look.Style;
import org.marktwice.view.Screen;

/** Setting an exercise: the job, the boards and the task, each step of it undone if one likes. */
final class SetScreen implements Screen {
    static final Command SAVE = new Command(
            "save-exercise", Place.SET, "Save", "menu S", "Save it, finished or not; what is missing is said");
    static final Command TRY = new Command(
            "try-exercise",
            Place.SET,
            "Try it",
            "menu ENTER",
            "Work at it as a learner would; nothing is kept of that");
    static final Command UNDO = new Command("undo-edit", Place.SET, "Undo", "menu Z", "Go back a step");
    static final Command REDO = new Command("redo-edit", Place.SET, "Redo", "menu shift Z", "Go on again");
    static final Command JOB =
            new Command("set-job", Place.SET, "Job", "menu 1", "Its parts and joints, with the drawing");
    static final Command BOARDS = new Command("set-boards", Place.SET, "Boards", "menu 2", "The boards on the rack");
    static final Command TASK = new Command(
            "set-task", Place.SET, "Task", "menu 3", "What is asked, what is told, and the workshop's practice");
    static final Command PART = new Command("add-part", Place.SET, "New part", "menu N", "Add a part");
    static final Command OPPOSITE = new Command(
            "add-opposite", Place.SET, "Opposite part", "menu shift N", "Add the mirror image of the part picked out");
    static final Command REMOVE = new Command(
            "remove-part", Place.SET, "Remove part", "menu DELETE", "Take the part picked out away, with its joints");
    static final Command JOIN =
            new Command("join-parts", Place.SET, "Join two parts", "menu J", "Point at two parts to join them");
    static final Command BACK = new Command(
            "leave-set",
            Place.SET,
            "Teacher's desk",
            "ESCAPE",
            "Put down what is in the hand, or go back; the work is kept");
    static final List<Command> ALL =
            List.of(SAVE, TRY, UNDO, REDO, JOB, BOARDS, TASK, PART, OPPOSITE, REMOVE, JOIN, BACK);

    private static final List<Command> PANES = List.of(JOB, BOARDS, TASK);

    private final Desk desk;
    private final SetModel model;
    private final Keeping keeping;
    private final WordField title;
    private final JLabel standing = Look.quiet(" ", Style.NOTE);
    private final SaidLine line = new SaidLine();
    private final Tabs tabs = new Tabs();
    private final JPanel stage = new JPanel(new CardLayout());
    private final PartsPane parts;
    private final BoardsPane boards;
    private final TaskPane task;
    private final List<Deed> deeds;
    private final JPanel page;
    private String pane = JOB.id();
    private String titled = "";

    /** @param name the file's, without its ending; empty for an exercise that has none yet */
    SetScreen(Desk desk, String name, Draft first) {
        this.desk = desk;
        model = new SetModel(first);
        keeping = new Keeping(desk, model, name);
        title = new WordField(
                "title",
                "Title of the exercise",
                20,
                120,
                t -> model.edit(model.draft().titled(t)));
        Look.styled(title, Style.SUBTITLE);
        title.putClientProperty("JTextField.placeholderText", "Title");
        boards = new BoardsPane(model, desk.figures());
        task = new TaskPane(model);
        deeds = deedsOf();
        parts = new PartsPane(model, deed(PART), deed(OPPOSITE), deed(REMOVE), deed(JOIN));
        page = build();
        page.putClientProperty(NumberField.LINE, (Consumer<String>) model::say);
        Commands.install(page, deeds);
        model.addListener(this::refresh);
        showPane(JOB);
        refresh();
    }

    private List<Deed> deedsOf() {
        return List.of(
                new Deed(SAVE, Typed.before(this::save)),
                new Deed(
                        TRY,
                        Typed.before(this::tryOut),
                        () -> model.draft().gaps().isEmpty()),
                new Deed(UNDO, Typed.before(this::undo), this::canUndo),
                new Deed(
                        REDO,
                        () -> step(model.steps()::redo),
                        () -> model.steps().canRedo()),
                new Deed(JOB, () -> showPane(JOB)),
                new Deed(BOARDS, () -> showPane(BOARDS)),
                new Deed(TASK, () -> showPane(TASK)),
                new Deed(PART, this::addPart),
                new Deed(OPPOSITE, model::addOpposite, () -> model.picked().isPresent()),
                new Deed(REMOVE, this::removePart, () -> model.picked().isPresent()),
                new Deed(JOIN, this::join, () -> model.draft().parts().size() > 1),
                new Deed(BACK, this::back));
    }

    private JPanel build() {
        JPanel whole = new JPanel(new MigLayout("insets 0, gap 0, wrap 1, fill", "[grow,fill]", "[][][grow,fill][]"));
        whole.add(Bar.top(
                "Set an exercise",
                "",
                KeyButton.of(deed(UNDO)),
                KeyButton.of(deed(REDO)),
                KeyButton.of(deed(TRY)),
                KeyButton.primary(deed(SAVE)),
                KeyButton.of(deed(BACK))));
        JPanel head =
                new JPanel(new MigLayout("insets 12 20 4 20, gapx 16, fillx", "[240:320:420,fill][][grow,right]"));
        standing.setName("standing");
        head.add(title);
        for (Command command : PANES) tabs.add(deed(command));
        head.add(tabs);
        head.add(standing, "wmin 0, al right");
        whole.add(head);
        stage.add(parts, JOB.id());
        stage.add(padded(boards), BOARDS.id());
        stage.add(padded(task), TASK.id());
        whole.add(stage, "grow, hmin 0, wmin 0");
        whole.add(Bar.bottom(line, Look.quiet("Everything can be undone; what you leave is kept.", Style.NOTE)));
        return whole;
    }

    private static JComponent padded(JComponent pane) {
        JPanel padded = new JPanel(new MigLayout("insets 8 20 20 20, fill", "[grow,fill]", "[grow,fill]"));
        padded.add(pane, "grow, hmin 0, wmin 0");
        return padded;
    }

    private void showPane(Command command) {
        Typed.takeAll();
        pane = command.id();
        tabs.choose(PANES.indexOf(command));
        ((CardLayout) stage.getLayout()).show(stage, pane);
        refresh();
        if (command.equals(BOARDS)) boards.focus();
        else if (command.equals(TASK)) task.focus();
    }

    private boolean canUndo() {
        return model.steps().canUndo() || Typed.isAnyPending();
    }

    /** What is no figure goes first. */
    private void undo() {
        List<NumberField> wrong = NumberField.unsound(page);
        if (wrong.isEmpty()) {
            step(model.steps()::undo);
            return;
        }
        wrong.forEach(NumberField::restore);
        model.say("");
    }

    /** Goes back or on, to where it is to be seen. */
    private void step(Runnable taken) {
        Draft before = model.draft();
        model.say("");
        taken.run();
        Draft after = model.draft();
        if (!before.parts().equals(after.parts()) || !before.joints().equals(after.joints())) turnTo(JOB);
        else if (!before.stock().equals(after.stock()) || !before.boards().equals(after.boards())) turnTo(BOARDS);
        else if (!before.titled("").withId("").equals(after.titled("").withId(""))) turnTo(TASK);
    }

    private void turnTo(Command of) {
        if (!pane.equals(of.id())) showPane(of);
    }

    /** The part's own fields go with it, and the focus to where the next can be picked. */
    private void removePart() {
        parts.focusDrawing();
        model.removePicked();
    }

    private void join() {
        showPane(JOB);
        model.beginJoining();
        parts.focusDrawing();
    }

    private void addPart() {
        showPane(JOB);
        model.addPart();
    }

    private void refresh() {
        Draft draft = model.draft();
        List<Draft.Gap> gaps = draft.gaps();
        title.show(draft.title());
        if (!titled.equals(title())) {
            titled = title();
            desk.titled();
        }
        standing.setText((model.steps().isSaved() ? "" : "Not saved · ") + SetModel.standing(gaps));
        standing.setToolTipText(standing.getText());
        long job = gaps.stream().filter(SetScreen::isOfTheJob).count();
        long rack = gaps.stream().filter(g -> g.where().startsWith("boards")).count();
        long asked = gaps.stream().filter(g -> g.where().startsWith("stages")).count();
        tabs.note(0, count(job));
        tabs.note(1, count(rack));
        tabs.note(2, count(asked));
        line.say(model.line());
        // only what is showing is kept up to date, and the others when they come
        if (pane.equals(JOB.id())) {
            parts.refresh(gaps);
        } else if (pane.equals(BOARDS.id())) {
            boards.refresh();
        } else {
            task.refresh();
        }
        deeds.forEach(Deed::refresh);
    }

    private static boolean isOfTheJob(Draft.Gap gap) {
        return gap.where().startsWith("parts")
                || gap.where().startsWith("joints")
                || gap.where().startsWith("overall");
    }

    private static String count(long gaps) {
        return gaps == 0 ? "✓" : "○ " + gaps;
    }

    private void save() {
        keeping.save(
                page,
                NumberField.unsound(page).stream().map(NumberField::refusal).findFirst());
    }

    private void tryOut() {
        Draft draft = model.draft();
        Aside.run(() -> DraftFile.finished(draft), found -> found.ifPresent(desk::tryOut), model::say);
    }

    private void back() {
        if (model.isJoining()) model.stopJoining();
        else desk.home();
    }

    SetModel model() {
        return model;
    }

    @Override
    public JComponent component() {
        return page;
    }

    @Override
    public String title() {
        String titled = model.draft().title();
        String called = titled.isEmpty() ? keeping.name() : titled;
        return (called.isEmpty() ? "New exercise" : called + ": set")
                + (model.steps().isSaved() ? "" : ", not saved");
    }

    @Override
    public String menu() {
        return "Set";
    }

    @Override
    public List<Deed> deeds() {
        return deeds;
    }

    @Override
    public Optional<Workshop> workshop() {
        String title = model.draft().title();
        return Optional.of(new Workshop(
                title.isBlank() ? "This exercise" : title, model.draft().practice()));
    }

    @Override
    public void focus() {
        SwingUtilities.invokeLater(title::requestFocusInWindow);
    }

    @Override
    public boolean mayClose() {
        Typed.takeAll();
        return keeping.mayClose(page);
    }

    /** What is left unsaved is kept, as a draft: it is finished when it is saved. */
    @Override
    public void left() {
        Typed.takeAll();
        keeping.left(page);
    }
}
