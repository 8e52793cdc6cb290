package org.marktwice.cli;

import java.io.IOException;
import java.io.InputStream;
import org.marktwice.feedback.SheetModel;
import org.marktwice.files.AttemptFile;
import org.marktwice.files.FileRefused;
import org.marktwice.files.ScenarioFile;
import org.marktwice.rulebook.Situation;
import org.marktwice.scenario.Scenario;

/** What the program shows where it can open no window: an attempt of the shipped exercises, marked. */
final class Demo {
    private static final String SCENARIO = "/scenarios/porch-shelf.scenario.json";
    private static final String ATTEMPT = "/scenarios/attempts/porch-shelf-flawed.attempt.jsonl";

    private Demo() {}

    static int mark(Console console) throws FileRefused {
        Scenario scenario = ScenarioFile.read(SCENARIO, resource(SCENARIO));
        AttemptFile.Opened opened = AttemptFile.open(ATTEMPT, resource(ATTEMPT), scenario);
        console.line("There is no display here, so this is a shipped exercise, marked:");
        console.line("");
        console.line(MarkSheetText.of(opened, SheetModel.of(Situation.of(opened.bench()))));
        console.line("");
        console.line("For the window, start the program the same way on a desktop (on Linux: where DISPLAY is set).");
        console.line("For the commands: java -jar target/marktwice.jar --help");
        return Exit.DONE;
    }

    private static byte[] resource(String name) throws FileRefused {
        try (InputStream in = Demo.class.getResourceAsStream(name)) {
            if (in == null) throw new FileRefused(name, "it is missing from this copy of the program");
            return in.readAllBytes();
        } catch (IOException e) {
            throw new FileRefused(name, "it can't be read from this copy of the program");
        }
    }
}
