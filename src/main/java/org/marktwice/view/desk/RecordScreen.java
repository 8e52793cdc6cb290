package org.marktwice.view.desk;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import org.marktwice.classroom.BulkMarking;
import org.marktwice.classroom.Results;
import org.marktwice.fit.Tolerances;
import org.marktwice.picture.Ink;
import org.marktwice.scenario.Scenario;
import org.marktwice.view.Bar;
import org.marktwice.view.Card;
import org.marktwice.view.Commands;
import org.marktwice.view.Commands.Command;
import org.marktwice.view.Commands.Deed;
import org.marktwice.view.Commands.Place;
import org.marktwice.view.Look;
import org.marktwice.view.Look.Style;
import org.marktwice.view.Screen;

/** The finished jobs: measured sizes, gaps and diagonals typed straight down a column, with their bands. */
final class RecordScreen implements Screen {
    static final Command SAVE =
            new Command("save-record", Place.RECORD, "Save", "menu S", "Save the record, as CSV or JSON by its name");
    static final Command OPEN = new Command(
            "open-record",
            Place.RECORD,
            "Open or begin",
            "menu ENTER",
            "Open the record, or begin one for the class; a list's learners are put in");
    static final Command UNDO = new Command("undo-record", Place.RECORD, "Undo", "menu Z", "Go back an entry");
    static final Command REDO = new Command("redo-record", Place.RECORD, "Redo", "menu shift Z", "Go on again");
    static final Command BESIDE = new Command(
            "beside", Place.RECORD, "Set practice beside", "menu B", "Mark the attempts and set their marks beside");
    static final Command PRINT = new Command(
            "print-record",
            Place.RECORD,
            "Print …",
            "menu P",
            "Save the record for the printer: filled in, or blank for the bench");
    static final Command BACK =
            new Command("leave-record", Place.RECORD, "Teacher's desk", "ESCAPE", "Go back to the desk");
    static final List<Command> ALL = List.of(OPEN, SAVE, UNDO, REDO, BESIDE, PRINT, BACK);

    private final Desk desk;
    private final Scenario scenario;
    private final RecordModel model;
    private final RecordKeeping file;
    private final PathField attempts =
            new PathField("record-attempts", "A folder of attempts to set beside", PathField.Kind.FOLDER, () -> {});
    private final Choice<String> tolerances;
    private final JTextArea says = Look.prose("", Style.BODY, Ink.INK);
    private final JTextArea paid = Look.prose("", Style.BODY, Ink.QUIET);
    private final SaidLine line = new SaidLine();
    private final RecordTable table;
    private final List<Deed> deeds;
    private final KeyButton printing;
    private final JPanel page;

    RecordScreen(Desk desk, Scenario scenario) {
        this.desk = desk;
        this.scenario = scenario;
        model = new RecordModel(scenario, RecordKeeping.empty(scenario));
        file = new RecordKeeping(desk, scenario, model, this::focus, line::say);
        tolerances = new Choice<>("tolerances", "By which tolerances", RecordScreen::words, model::judgeBy);
        tolerances.show(presets(), "");
        deeds = List.of(
                new Deed(OPEN, () -> settled(file::open)),
                new Deed(SAVE, () -> settled(() -> file.save(page()))),
                new Deed(
                        UNDO,
                        () -> table().undo(model.steps()::undo),
                        () -> model.steps().canUndo()),
                new Deed(
                        REDO,
                        () -> settled(model.steps()::redo),
                        () -> model.steps().canRedo()),
                new Deed(BESIDE, this::beside),
                new Deed(PRINT, () -> settled(this::print)),
                new Deed(BACK, desk::home));
        table = new RecordTable(model, line::say);
        printing = button(PRINT);
        page = build();
        Commands.install(page, deeds);
        model.steps().addListener(this::refresh);
        file.kept();
        refresh();
    }

    private static String words(String tolerance) {
        return tolerance.isEmpty()
                ? "the exercise's own"
                : Tolerances.preset(tolerance).map(Tolerances::title).orElse(tolerance);
    }

    private static List<String> presets() {
        List<String> all = new ArrayList<>(List.of(""));
        Tolerances.presets().forEach(t -> all.add(t.id()));
        return all;
    }

    private KeyButton button(Command command) {
        return KeyButton.of(deed(command)).leavingFocus();
    }

