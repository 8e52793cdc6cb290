package org.marktwice.classroom;

import java.nio.file.Path;
import java.util.List;
import org.marktwice.bench.Action;
import org.marktwice.files.AttemptFile;
import org.marktwice.files.FileRefused;
import org.marktwice.files.ScenarioFile;
import org.marktwice.rulebook.RuleBook;
import org.marktwice.scenario.Scenario;

/** Scenarios and attempts whose rule ids are known to the rule book as well, which their own readers can't tell. */
public final class Exercise {
    private Exercise() {}

    public static Scenario read(Path file) throws FileRefused {
        return checked(file.toString(), ScenarioFile.read(file));
    }

    /** @param name what messages call the file */
    public static Scenario checked(String name, Scenario scenario) throws FileRefused {
        for (String rule :
                scenario.practice().worth().keySet().stream().sorted().toList()) {
            if (RuleBook.rule(rule).isEmpty()) {
                throw new FileRefused(name, 0, 0, "$.practice.worth." + rule, "the rule book has no such rule");
            }
        }
        return scenario;
    }

    public static AttemptFile checked(AttemptFile file) throws FileRefused {
        List<Action> actions = file.attempt().actions();
        for (int i = 0; i < actions.size(); i++) {
            if (!(actions.get(i) instanceof Action.Estimate estimate)) continue;
            for (String rule : estimate.expects()) {
                if (RuleBook.rule(rule).isPresent()) continue;
                throw new FileRefused(
                        file.name(), file.lines().get(i), 0, "$.expects", "the rule book has no rule \"" + rule + "\"");
            }
        }
        return file;
    }
}
