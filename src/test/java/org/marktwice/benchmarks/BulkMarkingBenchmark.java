package org.marktwice.benchmarks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.marktwice.bench.Attempt;
import org.marktwice.classroom.BulkMarking;
import org.marktwice.classroom.ExerciseSet;
import org.marktwice.classroom.Learners;
import org.marktwice.classroom.Marker;
import org.marktwice.files.ActionWriter;
import org.marktwice.files.FileRefused;
import org.marktwice.scenario.Scenario;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/**
 * A folder of attempts marked, by how many files and how many threads: {@link Learners} at five exercises, one of which is
 * set out, no two attempts alike. The heap is no larger for 10,000 files than for 1,000: 64 MB, of which the answers held
 * would alone need several times as much. The compiler takes half a dozen rounds of 10,000 files, and a core with them.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgsAppend = "-Xmx64m")
@Warmup(iterations = 16)
@Measurement(iterations = 5)
public class BulkMarkingBenchmark {
    private static final Path SHIPPED = Path.of("scenarios");
    private static final int EXERCISES = 5;

    @Param({"1000", "10000"})
    int files;

    @Param({"1", "2"})
    int threads;

    private Path folder = Path.of("");
    private ExerciseSet set = ExerciseSet.of();

    @Setup
    public void handIn() throws IOException, FileRefused {
        set = ExerciseSet.read(SHIPPED);
        folder = Files.createTempDirectory("attempts");
        List<Learners> learners = new ArrayList<>();
        for (Scenario scenario : set.scenarios().subList(0, EXERCISES)) {
            learners.add(Learners.at(scenario, SHIPPED));
        }
        for (int i = 0; i < files; i++) {
            Attempt one = learners.get(i % EXERCISES).attempt(i);
            Files.writeString(folder.resolve(i + ".attempt.jsonl"), ActionWriter.text(one));
        }
    }

    @TearDown
    public void putAway() throws IOException {
        List<Path> all;
        try (Stream<Path> walk = Files.walk(folder)) {
            all = walk.sorted(Comparator.reverseOrder()).toList();
        }
        for (Path file : all) Files.delete(file);
    }

    @Benchmark
    public double marked() throws FileRefused, InterruptedException {
        double[] marks = new double[1];
        BulkMarking.of(folder)
                .run(
                        new Marker(set, false),
                        threads,
                        m -> marks[0] += m.sheet().orElseThrow().marks(),
                        BulkMarking.Progress.NONE);
        return marks[0];
    }
}
