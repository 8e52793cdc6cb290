package org.marktwice.quiz;

import org.marktwice.bench.Mark;
import org.marktwice.picture.BoardPicture;
import org.marktwice.timber.Surface;

class MarkTailTest extends MakerLaws {
    @Override
    Kind kind() {
        return Kind.MARK_TAIL;
    }

    @Override
    boolean isRight(Question question, Offer offer) {
        BoardPicture picture = board(question.picture());
        Mark given = picture.state().marks().get(0);
        Surface on = surface(offer);
        Surface towards =
                on.adjoins(given.on()) ? given.on() : Surface.LONG.get(0).adjoins(on) ? Surface.FACE_1 : Surface.EDGE_1;
        boolean sideGiven = given.kind() == Mark.Kind.FACE_SIDE;
        Mark other = new Mark(sideGiven ? Mark.Kind.FACE_EDGE : Mark.Kind.FACE_SIDE, on, towards, 2);
        return Engine.areProper(picture.board(), sideGiven ? given : other, sideGiven ? other : given);
    }
}
