package org.marktwice.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.marktwice.cli.Ran.marktwice;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.marktwice.files.FileRefused;
import org.marktwice.files.ScenarioFile;
import org.marktwice.scenario.Stage;

/** The job put together dry from the command line. */
class FitTest {
    private static final Path SCENARIOS = Path.of("scenarios");
    private static final Path JAR_SHELF = SCENARIOS.resolve("jar-shelf.scenario.json");

    @TempDir
    Path folder;

    private static Path attempt(Path scenario, String kind) {
        String name = scenario.getFileName().toString().replace(".scenario.json", "-" + kind + ".attempt.jsonl");
        return SCENARIOS.resolve("attempts").resolve(name);
    }

    static List<Path> scenarios() throws IOException {
        try (Stream<Path> files = Files.list(SCENARIOS)) {
            return files.filter(f -> f.toString().endsWith(".scenario.json")).toList();
        }
    }

    private static boolean setsOut(Path scenario) throws FileRefused {
        return ScenarioFile.read(scenario).stages().contains(Stage.SETTING_OUT);
    }

    /** A perfect attempt goes together wherever joints are set out; where they aren't, what is missing is said part by part. */
    @ParameterizedTest
    @MethodSource("scenarios")
    void aPerfectAttemptGoesTogetherIfItIsSetOut(Path scenario) throws FileRefused {
        Ran ran = marktwice("fit", scenario, attempt(scenario, "perfect"), "--json");
        JsonNode json = ran.json();

        assertThat(ran.err()).isEmpty();
        assertThat(json.path("goesTogether").asBoolean()).isEqualTo(ran.code() == 0);
        if (setsOut(scenario)) {
            assertThat(ran.code()).as(ran.out()).isZero();
            assertThat(json.path("joints"))
                    .isNotEmpty()
                    .allMatch(j -> j.path("state").asText().equals("together"));
            assertThat(verdicts(json)).doesNotContain("wrong", "open");
            assertThat(json.path("sizes")).hasSize(3);
        } else if (!json.path("whole").asBoolean()) {
            assertThat(ran.code()).isEqualTo(1);
            assertThat(json.path("missing")).isNotEmpty();
        }
    }

    /** Every figure of a flawed attempt keeps its promise: the verdict follows from figure and limit, causes are in order. */
    @ParameterizedTest
    @MethodSource("scenarios")
    void aFlawedAttemptIsToldWithItsFigures(Path scenario) {
        Ran ran = marktwice("fit", scenario, attempt(scenario, "flawed"), "--json");

        assertThat(ran.code()).isIn(0, 1);
        for (JsonNode size : ran.json().path("sizes")) {
            boolean within =
                    Math.abs(size.path("off").asDouble()) <= size.path("limit").asDouble();
            assertThat(size.path("verdict").asText()).isEqualTo(within ? "sound" : "wrong");
            assertThat(size.path("made").asDouble())
                    .isEqualTo(size.path("drawn").asDouble() + size.path("off").asDouble(), within(1e-9));
        }
        for (JsonNode joint : ran.json().path("joints")) {
            List<Double> causes = new ArrayList<>();
            joint.path("causes").forEach(c -> causes.add(c.path("mm").asDouble()));
            assertThat(causes).isSortedAccordingTo((a, b) -> Double.compare(b, a));
        }
    }

    private static List<String> verdicts(JsonNode json) {
        List<String> all = new ArrayList<>();
        for (String of : List.of("joints", "sizes", "diagonals", "flush")) {
            json.path(of).forEach(j -> all.add(j.path("verdict").asText()));
        }
        return all;
    }

