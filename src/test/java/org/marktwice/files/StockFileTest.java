package org.marktwice.files;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.marktwice.scenario.Scenario;
import org.marktwice.scenario.Stock;
import org.marktwice.timber.Board;
import org.marktwice.timber.SpeciesTable;

/** Scenarios that name a stock instead of boards. */
class StockFileTest {
    /** The sample's drawing, with boards grown from this stock. */
    private static Scenario read(String stock) throws FileRefused {
        return ScenarioFile.read("x", Samples.utf8(text(stock)));
    }

    private static String text(String stock) {
        String sample = Samples.text(Samples.SCENARIO);
        return sample.substring(0, sample.indexOf("\"boards\"")) + "\"stock\": " + stock + "}";
    }

    private static List<Board.Facts> facts(Scenario scenario) {
        return scenario.boards().stream().map(Board::facts).toList();
    }

    /**
     * Written once and kept: the same boards come on every machine and with every version of Java, or exercises handed out
     * would no longer be the same.
     */
    @Test
    void theBoardsAreThoseOfTheGoldenFile() throws FileRefused {
        assertThat(grown()).isEqualTo(Samples.text("grown-boards.golden.json"));
    }

    static String grown() throws FileRefused {
        List<Object> all = new ArrayList<>();
        for (String stock : List.of(
                "{\"seed\": 7, \"species\": \"scots-pine\", \"spare\": 1, \"difficulty\": 0.6}",
                "{\"seed\": 2147483647, \"species\": \"norway-spruce\", \"spare\": 3, \"difficulty\": 1}",
                "{\"seed\": 0, \"species\": \"sugar-maple\", \"difficulty\": 0}",
                "{\"seed\": 1815, \"species\": \"ponderosa-pine\"}")) {
            List<Map<String, Object>> boards =
                    read(stock).boards().stream().map(BoardWriter::board).toList();
            all.add(Map.of("boards", boards));
        }
        return JsonText.pretty(all);
    }

    @Test
    void whatIsNotSaidHasItsDefault() throws FileRefused {
        Scenario scenario = read("{\"seed\": 7, \"species\": \"red-pine\"}");
        assertThat(scenario.stock())
                .contains(new Stock(7, SpeciesTable.byId("red-pine").orElseThrow(), 0, 0.5));
        assertThat(scenario.boards()).hasSize(3);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{\"seed\": 7, \"species\": \"scots-pine\", \"spare\": 1, \"difficulty\": 0.6}",
                "{\"seed\": 3, \"species\": \"white-ash\"}"
            })
    void aStockComesBackAsItWas(String stock) throws FileRefused {
        Scenario scenario = read(stock);
        byte[] bytes = ScenarioWriter.bytes(scenario);
        String text = new String(bytes, StandardCharsets.UTF_8);
        assertThat(text).contains("\"stock\"").doesNotContain("\"boards\"");
        assertThat(SchemaTest.SCENARIO.validate(text, InputFormat.JSON)).isEmpty();
        Scenario again = ScenarioFile.read("x", bytes);
        assertThat(again.stock()).isEqualTo(scenario.stock());
        assertThat(facts(again)).isEqualTo(facts(scenario));
        assertThat(ScenarioWriter.bytes(again)).isEqualTo(bytes);
    }

    /** Given one by one, grown boards pass every check that boards in a file have to pass, and look the same. */
    @Test
    void everyGrownBoardPassesTheReadersChecks() throws FileRefused {
        for (int seed = 0; seed < 40; seed++) {
            String species =
                    SpeciesTable.all().get(seed % SpeciesTable.all().size()).id();
            Scenario grown = read("{\"seed\": " + seed + ", \"species\": \"" + species
                    + "\", \"spare\": 2, \"difficulty\": " + seed % 5 / 4.0 + "}");
            Scenario given = new Scenario(
                    grown.id(),
                    grown.title(),
                    grown.level(),
                    grown.brief(),
                    grown.stages(),
                    grown.practice(),
                    grown.drawing(),
                    grown.boards(),
                    "");
            byte[] bytes = ScenarioWriter.bytes(given);
            assertThat(SchemaTest.SCENARIO.validate(new String(bytes, StandardCharsets.UTF_8), InputFormat.JSON))
                    .isEmpty();
            assertThat(facts(ScenarioFile.read("x", bytes))).isEqualTo(facts(grown));
        }
    }
}
