package org.marktwice.view.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.marktwice.bench.Action;
import org.marktwice.bench.BoardState;
import org.marktwice.bench.Mark;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Placing;
import org.marktwice.fit.TrueLine;
import org.marktwice.scenario.Scenario;
import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;
import org.marktwice.timber.Trace;

/** A board in words: what the two views show, for whoever reads rather than looks. */
public final class BoardReport {
    private BoardReport() {}

    /**
     * @param placing the board in the job, where it lies there
     * @param struck the lines on it, as they really lie
     */
    static String of(Scenario scenario, BoardState state, Optional<Placing> placing, List<TrueLine> struck) {
        List<String> lines = new ArrayList<>();
        Board board = state.board();
        lines.add("Board " + board.id() + ", "
                + board.species().map(s -> s.name() + ", ").orElse("sheet stuff, ") + Words.size(board.size()) + " mm");
        lines.add(Words.capital(Progress.marks(state)));
        lines.add(name(scenario, state));
        placing.ifPresent(p -> {
            lines.add(Words.capital(Words.turned(state, p.part(), p.turn(), true)));
            lines.add(Words.capital(TurnTool.trimWords(p.off(Surface.END_1), p.surplus())));
        });
        for (Surface surface : Surface.values()) {
            surface(lines, state, surface);
            struck.stream().filter(l -> l.on() == surface).forEach(l -> lines.add("  " + line(l)));
        }
        if (!readings(state).isEmpty()) {
            lines.add("");
            lines.add("What the tools read");
            lines.addAll(readings(state));
        }
        return String.join("\n", lines) + "\n";
    }

    private static String name(Scenario scenario, BoardState state) {
        if (state.setAside().isPresent()) {
            return "Set aside: " + state.setAside().get().because().spoken();
        }
        Optional<Part> part = state.named().flatMap(n -> scenario.drawing().part(n.part()));
        return part.map(p -> "Named " + p.name()).orElse("Not named yet");
    }

    private static void surface(List<String> lines, BoardState state, Surface surface) {
        lines.add("");
        lines.add(Words.capital(Words.surface(state, surface)));
        for (Mark mark : state.marks()) {
            if (mark.on() == surface) {
                lines.add("  " + mark.kind().spoken() + " mark, towards "
                        + mark.towards().spoken());
            }
        }
        for (Trace trace : state.board().traces(surface)) {
            lines.add("  " + Words.trace(state.board(), trace) + ", " + where(trace));
        }
    }

    /** {@code line across, 98 mm from end 1 at edge 1, 98.4 mm at edge 2}. */
    private static String line(TrueLine line) {
        String from = line.isSquared() ? " from end 1" : line.axis() == 1 ? " from edge 1" : " from face 2";
        String at = line.isSquared() ? "line across, " : "gauge line, ";
        if (Math.abs(line.lean()) < 0.05) return at + Reading.mm(line.middle()) + from;
        Surface low = Surface.on(line.runs(), -1);
        Surface high = Surface.on(line.runs(), +1);
        return at + Reading.mm(line.low()) + from + " at " + low.spoken() + ", " + Reading.mm(line.high()) + " at "
                + high.spoken();
    }

    private static String where(Trace trace) {
        String u = trace.surface().isEnd() ? " from edge 1, " : " from end 1, ";
        String v = trace.surface().isFace() ? " from edge 1" : " from face 2";
        return "middle " + Reading.mm(trace.middle().u()) + u
                + Reading.mm(trace.middle().v()) + v;
    }

    /** What the tools read on this board, the newest first, nothing twice. */
    static List<String> readings(BoardState state) {
        List<BoardState.Done<? extends Action>> done = new ArrayList<>();
        done.addAll(state.tests());
        done.addAll(state.measurements());
        done.sort((a, b) -> Integer.compare(b.step(), a.step()));
        return done.stream().map(d -> reading(state, d.action())).distinct().toList();
    }

    private static String reading(BoardState state, Action action) {
        if (action instanceof Action.Test test) return Reading.of(state, test);
        return action instanceof Action.Measure measure ? Reading.of(measure) : action.verb();
    }
}
