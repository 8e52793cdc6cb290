package org.marktwice.quiz;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.marktwice.picture.BoardPicture;

class ReadRuleTest extends MakerLaws {
    @Override
    Kind kind() {
        return Kind.READ_RULE;
    }

    @Override
    boolean isRight(Question question, Offer offer) {
        BoardPicture.LaidRule rule =
                java.util.Objects.requireNonNull(board(question.picture()).rule());
        return Math.abs(rule.from().u() - rule.to().u() - offer.figure())
                        <= question.answers().tolerance()
                || Math.abs(rule.to().u() - rule.from().u() - offer.figure())
                        <= question.answers().tolerance();
    }

    @Test
    void theRuleShownInLettersPointsAtTheReading() {
        for (int seed = 0; seed < 500; seed++) {
            Question q = question(seed);
            String[] lines = q.given().split("\\n");
            int pointer = lines[lines.length - 1].indexOf(94);
            int first = Integer.parseInt(lines[lines.length - 3].strip().split(" +")[0]);
            int zero = lines[lines.length - 2].indexOf(124);

            assertThat(first + (pointer - zero) / 2.0)
                    .isEqualTo(q.answers().rightOne().figure());
        }
    }
}
