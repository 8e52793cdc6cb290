package org.marktwice.classroom;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.marktwice.files.AttemptFile;
import org.marktwice.files.FileRefused;
import org.marktwice.rulebook.MarkSheet;
import org.marktwice.rulebook.RuleBook;
import org.marktwice.rulebook.Situation;
import org.marktwice.scenario.Scenario;

/** The shipped porch shelf and its two sample attempts, as a class hands them in. */
final class Handed {
    static final Path SHIPPED = Path.of("scenarios");
    static final Path SHELF = SHIPPED.resolve("porch-shelf.scenario.json");

    private Handed() {}

    static Scenario shelf() {
        try {
            return Exercise.read(SHELF);
        } catch (FileRefused e) {
            throw new AssertionError(e);
        }
    }

    static String perfect() {
        return text(SHIPPED.resolve("attempts/porch-shelf-perfect.attempt.jsonl"));
    }

    static String flawed() {
        return text(SHIPPED.resolve("attempts/porch-shelf-flawed.attempt.jsonl"));
    }

    static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** By another learner, every action so many tenths of a second later: a journal of its own. */
    static String by(String learner, String attempt, int tenthsLater) {
        List<String> lines = new ArrayList<>();
        for (String line : attempt.split("\n")) {
            int t = line.indexOf("{\"t\":");
            if (t < 0) {
                lines.add(line.replaceFirst("\"learner\":\"[^\"]*\"", "\"learner\":\"" + learner + "\""));
                continue;
            }
            int comma = line.indexOf(',');
            double then = Double.parseDouble(line.substring(t + 5, comma)) + tenthsLater / 10.0;
            lines.add("{\"t\":" + Math.round(then * 10) / 10.0 + line.substring(comma));
        }
        return String.join("\n", lines) + "\n";
    }

    /** What the rule book says of it, asked without any of the machinery under test. */
    static MarkSheet judged(byte[] attempt, Scenario scenario) throws FileRefused {
        return RuleBook.judge(
                Situation.of(AttemptFile.open("attempt", attempt, scenario).bench()));
    }

    static List<Marked> marked(Path folder, ExerciseSet set, boolean evenIfChanged) {
        List<Marked> marked = new ArrayList<>();
        try {
            BulkMarking.of(folder).run(new Marker(set, evenIfChanged), 2, marked::add, BulkMarking.Progress.NONE);
        } catch (FileRefused | InterruptedException e) {
            throw new AssertionError(e);
        }
        return marked;
    }
}
