package org.marktwice.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.marktwice.advice.Option;
import org.marktwice.advice.Options;
import org.marktwice.bench.Action;
import org.marktwice.bench.BoardState;
import org.marktwice.bench.Reason;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.PartStuff;
import org.marktwice.drawing.Placing;
import org.marktwice.drawing.Turn;
import org.marktwice.scenario.Stage;
import org.marktwice.timber.Board;

/** A usable board refused, and a hopeless one used. */
final class RefusalSlips {
    private RefusalSlips() {}

    static List<Slipped> all(Slipping s) {
        if (!s.situation().asks(Stage.TURNS)) return List.of();
        List<Slipped> all = new ArrayList<>();
        s.lies().filter(l -> s.situation().judged(l.placing()).clear()).forEach(l -> all.add(refused(s, l.placing())));
        for (BoardState aside : s.situation().bench().boards()) {
            if (aside.setAside().isEmpty() || serves(s, aside.board())) continue;
            s.lies()
                    .filter(l -> couldBe(aside.board(), l.placing().part()))
                    .forEach(l -> all.add(used(s, aside.board(), l.placing())));
        }
        return all;
    }

    /** Refused for a knot that it doesn't have in every turn; another board goes in its place where one is free and serves. */
    private static Slipped refused(Slipping s, Placing lies) {
        String board = lies.board().id();
        List<BoardWork.Step> steps = new ArrayList<>();
        steps.add(t -> new Action.SetAside(t, board, Reason.KNOT_IN_EVERY_TURN));
        Optional<Placing> other = free(s, lies.part()).map(Option::placing);
        other.ifPresent(p -> steps.addAll(BoardWork.on(p, s.situation().scenario())));
        String[] others = other.stream().map(p -> p.board().id()).toArray(String[]::new);
        Rewriting rewritten = new Rewriting(s.good()).instead(Rewriting.on(board), steps);
        return s.made(Slip.REFUSED_OR_USED_WRONGLY, board, new RefusalJustified(), rewritten, others);
    }

    private static Optional<Option> free(Slipping s, Part part) {
        return s.situation().bench().boards().stream()
                .filter(b -> b.named().isEmpty() && b.setAside().isEmpty())
                .flatMap(b -> s.situation().best(b.board(), part).stream())
                .filter(Option::clear)
                .findFirst();
    }

    private static boolean serves(Slipping s, Board board) {
        return s.situation().scenario().drawing().parts().stream()
                .flatMap(p -> s.situation().best(board, p).stream())
                .anyMatch(Option::clear);
    }

    /** Whether someone might take it for the part's: its stuff, and long enough. */
    private static boolean couldBe(Board board, Part part) {
        return board.isSheet() == (part.stuff() == PartStuff.SHEET)
                && board.size().length() >= part.size().length();
    }

    /** The hopeless board laid in the part, its own one left on the rack. */
    private static Slipped used(Slipping s, Board hopeless, Placing instead) {
        Part part = instead.part();
        List<Turn> allowed = Options.turns(hopeless, part);
        Option best = (allowed.isEmpty() ? Turn.in(part, false) : allowed)
                .stream()
                        .map(t -> Options.best(s.situation().scenario(), hopeless, part, t))
                        .reduce((a, b) -> b.betterThan(a) ? b : a)
                        .orElseThrow();
        List<String> boards = List.of(instead.board().id(), hopeless.id());
        return s.made(
                Slip.REFUSED_OR_USED_WRONGLY,
                hopeless.id(),
                new RefusalJustified(),
                s.worked(best.placing(), boards),
                instead.board().id());
    }
}
