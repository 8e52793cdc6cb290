package org.marktwice.quiz;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.marktwice.rulebook.RuleBook;

/** Kinds, makers, their tests and the rules that they practise come together. */
class MakersTest {
    @ParameterizedTest
    @EnumSource
    void everyKindHasAMakerAndTheMakerATest(Kind kind) throws ClassNotFoundException {
        Maker maker = Quiz.maker(kind);
        Class<?> test = Class.forName(maker.getClass().getName() + "Test");

        assertThat(maker.kind()).isEqualTo(kind);
        assertThat(MakerLaws.class).isAssignableFrom(test);
        assertThat(Kind.of(kind.id())).contains(kind);
    }

    @Test
    void thereAreAtLeastFourteenAndNoMakerIsLeftOut() throws IOException {
        try (var files = Files.list(Path.of("src/main/java/org/marktwice/quiz"))) {
            long makers =
                    files.filter(f -> read(f).contains(" implements Maker {")).count();
            assertThat(makers).isEqualTo(Kind.values().length).isGreaterThanOrEqualTo(14);
        }
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    @ParameterizedTest
    @EnumSource
    void aKindPractisesRulesThatAreInTheBook(Kind kind) {
        assertThat(kind.rules()).isNotEmpty().allMatch(id -> RuleBook.rule(id).isPresent());
    }

    @Test
    void aQuizAsksEveryKindBeforeAnyAgainAndComesOutTheSame() {
        List<Question> quiz = Quiz.of(7, 2 * Kind.values().length, 2);
        Set<Kind> first = new HashSet<>();
        quiz.subList(0, Kind.values().length).forEach(q -> first.add(q.kind()));

        assertThat(first).hasSize(Kind.values().length);
        assertThat(Quiz.of(7, 5, 2)).isEqualTo(quiz.subList(0, 5));
        assertThat(Quiz.of(8, 5, 2)).isNotEqualTo(quiz.subList(0, 5));
        assertThat(Quiz.of(7, 0, 1)).isEmpty();
    }

    @Test
    void aLevelThatThereIsNotIsRefused() {
        assertThatThrownBy(() -> Quiz.question(Kind.CHAINED, 4, 1)).hasMessageContaining("level 4");
    }
}
