package org.marktwice.view.desk;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;
import org.marktwice.rulebook.Rule;
import org.marktwice.rulebook.RuleBook;
import org.marktwice.rulebook.Texts;
import org.marktwice.scenario.Draft;
import org.marktwice.scenario.Practice;
import org.marktwice.scenario.Practice.Aid;
import org.marktwice.scenario.Practice.FaceSide;
import org.marktwice.scenario.Practice.Guidance;
import org.marktwice.scenario.Practice.HeartSide;
import org.marktwice.scenario.Scenario;
import org.marktwice.scenario.Stage;
import org.marktwice.view.Card;
import org.marktwice.view.Column;
import org.marktwice.view.Look;
import org.marktwice.view.Look.Style;

/** What is asked of the learner, what they are told and given, and the workshop's own practice. */
final class TaskPane extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient SetModel model;
    private final Choice<Integer> level;
    private final transient List<Runnable> shows = new ArrayList<>();
    private final transient Map<Stage, List<JComponent>> worths = new LinkedHashMap<>();

    TaskPane(SetModel model) {
        super(new MigLayout("insets 0, fill", "[grow,fill]", "[grow,fill]"));
        this.model = model;
        setOpaque(false);
        level = new Choice<>("level", "Level", l -> "Level " + l, l -> model.edit(draft().atLevel(l)));
        ProportionsForm proportions =
                new ProportionsForm(() -> draft().practice().proportions(), p -> practice(now -> now.with(p)));
        shows.add(proportions::refresh);
        Column column = new Column(new MigLayout(
                "insets 0, gap 20, fillx", "[grow 1,fill,sg]20[grow 1,fill,sg]20[grow 1,fill,sg]", "[top]"));
        column.add(asked(), "wmin 0, top");
        JPanel middle = new JPanel(new MigLayout("insets 0, gap 0 20, wrap 1, fillx", "[grow,fill]"));
        middle.setOpaque(false);
        middle.add(practice(), "wmin 0");
        middle.add(proportions, "wmin 0");
        column.add(middle, "wmin 0, top");
        column.add(worth(), "wmin 0, top");
        JScrollPane scroll = column.scrolling();
        add(scroll, "grow, hmin 0");
        refresh();
    }

    void refresh() {
        shows.forEach(Runnable::run);
    }

    /** Takes the focus to where one begins. */
    void focus() {
        level.requestFocusInWindow();
    }

    private Draft draft() {
        return model.draft();
    }

    private static Card card(String title) {
        Card card = new Card(new MigLayout("insets 20 24 20 24, gap 8 8, wrap 2, fillx", "[]12[grow,fill]"));
        card.add(Look.label(title, Style.SUBTITLE), "span 2, gapbottom 6");
        return card;
    }

    private JComponent idea() {
        WordField idea = new WordField(
                "idea",
                "In a few words: what this exercise has that the ones before it had not",
                20,
                Scenario.LONGEST_IDEA,
                words -> model.edit(draft().teaching(words)));
        shows.add(() -> idea.show(draft().idea()));
        return idea;
    }

    private JComponent asked() {
        Card card = card("What is asked");
        shows.add(() -> level.show(List.of(1, 2, 3, 4, 5, 6, 7, 8, 9), draft().level()));
        line(card, "Level", level);
        WordsArea brief = new WordsArea(
                "brief", "What the learner is told about the job", 2000, words -> model.edit(draft().saying(words)));
        shows.add(() -> brief.show(draft().brief()));
        JScrollPane around = new JScrollPane(brief);
        around.setBorder(javax.swing.UIManager.getBorder("TextField.border"));
        card.add(Look.quiet("Brief", Style.BODY), "top");
        card.add(around, "growx, wmin 0");
        line(card, "New in it", idea());
        card.add(Look.quiet("Stages", Style.BODY), "top");
        card.add(stages(), "wmin 0");
        Choice<Guidance> told =
                new Choice<>("guidance", "When the learner is told", TaskPane::words, g -> practice(p -> p.with(g)));
        shows.add(() -> told.show(List.of(Guidance.values()), draft().practice().guidance()));
        line(card, "Told", told);
        card.add(Look.quiet("Given", Style.BODY), "top");
        card.add(aids(), "wmin 0");
        NumberField minutes = new NumberField(
                        "minutes",
                        "About how many minutes; a hint that is never marked",
                        5,
                        n -> n == Math.rint(n) && n >= 1 && n <= Scenario.MOST_MINUTES,
                        n -> model.edit(
                                draft().taking(n == null ? OptionalInt.empty() : OptionalInt.of((int) Math.rint(n)))))
                .expecting("a whole number from 1 to " + Scenario.MOST_MINUTES);
        shows.add(() -> minutes.show(
                draft().minutes().isPresent()
                        ? (Double) (double) draft().minutes().getAsInt()
                        : null));
        line(card, "Minutes", minutes);
        return card;
    }

    private JComponent stages() {
        JPanel boxes = boxes();
        for (Stage stage : Stage.values()) {
            JCheckBox box = box("stage-" + stage.id(), stage.title());
            box.addActionListener(e -> {
                List<Stage> now = new ArrayList<>(draft().stages());
                if (box.isSelected()) now.add(stage);
                else now.remove(stage);
                model.edit(draft().asking(now));
            });
            shows.add(() -> box.setSelected(draft().stages().contains(stage)));
            boxes.add(box);
        }
        GapLine gap = new GapLine("stages-gap");
        shows.add(() -> gap.show(model.gapsAt(draft().gaps(), "stages")));
        boxes.add(gap);
        return boxes;
    }

    private JComponent aids() {
        JPanel boxes = boxes();
        for (Aid aid : Aid.values()) {
            JCheckBox box = box("aid-" + aid.id(), words(aid));
            box.addActionListener(e -> {
                Set<Aid> now = EnumSet.noneOf(Aid.class);
                now.addAll(draft().practice().aids());
                if (box.isSelected()) now.add(aid);
                else now.remove(aid);
                practice(p -> p.withAids(now));
            });
            shows.add(() -> box.setSelected(draft().practice().aids().contains(aid)));
            boxes.add(box);
        }
        return boxes;
    }

    private JComponent practice() {
        Card card = card("The workshop's practice");
        Choice<FaceSide> side = new Choice<>(
                "face-side", "Which surface is the face side", TaskPane::words, f -> practice(p -> p.with(f)));
        shows.add(() -> side.show(List.of(FaceSide.values()), draft().practice().faceSide()));
        line(card, "Face side", side);
        Choice<HeartSide> heart = new Choice<>(
                "heart-side", "Where the heart side looks", TaskPane::words, h -> practice(p -> p.with(h)));
        shows.add(
                () -> heart.show(List.of(HeartSide.values()), draft().practice().heartSide()));
        line(card, "Heart side", heart);
        number(
                card,
                "knot-mm",
                "Knots clear by, mm",
                0,
                1000,
                p -> p.knotMargin().mm(),
                (p, n) -> p.with(new Practice.KnotMargin(n, p.knotMargin().diameters())));
        number(
                card,
                "knot-diameters",
                "or so many diameters",
                0,
                100,
                p -> p.knotMargin().diameters(),
                (p, n) -> p.with(new Practice.KnotMargin(p.knotMargin().mm(), n)));
        number(
                card,
                "cup-clear",
                "Cup clear to 1 in",
                1,
                10_000,
                p -> p.cupRatio().clear(),
                (p, n) ->
                        p.with(new Practice.CupRatio(n, Math.min(n, p.cupRatio().poor()))));
        number(
                card,
                "cup-poor",
                "refused from 1 in",
                1,
                10_000,
                p -> p.cupRatio().poor(),
                (p, n) -> p.with(new Practice.CupRatio(Math.max(n, p.cupRatio().clear()), n)));
        number(card, "size", "Sizes ±, mm", 0.01, 100, Practice::size, (p, n) -> p.withSize(n));
        number(card, "gap", "Gap of a joint to, mm", 0.01, 100, Practice::gap, (p, n) -> p.withGap(n));
        return card;
    }

    /** The marks that each rule of the stages asked for is worth. */
    private JComponent worth() {
        Card card = new Card(new MigLayout("insets 20 20 20 20, gap 8 8, wrap 2, fillx", "[]8[grow,fill]"));
        card.add(Look.label("Marks for each rule", Style.SUBTITLE), "span 2, gapbottom 6");
        for (Rule rule : RuleBook.rules()) {
            NumberField field = new NumberField(
                            "worth-" + rule.id(),
                            "Marks, when all is sound",
                            4,
                            n -> n >= 0 && n <= 100,
                            n -> worth(rule, n))
                    .expecting("a number from 0 to 100");
            JComponent word = Look.label(Texts.of(rule.id()).title(), Style.BODY);
            word.setToolTipText(Texts.of(rule.id()).why());
            shows.add(() -> field.show(draft().practice().worth().getOrDefault(rule.id(), rule.worth())));
            card.add(field, "w 44!, hidemode 3");
            card.add(word, "wmin 0, hidemode 3");
            worths.computeIfAbsent(rule.stage(), s -> new ArrayList<>()).addAll(List.of(field, word));
        }
        shows.add(() -> worths.forEach((stage, parts) ->
                parts.forEach(c -> c.setVisible(draft().stages().contains(stage)))));
        return card;
    }

    private void worth(Rule rule, @Nullable Double marks) {
        Map<String, Double> worth = new HashMap<>(draft().practice().worth());
        if (marks == null || marks == rule.worth()) worth.remove(rule.id());
        else worth.put(rule.id(), marks);
        practice(p -> p.withWorth(worth));
        refresh();
    }

    private void practice(Function<Practice, Practice> change) {
        model.edit(draft().by(change.apply(draft().practice())));
    }

    private void number(
            JPanel card,
            String name,
            String word,
            double least,
            double most,
            Function<Practice, Double> read,
            BiFunction<Practice, Double, Practice> write) {
        NumberField field = new NumberField(name, word, 5, n -> n >= least && n <= most, n -> {
            if (n != null) practice(p -> write.apply(p, n));
            refresh();
        });
        field.expecting("a number from " + NumberField.spoken(least) + " to " + NumberField.spoken(most));
        shows.add(() -> field.show(read.apply(draft().practice())));
        card.add(Look.quiet(word, Style.BODY));
        card.add(field, "w 64!, growx 0");
    }

    private static void line(JPanel card, String word, JComponent field) {
        card.add(Look.quiet(word, Style.BODY));
        card.add(field, field instanceof NumberField ? "w 64!, growx 0" : "growx, wmin 0");
    }

    private static JPanel boxes() {
        JPanel boxes = new JPanel(new MigLayout("insets 0, gapy 4, wrap 1", "[]"));
        boxes.setOpaque(false);
        return boxes;
    }

    private static JCheckBox box(String name, String words) {
        JCheckBox box = new JCheckBox(words);
        box.setName(name);
        box.setOpaque(false);
        Look.styled(box, Style.BODY);
        return box;
    }

    private static String words(Guidance guidance) {
        return switch (guidance) {
            case EACH_STEP -> "after each step";
            case EACH_PART -> "when a part is settled";
            case AT_HAND_IN -> "when they hand in";
            case EXAMINATION -> "examination: after hand-in only";
        };
    }

    private static String words(Aid aid) {
        return switch (aid) {
            case CUT_GHOST -> "the part's cuts lie on the board";
            case CLEARANCE -> "how far knots are from them";
            case TURN_PREVIEW -> "the turned board in the job";
            case UNDO -> "undo";
        };
    }

    private static String words(FaceSide side) {
        return switch (side) {
            case BEST_OUT -> "the best, shown outside";
            case TRUEST_IN -> "the truest, turned in";
        };
    }

    private static String words(HeartSide side) {
        return switch (side) {
            case ANY -> "either way";
            case AWAY -> "away from the middle of the job";
            case TOWARDS -> "towards the middle of the job";
        };
    }
}
