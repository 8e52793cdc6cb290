package org.marktwice.quiz;

import java.util.ArrayList;
import java.util.List;
import org.marktwice.picture.BoardPicture;
import org.marktwice.picture.Ink;
import org.marktwice.rulebook.Finding.Evidence;
import org.marktwice.timber.Board;
import org.marktwice.timber.Chance;
import org.marktwice.timber.Pith;
import org.marktwice.timber.Seasoned;
import org.marktwice.timber.Size;
import org.marktwice.timber.Surface;

/** Bark side or heart side, read off the end grain. Slip: taking the side that the arcs open to for the bark side. */
final class BarkSide implements Maker {
    @Override
    public Kind kind() {
        return Kind.BARK_SIDE;
    }

    @Override
    public Question.Draft make(int level, Chance chance) {
        boolean bark = level == 1 || chance.with(0.5);
        Surface end = level == 1 || chance.with(0.5) ? Surface.END_1 : Surface.END_2;
        Board board = flatSawn(chance, level);
        Surface barkSide = Seasoned.barkSide(board).orElseThrow();
        Surface right = bark ? barkSide : barkSide.opposite();
        String asked = bark ? "bark side" : "heart side";
        List<Offer> offers = new ArrayList<>();
        offers.add(Offer.at(right, Say.of("It looks %s the tree's centre.", bark ? "away from" : "towards")));
        offers.add(Offer.at(
                right.opposite(),
                Say.of(
                        "That is the %s: the arcs' centre, the heart of the tree, lies %s.",
                        bark ? "heart side" : "bark side", bark ? "on that side" : "on the other side")));
        for (Surface edge : List.of(Surface.EDGE_1, Surface.EDGE_2)) {
            offers.add(Offer.at(edge, "That is an edge; bark side and heart side are the two broad faces."));
        }
        BoardPicture picture = BoardPicture.of(board);
        Pith pith = board.pith().orElseThrow();
        String why = Say.of(
                "The arcs on the end grain bend round the heart of the tree, which lies beyond %s (%s mm from the board's"
                        + " middle). %s looks away from it, towards the bark; %s is the heart side.",
                barkSide.opposite().spoken(),
                Say.number(Math.round(Math.hypot(
                        pith.y() - board.size().width() / 2,
                        pith.z() - board.size().thickness() / 2))),
                Say.capital(barkSide.spoken()),
                barkSide.opposite().spoken());
        BoardPicture shown = picture.evidence(Evidence.on(right), Ink.SOUND);
        return new Question.Draft(
                Say.of(
                        "The end grain of board %s, %s mm wide, seen on %s: %s.",
                        board.id(), Say.number(board.size().width()), end.spoken(), Say.pith(board)),
                Say.of("The end grain of board %s, seen on %s.", board.id(), end.spoken()),
                Say.of("Which face is the %s?", asked),
                Answers.point(offers),
                Picture.SquareOn.whole(picture, end),
                new Question.Reason(why, lying(shown, right, end)));
    }

    /** With the surface up, and the end that was looked at in sight at the left. */
    private static Picture lying(BoardPicture shown, Surface up, Surface end) {
        for (Surface front : List.of(Surface.EDGE_1, Surface.EDGE_2)) {
            Picture.Lying lying = Picture.Lying.showing(shown, up, front);
            if (lying.turn().of(end) == org.marktwice.drawing.Direction.LEFT) return lying;
        }
        throw new IllegalStateException("an end looks left one way or the other");
    }

    /** Cut so that its arcs tell the sides apart; the harder, the flatter the arcs lie. */
    private static Board flatSawn(Chance chance, int level) {
        Size size = new Size(200, 5 * chance.whole(16, 28), chance.whole(18, 28));
        Boards boards = Boards.of(chance, size, 0.2);
        double wanted = level == 1 ? 30 : level == 2 ? 60 : 90;
        return boards.about(pith -> {
            double deep = pith.z() < 0 ? -pith.z() : pith.z() - size.thickness();
            double aside = Math.abs(pith.y() - size.width() / 2);
            return deep >= 12 && aside <= 1.1 * (deep + size.thickness() / 2) && Math.abs(deep - wanted) <= 20;
        });
    }
}