    private JPanel build() {
        JPanel whole = new JPanel(new MigLayout("insets 0, gap 0, wrap 1, fill", "[grow,fill]", "[][][grow,fill][]"));
        whole.add(Bar.top(
                "Finished jobs",
                scenario.title() + ": what they measure, against the drawing",
                button(UNDO),
                button(REDO),
                printing,
                KeyButton.primary(deed(SAVE)).leavingFocus(),
                button(BACK)));
        JPanel top = new JPanel(new MigLayout("insets 16 20 4 20, fill", "[grow,fill]"));
        top.add(choices(), "grow, wmin 0");
        whole.add(top, "wmin 0");
        JPanel body = new JPanel(new MigLayout("insets 8 20 20 20, fill", "[grow,fill]", "[grow,fill]"));
        Card card = new Card(new MigLayout(
                "insets 16 20 16 20, gap 0 8, wrap 1, fill, hidemode 3", "[grow,fill]", "[grow,fill][][]"));
        card.add(table.scrolling(), "grow, hmin 0, wmin 0");
        says.setName("record-says");
        paid.setName("record-paid");
        card.add(says, "wmin 0, gaptop 8");
        card.add(paid, "wmin 0");
        body.add(card, "grow, hmin 0, wmin 0");
        whole.add(body, "grow, hmin 0, wmin 0");
        whole.add(Bar.bottom(
                line, Look.quiet("Type a figure and press Enter: on to the next learner down.", Style.NOTE)));
        return whole;
    }

    private void print() {
        Printing.drop(new RecordPrinting(page, scenario, model, line::say).menu(), printing);
    }

    private Card choices() {
        Card card = new Card(
                new MigLayout("insets 14 20 14 20, gap 12 8, fillx", "[][grow 120,fill]16[][]12[][grow,fill][fill]"));
        card.add(Look.quiet("Record", Style.BODY));
        card.add(file.path(), "wmin 0");
        card.add(Look.quiet("Learners", Style.BODY));
        card.add(file.count(), "w 56!");
        card.add(Look.quiet("or a class list", Style.BODY));
        card.add(file.list(), "wmin 0");
        card.add(button(OPEN), "wrap");
        card.add(Look.quiet("Judged by", Style.BODY));
        card.add(tolerances, "growx 0, w 200!");
        card.add(Look.quiet("Attempts", Style.BODY));
        card.add(attempts, "span 3, growx, wmin 0");
        card.add(button(BESIDE));
        return card;
    }

    private void refresh() {
        table.refresh();
        tolerances.show(presets(), model.steps().now().tolerance());
        says.setText(said());
        says.setVisible(!says.getText().isEmpty());
        paid.setText(model.paid());
        paid.setVisible(!paid.getText().isEmpty());
        deeds.forEach(Deed::refresh);
    }

    private String said() {
        if (model.isBlank()) return "";
        List<String> out = model.outBy();
        return out.isEmpty()
                ? "The class as a whole is out by nothing that counts."
                : "The class as a whole is out: " + String.join("; ", out) + " jobs. Look at the setting-out.";
    }

    private void settled(Runnable then) {
        if (table.settles()) then.run();
    }

    private RecordTable table() {
        return table;
    }

    private JPanel page() {
        return page;
    }

    private void beside() {
        Optional<Path> from = attempts.path();
        if (from.isEmpty()) {
            line.say("Say which folder the attempts are in");
            return;
        }
        Path exercise = desk.folder().scenario(scenario.id());
        line.say("Marking the attempts …");
        Aside.run(
                () -> Marking.of(
                                Files.isDirectory(file.handedOut()) ? file.handedOut() : exercise,
                                from.get(),
                                true,
                                BulkMarking.Progress.NONE)
                        .results(Results.Counting.LAST),
                results -> {
                    model.beside(results);
                    refresh();
                    int n = results.rows().size();
                    line.say("Practice marks of " + n + (n == 1 ? " learner stand beside" : " learners stand beside"));
                },
                line::say);
    }

    @Override
    public JComponent component() {
        return page;
    }

    @Override
    public String title() {
        return scenario.title() + ": finished jobs";
    }

    @Override
    public String menu() {
        return "Finished jobs";
    }

    @Override
    public List<Deed> deeds() {
        return deeds;
    }

    @Override
    public void focus() {
        table.requestFocusInWindow();
    }

    /** What was typed is kept, before anything else comes. */
    @Override
    public void left() {
        table.settle();
        file.left(page);
    }
}
