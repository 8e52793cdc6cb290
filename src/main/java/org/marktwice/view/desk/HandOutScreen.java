package org.marktwice.view.desk;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import javax.swing.ButtonGroup;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import javax.swing.JRadioButton;
import javax.swing.SwingWorker;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;
import org.marktwice.classroom.BulkMarking;
import org.marktwice.classroom.ClassList;
import org.marktwice.classroom.ClassSet;
import org.marktwice.classroom.Variants;
import org.marktwice.files.FileRefused;
import org.marktwice.files.NotSaved;
import org.marktwice.picture.Ink;
import org.marktwice.scenario.Scenario;
import org.marktwice.view.AnotherFolder;
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

/** Handing an exercise out: other boards for each learner, as hard as the exercise's own, in one folder. */
final class HandOutScreen implements Screen {
    static final Command MAKE = new Command(
            "make-set",
            Place.HAND_OUT,
            "Make the folder",
            "menu ENTER",
            "Make each learner's exercise and write the folder");
    static final Command COLLECT = new Command(
            "collect", Place.HAND_OUT, "Mark what comes back", "menu M", "Go on to marking the attempts at this set");
    static final Command BACK =
            new Command("leave-hand-out", Place.HAND_OUT, "Teacher's desk", "ESCAPE", "Go back to the desk");
    static final List<Command> ALL = List.of(MAKE, COLLECT, BACK);

    private static final int USUAL = 20;

    private final Desk desk;
    private final Scenario scenario;
    private final JRadioButton numbered = new JRadioButton("So many learners", true);
    private final JRadioButton listed = new JRadioButton("From a list (CSV)");
    private final NumberField count;
    private final PathField list;
    private final NumberField seed;
    private final NumberField band;
    private final PathField folder;
    private final Rows<ClassSet.Given> rows;
    private final JLabel outcome =
            Look.label("Each learner gets other boards, as hard as the exercise's own.", Style.BODY);
    private final JProgressBar progress = new JProgressBar();
    private final SaidLine line = new SaidLine();
    private final List<Deed> deeds;
    private final JPanel page;
    private int learners = USUAL;
    private int seedNow = 1;
    private double bandNow = Variants.BAND;
    private transient @Nullable SwingWorker<?, ?> making;
    private @Nullable Path made;

    HandOutScreen(Desk desk, Scenario scenario) {
        this.desk = desk;
        this.scenario = scenario;
        count = new NumberField(
                        "learners",
                        "How many learners; they are called P01, P02 …",
                        5,
                        n -> whole(n, 1, ClassList.MOST),
                        n -> {
                            learners = n == null ? learners : (int) Math.rint(n);
                            numbered.setSelected(true);
                        })
                .expecting("a whole number from 1 to " + ClassList.MOST);
        seed = new NumberField(
                        "set-seed",
                        "Another seed, other boards",
                        8,
                        n -> whole(n, 0, 1_000_000_000),
                        n -> seedNow = n == null ? seedNow : (int) Math.rint(n))
                .expecting("a whole number from 0");
        band = new NumberField(
                        "band",
                        "How far a learner's difficulty may lie from the exercise's",
                        5,
                        n -> n >= 0 && n <= 1,
                        n -> bandNow = n == null ? bandNow : n)
                .expecting("a number from 0 to 1");
        list = new PathField(
                "list", "A file with a learner a line", PathField.Kind.FILE, () -> listed.setSelected(true));
        list.onChosen(this::lookAtList);
        folder = new PathField("set-folder", "The folder to hand out", PathField.Kind.FOLDER, () -> {});
        rows = new Rows<>(List.of(
                Rows.words("Learner", 1.2, g -> g.variant().learner()),
                Rows.number(
                        "Difficulty", 0.9, g -> g.variant().difficulty().value(), HandOutScreen::two, "0 easy, 1 hard"),
                Rows.words("Within the band", 1.5, g -> g.variant().inBand() ? "✓ within" : "× outside"),
                Rows.number(
                        "Wrong turns",
                        1.2,
                        g -> 100 * g.variant().difficulty().wrongChoices(),
                        n -> String.format(Locale.ROOT, "%.0f of 100", n),
                        "Of the ways to lay a board, how many are wrong"),
                Rows.number("Boards", 0.8, g ->
                        (double) g.variant().scenario().boards().size()),
                Rows.words("File", 3.8, ClassSet.Given::file)));
        deeds = List.of(
                new Deed(MAKE, Typed.before(this::make), () -> making == null),
                new Deed(COLLECT, () -> desk.mark(made), () -> made != null),
                new Deed(BACK, desk::home));
        count.show((double) learners);
        seed.show((double) seedNow);
        band.show(bandNow);
        folder.show(desk.handedOut().next(scenario.id()));
        numbered.setSelected(true);
        page = build();
        page.putClientProperty(NumberField.LINE, (Consumer<String>) line::say);
        Commands.install(page, deeds);
    }

