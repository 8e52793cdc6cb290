package org.marktwice.quiz;

import static org.assertj.core.api.Assertions.assertThat;

import org.marktwice.drawing.Cut;
import org.marktwice.picture.BoardPicture;
import org.marktwice.timber.Knot;
import org.marktwice.timber.KnotBody;

class KnotFoulsTest extends MakerLaws {
    @Override
    Kind kind() {
        return Kind.KNOT_FOULS;
    }

    /** What the engine says of a question; asked once for all its answers. */
    private record Truth(Question question, double clearance, double margin) {
        static Truth of(Question question) {
            BoardPicture picture = board(question.picture());
            Cut cut = picture.cuts().get(0).cut();
            Knot knot = picture.board().knot(picture.evidence().knots().get(0)).orElseThrow();
            KnotBody body = KnotBody.of(knot, picture.board().facts());
            double clearance =
                    cut.boxes().stream().mapToDouble(body::clearance).min().orElseThrow();
            double margin = Math.max(10, 2 * knot.maxRadius());
            assertThat(Math.abs(clearance - margin)).isGreaterThan(1.4);
            return new Truth(question, clearance, margin);
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
        double clearance = truth.clearance();
        double margin = truth.margin();
        if (offer.text().startsWith("Clear")) return clearance >= margin;
        if (offer.text().startsWith("In the way")) return clearance == 0;
        return clearance > 0 && clearance < margin;
    }
}
