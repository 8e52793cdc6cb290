package org.marktwice.quiz;

import java.util.ArrayList;
import java.util.List;
import org.marktwice.bench.BoardState;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Turn;
import org.marktwice.picture.BoardPicture;
import org.marktwice.picture.Ink;
import org.marktwice.rulebook.Finding.Evidence;
import org.marktwice.timber.Board;
import org.marktwice.timber.Chance;
import org.marktwice.timber.Surface;

/** The marks are turned as the drawing wants them: which end comes to lie where? Slip: taking the mirror image. */
final class EndDown implements Maker {
    @Override
    public Kind kind() {
        return Kind.END_DOWN;
    }

    @Override
    public Question.Draft make(int level, Chance chance) {
        Board board = Boards.of(chance, Boards.anySize(chance), 0.5).next();
        Boards.Pair pair = level == 1 ? Boards.pair(Surface.FACE_1, Surface.EDGE_1) : Boards.anyPair(chance);
        boolean upright = level < 3 || chance.with(0.3);
        Direction side = upright ? either(chance, Direction.LEFT) : either(chance, Direction.TOP);
        Direction edge = level == 1 ? Direction.FRONT : either(chance, Direction.FRONT);
        Direction asked = upright ? either(chance, Direction.BOTTOM) : either(chance, Direction.LEFT);
        if (level == 1) asked = Direction.BOTTOM;
        Turn turn = Turn.facing(pair.side().on(), side, pair.edge().on(), edge).orElseThrow();
        Surface right = turn.looking(asked);
        List<Offer> offers = new ArrayList<>();
        offers.add(Offer.words(right.spoken(), Say.of("It looks %s.", looks(asked))));
        offers.add(Offer.words(
                right.opposite().spoken(),
                Say.of("That end looks %s. It would take the mirror image of this board.", looks(asked.opposite()))));
        offers.add(Offer.words(
                "either end: the two marks leave it open",
                "Where two adjoining surfaces look fixes where all six look; a board can be turned, never mirrored."));
        offers.sort((a, b) -> a.text().compareTo(b.text()));
        int place = offers.indexOf(offers.stream()
                .filter(o -> o.text().equals(right.spoken()))
                .findFirst()
                .orElseThrow());
        BoardState state = pair.on(board);
        BoardPicture picture = BoardPicture.of(state, null);
        String why = Say.of(
                "With %s looking %s and %s looking %s, %s looks %s: there is one such turn and no other."
                        + " That is how two marks make a left or a right of a board.",
                pair.side().on().spoken(),
                looks(side),
                pair.edge().on().spoken(),
                looks(edge),
                right.spoken(),
                looks(asked));
        return new Question.Draft(
                Say.of(
                        "Board %s: %s is the face side, %s the face edge. In the job the face side looks %s, the face edge"
                                + " %s.",
                        board.id(), pair.side().on().spoken(), pair.edge().on().spoken(), looks(side), looks(edge)),
                Say.of("Turn it so in your mind. Which end then looks %s?", looks(asked)),
                Answers.choose(offers, place),
                Picture.Lying.showing(picture, pair.side().on(), pair.edge().on()),
                new Question.Reason(why, new Picture.Lying(picture.evidence(Evidence.on(right), Ink.SOUND), turn)));
    }

    private static Direction either(Chance chance, Direction one) {
        return chance.with(0.5) ? one : one.opposite();
    }

    /** Where something looks, in a sentence. */
    static String looks(Direction direction) {
        return switch (direction) {
            case LEFT -> "left";
            case RIGHT -> "right";
            case FRONT -> "to the front";
            case BACK -> "to the back";
            case BOTTOM -> "down";
            case TOP -> "up";
        };
    }
}
