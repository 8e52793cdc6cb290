package org.marktwice.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.stream.Stream;

/** A command line that was run, with what it said. */
record Ran(int code, String out, String err) {
    static final Path SAMPLES = Path.of("src", "test", "resources", "files");
    static final Path SCENARIO = SAMPLES.resolve("porch-shelf.scenario.json");
    static final Path ATTEMPT = SAMPLES.resolve("porch-shelf.attempt.jsonl");
    static final Path BOARD = SAMPLES.resolve("board.board.json");

    static Ran marktwice(Object... args) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        String[] words = Stream.of(args).map(Object::toString).toArray(String[]::new);
        // another encoding than UTF-8, as a terminal may have it
        int code = Main.run(
                new PrintStream(out, false, StandardCharsets.ISO_8859_1),
                new PrintStream(err, false, StandardCharsets.ISO_8859_1),
                words);
        return new Ran(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    JsonNode json() {
        try {
            return new ObjectMapper().readTree(out);
        } catch (JsonProcessingException e) {
            throw new AssertionError(out, e);
        }
    }
}
