package org.marktwice.cli;

import java.nio.file.Path;
import org.marktwice.classroom.Exercise;
import org.marktwice.files.AttemptFile;
import org.marktwice.files.FileRefused;
import org.marktwice.scenario.Scenario;

/** Files as the commands want them: the ids of rules in them are known to the rule book as well. */
final class Inputs {
    private Inputs() {}

    static Scenario scenario(Path file) throws FileRefused {
        return Exercise.read(file);
    }

    static Scenario checked(String name, Scenario scenario) throws FileRefused {
        return Exercise.checked(name, scenario);
    }

    static AttemptFile.Opened attempt(Path file, Scenario scenario) throws FileRefused {
        return checked(AttemptFile.open(file, scenario));
    }

    static AttemptFile.Opened checked(AttemptFile.Opened opened) throws FileRefused {
        Exercise.checked(opened.file());
        return opened;
    }
}
