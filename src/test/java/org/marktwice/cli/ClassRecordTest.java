package org.marktwice.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.marktwice.cli.Ran.marktwice;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code class record}: finished jobs against the drawing, beside the practice marks. */
class ClassRecordTest {
    private static final Path SHIPPED = Path.of("scenarios");
    private static final Path SHELF = SHIPPED.resolve("porch-shelf.scenario.json");
    private static final Path RECORD = Ran.SAMPLES.resolve("class.record.json");

    @TempDir
    Path folder;

    @Test
    void anEmptyRecordIsBegunFilledInAndJudged() throws IOException {
        Path list = Files.writeString(folder.resolve("class.csv"), "P01\nP04\n");
        Path table = folder.resolve("jobs.csv");
        assertThat(marktwice("class", "record", SHELF, "--class", list, "--out", table)
                        .code())
                .isZero();
        String head =
                "learner,across,deep,high,place-shelf,diagonal-1-a,diagonal-1-b,gap-left-housing,gap-right-housing";
        assertThat(Files.readAllLines(table)).containsExactly(head, "P01,,,,,,,,", "P04,,,,,,,,");

        Files.writeString(table, head + "\nP01,,,,,,,0.3,0.7\nP04,,,,,,,1.2,0.1\n");
        Ran ran = marktwice("class", "record", SHELF, table, "--attempts", SHIPPED.resolve("attempts"), "--json");

        assertThat(ran.code()).isZero();
        JsonNode json = ran.json();
        assertThat(json.get("jobs").get(0).get("share").asDouble()).isEqualTo(0.75);
        assertThat(json.get("jobs").get(1).get("judged").get(0).get("band").asText())
                .isEqualTo("poor");
        assertThat(json.get("practice").get("pairs").get(0).get("practice").asDouble())
                .isEqualTo(1);
        assertThat(json.get("class").get(0).get("poor").asInt()).isEqualTo(1);
    }

    @Test
    void aRecordIsNeverBegunOverOneThatIsThere() throws IOException {
        Path list = Files.writeString(folder.resolve("class.csv"), "P01\n");
        Path table = Files.writeString(folder.resolve("jobs.csv"), "learner,across\nP01,521\n");
        Path other = folder.resolve("other.record.json");

        assertRefused(
                "there is a file already, and it is left as it is",
                "class",
                "record",
                SHELF,
                "--class",
                list,
                "--out",
                other,
                "--out",
                table);

        assertThat(table).hasContent("learner,across\nP01,521\n");
        assertThat(other).doesNotExist();
        assertThat(marktwice("class", "record", SHELF, table, "--out", table).code())
                .isZero();
    }

    @Test
    void theRecordsOwnLimitsCountUnlessOthersAreAskedFor() {
        JsonNode own = marktwice("class", "record", SHELF, RECORD, "--json").json();
        assertThat(own.get("tolerance").asText()).isEqualTo("strict");
        assertThat(own.get("gap").asDouble()).isEqualTo(0.8);
        JsonNode other = marktwice(
                        "class", "record", SHELF, RECORD, "--tolerance", "first-attempt", "--gap", 2, "--json")
                .json();
        assertThat(other.get("tolerance").asText()).isEqualTo("first-attempt");
        assertThat(other.get("gap").asDouble()).isEqualTo(2);
        assertThat(marktwice("class", "record", SHELF, RECORD).out())
                .startsWith("Finished jobs: Porch shelf")
                .contains("sizes strict, gaps 0.8 mm")
                .contains("diagonal-1 -3.0");
    }

    @Test
    void wrongUseIsToldInOneLine() {
        assertRefused("expected a RECORD, or --class", "class", "record", SHELF);
        assertRefused("there is one already", "class", "record", SHELF, RECORD, "--class", "x.csv");
        assertRefused("--tolerance: expected one of strict", "class", "record", SHELF, RECORD, "--tolerance", "loose");
        assertRefused("--set: expected --attempts as well", "class", "record", SHELF, RECORD, "--set", SHIPPED);
        assertRefused("--gap: expected a number above 0", "class", "record", SHELF, RECORD, "--gap", 0);
        assertRefused("not of \"peg-rail\"", "class", "record", SHIPPED.resolve("peg-rail.scenario.json"), RECORD);
        assertRefused("expected a file *.csv", "class", "record", SHELF, RECORD, "--out", folder.resolve("x.ods"));
    }

    private static void assertRefused(String told, Object... args) {
        Ran ran = marktwice(args);
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).hasLineCount(1).contains(told);
    }
}
