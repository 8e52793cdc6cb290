package org.marktwice;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.marktwice.advice.Difficulty;
import org.marktwice.drawing.Joint;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.PartStuff;
import org.marktwice.files.ScenarioFile;
import org.marktwice.rulebook.MarkSheet;
import org.marktwice.rulebook.Slip;
import org.marktwice.rulebook.Verdict;
import org.marktwice.scenario.Practice;
import org.marktwice.scenario.Scenario;
import org.marktwice.scenario.Stage;
import org.marktwice.timber.Board;

/** The exercises that are shipped make up a course: six levels, each harder than the one before and with less help. */
class CourseTest {
    private static final int LEVELS = 6;
    private static final int LEAST_EXERCISES = 18;

    /** The rules that tell of a slip, by its id; any one of them is enough. */
    private static final Map<String, Set<String>> TOLD_BY = toldBy();

    private static Map<String, Set<String>> toldBy() {
        Map<String, Set<String>> told = new TreeMap<>();
        told.put("marks-without-shared-arris", Set.of("marks-share-arris"));
        told.put("mark-to-wrong-arris", Set.of("marks-share-arris"));
        told.put("unsound-surface-marked", Set.of("marked-surface-true", "proved-before-marked"));
        told.put("third-surface-marked", Set.of("one-pair-of-marks"));
        told.put("two-lefts", Set.of("handed-pair"));
        told.put("face-sides-not-as-drawn", Set.of("marks-as-drawn"));
        told.put("square-walked-round", Set.of("lines-meet", "stock-on-reference"));
        told.put("gauged-from-back", Set.of("stock-on-reference", "depth-as-set"));
        told.put("chained-sizes", Set.of("one-datum"));
        told.put("nominal-thickness", Set.of("width-from-mate"));
        told.put("wrong-side-of-line", Set.of("waste-shown"));
        told.put("rule-misread", Set.of("place-as-drawn"));
        told.put("heart-side-confused", Set.of("heart-side-as-set"));
        told.put("knot-seen-on-one-surface", Set.of("knot-clear-of-joint"));
        told.put("handed-in-unchecked", Set.of("measured-when-near"));
        told.put("marks-on-sheet-or-shaped", Set.of("one-pair-of-marks"));
        told.put("turned-over-for-end-for-end", Set.of("best-turn"));
        told.put("refused-or-used-wrongly", Set.of("refusal-justified"));
        return told;
    }

    static List<Path> files() throws Exception {
        return ShippedScenariosTest.scenarios();
    }

    private static List<Scenario> course() throws Exception {
        List<Scenario> course = new ArrayList<>();
        for (Path file : files()) course.add(ScenarioFile.read(file));
        return course;
    }

    private static Map<Integer, List<Scenario>> byLevel() throws Exception {
        Map<Integer, List<Scenario>> levels = new TreeMap<>();
        for (Scenario one : course()) {
            levels.computeIfAbsent(one.level(), l -> new ArrayList<>()).add(one);
        }
        return levels;
    }

    @Test
    void thereAreSixLevelsOfThreeExercisesAtLeast() throws Exception {
        assertThat(course()).hasSizeGreaterThanOrEqualTo(LEAST_EXERCISES);
        assertThat(byLevel().keySet()).containsExactly(1, 2, 3, 4, 5, 6);
        assertThat(byLevel().values()).allSatisfy(level -> assertThat(level).hasSizeGreaterThanOrEqualTo(3));
    }

    private static boolean setsOut(Scenario scenario) {
        return scenario.stages().contains(Stage.SETTING_OUT);
    }

    /** By the figures computed from boards and drawing, the mean of a level; they don't tell how much there is to set out. */
    @Test
    void eachLevelIsHarderThanTheOneBefore() throws Exception {
        List<Double> means = new ArrayList<>();
        for (List<Scenario> level : byLevel().values()) {
            means.add(level.stream()
                    .filter(s -> !setsOut(s))
                    .mapToDouble(s -> Difficulty.of(s).value())
                    .average()
                    .orElseThrow());
        }
        for (int i = 1; i < LEVELS; i++) {
            assertThat(means.get(i))
                    .as("levels %d and %d of %s", i, i + 1, means)
                    .isGreaterThan(means.get(i - 1));
        }
    }

    @Test
    void guidanceFades() throws Exception {
        List<Integer> earliest = new ArrayList<>();
        for (List<Scenario> level : byLevel().values()) {
            List<Practice.Guidance> all =
                    level.stream().map(s -> s.practice().guidance()).toList();
            int least = all.stream().mapToInt(Enum::ordinal).min().orElseThrow();
            if (!earliest.isEmpty()) assertThat(least).isGreaterThanOrEqualTo(earliest.get(earliest.size() - 1));
            earliest.add(least);
        }
        assertThat(earliest.get(0)).isEqualTo(Practice.Guidance.EACH_STEP.ordinal());
        assertThat(course()).extracting(s -> s.practice().guidance()).contains(Practice.Guidance.values());
    }

    /** Where boards are turned: an aid that no exercise of a level grants doesn't come back. */
    @Test
    void aidsFade() throws Exception {
        Set<Practice.Aid> left = EnumSet.allOf(Practice.Aid.class);
        for (List<Scenario> level : byLevel().values()) {
            List<Scenario> turned = level.stream()
                    .filter(s -> s.stages().contains(Stage.TURNS) && !setsOut(s))
                    .toList();
            if (turned.isEmpty()) continue;
            Set<Practice.Aid> granted = new HashSet<>();
            turned.forEach(s -> granted.addAll(s.practice().aids()));
            assertThat(left).as("level %d", level.get(0).level()).containsAll(granted);
            left = granted;
        }
        assertThat(left).isEmpty();
    }

