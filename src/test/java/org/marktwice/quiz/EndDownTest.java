package org.marktwice.quiz;

import org.marktwice.bench.Mark;
import org.marktwice.drawing.Direction;
import org.marktwice.picture.BoardPicture;
import org.marktwice.timber.Surface;

class EndDownTest extends MakerLaws {
    @Override
    Kind kind() {
        return Kind.END_DOWN;
    }

    @Override
    boolean isRight(Question question, Offer offer) {
        BoardPicture picture = board(question.picture());
        Mark side = mark(picture, Mark.Kind.FACE_SIDE);
        Mark edge = mark(picture, Mark.Kind.FACE_EDGE);
        String given = question.given();
        String looks = given.substring(given.indexOf("In the job"));
        Direction sideLooks = direction(looks.substring(0, looks.indexOf(",")));
        Direction edgeLooks = direction(looks);
        Surface end = looking(direction(question.asks()), side.on(), sideLooks, edge.on(), edgeLooks);
        return offer.text().equals(end.spoken());
    }
}
