package org.marktwice.quiz;

import static org.assertj.core.api.Assertions.assertThat;

import org.marktwice.picture.BoardPicture;

class WhichTurnTest extends MakerLaws {
    @Override
    Kind kind() {
        return Kind.WHICH_TURN;
    }

    @Override
    boolean isRight(Question question, Offer offer) {
        BoardPicture picture = board(question.picture());
        assertThat(Engine.isClear(picture, false, false)).isFalse();
        boolean ends = Engine.isClear(picture, true, false);
        boolean faces = Engine.isClear(picture, false, true);
        return switch (offer.text().substring(0, 6)) {
            case "Either" -> ends && faces;
            case "Neithe" -> !ends && !faces;
            default -> offer.text().endsWith("end for end") ? ends && !faces : faces && !ends;
        };
    }
}
