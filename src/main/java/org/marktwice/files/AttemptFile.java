package org.marktwice.files;

import java.nio.file.Path;
import java.util.List;
import org.marktwice.bench.Action;
import org.marktwice.bench.Attempt;
import org.marktwice.bench.Bench;
import org.marktwice.bench.CannotDo;
import org.marktwice.scenario.Scenario;

/**
 * An attempt as its file has it ({@code *.attempt.jsonl}).
 *
 * @param name what messages call the file
 * @param lines the file's line of each action, step 1 first
 * @param torn whether the last line was cut off and has been dropped
 * @param notices what the reader did about the file, in lines fit to show
 */
public record AttemptFile(String name, Attempt attempt, List<Integer> lines, boolean torn, List<String> notices) {
    public AttemptFile {
        lines = List.copyOf(lines);
        notices = List.copyOf(notices);
    }

    /** An attempt that fits its scenario, and the bench as it leaves it. */
    public record Opened(AttemptFile file, Bench bench) {}

    /** Shape and words only; the scenario isn't needed. */
    public static AttemptFile read(Path file) throws FileRefused {
        return read(file.toString(), Bytes.read(file));
    }

    /** @param name what messages call the file */
    public static AttemptFile read(String name, byte[] bytes) throws FileRefused {
        return JournalText.read(name, bytes).file();
    }

    /** @param known lines of other attempts, and of this one from now on */
    public static AttemptFile read(String name, byte[] bytes, KnownLines known) throws FileRefused {
        return JournalText.read(name, bytes, known).file();
    }

    /** @throws FileRefused where the attempt is for another scenario, or an action in it can't be done */
    public static Opened open(Path file, Scenario scenario) throws FileRefused {
        return read(file).on(scenario);
    }

    /** @throws FileRefused where the attempt is for another scenario, or an action in it can't be done */
    public static Opened open(String name, byte[] bytes, Scenario scenario) throws FileRefused {
        return read(name, bytes).on(scenario);
    }

    /** @throws FileRefused where the attempt is for another scenario, or an action in it can't be done */
    public Opened on(Scenario scenario) throws FileRefused {
        return on(Bench.of(scenario));
    }

    /**
     * @param fresh the bench before anything was done
     * @throws FileRefused where the attempt is for another scenario, or an action in it can't be done
     */
    public Opened on(Bench fresh) throws FileRefused {
        Scenario scenario = fresh.scenario();
        if (!attempt.scenario().equals(scenario.id())) {
            throw new FileRefused(
                    name,
                    1,
                    0,
                    "$.scenario",
                    "this is an attempt at " + Words.quoted(attempt.scenario()) + ", not at "
                            + Words.quoted(scenario.id()));
        }
        if (!attempt.digest().isEmpty()
                && !scenario.digest().isEmpty()
                && !attempt.digest().equals(scenario.digest())) {
            throw new FileRefused(
                    name,
                    1,
                    0,
                    "$.digest",
                    "the scenario file isn't the one this attempt was made on: it"
                            + " was changed since, or comes from another set");
        }
        Bench bench = fresh;
        for (int i = 0; i < lines.size(); i++) {
            Action action = attempt.actions().get(i);
            try {
                bench = bench.after(action);
            } catch (CannotDo e) {
                throw new FileRefused(
                        name, lines.get(i), 0, "", "step " + (i + 1) + ", " + action.verb() + ": " + e.why());
            }
        }
        return new Opened(this, bench);
    }
}
