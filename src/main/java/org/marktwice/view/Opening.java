package org.marktwice.view;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.marktwice.bench.Attempt;
import org.marktwice.files.AttemptFile;
import org.marktwice.files.FileRefused;
import org.marktwice.files.Journal;
import org.marktwice.files.NotSaved;
import org.marktwice.files.ScenarioFile;
import org.marktwice.scenario.Practice;
import org.marktwice.scenario.Scenario;

/** Opens exercises and attempts from files, or says in one line why one isn't taken. */
final class Opening {
    private final Walk walk;
    private final LearnerFolder folder;
    private final Exercises exercises;

    Opening(Walk walk, LearnerFolder folder, Exercises exercises) {
        this.walk = walk;
        this.folder = folder;
        this.exercises = exercises;
    }

    void open(Path file) {
        try {
            if (file.toString().endsWith(LearnerFolder.ENDING)) openAttempt(file);
            else openScenario(file);
        } catch (FileRefused e) {
            walk.complain(e.getMessage());
        }
    }

    private void openScenario(Path file) throws FileRefused {
        Scenario opened = ScenarioFile.read(file);
        exercises.add(opened);
        walk.exercises();
        walk.startPage().ifPresent(page -> {
            page.refresh();
            page.select(opened);
            page.say("Opened " + file.getFileName() + ". Your work at it is kept in " + folder.kept() + ".");
        });
    }

    /** Goes on with an attempt, wherever its file is. */
    private void openAttempt(Path file) throws FileRefused {
        Attempt header = AttemptFile.read(file).attempt();
        Optional<Scenario> exercise = exercises.all().stream()
                .filter(s -> s.id().equals(header.scenario()))
                .findFirst();
        if (exercise.isEmpty()) {
            walk.complain(
                    file.getFileName() + " is an attempt at \"" + header.scenario() + "\": open that exercise first.");
        } else if (walk.leave()) {
            openAttempt(exercise.get(), file);
        }
    }

    private void openAttempt(Scenario scenario, Path file) throws FileRefused {
        AttemptFile.Opened opened = AttemptFile.open(file, scenario);
        if (!opened.bench().handedIn()) {
            goOn(scenario, file);
        } else if (opened.bench().guidance() == Practice.Guidance.EXAMINATION) {
            walk.complain(file.getFileName() + " was handed in: your teacher marks it.");
        } else {
            walk.showDone(scenario, opened.file().attempt());
        }
    }

    /** Goes on with an attempt that was left. */
    void goOn(Scenario scenario, Path left) {
        try {
            Journal.Resumed resumed = Journal.resume(left, scenario);
            // the file's name is enough here: its folder is the learner's own
            List<String> notices = resumed.notices().stream()
                    .map(n -> n.replace(left.toString(), left.getFileName().toString()))
                    .toList();
            walk.run(scenario, resumed.opened().file().attempt(), Keeper.of(resumed.journal()), notices);
        } catch (NotSaved e) {
            goOnElsewhere(scenario, left, e);
        } catch (FileRefused e) {
            walk.complain(e.getMessage());
        }
    }

    /** With an attempt whose file can only be read: as soon as something is done, another place is offered for it. */
    private void goOnElsewhere(Scenario scenario, Path left, FileRefused why) {
        try {
            AttemptFile.Opened opened = AttemptFile.open(left, scenario);
            walk.run(
                    scenario,
                    opened.file().attempt(),
                    Keeper.refusing(why),
                    List.of("It can be read, but not gone on with there: " + why.reason() + "."));
        } catch (FileRefused e) {
            walk.complain(e.getMessage());
        }
    }

    /** A learner's best attempt at an exercise, as it was marked. */
    void showBest(Scenario scenario) {
        exercises.standing(scenario).best().ifPresent(best -> {
            try {
                walk.showDone(
                        scenario, AttemptFile.open(best.file(), scenario).file().attempt());
            } catch (FileRefused e) {
                walk.complain(e.getMessage());
            }
        });
    }
}
