package org.marktwice.view.desk;

import java.awt.event.ActionListener;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;
import org.marktwice.picture.FigureCache;
import org.marktwice.picture.Ink;
import org.marktwice.scenario.Draft;
import org.marktwice.timber.Board;
import org.marktwice.timber.Knot;
import org.marktwice.timber.Pith;
import org.marktwice.timber.Shape;
import org.marktwice.timber.Size;
import org.marktwice.timber.Species;
import org.marktwice.timber.SpeciesTable;
import org.marktwice.timber.Surface;
import org.marktwice.view.Card;
import org.marktwice.view.Column;
import org.marktwice.view.Look;
import org.marktwice.view.Look.Style;

/** Boards drawn by hand: one at a time, its figures at the left, its surfaces and its stem at the right. */
final class DrawnBoards {
    private final SetModel model;
    private final List<Runnable> shows = new ArrayList<>();
    private final Choice<String> which;
    private final JPanel figures = panel("insets 0, gap 12 6, wrap 2, fillx", "[][grow,fill]");
    private final JPanel knots =
            panel("insets 0, gap 4 4, wrap 6, fillx", "[36!][54!,fill][54!,fill][54!,fill][54!,fill][]");
    private final GapLine gap = new GapLine("board-gap");
    private final JLabel outcome = Look.label(" ", Style.BODY);
    private final KnotSheet sheet;
    private final EndSection section;
    private final JComponent form;
    private final JComponent pictures;
    private String letter = "";
    private String shown = "";
    private String knot = "";
    private List<String> knotIds = List.of();
    private final List<Runnable> knotShows = new ArrayList<>();

    DrawnBoards(SetModel model, FigureCache cache) {
        this.model = model;
        which = new Choice<>("board", "Board", l -> "Board " + l, l -> {
            letter = l;
            refresh();
        });
        sheet = new KnotSheet(cache, new KnotSheet.Host() {
            @Override
            public void picked(String id) {
                knot = id;
                refresh();
            }

            @Override
            public void moved(Knot next, boolean settled) {
                board().ifPresent(b -> put(BoardEdits.with(b, next), settled));
            }
        });
        section = new EndSection(
                cache,
                p -> board().ifPresent(b -> put(BoardEdits.pith(b, p), false)),
                p -> board().ifPresent(b -> put(BoardEdits.pith(b, p), true)));
        form = buildForm();
        pictures = buildPictures();
    }

    JComponent form() {
        return form;
    }

    JComponent pictures() {
        return pictures;
    }

    void outcome(Optional<Grown> found, String otherwise) {
        outcome.setText(
                found.map(f -> (f.isSolvable() ? "✓  " : "×  ") + f.says()).orElse(otherwise));
        outcome.setToolTipText(outcome.getText());
    }

    private Draft draft() {
        return model.draft();
    }

    private int index() {
        List<Board> boards = draft().boards();
        for (int i = 0; i < boards.size(); i++) if (boards.get(i).id().equals(letter)) return i;
        return -1;
    }

    private Optional<Board> board() {
        int at = index();
        return at < 0 ? Optional.empty() : Optional.of(draft().boards().get(at));
    }

    private void put(Board next, boolean settled) {
        int at = index();
        if (at < 0) return;
        List<Board> boards = new ArrayList<>(draft().boards());
        boards.set(at, next);
        Draft with = draft().onBoards(boards);
        if (settled) model.edit(with);
        else model.steps().attempt(with);
    }

