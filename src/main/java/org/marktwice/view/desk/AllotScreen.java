package org.marktwice.view.desk;

import java.awt.CardLayout;
import java.util.List;
import java.util.function.IntUnaryOperator;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JPopupMenu;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import org.marktwice.classroom.RackAllotment;
import org.marktwice.files.RackColumn;
import org.marktwice.files.TypedRack.OnRack;
import org.marktwice.picture.Ink;
import org.marktwice.print.Paper;
import org.marktwice.scenario.Scenario;
import org.marktwice.view.Bar;
import org.marktwice.view.Card;
import org.marktwice.view.Column;
import org.marktwice.view.Commands;
import org.marktwice.view.Commands.Command;
import org.marktwice.view.Commands.Deed;
import org.marktwice.view.Commands.Place;
import org.marktwice.view.Look;
import org.marktwice.view.Look.Style;
import org.marktwice.view.Screen;

/** The real boards on the rack, typed or read, and allotted to the parts of a whole class's jobs. */
final class AllotScreen implements Screen {
    static final Command ALLOT =
            new Command("allot", Place.ALLOT, "Allot", "menu ENTER", "Find the best board for every part of every job");
    static final Command RACK = new Command(
            "see-rack", Place.ALLOT, "Rack", "menu 1", "What is on the rack, and what was found of its knots");
    static final Command ALLOTTED =
            new Command("see-allotted", Place.ALLOT, "Boards to parts", "menu 2", "Which board becomes which part");
    static final Command TO_BUY = new Command(
            "see-to-buy", Place.ALLOT, "To buy, to check", "menu 3", "What is missing, and what to measure again");
    static final Command OPEN = new Command(
            "open-rack", Place.ALLOT, "Open", "menu shift O", "Open the rack's file in place of what is typed");
    static final Command SAVE =
            new Command("save-rack", Place.ALLOT, "Save rack", "menu S", "Save the rack, as CSV or JSON by its name");
    static final Command UNDO = new Command("undo-rack", Place.ALLOT, "Undo", "menu Z", "Go back a step");
    static final Command REDO = new Command("redo-rack", Place.ALLOT, "Redo", "menu shift Z", "Go on again");
    static final Command BOARD =
            new Command("rack-board-new", Place.ALLOT, "New board", "menu N", "A board more, sawn from like stuff");
    static final Command KNOT =
            new Command("rack-knot-new", Place.ALLOT, "New knot", "menu K", "Another knot of this board");
    static final Command SHOWING = new Command(
            "rack-showing-new",
            Place.ALLOT,
            "Its other surface",
            "menu shift K",
            "Another surface on which the same knot shows");
    static final Command REMOVE =
            new Command("rack-line-remove", Place.ALLOT, "Remove line", "menu DELETE", "Take this line out");
    static final Command MISSING = new Command(
            "rack-missing", Place.ALLOT, "What is missing", "menu G", "Go to the first cell that isn't whole");
    static final Command LABELS =
            new Command("labels", Place.ALLOT, "Labels …", "menu P", "Save labels to stick on the boards (PDF)");
    static final Command BACK =
            new Command("leave-allot", Place.ALLOT, "Teacher's desk", "ESCAPE", "Go back to the desk");
    static final List<Command> ALL = List.of(
            ALLOT, RACK, ALLOTTED, TO_BUY, OPEN, SAVE, UNDO, REDO, BOARD, KNOT, SHOWING, REMOVE, MISSING, LABELS, BACK);

    private static final List<Command> PANES = List.of(RACK, ALLOTTED, TO_BUY);

    private final Desk desk;
    private final Scenario scenario;
    private final RackModel model = new RackModel();
    private final RackKeeping file;
    private final Allotting allotting;
    private final Tabs tabs = new Tabs();
    private final JPanel stage = new JPanel(new CardLayout());
    private final RackPane rack;
    private final AllottedPane parts;
    private final JLabel outcome = Look.label(" ", Style.BODY);
    private final JTextArea notes = Look.prose(NOTHING_YET, Style.BODY, Ink.INK);
    private final SaidLine line = new SaidLine();
    private final JLabel help = Look.quiet(" ", Style.NOTE);
    private final List<Deed> deeds;
    private final KeyButton labels;
    private final JPanel page;
    private String pane = RACK.id();

