package org.marktwice.quiz;

import org.marktwice.timber.Board;
import org.marktwice.timber.Seasoned;
import org.marktwice.timber.Surface;

class BarkSideTest extends MakerLaws {
    @Override
    Kind kind() {
        return Kind.BARK_SIDE;
    }

    /** A drying board hollows on its bark side, by the map of the section. */
    @Override
    boolean isRight(Question question, Offer offer) {
        Board board = board(question.picture()).board();
        Surface on = surface(offer);
        boolean hollows = on.isFace()
                && Seasoned.of(board, board.facts().planedAt() - 6).cup(on).orElseThrow() > 0;
        return on.isFace() && hollows == question.asks().contains("bark side");
    }
}
