package org.marktwice.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.marktwice.cli.Ran.ATTEMPT;
import static org.marktwice.cli.Ran.BOARD;
import static org.marktwice.cli.Ran.SCENARIO;
import static org.marktwice.cli.Ran.marktwice;

import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Wrong use and bad files: one clear line on standard error, nothing on standard output, exit 2. */
class WrongUseTest {
    /** Refused for what they are given as or with; on their own they are files of the program. */
    private static final Set<String> OTHERWISE_FINE = Set.of(
            "a-scenario-broken.attempt.jsonl",
            "an-attempt-broken.scenario.json",
            "another-scenario-broken.attempt.jsonl");

    @TempDir
    Path folder;

    private static void assertRefused(Ran ran, String line) {
        assertThat(ran).isEqualTo(new Ran(2, "", line + "\n"));
    }

    static Stream<Arguments> uses() {
        return Stream.of(
                use("marktwice: there is no command frobnicate (marktwice --help says more)", "frobnicate"),
                use(
                        "marktwice mark: Missing required parameters: 'SCENARIO', 'ATTEMPT' (marktwice mark --help says more)",
                        "mark"),
                use(
                        "marktwice mark: Missing required parameter: 'ATTEMPT' (marktwice mark --help says more)",
                        "mark",
                        SCENARIO),
                use(
                        "marktwice solve: Unknown option: '--jso' (marktwice solve --help says more)",
                        "solve",
                        "--jso",
                        SCENARIO),
                use("marktwice check: Missing required parameter: 'FILE' (marktwice check --help says more)", "check"),
                use(
                        "marktwice board: Invalid value for option '--dry-to': expected a number, found 'dry' (marktwice board --help says more)",
                        "board",
                        BOARD,
                        "--dry-to",
                        "dry"),
                use(
                        "marktwice board: --dry-to: expected a moisture from 0 to 100, found NaN (marktwice board --help says more)",
                        "board",
                        BOARD,
                        "--dry-to",
                        "NaN"),
                use(
                        "marktwice board: --dry-to: expected a moisture from 0 to 100, found -1.0 (marktwice board --help says more)",
                        "board",
                        BOARD,
                        "--dry-to=-1"),
                room("expected a temperature and a relative humidity such as 21.1C,50% or 70F,50%, found '21'", "21"),
                room(
                        "expected a temperature and a relative humidity such as 21.1C,50% or 70F,50%, found '21K,50%'",
                        "21K,50%"),
                room("expected a room from -1.11C (30F) to 60C (140F), found -40C", "-40C,50%"),
                room("expected a room from -1.11C (30F) to 60C (140F), found 200F", "200F,50%"),
                room("expected a relative humidity from 0% to 100%, found 101%", "20C,101%"),
                use(
                        "marktwice board: --dry-to=M, --room=ROOM are mutually exclusive (specify only one) (marktwice board --help says more)",
                        "board",
                        BOARD,
                        "--dry-to=8",
                        "--room=20C,50%"),
                use("marktwice class: there is no command list (marktwice class --help says more)", "class", "list"),
                use(
                        "marktwice mark: Invalid value for positional parameter at index 1 (ATTEMPT): expected the name of a file or folder, found \"\" (marktwice mark --help says more)",
                        "mark",
                        SCENARIO,
                        ""),
                use("@nowhere: there is no such file", "solve", "@nowhere"),
                use("nowhere.json: there is no such file", "solve", "nowhere.json"),
                use("nowhere.json: there is no such file", "mark", SCENARIO, "nowhere.json"),
                use("nowhere.json: there is no such file", "board", "nowhere.json"),
                use("nowhere.json: there is no such file", "check", "nowhere.json"),
                use(
                        SCENARIO
                                + ":1:13: $.format: expected a board (\"marktwice-board/1\"), found \"marktwice-scenario/1\"",
                        "board",
                        SCENARIO));
    }

    private static Arguments room(String reason, String room) {
        return use(
                "marktwice board: Invalid value for option '--room': " + reason + " (marktwice board --help says more)",
                "board",
                BOARD,
                "--room",
                room);
    }

    private static Arguments use(String line, Object... args) {
        return Arguments.of(line, List.of(args));
    }

    @ParameterizedTest(name = "{1}")
    @MethodSource("uses")
    void isMetByOneLine(String line, List<Object> args) {
        assertRefused(marktwice(args.toArray()), line);
    }

    static List<Path> brokenFiles() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("scenarios", "broken"))) {
            return files.filter(f -> !f.toString().endsWith(".txt")).sorted().toList();
        }
    }

    @ParameterizedTest
    @MethodSource("brokenFiles")
    void aBrokenFileIsMetByItsLine(Path file) throws IOException {
        String line = Files.readString(Path.of(file + ".expected.txt")).strip();
        boolean quiz = file.toString().endsWith(".quiz.jsonl");
        boolean attempt = file.toString().endsWith(".jsonl") && !quiz;
        Ran ran = quiz
                ? marktwice("quiz", "mark", file)
                : attempt
                        ? marktwice("mark", SCENARIO, file)
                        : marktwice(file.toString().endsWith(".scenario.json") ? "solve" : "check", file);
        assertRefused(ran, file.getParent() + File.separator + line);
        if (OTHERWISE_FINE.contains(file.getFileName().toString())) return;
        Ran checked = attempt ? marktwice("check", SCENARIO, file) : marktwice("check", file);
        assertThat(checked.code()).isEqualTo(2);
        assertThat(checked.err().lines()).hasSize(1);
    }

    @Test
    void thereAreBrokenFiles() throws IOException {
        assertThat(brokenFiles()).hasSizeGreaterThan(80);
    }

    @Test
    void aFileOf50MegabytesIsRefused() throws IOException {
        Path file = folder.resolve("large.json");
        try (RandomAccessFile sparse = new RandomAccessFile(file.toFile(), "rw")) {
            sparse.setLength(50L << 20);
        }
        String line = file + ": larger than 16 MiB, so it is no file of this program";
        assertRefused(marktwice("check", file), line);
        assertRefused(marktwice("solve", file), line);
        assertRefused(marktwice("board", file), line);
        assertRefused(marktwice("mark", SCENARIO, file), line);
    }

    @Test
    void aRuleThatIsNotInTheRuleBookIsNamed() throws IOException {
        Path scenario = folder.resolve("s.scenario.json");
        Files.writeString(
                scenario, Files.readString(SCENARIO).replace("\"knot-clear-of-joint\": 3", "\"knot-clear\": 3"));
        assertRefused(
                marktwice("solve", scenario),
                scenario + ": $.practice.worth.knot-clear: the rule book has no such rule");
        Path attempt = folder.resolve("a.attempt.jsonl");
        Files.writeString(attempt, Files.readString(ATTEMPT).replace("every-part-named", "every-part-shaven"));
        assertRefused(
                marktwice("mark", SCENARIO, attempt),
                attempt + ":14: $.expects: the rule book has no rule \"every-part-shaven\"");
    }

    @Test
    void anAnswerThatCannotBeWrittenOutIsNoSuccess() {
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        OutputStream full = new OutputStream() {
            @Override
            public void write(int b) throws IOException {
                throw new IOException("No space left on device");
            }
        };
        int code = Main.run(new PrintStream(full), new PrintStream(err), "rules");
        assertThat(code).isEqualTo(2);
        assertThat(err.toString(StandardCharsets.UTF_8)).isEqualTo("marktwice: the answer could not be written out\n");
    }
}