    @Test
    void aFlawedShelfDoesNotGoTogetherAndTheTextSaysWhy() {
        Ran ran = marktwice("fit", JAR_SHELF, attempt(JAR_SHELF, "flawed"));

        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.out())
                .contains("It doesn't go together as drawn: ", "Joints\n", "Overall sizes\n", "Diagonals\n")
                .contains("10 mm off its place", "✕ wrong", "step ")
                .endsWith("\n");
        assertThat(ran.out().lines()).allMatch(l -> l.length() <= 100);
    }

    /** What leads through the jar shelf across: two uprights less their housings, and a shelf. */
    @Test
    void theStackOfASizeIsTold() {
        JsonNode across = marktwice("fit", JAR_SHELF, attempt(JAR_SHELF, "perfect"), "--json")
                .json()
                .path("sizes")
                .path(0);

        assertThat(across.path("axis").asText()).isEqualTo("across");
        assertThat(across.path("stack").path("links")).hasSize(5);
        assertThat(across.path("stack").path("worst").asDouble()).isEqualTo(5);
        assertThat(across.path("stack").path("likely").asDouble()).isEqualTo(Math.sqrt(5), within(1e-12));
        // the normal distribution: σ = √5 / 3, so that ±1 mm is ±1.342 σ, 82.0 % of all
        assertThat(across.path("stack").path("trial").path("within").asDouble()).isEqualTo(0.820, within(0.012));
    }

    /** ISO 2768-1, a size of 420: fine ±0.3, medium ±0.8, coarse ±2, very coarse ±4. */
    @ParameterizedTest
    @CsvSource({"iso-2768-f, 0.3", "iso-2768-m, 0.8", "iso-2768-c, 2", "iso-2768-v, 4", "strict, 0.5", "drawing, 1"})
    void tolerancesCanBeChosen(String name, double limit) {
        JsonNode json = marktwice("fit", JAR_SHELF, attempt(JAR_SHELF, "perfect"), "--json", "--tolerances", name)
                .json();

        assertThat(json.path("tolerances").path("id").asText()).isEqualTo(name);
        assertThat(json.path("sizes").path(0).path("drawn").asDouble()).isEqualTo(420);
        assertThat(json.path("sizes").path(0).path("limit").asDouble()).isEqualTo(limit);
    }

    @Test
    void inADryRoomEveryPartGetsNarrower() {
        JsonNode json = marktwice("fit", JAR_SHELF, attempt(JAR_SHELF, "perfect"), "--json", "--room", "21C,30%")
                .json();

        assertThat(json.path("room").path("moisture").asDouble()).isBetween(6.0, 6.4);
        assertThat(json.path("parts")).hasSize(4).allMatch(p -> p.path("wider").asDouble() < -0.3);
    }

    @Test
    void aCarefulHandIsTheSameForItsNumber() {
        String one = marktwice("fit", JAR_SHELF, attempt(JAR_SHELF, "perfect"), "--json", "--hand", 3)
                .out();

        assertThat(marktwice("fit", JAR_SHELF, attempt(JAR_SHELF, "perfect"), "--json", "--hand", 3)
                        .out())
                .isEqualTo(one);
        assertThat(marktwice("fit", JAR_SHELF, attempt(JAR_SHELF, "perfect"), "--json", "--hand", 4)
                        .out())
                .isNotEqualTo(one);
    }

    @ParameterizedTest
    @ValueSource(strings = {"fit.pdf", "fit.svg", "fit.png"})
    void itIsWrittenAsPicture(String name) throws IOException {
        Path out = folder.resolve(name);
        Ran ran = marktwice("fit", JAR_SHELF, attempt(JAR_SHELF, "flawed"), "--out", out);

        assertThat(ran.code()).isEqualTo(1);
        byte[] bytes = Files.readAllBytes(out);
        String start = new String(bytes, 0, 8, StandardCharsets.ISO_8859_1);
        assertThat(Set.of("%PDF-", "<?xml", "\u0089PNG")).anyMatch(start::startsWith);
        assertThat(bytes.length).isGreaterThan(50_000);
    }

    @Test
    void wrongUseIsSaidInOneLine() {
        Path fine = attempt(JAR_SHELF, "perfect");
        String more = " (marktwice fit --help says more)\n";
        assertThat(marktwice("fit", JAR_SHELF, fine, "--tolerances", "exact"))
                .isEqualTo(new Ran(
                        2,
                        "",
                        "marktwice fit: --tolerances: expected drawing, strict, standard, first-attempt, iso-2768-f,"
                                + " iso-2768-m, iso-2768-c or iso-2768-v, found 'exact'" + more));
        assertThat(marktwice("fit", JAR_SHELF, fine, "--hand", "steady"))
                .isEqualTo(new Ran(
                        2,
                        "",
                        "marktwice fit: Invalid value for option '--hand': expected a whole number, found 'steady'"
                                + more));
        assertThat(marktwice("fit", JAR_SHELF, fine, "--out", "fit.txt"))
                .isEqualTo(new Ran(2, "", "fit.txt: expected a name that ends in .pdf, .svg or .png\n"));
        assertThat(marktwice("fit", JAR_SHELF))
                .isEqualTo(new Ran(2, "", "marktwice fit: Missing required parameter: 'ATTEMPT'" + more));
        assertThat(marktwice("fit", JAR_SHELF, fine, "--room", "warm").code()).isEqualTo(2);
        Ran others = marktwice("fit", SCENARIOS.resolve("seed-box.scenario.json"), fine);
        assertThat(others.code()).isEqualTo(2);
        assertThat(others.out()).isEmpty();
        assertThat(others.err().lines()).hasSize(1);
    }
}
