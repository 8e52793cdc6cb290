package org.marktwice.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.marktwice.cli.Ran.marktwice;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** {@code make}: a variant for each learner. */
class MakeTest {
    private static final Path SHELF = Path.of("scenarios", "porch-shelf.scenario.json");

    @TempDir
    Path folder;

    @Test
    void everyLearnerGetsAFileThatCanBeSolved() {
        Path out = folder.resolve("set");

        Ran ran = marktwice("make", SHELF, "--learners", 3, "--out", out, "--json");

        assertThat(ran.code()).isZero();
        assertThat(ran.err()).isEmpty();
        JsonNode json = ran.json();
        assertThat(json.get("scenario").asText()).isEqualTo("porch-shelf");
        assertThat(json.get("variants").findValuesAsText("learner")).containsExactly("P01", "P02", "P03");
        for (JsonNode variant : json.get("variants")) {
            assertThat(variant.get("inBand").asBoolean()).isTrue();
            assertThat(marktwice("solve", out.resolve(variant.get("file").asText()))
                            .code())
                    .isZero();
        }
        assertThat(marktwice("class", "mark", out, out, "--json")
                        .json()
                        .get("counts")
                        .get("not-an-attempt")
                        .asInt())
                .isEqualTo(4);
    }

    @Test
    void learnersComeFromAFileToo() throws IOException {
        Path list = Files.writeString(folder.resolve("class.csv"), "learner,form\nAB,7b\nCD,7b\n");
        Path out = folder.resolve("set");

        Ran ran = marktwice("make", SHELF, "--class", list, "--out", out, "--seed", 5);

        assertThat(ran.code()).isZero();
        assertThat(ran.out())
                .startsWith("Porch shelf for 2 learners: difficulty 0.33")
                .contains("AB ", "CD ");
        assertThat(out.resolve("porch-shelf-AB.scenario.json")).exists();
        assertThat(out.resolve("index.csv")).exists();
    }

    @Test
    void outsideTheBandIsANo() {
        Ran ran = marktwice("make", SHELF, "--learners", 1, "--out", folder, "--band", 0);

        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.out()).containsPattern("P01 .* outside ");
    }

    @ParameterizedTest
    @CsvSource({
        "--learners=0, from 1 to 500 learners",
        "--learners=501, from 1 to 500 learners",
        "--class=none.csv, there is no such file",
        "--learners=9999999999, expected a whole number",
        "--seed=1, --learners=N",
        "--learners=2 --class=x.csv, exclusive",
        "--learners=2 --seed=-1, a whole number from 0",
        "--learners=2 --band=2, a number from 0 to 1"
    })
    void wrongUseIsToldInOneLine(String options, String told) {
        Object[] words =
                ("make|" + SHELF + "|--out|" + folder.resolve("set") + "|" + options.replace(' ', '|')).split("\\|");

        Ran ran = marktwice(words);

        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).hasLineCount(1).contains(told);
        assertThat(folder.resolve("set")).doesNotExist();
    }
}
