package org.marktwice.rulebook;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.marktwice.bench.Action;
import org.marktwice.fit.TrueLine;
import org.marktwice.fit.TrueLines;
import org.marktwice.scenario.Stage;
import org.marktwice.timber.Surface;

/**
 * Stock and fence bear on the face side or the face edge, on nothing else. One finding a board, about the line that is put
 * farthest out by it. Where it happens to put nothing out on this board it is still a bad habit: close.
 */
final class StockOnReference implements Rule {
    /** Nothing to speak of, millimetres. */
    private static final double HARMLESS = 0.05;

    private static final double LUCKY = 0.5;

    private record Astray(TrueLine line, Surface better, double out) {}

    @Override
    public String id() {
        return "stock-on-reference";
    }

    @Override
    public Stage stage() {
        return Stage.SETTING_OUT;
    }

    @Override
    public double worth() {
        return 2;
    }

    @Override
    public List<Finding> judge(Situation situation) {
        return SetBoard.judge(situation, this, "says.open", b -> List.of(finding(b)));
    }

    private Finding finding(SetBoard board) {
        if (board.out().lines().isEmpty()) return board.found(this).open("says.open-lines", "board", board.id());
        List<Astray> astray = board.out().lines().stream()
                .flatMap(l -> astray(board, l).stream())
                .toList();
        int all = board.out().lines().size();
        Optional<Astray> worst = astray.stream().max(Comparator.comparingDouble(Astray::out));
        if (worst.isEmpty()) {
            return board.found(this)
                    .at(board.lastLine())
                    .measured(0, "count", 0)
                    .sound("says.sound", "board", board.id(), "all", all);
        }
        return finding(board, worst.get(), astray.size(), all);
    }

    private Finding finding(SetBoard board, Astray worst, int count, int all) {
        TrueLine line = worst.line();
        Object[] values = {
            "board", board.id(),
            "count", count,
            "all", all,
            "on", line.on(),
            "stock", line.reference(),
            "better", worst.better(),
            "out", worst.out()
        };
        Found found = board.found(this)
                .at(line.step())
                .measured(worst.out(), "mm", HARMLESS)
                .showing(line.on(), line.reference())
                .showing(board.middle(line));
        boolean squared = line.isSquared();
        boolean bevelled = board.action(line) instanceof Action.Bevel;
        if (worst.out() <= HARMLESS) {
            return found.instead(bevelled ? "better.bevel" : squared ? "better.square" : "better.gauge", values)
                    .close(LUCKY, "says.close", values);
        }
        if (bevelled) return found.instead("better.bevel", values).wrong("says.wrong-bevel", values);
        return squared
                ? found.instead("better.square", values).wrong("says.wrong-square", values)
                : found.instead("better.gauge", values).wrong("says.wrong-gauge", values);
    }

    /** The line with what it is out for the surface that the tool bore on; empty where that was right. */
    private static Optional<Astray> astray(SetBoard board, TrueLine line) {
        if (board.references().contains(line.reference())) return Optional.empty();
        TrueLines lines = board.out().struck();
        Action.OnBoard action = board.action(line);
        Surface better = board.reference(line.on()).orElse(line.reference().opposite());
        if (action instanceof Action.Line l) {
            TrueLine right = lines.trial(
                    new Action.Line(l.t(), l.board(), l.on(), better, l.from(), l.at(), l.mate(), l.with()));
            return Optional.of(new Astray(line, better, Math.abs(line.lean() - right.lean())));
        }
        if (action instanceof Action.Bevel b) {
            // as much as a square would be out on that surface: so much is the angle
            double out = lines.trial(squared(b, b.stock())).lean()
                    - lines.trial(squared(b, better)).lean();
            return Optional.of(new Astray(line, better, Math.abs(out)));
        }
        Action.Gauge g = (Action.Gauge) action;
        boolean over = better == g.fence().opposite();
        double set = over ? board.board().size().along(g.fence().axis()) - g.set() : g.set();
        if (!over || !(set > 0)) return Optional.of(new Astray(line, better, 0));
        TrueLine right = lines.trial(new Action.Gauge(g.t(), g.board(), g.on(), better, set));
        double out = Math.max(Math.abs(line.low() - right.low()), Math.abs(line.high() - right.high()));
        return Optional.of(new Astray(line, better, out));
    }

    private static Action.Line squared(Action.Bevel b, Surface stock) {
        return new Action.Line(b.t(), b.board(), b.on(), stock, b.from(), b.at(), null, b.with());
    }
}
