package org.marktwice.benchmarks;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.marktwice.classroom.ExerciseSet;
import org.marktwice.classroom.Marked;
import org.marktwice.classroom.Marker;
import org.marktwice.files.AttemptFile;
import org.marktwice.files.FileRefused;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * The shipped sample attempts, two for each exercise, marked one after the other, against reading the same bytes as JSON trees and
 * against reading them as attempts. The budget for marking is three times the parsing of the JSON.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
public class MarkingBenchmark {
    private static final Path SHIPPED = Path.of("scenarios");

    private final ObjectMapper mapper = new ObjectMapper();
    private final List<Path> files = new ArrayList<>();
    private final List<byte[]> contents = new ArrayList<>();
    private Marker marker = new Marker(ExerciseSet.of(), false);

    @Setup
    public void read() throws IOException, FileRefused {
        try (Stream<Path> all = Files.list(SHIPPED.resolve("attempts"))) {
            all.filter(f -> f.toString().endsWith(".jsonl")).sorted().forEach(files::add);
        }
        for (Path file : files) contents.add(Files.readAllBytes(file));
        marker = new Marker(ExerciseSet.read(SHIPPED), false);
    }

    @Benchmark
    public List<JsonNode> jsonTrees() throws IOException {
        List<JsonNode> lines = new ArrayList<>();
        for (byte[] bytes : contents) {
            for (String line : new String(bytes, StandardCharsets.UTF_8).split("\n")) lines.add(mapper.readTree(line));
        }
        return lines;
    }

    @Benchmark
    public List<AttemptFile> attempts() throws FileRefused {
        List<AttemptFile> read = new ArrayList<>();
        for (byte[] bytes : contents) read.add(AttemptFile.read("attempt", bytes));
        return read;
    }

    @Benchmark
    public List<Marked> marked() {
        List<Marked> marked = new ArrayList<>();
        for (Path file : files) marked.add(marker.mark(file, "attempt"));
        return marked;
    }
}
