package org.marktwice.view.desk;

import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JMenuItem;
import javax.swing.JOptionPane;
import javax.swing.JPanel;
import javax.swing.JPopupMenu;
import javax.swing.JTextArea;
import javax.swing.ListSelectionModel;
import net.miginfocom.swing.MigLayout;
import org.marktwice.files.DraftFile;
import org.marktwice.picture.Ink;
import org.marktwice.scenario.Draft;
import org.marktwice.scenario.Scenario;
import org.marktwice.scenario.Stage;
import org.marktwice.view.Bar;
import org.marktwice.view.Card;
import org.marktwice.view.Commands;
import org.marktwice.view.Commands.Command;
import org.marktwice.view.Commands.Deed;
import org.marktwice.view.Commands.Place;
import org.marktwice.view.Look;
import org.marktwice.view.Look.Style;
import org.marktwice.view.Screen;
import org.marktwice.view.ShortPath;
import org.marktwice.view.desk.DeskFolder.Kept;

/** The teacher's desk: the exercises that the teacher has set, and the ways into all that is done for a class. */
final class DeskScreen implements Screen {
    static final Command NEW =
            new Command("new-exercise", Place.DESK, "New exercise", "menu N", "Set an exercise from nothing");
    static final Command COPY = new Command(
            "copy-exercise",
            Place.DESK,
            "From another …",
            "menu K",
            "Set an exercise from one that comes with the program");
    static final Command CHANGE =
            new Command("change-exercise", Place.DESK, "Go on setting", "ENTER", "Go on with the exercise picked out");
    static final Command TRY = new Command(
            "try-kept", Place.DESK, "Try it", "menu ENTER", "Work at it as a learner would; nothing is kept of that");
    static final Command HAND_OUT = new Command(
            "hand-out",
            Place.DESK,
            "Hand out",
            "menu H",
            "Give each learner of a class other boards, as hard as these");
    static final Command MARK = new Command(
            "to-mark", Place.DESK, "Mark a folder", "menu M", "Mark what came back, and see what to teach next");
    static final Command ALLOT = new Command(
            "to-allot", Place.DESK, "Allot real boards", "menu B", "Which board on the rack becomes whose part");
    static final Command RECORD = new Command(
            "to-record",
            Place.DESK,
            "Finished jobs",
            "menu R",
            "Enter what the finished jobs measure, and see the bands");
    static final Command PRINT = new Command(
            "print-sheets",
            Place.DESK,
            "Print …",
            "menu P",
            "Save its sheets as PDF: drawing, worksheet, answers, rules");
    static final Command REMOVE =
            new Command("remove-exercise", Place.DESK, "Remove …", "DELETE", "Take the exercise away for good");
    static final Command BACK =
            new Command("leave-desk", Place.DESK, "Exercises", "ESCAPE", "Leave the desk and show the exercises");
    static final List<Command> ALL =
            List.of(NEW, COPY, CHANGE, TRY, HAND_OUT, MARK, ALLOT, RECORD, PRINT, REMOVE, BACK);

    private final Desk desk;
    private final Rows<Kept> rows;
    private final Sheet<Kept> table;
    private final JLabel heading = Look.label(" ", Style.TITLE);
    private final JTextArea says = Look.prose("", Style.BODY, Ink.QUIET);
    private final JobPicturePane picture = new JobPicturePane();
    private final SaidLine line = new SaidLine();
    private final List<Deed> deeds;
    private final KeyButton printing;
    private final JPanel page;