    private JComponent buildForm() {
        Column column = new Column(new MigLayout("insets 0 0 0 6, gap 0 8, wrap 1, fillx", "[grow,fill]"));
        JPanel top = panel("insets 0, gap 6, fillx", "[grow,fill][][][]");
        top.add(which, "wmin 0");
        top.add(button("add-board", "Add", "Another planed board without knots", e -> add(BoardEdits.fresh(draft()))));
        JButton copy = button(
                "copy-board",
                "Copy",
                "The same board under another letter",
                e -> board().ifPresent(b -> add(BoardEdits.named(b, BoardEdits.letter(draft().boards())))));
        JButton gone = button("remove-board", "Remove", "Take this board off the rack", e -> remove());
        top.add(copy);
        top.add(gone);
        column.add(top, "wmin 0");
        column.add(gap, "wmin 0, hidemode 3");
        buildFigures();
        column.add(figures, "wmin 0, hidemode 3");
        JButton fresh = button(
                "add-knot",
                "Add a knot",
                "In the middle of face 1; or double-click where it is to come out",
                e -> board().flatMap(b -> BoardEdits.freshThrough(
                                        b,
                                        new org.marktwice.timber.SurfacePoint(
                                                Surface.FACE_1,
                                                b.size().length() / 2,
                                                b.size().width() / 2))
                                .map(k -> BoardEdits.with(b, k)))
                        .ifPresent(b -> put(b, true)));
        column.add(knots, "wmin 0, hidemode 3");
        column.add(fresh, "growx 0, hidemode 3");
        shows.add(() -> {
            boolean timber = board().filter(b -> !b.isSheet()).isPresent();
            which.setEnabled(board().isPresent());
            copy.setEnabled(board().isPresent());
            gone.setEnabled(board().isPresent());
            figures.setVisible(board().isPresent());
            knots.setVisible(timber);
            fresh.setVisible(timber);
        });
        return column.scrolling();
    }

    private void buildFigures() {
        three(
                "Size, mm",
                new String[] {"length", "width", "thickness"},
                b -> new double[] {b.size().length(), b.size().width(), b.size().thickness()},
                (b, v) -> BoardEdits.sized(b, new Size(v[0], v[1], v[2])),
                0.1,
                100_000);
        Choice<Species> species = new Choice<>(
                "board-species",
                "Species",
                Species::name,
                s -> board().filter(b -> !b.isSheet()).ifPresent(b -> put(BoardEdits.of(b, s), true)));
        figures.add(Look.quiet("Species", Style.BODY));
        figures.add(species, "wmin 0");
        shows.add(() ->
                species.show(SpeciesTable.all(), board().flatMap(Board::species).orElse(null)));
        three(
                "Planed at, now, %",
                new String[] {"planed-at", "moisture"},
                b -> new double[] {b.facts().planedAt(), b.facts().moisture()},
                (b, v) -> BoardEdits.dried(b, v[0], v[1]),
                0,
                100);
        three(
                "Pith y, z, mm",
                new String[] {"pith-y", "pith-z"},
                b -> new double[] {
                    b.pith().map(Pith::y).orElse(0.0), b.pith().map(Pith::z).orElse(0.0)
                },
                (b, v) -> b.isSheet() ? b : BoardEdits.pith(b, new Pith(v[0], v[1])),
                -100_000,
                100_000);
        three(
                "Ring width, mm",
                new String[] {"ring-width"},
                b -> new double[] {b.facts().ringWidth()},
                (b, v) -> BoardEdits.ringed(b, v[0]),
                0.1,
                99);
        three(
                "Bow, spring, twist",
                new String[] {"bow", "spring", "twist"},
                b -> new double[] {
                    b.shape().bow(), b.shape().spring(), b.shape().twist()
                },
                (b, v) ->
                        shape(b, v[0], v[1], v[2], b.shape().taper(), b.shape().thickening()),
                -1000,
                1000);
        three(
                "Taper, thickening",
                new String[] {"taper", "thickening"},
                b -> new double[] {b.shape().taper(), b.shape().thickening()},
                (b, v) ->
                        shape(b, b.shape().bow(), b.shape().spring(), b.shape().twist(), v[0], v[1]),
                -1000,
                1000);
        figures.add(Look.quiet("Planed", Style.BODY), "top");
        figures.add(planed(), "wmin 0");
    }

    private static Board shape(Board b, double bow, double spring, double twist, double taper, double thickening) {
        return BoardEdits.shaped(
                b, new Shape(bow, spring, twist, taper, thickening, b.shape().outOfSquare()));
    }

