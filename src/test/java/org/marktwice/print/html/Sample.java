package org.marktwice.print.html;

import java.nio.file.Files;
import java.nio.file.Path;
import org.marktwice.bench.Attempt;
import org.marktwice.feedback.Replayed;
import org.marktwice.files.AttemptFile;
import org.marktwice.scenario.Scenario;
import org.marktwice.view.Samples;

/** Attempts that are shipped, as pages. */
final class Sample {
    private Sample() {}

    static Replayed replayed(String exercise, String kind) throws Exception {
        AttemptFile file = Samples.attempt(exercise, kind).file();
        return Replayed.of(Samples.scenario(exercise), file.attempt(), file.notices());
    }

    /** The same attempt by somebody of another name. */
    static Replayed by(String learner, String exercise, String kind) throws Exception {
        Scenario scenario = Samples.scenario(exercise);
        Attempt attempt = Samples.attempt(exercise, kind).file().attempt();
        Attempt theirs =
                new Attempt(attempt.scenario(), attempt.digest(), learner, attempt.started(), attempt.actions());
        return Replayed.of(scenario, theirs, java.util.List.of());
    }

    static Path page(Path folder, Replayed replayed) throws Exception {
        Path file = folder.resolve("replay.html");
        Files.write(file, ReplayPage.of(replayed));
        return file;
    }
}
