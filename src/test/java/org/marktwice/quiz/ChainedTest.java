package org.marktwice.quiz;

import java.util.List;
import org.marktwice.picture.Struck;

class ChainedTest extends MakerLaws {
    @Override
    Kind kind() {
        return Kind.CHAINED;
    }

    /** By trying every error up and down. */
    @Override
    boolean isRight(Question question, Offer offer) {
        List<Double> lines = board(question.picture()).struck().stream()
                .map(s -> ((Struck.Line) s).from().u())
                .toList();
        double tolerance = question.answers().tolerance();
        if (question.asks().startsWith("How far from end 1")) {
            return Math.abs(lines.get(lines.size() - 1) - offer.figure()) <= tolerance;
        }
        double error = after(question.given(), "out by");
        boolean between = question.asks().contains("distance");
        double worst = 0;
        for (int signs = 0; signs < 1 << lines.size(); signs++) {
            double out = 0;
            for (int i = between ? 1 : 0; i < lines.size(); i++) out += (signs >> i & 1) == 0 ? error : -error;
            worst = Math.max(worst, Math.abs(out));
        }
        return Math.abs(worst - offer.figure()) <= tolerance;
    }
}
