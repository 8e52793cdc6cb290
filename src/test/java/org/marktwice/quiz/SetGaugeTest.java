package org.marktwice.quiz;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.DoubleStream;
import org.marktwice.bench.Mark;
import org.marktwice.picture.BoardPicture;
import org.marktwice.timber.Surface;

class SetGaugeTest extends MakerLaws {
    @Override
    Kind kind() {
        return Kind.SET_GAUGE;
    }

    /** The side of the cut, within the wood, that is nearest to the face side. */
    @Override
    boolean isRight(Question question, Offer offer) {
        BoardPicture picture = board(question.reason().shows());
        double thick = picture.board().size().thickness();
        assertThat(mark(picture, Mark.Kind.FACE_SIDE).on()).isEqualTo(Surface.FACE_1);
        double nearest = picture.cuts().get(0).cut().boxes().stream()
                .flatMapToDouble(b -> DoubleStream.of(thick - b.min(2), thick - b.max(2)))
                .filter(d -> d > 0.01 && d < thick - 0.01)
                .min()
                .orElseThrow();
        return Math.abs(nearest - offer.figure()) <= question.answers().tolerance();
    }
}
