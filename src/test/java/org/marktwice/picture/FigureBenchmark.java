package org.marktwice.picture;

import java.awt.image.BufferedImage;
import java.util.concurrent.TimeUnit;
import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/**
 * A megapixel of figure against a bare loop of one square root and one sine a pixel. The budget is their ratio in one run:
 * at most 2.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
public class FigureBenchmark {
    private static final int WIDTH = 1614;
    private static final int HEIGHT = 620;

    private final Board pine = Samples.pine();
    private final Board walnut = Samples.board(
            "W",
            "black-walnut",
            pine.size(),
            pine.pith().orElseThrow(),
            2.4,
            pine.knots(),
            3,
            pine.facts().dressed());
    private final double[] row = new double[WIDTH];

    /** The yardstick. */
    @Benchmark
    public double bare() {
        double sum = 0;
        for (int y = 0; y < HEIGHT; y++) {
            for (int x = 0; x < WIDTH; x++) {
                row[x] = Math.sin(Math.sqrt(x * (double) x + y * (double) y));
            }
            sum += row[y];
        }
        return sum;
    }

    /** A face of 312 × 120 mm with three knots: as many pixels as the yardstick's. */
    @Benchmark
    public BufferedImage softwood() {
        return WoodFigure.of(pine).image(Surface.FACE_1, WIDTH / 312.0);
    }

    /** The same with the vessels that hardwood shows. */
    @Benchmark
    public BufferedImage hardwood() {
        return WoodFigure.of(walnut).image(Surface.FACE_1, WIDTH / 312.0);
    }

    public static void main(String[] args) throws RunnerException {
        new Runner(new OptionsBuilder()
                        .include(FigureBenchmark.class.getSimpleName())
                        .build())
                .run();
    }
}