    DeskScreen(Desk desk) {
        this.desk = desk;
        rows = new Rows<>(List.of(
                Rows.words(
                        "Exercise",
                        2.6,
                        k -> k.draft().title().isEmpty() ? k.name() : k.draft().title()),
                Rows.number("Level", 0.7, k -> (double) k.draft().level()),
                Rows.number("Parts", 0.7, k -> (double) k.draft().parts().size()),
                Rows.words("Boards", 1.1, DeskScreen::boards),
                Rows.words("How far", 4, DeskScreen::state)));
        table = new Sheet<>("exercises-set", "Exercises you set", rows);
        deeds = List.of(
                new Deed(NEW, () -> desk.set("", Draft.BLANK)),
                new Deed(COPY, this::copy),
                new Deed(
                        CHANGE,
                        this::change,
                        () -> chosen().filter(k -> k.refused().isEmpty()).isPresent()),
                new Deed(TRY, () -> finished(desk::tryOut), this::isWhole),
                new Deed(HAND_OUT, () -> finished(desk::handOut), this::isWhole),
                new Deed(
                        MARK,
                        () -> desk.mark(chosen().filter(Kept::finished)
                                .map(k -> desk.folder().scenario(k.name()))
                                .orElse(null))),
                new Deed(ALLOT, () -> finished(desk::allot), this::isWhole),
                new Deed(RECORD, () -> finished(desk::record), this::isWhole),
                new Deed(PRINT, this::print, this::isWhole),
                new Deed(REMOVE, this::remove, () -> chosen().isPresent()),
                new Deed(BACK, desk::exercises));
        printing = KeyButton.of(deed(PRINT));
        page = build();
        Commands.install(page, deeds);
        table.table().getSelectionModel().addListSelectionListener(e -> showChosen());
        table.table().addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent event) {
                if (event.getClickCount() == 2) change();
            }
        });
        showChosen();
    }

    private static String boards(Kept kept) {
        Draft draft = kept.draft();
        if (draft.stock().isPresent()) return "grown";
        return draft.boards().isEmpty() ? "none yet" : draft.boards().size() + " drawn";
    }

    private static String state(Kept kept) {
        if (!kept.refused().isEmpty()) return "× can't be read";
        List<Draft.Gap> gaps = kept.draft().gaps();
        return gaps.isEmpty()
                ? (kept.finished() ? "✓ finished" : "○ complete; save it to finish")
                : "○ " + SetModel.standing(gaps);
    }

    private JPanel build() {
        JPanel whole = new JPanel(new MigLayout("insets 0, gap 0, wrap 1, fill", "[grow,fill]", "[][grow,fill][]"));
        whole.add(Bar.top(
                "Teacher's desk",
                "Set exercises, hand them out, and see what to teach next",
                KeyButton.of(deed(BACK))));
        JPanel body = new JPanel(new MigLayout("insets 20, gap 20, fill", "[62%!,fill][grow,fill]", "[grow,fill]"));
        body.add(kept(), "grow, hmin 0, wmin 0");
        body.add(detail(), "grow, hmin 0, wmin 0");
        whole.add(body, "grow, hmin 0");
        whole.add(Bar.bottom(
                line, Look.quiet("Kept in " + ShortPath.of(desk.folder().folder()), Style.NOTE)));
        return whole;
    }

    private JComponent kept() {
        Card card =
                new Card(new MigLayout("insets 20 24 20 24, gap 0 12, wrap 1, fill", "[grow,fill]", "[][grow,fill]"));
        JPanel words = row();
        words.add(Look.label("Exercises you set", Style.SUBTITLE), "growx, pushx");
        words.add(KeyButton.of(deed(COPY)));
        words.add(KeyButton.primary(deed(NEW)));
        card.add(words);
        table.table().setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        card.add(table, "grow, hmin 0, wmin 0");
        JPanel side = new JPanel(new MigLayout("insets 0, gap 0 20, wrap 1, fill", "[grow,fill]", "[grow,fill][]"));
        side.setOpaque(false);
        side.add(card, "grow, hmin 0, wmin 0");
        side.add(forTheClass(), "wmin 0");
        return side;
    }

    /** What is done for a class, each with a line on what comes of it. */
    private JComponent forTheClass() {
        Card card = new Card(new MigLayout("insets 20 24 20 24, gap 16 8, wrap 2, fillx", "[fill][grow,fill]"));
        card.add(Look.label("The class", Style.SUBTITLE), "span 2, gapbottom 4");
        way(card, MARK, "Every file named with its state; results, slips, and what to teach again");
        way(card, ALLOT, "Whose parts come out of which board on the rack; labels, and what to buy");
        way(card, RECORD, "What they measure, in bands, beside the practice marks");
        return card;
    }

    private void way(JPanel card, Command command, String comes) {
        card.add(KeyButton.of(deed(command)));
        card.add(Look.quiet(comes, Style.BODY), "wmin 0");
    }

    private JComponent detail() {
        Card card = new Card(
                new MigLayout("insets 20 24 20 24, gap 0 10, wrap 1, fill", "[grow,fill]", "[][grow,fill][]12[]"));
        heading.setName("chosen");
        card.add(heading, "wmin 0");
        card.add(picture, "grow, hmin 0, wmin 0");
        says.setName("says");
        card.add(says, "growx, wmin 0");
        JPanel words = new JPanel(new MigLayout("insets 0, gap 8, wrap 2", "[fill][fill]"));
        words.setOpaque(false);
        words.add(KeyButton.primary(deed(CHANGE)));
        words.add(KeyButton.of(deed(HAND_OUT)));
        words.add(KeyButton.of(deed(TRY)));
        words.add(printing);
        words.add(KeyButton.of(deed(REMOVE)));
        card.add(words, "wmin 0");
        return card;
    }

    private static JPanel row() {
        JPanel row = new JPanel(new MigLayout("insets 0, gapx 8"));
        row.setOpaque(false);
        return row;
    }

    /** Reads the folder aside. */
    private void look() {
        Aside.run(() -> desk.folder().all(), this::come, line::say);
    }

    private void come(List<Kept> all) {
        String before = chosen().map(Kept::name).orElse(desk.last());
        rows.show(all);
        int at = 0;
        for (int i = 0; i < all.size(); i++) if (all.get(i).name().equals(before)) at = i;
        if (!all.isEmpty()) table.choose(at);
        showChosen();
    }

    private Optional<Kept> chosen() {
        return table.chosen();
    }

    private boolean isWhole() {
        return chosen().filter(k -> k.refused().isEmpty())
                .filter(k -> k.draft().gaps().isEmpty())
                .isPresent();
    }

    /** Makes the scenario of what is chosen, aside: its boards may have to be grown first. */
    private void finished(Consumer<Scenario> then) {
        chosen().ifPresent(
                        k -> Aside.run(() -> DraftFile.finished(k.draft()), found -> found.ifPresent(then), line::say));
    }

    private void showChosen() {
        Optional<Kept> now = chosen();
        now.ifPresent(k -> desk.last(k.name()));
        heading.setText(
                now.map(k -> k.draft().title().isEmpty() ? k.name() : k.draft().title())
                        .orElse("Nothing set yet"));
        says.setText(now.map(DeskScreen::about)
                .orElse("Begin with a new exercise, or from one that comes with the program."));
        picture.show(now.flatMap(k -> k.draft().drawn()).orElse(null));
        deeds.forEach(Deed::refresh);
    }

    private static String about(Kept kept) {
        if (!kept.refused().isEmpty()) return kept.refused();
        Draft draft = kept.draft();
        String asked = draft.stages().stream().map(Stage::title).collect(Collectors.joining(", "));
        List<String> gaps =
                draft.gaps().stream().map(g -> "○ " + g.says()).limit(6).toList();
        return (asked.isEmpty() ? "" : asked + ".") + (gaps.isEmpty() ? "" : "\n" + String.join("\n", gaps));
    }

    private void change() {
        chosen().ifPresent(k -> desk.set(k.name(), k.draft()));
    }

    private void print() {
        chosen().ifPresent(k -> {
            JPopupMenu menu = Printing.sheets(
                    page, () -> DraftFile.finished(k.draft()).orElseThrow(), k.name(), desk.issued(), line::say);
            Printing.drop(menu, printing);
        });
    }

    /** A list of what there is; what is taken from it is a new exercise. */
    private void copy() {
        JPopupMenu menu = new JPopupMenu();
        for (Scenario scenario : desk.shelf()) menu.add(item(scenario.title(), Draft.of(scenario)));
        List<Kept> own = new ArrayList<>(rows.all());
        if (!own.isEmpty()) menu.addSeparator();
        for (Kept kept : own)
            if (kept.refused().isEmpty()) menu.add(item(kept.draft().title(), kept.draft()));
        menu.show(table, table.getWidth() - menu.getPreferredSize().width, 0);
    }

    private JMenuItem item(String title, Draft draft) {
        JMenuItem item = new JMenuItem(title);
        item.setName("copy-" + draft.named());
        item.addActionListener(e -> desk.set("", draft.withId("").titled(draft.title() + ", ours")));
        return item;
    }

    private void remove() {
        chosen().ifPresent(k -> {
            int answer = JOptionPane.showConfirmDialog(
                    page,
                    "Remove \"" + k.draft().title() + "\" for good? What was handed out stays as it is.",
                    "Remove",
                    JOptionPane.OK_CANCEL_OPTION,
                    JOptionPane.WARNING_MESSAGE);
            if (answer != JOptionPane.OK_OPTION) return;
            Aside.run(
                    () -> {
                        desk.folder().remove(k.name());
                        return k;
                    },
                    gone -> look(),
                    line::say);
        });
    }

    @Override
    public JComponent component() {
        return page;
    }

    @Override
    public String title() {
        return "Teacher's desk";
    }

    @Override
    public String menu() {
        return "Desk";
    }

    @Override
    public List<Deed> deeds() {
        return deeds;
    }

    @Override
    public void focus() {
        // not before the screen that was left has kept what it had
        look();
        table.table().requestFocusInWindow();
    }
}
