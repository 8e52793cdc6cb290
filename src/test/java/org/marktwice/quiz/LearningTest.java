package org.marktwice.quiz;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.marktwice.files.QuizFile;

/** When ideas are due again. */
class LearningTest {
    private static final LocalDate MONDAY = LocalDate.of(2026, 1, 12);
    private static final Kind IDEA = Kind.BARK_SIDE;

    private static Learning begun() {
        return Learning.begin("P07", Spacing.WEEKLY);
    }

    private static Learning right(Learning learning, LocalDate on) {
        return learning.after(on, IDEA, true, false);
    }

    @Test
    void rightAnswersAreAskedAgainAfterADayThenThreeThenWeekly() {
        Learning learning = begun();
        LocalDate on = MONDAY;
        List<Long> gaps = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            learning = right(learning, on);
            long gap = learning.daysUntil(IDEA, on);
            gaps.add(gap);
            assertThat(learning.due(on.plusDays(gap - 1))).doesNotContain(IDEA);
            assertThat(learning.due(on.plusDays(gap))).contains(IDEA);
            on = on.plusDays(gap);
        }

        assertThat(gaps).containsExactly(1L, 3L, 7L, 7L, 7L, 7L);
        assertThat(learning.word(IDEA)).isEqualTo(Standing.Word.FIRM);
    }

    @ParameterizedTest
    @CsvSource({"true, false, 3, ON_THE_WAY", "true, true, 1, SHAKY", "false, false, 1, SHAKY", "false, true, 1, SHAKY"
    })
    void theSecondAnswerDecidesTheNextGap(boolean isRight, boolean unsure, long gap, Standing.Word word) {
        LocalDate next = MONDAY.plusDays(1);
        Learning learning = right(begun(), MONDAY).after(next, IDEA, isRight, unsure);

        assertThat(learning.daysUntil(IDEA, next)).isEqualTo(gap);
        assertThat(learning.word(IDEA)).isEqualTo(word);
    }

    @Test
    void askedTwiceOnOneDayCountsOnce() {
        Learning once = right(begun(), MONDAY);
        Learning often = right(right(once, MONDAY), MONDAY);

        assertThat(often.daysUntil(IDEA, MONDAY)).isEqualTo(once.daysUntil(IDEA, MONDAY));
        assertThat(often.standing(IDEA).step()).isEqualTo(1);
    }

    /** Law: lateness, however great, neither piles up nor takes anything away. */
    @ParameterizedTest
    @ValueSource(ints = {0, 1, 5, 7, 30, 400})
    void aMissedWeekIsForgiven(int late) {
        Learning learning = right(begun(), MONDAY);
        LocalDate on = MONDAY.plusDays(1 + late);

        assertThat(learning.due(on).stream().filter(IDEA::equals)).hasSize(1);
        assertThat(learning.word(IDEA)).isEqualTo(Standing.Word.ON_THE_WAY);
        Learning after = right(learning, on);
        assertThat(after.standing(IDEA).step()).isEqualTo(2);
        assertThat(after.daysUntil(IDEA, on)).isEqualTo(3);
    }

    /** Law: whatever was answered and whenever, a clock set back takes no step, and makes nothing due later than by the day after. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void aClockSetBackDoesNoHarm(long seed) {
        Random random = new Random(seed);
        Learning learning = begun();
        LocalDate on = MONDAY;
        for (int i = 0; i < 60; i++) {
            Kind kind = Kind.values()[random.nextInt(Kind.values().length)];
            learning = learning.after(on, kind, random.nextInt(4) > 0, random.nextInt(5) == 0);
            on = on.plusDays(random.nextInt(3));
        }
        LocalDate last = on;
        Learning before = learning.after(last, IDEA, true, false);
        for (int back : new int[] {1, 2, 40, 4000}) {
            LocalDate wrong = last.minusDays(back);
            for (Kind kind : Kind.values()) {
                if (before.isDue(kind, last))
                    assertThat(before.isDue(kind, wrong)).isTrue();
            }
            Learning answered = before.after(wrong, IDEA, true, false);
            assertThat(answered.standing(IDEA).step())
                    .isEqualTo(before.standing(IDEA).step());
            for (Kind kind : Kind.values()) {
                if (kind != IDEA) assertThat(answered.standing(kind)).isEqualTo(before.standing(kind));
            }
            // and goes on from there
            assertThat(answered.isDue(IDEA, wrong.plusDays(7))).isTrue();
        }
    }

    @Test
    void aClockThatRanAYearAheadOnceMakesNothingWaitAYear() {
        Learning learning = right(right(begun(), MONDAY), MONDAY.plusYears(1));

        assertThat(learning.due(MONDAY.plusDays(1))).isNotEmpty();
        learning = learning.after(MONDAY.plusDays(1), Kind.MARK_TAIL, true, false);
        assertThat(learning.due(MONDAY.plusDays(8))).contains(IDEA, Kind.MARK_TAIL);
    }

    /** Law: in any run of days no more is due than a sitting holds, nothing twice, and the longest overdue comes first. */
    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13})
    void aDayIsNeverMoreThanASitting(long seed) {
        Random random = new Random(seed);
        Learning learning = begun();
        Set<Kind> met = new HashSet<>();
        for (int day = 0; day < 80; day++) {
            LocalDate on = MONDAY.plusDays(day);
            List<Kind> due = learning.due(on);
            assertThat(due).hasSizeLessThanOrEqualTo(Learning.A_SITTING).doesNotHaveDuplicates();
            assertThat(due.stream().filter(k -> !met.contains(k)).count()).isLessThanOrEqualTo(Learning.NEW_A_DAY);
            if (random.nextInt(3) == 0) continue;
            for (Kind kind : due) {
                learning = learning.after(on, kind, random.nextInt(5) > 0, false);
                met.add(kind);
            }
            assertThat(learning.due(on)).isEmpty();
        }
        assertThat(met).containsExactlyInAnyOrder(Kind.values());
    }

    @Test
    void everyQuestionIsMadeOfFreshBoardsAndOtherLearnersGetOthers() {
        Learning learning = begun();
        Learning other = Learning.begin("P08", Spacing.WEEKLY);
        Set<Long> seeds = new HashSet<>();
        for (int i = 0; i < 300; i++) {
            assertThat(seeds.add(learning.question(IDEA).seed())).isTrue();
            assertThat(seeds.add(other.question(IDEA).seed())).isTrue();
            learning = right(learning, MONDAY.plusDays(i));
            other = right(other, MONDAY.plusDays(i));
        }
        assertThat(right(begun(), MONDAY).question(IDEA))
                .isEqualTo(right(begun(), MONDAY).question(IDEA));
    }

    @Test
    void whatGoesWellIsAskedHarder() {
        Learning learning = begun();
        assertThat(learning.question(IDEA).level()).isEqualTo(1);
        learning = right(right(right(learning, MONDAY), MONDAY.plusDays(1)), MONDAY.plusDays(4));
        assertThat(learning.question(IDEA).level()).isEqualTo(3);
        learning = learning.after(MONDAY.plusDays(11), IDEA, false, false);
        assertThat(learning.question(IDEA).level()).isEqualTo(1);
    }

    @Test
    void aJournalIsJudgedAnewAndWhatIsUnknownInItPassedOver() {
        Question question = Quiz.question(IDEA, 1, 42);
        String right = question.answers().rightOne().text();
        String wrong = question.answers().offers().stream()
                .map(Offer::text)
                .filter(t -> !t.equals(right))
                .findFirst()
                .orElseThrow();

        Learning learning = Learning.of(
                new QuizFile(
                        "a",
                        "P07",
                        List.of(
                                answer(MONDAY, IDEA.id(), right),
                                answer(MONDAY, "no-such-kind", "face 1"),
                                answer(MONDAY.plusDays(1), IDEA.id(), wrong)),
                        List.of()),
                Spacing.WEEKLY);

        assertThat(learning.answers()).isEqualTo(3);
        assertThat(learning.standing(IDEA).asked()).isEqualTo(2);
        assertThat(learning.standing(IDEA).right()).isEqualTo(1);
        assertThat(learning.word(IDEA)).isEqualTo(Standing.Word.SHAKY);
    }

    private static QuizFile.Answer answer(LocalDate on, String kind, String said) {
        OffsetDateTime at = OffsetDateTime.of(on, LocalTime.of(18, 30), ZoneOffset.ofHours(1));
        return new QuizFile.Answer(at, kind, 1, 42, said, Optional.empty());
    }

    @Test
    void gapsOfNoDaysAreRefused() {
        assertThatThrownBy(() -> new Spacing(List.of())).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Spacing(List.of(1, 0))).isInstanceOf(IllegalArgumentException.class);
    }
}
