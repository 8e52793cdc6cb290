package org.marktwice.view.bench;

import java.awt.BorderLayout;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import org.marktwice.bench.BoardState;
import org.marktwice.bench.Marker;
import org.marktwice.drawing.Placing;
import org.marktwice.picture.Ink;
import org.marktwice.scenario.Practice;
import org.marktwice.timber.Surface;
import org.marktwice.view.Commands.Command;
import org.marktwice.view.Look;
import org.marktwice.view.Look.Style;

/** The board as it lies: which it is, how it lies, itself, and the words for what can be done with it. */
final class BoardPanel extends Sheet {
    private static final long serialVersionUID = 1L;
    private static final String KNIFE =
            "Knife: light strokes against the square, away from the holding hand; work held, both hands behind the edge.";
    private static final String CUT =
            "Saw and chisel: eye protection on, work held, both hands behind the edge, hair and cords back.";
    private static final String SPUR =
            "Gauge: work held, fence pressed home, light strokes away from you; mind the spur.";

    private final transient BenchModel model;
    private final JLabel title = Look.label(" ", Style.SUBTITLE);
    private final JTextArea way = Look.prose(" ", Style.NOTE, Ink.QUIET);
    private final BoardView view;
    private final ToolWords words;
    private final WordButton estimate;
    private final WordButton settle;
    private final WordButton putDown;
    private final WordButton shape;
    private final WordButton marker;
    private final WordButton choice;

    BoardPanel(BenchModel model, BoardView view, Consumer<Command> run) {
        super(new BorderLayout());
        this.model = model;
        this.view = view;
        this.words = new ToolWords(model, run);
        title.setName("board-title");
        way.setName("board-way");
        settle = new WordButton(BenchCommands.ENTER, "Settle", "Enter", () -> run.accept(BenchCommands.ENTER));
        settle.setName("tool-settle");
        estimate = new WordButton(BenchCommands.ESTIMATE, () -> run.accept(BenchCommands.ESTIMATE));
        putDown = new WordButton(BenchCommands.PUT_DOWN, () -> run.accept(BenchCommands.PUT_DOWN));
        marker = new WordButton(BenchCommands.MARKER, () -> run.accept(BenchCommands.MARKER));
        choice = new WordButton(BenchCommands.CHOICE, () -> run.accept(BenchCommands.CHOICE));
        shape = new WordButton(BenchCommands.SHAPE, () -> run.accept(BenchCommands.SHAPE));
        JPanel head = new JPanel(new MigLayout(
                "insets 14lp 18lp 0 18lp, gap 4lp 2lp, hidemode 0", "[grow,fill][][][][][][]", "[24lp!,center][]"));
        head.setOpaque(false);
        head.add(title, "cell 0 0, wmin 0");
        head.add(marker, "cell 1 0, hidemode 3");
        head.add(choice, "cell 2 0, hidemode 3");
        head.add(estimate, "cell 3 0, hidemode 3");
        head.add(settle, "cell 4 0, hidemode 3");
        head.add(putDown, "cell 5 0");
        head.add(shape, "cell 6 0");
        head.add(way, "cell 0 1, spanx 7, wmin 0");
        words.setBorder(BorderFactory.createEmptyBorder(0, Look.px(11), Look.px(10), Look.px(11)));
        add(head, BorderLayout.NORTH);
        add(view, BorderLayout.CENTER);
        add(words, BorderLayout.SOUTH);
        refresh();
    }

    void refresh() {
        BoardState state = model.board();
        String id = state.board().id();
        title.setText("Board " + id
                + state.board().species().map(s -> " · " + s.name()).orElse(""));
        String lies = model.tool().flatMap(this::caution).orElseGet(() -> way(state));
        if (!way.getText().equals(lies)) way.setText(lies);
        view.getAccessibleContext().setAccessibleName("Board " + id + ", " + way.getText());
        view.getAccessibleContext()
                .setAccessibleDescription(
                        BoardReport.of(model.session().scenario(), state, model.placing(), model.lines()));
        words.refresh();
        // They keep their room, so that nothing moves when a tool is taken up.
        estimate.setVisible(model.trial().isPresent() && !model.grants(Practice.Aid.CLEARANCE));
        settle.setVisible(model.trial().isPresent());
        Optional<BenchTool> held = model.tool();
        marker.setVisible(held.map(BenchTool::strikes).orElse(false));
        marker.say(Words.capital(model.marker().spoken()));
        Optional<String> open = held.flatMap(BenchTool::choice);
        choice.setVisible(open.isPresent());
        open.ifPresent(o -> choice.say(Words.capital(o)));
        putDown.setVisible(model.tool().isPresent());
        shape.say("Shape ×" + model.shape().times());
    }

    /** The trade's caution for the tool in hand; it stands beside the work and never in its way. */
    private Optional<String> caution(BenchTool tool) {
        if (tool.command().equals(BenchCommands.GAUGE)) return Optional.of(SPUR);
        if (tool.command().equals(BenchCommands.CUT)) return Optional.of(CUT);
        boolean knife = tool.strikes() && model.marker() == Marker.KNIFE;
        return knife ? Optional.of(KNIFE) : Optional.empty();
    }

    private String way(BoardState state) {
        if (state.setAside().isPresent()) {
            return "set aside: " + state.setAside().get().because().spoken();
        }
        Optional<Placing> placing = model.placing();
        if (placing.isEmpty() || !(model.trial().isPresent() || model.liesAsPlaced())) {
            return Words.lying(state, model.lie());
        }
        Placing placed = placing.get();
        boolean told = model.trial().isEmpty() || model.grants(Practice.Aid.TURN_PREVIEW);
        String turned = Words.turned(state, placed.part(), placed.turn(), told);
        if (placed.surplus() <= 0) return turned;
        return turned + " · " + TurnTool.trimWords(placed.off(Surface.END_1), placed.surplus());
    }

    BoardView view() {
        return view;
    }
}
