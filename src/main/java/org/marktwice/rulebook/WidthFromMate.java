package org.marktwice.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.marktwice.bench.Action;
import org.marktwice.bench.BoardState;
import org.marktwice.drawing.Joint;
import org.marktwice.drawing.Part;
import org.marktwice.fit.SetOut.Marked;
import org.marktwice.fit.TrueLine;
import org.marktwice.fit.TrueLines;
import org.marktwice.scenario.Stage;

/**
 * What receives a mate between two shoulders is as wide as that very mate: the second line was struck from it, or agrees
 * with its actual size. One finding a joint of a board.
 */
final class WidthFromMate implements Rule {
    private static final double SAME = 1e-6;
    /** Agrees with the mate, of the gap that is allowed. */
    private static final double AGREES = 0.25;

    private static final double CLOSE = 0.5;

    @Override
    public String id() {
        return "width-from-mate";
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
            List<Marked> squared = board.out().marked(joint).stream()
                    .filter(m -> m.side().isSquared() && m.side().waste() != 0)
                    .toList();
            mate(board, joint, squared).ifPresent(mate -> findings.add(finding(board, joint, squared, mate)));
        }
        return findings;
    }

    /** The part that lies between the two shoulders as it is; empty where it is itself cut there. */
    private static Optional<Part> mate(SetBoard board, String id, List<Marked> squared) {
        if (squared.size() != 2) return Optional.empty();
        var drawing = board.situation().scenario().drawing();
        Joint joint = drawing.joint(id).orElseThrow();
        String other = joint.in().equals(board.part().id()) ? joint.takes() : joint.in();
        Part mate = drawing.part(other).orElseThrow();
        double wide =
                Math.abs(squared.get(1).side().at() - squared.get(0).side().at());
        return Math.abs(wide - mate.box().extent(board.part().length().ordinal())) < SAME
                ? Optional.of(mate)
                : Optional.empty();
    }

    private Finding finding(SetBoard board, String joint, List<Marked> squared, Part mate) {
        Found found = board.found(this, joint);
        List<BoardState> mates = board.situation().bench().namedAs(mate);
        Optional<TrueLine> one = squared.get(0).struck();
        Optional<TrueLine> other = squared.get(1).struck();
        if (mates.isEmpty() || one.isEmpty() || other.isEmpty()) {
            return found.open("says.open-lines", "board", board.id(), "joint", joint, "mate", mate.id());
        }
        String mateBoard = mates.get(0).board().id();
        double actual = TrueLines.mate(board.situation().bench(), board.board(), mateBoard);
        double wide = Math.abs(other.get().measured() - one.get().measured());
        double out = Math.abs(wide - actual);
        double limit = board.situation().practice().gap();
        boolean struck = isFrom(board, one.get(), mateBoard) || isFrom(board, other.get(), mateBoard);
        Object[] values = {
            "board",
            board.id(),
            "joint",
            joint,
            "mate",
            mate.id(),
            "mateBoard",
            mateBoard,
            "wide",
            wide,
            "actual",
            actual,
            "out",
            out
        };
        found.at(Math.max(one.get().step(), other.get().step()))
                .measured(out, "mm", limit * AGREES)
                .showing(other.get().on())
                .showing(board.middle(one.get()), board.middle(other.get()))
                .instead("better.mate", values);
        if (struck && out <= limit * AGREES) return found.sound("says.sound-mate", values);
        if (out <= limit * AGREES) return found.sound("says.sound", values);
        if (out <= limit / 2) return found.close(CLOSE, "says.close", values);
        return wide > actual ? found.wrong("says.wrong-wide", values) : found.wrong("says.wrong-tight", values);
    }

    private static boolean isFrom(SetBoard board, TrueLine line, String mate) {
        return board.action(line) instanceof Action.Line l && mate.equals(l.mate());
    }
}
