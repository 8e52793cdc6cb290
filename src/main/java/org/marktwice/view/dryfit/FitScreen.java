package org.marktwice.view.dryfit;

import java.awt.Rectangle;
import java.awt.event.ActionEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSlider;
import net.miginfocom.swing.MigLayout;
import org.marktwice.bench.Bench;
import org.marktwice.fit.DryFit;
import org.marktwice.picture.FigureCache;
import org.marktwice.picture.Ink;
import org.marktwice.rulebook.Cautions;
import org.marktwice.rulebook.FitSheet;
import org.marktwice.rulebook.FitSheet.Kind;
import org.marktwice.rulebook.FitSheet.Line;
import org.marktwice.scenario.Scenario;
import org.marktwice.scenario.Stage;
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
import org.marktwice.view.bench.WordButton;

/** The dry fit: the job put together from the boards as they were cut, and what was judged of it. */
public final class FitScreen implements Screen {
    static final Command NEXT = fit("next-fit", "Next line", "DOWN", "Look at the next figure, and its place");
    static final Command BEFORE = fit("fit-before", "Line before", "UP", "Look at the figure before");
    static final Command WHOLE = fit("whole-fit", "Whole job", "W", "Look at the job as a whole again");
    static final Command APART = fit("fit-apart", "Apart", "RIGHT", "Draw the parts farther from each other");
    static final Command TOGETHER = fit("fit-together", "Together", "LEFT", "Draw the parts nearer to each other");
    static final Command WALK_ON =
            fit("fit-walk-on", "Walk round to the right", "shift RIGHT", "See the job from the next corner");
    static final Command WALK_BACK =
            fit("fit-walk-back", "Walk round to the left", "shift LEFT", "See the job from the corner before");
    static final Command STOOP =
            fit("fit-below", "From below, or above", "B", "See the job from below, or from above again");
    static final Command LARGER =
            fit("fit-larger", "What is out, larger", "H", "Draw what is out of true larger than it is");
    static final Command SMALLER =
            fit("fit-smaller", "What is out, less large", "shift H", "Draw what is out of true less large");
    static final Command LIMITS = fit("fit-limits", "Next tolerances", "T", "Judge by the next set of tolerances");
    static final Command ROOM =
            fit("fit-room", "Settled in a room", "O", "See the job once it has settled in another room");
    static final Command HAND = fit(
            "fit-hand",
            "By a careful hand",
            "C",
            "See the job as a hand makes it that reads and strikes a little amiss");
    static final Command OTHER =
            fit("fit-other-hand", "Another hand", "N", "See the job as another careful hand makes it");
    static final Command BACK = fit("fit-back", "Back", "ESCAPE", "Go back to where you came from");

    public static final List<Command> ALL = List.of(
            NEXT, BEFORE, WHOLE, APART, TOGETHER, WALK_ON, WALK_BACK, STOOP, LARGER, SMALLER, LIMITS, ROOM, HAND, OTHER,
            BACK);

    private static final double STEP = 0.1;
    private static final String KEYS = "↑ ↓ figures   T tolerances   O room   C careful hand";

    private final FitModel model;
    private final String note;
    private final FitPane pane;
    private final FitAsked asked;
    private final FitWhy why = new FitWhy();
    private final Column list = new Column(new MigLayout("insets 0 0 8 4, gap 0, wrap 1", "[grow,fill]"));
    private final List<FitRow> rows = new ArrayList<>();
    private final JSlider slider = new JSlider(0, 100, 0);
    private final JLabel sum = Look.label(" ", Style.SUBTITLE);
    private final JLabel seen = Look.quiet(" ", Style.NOTE);
    private final WordButton larger = word(LARGER);
    private final WordButton below = word(STOOP);
    private final WordButton whole = word(WHOLE);
    private final List<Deed> deeds;
    private final JPanel page;

    private static Command fit(String id, String word, String key, String help) {
        return new Command(id, Place.FIT, word, key, help);
    }

    /** Whether joints are set out in an exercise, so that something can be put together. */
    public static boolean hasSomethingToFit(Scenario scenario) {
        return scenario.stages().contains(Stage.SETTING_OUT)
                && !scenario.drawing().joints().isEmpty();
    }

