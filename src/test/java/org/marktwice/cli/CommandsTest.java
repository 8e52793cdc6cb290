package org.marktwice.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.marktwice.cli.Ran.ATTEMPT;
import static org.marktwice.cli.Ran.BOARD;
import static org.marktwice.cli.Ran.SCENARIO;
import static org.marktwice.cli.Ran.marktwice;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.marktwice.rulebook.Cautions;
import org.marktwice.rulebook.Rule;
import org.marktwice.rulebook.RuleBook;
import org.marktwice.rulebook.Texts;

/** What the commands answer. */
class CommandsTest {
    @TempDir
    Path folder;

    private Path changed(Path file, String from, String to) throws IOException {
        String text = Files.readString(file);
        assertThat(text).contains(from);
        return Files.writeString(folder.resolve(file.getFileName()), text.replace(from, to));
    }

    private static List<String> names(JsonNode object) {
        return object.properties().stream().map(p -> p.getKey()).toList();
    }

    /** The list of commands shows the first line of each description, and no more. */
    @ParameterizedTest
    @ValueSource(strings = {"", "class", "quiz"})
    void theListOfCommandsSaysOfEachInAWholeSentence(String group) {
        Ran ran = group.isEmpty() ? marktwice("--help") : marktwice(group, "--help");

        String list = ran.out().split("Commands:\\R", 2)[1].split("\\R\\R", 2)[0];
        String[] commands = list.split("\\R(?=  \\S)");
        assertThat(commands).hasSizeGreaterThanOrEqualTo(3);
        assertThat(commands).allSatisfy(c -> assertThat(c.strip()).endsWith("."));
    }

    @Test
    void markGivesTheFindingsAndTheirSum() {
        Ran ran = marktwice("mark", SCENARIO, ATTEMPT, "--json");

        assertThat(ran.code()).isZero();
        assertThat(ran.err()).isEmpty();
        JsonNode json = ran.json();
        assertThat(names(json))
                .containsExactly(
                        "scenario",
                        "title",
                        "learner",
                        "started",
                        "handedIn",
                        "state",
                        "notices",
                        "marks",
                        "outOf",
                        "findings",
                        "notJudged",
                        "hints",
                        "clearances");
        assertThat(json.get("scenario").asText()).isEqualTo("porch-shelf");
        assertThat(json.get("learner").asText()).isEqualTo("P07");
        assertThat(json.get("state").asText()).isEqualTo("whole");
        assertThat(json.get("handedIn").asBoolean()).isTrue();
        double marks = 0;
        double outOf = 0;
        for (JsonNode finding : json.get("findings")) {
            marks += finding.get("credit").asDouble() * finding.get("worth").asDouble();
            outOf += finding.get("worth").asDouble();
            assertThat(RuleBook.rule(finding.get("rule").asText())).isPresent();
            assertThat(finding.get("says").asText()).isNotBlank();
        }
        assertThat(json.get("findings")).isNotEmpty();
        assertThat(json.get("marks").asDouble()).isCloseTo(marks, within(1e-9));
        assertThat(json.get("outOf").asDouble()).isCloseTo(outOf, within(1e-9));
    }

    @Test
    void aFindingNamesTheActionThatDecidedItAndItsLine() {
        JsonNode json = marktwice("mark", SCENARIO, ATTEMPT, "--json").json();
        JsonNode named = Stream.iterate(0, i -> i + 1)
                .limit(json.get("findings").size())
                .map(i -> json.get("findings").get(i))
                .filter(f -> f.get("rule").asText().equals("every-part-named"))
                .filter(f -> f.path("board").asText().equals("A"))
                .findFirst()
                .orElseThrow();
        assertThat(named.get("step").asInt()).isEqualTo(6);
        assertThat(named.get("line").asInt()).isEqualTo(7);
        assertThat(named.get("part").asText()).isEqualTo("upright-left");
        assertThat(named.has("joint")).isFalse();
    }

