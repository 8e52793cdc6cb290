package org.marktwice.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.marktwice.bench.Action;
import org.marktwice.bench.Attempt;
import org.marktwice.bench.Bench;
import org.marktwice.bench.CannotDo;
import org.marktwice.files.FileRefused;
import org.marktwice.files.ScenarioFile;
import org.marktwice.scenario.Scenario;

class FaultNamedTest {
    private static final int SEED = 5;
    private final Rule rule = new FaultNamed();
    private final Scenario shelf = read("porch-shelf");
    private final Faulty other = Faulty.of(shelf, SEED);

    private static Scenario read(String id) {
        try {
            return ScenarioFile.read(Path.of("scenarios", id + ".scenario.json"));
        } catch (FileRefused e) {
            throw new AssertionError(e.getMessage(), e);
        }
    }

    private Situation after(Action... more) {
        List<Action> all = new ArrayList<>(other.given());
        all.add(new Action.TakeOver(900, SEED));
        all.addAll(List.of(more));
        return situation(all);
    }

    private Situation situation(List<Action> all) {
        try {
            return Situation.of(Bench.after(shelf, new Attempt(shelf.id(), "", "P07", "2026-01-12T09:30:00Z", all)));
        } catch (CannotDo e) {
            throw new AssertionError(e.getMessage(), e);
        }
    }

    private static Action named(Slipped slip) {
        return new Action.Fault(910, slip.board(), slip.slip().id());
    }

    private String elsewhere(Slipped slip) {
        return shelf.boards().stream()
                .map(b -> b.id())
                .filter(b -> !slip.touches().contains(b))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void everySlipIsOpenUntilItIsNamed() {
        assertThat(rule.judge(after())).hasSize(other.slips().size()).allSatisfy(f -> {
            assertThat(f.verdict()).isEqualTo(Verdict.OPEN);
            assertThat(f.subject()).isEqualTo(Finding.Subject.JOB);
        });
    }

    @Test
    void namedOnItsBoardItIsSound() {
        Slipped first = other.slips().get(0);

        assertThat(rule.judge(after(named(first))))
                .filteredOn(f -> f.verdict() == Verdict.SOUND)
                .singleElement()
                .satisfies(f -> assertThat(f.subject().board()).isEqualTo(first.board()));
    }

    @Test
    void namedOnAnotherBoardItIsClose() {
        Slipped first = other.slips().get(0);
        Action astray = new Action.Fault(910, elsewhere(first), first.slip().id());

        assertThat(rule.judge(after(astray, new Action.HandIn(920))))
                .filteredOn(f -> f.verdict() == Verdict.CLOSE)
                .singleElement()
                .satisfies(f -> assertThat(f.credit()).isEqualTo(0.5));
    }

    @Test
    void notNamedAtHandInItIsWrongAndSaysWhatItWas() {
        Situation handedIn = after(new Action.HandIn(920));

        assertThat(rule.judge(handedIn)).allSatisfy(f -> {
            assertThat(f.verdict()).isEqualTo(Verdict.WRONG);
            assertThat(Texts.says(f, shelf)).startsWith("Not named, on board ");
        });
    }

    @Test
    void aSlipThatNobodyMadeIsWrong() {
        Action madeUp = new Action.Fault(910, "A", Slip.HANDED_IN_UNCHECKED.id());

        assertThat(rule.judge(after(madeUp, new Action.HandIn(920))))
                .extracting(f -> f.says().key())
                .contains("says.not-made");
    }

    @Test
    void itIsAskedOnlyWhereWorkWasTakenOver() {
        assertThat(rule.isAsked(Situation.of(Bench.of(shelf)))).isFalse();
        assertThat(RuleBook.judge(Situation.of(Bench.of(shelf))).notJudged()).doesNotContain(rule.id());
    }

    /** Whoever writes other work in front of the line is not marked for naming what isn't there. */
    @Test
    void otherWorkThanTheSeedsIsNotJudged() {
        List<Action> all = new ArrayList<>(other.given().subList(0, 3));
        all.add(new Action.TakeOver(900, SEED));

        assertThat(rule.judge(situation(all))).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"peg-rail", "key-ledge", "porch-shelf", "plant-stage", "lantern-stand"})
    void aSeedGivesTheSameWorkAndEverySlipInItIsFound(String id) throws CannotDo {
        Scenario scenario = read(id);
        Set<Slip> met = new HashSet<>();
        for (int seed = 0; seed < 6; seed++) {
            Faulty work = Faulty.of(scenario, seed);
            assertThat(Faulty.of(scenario, seed)).isEqualTo(work);
            assertThat(work.slips()).isNotEmpty();
            assertThat(work.given()).noneMatch(Action.HandIn.class::isInstance);
            Bench bench = Bench.after(scenario, new Attempt(id, "", "P07", "2026-01-12T09:30:00Z", work.given()));
            List<String> faults = RuleBook.judge(Situation.of(bench)).entries().stream()
                    .filter(e -> e.finding().verdict() != Verdict.SOUND)
                    .map(e -> e.rule().id())
                    .toList();
            assertThat(faults)
                    .as("seed %d", seed)
                    .containsAll(work.slips().stream().map(Slipped::rule).toList());
            work.slips().forEach(s -> met.add(s.slip()));
        }
        assertThat(met).as("seeds differ").hasSizeGreaterThan(1);
    }
}
