package org.marktwice.view.desk;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.util.List;
import java.util.Optional;
import javax.swing.ButtonGroup;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JRadioButton;
import javax.swing.JSlider;
import javax.swing.SwingWorker;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;
import org.marktwice.picture.FigureCache;
import org.marktwice.scenario.Draft;
import org.marktwice.scenario.Stock;
import org.marktwice.timber.Board;
import org.marktwice.timber.Species;
import org.marktwice.timber.SpeciesTable;
import org.marktwice.view.Card;
import org.marktwice.view.Column;
import org.marktwice.view.Look;
import org.marktwice.view.Look.Style;

/** The boards of an exercise: grown to a wanted difficulty, or drawn by hand; on the right what comes out. */
final class BoardsPane extends JPanel {
    private static final long serialVersionUID = 1L;
    /** Seeds that are looked through for boards as hard as is asked for. */
    private static final int TRIES = 40;

    private static final Stock FIRST = new Stock(1, SpeciesTable.all().get(0), 1, Stock.DIFFICULTY);

    private final transient SetModel model;
    private final JRadioButton grow = new JRadioButton("Grown from a seed");
    private final JRadioButton draw = new JRadioButton("Drawn by hand");
    private final Choice<Species> species;
    private final JSlider difficulty = new JSlider(0, 100, 50);
    private final JLabel share = Look.label("", Style.BODY);
    private final JButton nearer = new JButton("Come nearer");
    private final NumberField spare;
    private final NumberField seed;
    private final JLabel outcome = Look.label(" ", Style.BODY);
    private final RackView rack;
    private final JPanel left = new JPanel(new CardLayout());
    private final JPanel right = new JPanel(new CardLayout());
    private final transient DrawnBoards drawn;
    private boolean showing;
    private transient @Nullable SwingWorker<?, ?> reckoning;
    private transient @Nullable Draft reckoned;
    private transient @Nullable Grown grown;

    BoardsPane(SetModel model, FigureCache cache) {
        super(new MigLayout("insets 0, gap 20, fill", "[380:400:460,fill][grow,fill]", "[grow,fill]"));
        this.model = model;
        setOpaque(false);
        rack = new RackView(cache, id -> {});
        species = new Choice<>(
                "species",
                "Species",
                Species::name,
                s -> stock(new Stock(now().seed(), s, now().spare(), now().difficulty())));
        spare = new NumberField(
                        "spare",
                        "Boards beyond one for each part",
                        4,
                        n -> n == Math.rint(n) && n >= 0 && n <= Stock.MOST_SPARE,
                        n -> stock(new Stock(
                                now().seed(), now().species(), n == null ? 0 : (int) Math.rint(n), now().difficulty())))
                .expecting("a whole number from 0 to " + Stock.MOST_SPARE);
        seed = new NumberField(
                        "seed",
                        "The same seed gives the same boards on every machine",
                        8,
                        n -> n == Math.rint(n) && n >= 0 && n < 1e9,
                        n -> stock(new Stock(
                                n == null ? 0 : (int) Math.rint(n),
                                now().species(),
                                now().spare(),
                                now().difficulty())))
                .expecting("a whole number from 0");
        drawn = new DrawnBoards(model, cache);
        Card choice = new Card(
                new MigLayout("insets 20 24 20 24, gap 8, wrap 1, fill", "[grow,fill]", "[]12[]0[]16[grow,fill]"));
        choice.add(Look.label("Where the boards come from", Style.SUBTITLE));
        choice.add(radio(grow, "boards-grown"));
        choice.add(radio(draw, "boards-drawn"));
        left.setOpaque(false);
        left.add(growing(), "grown");
        left.add(drawn.form(), "drawn");
        choice.add(left, "grow, hmin 0, wmin 0");
        add(choice, "growy, hmin 0");
        right.setOpaque(false);
        right.add(rackSide(), "grown");
        right.add(drawn.pictures(), "drawn");
        add(right, "grow, hmin 0, wmin 0");
        ButtonGroup group = new ButtonGroup();
        group.add(grow);
        group.add(draw);
        // chosen by a click, by Space, or by the arrows, which tell of the choice alone
        grow.addItemListener(e -> {
            if (!showing && grow.isSelected()) model.edit(model.draft().grownFrom(FIRST));
        });
        draw.addItemListener(e -> {
            if (showing || !draw.isSelected()) return;
            byHand();
            refresh();
        });
        refresh();
    }

    /** Takes the focus to where the boards come from. */
    void focus() {
        (draw.isSelected() ? draw : grow).requestFocusInWindow();
    }

    private static JRadioButton radio(JRadioButton button, String name) {
        button.setName(name);
        button.setOpaque(false);
        return Look.styled(button, Style.BODY);
    }

