package org.marktwice.quiz;

import java.util.ArrayList;
import java.util.List;
import org.marktwice.picture.BoardPicture;
import org.marktwice.picture.Ink;
import org.marktwice.picture.Pointed;
import org.marktwice.rulebook.Finding.Evidence;
import org.marktwice.timber.Board;
import org.marktwice.timber.Chance;
import org.marktwice.timber.Shape;
import org.marktwice.timber.Surface;

/** A line is to be squared or gauged on a surface: what does the stock or the fence bear on? Slip: a back, or a back edge. */
final class StockBears implements Maker {
    @Override
    public Kind kind() {
        return Kind.STOCK_BEARS;
    }

    @Override
    public Question.Draft make(int level, Chance chance) {
        Board board = Boards.of(chance, Boards.anySize(chance), 0.4).next();
        Boards.Pair pair = level == 1 ? Boards.pair(Surface.FACE_1, Surface.EDGE_1) : Boards.anyPair(chance);
        boolean gauge = level > 1 && chance.with(0.5);
        Surface on = Surface.LONG.get(chance.whole(0, 3));
        if (level == 1) on = chance.with(0.5) ? pair.side().on() : pair.edge().on();
        Surface right = on.isFace() ? pair.edge().on() : pair.side().on();
        String bears = gauge ? "the gauge's fence" : "the square's stock";
        BoardPicture picture = BoardPicture.of(pair.on(board), null);
        String work = gauge ? "gauged along" : "squared across";
        return new Question.Draft(
                Say.of(
                        "Board %s: face side on %s, face edge on %s. A line is to be %s %s, which is outlined.",
                        board.id(), pair.side().on().spoken(), pair.edge().on().spoken(), work, on.spoken()),
                Say.of("Which surface does %s bear on?", bears),
                Answers.point(offers(board, on, right, gauge)),
                new Picture.Unrolled(picture.pointed(new Pointed.AtSurface(on))),
                reason(board, picture, pair, on, right, gauge));
    }

    private static List<Offer> offers(Board board, Surface on, Surface right, boolean gauge) {
        List<Offer> offers = new ArrayList<>();
        offers.add(Offer.at(right, "It adjoins the surface of the line, and is one of the two that were proved."));
        offers.add(Offer.at(
                right.opposite(), Say.of("Nobody proved it. %s", Say.capital(off(board, right.opposite())))));
        offers.add(Offer.at(
                on,
                Say.of("The line runs on it; %s bears on a surface beside it.", gauge ? "the fence" : "the stock")));
        offers.add(Offer.at(on.opposite(), "It does not adjoin the surface that the line runs on."));
        return offers;
    }

    /** How far the unproved surface is out on this board. */
    private static String off(Board board, Surface back) {
        Shape shape = board.shape();
        return back.isEdge()
                ? Say.of("the width of this board runs out by %s over its length.", Say.mm(Math.abs(shape.taper())))
                : Say.of(
                        "the thickness of this board runs out by %s over its length.",
                        Say.mm(Math.abs(shape.thickening())));
    }

    private static Question.Reason reason(
            Board board, BoardPicture picture, Boards.Pair pair, Surface on, Surface right, boolean gauge) {
        String mark = right == pair.side().on() ? "face side" : "face edge";
        String why = Say.of(
                "%s bears on the face side or the face edge, on nothing else. For a line on %s only the %s, %s, adjoins."
                        + " The surface opposite to it was not proved: %s",
                gauge ? "The fence" : "The stock", on.spoken(), mark, right.spoken(), off(board, right.opposite()));
        BoardPicture shown = picture.evidence(Evidence.on(right), Ink.SOUND);
        Surface beside =
                right == pair.side().on() ? pair.edge().on() : pair.side().on();
        return new Question.Reason(
                why, Picture.Lying.showing(shown, pair.side().on(), beside.isEdge() ? beside : right));
    }
}
