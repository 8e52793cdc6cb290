package org.marktwice.classroom;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.marktwice.bench.Attempt;
import org.marktwice.bench.Bench;
import org.marktwice.bench.CannotDo;
import org.marktwice.files.ActionWriter;
import org.marktwice.files.AttemptFile;
import org.marktwice.files.FileRefused;
import org.marktwice.rulebook.MarkSheet;
import org.marktwice.rulebook.RuleBook;
import org.marktwice.rulebook.Situation;
import org.marktwice.scenario.Scenario;

/**
 * Attempts of many learners marked by one marker, which keeps what it found, come out as each does alone from fresh: the
 * marks, and every finding with all that it says. Whatever the order, over several threads.
 */
class BulkMarkingLawsTest {
    private static final int LEARNERS = 3;

    @TempDir
    static Path folder;

    private static ExerciseSet set = ExerciseSet.of();
    private static final Map<Path, MarkSheet> ALONE = new HashMap<>();

    /** Each learner's attempt, and the same not finished. */
    @BeforeAll
    static void attemptsMarkedAlone() throws FileRefused, IOException, CannotDo {
        set = ExerciseSet.read(Handed.SHIPPED);
        Random random = new Random(20261128);
        for (Scenario scenario : set.scenarios()) {
            Learners learners = Learners.at(scenario, Handed.SHIPPED);
            for (int i = 0; i < LEARNERS; i++) {
                Attempt whole = learners.attempt(i);
                int steps = whole.actions().size();
                put(scenario, i + "-whole", whole);
                put(scenario, i + "-cut", whole.upTo(random.nextInt(steps + 1)));
            }
        }
    }

    private static void put(Scenario scenario, String name, Attempt attempt) throws FileRefused, IOException, CannotDo {
        Path file = folder.resolve(scenario.id() + "-" + name + ".attempt.jsonl");
        Files.writeString(file, ActionWriter.text(attempt));
        ALONE.put(
                file,
                RuleBook.judge(Situation.of(
                        Bench.after(scenario, AttemptFile.read(file).attempt()))));
    }

    @ParameterizedTest
    @CsvSource({"1,1", "2,2", "3,4"})
    void inAnyOrderOverSeveralThreads(long seed, int threads) throws Exception {
        List<Path> files = new ArrayList<>(ALONE.keySet());
        Collections.sort(files);
        // twice, so that nearly everything is known the second time
        files.addAll(List.copyOf(files));
        Collections.shuffle(files, new Random(seed));
        Marker marker = new Marker(set, false);
        ExecutorService workers = Executors.newFixedThreadPool(threads);
        try {
            List<Future<Marked>> marked = new ArrayList<>();
            for (Path file : files) marked.add(workers.submit(() -> marker.mark(file, file.toString())));
            for (Future<Marked> one : marked) isAsAlone(one.get());
        } finally {
            workers.shutdownNow();
        }
    }

    private static void isAsAlone(Marked marked) {
        MarkSheet sheet = marked.sheet().orElseThrow();
        MarkSheet alone = Objects.requireNonNull(ALONE.get(Path.of(marked.file())));
        assertThat(sheet.entries()).as(marked.file()).isEqualTo(alone.entries());
        assertThat(sheet.notJudged()).as(marked.file()).isEqualTo(alone.notJudged());
        assertThat(sheet.marks()).as(marked.file()).isEqualTo(alone.marks());
    }
}
