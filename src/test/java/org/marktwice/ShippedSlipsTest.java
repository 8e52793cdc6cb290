package org.marktwice;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.marktwice.bench.Attempt;
import org.marktwice.bench.Bench;
import org.marktwice.bench.CannotDo;
import org.marktwice.files.FileRefused;
import org.marktwice.files.ScenarioFile;
import org.marktwice.rulebook.Finding;
import org.marktwice.rulebook.MarkSheet;
import org.marktwice.rulebook.RuleBook;
import org.marktwice.rulebook.Situation;
import org.marktwice.rulebook.Slip;
import org.marktwice.rulebook.Slipped;
import org.marktwice.rulebook.Slips;
import org.marktwice.rulebook.Verdict;
import org.marktwice.rulebook.WorkedAttempt;
import org.marktwice.scenario.Scenario;

/**
 * Every slip is found on every shipped scenario in which it can occur, wherever it is made; and a perfect attempt gets no
 * false finding.
 */
class ShippedSlipsTest {
    private static final Set<Verdict> FAULTS = Set.of(Verdict.WRONG, Verdict.CLOSE);

    static List<Path> scenarios() throws IOException {
        return ShippedScenariosTest.scenarios();
    }

    @ParameterizedTest
    @MethodSource("scenarios")
    void everySlipIsFoundByItsRuleOnItsBoard(Path file) throws FileRefused {
        Scenario scenario = ScenarioFile.read(file);
        Attempt good = WorkedAttempt.of(scenario, "model", "2026-02-03T09:10:00Z");
        Situation start = Situation.of(Bench.of(scenario));
        int made = 0;
        for (Slip slip : Slip.values()) {
            for (Slipped slipped : Slips.all(slip, start, good)) {
                assertThat(faults(start, slipped.attempt()))
                        .as("%s on board %s", slip.id(), slipped.board())
                        .anyMatch(f -> f.rule().equals(slipped.rule()) && isAbout(f, slipped));
                made++;
            }
        }
        assertThat(made).isGreaterThan(4);
    }

    /** A finding about a pair is laid to one of its two boards. */
    private static boolean isAbout(Finding finding, Slipped slipped) {
        String board = finding.subject().board();
        return slipped.board().equals(board)
                || finding.rule().equals("handed-pair")
                        && board != null
                        && slipped.touches().contains(board);
    }

    private static List<Finding> faults(Situation start, Attempt attempt) {
        return RuleBook.judge(after(start, attempt)).entries().stream()
                .map(MarkSheet.Entry::finding)
                .filter(f -> FAULTS.contains(f.verdict()))
                .toList();
    }

    private static Situation after(Situation start, Attempt attempt) {
        try {
            return start.at(Bench.after(start.scenario(), attempt));
        } catch (CannotDo e) {
            throw new AssertionError(e.getMessage(), e);
        }
    }

    @ParameterizedTest
    @EnumSource(Slip.class)
    void everySlipCanOccurInTwoShippedScenarios(Slip slip) throws IOException, FileRefused {
        Set<String> met = new TreeSet<>();
        for (Path file : scenarios()) {
            Scenario scenario = ScenarioFile.read(file);
            if (met.size() > 1) break;
            Attempt good = WorkedAttempt.of(scenario, "model", "2026-02-03T09:10:00Z");
            if (!Slips.all(slip, scenario, good).isEmpty()) met.add(scenario.id());
        }
        assertThat(met).hasSizeGreaterThan(1);
    }

    @ParameterizedTest
    @MethodSource("scenarios")
    void severalSlipsAtOnceAreAllFound(Path file) throws FileRefused {
        Scenario scenario = ScenarioFile.read(file);
        Attempt good = WorkedAttempt.of(scenario, "model", "2026-02-03T09:10:00Z");
        Situation start = Situation.of(Bench.of(scenario));
        Map<Slip, Integer> met = new EnumMap<>(Slip.class);
        for (long seed = 1; seed <= 20; seed++) {
            List<Slip> two = new ArrayList<>(List.of(Slip.values()));
            java.util.Collections.shuffle(two, new java.util.Random(seed));
            List<Slipped> made = Slips.several(two.subList(0, 3), start, good, seed);
            if (made.isEmpty()) continue;
            List<Finding> faults = faults(start, made.get(made.size() - 1).attempt());
            for (Slipped slipped : made) {
                assertThat(faults)
                        .as("seed %d, %s on board %s", seed, slipped.slip().id(), slipped.board())
                        .anyMatch(f -> f.rule().equals(slipped.rule()) && isAbout(f, slipped));
                met.merge(slipped.slip(), 1, Integer::sum);
            }
        }
        assertThat(met).isNotEmpty();
    }

    @ParameterizedTest
    @MethodSource("scenarios")
    void aSeedMakesTheSameSlipEachTime(Path file) throws FileRefused {
        Scenario scenario = ScenarioFile.read(file);
        Attempt good = WorkedAttempt.of(scenario, "model", "2026-02-03T09:10:00Z");
        Set<Slipped> seen = new java.util.HashSet<>();
        for (long seed = 0; seed < 12; seed++) {
            Slipped once =
                    Slips.one(Slip.MARK_TO_WRONG_ARRIS, scenario, good, seed).orElseThrow();
            assertThat(Slips.one(Slip.MARK_TO_WRONG_ARRIS, scenario, good, seed))
                    .contains(once);
            seen.add(once);
        }
        assertThat(seen).as("seeds differ").hasSizeGreaterThan(1);
    }
}