    private static boolean whole(double n, double least, double most) {
        return n == Math.rint(n) && n >= least && n <= most;
    }

    private static String two(double n) {
        return String.format(Locale.ROOT, "%.2f", n);
    }

    private JPanel build() {
        JPanel whole = new JPanel(new MigLayout("insets 0, gap 0, wrap 1, fill", "[grow,fill]", "[][grow,fill][]"));
        whole.add(Bar.top("Hand out", scenario.title() + ", level " + scenario.level(), KeyButton.of(deeds.get(2))));
        JPanel body =
                new JPanel(new MigLayout("insets 20, gap 20, fill", "[400:420:480,fill][grow,fill]", "[grow,fill]"));
        body.add(form(), "top, growy 0, wmin 0");
        body.add(outcomeSide(), "grow, hmin 0, wmin 0");
        whole.add(body, "grow, hmin 0");
        whole.add(Bar.bottom(
                line, Look.quiet("Initials or numbers are enough; no more is kept than what you type.", Style.NOTE)));
        return whole;
    }

    private JComponent form() {
        Card card = new Card(new MigLayout("insets 20 24 20 24, gap 12 8, wrap 2, fillx", "[][grow,fill]"));
        card.add(Look.label("The class", Style.SUBTITLE), "span 2, gapbottom 4");
        ButtonGroup group = new ButtonGroup();
        for (JRadioButton button : List.of(numbered, listed)) {
            group.add(button);
            button.setOpaque(false);
            Look.styled(button, Style.BODY);
        }
        numbered.setName("numbered");
        listed.setName("listed");
        card.add(numbered);
        card.add(count, "w 72!, growx 0");
        card.add(listed);
        card.add(list, "wmin 0");
        card.add(Look.label("The set", Style.SUBTITLE), "span 2, gaptop 12, gapbottom 4");
        card.add(Look.quiet("Difficulty within ±", Style.BODY));
        card.add(band, "w 72!, growx 0");
        card.add(Look.quiet("Seed", Style.BODY));
        card.add(seed, "w 96!, growx 0");
        card.add(Look.quiet("Folder to hand out", Style.BODY), "span 2, gaptop 4");
        card.add(folder, "span 2, growx, wmin 0");
        card.add(KeyButton.primary(deeds.get(0)), "span 2, growx 0, gaptop 12");
        card.add(
                Look.prose(
                        "The folder works from a stick or a share that can only be read. The same seed and the same names"
                                + " give the same boards again. All there is about a learner is deleted where you mark"
                                + " what came back.",
                        Style.NOTE,
                        Ink.QUIET),
                "span 2, growx, wmin 0");
        return card;
    }

    private JComponent outcomeSide() {
        Card card = new Card(
                new MigLayout("insets 20 24 20 24, gap 0 10, wrap 1, fill", "[grow,fill]", "[][][grow,fill][]"));
        outcome.setName("outcome");
        card.add(outcome, "wmin 0");
        progress.setName("progress");
        progress.setVisible(false);
        card.add(progress, "h 6!, hidemode 2");
        card.add(new Sheet<>("set", "Each learner's exercise", rows), "grow, hmin 0, wmin 0");
        card.add(KeyButton.of(deeds.get(1)), "growx 0");
        return card;
    }

