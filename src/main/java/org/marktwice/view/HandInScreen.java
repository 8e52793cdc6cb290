package org.marktwice.view;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ScrollPaneConstants;
import net.miginfocom.swing.MigLayout;
import org.marktwice.drawing.Part;
import org.marktwice.picture.Ink;
import org.marktwice.rulebook.Cautions;
import org.marktwice.rulebook.Rule;
import org.marktwice.rulebook.RuleBook;
import org.marktwice.rulebook.Texts;
import org.marktwice.scenario.Practice;
import org.marktwice.scenario.Scenario;
import org.marktwice.scenario.Stage;
import org.marktwice.view.Commands.Command;
import org.marktwice.view.Commands.Deed;
import org.marktwice.view.Commands.Place;
import org.marktwice.view.Look.Style;

/** Before handing in: what the learner expects to lose marks on. It may be skipped. */
final class HandInScreen implements Screen {
    static final Command BACK =
            new Command("back-to-bench", Place.HAND_IN, "Back to the bench", "ESCAPE", "Go back and change something");
    static final Command HAND_IN = new Command(
            "hand-in-with-estimate",
            Place.HAND_IN,
            "Hand in",
            "menu ENTER",
            "Hand in with this estimate, and be marked");
    static final Command SKIP = new Command(
            "hand-in-without", Place.HAND_IN, "Hand in without an estimate", "menu K", "Hand in and be marked");
    static final List<Command> ALL = List.of(HAND_IN, SKIP, BACK);

    interface Host {
        void handIn(Set<String> expects, Set<String> parts);

        void handInWithoutEstimate();

        void backToBench();
    }

    private final Scenario scenario;
    private final Map<String, JCheckBox> boxes = new LinkedHashMap<>();
    private final Map<String, JCheckBox> partBoxes = new LinkedHashMap<>();
    private final List<Deed> deeds;
    private final Deed handIn;
    private final JPanel page;

    HandInScreen(Host host, Scenario scenario) {
        this.scenario = scenario;
        handIn = new Deed(HAND_IN, () -> host.handIn(ticked(boxes), ticked(partBoxes)));
        Deed skip = new Deed(SKIP, host::handInWithoutEstimate);
        Deed back = new Deed(BACK, host::backToBench);
        deeds = List.of(handIn, skip, back);
        page = build(skip, back);
        Commands.install(page, deeds);
    }

    private static Set<String> ticked(Map<String, JCheckBox> boxes) {
        return boxes.entrySet().stream()
                .filter(e -> e.getValue().isSelected())
                .map(Map.Entry::getKey)
                .collect(Collectors.toUnmodifiableSet());
    }

    private JPanel build(Deed skip, Deed back) {
        JPanel whole = new JPanel(new MigLayout("insets 0, gap 0, wrap 1, fill", "[grow,fill]", "[][grow,fill][]"));
        JButton backButton = new JButton(back);
        backButton.setName("back");
        JButton skipButton = new JButton(skip);
        skipButton.setName("skip");
        JButton handInButton = Look.primary(new JButton(handIn));
        handInButton.setName("hand-in");
        String note = scenario.title() + ", level " + scenario.level();
        whole.add(Bar.top("Hand in", note, backButton, skipButton, handInButton));
        JPanel centred = new JPanel(new MigLayout("insets 24, fill", "push[grow,fill,920lp::1120lp]push", "[top]"));
        centred.add(card(), "growx, wmin 0");
        JScrollPane scroll = new JScrollPane(
                centred,
                ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED,
                ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.getVerticalScrollBar().setUnitIncrement(Look.px(24));
        whole.add(scroll, "grow, hmin 0");
        String after = scenario.practice().guidance() == Practice.Guidance.EXAMINATION
                ? "An examination: what you hand in is kept for your teacher. Nothing more can be changed then."
                : "Once handed in, nothing more can be changed.";
        whole.add(Bar.bottom(Look.label(after, Style.BODY), Look.quiet(Cautions.LINE, Style.NOTE)));
        return whole;
    }

    private JComponent card() {
        Card card = new Card(new MigLayout("insets 28 32 28 32, gap 0, wrap 1", "[grow,fill]", "[]6[]24[]24[]"));
        card.add(Look.label("Where do you expect to lose marks?", Style.TITLE));
        card.add(
                Look.prose(
                        "Tick what you are not sure of. It costs nothing: on the mark sheet your estimate stands beside"
                                + " what came of it.",
                        Style.BODY,
                        Ink.QUIET),
                "wmin 0");
        JPanel stages = new JPanel(
                new MigLayout("insets 0, gap 40 24, wrap " + (scenario.stages().size() > 3 ? 3 : 4), "[fill]"));
        stages.setOpaque(false);
        stages.add(parts(), "aligny top, wmin 0");
        byStage().forEach((stage, rules) -> stages.add(column(stage, rules), "aligny top, wmin 0"));
        card.add(stages, "growx, wmin 0");
        card.add(
                Look.prose("What is judged here is your decisions. " + Cautions.ALL.get(0), Style.NOTE, Ink.QUIET),
                "wmin 0");
        return card;
    }

    private Map<Stage, List<Rule>> byStage() {
        Map<Stage, List<Rule>> found = new LinkedHashMap<>();
        for (Rule rule : RuleBook.rules()) {
            if (!scenario.stages().contains(rule.stage()) || rule.id().equals("fault-named")) continue;
            found.computeIfAbsent(rule.stage(), s -> new ArrayList<>()).add(rule);
        }
        return found;
    }

    private static JCheckBox box(String name, String words) {
        JCheckBox box = new JCheckBox(words);
        box.setName(name);
        box.setOpaque(false);
        return box;
    }

    private JComponent parts() {
        JPanel column = new JPanel(new MigLayout("insets 0, gap 0 4, wrap 1", "[grow,fill]", "[]8[top]"));
        column.setOpaque(false);
        column.add(Look.quiet("WHICH PARTS", Style.HEADING));
        for (Part part : scenario.drawing().parts()) {
            JCheckBox box = box("part-" + part.id(), part.name());
            partBoxes.put(part.id(), box);
            column.add(box, "wmin 0");
        }
        return column;
    }

    private JComponent column(Stage stage, List<Rule> rules) {
        JPanel column = new JPanel(new MigLayout("insets 0, gap 0 4, wrap 1", "[grow,fill]", "[]8[top]"));
        column.setOpaque(false);
        column.add(Look.quiet(stage.title().toUpperCase(java.util.Locale.ROOT), Style.HEADING));
        for (Rule rule : rules) {
            JCheckBox box = box(rule.id(), Texts.of(rule.id()).title());
            box.getAccessibleContext()
                    .setAccessibleDescription(Texts.of(rule.id()).why());
            boxes.put(rule.id(), box);
            column.add(box, "wmin 0");
        }
        return column;
    }

    @Override
    public JComponent component() {
        return page;
    }

    @Override
    public String title() {
        return scenario.title() + ": hand in";
    }

    @Override
    public String menu() {
        return "Hand in";
    }

    @Override
    public List<Deed> deeds() {
        return deeds;
    }

    @Override
    public Optional<Workshop> workshop() {
        return Workshop.of(scenario);
    }

    @Override
    public void focus() {
        partBoxes.values().stream().findFirst().ifPresent(JCheckBox::requestFocusInWindow);
    }
}
