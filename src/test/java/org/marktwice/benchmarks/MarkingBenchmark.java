package org.marktwice.benchmarks;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.marktwice.classroom.ExerciseSet;
import org.marktwice.classroom.Learners;
import org.marktwice.classroom.Marked;
import org.marktwice.classroom.Marker;
import org.marktwice.files.ActionWriter;
import org.marktwice.files.AttemptFile;
import org.marktwice.files.FileRefused;
import org.marktwice.files.KnownLines;
import org.marktwice.scenario.Scenario;
import org.marktwice.scenario.Stage;
import org.openjdk.jmh.annotations.AuxCounters;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
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
 * A class of thirty marked after another class of thirty, against reading the same bytes as JSON trees and against reading
 * them as attempts. The budget for marking is three times the parsing of the JSON.
 *
 * <p>The attempts are those of {@link Learners} at every shipped exercise: no two are alike, and they differ as those of
 * learners do, in order, times, places, trims, slips and what was read amiss. Each time the marker is a new one, which has
 * marked the first thirty learners and none of those that it is timed with, so that no attempt is ever met twice; what
 * follows from the exercise alone is known by then. {@code marked} opens the files too.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 8, time = 3)
@Measurement(iterations = 5, time = 3)
public class MarkingBenchmark {
    private static final Path SHIPPED = Path.of("scenarios");
    private static final int CLASS = 30;

    /** Exercises that end with the boards turned, or those that are set out and tried as a dry fit. */
    public enum Kind {
        TURNED,
        SET_OUT
    }

    @Param
    Kind kind = Kind.TURNED;

    private final ObjectMapper mapper = new ObjectMapper();
    private final List<Path> before = new ArrayList<>();
    private final List<Path> files = new ArrayList<>();
    private final List<byte[]> contents = new ArrayList<>();
    private ExerciseSet set = ExerciseSet.of();
    private Path folder = Path.of("");

    @Setup
    public void handIn() throws IOException, FileRefused {
        set = ExerciseSet.read(SHIPPED);
        folder = Files.createTempDirectory("attempts");
        for (Scenario scenario : set.scenarios()) {
            if (scenario.stages().contains(Stage.SETTING_OUT) != (kind == Kind.SET_OUT)) continue;
            Learners learners = Learners.at(scenario, SHIPPED);
            for (int i = 0; i < 2 * CLASS; i++) {
                Path file = folder.resolve(scenario.id() + "-" + i + ".attempt.jsonl");
                Files.writeString(file, ActionWriter.text(learners.attempt(i)));
                (i < CLASS ? before : files).add(file);
            }
        }
        for (Path file : files) contents.add(Files.readAllBytes(file));
    }

    @TearDown
    public void putAway() throws IOException {
        List<Path> all;
        try (Stream<Path> walk = Files.walk(folder)) {
            all = walk.sorted(Comparator.reverseOrder()).toList();
        }
        for (Path file : all) Files.delete(file);
    }

    /** Processor time of the timed thread, which a busy machine lengthens less: to be divided by the files. */
    @State(Scope.Thread)
    @AuxCounters(AuxCounters.Type.EVENTS)
    public static class Spent {
        private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

        public double micros;
        public long files;

        <T> T on(int count, Callable<T> work) throws Exception {
            long before = THREADS.getCurrentThreadCpuTime();
            T done = work.call();
            micros += (THREADS.getCurrentThreadCpuTime() - before) / 1e3;
            files += count;
            return done;
        }
    }

    /** What is known once the first class is marked. */
    @State(Scope.Benchmark)
    public static class AfterAClass {
        private Marker marker = new Marker(ExerciseSet.of(), false);
        private KnownLines lines = new KnownLines();

        @Setup(Level.Invocation)
        public void markTheFirstClass(MarkingBenchmark of) throws IOException, FileRefused {
            marker = new Marker(of.set, false);
            lines = new KnownLines();
            for (Path file : of.before) {
                marker.mark(file, "attempt");
                AttemptFile.read("attempt", Files.readAllBytes(file), lines);
            }
        }
    }

    @Benchmark
    public List<JsonNode> jsonTrees(Spent spent) throws Exception {
        return spent.on(files.size(), () -> {
            List<JsonNode> lines = new ArrayList<>();
            for (byte[] bytes : contents) {
                for (String line : new String(bytes, StandardCharsets.UTF_8).split("\n"))
                    lines.add(mapper.readTree(line));
            }
            return lines;
        });
    }

    @Benchmark
    public List<AttemptFile> attempts(AfterAClass known, Spent spent) throws Exception {
        return spent.on(files.size(), () -> {
            List<AttemptFile> read = new ArrayList<>();
            for (byte[] bytes : contents) read.add(AttemptFile.read("attempt", bytes, known.lines));
            return read;
        });
    }

    @Benchmark
    public List<Marked> marked(AfterAClass known, Spent spent) throws Exception {
        return spent.on(files.size(), () -> {
            List<Marked> marked = new ArrayList<>();
            for (Path file : files) marked.add(known.marker.mark(file, "attempt"));
            return marked;
        });
    }
}
