package org.marktwice.rulebook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.marktwice.bench.CutAt;
import org.marktwice.scenario.Stage;

/**
 * Saw and chisel run in the waste and leave the line. One finding a board on which any cut was decided, about the one that
 * takes most: with the saw on the line half its kerf goes, which is close. Where nothing was to be cut there is nothing to
 * judge.
 */
final class CutOnWasteSide implements Rule {
    private static final double ON_THE_LINE = 0.5;

    @Override
    public String id() {
        return "cut-on-waste-side";
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
        List<Finding> findings = new ArrayList<>();
        for (SetBoard board : SetBoard.all(situation)) {
            List<Sawn> cuts = Sawn.on(board);
            if (!cuts.isEmpty()) findings.add(finding(board, cuts));
        }
        return findings;
    }

    private Finding finding(SetBoard board, List<Sawn> cuts) {
        Optional<Sawn> stray = cuts.stream().filter(c -> c.of().isEmpty()).findFirst();
        Sawn worst = stray.orElseGet(
                () -> cuts.stream().max(Comparator.comparingDouble(Sawn::lost)).orElseThrow());
        Object[] values = {
            "board", board.id(),
            "all", cuts.size(),
            "tool", worst.cut().with().spoken(),
            "step", worst.cut().step(),
            "lost", worst.lost()
        };
        Found found = board.found(this).at(worst.step()).measured(worst.lost(), "mm", 0);
        worst.line().ifPresent(l -> found.showing(l.on()).showing(board.middle(l)));
        if (stray.isPresent()) return found.instead("better.own", values).wrong("says.wrong-stray", values);
        found.instead("better.waste", values);
        return switch (worst.lost() == 0 ? CutAt.WASTE : worst.cut().side()) {
            case WASTE -> found.sound("says.sound", values);
            case LINE -> found.close(ON_THE_LINE, "says.close", values);
            case KEPT -> found.wrong("says.wrong", values);
        };
    }
}
