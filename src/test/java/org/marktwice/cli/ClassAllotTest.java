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

/** {@code class allot}: real boards to real parts. */
class ClassAllotTest {
    private static final Path SHELF = Path.of("scenarios", "porch-shelf.scenario.json");
    private static final Path RACK = Ran.SAMPLES.resolve("class.rack.json");
    private static final Path TABLE = Ran.SAMPLES.resolve("class.rack.csv");

    @TempDir
    Path folder;

    @Test
    void jsonTellsJobsKnotsAndWhatIsMissing() {
        Ran ran = marktwice("class", "allot", SHELF, RACK, "--times", 2, "--json");

        assertThat(ran.code()).isEqualTo(1);
        JsonNode json = ran.json();
        assertThat(json.get("parts").asInt()).isEqualTo(6);
        assertThat(json.get("supplied").asInt()).isEqualTo(3);
        assertThat(json.get("clear").asInt()).isEqualTo(3);
        assertThat(json.get("jobs").get(0).get("placings").findValuesAsText("part"))
                .containsExactly("upright-left", "upright-right", "shelf");
        JsonNode knot = json.get("rack").get(0).get("knots").get(0);
        assertThat(knot.get("surfaces").asInt()).isEqualTo(2);
        assertThat(knot.get("sureness").asText()).isEqualTo("sure");
        assertThat(json.get("buy").get(0).get("count").asInt()).isEqualTo(2);
        assertThat(json.get("buy").get(1).get("length").asDouble()).isEqualTo(496);
    }

    @Test
    void textSaysWhatIsMarkedWhereAndForWhom() throws IOException {
        Path list = Files.writeString(folder.resolve("class.csv"), "AB\n");

        Ran ran = marktwice("class", "allot", SHELF, TABLE, "--class", list);

        assertThat(ran.code()).isZero();
        assertThat(ran.out())
                .startsWith("Porch shelf, 1 job from 3 boards: 3 of 3 parts supplied, 3 clear")
                .containsPattern(
                        "\nAB\n─+\n  Left upright +board R[12]: face side on face [12], face edge on edge [12], end 1 (up|down)")
                .contains("Shelf                board R3");
    }

    @Test
    void labelsAreWrittenWhereTheyAreAskedFor() {
        Path pdf = folder.resolve("labels.pdf");

        assertThat(marktwice("class", "allot", SHELF, RACK, "--labels", pdf, "--paper", "letter")
                        .code())
                .isZero();

        assertThat(pdf).isNotEmptyFile();
        Ran other = marktwice("class", "allot", SHELF, RACK, "--labels", folder.resolve("labels.doc"));
        assertThat(other.code()).isEqualTo(2);
        assertThat(other.err()).hasLineCount(1).contains(".pdf, .svg or .png");
    }

    @Test
    void oneJobIsMadeWhereNothingIsSaid() {
        assertThat(marktwice("class", "allot", SHELF, RACK, "--json").json().get("jobs"))
                .hasSize(1);
    }

    @ParameterizedTest
    @CsvSource({
        "--times=0, expected from 1 to 100",
        "--times=101, expected from 1 to 100",
        "--times=1 --class=x.csv, exclusive",
        "--class=none.csv, there is no such file"
    })
    void wrongUseIsToldInOneLine(String options, String told) {
        Object[] words = ("class allot " + SHELF + " " + RACK + " " + options).split(" ");
        Ran ran = marktwice(words);
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).hasLineCount(1).contains(told);
    }

    @Test
    void aRackThatIsNoneIsToldInOneLine() {
        Ran ran = marktwice("class", "allot", SHELF, SHELF);
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).hasLineCount(1).contains("expected a rack");
        assertThat(marktwice("check", RACK, TABLE).out()).contains("fine: rack of 3 boards, 2 knots");
    }

    @Test
    void checkTellsAsJsonToo() throws IOException {
        Path none = Files.writeString(folder.resolve("x.rack.json"), "{}");

        Ran ran = marktwice("check", RACK, none, "--json");

        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).hasLineCount(1);
        assertThat(ran.json().findValuesAsText("state")).containsExactly("fine", "refused");
        assertThat(ran.json().get(0).get("says").get(0).asText()).endsWith("rack of 3 boards, 2 knots");
    }
}
