package org.marktwice.view.desk;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.marktwice.timber.Board;
import org.marktwice.timber.Pith;
import org.marktwice.timber.Shape;
import org.marktwice.timber.Size;
import org.marktwice.timber.Species;
import org.marktwice.timber.SpeciesTable;
import org.marktwice.timber.Surface;
import org.marktwice.view.Look;
import org.marktwice.view.Look.Style;

/** The figures of a board that is drawn by hand, but for its knots. */
final class BoardFigures extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient OneBoard drawn;
    private final transient List<Runnable> shows = new ArrayList<>();

    BoardFigures(OneBoard drawn) {
        super(new MigLayout("insets 0, gap 12 6, wrap 2, fillx", "[][grow,fill]"));
        this.drawn = drawn;
        setOpaque(false);
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
                s -> drawn.board().filter(b -> !b.isSheet()).ifPresent(b -> drawn.put(BoardEdits.of(b, s))));
        add(Look.quiet("Species", Style.BODY));
        add(species, "wmin 0");
        shows.add(() -> species.show(
                SpeciesTable.all(), drawn.board().flatMap(Board::species).orElse(null)));
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
        add(Look.quiet("Planed", Style.BODY), "top");
        add(planed(), "wmin 0");
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
        JPanel line = DrawnBoards.panel("insets 0, gap 4", "");
        for (int i = 0; i < names.length; i++) {
            int at = i;
            NumberField field = new NumberField(
                    "board-" + names[i],
                    capital(names[i].replace('-', ' ')),
                    4,
                    n -> n >= least && n <= most,
                    n -> drawn.board().ifPresent(b -> {
                        double[] now = read.apply(b);
                        now[at] = n == null ? now[at] : n;
                        drawn.put(write.apply(b, now));
                        drawn.refresh();
                    }));
            field.expecting("a number from " + NumberField.spoken(least) + " to " + NumberField.spoken(most));
            line.add(field, "w 60!");
            shows.add(() -> drawn.board().ifPresent(b -> field.show(read.apply(b)[at])));
        }
        add(Look.quiet(word, Style.BODY));
        add(line);
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    private JComponent planed() {
        JPanel boxes = DrawnBoards.panel("insets 0, gap 8 2, wrap 3", "");
        for (Surface surface : Surface.values()) {
            JCheckBox box = new JCheckBox(surface.spoken());
            box.setName("planed-" + surface.id());
            box.setOpaque(false);
            Look.styled(box, Style.BODY);
            box.addActionListener(e -> drawn.board().ifPresent(b -> {
                Set<Surface> now = EnumSet.noneOf(Surface.class);
                now.addAll(b.facts().dressed());
                if (box.isSelected()) now.add(surface);
                else now.remove(surface);
                drawn.put(BoardEdits.dressed(b, now));
            }));
            shows.add(() -> box.setSelected(
                    drawn.board().filter(b -> b.isDressed(surface)).isPresent()));
            boxes.add(box);
        }
        return boxes;
    }

    /** Shows the board's own figures. */
    void showBoard() {
        shows.forEach(Runnable::run);
    }
}
