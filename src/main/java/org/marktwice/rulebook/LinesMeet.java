package org.marktwice.rulebook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.marktwice.fit.SetOut.Marked;
import org.marktwice.fit.TrueLine;
import org.marktwice.scenario.Stage;
import org.marktwice.timber.Surface;

/**
 * A line squared round meets itself at every arris, within 0.3 mm. One finding a board, about the arris where lines miss
 * each other most.
 */
final class LinesMeet implements Rule {
    /** What a knife point's breadth and a pencil's width hide, millimetres. */
    private static final double LIMIT = 0.3;

    private static final double CLOSE = 0.5;

    /** Two lines for one side, on adjoining surfaces, and by how much they miss each other at the arris. */
    private record Meeting(TrueLine one, TrueLine other, double miss) {}

    @Override
    public String id() {
        return "lines-meet";
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
        List<Marked> round = board.out().marked().stream()
                .filter(m -> m.side().isSquared() && m.side().waste() != 0)
                .filter(m -> m.side().shows().size() > 1)
                .toList();
        return round.isEmpty() ? List.of() : List.of(finding(board, round));
    }

    private Finding finding(SetBoard board, List<Marked> round) {
        Found found = board.found(this);
        List<Meeting> meetings =
                round.stream().flatMap(m -> meetings(m).stream()).toList();
        Optional<Meeting> worst = meetings.stream().max(Comparator.comparingDouble(Meeting::miss));
        boolean whole = round.stream()
                .allMatch(m -> m.round().stream()
                        .map(TrueLine::on)
                        .toList()
                        .containsAll(m.side().shows()));
        if (worst.isEmpty() || !whole && worst.get().miss() <= LIMIT) {
            return found.open("says.open-lines", "board", board.id());
        }
        Meeting w = worst.get();
        Object[] values = {
            "board", board.id(),
            "miss", w.miss(),
            "limit", LIMIT,
            "one", w.one().on(),
            "other", w.other().on(),
            "stock", w.other().reference()
        };
        found.at(Math.max(w.one().step(), w.other().step()))
                .measured(w.miss(), "mm", LIMIT)
                .showing(w.one().on(), w.other().on())
                .showing(board.middle(w.one()), board.middle(w.other()))
                .instead("better.round", values);
        if (w.miss() <= LIMIT) return found.sound("says.sound", values);
        return w.miss() <= 2 * LIMIT ? found.close(CLOSE, "says.close", values) : found.wrong("says.wrong", values);
    }

    private static List<Meeting> meetings(Marked marked) {
        List<Meeting> all = new ArrayList<>();
        for (TrueLine one : marked.round()) {
            for (TrueLine other : marked.round()) {
                Surface a = one.on();
                Surface b = other.on();
                if (a.compareTo(b) < 0 && a.adjoins(b)) {
                    all.add(new Meeting(one, other, Math.abs(one.at(b) - other.at(a))));
                }
            }
        }
        return all;
    }
}
