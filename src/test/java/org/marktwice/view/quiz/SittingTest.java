package org.marktwice.view.quiz;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.marktwice.files.FileRefused;
import org.marktwice.files.QuizFile;
import org.marktwice.quiz.Answers;
import org.marktwice.quiz.Kind;
import org.marktwice.quiz.Learning;
import org.marktwice.quiz.Question;
import org.marktwice.quiz.Spacing;
import org.marktwice.quiz.Standing;

class SittingTest {
    private static final OffsetDateTime NOW = OffsetDateTime.parse("2026-01-12T18:30:00+01:00");
    private final List<QuizFile.Answer> kept = new ArrayList<>();
    private final Sitting sitting = new Sitting(
            Learning.begin("P07", Spacing.WEEKLY), List.of(Kind.BARK_SIDE, Kind.CHAINED), kept::add, () -> NOW);

    private static String rightly(Question question) {
        return question.answers().rightOne().text();
    }

    @Test
    void everyQuestionIsAnsweredOnceAndKept() {
        Question first = sitting.question().orElseThrow();
        sitting.sure(true);
        assertThat(sitting.answer(rightly(first))).isTrue();
        assertThat(sitting.answer("a")).as("answered already").isFalse();
        sitting.sure(false);

        assertThat(sitting.heard()).get().returns(true, Answers.Heard::right);
        assertThat(kept)
                .containsExactly(
                        new QuizFile.Answer(NOW, "bark-side", 1, first.seed(), rightly(first), Optional.of(true)));

        sitting.next();
        Question second = sitting.question().orElseThrow();
        assertThat(second.kind()).isEqualTo(Kind.CHAINED);
        assertThat(sitting.sure()).isEmpty();
        assertThat(sitting.answer("not a number")).isFalse();
        assertThat(sitting.heard()).isEmpty();
        assertThat(sitting.answer("0.001")).isTrue();
        sitting.next();

        assertThat(sitting.question()).isEmpty();
        assertThat(sitting.right()).isEqualTo(1);
        assertThat(sitting.learning().word(Kind.BARK_SIDE)).isEqualTo(Standing.Word.ON_THE_WAY);
        assertThat(sitting.learning().word(Kind.CHAINED)).isEqualTo(Standing.Word.SHAKY);
    }

    @Test
    void nothingIsPassedOverUnanswered() {
        sitting.next();

        assertThat(sitting.number()).isEqualTo(1);
        assertThat(sitting.question()).get().returns(Kind.BARK_SIDE, Question::kind);
    }

    @Test
    void whatCannotBeSavedIsSaidAndCountsAllTheSame() {
        Sitting full = new Sitting(
                Learning.begin("P07", Spacing.WEEKLY),
                List.of(Kind.BARK_SIDE),
                answer -> {
                    throw new FileRefused("a.quiz.jsonl", "the disk is full");
                },
                () -> NOW);

        full.answer("a");

        assertThat(full.trouble()).isEqualTo("the disk is full");
        assertThat(full.learning().answers()).isEqualTo(1);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "true|true|This comes again tomorrow, with another board.",
                "true|false|You were not sure, so you are asked sooner. This comes again tomorrow, with another board.",
                "false|true|You were sure: look at the picture once more. This comes again tomorrow, with another board.",
                "false|false|This comes again tomorrow, with another board."
            })
    void whatToMakeOfAnAnswerIsSaid(boolean rightly, boolean sure, String says) {
        Answers answers = sitting.question().orElseThrow().answers();
        int offer = rightly
                ? answers.right()
                : (answers.right() + 1) % answers.offers().size();
        assertThat(sitting.remark()).isEmpty();
        sitting.sure(sure);

        sitting.answer(Answers.letter(offer));

        assertThat(sitting.remark()).isEqualTo(says);
    }

    @Test
    void saidTwiceConfidenceIsTakenBack() {
        sitting.sure(false);
        sitting.sure(false);

        assertThat(sitting.sure()).isEmpty();
    }
}
