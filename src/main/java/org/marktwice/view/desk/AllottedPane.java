package org.marktwice.view.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.ListSelectionModel;
import net.miginfocom.swing.MigLayout;
import org.marktwice.advice.Option;
import org.marktwice.bench.BoardState;
import org.marktwice.bench.Mark;
import org.marktwice.classroom.Laying;
import org.marktwice.classroom.RackAllotment;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Placing;
import org.marktwice.picture.BoardPicture;
import org.marktwice.picture.BoardPicture.LaidCut;
import org.marktwice.picture.FigureCache;
import org.marktwice.picture.Pointed;
import org.marktwice.timber.KnotFit;
import org.marktwice.timber.MeasuredBoard.Fitted;
import org.marktwice.timber.Showing;
import org.marktwice.timber.Surface;
import org.marktwice.view.Card;
import org.marktwice.view.Look;
import org.marktwice.view.Look.Style;

/** Which board becomes which part of which job; the one picked out is seen below with its cuts. */
final class AllottedPane extends JPanel {
    private static final long serialVersionUID = 1L;

    private final Rows<Line> rows;
    private final Sheet<Line> sheet;
    private final RackBoard board;
    private final JLabel heading = Look.label(" ", Style.SUBTITLE);
    private final JLabel says = Look.quiet(" ", Style.BODY);
    private transient List<Fitted> rack = List.of();

    /** One part of one job. */
    private record Line(String job, String part, Optional<Option> option) {
        String board() {
            return option.map(o -> o.placing().board().id()).orElse("");
        }

        String lies() {
            return option.map(o -> Laying.of(o.placing()).spoken()).orElse("");
        }

        String trim() {
            return option.map(o -> trimmed(o.placing())).orElse("");
        }

        String verdict() {
            if (option.isEmpty()) return "× no board";
            if (option.get().nearest().isEmpty()) return "✓ no knot near a cut";
            Option.Nearest nearest = option.get().nearest().get();
            return (option.get().clear() ? "✓ " : "× ")
                    + String.format(Locale.ROOT, "knot %.1f mm from a cut", nearest.clearance());
        }

        private static String trimmed(Placing placing) {
            List<String> off = new ArrayList<>();
            for (Surface end : List.of(Surface.END_1, Surface.END_2)) {
                double mm = Math.rint(10 * placing.off(end)) / 10;
                if (mm > 0) off.add(NumberField.spoken(mm) + " off " + end.spoken());
            }
            return off.isEmpty() ? "nothing" : String.join(", ", off);
        }
    }

    AllottedPane(FigureCache cache) {
        super(new MigLayout("insets 0, gap 16, wrap 1, fill", "[grow,fill]", "[50%!,fill][grow,fill]"));
        setOpaque(false);
        rows = new Rows<>(List.of(
                Rows.words("Job", 1, Line::job),
                Rows.words("Part", 1.6, Line::part),
                Rows.words("Board", 0.7, Line::board),
                Rows.words("Clear", 2.2, Line::verdict),
                Rows.words("How it lies", 4.6, Line::lies),
                Rows.words("To trim, mm", 2.2, Line::trim)));
        sheet = new Sheet<>("allotted", "Which board becomes which part", rows);
        sheet.table().setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        sheet.table().getSelectionModel().addListSelectionListener(e -> look());
        board = new RackBoard("allotted-board", cache);
        Card table = new Card(new MigLayout("insets 12 20 12 20, fill", "[grow,fill]", "[grow,fill]"));
        table.add(sheet, "grow, hmin 0, wmin 0");
        add(table, "grow, hmin 0, wmin 0");
        Card seen = new Card(new MigLayout("insets 12 20 12 20, gap 12 4, fill", "[][grow,fill]", "[][grow,fill]"));
        heading.setName("allotted-heading");
        seen.add(heading);
        seen.add(says, "wmin 0, wrap");
        seen.add(board, "span 2, grow, hmin 0, wmin 0");
        add(seen, "grow, hmin 0, wmin 0");
        look();
    }

    void show(RackAllotment allotment, List<String> names) {
        rack = allotment.rack();
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            for (Part part : allotment.scenario().drawing().parts()) {
                lines.add(new Line(
                        names.get(i), part.name(), allotment.jobs().get(i).of(part)));
            }
        }
        rows.show(lines);
        if (!lines.isEmpty()) sheet.choose(0);
        look();
    }

    private void look() {
        Optional<Line> line = sheet.chosen();
        Optional<Option> option = line.flatMap(Line::option);
        heading.setText(line.map(l -> l.job() + ", " + l.part()
                        + l.option().map(o -> ": board " + l.board()).orElse(""))
                .orElse(" "));
        says.setText(option.map(AllottedPane::nearest).orElse(" "));
        board.show(
                option.map(AllottedPane::picture).orElse(null),
                option.map(this::readings).orElse(List.of()),
                line.isPresent()
                        ? "No board of the rack serves it."
                        : "Type the rack and allot: " + AllotScreen.ALLOT.keyText() + ".");
    }

    private static String nearest(Option option) {
        return option.nearest()
                .map(n -> String.format(
                        Locale.ROOT,
                        "the nearest knot, %s, is %.1f mm from a cut; %.1f is wanted",
                        n.knot(),
                        n.clearance(),
                        n.margin()))
                .orElse("no knot is near a cut");
    }

    private List<Showing> readings(Option option) {
        return rack.stream()
                .filter(f -> f.board().id().equals(option.placing().board().id()))
                .flatMap(f -> f.fits().stream())
                .map(KnotFit::given)
                .flatMap(List::stream)
                .toList();
    }

    /** The board marked and laid, its cuts and offcuts on it. */
    private static BoardPicture picture(Option option) {
        Placing placing = option.placing();
        Optional<String> foul =
                option.clear() ? Optional.empty() : option.nearest().map(Option.Nearest::joint);
        List<LaidCut> cuts = placing.cuts().stream()
                .map(c -> new LaidCut(c, foul.filter(c.joint()::equals).isPresent()))
                .toList();
        BoardPicture picture =
                BoardPicture.of(marked(placing), null).offcutsOf(placing).cuts(cuts);
        return option.nearest()
                .map(n -> picture.pointed(new Pointed.AtKnot(n.knot())))
                .orElse(picture);
    }

    private static BoardState marked(Placing placing) {
        BoardState fresh = BoardState.fresh(placing.board());
        Laying laying = Laying.of(placing);
        if (laying.faceSide().isEmpty() || laying.faceEdge().isEmpty()) return fresh;
        Surface side = laying.faceSide().get();
        Surface edge = laying.faceEdge().get();
        return new BoardState(
                fresh.board(),
                List.of(new Mark(Mark.Kind.FACE_SIDE, side, edge, 1), new Mark(Mark.Kind.FACE_EDGE, edge, side, 2)),
                null,
                null,
                null,
                List.of(),
                List.of(),
                List.of());
    }
}
