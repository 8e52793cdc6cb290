package org.marktwice.view.desk;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import net.miginfocom.swing.MigLayout;
import org.marktwice.files.RackColumn;
import org.marktwice.files.TypedRack;
import org.marktwice.files.TypedRack.OnRack;
import org.marktwice.files.TypedRack.Trouble;
import org.marktwice.picture.BoardPicture;
import org.marktwice.picture.FigureCache;
import org.marktwice.picture.Ink;
import org.marktwice.picture.Pointed;
import org.marktwice.timber.KnotFit;
import org.marktwice.timber.MeasuredBoard.Fitted;
import org.marktwice.timber.Pith;
import org.marktwice.timber.Showing;
import org.marktwice.view.Card;
import org.marktwice.view.Column;
import org.marktwice.view.Look;
import org.marktwice.view.Look.Style;

/** The rack typed: its table above, and below it the board of the line one is in, as it must be by what was measured. */
final class RackPane extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient RackModel model;
    private final RackTableView table;
    private final RackBoard board;
    private final EndSection section;
    private final JLabel name = Look.label(" ", Style.SUBTITLE);
    private final Column found = new Column(new MigLayout("insets 0, gap 0 6, wrap 1, fillx", "[grow,fill]"));
    private final JLabel ofKnots = Look.quiet(
            "A plain ring is what you measured; dashed, how the knot's body runs inside the board.", Style.NOTE);
    private final JLabel ofPith = Look.quiet("Seen from end 2. Drag the pith, or type it.", Style.NOTE);
    private final JPanel words = new JPanel(new MigLayout("insets 0, gapx 8, fillx"));
    private final transient Consumer<String> help;

    /** @param help is told what is to be typed in the cell one is in */
    RackPane(RackModel model, FigureCache cache, Consumer<String> help) {
        super(new MigLayout(
                "insets 0, gap 16, wrap 2, fill", "[grow,fill][300:320:360,fill]", "[44%!,fill][grow,fill]"));
        this.model = model;
        this.help = help;
        setOpaque(false);
        table = new RackTableView(model);
        board = new RackBoard("rack-board", cache);
        section = new EndSection(cache, p -> pith(p, false), p -> pith(p, true));
        add(tableCard(), "span 2, grow, hmin 0, wmin 0");
        Card seen =
                new Card(new MigLayout("insets 12 16 10 16, gap 0 4, wrap 1, fill", "[grow,fill]", "[grow,fill][]"));
        seen.add(board, "grow, hmin 0, wmin 0");
        seen.add(ofKnots, "wmin 0");
        add(seen, "grow, hmin 0, wmin 0");
        add(foundCard(), "grow, hmin 0, wmin 0");
        table.getSelectionModel().addListSelectionListener(e -> look());
        table.getColumnModel().getSelectionModel().addListSelectionListener(e -> look());
        model.steps().addListener(this::refresh);
    }

    private JComponent tableCard() {
        Card card =
                new Card(new MigLayout("insets 12 16 12 16, gap 0 8, wrap 1, fill", "[grow,fill]", "[][grow,fill]"));
        words.setOpaque(false);
        words.add(Look.label("The rack", Style.SUBTITLE), "pushx, growx, wmin 0");
        card.add(words, "wmin 0");
        JScrollPane scroll = new JScrollPane(table);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        card.add(scroll, "grow, hmin 0, wmin 0");
        return card;
    }

    /** Puts a button above the table. */
    void add(JButton word) {
        words.add(word);
    }

    private JComponent foundCard() {
        Card card = new Card(new MigLayout(
                "insets 12 16 10 16, gap 0 6, wrap 1, fill", "[grow,fill]", "[][pref::96,fill][grow,fill][]"));
        name.setName("rack-board-name");
        card.add(name, "wmin 0");
        found.setName("rack-found");
        card.add(found.scrolling(), "growx, wmin 0");
        card.add(section, "grow, hmin 0, wmin 0");
        card.add(ofPith, "wmin 0");
        return card;
    }

    private void pith(Pith pith, boolean settled) {
        model.at(table.line()).ifPresent(b -> model.pith(b, pith, settled));
    }

    RackTableView table() {
        return table;
    }

    private void refresh() {
        table.refresh();
        look();
    }

    /** Shows the board of the line one is in. */
    void look() {
        help.accept(table.column().help());
        Optional<OnRack> now = model.at(table.line());
        Optional<Fitted> seen = now.flatMap(model::seen);
        name.setText(now.map(b -> b.id().isEmpty() ? "A board without its name" : "Board " + b.id())
                .orElse("No board yet"));
        found.removeAll();
        for (String says : now.map(model::found).orElse(List.of("○ type what is chalked on it, and its size"))) {
            found.add(Look.prose(says, Style.BODY, ink(says)), "wmin 0");
        }
        found.revalidate();
        found.repaint();
        section.show(seen.map(Fitted::board).orElse(null));
        board.show(
                seen.map(this::picture).orElse(null),
                seen.map(RackPane::readings).orElse(List.of()),
                now.isPresent()
                        ? "It is to be seen as soon as its species and size are typed."
                        : "Type the first board's name and size, or open the rack's file.");
        ofKnots.setVisible(seen.filter(f -> !f.board().knots().isEmpty()).isPresent());
        ofPith.setVisible(seen.filter(f -> !f.board().isSheet()).isPresent());
        table.repaint();
    }

    private static Ink ink(String says) {
        return switch (says.charAt(0)) {
            case '×' -> Ink.WRONG;
            case '~' -> Ink.CLOSE;
            case '✓' -> Ink.SOUND;
            default -> Ink.QUIET;
        };
    }

    private BoardPicture picture(Fitted fitted) {
        BoardPicture picture = BoardPicture.of(fitted.board());
        List<TypedRack.Line> lines = model.rack().lines();
        String knot = table.line() < lines.size() ? lines.get(table.line()).at(RackColumn.KNOT) : "";
        return fitted.board().knot(knot).isPresent() ? picture.pointed(new Pointed.AtKnot(knot)) : picture;
    }

    private static List<Showing> readings(Fitted fitted) {
        return fitted.fits().stream().map(KnotFit::given).flatMap(List::stream).toList();
    }

    /** Goes to what isn't whole yet, the first of it. */
    void goToTrouble() {
        model.boards().stream()
                .flatMap(b -> b.trouble().stream())
                .findFirst()
                .ifPresent((Trouble t) -> table.go(t.line(), t.column()));
    }
}
