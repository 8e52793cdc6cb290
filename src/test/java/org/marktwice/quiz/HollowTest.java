package org.marktwice.quiz;

import org.marktwice.timber.Board;
import org.marktwice.timber.Seasoned;
import org.marktwice.timber.Surface;

class HollowTest extends MakerLaws {
    @Override
    Kind kind() {
        return Kind.HOLLOW;
    }

    @Override
    boolean isRight(Question question, Offer offer) {
        Board board = board(question.picture()).board();
        double to = after(question.given(), question.given().contains("It dries") ? "It dries to" : "moisture to");
        Seasoned then = Seasoned.of(board, to);
        if (offer.text().startsWith("It stays"))
            return Math.abs(then.cup(Surface.FACE_1).orElseThrow()) < 0.3;
        Surface face = offer.text().startsWith("Face 1") ? Surface.FACE_1 : Surface.FACE_2;
        return Math.abs(then.cup(face).orElseThrow() - after(offer.text(), "by")) <= 0.1;
    }
}
