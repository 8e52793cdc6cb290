package org.marktwice.view.bench;

import java.util.List;
import java.util.function.Consumer;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import org.marktwice.bench.BoardState;
import org.marktwice.picture.Ink;
import org.marktwice.view.Commands.Command;
import org.marktwice.view.Look;
import org.marktwice.view.Look.Style;

/** The board unrolled, and beside it what the tools read on it. */
final class UnrolledPanel extends Sheet {
    private static final long serialVersionUID = 1L;
    /** More than this is read in the board's report. */
    private static final int MOST = 12;

    private final transient BenchModel model;
    private final JTextArea readings = Look.prose("", Style.NOTE, Ink.QUIET);

    private final RoomPanel room;
    private final WordButton another;
    private final JPanel read;

    UnrolledPanel(BenchModel model, UnrolledView view, Consumer<Command> run) {
        super(new MigLayout(
                "insets 14lp 18lp 14lp 18lp, gapx 18lp, fill", "[grow,fill][172lp:26%:300lp,fill]", "[grow,fill]"));
        this.model = model;
        add(view, "hmin 0, wmin 0");
        JPanel beside = new JPanel(
                new MigLayout("insets 0, gap 0 6lp, wrap 1, fill, hidemode 3", "[grow,fill]", "[grow,fill][]"));
        beside.setOpaque(false);
        JPanel read = new JPanel(new MigLayout("insets 0, gap 0 6lp, wrap 1, fill", "[grow,fill]", "[][grow,fill]"));
        read.setOpaque(false);
        this.read = read;
        room = new RoomPanel(model);
        JLabel head = Look.label("What the tools read", Style.STRONG);
        another = new WordButton(BenchCommands.ROOM, () -> run.accept(BenchCommands.ROOM));
        head.setLabelFor(readings);
        read.add(head, "wmin 0");
        readings.setName("readings");
        readings.getAccessibleContext().setAccessibleName("What the tools read");
        read.add(readings, "wmin 0, hmin 0");
        beside.add(read, "cell 0 0, wmin 0, hmin 0");
        beside.add(room, "cell 0 0, wmin 0, hmin 0");
        beside.add(another, "cell 0 1, w pref!, alignx left");
        add(beside, "wmin 0, hmin 0");
        refresh();
    }

    /** Shows the board as it settles in another room, or as it is again. */
    void another() {
        if (model.shape().room() == null) room.open();
        else model.show(model.shape().in(null));
    }

    void refresh() {
        BoardState state = model.board();
        List<String> lines = BoardReport.readings(state);
        String text = lines.isEmpty()
                ? "nothing yet: measure (M), or try a surface with the straight-edge (S), the winding sticks (W) or the"
                        + " try-square (Q)"
                : "· " + String.join("\n· ", lines.subList(0, Math.min(MOST, lines.size())));
        if (!readings.getText().equals(text)) readings.setText(text);
        boolean elsewhere = model.shape().room() != null;
        read.setVisible(!elsewhere);
        another.setSelected(elsewhere);
        room.refresh();
    }
}
