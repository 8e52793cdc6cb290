package org.marktwice.view;

import java.nio.file.Path;
import java.util.List;
import org.marktwice.bench.Action;
import org.marktwice.feedback.SheetModel;
import org.marktwice.files.AttemptFile;
import org.marktwice.files.FileRefused;
import org.marktwice.files.ScenarioFile;
import org.marktwice.rulebook.Situation;
import org.marktwice.scenario.Scenario;

/** The exercises that are shipped, and the attempts at them. */
public final class Samples {
    private static final Path FOLDER = Path.of("scenarios");

    private Samples() {}

    public static Scenario scenario(String id) {
        try {
            return ScenarioFile.read(FOLDER.resolve(id + ".scenario.json"));
        } catch (FileRefused e) {
            throw new IllegalStateException(e);
        }
    }

    public static Path attemptFile(String id, String kind) {
        return FOLDER.resolve("attempts").resolve(id + "-" + kind + ".attempt.jsonl");
    }

    /** @param kind perfect or flawed */
    public static AttemptFile.Opened attempt(String id, String kind) {
        try {
            return AttemptFile.open(attemptFile(id, kind), scenario(id));
        } catch (FileRefused e) {
            throw new IllegalStateException(e);
        }
    }

    public static SheetModel sheet(String id, String kind) {
        return SheetModel.of(Situation.of(attempt(id, kind).bench()));
    }

    /** What is done in an attempt before it is handed in. */
    public static List<Action> work(String id, String kind) {
        return attempt(id, kind).file().attempt().actions().stream()
                .filter(a -> !(a instanceof Action.HandIn || a instanceof Action.Estimate))
                .toList();
    }
}
