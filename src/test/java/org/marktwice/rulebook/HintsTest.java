package org.marktwice.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.marktwice.bench.Attempt;
import org.marktwice.bench.Bench;
import org.marktwice.bench.CannotDo;
import org.marktwice.files.AttemptFile;
import org.marktwice.files.FileRefused;
import org.marktwice.files.ScenarioFile;
import org.marktwice.scenario.Scenario;

class HintsTest {
    private static final Scenario SHELF = shelf();

    private static Scenario shelf() {
        try {
            return ScenarioFile.read(Path.of("scenarios/porch-shelf.scenario.json"));
        } catch (FileRefused e) {
            throw new AssertionError(e.getMessage(), e);
        }
    }

    private static Attempt flawed() {
        try {
            Path file = Path.of("scenarios/attempts/porch-shelf-flawed.attempt.jsonl");
            Attempt all = AttemptFile.open(file, SHELF).file().attempt();
            return all.upTo(all.actions().size() - 1);
        } catch (FileRefused e) {
            throw new AssertionError(e.getMessage(), e);
        }
    }

    private static Situation after(Attempt attempt) {
        try {
            return Situation.of(Bench.after(SHELF, attempt));
        } catch (CannotDo e) {
            throw new AssertionError(e.getMessage(), e);
        }
    }

    /** So many hints asked for one after another. */
    private static List<Hints.Given> asked(Attempt attempt, String board, int times) {
        List<Hints.Given> given = new ArrayList<>();
        Attempt now = attempt;
        for (int i = 0; i < times; i++) {
            Optional<Hints.Given> hint = Hints.next(after(now), board);
            if (hint.isEmpty()) break;
            given.add(hint.get());
            now = now.with(hint.get().at(900 + i));
        }
        return given;
    }

    @Test
    void aMatterIsHintedAtInThreeGradesAndThenTheNextOne() {
        List<Hints.Given> given = asked(flawed(), "B", 4);

        assertThat(given).extracting(Hints.Given::grade).containsExactly(1, 2, 3, 1);
        assertThat(given.subList(0, 3))
                .extracting(h -> h.finding().rule())
                .containsOnly(given.get(0).finding().rule());
        assertThat(given.get(3).finding()).isNotEqualTo(given.get(0).finding());
    }

    @Test
    void whatIsWrongOnTheBoardInHandComesFirst() {
        Finding first = asked(flawed(), "B", 1).get(0).finding();

        assertThat(first.verdict()).isEqualTo(Verdict.WRONG);
        assertThat(first.subject().board()).isEqualTo("B");
    }

    @Test
    void theFirstGradeSaysWhereAndNotWhat() {
        for (Hints.Given hint : asked(flawed(), "B", 40)) {
            String says = Texts.says(hint.finding(), SHELF);
            if (hint.grade() == 1) assertThat(hint.words()).startsWith("Look ").doesNotContain(says, " wrong");
            if (hint.grade() == 2) {
                assertThat(hint.words())
                        .startsWith(Texts.of(hint.finding().rule()).title())
                        .contains(Texts.of(hint.finding().rule()).instead())
                        .doesNotContain(says);
            }
            if (hint.grade() == 3) assertThat(hint.words()).startsWith(says);
        }
    }

    @Test
    void onAnUntouchedBenchAHintSaysWhereToBegin() {
        Hints.Given first = asked(flawed().upTo(0), "A", 1).get(0);

        assertThat(first.finding().verdict()).isEqualTo(Verdict.OPEN);
        assertThat(first.words()).startsWith("Look ");
    }

    @Test
    void everyHintEndsWithWhatTheRuleSaysHoweverOftenItIsAsked() {
        List<Hints.Given> given = asked(flawed(), "B", 200);

        assertThat(given).hasSize(200);
        assertThat(given.get(199).grade()).isEqualTo(3);
    }

    @Test
    void whereAllIsSoundThereIsNothingToHintAt() {
        assertThat(Hints.next(after(WorkedAttempt.of(SHELF, "P07", "2026-01-12T09:30:00Z")), "A"))
                .isEmpty();
    }
}
