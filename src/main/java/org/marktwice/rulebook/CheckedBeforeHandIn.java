package org.marktwice.rulebook;

import java.util.List;
import java.util.Optional;
import org.marktwice.bench.BoardState.Done;
import org.marktwice.scenario.Stage;

/**
 * Each part is measured once more after its last line. Wrong once it has been handed in without that. One finding a board.
 */
final class CheckedBeforeHandIn implements Rule {
    @Override
    public String id() {
        return "checked-before-hand-in";
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
        int last = board.lastLine();
        if (last == 0) return board.found(this).open("says.open-lines", "board", board.id());
        Optional<Integer> check = board.lying().state().measurements().stream()
                .map(Done::step)
                .filter(step -> step > last)
                .findFirst();
        Found found = board.found(this).at(check.orElse(last)).instead("better.check", "board", board.id());
        board.out().lines().stream()
                .filter(l -> l.step() == last)
                .forEach(l -> found.showing(l.on()).showing(board.middle(l)));
        if (check.isPresent()) return found.sound("says.sound", "board", board.id());
        return board.situation().bench().handedIn()
                ? found.wrong("says.wrong", "board", board.id())
                : found.open("says.open-check", "board", board.id());
    }
}
