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
import org.marktwice.scenario.Practice;
import org.marktwice.scenario.Proportions;
import org.marktwice.scenario.Proportions.Range;
import org.marktwice.scenario.Scenario;
import org.marktwice.scenario.Stage;

/** The settings in force are named; of joints' proportions those that depart from the usual. */
class PracticeWordsTest {
    private static Proportions shallow() {
        Proportions u = Proportions.USUAL;
        return new Proportions(
                new Range(0.2, 0.25, 0.3), u.stop(), u.rebate(), u.haunch(), u.stub(), u.dowel(), List.of(6.0, 9.5));
    }

    private static Stream<String> lines(Practice practice) {
        return PracticeWords.all(practice).stream().map(PracticeWords.Setting::line);
    }

    @Test
    void usualProportionsAreNotNamed() {
        assertThat(lines(Practice.DEFAULT)).noneMatch(l -> l.startsWith("Joints"));
    }

    @Test
    void proportionsThatDepartAreNamed() {
        assertThat(lines(Practice.DEFAULT.with(shallow())))
                .contains("Joints: a housing's depth 0.2 to 0.3 of the thickness; chisels 6, 9.5 mm");
    }

    @Test
    void aDrawingThatDepartsFromItsWorkshopIsTold() {
        Scenario scenario = Fixtures.porchShelf();
        assertThat(PracticeWords.departures(scenario)).isEmpty();

        Practice strict = scenario.practice().with(shallow());
        // 6 of 18, where 3.6 to 5.4 are wanted and half a millimetre is a round figure's
        assertThat(PracticeWords.departures(Fixtures.withPractice(scenario, strict)))
                .containsExactly(
                        "left-housing: the housing's depth is drawn 6 mm; the workshop has 3.6 to 5.4 mm here",
                        "right-housing: the housing's depth is drawn 6 mm; the workshop has 3.6 to 5.4 mm here");
    }

    static List<Scenario> setOut() throws Exception {
        List<Scenario> all = new ArrayList<>();
        try (Stream<Path> files = Files.list(Path.of("scenarios"))) {
            for (Path f : files.filter(f -> f.toString().endsWith(".scenario.json"))
                    .sorted()
                    .toList()) {
                Scenario scenario = ScenarioFile.read(f);
                if (scenario.stages().contains(Stage.SETTING_OUT)) all.add(scenario);
            }
        }
        assertThat(all).hasSizeGreaterThan(5);
        return all;
    }

    @ParameterizedTest
    @MethodSource("setOut")
    void everyShippedJobThatIsSetOutIsDrawnInItsWorkshopsProportions(Scenario scenario) {
        assertThat(PracticeWords.departures(scenario)).isEmpty();
    }
}
