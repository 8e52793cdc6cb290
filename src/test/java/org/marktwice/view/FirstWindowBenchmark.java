package org.marktwice.view;

import com.formdev.flatlaf.FlatLightLaf;
import java.awt.Graphics;
import java.awt.Window;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import javax.swing.JFrame;
import javax.swing.SwingUtilities;
import org.marktwice.scenario.Scenario;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/**
 * From the first class loaded to the first painted window, each in a virtual machine of its own, on the screen in memory;
 * the budget is 1.5 times an empty frame. What a virtual machine takes to start belongs to both, and is not counted here.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 10, jvmArgsAppend = "-Djmh.shutdownTimeout=1")
@Warmup(iterations = 0)
@Measurement(iterations = 1)
public class FirstWindowBenchmark {
    private Path home = Path.of("");

    @Setup(Level.Trial)
    public void screen() throws IOException, ReflectiveOperationException {
        System.setProperty("gui.screen", "cacio");
        Class.forName("com.github.caciocavallosilano.cacio.ctc.junit.CacioExtension");
        home = Files.createTempDirectory("marktwice");
    }

    /** The yardstick: a frame of the same size with nothing in it. */
    @Benchmark
    public BufferedImage empty() throws Exception {
        return painted(() -> {
            FlatLightLaf.setup();
            return new JFrame();
        });
    }

    @Benchmark
    public BufferedImage start() throws Exception {
        Future<List<Scenario>> shelf = Launch.readShelf();
        return painted(() -> Launch.window(new LearnerFolder(home), shelf));
    }

    @TearDown(Level.Trial)
    public void close() throws Exception {
        SwingUtilities.invokeAndWait(() -> {
            for (Window window : Window.getWindows()) window.dispose();
        });
    }

    private static BufferedImage painted(Supplier<JFrame> made) throws Exception {
        BufferedImage image = new BufferedImage(1280, 800, BufferedImage.TYPE_INT_RGB);
        SwingUtilities.invokeAndWait(() -> {
            JFrame frame = made.get();
            frame.setSize(image.getWidth(), image.getHeight());
            frame.setVisible(true);
            Graphics g = image.createGraphics();
            frame.paint(g);
            g.dispose();
        });
        return image;
    }
}
