package org.marktwice.quiz;

import java.util.ArrayList;
import java.util.List;
import org.marktwice.bench.Mark;
import org.marktwice.picture.BoardPicture;
import org.marktwice.picture.Ink;
import org.marktwice.rulebook.Finding.Evidence;
import org.marktwice.timber.Board;
import org.marktwice.timber.Chance;

/** One mark is on the board: on which surface does the other belong? Slips: no shared arris, the arris at the other side. */
final class MarkTail implements Maker {
    @Override
    public Kind kind() {
        return Kind.MARK_TAIL;
    }

    @Override
    public Question.Draft make(int level, Chance chance) {
        Board board = Boards.of(chance, Boards.anySize(chance), 0.4).next();
        Boards.Pair pair = Boards.anyPair(chance);
        boolean sideGiven = level == 1 || level == 2 && chance.with(0.7) || level == 3 && chance.with(0.4);
        Mark mark = sideGiven ? pair.side() : pair.edge();
        BoardPicture shown = BoardPicture.of(Boards.marked(board, mark), null);
        String other = sideGiven ? "face edge" : "face side";
        List<Offer> offers = new ArrayList<>();
        offers.add(Offer.at(mark.towards(), "The mark points at the arris that it shares with this surface."));
        offers.add(Offer.at(
                mark.towards().opposite(),
                Say.of(
                        "The mark points away from %s: its tail or point would have to run to the other arris.",
                        mark.towards().opposite().spoken())));
        offers.add(Offer.at(
                mark.on().opposite(),
                Say.of(
                        "%s and %s share no arris.",
                        Say.capital(mark.on().opposite().spoken()), mark.on().spoken())));
        offers.add(Offer.at(
                mark.on(),
                Say.of(
                        "%s is the surface marked already.",
                        Say.capital(mark.on().spoken()))));
        String asks = Say.of("On which surface does the %s belong, by the mark that is on the board?", other);
        BoardPicture both =
                BoardPicture.of(pair.on(board), null).evidence(Evidence.on(mark.towards(), mark.on()), Ink.SOUND);
        String why = Say.of(
                "The %s on %s points at the arris that it shares with %s. That arris is where the two proved surfaces"
                        + " meet, so the %s belongs on %s.",
                mark.kind() == Mark.Kind.FACE_SIDE ? "loop's tail" : "V",
                mark.on().spoken(),
                mark.towards().spoken(),
                other,
                mark.towards().spoken());
        return new Question.Draft(
                Say.of("Board %s carries one mark: %s.", board.id(), Say.mark(mark)),
                Say.of("Board %s carries one mark.", board.id()),
                asks,
                Answers.point(offers),
                new Picture.Unrolled(shown),
                new Question.Reason(
                        why,
                        Picture.Lying.showing(
                                both, pair.side().on(), pair.edge().on())));
    }
}
