package org.marktwice.timber;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.marktwice.timber.Habit.Span;

class LogTest {
    private static Log grow(Species species, double knotty, long seed) {
        return Log.grow(species, 160, 4200, knotty, false, Chance.of(seed));
    }

    static Stream<Species> species() {
        return SpeciesTable.all().stream();
    }

    private static void within(Span span, double value) {
        assertThat(value).isBetween(span.least() - 0.05, span.most() + 0.05);
    }

    @ParameterizedTest
    @MethodSource("species")
    void branchesKeepToTheSpeciesRanges(Species species) {
        Habit habit = Habit.of(species);
        for (int seed = 0; seed < 20; seed++) {
            Log log = grow(species, seed / 20.0, seed);
            within(habit.ring(), log.ringWidth());
            assertThat(log.branches()).isNotEmpty().isSortedAccordingTo((a, b) -> Double.compare(a.x(), b.x()));
            assertThat(log.branches()).extracting(Knot::id).doesNotHaveDuplicates();
            for (Knot branch : log.branches()) {
                within(habit.lean(), branch.lean());
                within(habit.live(), branch.deadFrom());
                assertThat(branch.azimuth()).isGreaterThan(-180).isLessThanOrEqualTo(180);
                assertThat(branch.maxRadius())
                        .isBetween(
                                habit.hasWhorls() && habit.scattered().most() == 0
                                        ? habit.whorlRadius().least()
                                        : habit.scatteredRadius().least(),
                                Math.max(
                                        habit.whorlRadius().most(),
                                        habit.scatteredRadius().most()));
                assertThat(branch.coneLength()).as("grown out before it died").isLessThan(branch.deadFrom() * 1.05);
                assertThat(branch.endsAt()).isGreaterThan(branch.deadFrom());
                assertThat(Chance.tenth(branch.x())).isEqualTo(branch.x());
            }
        }
    }

    /** In a pine's log branches come in rings, with bare stem between. */
    @Test
    void pinesHaveWhorlsAndNothingBetween() {
        Habit habit = Habit.of(SpeciesTable.byId("scots-pine").orElseThrow());
        List<Knot> branches =
                grow(SpeciesTable.byId("scots-pine").orElseThrow(), 0.5, 5).branches();
        int inWhorl = 1;
        for (int i = 1; i < branches.size(); i++) {
            double gap = branches.get(i).x() - branches.get(i - 1).x();
            if (gap < 20) {
                inWhorl++;
                continue;
            }
            assertThat(gap)
                    .isBetween(habit.spacing().least() - 17, habit.spacing().most() + 17);
            assertThat(inWhorl).isBetween(4, 7);
            inWhorl = 1;
        }
    }

    @Test
    void theBranchesOfAWhorlStandAllRoundTheStem() {
        Log log = grow(SpeciesTable.byId("scots-pine").orElseThrow(), 0.5, 6);
        double first = log.branches().get(0).x();
        List<Double> azimuths = log.branches().stream()
                .filter(b -> b.x() < first + 20)
                .map(Knot::azimuth)
                .sorted()
                .toList();
        for (int i = 0; i < azimuths.size(); i++) {
            double next = i + 1 < azimuths.size() ? azimuths.get(i + 1) : azimuths.get(0) + 360;
            assertThat(next - azimuths.get(i))
                    .isBetween(360.0 / azimuths.size() - 28.2, 360.0 / azimuths.size() + 28.2);
        }
    }

    @ParameterizedTest
    @MethodSource("species")
    void nearerToTheCrownThereAreMoreBranchesThatComeOut(Species species) {
        long low = 0;
        long high = 0;
        for (int seed = 0; seed < 20; seed++) {
            low += comeOut(grow(species, 0, seed));
            high += comeOut(grow(species, 1, seed));
        }
        assertThat(high).isGreaterThan(low * 2);
    }

    private static long comeOut(Log log) {
        return log.branches().stream()
                .filter(b -> b.endsAt() == Double.POSITIVE_INFINITY)
                .count();
    }

    @Test
    void aLogPrunedYoungIsClearAllAround() {
        Log log = Log.grow(SpeciesTable.byId("red-pine").orElseThrow(), 160, 4200, 1, true, Chance.of(1));
        assertThat(log.branches()).isNotEmpty().allMatch(b -> b.endsAt() <= Log.PRUNED);
    }
}