    @Test
    void allThatALearnerMeetsAtTheBenchIsThere() throws Exception {
        List<Scenario> course = course();
        Set<Class<?>> joints = new HashSet<>();
        Set<PartStuff> stuff = new HashSet<>();
        for (Scenario one : course) {
            one.drawing().joints().forEach(j -> joints.add(j.getClass()));
            one.drawing().parts().forEach(p -> stuff.add(p.stuff()));
        }
        assertThat(joints)
                .contains(
                        Joint.ThroughHousing.class,
                        Joint.StoppedHousing.class,
                        Joint.Rebate.class,
                        Joint.Halving.class,
                        Joint.Bridle.class,
                        Joint.MortiseTenon.class,
                        Joint.Dowelled.class,
                        Joint.Butt.class);
        assertThat(stuff).containsExactlyInAnyOrder(PartStuff.values());
        assertThat(course).as("eight turns").anyMatch(s -> s.boards().stream().anyMatch(Board::isSquare));
        assertThat(course).extracting(s -> s.practice().heartSide()).contains(Practice.HeartSide.AWAY);
        assertThat(course).extracting(s -> s.practice().faceSide()).contains(Practice.FaceSide.values());
        assertThat(course).as("boards of one log").anyMatch(s -> s.stock().isPresent());
    }

    /** The last level is whole jobs, with boards to spare. */
    @Test
    void itEndsWithFullJobs() throws Exception {
        List<Scenario> last =
                byLevel().get(LEVELS).stream().filter(s -> !setsOut(s)).toList();
        assertThat(last).hasSizeGreaterThanOrEqualTo(3).allSatisfy(s -> {
            List<Part> parts = s.drawing().parts();
            assertThat(parts).hasSizeGreaterThanOrEqualTo(6);
            assertThat(s.boards()).hasSizeGreaterThan(parts.size());
        });
    }

    /** From the middle of the course on, each level has something to set out and to put together dry. */
    @Test
    void settingOutBeginsInTheMiddle() throws Exception {
        List<Scenario> jobs = course().stream().filter(CourseTest::setsOut).toList();
        assertThat(jobs).extracting(Scenario::level).containsOnly(3, 4, 5, 6);
        assertThat(jobs).hasSizeGreaterThanOrEqualTo(4).allSatisfy(s -> {
            assertThat(s.stages()).contains(Stage.FIT);
            assertThat(s.practice().guidance().ordinal()).isPositive();
        });
    }

    @Test
    void theTableOfTheCourseIsComplete() throws Exception {
        List<String> rows = Files.readAllLines(Path.of("scenarios/README.md")).stream()
                .filter(line -> line.matches("\\| \\d \\|.*"))
                .toList();
        List<String> course = course().stream()
                .sorted(Comparator.comparingInt(Scenario::level).thenComparing(Scenario::title))
                .map(s -> "| " + s.level() + " | " + s.title() + " | " + lower(s.idea()) + " |")
                .toList();
        assertThat(rows).isEqualTo(course);
    }

    private static String lower(String words) {
        return words.isEmpty() ? words : words.substring(0, 1).toLowerCase(Locale.ROOT) + words.substring(1);
    }

    @Test
    void everyExerciseHasItsOwnWords() throws Exception {
        List<Scenario> course = course();
        assertThat(course).extracting(Scenario::brief).doesNotHaveDuplicates();
        assertThat(course).extracting(Scenario::title).doesNotHaveDuplicates();
        assertThat(course).extracting(Scenario::idea).doesNotContain("").doesNotHaveDuplicates();
        assertThat(course).allSatisfy(s -> assertThat(s.brief().length()).isBetween(60, 420));
    }

    /** Named beside the attempt, and told of by a rule. */
    @ParameterizedTest
    @MethodSource("files")
    void theSlipsOfTheFlawedAttemptAreFound(Path file) throws Exception {
        MarkSheet sheet = ShippedScenariosTest.sheet(file, "flawed");
        Set<String> faults = new TreeSet<>();
        sheet.entries().stream()
                .map(MarkSheet.Entry::finding)
                .filter(f -> f.verdict() == Verdict.WRONG || f.verdict() == Verdict.CLOSE)
                .forEach(f -> faults.add(f.rule()));
        assertThat(slips(file))
                .allSatisfy(slip -> assertThat(TOLD_BY.get(slip))
                        .as("%s, of the faults %s", slip, faults)
                        .containsAnyElementsOf(faults));
    }

    @Test
    void everySlipIsMetTwiceAtLeast() throws Exception {
        Map<String, Integer> met = new TreeMap<>();
        for (Path file : files()) slips(file).forEach(s -> met.merge(s, 1, Integer::sum));
        assertThat(Slip.values())
                .allSatisfy(slip ->
                        assertThat(met.getOrDefault(slip.id(), 0)).as(slip.id()).isGreaterThanOrEqualTo(2));
    }

    private static Set<String> slips(Path file) throws Exception {
        Set<String> slips = new TreeSet<>();
        JsonNode named = ShippedScenariosTest.expected(file).get("flawed").path("slips");
        for (JsonNode id : named) {
            Slip slip = Slip.of(id.asText()).orElseThrow(() -> new AssertionError("no slip " + id));
            slips.add(slip.id());
        }
        return slips;
    }
}
