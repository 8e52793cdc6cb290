package org.marktwice.quiz;

import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;

class WalkedRoundTest extends MakerLaws {
    @Override
    Kind kind() {
        return Kind.WALKED_ROUND;
    }

    /** Walked on surface by surface. */
    @Override
    boolean isRight(Question question, Offer offer) {
        Board board = board(question.picture()).board();
        double s = after(question.given(), "out by") / 100;
        int surfaces = question.given().contains("all four") ? 4 : 2;
        double out = 0;
        for (int i = 0; i < surfaces; i++) out += s * board.vExtent(Surface.LONG.get(i));
        return Math.abs(out - offer.figure()) <= question.answers().tolerance();
    }
}
