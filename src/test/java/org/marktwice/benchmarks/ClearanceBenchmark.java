package org.marktwice.benchmarks;

import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.marktwice.timber.Board;
import org.marktwice.timber.Box;
import org.marktwice.timber.Knot;
import org.marktwice.timber.KnotBody;
import org.marktwice.timber.Pith;
import org.marktwice.timber.Shape;
import org.marktwice.timber.Size;
import org.marktwice.timber.SpeciesTable;
import org.marktwice.timber.Stuff;
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

/** One knot-to-cut clearance; the budget is 20 µs. Also what a knot's body costs to build, once for a board. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class ClearanceBenchmark {
    private static final int CUTS = 256;

    private final Knot knot = new Knot("k", 150, 84, 72, 5.5, 8, 60, Double.POSITIVE_INFINITY);
    private final Board.Facts board = new Board.Facts(
            "A",
            Stuff.TIMBER,
            SpeciesTable.byId("scots-pine").orElseThrow(),
            new Size(312, 120, 18),
            16,
            11,
            Set.of(),
            new Pith(52, -40),
            2.4,
            List.of(knot),
            Shape.TRUE,
            1);
    private final KnotBody body = KnotBody.of(knot, board);
    private final Box[] cuts = new Box[CUTS];
    private int next;

    /** Housings across the board, anywhere along it: most stand clear of the knot, some cut it. */
    @Setup
    public void cuts() {
        Random random = new Random(1);
        for (int i = 0; i < CUTS; i++) {
            double x = 294 * random.nextDouble();
            double from = random.nextBoolean() ? 0 : 120 * random.nextDouble();
            cuts[i] = Box.of(x, from, 12, x + 18, 120, 18);
        }
    }

    private Box cut() {
        next = (next + 1) % CUTS;
        return cuts[next];
    }

    @Benchmark
    public double clearance() {
        return body.clearance(cut());
    }

    @Benchmark
    public double clearanceUpTo25() {
        return body.clearance(cut(), 25);
    }

    @Benchmark
    public KnotBody building() {
        return KnotBody.of(knot, board);
    }
}
