package org.marktwice.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.marktwice.rulebook.PracticeWords.Setting;
import org.marktwice.scenario.Practice;
import org.marktwice.scenario.Proportions;

/** Every setting of the workshop's practice in words, and whatever departs from the usual named as such. */
class PracticeWordsTest {
    private static final Practice USUAL = Practice.DEFAULT;

    @Test
    void thePageHasEverySettingThatAScenarioCanMake() throws Exception {
        JsonNode schema = JsonMapper.builder()
                .build()
                .readTree(Path.of("scenarios/schema/scenario.schema.json").toFile());
        List<String> keys = new ArrayList<>();
        schema.at("/$defs/practice/properties").fieldNames().forEachRemaining(keys::add);
        assertThat(keys).hasSizeGreaterThan(8);
        keys.add("marks");
        assertThat(PracticeWords.page(USUAL)).extracting(Setting::key).containsExactlyInAnyOrderElementsOf(keys);
        assertThat(PracticeWords.page(USUAL)).allSatisfy(s -> {
            assertThat(List.of(s.name(), s.value(), s.usual())).noneMatch(String::isBlank);
            assertThat(s.meaning()).endsWith(".");
            assertThat(s.choices()).endsWith(".");
        });
    }

    @Test
    void whereNothingIsSetNothingDeparts() {
        assertThat(PracticeWords.page(USUAL))
                .noneMatch(Setting::departs)
                .allMatch(s -> s.value().equals(s.usual()));
        assertThat(PracticeWords.all(USUAL)).extracting(Setting::line).noneMatch(l -> l.contains("usual:"));
    }

    static Stream<Arguments> departures() {
        Proportions p = Proportions.USUAL;
        Proportions deep = new Proportions(
                new Proportions.Range(1 / 3.0, 0.4, 0.5),
                p.stop(),
                p.rebate(),
                p.haunch(),
                p.stub(),
                p.dowel(),
                p.chisels());
        return Stream.of(
                Arguments.of(
                        "faceSide",
                        USUAL.with(Practice.FaceSide.BEST_OUT),
                        "Face side: the best surface, turned out (usual: the truest surface, turned in)"),
                Arguments.of(
                        "heartSide",
                        USUAL.with(Practice.HeartSide.AWAY),
                        "Heart side: away from the middle of the job (usual: any way)"),
                Arguments.of(
                        "knotMargin",
                        USUAL.with(new Practice.KnotMargin(12, 1.5)),
                        "Knots: 12 mm or 1.5 knot diameters from a joint, whichever is more (usual: 10 mm or one knot"
                                + " diameter from a joint, whichever is more)"),
                Arguments.of(
                        "cupRatio",
                        USUAL.with(new Practice.CupRatio(150, 100)),
                        "Cup: good up to 1 in 150 of the width, refused beyond 1 in 100 (usual: good up to 1 in 100 of"
                                + " the width, refused beyond 1 in 75)"),
                Arguments.of("size", USUAL.withSize(2), "Sizes: ± 2 mm (first attempt) (usual: ± 1 mm (standard))"),
                Arguments.of(
                        "gap",
                        USUAL.withGap(0.3),
                        "Gaps: good up to 0.15 mm, fair up to 0.3 mm (usual: good up to 0.5 mm, fair up to 1 mm)"),
                Arguments.of("proportions", USUAL.with(deep), "Joints: a housing's depth 1/3 to 1/2 of the thickness"),
                Arguments.of(
                        "worth",
                        USUAL.withWorth(Map.of("knot-clear-of-joint", 5.0)),
                        "Marks changed: Knots clear of the joints 5 instead of 3"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("departures")
    void whateverDepartsIsNamedOnEverySheet(String key, Practice set, String line) {
        assertThat(PracticeWords.all(set))
                .filteredOn(Setting::departs)
                .singleElement()
                .satisfies(s -> {
                    assertThat(s.key()).isEqualTo(key);
                    assertThat(s.line()).isEqualTo(line);
                });
    }

    /** How much help there is differs from level to level by design: it is named, and not called unusual. */
    @Test
    void helpIsEachExercisesOwn() {
        Practice set = USUAL.with(Practice.Guidance.EACH_STEP).withAids(Set.of(Practice.Aid.UNDO));
        assertThat(PracticeWords.all(set))
                .filteredOn(Setting::isHelp)
                .extracting(Setting::line)
                .containsExactly("Told: after each step", "Aids: undo");
        assertThat(PracticeWords.page(set)).noneMatch(Setting::departs);
    }
}