    /** @param back what it says on the button that leads back; {@code leave} leads there */
    public FitScreen(Bench bench, String who, FigureCache figures, boolean movement, String back, Runnable leave) {
        model = new FitModel(bench);
        note = model.scenario().title() + ", level " + model.scenario().level() + " · " + who;
        pane = new FitPane(model, figures);
        pane.setMovement(movement);
        asked = new FitAsked(model);
        deeds = List.of(
                new Deed(NEXT, () -> step(+1)),
                new Deed(BEFORE, () -> step(-1)),
                new Deed(WHOLE, () -> model.choose(null)),
                new Deed(APART, () -> apart(pane.apart() + STEP)),
                new Deed(TOGETHER, () -> apart(pane.apart() - STEP)),
                new Deed(WALK_ON, () -> walk(+1)),
                new Deed(WALK_BACK, () -> walk(-1)),
                new Deed(STOOP, this::stoop),
                new Deed(LARGER, () -> times(+1)),
                new Deed(SMALLER, () -> times(-1)),
                new Deed(LIMITS, model::judgeByNext),
                new Deed(ROOM, asked::toggleRoom),
                new Deed(HAND, asked::toggleHand),
                new Deed(OTHER, asked::anotherHand),
                new Deed(BACK, leave));
        page = build(back);
        Commands.install(page, deeds);
        pane.onPart(model::chooseAbout);
        model.addListener(this::follow);
        follow();
    }

    private JPanel build(String back) {
        JPanel whole = new JPanel(new MigLayout("insets 0, gap 0, wrap 1, fill", "[grow,fill]", "[][grow,fill][]"));
        whole.setName("dry-fit");
        JButton leave = Look.primary(new JButton(deed(BACK)));
        leave.setText(back);
        leave.setName("fit-back");
        whole.add(Bar.top("Dry fit", note, leave));
        JPanel body = new JPanel(new MigLayout(
                "insets 20, gap 20, fill", "[400:700:,grow,fill][360lp:440lp:500lp,fill]", "[grow,fill]"));
        body.add(picture(), "growy, hmin 0, wmin 0");
        body.add(side(), "growy, hmin 0, wmin 0");
        whole.add(body, "grow, hmin 0");
        whole.add(Bar.bottom(Look.label(KEYS, Style.BODY), Look.quiet(Cautions.LINE, Style.NOTE)));
        return whole;
    }

    private JComponent picture() {
        Card card = new Card(
                new MigLayout("insets 16 20 12 20, gap 0, wrap 1, fill", "[grow,fill]", "[]2[]4[grow,fill]4[]"));
        sum.setName("fit-sum");
        seen.setName("fit-seen");
        card.add(sum, "wmin 0");
        card.add(seen, "wmin 0");
        card.add(pane, "grow, wmin 0, hmin 0");
        slider.setName("fit-slider");
        slider.setOpaque(false);
        slider.getAccessibleContext().setAccessibleName("How far apart the parts are drawn");
        slider.addChangeListener(e -> pane.drawApart(slider.getValue() / 100.0));
        JPanel row = new JPanel(new MigLayout(
                "insets 0, gap 2 0, fillx, novisualpadding", "[][60lp:220lp:220lp,grow,fill][][][][][]push"));
        row.setOpaque(false);
        row.add(word(TOGETHER, "Together", "←"));
        row.add(slider, "wmin 60lp");
        row.add(word(APART, "Apart", "→"));
        row.add(word(WALK_ON, "Walk round", "Shift →"));
        row.add(below);
        row.add(larger);
        row.add(whole);
        card.add(row, "growx, wmin 0");
        return card;
    }

    private WordButton word(Command command, String text, String key) {
        return new WordButton(command, text, key, () -> run(command));
    }

    private WordButton word(Command command) {
        return new WordButton(command, () -> run(command));
    }

    private void run(Command command) {
        deed(command).actionPerformed(new ActionEvent(page, ActionEvent.ACTION_PERFORMED, command.id()));
    }

    private JComponent side() {
        JPanel column = new JPanel(new MigLayout(
                "insets 0, gap 0 14, wrap 1, fill", "[grow,fill]", "[pref!][0:0:,grow 55,fill][0:0:,grow 45,fill]"));
        column.setOpaque(false);
        column.add(asked, "wmin 0");
        Card found = new Card(new MigLayout("insets 10 10 6 6, fill", "[grow,fill]", "[grow,fill]"));
        JScrollPane scroll = list.scrollingBehindArrows();
        scroll.setName("fit-lines");
        found.add(scroll, "grow, hmin 0, wmin 0");
        column.add(found, "grow, hmin 0, wmin 0");
        Card reasons = new Card(new MigLayout("insets 14 18 10 10, fill", "[grow,fill]", "[grow,fill]"));
        reasons.add(why.scrolling(), "grow, hmin 0, wmin 0");
        column.add(reasons, "grow, hmin 120lp, wmin 0");
        return column;
    }

