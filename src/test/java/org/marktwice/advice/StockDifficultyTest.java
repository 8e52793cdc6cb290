package org.marktwice.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.marktwice.Fixtures;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Turn;
import org.marktwice.scenario.Rack;
import org.marktwice.scenario.Scenario;
import org.marktwice.scenario.Stock;
import org.marktwice.timber.Board;
import org.marktwice.timber.SpeciesTable;

/** What a stock promises, told by the exact model answer: every part can be supplied clear, and harder is harder. */
class StockDifficultyTest {
    private static final int SEEDS = 25;

    private static Scenario scenario(String species, int seed, double difficulty) {
        Scenario base = Fixtures.porchShelf();
        Stock stock = new Stock(seed, SpeciesTable.byId(species).orElseThrow(), 1, difficulty);
        return Fixtures.withBoards(base, Rack.fill(stock, base.drawing(), base.practice()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"scots-pine", "norway-spruce", "sugar-maple"})
    void everyPartCanBeSuppliedClearAndHarderStockHasMoreWrongTurns(String species) {
        List<Double> shares = new ArrayList<>();
        for (double difficulty : List.of(0.0, 0.25, 0.5)) {
            int wrong = 0;
            int turns = 0;
            for (int seed = 0; seed < SEEDS; seed++) {
                Scenario scenario = scenario(species, seed, difficulty);
                ModelAnswer answer = ModelAnswer.of(scenario);
                assertThat(answer.supplied()).isEqualTo(3);
                assertThat(answer.placings()).as("%s, seed %d", species, seed).allMatch(Option::clear);
                for (Option placing : answer.placings()) {
                    Board board = placing.placing().board();
                    Part part = placing.placing().part();
                    for (Turn turn : Options.turns(board, part)) {
                        turns++;
                        if (!Options.best(scenario, board, part, turn).clear()) wrong++;
                    }
                }
            }
            shares.add((double) wrong / turns);
        }
        assertThat(shares.get(0)).isLessThan(0.02);
        assertThat(shares.get(1)).isGreaterThan(shares.get(0) + 0.02);
        assertThat(shares.get(2)).isGreaterThan(shares.get(1) + 0.05);
    }
}
