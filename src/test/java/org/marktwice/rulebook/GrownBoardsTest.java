package org.marktwice.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.marktwice.Fixtures;
import org.marktwice.bench.Bench;
import org.marktwice.scenario.Rack;
import org.marktwice.scenario.Scenario;
import org.marktwice.scenario.Stock;
import org.marktwice.timber.SpeciesTable;

/** An exercise with boards from a seed is fair: whoever does all of it well gets all its marks. */
class GrownBoardsTest {
    @ParameterizedTest
    @ValueSource(strings = {"scots-pine", "norway-spruce", "black-walnut"})
    void carefulWorkGetsFullMarksWhateverTheSeed(String species) throws Exception {
        Scenario base = Fixtures.porchShelf();
        for (int seed = 0; seed < 12; seed++) {
            Stock stock = new Stock(seed, SpeciesTable.byId(species).orElseThrow(), 2, seed % 4 / 3.0);
            Scenario scenario = Fixtures.withBoards(base, Rack.fill(stock, base.drawing(), base.practice()));
            Bench bench = Bench.after(scenario, WorkedAttempt.of(scenario, "model", "2026-02-03T09:10:00Z"));
            MarkSheet sheet = RuleBook.judge(Situation.of(bench));
            assertThat(sheet.marks())
                    .as("%s, seed %d: %s", species, seed, sheet.entries())
                    .isEqualTo(sheet.outOf(), within(1e-9));
        }
    }
}