    @Test
    void aTornAttemptIsMarkedAndSaid() throws IOException {
        Path torn = folder.resolve("torn.attempt.jsonl");
        Files.writeString(torn, Files.readString(ATTEMPT).replace("\"do\":\"hand-in\"}\n", "\"do\":\"han"));
        String notice = torn + ":15: the last line was cut off and is left out; every line before it counts";

        JsonNode json = marktwice("mark", SCENARIO, torn, "--json").json();
        assertThat(json.get("state").asText()).isEqualTo("torn");
        assertThat(json.get("notices")).hasSize(1);
        assertThat(json.get("notices").get(0).asText()).isEqualTo(notice);
        assertThat(json.get("handedIn").asBoolean()).isFalse();

        Ran sheet = marktwice("mark", SCENARIO, torn);
        assertThat(sheet.code()).isZero();
        assertThat(sheet.out())
                .contains("NOT HANDED IN YET; so far 58 s, 13 steps")
                .contains("Notice     ");
        assertThat(marktwice("check", SCENARIO, torn).out()).contains(notice);
    }

    @Test
    void theMarkSheetCanBeHandedOver() {
        Ran ran = marktwice("mark", SCENARIO, ATTEMPT);

        assertThat(ran.code()).isZero();
        assertThat(ran.err()).isEmpty();
        List<String> lines = ran.out().lines().toList();
        assertThat(lines).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(92));
        assertThat(ran.out())
                .contains("Learner    P07")
                .contains("Exercise   Porch shelf, level 2 (porch-shelf)")
                .contains("Handed in  after 1 min 0 s, 14 steps")
                .contains("Practice in force\n  Face side: the truest surface, turned in\n")
                .contains("Board A · Left upright")
                .contains("✓ sound  ")
                .contains("✕ wrong  ")
                .contains("○ open   ")
                .contains("Expected to lose marks on: ")
                .contains("Nothing to judge (no pass, and worth nothing): ");
        assertThat(ran.out().replaceAll("\\s+", " ")).contains(Cautions.ALL);
    }

    @Test
    void theMarkSheetListsEachBoardsWorstFindingFirst() {
        List<String> verdicts = marktwice("mark", SCENARIO, ATTEMPT)
                .out()
                .lines()
                .dropWhile(l -> !l.startsWith("Board A"))
                .takeWhile(l -> !l.startsWith("Board S"))
                .filter(l -> l.matches("[✓~✕○] .*"))
                .map(l -> l.substring(0, 1))
                .toList();
        assertThat(verdicts).hasSizeGreaterThan(3).last().isEqualTo("✓");
        assertThat(verdicts.lastIndexOf("✕")).isLessThan(verdicts.indexOf("✓"));
    }

    @Test
    void solveGivesTheModelAnswer() {
        Ran ran = marktwice("solve", SCENARIO, "--json");

        assertThat(ran.code()).isZero();
        JsonNode json = ran.json();
        assertThat(names(json))
                .containsExactly(
                        "scenario",
                        "parts",
                        "supplied",
                        "clear",
                        "least",
                        "sum",
                        "difficulty",
                        "placings",
                        "unsupplied",
                        "leftOver",
                        "why",
                        "nextBest",
                        "shortages");
        assertThat(json.get("supplied").asInt()).isEqualTo(3);
        assertThat(json.get("clear").asInt()).isEqualTo(3);
        assertThat(json.get("placings")).hasSize(3).allSatisfy(placing -> {
            assertThat(names(placing)).containsExactly("board", "part", "facing", "trim", "clearance", "clear");
            assertThat(names(placing.get("facing"))).containsExactly("face-1", "edge-1");
            assertThat(names(placing.get("trim"))).containsExactly("end", "mm");
        });
        assertThat(json.get("least").asDouble()).isLessThanOrEqualTo(25);
        assertThat(json.get("leftOver").get(0).asText()).isEqualTo("S");
        JsonNode hard = json.get("difficulty");
        assertThat(names(hard)).containsExactly("value", "wrongChoices", "closeness", "crowd");
        double weighed = 0.5 * hard.get("wrongChoices").asDouble()
                + 0.3 * hard.get("closeness").asDouble()
                + 0.2 * hard.get("crowd").asDouble();
        assertThat(hard.get("value").asDouble()).isBetween(0.01, 1.0).isEqualTo(weighed, within(1e-9));
        assertThat(marktwice("solve", SCENARIO).out())
                .contains("Difficulty 0.")
                .startsWith("Porch shelf: 3 of 3 parts supplied, 3 clear;")
                .contains("Left upright")
                .contains("left over: S");
    }

    @Test
    void solveGivesEveryBoardsTableWhereItIsAskedFor() {
        Ran ran = marktwice("solve", SCENARIO, "--table", "--json");

        assertThat(ran.json().get("boards")).hasSize(4).allSatisfy(board -> {
            assertThat(names(board)).containsExactly("board", "uses");
            assertThat(board.get("uses")).hasSize(3);
        });
        JsonNode turns = ran.json().get("boards").get(0).get("uses").get(0).get("turns");
        assertThat(turns).hasSize(4);
        assertThat(names(turns.get(0))).contains("facing", "trim", "allowed", "clearance", "clear", "chosen");
        int chosen = 0;
        for (JsonNode board : ran.json().get("boards")) {
            for (JsonNode use : board.get("uses")) {
                for (JsonNode turn : use.get("turns")) {
                    if (turn.get("chosen").asBoolean()) chosen++;
                }
            }
        }
        assertThat(chosen).isEqualTo(3);
        assertThat(marktwice("solve", SCENARIO, "--table").out())
                .contains("Why this set")
                .contains("Board A\n")
                .contains("▸ ");
    }

    @Test
    void whatCannotBeSolvedIsANo() throws IOException {
        Path short1 = changed(SCENARIO, "\"length\": 480", "\"length\": 470");

        Ran solved = marktwice("solve", short1);
        assertThat(solved.code()).isEqualTo(1);
        assertThat(solved.err()).isEmpty();
        assertThat(solved.out())
                .startsWith("Porch shelf: 2 of 3 parts supplied")
                .contains("Shelf: no board")
                .contains("No board on the rack can be made into the Shelf.");
        Ran json = marktwice("solve", short1, "--json");
        assertThat(json.code()).isEqualTo(1);
        assertThat(json.json().get("unsupplied").get(0).asText()).isEqualTo("shelf");
        JsonNode shortage = json.json().get("shortages").get(0);
        assertThat(shortage.get("parts").get(0).asText()).isEqualTo("shelf");
        assertThat(shortage.get("boards")).isEmpty();
        Ran checked = marktwice("check", short1, BOARD);
        assertThat(checked.code()).isEqualTo(1);
        assertThat(checked.out()).contains(short1 + ": can't be solved: ").contains(", no board for Shelf\n");
    }

    static List<JsonNode> referenceCases() throws IOException {
        JsonNode cases = new ObjectMapper()
                .readTree(Path.of("src", "test", "resources", "published", "reference-cases.json")
                        .toFile())
                .get("cases");
        return Stream.iterate(0, i -> i + 1).limit(cases.size()).map(cases::get).toList();
    }

    /** Tolerances as the independent implementation states them for its own figures. */
    @ParameterizedTest
    @MethodSource("referenceCases")
    void boardAgreesWithTheIndependentImplementation(JsonNode reference) throws IOException {
        Path file = Files.writeString(
                folder.resolve("r.board.json"), reference.get("board").toString());
        JsonNode expect = reference.get("expect");
        for (var cup : expect.get("cup").properties()) {
            Ran ran = marktwice("board", file, "--dry-to", cup.getKey(), "--json");
            assertThat(ran.err()).isEmpty();
            assertThat(ran.code()).isZero();
            JsonNode json = ran.json();
            assertThat(names(json)).containsExactly("board", "now", "then", "traces", "surfaces", "clearances");
            for (var face : cup.getValue().properties()) {
                assertThat(json.get("then").get("cup").get(face.getKey()).asDouble())
                        .isCloseTo(face.getValue().asDouble(), within(0.005));
            }
            assertSameClearances(json.get("clearances"), expect.get("clearances"));
            assertSameTraces(json.get("traces"), expect.get("traces"));
        }
    }

    private static void assertSameClearances(JsonNode found, JsonNode expected) {
        assertThat(found).hasSameSizeAs(expected);
        for (int i = 0; i < expected.size(); i++) {
            assertThat(found.get(i).get("knot")).isEqualTo(expected.get(i).get("knot"));
            assertThat(found.get(i).get("cut")).isEqualTo(expected.get(i).get("cut"));
            assertThat(found.get(i).get("mm").asDouble())
                    .isCloseTo(expected.get(i).get("mm").asDouble(), within(0.05));
        }
    }

    private static void assertSameTraces(JsonNode found, JsonNode expected) {
        for (JsonNode trace : expected) {
            JsonNode same = Stream.iterate(0, i -> i + 1)
                    .limit(found.size())
                    .map(found::get)
                    .filter(t -> t.get("knot").equals(trace.get("knot")))
                    .filter(t -> t.get("surface").equals(trace.get("surface")))
                    .findFirst()
                    .orElseThrow();
            double area = trace.get("area").asDouble();
            assertThat(same.get("area").asDouble()).isCloseTo(area, within(0.02 * area + 0.5));
            assertThat(same.get("length").asDouble())
                    .isCloseTo(trace.get("length").asDouble(), within(0.5));
            assertThat(same.get("width").asDouble())
                    .isCloseTo(trace.get("width").asDouble(), within(0.5));
        }
    }

    @Test
    void aBoardWithoutDryToHasNoThen() {
        assertThat(names(marktwice("board", BOARD, "--json").json()))
                .containsExactly("board", "now", "traces", "surfaces", "clearances");
        assertThat(marktwice("board", BOARD, "--dry-to", "7").out())
                .startsWith("Board R1, Red pine, 240 × 120 × 18 mm\n  now: at 13 % moisture ")
                .contains("\n  then: at 7 % moisture ")
                .contains("knot k1 from cut c1: 23.9 mm clear");
    }

    /** EN 844-9 and EN 942, limits from memory. */
    @ParameterizedTest
    @ValueSource(strings = {"r.pdf", "r.svg", "r.PNG"})
    void boardWritesItsReportAsAPicture(String name) {
        Path file = folder.resolve(name);
        Ran ran = marktwice("board", BOARD, "--dry-to", "7", "--out", file, "--paper", "Letter");
        assertThat(ran.code()).isZero();
        assertThat(ran.out())
                .isEqualTo(marktwice("board", BOARD, "--dry-to", "7").out());
        assertThat(file).exists().isNotEmptyFile();
    }

    @ParameterizedTest
    @CsvSource({
        "r.doc, expected a name that ends in .pdf; .svg or .png",
        "nowhere/r.pdf, it can't be saved: there is no such file or folder"
    })
    void boardSaysWhyItsReportCantBeWritten(String name, String reason) {
        Path file = folder.resolve(name);
        Ran ran = marktwice("board", BOARD, "--out", file);
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).isEqualTo(file + ": " + reason.replace(';', ',') + "\n");
        assertThat(file).doesNotExist();
    }

    @Test
    void knotsAndSurfacesAreGraded() {
        JsonNode json = marktwice("board", BOARD, "--json").json();
        JsonNode trace = json.get("traces").get(0);
        assertThat(names(trace))
                .containsExactly("knot", "surface", "length", "width", "area", "live", "kind", "place", "size");
        assertThat(trace.get("kind").asText()).isEqualTo("round");
        assertThat(trace.get("place").asText()).isEqualTo("face");
        assertThat(trace.get("size")).isEqualTo(trace.get("width"));
        assertThat(json.get("surfaces"))
                .extracting(
                        s -> s.get("surface").asText() + " " + s.get("class").asText())
                .containsExactly("face-1 J20", "edge-1 J10", "face-2 J10", "edge-2 J10");
        assertThat(json.get("surfaces").get(0).get("largest").asDouble()).isCloseTo(10.2, within(0.05));
        assertThat(marktwice("board", BOARD).out())
                .contains("  knot k1 on face 1: live round face knot, 10.1 mm across; 10.2 mm × 10.1 mm, 80.8 mm²\n")
                .contains("    face 1: J20, 10.2 mm\n    edge 1: J10, no knot\n");
    }

    /** Wood Handbook eq. 4-5 gives 11.1 % at 65 °F and 60 %. */
    @ParameterizedTest
    @ValueSource(strings = {"65F,60%", "18.333333C,60%", " 65 °F , 60.0 % "})
    void aRoomIsTheMoistureAtWhichTimberSettlesThere(String room) {
        JsonNode json = marktwice("board", BOARD, "--room", room, "--json").json();
        assertThat(names(json)).containsExactly("board", "room", "now", "then", "traces", "surfaces", "clearances");
        assertThat(names(json.get("room"))).containsExactly("celsius", "humidity", "moisture");
        assertThat(json.get("room").get("celsius").asDouble()).isCloseTo(18.333, within(0.001));
        assertThat(json.get("room").get("humidity").asDouble()).isEqualTo(60);
        double moisture = json.get("room").get("moisture").asDouble();
        assertThat(moisture).isCloseTo(11.1, within(0.06));
        JsonNode dried = marktwice("board", BOARD, "--dry-to", Double.toString(moisture), "--json")
                .json();
        assertThat(json.get("then")).isEqualTo(dried.get("then"));
        assertThat(marktwice("board", BOARD, "--room", room).out())
                .contains("\n  room: 18.33 °C, 60 % relative humidity; timber settles at 11.05 % moisture\n")
                .contains("\n  then: at 11.05 % moisture ");
    }

    @Test
    void aBoxedHeartIsSaidAndNotComputed() throws IOException {
        Path boxed = changed(BOARD, "\"z\": -26.06", "\"z\": 9");
        JsonNode now = marktwice("board", boxed, "--json").json().get("now");
        assertThat(names(now)).containsExactly("moisture", "width", "thickness", "cup", "note");
        assertThat(now.get("cup").isNull()).isTrue();
        assertThat(now.get("note").asText()).startsWith("boxed heart: expect a check");
        assertThat(marktwice("board", boxed).out()).contains("boxed heart: expect a check");
    }

    @Test
    void sheetStuffHasNoMoistureAndNoCup() throws IOException {
        Path sheet = Files.writeString(
                folder.resolve("s.board.json"),
                "{\"id\": \"S\", \"stuff\": \"sheet\", \"size\": {\"length\": 500, \"width\": 300, \"thickness\": 6}}");
        JsonNode now =
                marktwice("board", sheet, "--json", "--dry-to", "8").json().get("then");
        assertThat(now.get("moisture").isNull()).isTrue();
        assertThat(now.get("width").asDouble()).isEqualTo(300);
        assertThat(now.get("cup").get("face-1").asDouble()).isZero();
        assertThat(marktwice("board", sheet, "--json")
                        .json()
                        .get("surfaces")
                        .get(0)
                        .get("class")
                        .isNull())
                .isTrue();
        assertThat(marktwice("board", sheet).out())
                .doesNotContain("EN 942")
                .startsWith("Board S, sheet stuff, 500 × 300 × 6 mm");
    }

    @Test
    void checkTellsTheKindsApart() {
        Ran ran = marktwice("check", SCENARIO, ATTEMPT, BOARD);
        assertThat(ran.code()).isZero();
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out().lines().toList())
                .satisfiesExactly(
                        l -> assertThat(l)
                                .startsWith(
                                        SCENARIO
                                                + ": fine: scenario \"Porch shelf\", level 2, 3 parts, 2 joints, 4 boards; can be solved, "),
                        l -> assertThat(l)
                                .isEqualTo(
                                        ATTEMPT + ": fine: attempt by P07 at \"porch-shelf\", 14 actions, handed in"),
                        l -> assertThat(l).isEqualTo(BOARD + ": fine: board R1, 2 knots, 2 cuts"));
        assertThat(marktwice("check", ATTEMPT).out())
                .endsWith("; not tried on its scenario, which isn't among the files\n");
    }

    @Test
    void checkTellsTablesByTheirHeads() throws IOException {
        Path record = Files.writeString(folder.resolve("jobs.csv"), "Learner;across;gap-left-housing\nP01;520,5;\n");
        Path rack = Files.writeString(
                folder.resolve("wood.csv"), "board,species,length,width,thickness\nR1,scots-pine,330,130,18\n");
        Path list = Files.writeString(folder.resolve("class.csv"), "learner,form\nP01,7b\n");
        assertThat(marktwice("check", record, rack, list))
                .isEqualTo(new Ran(
                        2,
                        record + ": fine: record of 1 finished job\n" + rack + ": fine: rack of 1 board, 0 knots\n",
                        list + ":1: expected the table of a rack (with a column \"board\") or of finished jobs"
                                + " (\"learner\", and then measures); no other is checked\n"));
    }

    @Test
    void checkGoesOnAfterARefusedFile() {
        Ran ran = marktwice("check", "nowhere.json", BOARD);
        assertThat(ran)
                .isEqualTo(new Ran(
                        2, BOARD + ": fine: board R1, 2 knots, 2 cuts\n", "nowhere.json: there is no such file\n"));
    }

    @Test
    void rulesWritesTheWholeRuleBook() {
        Ran ran = marktwice("rules", "--json");
        assertThat(ran.code()).isZero();
        JsonNode json = ran.json();
        assertThat(json).hasSameSizeAs(RuleBook.rules()).isNotEmpty();
        for (int i = 0; i < json.size(); i++) {
            Rule rule = RuleBook.rules().get(i);
            assertThat(json.get(i).get("id").asText()).isEqualTo(rule.id());
            assertThat(json.get(i).get("worth").asDouble()).isEqualTo(rule.worth());
            assertThat(names(json.get(i))).startsWith("id", "stage", "worth", "title", "why", "instead", "source");
        }
        String text = marktwice("rules").out().replaceAll("\\s+", " ");
        assertThat(RuleBook.rules())
                .allSatisfy(rule -> assertThat(text)
                        .contains(Texts.of(rule.id()).title() + " (" + rule.id() + ")")
                        .contains(Texts.of(rule.id()).why().replaceAll("\\s+", " ")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"mark", "solve", "board", "check", "rules", "make"})
    void everyCommandExplainsItself(String command) {
        Ran ran = marktwice(command, "--help");
        assertThat(ran.code()).isZero();
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out()).startsWith("Usage: marktwice " + command + " ").contains("Exit 0");
        assertThat(ran.out()).contains("--json writes");
        assertThat(marktwice("--help").out()).contains("\n  " + command + " ");
    }

    @Test
    void theVersionIsOneLine() {
        assertThat(marktwice("--version").out()).startsWith("Marktwice ").hasLineCount(1);
    }

    @Test
    void checkSaysWhatADraftLacks() throws IOException {
        Path draft = folder.resolve("half.draft.json");
        Files.writeString(
                draft,
                "{\"format\": \"marktwice-draft/1\", \"title\": \"Half\", \"level\": 1, \"stages\": [\"faces\"],"
                        + " \"parts\": []}");
        Ran ran = marktwice("check", draft);
        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.out().lines().toList())
                .containsExactly(
                        draft + ": not finished: draft \"Half\"", "  It has no parts yet", "  It has no boards yet");
    }
}
