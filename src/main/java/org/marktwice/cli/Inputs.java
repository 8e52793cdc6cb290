package org.marktwice.cli;

import java.nio.file.Path;
import java.util.List;
import org.marktwice.bench.Action;
import org.marktwice.files.AttemptFile;
import org.marktwice.files.FileRefused;
import org.marktwice.files.ScenarioFile;
import org.marktwice.rulebook.RuleBook;
import org.marktwice.scenario.Scenario;

/** Files as the commands want them: the ids of rules in them are known to the rule book as well. */
final class Inputs {
    private Inputs() {}

    static Scenario scenario(Path file) throws FileRefused {
        return checked(file.toString(), ScenarioFile.read(file));
    }

    static Scenario checked(String name, Scenario scenario) throws FileRefused {
        for (String rule :
                scenario.practice().worth().keySet().stream().sorted().toList()) {
            if (RuleBook.rule(rule).isEmpty()) {
                throw new FileRefused(name, 0, 0, "$.practice.worth." + rule, "the rule book has no such rule");
            }
        }
        return scenario;
    }

    static AttemptFile.Opened attempt(Path file, Scenario scenario) throws FileRefused {
        return checked(AttemptFile.open(file, scenario));
    }

    static AttemptFile.Opened checked(AttemptFile.Opened opened) throws FileRefused {
        AttemptFile file = opened.file();
        List<Action> actions = file.attempt().actions();
        for (int i = 0; i < actions.size(); i++) {
            if (!(actions.get(i) instanceof Action.Estimate estimate)) continue;
            for (String rule : estimate.expects()) {
                if (RuleBook.rule(rule).isPresent()) continue;
                throw new FileRefused(
                        file.name(), file.lines().get(i), 0, "$.expects", "the rule book has no rule \"" + rule + "\"");
            }
        }
        return opened;
    }
}
