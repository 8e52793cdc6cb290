package org.marktwice.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.marktwice.rulebook.FindingsTour.Met;

/** How every sentence of the tour reads: as a good teacher speaks, with figures, units and numbers right. */
class FindingWordsTest {
    private static final Pattern ONE_OF_MANY = Pattern.compile(
            "(?<!(?:face|edge|end) )\\b1 (?:more )?(?:\\w+ )?(?:parts|boards|knots|marks|places|millimetres|degrees)\\b");
    private static final Pattern MANY_OF_ONE =
            Pattern.compile("\\b(?<!(?:face|edge|end) )(?:[02-9]|[1-9]\\d) (?:part|board|knot|mark|place|degree)\\b");
    private static final Pattern NAKED_FIGURE = Pattern.compile("(?<![\\d.])-?\\d+\\.\\d+(?! (?:mm|degrees?|%|×))");
    private static final Pattern LONG_FIGURE = Pattern.compile("\\d\\.\\d{2,}");
    private static final Pattern SCOLDING = Pattern.compile(
            "(?i)\\b(careless|sloppy|stupid|silly|lazy|bad|fail(?:ed|ure)?|mistake|you should have|of course|obviously|simply|just)\\b|!");
    private static final Pattern PRAISE =
            Pattern.compile("(?i)\\b(well done|great|excellent|perfect|bravo|congratulations|good job|nice)\\b");
    private static final Pattern ID = Pattern.compile("\\b(?:face|edge|end)-[12]\\b|_|\\bk\\d+\\b|\\{|null");

    /** Rules about a board as a whole: nothing on it could be picked out. */
    private static final List<String> WHOLE_BOARD =
            List.of("board-fits-part", "every-part-named", "refusal-justified", "best-turn", "fault-named");

    private static Map<String, Met> sentences = Map.of();

    @BeforeAll
    static void collect() {
        Map<String, Met> all = new LinkedHashMap<>();
        FindingsTour.all().forEach(met -> {
            all.putIfAbsent(met.says(), met);
            if (!met.instead().isEmpty()) all.putIfAbsent(met.instead(), met);
        });
        sentences = all;
    }

    private static List<String> with(Pattern pattern) {
        return sentences.keySet().stream()
                .filter(s -> pattern.matcher(s).find())
                .toList();
    }

    @Test
    void theTourIsLong() {
        assertThat(sentences).hasSizeGreaterThan(300);
    }

    @Test
    void everySentenceBeginsAndEndsAsOne() {
        assertThat(sentences.keySet())
                .filteredOn(s -> !s.matches("\\p{Lu}.*\\."))
                .isEmpty();
        assertThat(with(Pattern.compile("  | \\.| ,|\\.\\.|,\\."))).isEmpty();
    }

    @Test
    void oneIsOneAndManyAreMany() {
        assertThat(with(ONE_OF_MANY)).isEmpty();
        assertThat(with(MANY_OF_ONE)).isEmpty();
    }

    @Test
    void everyMeasureHasItsUnitAndNoFalsePrecision() {
        assertThat(with(NAKED_FIGURE)).isEmpty();
        assertThat(with(LONG_FIGURE)).isEmpty();
    }

    @Test
    void nobodyIsScoldedAndNothingIsPraisedForNothing() {
        assertThat(with(SCOLDING)).isEmpty();
        assertThat(with(PRAISE)).isEmpty();
        for (Rule rule : RuleBook.rules()) {
            Texts.RuleTexts texts = Texts.of(rule.id());
            assertThat(List.of(texts.title(), texts.why(), texts.instead()))
                    .as(rule.id())
                    .allSatisfy(
                            s -> assertThat(s).doesNotContainPattern(SCOLDING).doesNotContainPattern(PRAISE));
        }
    }

    @Test
    void noIdIsLeftInASentence() {
        assertThat(with(ID)).isEmpty();
    }

    @Test
    void whateverIsNotSoundSaysWhatWouldBeBetter() {
        assertThat(FindingsTour.all()
                        .filter(m -> m.instead().isEmpty() != (m.finding().verdict() == Verdict.SOUND))
                        .map(Met::says))
                .isEmpty();
    }

    /** A wrong choice is told with its place on the board. */
    @Test
    void whateverIsWrongOnABoardIsPickedOut() {
        assertThat(FindingsTour.all()
                        .filter(m -> m.finding().verdict() == Verdict.WRONG)
                        .filter(m -> m.finding().subject().board() != null)
                        .filter(m -> !WHOLE_BOARD.contains(m.finding().rule()))
                        .filter(m -> m.finding().evidence().surfaces().isEmpty())
                        .map(Met::says))
                .isEmpty();
    }
}
