package org.marktwice.quiz;

import org.marktwice.bench.Mark;
import org.marktwice.picture.BoardPicture;

class ProperPairTest extends MakerLaws {
    @Override
    Kind kind() {
        return Kind.PROPER_PAIR;
    }

    @Override
    boolean isRight(Question question, Offer offer) {
        BoardPicture picture = board(java.util.Objects.requireNonNull(offer.drawn()));
        return Engine.areProper(
                picture.board(), mark(picture, Mark.Kind.FACE_SIDE), mark(picture, Mark.Kind.FACE_EDGE));
    }
}