    private JComponent growing() {
        JPanel form = new JPanel(new MigLayout("insets 0, gap 12 8, wrap 2, fillx, aligny top", "[][grow,fill]"));
        form.setOpaque(false);
        form.add(Look.quiet("Species", Style.BODY));
        form.add(species, "wmin 0");
        form.add(Look.quiet("Difficulty", Style.BODY));
        difficulty.setName("difficulty");
        difficulty.setOpaque(false);
        difficulty.getAccessibleContext().setAccessibleName("Difficulty: share of the turns that are wrong");
        difficulty.addChangeListener(e -> {
            share.setText(asked(difficulty.getValue()));
            if (showing || difficulty.getValueIsAdjusting()) return;
            stock(new Stock(now().seed(), now().species(), now().spare(), difficulty.getValue() / 100.0));
        });
        form.add(difficulty, "wmin 0");
        form.add(share, "skip 1");
        form.add(Look.quiet("To spare", Style.BODY));
        form.add(spare, "w 64!, growx 0");
        form.add(Look.quiet("Seed", Style.BODY));
        form.add(seed, "w 96!, growx 0");
        JButton other = new JButton("Other boards");
        other.setName("other-boards");
        other.setToolTipText("The next seed");
        other.addActionListener(
                e -> stock(new Stock(now().seed() + 1, now().species(), now().spare(), now().difficulty())));
        form.add(other, "skip 1, split 2, growx 0");
        nearer.setName("come-nearer");
        nearer.setToolTipText(
                "Of the next " + TRIES + " seeds, the one whose boards come nearest to what is asked for");
        nearer.addActionListener(e -> comeNearer());
        form.add(nearer, "growx 0, gapright push");
        form.add(
                Look.prose(
                        "Handing out gives each learner other boards, as hard as these.",
                        Style.NOTE,
                        org.marktwice.picture.Ink.QUIET),
                "span 2, growx, wmin 0, gaptop 12");
        return form;
    }

    private JComponent rackSide() {
        JPanel side = new JPanel(new MigLayout("insets 0, gap 0 12, wrap 1, fill", "[grow,fill]", "[][grow,fill]"));
        side.setOpaque(false);
        outcome.setName("outcome");
        side.add(outcome, "wmin 0");
        Column column = new Column(new BorderLayout());
        column.add(rack);
        side.add(column.scrolling(), "grow, hmin 0, wmin 0");
        return side;
    }

    private static String asked(int of100) {
        return "Asked for: " + of100 + " of 100 ways wrong";
    }

    /** Looks for boards that come nearer to what is asked for. */
    private void comeNearer() {
        Draft draft = model.draft();
        if (draft.stock().isEmpty()) return;
        nearer.setEnabled(false);
        outcome.setText("Looking through the next " + TRIES + " seeds …");
        Aside.run(() -> Grown.nearest(draft, TRIES), found -> nearest(draft, found), model::say);
    }

    private void nearest(Draft from, Stock found) {
        if (!model.draft().equals(from)) return;
        Grown known = grown;
        if (from.stock().filter(found::equals).isEmpty()) {
            stock(found);
        } else if (known != null) {
            come(Optional.of(known), "");
            model.say("None of the next " + TRIES + " seeds comes nearer: with its cuts where they are, this job gives"
                    + " boards no other way");
        }
    }

    private Stock now() {
        return model.draft().stock().orElse(FIRST);
    }

    private void stock(Stock next) {
        model.edit(model.draft().grownFrom(next));
    }

    /** Goes on by hand from the boards that were grown, where there are some. */
    private void byHand() {
        Grown known = grown;
        List<Board> from = known != null && model.draft().stock().isPresent()
                ? known.scenario().boards()
                : model.draft().boards();
        model.edit(model.draft().onBoards(from));
    }

    void refresh() {
        Draft draft = model.draft();
        boolean grows = draft.stock().isPresent();
        showing = true;
        // nothing chosen yet: neither is set
        boolean none = draft.stock().isEmpty() && draft.boards().isEmpty() && !draw.isSelected();
        if (grows) grow.setSelected(true);
        else if (!none) draw.setSelected(true);
        species.show(SpeciesTable.all(), now().species());
        difficulty.setValue((int) Math.round(100 * now().difficulty()));
        share.setText(asked(difficulty.getValue()));
        spare.show((double) now().spare());
        seed.show((double) now().seed());
        showing = false;
        String side = draw.isSelected() ? "drawn" : "grown";
        ((CardLayout) left.getLayout()).show(left, side);
        ((CardLayout) right.getLayout()).show(right, side);
        drawn.refresh();
        reckon();
    }

    /** Grows the boards and solves them aside; the last thing asked for is what is shown. */
    private void reckon() {
        Draft draft = model.draft();
        if (draft.equals(reckoned)) return;
        reckoned = draft;
        SwingWorker<?, ?> before = reckoning;
        if (before != null) before.cancel(true);
        if (draft.drawing().isEmpty()) {
            come(
                    Optional.empty(),
                    (draft.boards().isEmpty() ? "Boards can be grown" : "What the boards are good for is told")
                            + " when the drawing is whole. " + SetModel.standing(draft.gaps()) + ".");
            return;
        }
        if (draft.stock().isEmpty() && draft.boards().isEmpty()) {
            come(Optional.empty(), "No boards yet: grow them, or draw them by hand.");
            return;
        }
        if (draft.stock().isPresent()) {
            nearer.setEnabled(false);
            outcome.setText("Growing the boards …");
        }
        reckoning = Aside.run(() -> Grown.of(draft), found -> come(found, ""), why -> come(Optional.empty(), why));
    }

    private void come(Optional<Grown> found, String otherwise) {
        grown = found.orElse(null);
        String says = found.map(Grown::says).orElse(otherwise);
        outcome.setText(found.map(f -> f.isSolvable() ? "✓  " : "×  ").orElse("") + says);
        outcome.setToolTipText(outcome.getText());
        nearer.setEnabled(found.filter(f -> f.refused().isEmpty() && Grown.off(model.draft(), f) > Grown.NEAR)
                .isPresent());
        rack.show(
                found.map(f -> f.scenario().boards()).orElse(List.of()),
                b -> found.flatMap(f -> f.use(b))
                        .map(o -> (o.clear() ? "✓ " : "~ ") + o.placing().part().name())
                        .orElse("left over"),
                "");
        drawn.outcome(found, otherwise);
    }
}
