package org.marktwice.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.marktwice.Fixtures;
import org.marktwice.files.ScenarioFile;
import org.marktwice.scenario.Proportions;
import org.marktwice.scenario.Proportions.Range;
import org.marktwice.scenario.Scenario;

/** Joints that are not drawn as large as their workshop has them are told. */
class DrawnInProportionTest {
    @Test
    void aDrawingThatDepartsFromItsWorkshopIsTold() {
        Scenario scenario = Fixtures.porchShelf();
        Proportions u = Proportions.USUAL;
        Proportions shallow = new Proportions(
                new Range(0.2, 0.25, 0.3), u.stop(), u.rebate(), u.haunch(), u.stub(), u.dowel(), u.chisels());

        assertThat(PracticeWords.departures(scenario)).isEmpty();
        // 6 of 18, where 3.6 to 5.4 are wanted and half a millimetre is a round figure's
        assertThat(PracticeWords.departures(
                        Fixtures.withPractice(scenario, scenario.practice().with(shallow))))
                .containsExactly(
                        "left-housing: the housing's depth is drawn 6 mm; the workshop has 3.6 to 5.4 mm here",
                        "right-housing: the housing's depth is drawn 6 mm; the workshop has 3.6 to 5.4 mm here");
    }

    static List<Scenario> shipped() throws Exception {
        List<Scenario> all = new ArrayList<>();
        try (Stream<Path> files = Files.list(Path.of("scenarios"))) {
            for (Path f : files.filter(f -> f.toString().endsWith(".scenario.json"))
                    .sorted()
                    .toList()) {
                all.add(ScenarioFile.read(f));
            }
        }
        assertThat(all).hasSizeGreaterThan(20);
        return all;
    }

    @ParameterizedTest
    @MethodSource("shipped")
    void everyShippedJobIsDrawnInItsWorkshopsProportions(Scenario scenario) {
        assertThat(PracticeWords.departures(scenario)).isEmpty();
    }
}
