package org.marktwice.quiz;

import java.util.List;
import org.marktwice.drawing.Cut;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Drawing;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Turn;
import org.marktwice.picture.BoardPicture;
import org.marktwice.timber.Board;
import org.marktwice.timber.Box;
import org.marktwice.timber.Chance;
import org.marktwice.timber.Surface;

/** One upright is set out: which board is its partner? Slips: two lefts, either way round, and a housing ten out. */
final class HandedPairs implements Maker {
    private static final Surface SIDE = Surface.FACE_1;

    @Override
    public Kind kind() {
        return Kind.HANDED_PAIR;
    }

    /**
     * An upright seen on its face side.
     *
     * @param edge the surface that carries the face edge
     * @param bottom the end that the housing is nearer to
     * @param from how far up its lower side is, millimetres
     */
    record Laid(Surface edge, Surface bottom, double from) {
        Cut cut(Part part) {
            double length = part.size().length();
            double thick = part.size().thickness();
            double x = bottom == Surface.END_1 ? from : length - from - thick;
            return new Cut(
                    "housing",
                    List.of(Box.of(x, 0, thick * 2 / 3, x + thick, part.size().width(), thick)));
        }
    }

    @Override
    public Question.Draft make(int level, Chance chance) {
        Drawing drawing = Jobs.shelves(chance, 1);
        boolean leftGiven = level == 1 || chance.with(0.5);
        Part given = drawing.parts().get(leftGiven ? 0 : 1);
        Part asked = drawing.parts().get(leftGiven ? 1 : 0);
        double up = drawing.parts().get(2).at().z();
        Boards boards = Boards.of(chance, given.size(), 0.3);
        Board one = boards.next();
        Board other = boards.next();
        Surface edge = chance.with(0.5) ? Surface.EDGE_1 : Surface.EDGE_2;
        Laid set = laid(given, edge, up);
        Surface partner = level == 1 ? edge : chance.with(0.5) ? edge : edge.opposite();
        Laid right = laid(asked, partner, up);
        double out = chance.with(0.5) || up < 60 ? up + 10 : up - 10;
        List<Offer> offers = List.of(
                offer(other, asked, right, "The mirror image, and its housing as far up."),
                offer(other, asked, laid(given, edge, up), twice(given)),
                offer(other, asked, laid(given, edge.opposite(), up), twice(given)),
                offer(
                        other,
                        asked,
                        laid(asked, level == 1 ? partner : partner.opposite(), out),
                        "The right hand, but its housing is 10 mm out: the shelf would not lie level."));
        BoardPicture picture = picture(one, given, set);
        return new Question.Draft(
                Say.of(
                        "Board %s is the %s, marked and set out: %s. The partner is to be its mirror image; both face sides"
                                + " are turned in, both face edges to the front.",
                        one.id(), lower(given), told(set)),
                Say.of("Which of these is the %s?", lower(asked)),
                Answers.choose(chance, offers),
                Picture.SquareOn.whole(picture, SIDE),
                new Question.Reason(
                        Say.of(
                                "Opened like a book, face edge to face edge and with the bottom ends to the left, the two are"
                                        + " mirror images: each housing is %s up. Laid face to face and lined across together, a pair"
                                        + " comes out handed by itself; side by side with the faces up, it comes out as two of the same.",
                                Say.mm(up)),
                        opened(picture, set, picture(other, asked, right), right)));
    }

    /** Both seen on their face sides, bottom ends to the left, face edges together. */
    private static Picture opened(BoardPicture one, Laid oneLaid, BoardPicture other, Laid otherLaid) {
        Picture first = bottomLeft(one, oneLaid);
        Picture second = bottomLeft(other, otherLaid);
        return isEdgeBelow(oneLaid) ? Picture.Beside.stacked(first, second) : Picture.Beside.stacked(second, first);
    }

    private static Picture bottomLeft(BoardPicture board, Laid laid) {
        return Picture.SquareOn.whole(board, SIDE).halfTurned(laid.bottom() == Surface.END_2);
    }

    /** Whether the face edge is at the lower side, once the bottom end is to the left; face 1 has edge 1 below, end 1 left. */
    private static boolean isEdgeBelow(Laid laid) {
        return (laid.edge() == Surface.EDGE_1) == (laid.bottom() == Surface.END_1);
    }

    /** As it is when it is rightly set out for a part with its face edge on this edge. */
    private static Laid laid(Part part, Surface edge, double up) {
        Surface bottom = Turn.facing(
                        SIDE, part.faceSide().get(0), edge, part.faceEdge().get(0))
                .orElseThrow()
                .looking(Direction.BOTTOM);
        return new Laid(edge, bottom, up);
    }

    /** Its turn in the part; wherever the housing is. */
    static Turn turn(Part part, Laid laid) {
        return Turn.facing(
                        SIDE,
                        part.faceSide().get(0),
                        laid.edge(),
                        part.faceEdge().get(0))
                .orElseThrow();
    }

    private static Offer offer(Board board, Part part, Laid laid, String because) {
        return Offer.drawn(Say.capital(told(laid)), because, Picture.SquareOn.whole(picture(board, part, laid), SIDE));
    }

    private static String twice(Part given) {
        return Say.of("That is a second %s: with its marks as drawn the housing is at the top.", lower(given));
    }

    private static BoardPicture picture(Board board, Part part, Laid laid) {
        BoardPicture plain = BoardPicture.of(Boards.pair(SIDE, laid.edge()).on(board), null);
        return KnotFouls.laid(plain, List.of(laid.cut(part)), null);
    }

    private static String told(Laid laid) {
        return Say.of(
                "loop on %s, its tail to %s; housing %s from %s",
                SIDE.spoken(),
                laid.edge().spoken(),
                Say.mm(laid.from()),
                laid.bottom().spoken());
    }

    private static String lower(Part part) {
        return part.name().toLowerCase(java.util.Locale.ROOT);
    }
}