    /** Up to three figures in a line. */
    private void three(
            String word,
            String[] names,
            Function<Board, double[]> read,
            BiFunction<Board, double[], Board> write,
            double least,
            double most) {
        JPanel line = panel("insets 0, gap 4", "");
        for (int i = 0; i < names.length; i++) {
            int at = i;
            NumberField field = new NumberField(
                    "board-" + names[i],
                    capital(names[i].replace('-', ' ')),
                    4,
                    n -> n >= least && n <= most,
                    n -> board().ifPresent(b -> {
                        double[] now = read.apply(b);
                        now[at] = n == null ? now[at] : n;
                        put(write.apply(b, now), true);
                        refresh();
                    }));
            field.expecting("a number from " + NumberField.spoken(least) + " to " + NumberField.spoken(most));
            line.add(field, "w 60!");
            shows.add(() -> board().ifPresent(b -> field.show(read.apply(b)[at])));
        }
        figures.add(Look.quiet(word, Style.BODY));
        figures.add(line);
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    private JComponent planed() {
        JPanel boxes = panel("insets 0, gap 8 2, wrap 3", "");
        for (Surface surface : Surface.values()) {
            JCheckBox box = new JCheckBox(surface.spoken());
            box.setName("planed-" + surface.id());
            box.setOpaque(false);
            Look.styled(box, Style.BODY);
            box.addActionListener(e -> board().ifPresent(b -> {
                Set<Surface> now = EnumSet.noneOf(Surface.class);
                now.addAll(b.facts().dressed());
                if (box.isSelected()) now.add(surface);
                else now.remove(surface);
                put(BoardEdits.dressed(b, now), true);
            }));
            shows.add(() ->
                    box.setSelected(board().filter(b -> b.isDressed(surface)).isPresent()));
            boxes.add(box);
        }
        return boxes;
    }

    private void buildKnots(Board b) {
        knotIds = b.knots().stream().map(Knot::id).toList();
        knotShows.clear();
        knots.removeAll();
        for (String head : new String[] {"Knot", "x", "Round", "Lean", "Across", ""})
            knots.add(Look.quiet(head, Style.NOTE));
        for (String id : knotIds) {
            JLabel name = Look.label(id, Style.BODY);
            knots.add(name);
            knotShows.add(() -> Look.inked(
                    name, id.equals(knot) ? Style.STRONG : Style.BODY, id.equals(knot) ? Ink.ACTION : Ink.INK));
            figure(
                    id,
                    "x",
                    "Where on the pith its branch starts, mm from end 1",
                    -100_000,
                    100_000,
                    Knot::x,
                    (k, n) -> knot(k, n, k.azimuth(), k.lean(), k.maxRadius()));
            figure(
                    id,
                    "azimuth",
                    "Which way round the pith it grows, degrees",
                    -360,
                    360,
                    Knot::azimuth,
                    (k, n) -> knot(k, k.x(), n, k.lean(), k.maxRadius()));
            figure(
                    id,
                    "lean",
                    "Degrees from the stem; 90 is square to it",
                    1,
                    179,
                    Knot::lean,
                    (k, n) -> knot(k, k.x(), k.azimuth(), n, k.maxRadius()));
            figure(
                    id,
                    "across",
                    "Its greatest diameter, mm",
                    0.2,
                    1000,
                    Knot::diameter,
                    (k, n) -> knot(k, k.x(), k.azimuth(), k.lean(), n / 2));
            JButton gone = Look.link(new JButton("Remove"));
            gone.setName("knot-" + id + "-remove");
            gone.addActionListener(e -> board().ifPresent(now -> put(BoardEdits.without(now, id), true)));
            knots.add(gone);
            JCheckBox dead = new JCheckBox("dead where it comes out");
            dead.setName("knot-" + id + "-dead");
            dead.setOpaque(false);
            Look.styled(dead, Style.NOTE);
            dead.addActionListener(e -> change(
                    id,
                    k -> new Knot(
                            k.id(),
                            k.x(),
                            k.azimuth(),
                            k.lean(),
                            k.halfAngle(),
                            k.maxRadius(),
                            dead.isSelected() ? 0 : Double.POSITIVE_INFINITY,
                            k.endsAt())));
            knots.add(dead, "skip 1, span 5");
            knotShows.add(() -> dead.setSelected(board().flatMap(now -> now.knot(id))
                    .filter(k -> Double.isFinite(k.deadFrom()))
                    .isPresent()));
        }
        knots.revalidate();
    }

    private static Knot knot(Knot k, double x, double azimuth, double lean, double radius) {
        return new Knot(k.id(), x, azimuth, lean, k.halfAngle(), radius, k.deadFrom(), k.endsAt());
    }

    private void figure(
            String id,
            String name,
            String what,
            double least,
            double most,
            Function<Knot, Double> read,
            BiFunction<Knot, Double, Knot> write) {
        NumberField field = new NumberField("knot-" + id + "-" + name, what, 4, n -> n >= least && n <= most, n -> {
            if (n != null) change(id, k -> write.apply(k, n));
            refresh();
        });
        field.expecting("a number from " + NumberField.spoken(least) + " to " + NumberField.spoken(most));
        knotShows.add(() -> board().flatMap(b -> b.knot(id)).ifPresent(k -> field.show(read.apply(k))));
        knots.add(field);
    }

    private void change(String id, Function<Knot, Knot> how) {
        board().ifPresent(b -> b.knot(id).ifPresent(k -> put(BoardEdits.with(b, how.apply(k)), true)));
    }

    private void add(@Nullable Board next) {
        if (next == null) return;
        List<Board> boards = new ArrayList<>(draft().boards());
        boards.add(next);
        letter = next.id();
        model.edit(draft().onBoards(boards));
    }

    private void remove() {
        int at = index();
        if (at < 0) return;
        List<Board> boards = new ArrayList<>(draft().boards());
        boards.remove(at);
        letter = boards.isEmpty() ? "" : boards.get(Math.max(0, at - 1)).id();
        model.edit(draft().onBoards(boards));
    }

    private JComponent buildPictures() {
        JPanel side = panel("insets 0, gap 0 12, wrap 1, fill", "[grow,fill]");
        outcome.setName("outcome");
        side.add(outcome, "wmin 0, h pref!");
        Card board = new Card(new MigLayout("insets 12, fill", "[grow,fill]", "[grow,fill]"));
        board.add(sheet, "grow, hmin 0, wmin 0");
        Card stem = new Card(new MigLayout("insets 12, fill, gap 0 4, wrap 1", "[grow,fill]", "[grow,fill][]"));
        stem.add(section, "grow, hmin 0, wmin 0");
        stem.add(
                Look.quiet(
                        "Drag the pith, or move it by the arrow keys; drag a knot over the surfaces; double-click for a new one.",
                        Style.NOTE),
                "wmin 0");
        side.add(board, "grow, push, hmin 0, wmin 0, h 50%");
        side.add(stem, "grow, push, hmin 0, wmin 0, h 50%, hidemode 3");
        shows.add(() -> stem.setVisible(board().isPresent()));
        return side;
    }

    void refresh() {
        List<String> letters = draft().boards().stream().map(Board::id).toList();
        if (!letters.contains(letter)) letter = letters.isEmpty() ? "" : letters.get(0);
        which.show(letters, letters.isEmpty() ? null : letter);
        // what is no figure of one board is none of another's
        if (!letter.equals(shown)) NumberField.unsound(form).forEach(NumberField::restore);
        shown = letter;
        shows.forEach(Runnable::run);
        gap.show(model.gapsAt(draft().gaps(), index() < 0 ? "boards" : "boards[" + index() + "]"));
        board().ifPresent(b -> {
            List<String> ids = b.knots().stream().map(Knot::id).toList();
            if (!ids.equals(knotIds) || knots.getComponentCount() == 0) buildKnots(b);
            knotShows.forEach(Runnable::run);
        });
        sheet.show(board().orElse(null), knot);
        section.show(board().orElse(null));
    }

    private static JPanel panel(String layout, String columns) {
        JPanel panel = new JPanel(new MigLayout(layout, columns));
        panel.setOpaque(false);
        return panel;
    }

    private static JButton button(String name, String word, String help, ActionListener does) {
        JButton button = new JButton(word);
        button.setName(name);
        button.setToolTipText(help);
        button.addActionListener(does);
        return button;
    }
}
