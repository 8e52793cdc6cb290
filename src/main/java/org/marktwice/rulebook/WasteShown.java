package org.marktwice.rulebook;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.marktwice.bench.Action;
import org.marktwice.bench.BoardState.Done;
import org.marktwice.drawing.Joint;
import org.marktwice.fit.CutSide;
import org.marktwice.fit.SetOut;
import org.marktwice.fit.SetOut.Marked;
import org.marktwice.scenario.Stage;

/**
 * Every cut has its waste shaded, between its own lines. One finding a joint of a board; where holes are bored there is
 * nothing to shade.
 */
final class WasteShown implements Rule {
    /** A cut that comes this near to an end of the part runs out there, millimetres. */
    private static final double OUT = 0.01;

    @Override
    public String id() {
        return "waste-shown";
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
        SetOut nearest = board.out().nearest();
        for (String joint : board.joints()) {
            boolean holes = board.situation().scenario().drawing().joint(joint).orElseThrow() instanceof Joint.Dowelled;
            if (!holes && board.out().marked(joint).size() > 1) findings.add(finding(board, nearest, joint));
        }
        return findings;
    }

    private Finding finding(SetBoard board, SetOut nearest, String joint) {
        Found found = board.found(this, joint);
        List<Done<Action.Waste>> wastes = board.out().wastes(joint);
        if (wastes.isEmpty()) {
            return found.instead("better.shade", "joint", joint)
                    .open("says.open-waste", "board", board.id(), "joint", joint);
        }
        Set<Integer> own = own(board, nearest, joint);
        for (Done<Action.Waste> waste : wastes) {
            boolean right = own.isEmpty()
                    || own.contains(waste.action().between())
                            && own.contains(waste.action().and());
            if (right) continue;
            int stranger = own.contains(waste.action().between())
                    ? waste.action().and()
                    : waste.action().between();
            found.at(waste.step()).measured(1, "count", 0);
            board.out().lines().stream()
                    .filter(l -> l.step() == stranger)
                    .forEach(l -> found.showing(l.on()).showing(board.middle(l)));
            return found.instead("better.between", "joint", joint)
                    .wrong("says.wrong", "board", board.id(), "joint", joint, "step", stranger);
        }
        return found.at(wastes.get(wastes.size() - 1).step())
                .measured(0, "count", 0)
                .sound("says.sound", "board", board.id(), "joint", joint);
    }

    /** The steps of the lines that this waste may lie between; empty where only the shading itself says which these are. */
    private static Set<Integer> own(SetBoard board, SetOut nearest, String joint) {
        List<Marked> sides = nearest.marked(joint);
        if (sides.stream().anyMatch(m -> m.line() == null)) return Set.of();
        Set<Integer> own = new HashSet<>();
        for (Marked m : sides) own.addAll(board.struckFor(m));
        for (Marked end : nearest.marked()) {
            boolean runsOut = end.side().isEnd() && sides.stream().anyMatch(m -> reaches(m.side(), end.side()));
            if (runsOut) own.addAll(board.struckFor(end));
        }
        return own;
    }

    /** Whether a side of the cut runs out at the end at which the board is cut to length. */
    private static boolean reaches(CutSide side, CutSide end) {
        return side.axis() != 0
                && Math.min(
                                Math.abs(side.flat().min(0) - end.at()),
                                Math.abs(side.flat().max(0) - end.at()))
                        <= OUT;
    }
}
