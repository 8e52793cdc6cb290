package org.marktwice.feedback;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.marktwice.bench.Action;
import org.marktwice.bench.Bench;
import org.marktwice.bench.CannotDo;
import org.marktwice.rulebook.Finding;
import org.marktwice.rulebook.MarkSheet;
import org.marktwice.rulebook.Situation;
import org.marktwice.rulebook.Verdict;
import org.marktwice.view.Samples;

class SheetModelTest {
    private final SheetModel flawed = Samples.sheet("porch-shelf", "flawed");

    @Test
    void everyFindingStandsInOneGroupAndTheMarksAddUp() {
        List<MarkSheet.Entry> shown = flawed.groups().stream()
                .flatMap(g -> g.lines().stream())
                .map(SheetModel.Line::entry)
                .toList();
        assertThat(shown).containsExactlyInAnyOrderElementsOf(flawed.sheet().entries());
        assertThat(flawed.groups().stream().mapToDouble(SheetModel.Group::marks).sum())
                .isEqualTo(flawed.sheet().marks(), within(1e-9));
        assertThat(flawed.groups().stream().mapToDouble(SheetModel.Group::outOf).sum())
                .isEqualTo(flawed.sheet().outOf(), within(1e-9));
    }

    @Test
    void theBoardThatLostMostComesFirstAndOnItTheWorst() {
        assertThat(flawed.groups())
                .hasSizeGreaterThan(2)
                .isSortedAccordingTo(
                        Comparator.comparingDouble(SheetModel.Group::lost).reversed());
        for (SheetModel.Group group : flawed.groups()) {
            List<Double> lost = new ArrayList<>();
            group.lines().forEach(l -> lost.add(l.entry().lost()));
            assertThat(lost).as(group.title()).isSortedAccordingTo(Comparator.<Double>reverseOrder());
        }
        assertThat(flawed.groups().get(0).lines().get(0).verdict()).isEqualTo(Verdict.WRONG);
    }

    @Test
    void groupsAreCalledByBoardAndWhatBecameOfIt() {
        assertThat(flawed.groups())
                .extracting(SheetModel.Group::title)
                .allSatisfy(t -> assertThat(t).matches("Board [A-Z] · .+|The job as a whole"));
        assertThat(flawed.groups())
                .extracting(SheetModel.Group::title)
                .anyMatch(t -> t.endsWith("Right upright"))
                .anyMatch(t -> t.endsWith("Left upright"));
    }

    @Test
    void theStepThatDecidedIsThatOfTheFindingWhichLostMost() {
        List<MarkSheet.Entry> decided = flawed.sheet().entries().stream()
                .filter(e -> e.finding().step() != null)
                .toList();
        double most = decided.stream().mapToDouble(MarkSheet.Entry::lost).max().orElseThrow();
        int step = flawed.decidedAt(f -> true).orElseThrow();
        assertThat(decided).anyMatch(e -> Objects.equals(e.finding().step(), step) && e.lost() == most);
        assertThat(flawed.decidedAt(f -> false)).isEmpty();
        assertThat(flawed.decidedAt(f -> f.step() == null)).isEmpty();
    }

    @Test
    void aPartHasTheWorstVerdictOfWhatIsSaidAboutIt() {
        Map<String, Verdict> verdicts = flawed.verdicts();
        assertThat(verdicts).containsOnlyKeys("upright-left", "upright-right", "shelf");
        assertThat(verdicts).containsValue(Verdict.WRONG);
        assertThat(Samples.sheet("porch-shelf", "perfect").verdicts().values()).doesNotContain(Verdict.WRONG);
    }

    @Test
    void aPerfectSheetLosesNothingAndNamesWhatHadNothingToJudge() {
        SheetModel perfect = Samples.sheet("peg-rail", "perfect");
        assertThat(perfect.sheet().marks())
                .isEqualTo(perfect.sheet().outOf(), within(1e-9))
                .isPositive();
        assertThat(perfect.notJudged()).hasSameSizeAs(perfect.sheet().notJudged());
    }

    @Test
    void theEstimateStandsBesideWhatCameOfIt() throws CannotDo {
        assertThat(flawed.estimate().given()).isFalse();

        Bench bench = Bench.of(Samples.scenario("porch-shelf"));
        for (Action action : Samples.work("porch-shelf", "flawed")) bench = bench.after(action);
        bench = bench.after(new Action.Estimate(900, Set.of("handed-pair", "board-fits-part")));
        SheetModel.Estimate estimate = SheetModel.of(Situation.of(bench)).estimate();

        assertThat(estimate.given()).isTrue();
        assertThat(estimate.foreseen()).containsExactly("Opposite parts are a pair of hands");
        assertThat(estimate.held()).containsExactly("The board fits its part");
        assertThat(estimate.missed()).contains("Knots clear of the joints");
    }

    @ParameterizedTest
    @CsvSource({
        "12.345, mm, 16, '12.3 mm, limit 16.0'",
        "0.26, degrees, 0.5, '0.3°, limit 0.5°'",
        "3, count, 2, '3, limit 2'",
        "0.014, ratio, 0.01, '0.01, limit 0.01'",
        "31, %, 30, '31 %, limit 30 %'",
        "170, mm, 0, '170.0 mm'"
    })
    void aFigureStandsWithItsLimit(double value, String unit, double limit, String reads) {
        assertThat(SheetModel.figure(new Finding.Measured(value, unit, limit))).isEqualTo(reads);
    }

    @Test
    void noFigureReadsAsNothing() {
        assertThat(SheetModel.figure(null)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"3, 3", "2.5, 2.5", "0.333333, 0.33", "0.999, 1", "10, 10", "0, 0", "-0.001, 0"})
    void aNumberHasAsFewPlacesAsTellIt(double value, String reads) {
        assertThat(SheetModel.number(value)).isEqualTo(reads);
    }

    @Test
    void asTextItHoldsTheTotalEveryFindingAndTheSettings() {
        String text = SheetText.of(flawed, "P07");
        assertThat(text).startsWith("Porch shelf, level 3\nLearner: P07\nMarks: " + flawed.total() + "\n");
        flawed.groups().forEach(g -> assertThat(text).contains("\n" + g.title() + " ("));
        flawed.groups().forEach(g -> g.lines().forEach(l -> assertThat(text).contains(l.word() + "  ", l.title())));
        assertThat(text).contains("Knots: 10 mm").contains("At the real bench");
        assertThat(text.lines()).allMatch(l -> l.length() <= 120);
    }
}
