package org.marktwice.files;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.marktwice.scenario.Scenario;

/** The sample files of this package's tests. */
final class Samples {
    static final Path BROKEN = Path.of("scenarios", "broken");
    static final String SCENARIO = "porch-shelf.scenario.json";
    static final String ATTEMPT = "porch-shelf.attempt.jsonl";
    /** Not to be folded: it holds one of each action, with no regard to sense. */
    static final String EVERY_ACTION = "every-action.attempt.jsonl";

    static final String BOARD = "board.board.json";

    private Samples() {}

    static byte[] bytes(String name) {
        try (InputStream in = Samples.class.getResourceAsStream("/files/" + name)) {
            if (in == null) throw new AssertionError("no sample " + name);
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static String text(String name) {
        return new String(bytes(name), StandardCharsets.UTF_8);
    }

    static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    static Scenario scenario() {
        try {
            return ScenarioFile.read(SCENARIO, bytes(SCENARIO));
        } catch (FileRefused e) {
            throw new AssertionError(e);
        }
    }
}