    /** Says at once how many learners are in the list, or why it isn't one. */
    private void lookAtList() {
        listed.setSelected(true);
        list.path()
                .ifPresent(from -> Aside.run(
                        () -> ClassList.read(from).learners().size(),
                        size -> line.say(
                                size + (size == 1 ? " learner is" : " learners are") + " in " + from.getFileName()),
                        line::say));
    }

    private void make() {
        List<NumberField> wrong = NumberField.unsound(page);
        if (!wrong.isEmpty()) {
            line.say(wrong.get(0).refusal());
            wrong.get(0).requestFocusInWindow();
            return;
        }
        Path to = folder.path().orElse(null);
        if (to == null) {
            line.say("Say which folder is to be handed out");
            folder.focus();
            return;
        }
        Path from = listed.isSelected() ? list.path().orElse(null) : null;
        if (listed.isSelected() && from == null) {
            line.say("Say which file the class list is in, or how many learners there are");
            list.focus();
            return;
        }
        int number = learners;
        int seedOf = seedNow;
        double within = bandNow;
        line.say("");
        outcome.setText("Working out each learner's boards …");
        progress.setValue(0);
        progress.setVisible(true);
        making = Aside.run(
                told -> written(
                        made(from == null ? ClassList.numbered(number) : ClassList.read(from), seedOf, within, told),
                        to),
                (done, of) -> {
                    progress.setMaximum(of);
                    progress.setValue(done);
                },
                this::come,
                this::failed);
        deeds.forEach(Deed::refresh);
    }

    private void failed(String why) {
        ended();
        outcome.setText("Nothing was handed out.");
        line.say(why);
    }

    /** @param notKept why it isn't written there, in one line; empty where it is */
    private record Written(ClassSet set, Path to, String notKept) {}

    private static Written written(ClassSet set, Path to) throws FileRefused {
        try {
            set.write(to);
            return new Written(set, to, "");
        } catch (NotSaved e) {
            return new Written(set, to, String.valueOf(e.getMessage()));
        }
    }

    private ClassSet made(ClassList of, int seedOf, double within, BulkMarking.Progress told) throws Aside.Said {
        try {
            return ClassSet.make(Variants.of(scenario, seedOf, within), scenario.id(), of, told);
        } catch (Variants.CannotVary e) {
            throw new Aside.Said(String.valueOf(e.getMessage()));
        }
    }

    private void come(Written written) {
        if (written.notKept().isEmpty()) {
            come(written.set(), written.to());
            return;
        }
        failed(written.notKept());
        // the set is made: it only wants another place
        AnotherFolder.offer(page, written.notKept(), "Not now").ifPresent(other -> {
            folder.show(other);
            making = Aside.run(() -> written(written.set(), other), this::come, this::failed);
            deeds.forEach(Deed::refresh);
        });
    }

    private void come(ClassSet set, Path to) {
        made = to;
        desk.handedOut().to(scenario.id(), to);
        ended();
        rows.show(set.given());
        long outside = set.given().stream().filter(g -> !g.variant().inBand()).count();
        outcome.setText(String.format(
                Locale.ROOT,
                "%s Difficulty %.2f, %s",
                outside == 0 ? "✓ " : "~ ",
                set.target(),
                outside == 0
                        ? "and every learner's within " + NumberField.spoken(set.band()) + " of it."
                        : outside + " of " + set.given().size() + " outside " + NumberField.spoken(set.band())
                                + ": widen the band, or take another seed."));
        line.say("Written to " + ShortPath.of(to) + ", with " + ClassSet.INDEX + " for you");
        line.setToolTipText("Written to " + to);
    }

    private void ended() {
        making = null;
        progress.setVisible(false);
        deeds.forEach(Deed::refresh);
    }

    @Override
    public JComponent component() {
        return page;
    }

    @Override
    public String title() {
        return scenario.title() + ": hand out";
    }

    @Override
    public String menu() {
        return "Hand out";
    }

    @Override
    public List<Deed> deeds() {
        return deeds;
    }

    @Override
    public void focus() {
        count.requestFocusInWindow();
    }

    @Override
    public void left() {
        SwingWorker<?, ?> now = making;
        if (now != null) now.cancel(true);
    }
}
