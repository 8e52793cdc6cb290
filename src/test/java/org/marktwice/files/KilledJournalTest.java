package org.marktwice.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.marktwice.bench.Action;
import org.marktwice.bench.Attempt;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;

/** A writing process is killed outright; what it had acknowledged is there. */
class KilledJournalTest {
    private static final int BEFORE_THE_KILL = 60;

    @TempDir
    Path folder;

    @Test
    void everyAcknowledgedActionSurvivesTheKill() throws IOException, InterruptedException, FileRefused {
        Path file = folder.resolve("killed.attempt.jsonl");
        Process writer = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        Writer.class.getName(),
                        file.toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        int acknowledged = 0;
        try (BufferedReader said =
                new BufferedReader(new InputStreamReader(writer.getInputStream(), StandardCharsets.UTF_8))) {
            while (acknowledged < BEFORE_THE_KILL && said.readLine() != null) acknowledged++;
            // by its handle, which leaves what it said readable
            writer.toHandle().destroyForcibly();
            // it may have got further before it died; what it managed to say counts too
            String line;
            while ((line = said.readLine()) != null) if (line.equals("on disk")) acknowledged++;
        } finally {
            writer.destroyForcibly();
        }
        assertThat(writer.waitFor(1, TimeUnit.MINUTES)).isTrue();
        assertThat(acknowledged).isGreaterThanOrEqualTo(BEFORE_THE_KILL);

        Journal.Resumed resumed = Journal.resume(file, Samples.scenario());
        try (Journal journal = resumed.journal()) {
            List<Action> log = resumed.opened().bench().log();
            assertThat(log).hasSizeBetween(acknowledged, acknowledged + 1);
            for (int i = 0; i < log.size(); i++) assertThat(log.get(i)).isEqualTo(Writer.action(i));
            journal.append(new Action.HandIn(1e6));
        }
        assertThat(AttemptFile.read(file).attempt().actions()).last().isEqualTo(new Action.HandIn(1e6));
    }

    /** Appends for ever, and says so after each action. */
    static final class Writer {
        private Writer() {}

        static Action action(int i) {
            SurfacePoint to = new SurfacePoint(Surface.FACE_1, i % 300, 60);
            return new Action.Measure(i, "A", new SurfacePoint(Surface.FACE_1, 0, 60), to);
        }

        public static void main(String[] args) throws FileRefused {
            Attempt header = new Attempt("porch-shelf", "", "P07", "2026-01-12T09:30:00Z", List.of());
            try (Journal journal = Journal.create(Path.of(args[0]), header)) {
                for (int i = 0; ; i++) {
                    journal.append(action(i));
                    System.out.println("on disk");
                    System.out.flush();
                }
            }
        }
    }
}