    private static final String NOTHING_YET =
            "Allot the rack first: then it stands here what to buy and what to measure again.";

    AllotScreen(Desk desk, Scenario scenario) {
        this.desk = desk;
        this.scenario = scenario;
        allotting = new Allotting(scenario, model, this::come, line::say);
        deeds = List.of(
                new Deed(ALLOT, this::allot),
                new Deed(RACK, () -> showPane(RACK)),
                new Deed(ALLOTTED, () -> showPane(ALLOTTED)),
                new Deed(TO_BUY, () -> showPane(TO_BUY)),
                new Deed(OPEN, () -> file().open()),
                new Deed(SAVE, () -> file().save(page())),
                new Deed(
                        UNDO,
                        () -> rack().undo(() -> model.steps().undo()),
                        () -> model.steps().canUndo()),
                new Deed(
                        REDO,
                        () -> rack().undo(() -> model.steps().redo()),
                        () -> model.steps().canRedo()),
                new Deed(BOARD, () -> add(l -> model.newBoard(l), RackColumn.LENGTH)),
                new Deed(KNOT, () -> add(l -> model.newShowing(l, false), RackColumn.ON), this::isOnABoard),
                new Deed(SHOWING, () -> add(l -> model.newShowing(l, true), RackColumn.ON), this::isOnABoard),
                new Deed(REMOVE, this::remove, this::isOnABoard),
                new Deed(MISSING, this::missing, () -> !model.notWhole().isEmpty()),
                new Deed(LABELS, this::labels, () -> allotting.allotted().isPresent()),
                new Deed(BACK, desk::home));
        rack = new RackPane(model, desk.figures(), this::typeHere);
        file = new RackKeeping(desk, model, rack.table(), line::say);
        for (Command command : List.of(BOARD, KNOT, SHOWING, REMOVE)) rack.add(button(command));
        parts = new AllottedPane(desk.figures());
        labels = button(LABELS);
        page = build();
        Commands.install(page, deeds);
        model.steps().addListener(this::refresh);
        file.kept();
        showPane(RACK);
    }

    private RackKeeping file() {
        return file;
    }

    private JPanel page() {
        return page;
    }

    private KeyButton button(Command command) {
        return KeyButton.of(deed(command)).leavingFocus();
    }

    private JPanel build() {
        JPanel whole = new JPanel(new MigLayout("insets 0, gap 0, wrap 1, fill", "[grow,fill]", "[][][][grow,fill][]"));
        whole.add(Bar.top(
                "Allot real boards", scenario.title(), button(UNDO), button(REDO), button(SAVE), labels, button(BACK)));
        JPanel top = new JPanel(new MigLayout("insets 16 20 4 20, fill", "[grow,fill]"));
        top.add(choices(), "grow, wmin 0");
        whole.add(top, "wmin 0");
        JPanel head = new JPanel(new MigLayout("insets 8 20 4 20, gapx 16, fillx", "[][grow,right]"));
        for (Command command : PANES) tabs.add(deed(command));
        head.add(tabs);
        outcome.setName("outcome");
        head.add(outcome, "wmin 0, al right");
        whole.add(head, "wmin 0");
        stage.add(rack, RACK.id());
        stage.add(parts, ALLOTTED.id());
        stage.add(toBuy(), TO_BUY.id());
        JPanel padded = new JPanel(new MigLayout("insets 4 20 20 20, fill", "[grow,fill]", "[grow,fill]"));
        padded.add(stage, "grow, hmin 0, wmin 0");
        whole.add(padded, "grow, hmin 0, wmin 0");
        whole.add(Bar.bottom(line, help));
        return whole;
    }

    private JComponent choices() {
        Card card = new Card(
                new MigLayout("insets 12 20 12 20, gap 12 8, fillx", "[][grow,fill][]24[][][][grow 60,fill][]"));
        card.add(Look.quiet("Rack", Style.BODY));
        card.add(file.path(), "wmin 0");
        card.add(button(OPEN));
        card.add(Look.quiet("Jobs", Style.BODY));
        card.add(allotting.times(), "w 56!, growx 0");
        card.add(Look.quiet("or a class list", Style.BODY));
        card.add(allotting.list(), "wmin 0");
        card.add(KeyButton.primary(deed(ALLOT)).leavingFocus());
        return card;
    }

