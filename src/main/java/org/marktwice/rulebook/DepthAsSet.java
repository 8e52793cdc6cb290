package org.marktwice.rulebook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.marktwice.bench.Action;
import org.marktwice.drawing.Joint;
import org.marktwice.drawing.Part;
import org.marktwice.fit.SetOut.Marked;
import org.marktwice.fit.TrueLine;
import org.marktwice.scenario.Proportions;
import org.marktwice.scenario.Proportions.Proportion;
import org.marktwice.scenario.Proportions.Range;
import org.marktwice.scenario.Stage;

/**
 * Gauge lines lie as deep as the joint wants, set from the surface that the drawing makes flush: within half the size
 * tolerance sound, within it close; farther out still close where a housing or rebate is as deep as the workshop's
 * proportions accept. One finding a joint of a board, about the line that is farthest out.
 */
final class DepthAsSet implements Rule {
    private static final double CLOSE = 0.5;

    @Override
    public String id() {
        return "depth-as-set";
    }

    @Override
    public Stage stage() {
        return Stage.SETTING_OUT;
    }

    @Override
    public double worth() {
        return 1;
    }

    @Override
    public List<Finding> judge(Situation situation) {
        return SetBoard.judge(situation, this, "says.open", this::findings);
    }

    private List<Finding> findings(SetBoard board) {
        List<Finding> findings = new ArrayList<>();
        for (String joint : board.joints()) {
            List<Marked> gauged = board.out().marked(joint).stream()
                    .filter(m -> !m.side().isSquared())
                    .toList();
            if (!gauged.isEmpty()) findings.add(finding(board, joint, gauged));
        }
        return findings;
    }

    private Finding finding(SetBoard board, String joint, List<Marked> gauged) {
        Found found = board.found(this, joint);
        Optional<Marked> worst =
                gauged.stream().filter(m -> m.line() != null).max(Comparator.comparingDouble(m -> Math.abs(out(m))));
        double tolerance = board.situation().practice().size();
        boolean missing = gauged.stream().anyMatch(m -> m.line() == null);
        if (worst.isEmpty() || missing && Math.abs(out(worst.get())) <= tolerance) {
            return found.open("says.open-lines", "board", board.id(), "joint", joint);
        }
        Optional<Marked> back = gauged.stream()
                .filter(m -> m.struck()
                        .filter(l -> !board.references().contains(l.reference()))
                        .isPresent())
                .findFirst();
        return back.isPresent() ? fromBack(board, joint, found, back.get()) : finding(board, joint, found, worst.get());
    }

    private Finding finding(SetBoard board, String joint, Found found, Marked worst) {
        TrueLine line = worst.struck().orElseThrow();
        double out = Math.abs(out(worst));
        double tolerance = board.situation().practice().size();
        double set = board.action(line) instanceof Action.Gauge g ? g.set() : 0;
        Object[] values = {
            "board",
            board.id(),
            "joint",
            joint,
            "set",
            set,
            "wanted",
            wanted(board, worst, line),
            "fence",
            line.reference(),
            "out",
            out
        };
        found.at(line.step())
                .measured(out, "mm", tolerance / 2)
                .showing(line.on())
                .showing(board.middle(line))
                .instead("better.set", values);
        if (out <= tolerance / 2) return found.sound("says.sound", values);
        if (out <= tolerance) return found.close(CLOSE, "says.close", values);
        Optional<Range> holds = accepted(board, joint);
        if (holds.isEmpty()) return found.wrong("says.wrong", values);
        return byProportion(board, joint, found, worst, holds.get(), values);
    }

    /** Not as drawn, but it may still hold: a depth within the workshop's proportions is close. */
    private static Finding byProportion(
            SetBoard board, String joint, Found found, Marked worst, Range holds, Object[] values) {
        Part part = board.placing().part();
        double drawn = board.situation()
                .scenario()
                .drawing()
                .overlap(joint(board, joint))
                .orElseThrow()
                .extent(part.thickness().ordinal());
        double depth = drawn - worst.side().waste() * out(worst);
        Object[] more = Stream.of(values, new Object[] {"depth", depth, "least", holds.least(), "most", holds.most()})
                .flatMap(Stream::of)
                .toArray();
        return depth >= holds.least() && depth <= holds.most()
                ? found.close(CLOSE, "says.close-holds", more)
                : found.wrong("says.wrong-depth", more);
    }

    private static Joint joint(SetBoard board, String joint) {
        return board.situation().scenario().drawing().joint(joint).orElseThrow();
    }

    /** The depths that the workshop accepts, of a housing or rebate that is cut into this board. */
    private static Optional<Range> accepted(SetBoard board, String joint) {
        Joint drawn = joint(board, joint);
        if (!drawn.in().equals(board.part().id())) return Optional.empty();
        return board
                .situation()
                .practice()
                .proportions()
                .of(board.situation().scenario().drawing(), drawn)
                .stream()
                .filter(p -> p.of() == Proportions.Of.HOUSING_DEPTH || p.of() == Proportions.Of.REBATE_DEPTH)
                .map(Proportion::usual)
                .findFirst();
    }

    /** Gauged from a back: what is out shows as a step. */
    private Finding fromBack(SetBoard board, String joint, Found found, Marked back) {
        TrueLine line = back.struck().orElseThrow();
        double out = Math.abs(out(back));
        Object[] values = {
            "board", board.id(),
            "joint", joint,
            "fence", line.reference(),
            "better", line.reference().opposite(),
            "wanted", size(board, back, line.reference().opposite().sign(), line.axis()),
            "out", out
        };
        return found.at(line.step())
                .measured(out, "mm", board.situation().practice().size() / 2)
                .showing(line.on(), line.reference())
                .showing(board.middle(line))
                .instead("better.fence", values)
                .wrong("says.wrong-back", values);
    }

    /** How far the line is out where it is farthest. */
    private static double out(Marked marked) {
        double at = marked.side().at();
        return marked.struck()
                .map(l -> Math.abs(l.low() - at) > Math.abs(l.high() - at) ? l.low() - at : l.high() - at)
                .orElse(0.0);
    }

    private static double wanted(SetBoard board, Marked marked, TrueLine line) {
        return size(board, marked, line.reference().sign(), line.axis());
    }

    /** From the surface on one side of the board to where the line should be. */
    private static double size(SetBoard board, Marked marked, int sign, int axis) {
        double from = sign > 0 ? board.board().size().along(axis) : 0;
        return Math.abs(from - marked.side().at());
    }
}
