package org.marktwice.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.marktwice.cli.Ran.marktwice;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code class results} and {@code class reteach}. */
class ClassResultsTest {
    private static final Path SHIPPED = Path.of("scenarios");
    private static final Path SHELF = SHIPPED.resolve("porch-shelf.scenario.json");

    @TempDir
    Path folder;

    @BeforeEach
    void handIn() throws IOException {
        String perfect = Files.readString(SHIPPED.resolve("attempts/porch-shelf-perfect.attempt.jsonl"));
        String flawed = Files.readString(SHIPPED.resolve("attempts/porch-shelf-flawed.attempt.jsonl"));
        Files.writeString(folder.resolve("a.jsonl"), perfect);
        Files.writeString(folder.resolve("b.jsonl"), flawed);
        Files.writeString(
                folder.resolve("c.jsonl"), flawed.replace("P04", "P05").replaceFirst("2026-02-0.", "2026-02-09"));
        Files.writeString(folder.resolve("d.jsonl"), perfect.replace("P01", "P05"));
        Files.writeString(folder.resolve("notes.txt"), "Ask about board C.");
    }

    @Test
    void jsonTellsLearnersRulesSlipsAndWhatWasLeftOut() {
        Ran ran = marktwice("class", "results", SHELF, folder, "--json");

        assertThat(ran.code()).isZero();
        assertThat(ran.err()).isEmpty();
        JsonNode json = ran.json();
        assertThat(json.get("learners").findValuesAsText("learner")).containsExactly("P01", "P04", "P05");
        assertThat(json.get("learners").get(0).get("share").asDouble()).isEqualTo(1);
        assertThat(json.get("learners").get(2).get("tries").asInt()).isEqualTo(2);
        assertThat(json.get("learners").get(2).get("files").get(0).asText()).isEqualTo("c.jsonl");
        assertThat(json.get("rules").findValuesAsText("id")).contains("handed-pair", "best-set");
        assertThat(json.get("slips").get(0).get("learners")).hasSize(2);
        assertThat(json.get("distribution").get("tenths")).hasSize(10);
        assertThat(json.get("reliability").get("alpha").asDouble()).isPositive();
        assertThat(json.get("attempts")).hasSize(4);
        assertThat(json.get("leftOut").get(0).get("file").asText()).isEqualTo("notes.txt");
    }

    @Test
    void whichAttemptCountsCanBeSaid() {
        JsonNode json = marktwice("class", "results", SHELF, folder, "--json", "--count", "best")
                .json();
        assertThat(json.get("learners").get(2).get("share").asDouble()).isEqualTo(1);
        assertThat(json.get("progress")).hasSize(1);
        assertThat(json.get("progress").get(0).get("shares")).hasSize(2);
        assertThat(marktwice("class", "results", SHELF, folder).out())
                .containsPattern("Progress over attempts +gained on the mean +[+-]\\d+ %")
                .containsPattern("porch-shelf: \\d+ % → \\d+ %");

        Ran wrong = marktwice("class", "results", SHELF, folder, "--count", "luckiest");
        assertThat(wrong.code()).isEqualTo(2);
        assertThat(wrong.err()).hasLineCount(1).contains("expected last, best or first, found luckiest");
    }

    @Test
    void textAndFilesAreWritten() throws IOException {
        Path csv = folder.resolve("out.csv");
        Path xlsx = folder.resolve("out.xlsx");

        Ran ran = marktwice("class", "results", SHELF, folder, "--out", csv, "--out", xlsx);

        assertThat(ran.code()).isZero();
        assertThat(ran.out())
                .startsWith("Results: Porch shelf")
                .containsPattern("P05 .*\\(1 attempt not counted\\)")
                .contains("Cronbach's alpha: ", "notes.txt: not an attempt");
        assertThat(Files.readAllLines(csv)).hasSize(4);
        assertThat(Files.readAllBytes(xlsx)).startsWith('P', 'K');
        assertThat(marktwice("class", "results", SHELF, folder, "--out", "out.pdf")
                        .err())
                .isEqualTo("out.pdf: expected a file *.csv or *.xlsx to write to\n");
    }

    @Test
    void anEmptyFolderHasNoResults() throws IOException {
        Path empty = Files.createDirectory(folder.resolve("empty"));

        Ran text = marktwice("class", "results", SHELF, empty);
        assertThat(text.code()).isZero();
        assertThat(text.out()).contains("0 learners");
        JsonNode json = marktwice("class", "results", SHELF, empty, "--json").json();
        assertThat(json.get("learners")).isEmpty();
        assertThat(json.get("distribution").get("mean").isNull()).isTrue();
        assertThat(marktwice("class", "reteach", SHELF, empty).out()).contains("No attempt here could be marked.");
    }

    @Test
    void whatToTeachAgainIsOnePage() {
        Ran ran = marktwice("class", "reteach", SHELF, folder);
        assertThat(ran.code()).isZero();
        assertThat(ran.out())
                .startsWith("To teach again: Porch shelf")
                .contains("   who      P04, P05\n", "   to show  the work of P01\n", "No need to go over: ")
                .hasLineCount(
                        (int) ran.out().lines().filter(l -> l.length() <= 92).count());
        assertThat(ran.out().lines().count()).isLessThan(70);

        JsonNode json = marktwice("class", "reteach", SHELF, folder, "--json").json();
        assertThat(json.get("points")).hasSizeBetween(1, 5);
        assertThat(json.get("points").get(0).get("canShow").get(0).asText()).isEqualTo("P01");
    }
}
