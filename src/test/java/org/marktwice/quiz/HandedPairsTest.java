package org.marktwice.quiz;

import static org.assertj.core.api.Assertions.assertThat;

import org.marktwice.bench.Mark;
import org.marktwice.drawing.Direction;
import org.marktwice.picture.BoardPicture;
import org.marktwice.timber.Box;
import org.marktwice.timber.Surface;

class HandedPairsTest extends MakerLaws {
    @Override
    Kind kind() {
        return Kind.HANDED_PAIR;
    }

    /** Stood up with the marks as drawn, its housing is as far from the bottom as the other one. */
    @Override
    boolean isRight(Question question, Offer offer) {
        BoardPicture given = board(question.picture());
        BoardPicture asked = board(java.util.Objects.requireNonNull(offer.drawn()));
        boolean right = question.asks().contains("right upright");
        assertThat(question.given()).contains(right ? "left upright" : "right upright");
        double up = up(given, right ? Direction.RIGHT : Direction.LEFT);
        return Math.abs(up(asked, right ? Direction.LEFT : Direction.RIGHT) - up) < 0.5;
    }

    private static double up(BoardPicture board, Direction sideLooks) {
        Mark side = mark(board, Mark.Kind.FACE_SIDE);
        Mark edge = mark(board, Mark.Kind.FACE_EDGE);
        Surface bottom = looking(Direction.BOTTOM, side.on(), sideLooks, edge.on(), Direction.FRONT);
        Box cut = board.cuts().get(0).cut().boxes().get(0);
        return bottom == Surface.END_1 ? cut.min(0) : board.board().size().length() - cut.max(0);
    }
}
