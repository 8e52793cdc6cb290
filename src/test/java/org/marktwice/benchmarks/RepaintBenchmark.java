package org.marktwice.benchmarks;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.concurrent.TimeUnit;
import org.marktwice.drawing.Drawing;
import org.marktwice.picture.JobPicture;
import org.marktwice.picture.Palette;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The isometric view of a job of 12 parts painted again on 1920 × 1080 pixels; the budget is 16 ms. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgsAppend = "-Djava.awt.headless=true")
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class RepaintBenchmark {
    private static final Rectangle2D AREA = new Rectangle2D.Double(0, 0, 1920, 1080);

    private final Drawing drawing = JudgingBenchmark.rack();
    private final JobPicture job = JobPicture.of(drawing);
    private final BufferedImage screen = new BufferedImage(1920, 1080, BufferedImage.TYPE_INT_RGB);

    @Benchmark
    public BufferedImage repainted() {
        return painted(job);
    }

    /** With the hidden lines found anew, as after the drawing has changed. */
    @Benchmark
    public BufferedImage drawnAnew() {
        return painted(JobPicture.of(drawing));
    }

    private BufferedImage painted(JobPicture picture) {
        Graphics2D g = screen.createGraphics();
        g.setColor(Color.WHITE);
        g.fill(AREA);
        picture.paint(g, AREA, JobPicture.Style.picking("shelf-4"), Palette.LIGHT);
        g.dispose();
        return screen;
    }
}
