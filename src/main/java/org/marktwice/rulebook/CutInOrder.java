package org.marktwice.rulebook;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.marktwice.bench.Action;
import org.marktwice.bench.Cutter;
import org.marktwice.bench.Marker;
import org.marktwice.drawing.Joint;
import org.marktwice.fit.SetOut.Marked;
import org.marktwice.fit.TrueLine;
import org.marktwice.scenario.Stage;

/**
 * Everything is set out before anything is cut, in knife lines where a saw or a chisel works to them; what is sawn is sawn
 * before the chisel takes out the rest. One finding a board on which any cut was decided, about the first that came too
 * early. Where nothing was to be cut there is nothing to judge.
 */
final class CutInOrder implements Rule {
    private static final double UNSHADED = 0.5;

    @Override
    public String id() {
        return "cut-in-order";
    }

    @Override
    public Stage stage() {
        return Stage.SETTING_OUT;
    }

    @Override
    public double worth() {
        return 0.5;
    }

    @Override
    public List<Finding> judge(Situation situation) {
        List<Finding> findings = new ArrayList<>();
        for (SetBoard board : SetBoard.all(situation)) {
            List<Sawn> cuts = Sawn.on(board);
            if (!cuts.isEmpty()) findings.add(finding(board, cuts));
        }
        return findings;
    }

    private Finding finding(SetBoard board, List<Sawn> cuts) {
        int first = cuts.get(0).step();
        Optional<Marked> late = board.out().marked().stream()
                .filter(m -> m.struck().filter(l -> l.step() < first).isEmpty())
                .findFirst();
        if (late.isPresent()) {
            return found(board, cuts.get(0)).instead("better.all").wrong("says.wrong-early", "board", board.id());
        }
        Optional<Sawn> pencilled =
                cuts.stream().filter(c -> isPencilled(board, c)).findFirst();
        if (pencilled.isPresent()) {
            return found(board, pencilled.get())
                    .instead("better.knife")
                    .wrong("says.wrong-pencil", values(board, pencilled.get()));
        }
        Optional<Sawn> chiselled =
                cuts.stream().filter(c -> isChiselledFirst(board, c, cuts)).findFirst();
        if (chiselled.isPresent()) {
            return found(board, chiselled.get())
                    .instead("better.saw")
                    .wrong("says.wrong-chisel", values(board, chiselled.get()));
        }
        Optional<Sawn> unshaded =
                cuts.stream().filter(c -> isUnshaded(board, c)).findFirst();
        if (unshaded.isPresent()) {
            return found(board, unshaded.get())
                    .instead("better.shade")
                    .close(UNSHADED, "says.close", values(board, unshaded.get()));
        }
        return board.found(this).at(first).measured(0, "count", 0).sound("says.sound", "board", board.id());
    }

    private Found found(SetBoard board, Sawn cut) {
        Found found = board.found(this).at(cut.step()).measured(1, "count", 0);
        cut.line().ifPresent(l -> found.showing(l.on()).showing(board.middle(l)));
        return found;
    }

    private static Object[] values(SetBoard board, Sawn cut) {
        return new Object[] {
            "board",
            board.id(),
            "tool",
            cut.cut().with().spoken(),
            "step",
            cut.cut().step(),
            "joint",
            cut.joint().orElse("")
        };
    }

    /** Whether no knife line stands where it runs. A gauge scores its own line. */
    private static boolean isPencilled(SetBoard board, Sawn cut) {
        Set<Integer> here = new HashSet<>(cut.of().map(board::struckFor).orElse(List.of()));
        here.add(cut.cut().step());
        return board.out().lines().stream()
                .filter(l -> here.contains(l.step()))
                .map(l -> marker(board, l))
                .noneMatch(m -> m == Marker.KNIFE);
    }

    private static Marker marker(SetBoard board, TrueLine line) {
        Action.OnBoard action = board.action(line);
        if (action instanceof Action.Line l) return l.with();
        if (action instanceof Action.Bevel b) return b.with();
        return Marker.KNIFE;
    }

    /** Whether the chisel is at a joint that a saw should have been at before it. */
    private static boolean isChiselledFirst(SetBoard board, Sawn cut, List<Sawn> cuts) {
        if (cut.cut().with() != Cutter.CHISEL || cut.joint().isEmpty()) return false;
        Joint joint = joint(board, cut.joint().get());
        boolean receives = joint.in().equals(board.part().id());
        // a mortise is chopped and a stopped housing begun with the chisel: no saw comes in there
        if (receives && (joint instanceof Joint.MortiseTenon || joint instanceof Joint.StoppedHousing)) return false;
        return cuts.stream()
                .filter(c -> c.joint().equals(cut.joint()) && c.step() < cut.step())
                .noneMatch(c -> c.cut().with() == Cutter.SAW);
    }

    private static Joint joint(SetBoard board, String id) {
        return board.situation().scenario().drawing().joint(id).orElseThrow();
    }

    /** Whether the waste that it runs in had not been shaded, where there is any to be shaded. */
    private static boolean isUnshaded(SetBoard board, Sawn cut) {
        if (cut.joint().isEmpty()) return false;
        String id = cut.joint().get();
        boolean shades = !(joint(board, id) instanceof Joint.Dowelled)
                && board.out().marked(id).size() > 1;
        return shades && board.out().wastes(id).stream().noneMatch(w -> w.step() < cut.step());
    }
}
