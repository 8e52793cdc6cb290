package org.marktwice.quiz;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.marktwice.bench.BoardState;
import org.marktwice.bench.Mark;
import org.marktwice.picture.BoardPicture;
import org.marktwice.picture.Ink;
import org.marktwice.rulebook.Finding.Evidence;
import org.marktwice.timber.Board;
import org.marktwice.timber.Chance;
import org.marktwice.timber.Size;
import org.marktwice.timber.Surface;

/** Four boards with two marks each: which is a proper pair? Slips: tail or point to the wrong arris, marks changed about. */
final class ProperPair implements Maker {
    @Override
    public Kind kind() {
        return Kind.PROPER_PAIR;
    }

    @Override
    public Question.Draft make(int level, Chance chance) {
        Board board = Boards.of(chance, shortSize(chance), 0.3).next();
        List<Offer> wrong = new ArrayList<>();
        for (int slip = 0; slip < 4; slip++) wrong.add(slipped(board, slip, lies(level, chance)));
        // the harder slips are those where only one of the two marks is wrong
        if (level == 1) Collections.swap(wrong, 0, 2 + chance.whole(0, 1));
        else if (chance.with(0.5)) Collections.swap(wrong, 2, 3);
        Boards.Pair proper = lies(level, chance);
        List<Offer> offers = new ArrayList<>();
        offers.add(
                offer(board, proper, proper.side(), proper.edge(), "Both marks point at the arris that they share."));
        offers.addAll(wrong.subList(0, 3));
        BoardPicture why = BoardPicture.of(proper.on(board), null)
                .evidence(Evidence.on(proper.side().on(), proper.edge().on()), Ink.SOUND);
        return new Question.Draft(
                Say.of("Board %s, marked in four ways. Each carries a loop and a V.", board.id()),
                "Which is a proper pair of marks?",
                Answers.choose(chance, offers),
                Picture.Beside.NOTHING,
                new Question.Reason(
                        Say.of(
                                "The loop stands on a broad face and the V on an edge, and tail and point both run to the"
                                        + " arris between %s and %s. From that arris everything is set out.",
                                proper.side().on().spoken(), proper.edge().on().spoken()),
                        Picture.Lying.showing(
                                why, proper.side().on(), proper.edge().on())));
    }

    /** So short that both marks are large in a small picture. */
    private static Size shortSize(Chance chance) {
        return new Size(10 * chance.whole(14, 18), 5 * chance.whole(14, 20), chance.whole(20, 28));
    }

    /** The surfaces that lie up and in front in one of the pictures. */
    private static Boards.Pair lies(int level, Chance chance) {
        return level == 1 ? Boards.pair(Surface.FACE_1, Surface.EDGE_1) : Boards.anyPair(chance);
    }

    private static Offer slipped(Board board, int slip, Boards.Pair lies) {
        Mark side = lies.side();
        Mark edge = lies.edge();
        Mark tailAway = new Mark(Mark.Kind.FACE_SIDE, side.on(), side.towards().opposite(), 1);
        Mark pointAway = new Mark(Mark.Kind.FACE_EDGE, edge.on(), edge.towards().opposite(), 2);
        return switch (slip) {
            case 0 -> offer(board, lies, tailAway, edge, "The loop's tail runs off at the wrong arris.");
            case 1 -> offer(board, lies, side, pointAway, "The V's point touches the wrong arris.");
            case 2 ->
                offer(
                        board,
                        lies,
                        tailAway,
                        pointAway,
                        "Neither mark points at the arris that the two surfaces share.");
            default ->
                offer(
                        board,
                        lies,
                        new Mark(Mark.Kind.FACE_SIDE, edge.on(), edge.towards(), 1),
                        new Mark(Mark.Kind.FACE_EDGE, side.on(), side.towards(), 2),
                        "The marks are changed about: the loop belongs on a broad face, the V on an edge.");
        };
    }

    private static Offer offer(Board board, Boards.Pair lies, Mark side, Mark edge, String because) {
        BoardState state = Boards.marked(board, side, edge);
        return Offer.drawn(
                Say.capital(Say.mark(side)) + "; " + Say.mark(edge),
                because,
                Picture.Lying.showing(
                                BoardPicture.of(state, null),
                                lies.side().on(),
                                lies.edge().on())
                        .unnamed());
    }
}
