package org.marktwice.quiz;

import static org.assertj.core.api.Assertions.assertThat;

import org.marktwice.picture.BoardPicture;

class WhichTurnTest extends MakerLaws {
    @Override
    Kind kind() {
        return Kind.WHICH_TURN;
    }

    /** What the engine says of a question; asked once for all its answers. */
    private record Truth(Question question, boolean ends, boolean faces) {
        static Truth of(Question question) {
            BoardPicture picture = board(question.picture());
            assertThat(Engine.isClear(picture, false, false)).isFalse();
            return new Truth(question, Engine.isClear(picture, true, false), Engine.isClear(picture, false, true));
        }
    }

    private final ThreadLocal<Truth> last = new ThreadLocal<>();

    @Override
    boolean isRight(Question question, Offer offer) {
        Truth truth = last.get();
        if (truth == null || truth.question() != question) {
            truth = Truth.of(question);
            last.set(truth);
        }
        boolean ends = truth.ends();
        boolean faces = truth.faces();
        return switch (offer.text().substring(0, 6)) {
            case "Either" -> ends && faces;
            case "Neithe" -> !ends && !faces;
            default -> offer.text().endsWith("end for end") ? ends && !faces : faces && !ends;
        };
    }
}
