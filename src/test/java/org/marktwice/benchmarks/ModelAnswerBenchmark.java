package org.marktwice.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.marktwice.advice.Assignment;
import org.marktwice.advice.Assignment.Worth;
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
import org.openjdk.jmh.annotations.Warmup;

/** The exact best set for 210 boards and 210 parts, each pair judged in four turns beforehand. Budget: under 1 s. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2, time = 2)
@Measurement(iterations = 3, time = 2)
@Fork(1)
public class ModelAnswerBenchmark {
    private static final int COUNT = 210;
    private static final int TURNS = 4;

    /** How many of a hundred ways to use a board keep every margin. */
    @Param({"5", "30", "80"})
    int clearInHundred;

    private List<List<List<Worth>>> judged = List.of();

    /** By part, board and turn. */
    @Setup
    public void judge() {
        Random random = new Random(210);
        judged = new ArrayList<>();
        for (int part = 0; part < COUNT; part++) {
            List<List<Worth>> row = new ArrayList<>();
            for (int board = 0; board < COUNT; board++) {
                List<Worth> turns = new ArrayList<>();
                boolean fits = random.nextInt(100) < 70;
                for (int turn = 0; fits && turn < TURNS; turn++) {
                    boolean clear = random.nextInt(100) < clearInHundred;
                    turns.add(new Worth(
                            clear, Math.min(25_000, clear ? 10_000 + random.nextInt(30_000) : random.nextInt(16_000))));
                }
                row.add(turns);
            }
            judged.add(row);
        }
    }

    @Benchmark
    public int[] best() {
        List<List<Optional<Worth>>> table = judged.stream()
                .map(row -> row.stream()
                        .map(turns -> turns.stream().reduce(ModelAnswerBenchmark::better))
                        .toList())
                .toList();
        return Assignment.best(table);
    }

    private static Worth better(Worth one, Worth other) {
        if (one.clear() != other.clear()) return one.clear() ? one : other;
        return one.microns() >= other.microns() ? one : other;
    }
}
