package org.marktwice.files;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.marktwice.timber.Species;
import org.marktwice.timber.SpeciesTable;

/** The published schemas say of a file's shape what the readers say. */
class SchemaTest {
    private static final SchemaRegistry REGISTRY =
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
    static final Schema SCENARIO = schema("scenario");
    static final Schema DRAFT = schema("draft");
    static final Schema BOARD = schema("board");
    static final Schema RACK = schema("rack");
    static final Schema RECORD = schema("record");
    static final Schema LINE = schema("attempt-line");
    static final Schema QUIZ_LINE = schema("quiz-line");

    /** Sense, not shape: what parts, knots, ids and steps have to do with one another no schema can say. */
    private static final Set<String> BEYOND_A_SCHEMA = Set.of(
            "fault",
            "more-help",
            "duplicate-board",
            "duplicate-joint",
            "duplicate-knot",
            "duplicate-part",
            "duplicate-key",
            "face-side-along-the-grain",
            "joint-without-overlap",
            "stop-past-the-edge",
            "bridle-of-unlike-parts",
            "mortise-without-cheeks",
            "haunch-without-inset",
            "dowels-in-an-overlap",
            "dowel-too-long",
            "knot-outside",
            "overall-size",
            "overlap-without-joint",
            "runs-on-one-axis",
            "sheet-part-with-marks",
            "timber-part-without-marks",
            "unknown-part-in-joint",
            "joint-of-an-unknown-part",
            "cup-ratio",
            "proportions",
            "stock-part-too-long",
            "another-scenario",
            "other-digest",
            "unknown-board",
            "unknown-part",
            "time-backwards",
            "after-hand-in",
            "no-such-turn",
            "trim-too-much",
            "position-off-the-board",
            "rub-out-later-step",
            "started",
            "no-header",
            "rack-without-species",
            "rack-straight-ring",
            "rack-knot-off-the-board",
            "rack-twice-on-one-face",
            "rack-duplicate-board",
            "record-learner-twice");

    /** No JSON at all, or a number that the validator's own reader takes for infinite. */
    private static final Set<String> NOT_JSON = Set.of(
            "not-json",
            "cut-off",
            "prose",
            "not-a-number",
            "huge-number",
            "long-number",
            "more-after-the-end",
            "a-scenario",
            "torn-in-the-middle",
            "broken-line");

    private static Schema schema(String name) {
        return REGISTRY.getSchema(SchemaLocation.of("classpath:scenarios/schema/" + name + ".schema.json"));
    }

    static boolean takes(Schema schema, String json) {
        return schema.validate(json, InputFormat.JSON).isEmpty();
    }

    private static List<String> lines(String attempt) {
        return attempt.lines().toList();
    }

    @Test
    void theSamplesAreTakenByBoth() throws FileRefused {
        assertThat(SCENARIO.validate(Samples.text(Samples.SCENARIO), InputFormat.JSON))
                .isEmpty();
        ScenarioFile.read("x", Samples.bytes(Samples.SCENARIO));
        assertThat(BOARD.validate(Samples.text(Samples.BOARD), InputFormat.JSON))
                .isEmpty();
        BoardFile.read("x", Samples.bytes(Samples.BOARD));
    }

    @ParameterizedTest
    @ValueSource(strings = {Samples.ATTEMPT, Samples.EVERY_ACTION})
    void everyLineOfTheSampleAttemptsIsTakenByBoth(String name) throws FileRefused {
        assertThat(lines(Samples.text(name)))
                .allSatisfy(line ->
                        assertThat(LINE.validate(line, InputFormat.JSON)).isEmpty());
        AttemptFile.read("x", Samples.bytes(name));
    }

    @Test
    void theShippedExercisesKeepToTheSchemas() throws IOException {
        List<Path> scenarios = files(Path.of("scenarios"), ".scenario.json");
        List<Path> attempts = files(Path.of("scenarios", "attempts"), ".attempt.jsonl");
        assertThat(scenarios).hasSizeGreaterThanOrEqualTo(4);
        assertThat(attempts).hasSizeGreaterThanOrEqualTo(8);
        for (Path file : scenarios) {
            assertThat(SCENARIO.validate(Files.readString(file), InputFormat.JSON))
                    .as(file.toString())
                    .isEmpty();
        }
        for (Path file : attempts) {
            assertThat(Files.readAllLines(file)).as(file.toString()).allMatch(line -> takes(LINE, line));
        }
    }

    private static List<Path> files(Path folder, String ending) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(f -> f.toString().endsWith(ending)).sorted().toList();
        }
    }

    static List<String> brokenFiles() throws IOException {
        return BrokenFilesTest.brokenFiles();
    }

    @ParameterizedTest
    @MethodSource("brokenFiles")
    void aBrokenShapeIsRefusedByBoth(String name) throws IOException {
        String what = name.substring(0, name.indexOf("-broken"));
        String text = Files.readString(Samples.BROKEN.resolve(name));
        if (NOT_JSON.contains(what)) return;
        Schema line = name.endsWith(QuizFile.ENDING) ? QUIZ_LINE : LINE;
        boolean taken = name.endsWith(".jsonl")
                ? lines(text).stream().allMatch(one -> takes(line, one))
                : takes(ofKind(name), text);
        assertThat(taken).isEqualTo(BEYOND_A_SCHEMA.contains(what));
    }

    private static Schema ofKind(String name) {
        if (name.endsWith(".rack.json")) return RACK;
        if (name.endsWith(".record.json")) return RECORD;
        return name.endsWith(DraftFile.ENDING) ? DRAFT : SCENARIO;
    }

    static Stream<String> brokenBoards() {
        String text = Samples.text(Samples.BOARD);
        return Stream.of(
                text.replace("\"shape\"", "\"form\""),
                text.replace("\"id\": \"c1\", ", ""),
                text.replace("[22.1, 0, 12.0]", "[22.1, 0]"),
                text.replace("\"lean\": 74.68", "\"lean\": 200"),
                text.replace("\"id\": \"R1\"", "\"id\": \"R-1\""),
                text.replace("red-pine", "redpine"),
                text.replace("\"moisture\": 13,", ""),
                text.replace("{\"id\": \"R1\"", "{\"format\": \"marktwice-board/2\", \"id\": \"R1\""),
                text.replace("\"shape\": {}", "\"shape\": {\"outOfSquare\": {\"face-1\": 1}}"),
                text.replace("\"dressed\": [\"face-1\", ", "\"dressed\": [\"face-2\", "));
    }

    @ParameterizedTest
    @MethodSource("brokenBoards")
    void aBrokenBoardIsRefusedByBoth(String text) {
        assertThat(takes(BOARD, text)).isFalse();
        assertThat(refused(() -> BoardFile.read("x", Samples.utf8(text)))).isTrue();
    }

    /** A reading that may be refused. */
    interface Reading {
        Object read() throws FileRefused;
    }

    private static boolean refused(Reading reading) {
        try {
            reading.read();
            return false;
        } catch (FileRefused e) {
            return true;
        }
    }

    @Test
    void theSchemaListsTheSpeciesTable() {
        List<String> listed = BOARD.getSchemaNode()
                .at("/$defs/species/enum")
                .valueStream()
                .map(n -> n.asText())
                .toList();
        assertThat(listed)
                .isEqualTo(SpeciesTable.all().stream().map(Species::id).toList());
    }
}
