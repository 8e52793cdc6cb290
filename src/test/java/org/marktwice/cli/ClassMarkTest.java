package org.marktwice.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.marktwice.cli.Ran.marktwice;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code class mark}: a folder of attempts marked from the command line. */
class ClassMarkTest {
    private static final Path SHIPPED = Path.of("scenarios");
    private static final Path SHELF = SHIPPED.resolve("porch-shelf.scenario.json");

    @TempDir
    Path folder;

    @BeforeEach
    void handIn() throws IOException {
        String perfect = Files.readString(SHIPPED.resolve("attempts/porch-shelf-perfect.attempt.jsonl"));
        String flawed = Files.readString(SHIPPED.resolve("attempts/porch-shelf-flawed.attempt.jsonl"));
        Files.writeString(folder.resolve("a.attempt.jsonl"), perfect);
        Files.writeString(folder.resolve("b.attempt.jsonl"), flawed.substring(0, flawed.length() - 20));
        Files.writeString(folder.resolve("c.attempt.jsonl"), perfect.replace("P01", "P\u001b[31m"));
        Files.writeString(folder.resolve("d.txt"), "Ask about board C.");
        Files.writeString(folder.resolve("e.attempt.jsonl"), perfect.replace("P01", "P05"));
    }

    @Test
    void jsonNamesEveryFileWithItsStateAndCountsThem() {
        Ran ran = marktwice("class", "mark", SHELF, folder, "--json");

        assertThat(ran.code()).isZero();
        assertThat(ran.err()).isEmpty();
        JsonNode json = ran.json();
        assertThat(json.get("scenario").asText()).isEqualTo("porch-shelf");
        assertThat(json.get("title").asText()).isEqualTo("Porch shelf");
        assertThat(json.get("files").findValuesAsText("file"))
                .containsExactly("a.attempt.jsonl", "b.attempt.jsonl", "c.attempt.jsonl", "d.txt", "e.attempt.jsonl");
        assertThat(json.get("files").findValuesAsText("state"))
                .containsExactly("whole", "torn", "unreadable", "not-an-attempt", "whole");
        JsonNode whole = json.get("files").get(0);
        assertThat(whole.has("reason")).isFalse();
        assertThat(whole.get("learner").asText()).isEqualTo("P01");
        assertThat(whole.get("handedIn").asBoolean()).isTrue();
        assertThat(whole.get("marks").asDouble()).isEqualTo(whole.get("outOf").asDouble(), within(1e-9));
        assertThat(json.get("files").get(1).get("handedIn").asBoolean()).isFalse();
        assertThat(json.get("files").get(3).has("marks")).isFalse();
        assertThat(json.get("files").get(4).get("sameAs").asText()).isEqualTo("a.attempt.jsonl");
        assertThat(json.get("counts").get("whole").asInt()).isEqualTo(2);
        assertThat(json.get("counts").get("wrong-scenario").asInt()).isZero();
    }

    @Test
    void textHasALineForEachFileAndTheCounts() {
        Ran ran = marktwice("class", "mark", SHELF, folder);

        assertThat(ran.code()).isZero();
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out())
                .startsWith("Attempts at Porch shelf: 5 files\n")
                .containsPattern("a\\.attempt\\.jsonl +whole +P01 +21 of 21\n")
                .containsPattern("b\\.attempt\\.jsonl +torn .*last line was cut off")
                .containsPattern("d\\.txt +not an attempt +– ")
                .containsPattern("e\\.attempt\\.jsonl .*same actions at the same times as a\\.attempt\\.jsonl")
                .contains("    2  whole\n")
                .doesNotContain("\u001b");
    }

    @Test
    void progressIsShownWhereItIsAskedForAndWipedAtTheEnd() {
        Ran ran = marktwice("class", "mark", SHELF, folder, "--progress", "--json");

        assertThat(ran.err()).contains("\rmarked 5 of 5").endsWith("\r");
        assertThat(ran.json().get("files")).hasSize(5);
    }

    @Test
    void aFolderOfScenariosWillDo() throws IOException {
        JsonNode json = marktwice("class", "mark", SHIPPED, SHIPPED.resolve("attempts"), "--json")
                .json();

        try (Stream<Path> attempts = Files.list(SHIPPED.resolve("attempts"))) {
            long shipped = attempts.filter(f -> f.toString().endsWith(".attempt.jsonl"))
                    .count();
            assertThat(json.get("counts").get("whole").asLong()).isEqualTo(shipped);
        }
    }

    @Test
    void whatCantBeReadIsToldInOneLine() {
        Ran noFolder = marktwice("class", "mark", SHELF, folder.resolve("none"));
        assertThat(noFolder.code()).isEqualTo(2);
        assertThat(noFolder.err()).isEqualTo(folder.resolve("none") + ": there is no such folder\n");

        Ran noScenario = marktwice("class", "mark", folder, folder);
        assertThat(noScenario.code()).isEqualTo(2);
        assertThat(noScenario.err()).hasLineCount(1).contains("expected a scenario or a folder of them");
        assertThat(noScenario.out()).isEmpty();

        Ran nothing = marktwice("class");
        assertThat(nothing.code()).isEqualTo(2);
        assertThat(nothing.err()).hasLineCount(1).contains("expected one of mark");
    }
}