    // Doing

    private void step(int by) {
        model.chooseNext(by);
        rows.stream()
                .filter(r -> model.chosen().filter(r.line()::equals).isPresent())
                .findFirst()
                .ifPresent(FitRow::requestFocusInWindow);
    }

    private void apart(double much) {
        slider.setValue((int) Math.round(100 * much));
    }

    private void walk(int corners) {
        pane.walk(corners);
        caption();
    }

    private void stoop() {
        pane.stoop();
        caption();
    }

    private void times(int step) {
        pane.stepTimes(step);
        caption();
    }

    // Showing

    private void follow() {
        pane.follow();
        sum.setText(model.sheet().sum());
        fill();
        why.show(model.sheet(), model.chosen());
        pane.turnToChosen();
        caption();
        whole.setEnabled(model.chosen().isPresent());
    }

    private void caption() {
        seen.setText("Seen " + pane.camera().spoken()
                + model.room()
                        .map(r -> String.format(
                                Locale.ROOT,
                                "; settled in the room, the wood at %.1f %% moisture",
                                r.settledMoisture()))
                        .orElse(""));
        below.say(pane.camera().height() > 0 ? "From below" : "From above");
        larger.say(
                pane.times() == 1 ? "Drawn as it is" : String.format(Locale.ROOT, "What is out ×%.0f", pane.times()));
    }

    private void fill() {
        list.removeAll();
        rows.clear();
        FitSheet sheet = model.sheet();
        section("JOINTS", sheet.lines(Kind.JOINT));
        section("OVERALL SIZES", sheet.lines(Kind.SIZE));
        section("DIAGONALS", sheet.lines(Kind.DIAGONAL));
        section("FACES THAT SHOULD COME FLUSH", sheet.lines(Kind.FLUSH));
        if (model.room().isPresent()) movement(sheet.fit());
        list.revalidate();
        list.repaint();
    }

    private void section(String title, List<Line> lines) {
        if (lines.isEmpty()) return;
        list.add(Look.quiet(title, Style.HEADING), "gaptop 10, gapleft 10, gapbottom 4");
        Optional<Line> now = model.chosen();
        for (Line one : lines) {
            boolean chosen = now.filter(one::equals).isPresent();
            FitRow row = new FitRow(one, chosen);
            row.addActionListener(e -> model.choose(chosen ? null : one));
            rows.add(row);
            list.add(row, "growx, wmin 0");
            if (chosen)
                javax.swing.SwingUtilities.invokeLater(() -> row.scrollRectToVisible(new Rectangle(row.getSize())));
        }
    }

    private void movement(DryFit fit) {
        list.add(Look.quiet("WHAT THE ROOM DOES TO EACH PART", Style.HEADING), "gaptop 10, gapleft 10, gapbottom 4");
        for (DryFit.PartFit part : fit.parts()) {
            JPanel row = new JPanel(new MigLayout("insets 3 10 3 10, gap 10", "[grow][][]"));
            row.setOpaque(false);
            row.setName("fit-moves-" + part.part().id());
            row.add(Look.label(part.part().name(), Style.BODY), "wmin 0");
            row.add(Look.inked(new JLabel("width " + signed(part.wider())), Style.NOTE, Ink.QUIET));
            row.add(Look.inked(new JLabel("thickness " + signed(part.thicker())), Style.NOTE, Ink.QUIET));
            list.add(row, "growx, wmin 0");
        }
    }

    private static String signed(double mm) {
        String s = String.format(Locale.ROOT, "%.1f", Math.abs(mm));
        return s.equals("0.0") ? "±0" : (mm > 0 ? "+" : "−") + s;
    }

    // Screen

    @Override
    public JComponent component() {
        return page;
    }

    @Override
    public String title() {
        return model.scenario().title() + ": dry fit";
    }

    @Override
    public String menu() {
        return "Dry fit";
    }

    @Override
    public List<Deed> deeds() {
        return deeds;
    }

    @Override
    public void focus() {
        if (rows.isEmpty()) page.requestFocusInWindow();
        else rows.get(0).requestFocusInWindow();
    }

    @Override
    public void setMovement(boolean shown) {
        pane.setMovement(shown);
    }

    @Override
    public void left() {
        pane.stop();
    }
}
