package org.marktwice.rulebook;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.marktwice.bench.Marker;
import org.marktwice.fit.SetOut.Marked;
import org.marktwice.rulebook.SetBoard.Squared;
import org.marktwice.scenario.Stage;

/**
 * Knife where a saw or a chisel works to the line, pencil where the line stays on the finished job. One finding a board.
 */
final class KnifeAndPencil implements Rule {
    @Override
    public String id() {
        return "knife-and-pencil";
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
        return SetBoard.judge(situation, this, "says.open", b -> List.of(finding(b)));
    }

    private Finding finding(SetBoard board) {
        List<Squared> squared = board.squared();
        if (squared.isEmpty()) return board.found(this).open("says.open-lines", "board", board.id());
        Set<Integer> cut = new HashSet<>();
        Set<Integer> holes = new HashSet<>();
        for (Marked m : board.out().marked()) {
            (m.side().waste() == 0 ? holes : cut).addAll(board.struckFor(m));
        }
        List<Squared> pencil = squared.stream()
                .filter(s -> s.action().with() == Marker.PENCIL
                        && cut.contains(s.line().step()))
                .toList();
        List<Squared> knife = squared.stream()
                .filter(s -> s.action().with() == Marker.KNIFE
                        && !cut.contains(s.line().step())
                        && !holes.contains(s.line().step()))
                .toList();
        if (!pencil.isEmpty()) return wrong(board, pencil, "says.wrong-pencil", "better.knife");
        if (!knife.isEmpty()) return wrong(board, knife, "says.wrong-knife", "better.pencil");
        return board.found(this).at(board.lastLine()).measured(0, "count", 0).sound("says.sound", "board", board.id());
    }

    private Finding wrong(SetBoard board, List<Squared> lines, String says, String better) {
        Squared first = lines.get(0);
        return board.found(this)
                .at(first.line().step())
                .measured(lines.size(), "count", 0)
                .showing(first.line().on())
                .showing(board.middle(first.line()))
                .instead(better, "on", first.line().on())
                .wrong(
                        says,
                        "board",
                        board.id(),
                        "count",
                        lines.size(),
                        "on",
                        first.line().on());
    }
}
