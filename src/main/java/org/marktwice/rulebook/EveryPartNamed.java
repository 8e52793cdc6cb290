package org.marktwice.rulebook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.marktwice.advice.Option;
import org.marktwice.bench.BoardState;
import org.marktwice.drawing.Part;
import org.marktwice.rulebook.Finding.Subject;
import org.marktwice.scenario.Stage;

/**
 * Each part has one board; sheet and shaped parts too. That a board carries at most one name follows from the bench: a
 * new name replaces the one before. A part may wait for a better rack once every board left over has been set aside and
 * no more parts can be supplied clear.
 */
final class EveryPartNamed implements Rule {
    @Override
    public String id() {
        return "every-part-named";
    }

    @Override
    public Stage stage() {
        return Stage.NAMES;
    }

    @Override
    public double worth() {
        return 1;
    }

    @Override
    public List<Finding> judge(Situation situation) {
        List<Part> parts = situation.scenario().drawing().parts();
        long supplied = parts.stream().filter(situation.bench()::isNamed).count();
        boolean waits = supplied < parts.size() && Workpiece.waitsForBetterRack(situation, (int) supplied);
        return parts.stream().map(p -> judge(situation, p, waits)).toList();
    }

    private Finding judge(Situation situation, Part part, boolean waits) {
        List<BoardState> boards = new ArrayList<>(situation.bench().namedAs(part));
        if (boards.isEmpty()) {
            Found found = Found.by(this, Subject.part(part.id())).measured(0, "count", 1);
            return waits
                    ? found.at(lastSetAside(situation)).sound("says.waits", "part", part.id())
                    : found.open("says.none", "part", part.id());
        }
        boards.sort(Comparator.comparingInt(EveryPartNamed::namedAt));
        BoardState last = boards.get(boards.size() - 1);
        Found found = Found.by(this, Subject.boardAs(last.board().id(), part.id()))
                .at(namedAt(last))
                .measured(boards.size(), "count", 1);
        last.named().ifPresent(n -> found.showing(n.at().surface()).showing(n.at()));
        if (boards.size() == 1) {
            return found.sound("says.sound", "board", last.board().id(), "part", part.id());
        }
        BoardState keep = boards.stream()
                .reduce((a, b) -> serves(situation, b, part, a) ? b : a)
                .orElseThrow();
        List<String> others =
                boards.stream().filter(b -> b != keep).map(b -> b.board().id()).toList();
        return found.instead(
                        "better.keep",
                        "keep",
                        keep.board().id(),
                        "others",
                        others,
                        "n",
                        others.size(),
                        "part",
                        part.id())
                .wrong(
                        "says.several",
                        "boards",
                        boards.stream().map(b -> b.board().id()).toList(),
                        "part",
                        part.id());
    }

    /** Whether a board serves the part better than another one. */
    private static boolean serves(Situation situation, BoardState board, Part part, BoardState than) {
        Optional<Option> one = situation.best(board.board(), part);
        Optional<Option> other = situation.best(than.board(), part);
        return one.isPresent() && (other.isEmpty() || one.get().betterThan(other.get()));
    }

    private static int namedAt(BoardState board) {
        return board.named().map(BoardState.Named::step).orElse(0);
    }

    private static int lastSetAside(Situation situation) {
        return situation.bench().boards().stream()
                .flatMap(b -> b.setAside().stream())
                .mapToInt(BoardState.Aside::step)
                .max()
                .orElse(0);
    }
}