    private JComponent toBuy() {
        Column column = new Column(new MigLayout("insets 0, fillx", "[grow,fill]"));
        notes.setName("allot-notes");
        column.add(notes, "wmin 0");
        Card card = new Card(new MigLayout("insets 20 24 20 24, fill", "[grow,fill]", "[grow,fill]"));
        card.add(column.scrolling(), "grow, hmin 0, wmin 0");
        return card;
    }

    private void showPane(Command command) {
        rack.table().settle();
        pane = command.id();
        tabs.choose(PANES.indexOf(command));
        ((CardLayout) stage.getLayout()).show(stage, pane);
        if (command.equals(RACK)) {
            rack.look();
            rack.table().requestFocusInWindow();
        }
        refresh();
    }

    private void typeHere(String words) {
        help.setText(words);
        deeds.forEach(Deed::refresh);
    }

    private void refresh() {
        help.setText(
                pane.equals(RACK.id())
                        ? rack.table().column().help()
                        : "Chalk 1 on face 1, edge 1 and end 1 of each board.");
        tabs.note(
                0,
                model.boards().isEmpty()
                        ? ""
                        : model.notWhole().isEmpty()
                                ? "✓"
                                : "○ " + model.notWhole().size());
        outcome.setText(
                allotting.allotted().isEmpty() || pane.equals(RACK.id())
                        ? (model.steps().isSaved() ? "" : "Not saved · ") + model.standing()
                        : allotting.says());
        outcome.setToolTipText(outcome.getText());
        deeds.forEach(Deed::refresh);
    }

    // The rack

    private RackTableView rack() {
        return rack.table();
    }

    private boolean isOnABoard() {
        return pane.equals(RACK.id()) && model.at(rack.table().line()).isPresent();
    }

    /** @param adds the line's place, from the place of the line one is in */
    private void add(IntUnaryOperator adds, RackColumn then) {
        rack.table().settle();
        showPane(RACK);
        int at = adds.applyAsInt(rack.table().line());
        rack.table().go(at, then);
    }

    private void remove() {
        rack.table().giveUp();
        model.remove(rack.table().line());
    }

    private void missing() {
        showPane(RACK);
        rack.goToTrouble();
    }

    // Allotting

    private void allot() {
        rack.table().settle();
        if (!model.rack().lines().isEmpty()) {
            run();
        } else if (!file.read(this::run)) {
            line.say("Type what is on the rack, or say which file tells it");
        }
    }

    private void run() {
        if (allotting.begin(this::refresh)) outcome.setText("Allotting …");
    }

    private void come(RackAllotment a) {
        parts.show(a, allotting.names());
        List<String> notWhole = model.notWhole().stream().map(OnRack::id).toList();
        notes.setText(AllotWords.of(a, notWhole));
        tabs.note(
                2,
                a.toBuy().isEmpty() && a.checks().isEmpty()
                        ? ""
                        : "○ " + (a.toBuy().size() + a.checks().size()));
        showPane(ALLOTTED);
        if (!notWhole.isEmpty()) line.say("Left out, since they are not whole: " + String.join(", ", notWhole));
    }

    private void labels() {
        JPopupMenu menu = new JPopupMenu();
        for (Paper paper : List.of(Paper.A4, Paper.LETTER)) {
            menu.add(Printing.item(
                    paper == Paper.A4 ? "Labels on A4" : "Labels on letter paper",
                    () -> Printing.ask(page, scenario.id() + "-labels.pdf", to -> allotting.labels(to, paper))));
        }
        Printing.drop(menu, labels);
    }

    @Override
    public JComponent component() {
        return page;
    }

    @Override
    public String title() {
        return scenario.title() + ": allot boards";
    }

    @Override
    public String menu() {
        return "Allot";
    }

    @Override
    public List<Deed> deeds() {
        return deeds;
    }

    @Override
    public void focus() {
        rack.table().requestFocusInWindow();
    }

    /** What was typed is kept, whole or not. */
    @Override
    public void left() {
        file.left(page);
    }
}
