package org.marktwice.benchmarks;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.marktwice.Fixtures;
import org.marktwice.advice.ModelAnswer;
import org.marktwice.classroom.Exercise;
import org.marktwice.classroom.RackAllotment;
import org.marktwice.files.FileRefused;
import org.marktwice.files.RackFile;
import org.marktwice.scenario.Scenario;
import org.marktwice.timber.Board;
import org.marktwice.timber.Knot;
import org.marktwice.timber.KnotFit;
import org.marktwice.timber.MeasuredBoard;
import org.marktwice.timber.MeasuredBoard.Measured;
import org.marktwice.timber.Pith;
import org.marktwice.timber.Showing;
import org.marktwice.timber.Size;
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
 * A whole class's timber: 210 measured boards with one to three knots each, up to 12 mm too long, to the 210 parts of 70
 * porch shelves; one knot's fit alone; and the whole, from the readings to what is to buy.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 3, time = 2)
public class RackBenchmark {
    private static final int JOBS = 70;

    private final List<MeasuredBoard> measured = new ArrayList<>();
    private Scenario job = Fixtures.porchShelf();
    private Scenario fitted = job;

    @Setup
    public void measure() throws FileRefused {
        job = Exercise.read(Path.of("scenarios", "porch-shelf.scenario.json"));
        Random random = new Random(210);
        for (int i = 0; i < JOBS; i++) {
            for (var part : job.drawing().parts()) {
                Size size = new Size(
                        part.size().length() + random.nextInt(13),
                        part.size().width(),
                        part.size().thickness());
                measured.add(board("R" + measured.size(), size, random));
            }
        }
        fitted = RackAllotment.of(job, new RackFile(measured), 1).scenario();
    }

    private MeasuredBoard board(String id, Size size, Random random) {
        Board.Facts like = job.boards().get(0).facts();
        Pith pith = new Pith(size.width() * random.nextDouble(), -20 - 60 * random.nextDouble());
        List<Knot> knots = new ArrayList<>();
        for (int k = 0; k <= random.nextInt(3); k++) {
            knots.add(new Knot(
                    "k" + k,
                    size.length() * random.nextDouble(),
                    50 + 80 * random.nextDouble(),
                    60 + 60 * random.nextDouble(),
                    8,
                    3 + 6 * random.nextDouble(),
                    Double.POSITIVE_INFINITY,
                    Double.POSITIVE_INFINITY));
        }
        Board whole = Board.of(facts(like, id, size, pith, knots));
        List<Measured> shown = whole.bodies().stream()
                .map(b -> new Measured(
                        b.knot().id(), b.traces().stream().map(Showing::of).toList()))
                .filter(m -> !m.shows().isEmpty())
                .toList();
        return new MeasuredBoard(facts(like, id, size, pith, List.of()), shown);
    }

    private static Board.Facts facts(Board.Facts like, String id, Size size, Pith pith, List<Knot> knots) {
        return new Board.Facts(
                id,
                like.stuff(),
                like.species(),
                size,
                12,
                12,
                like.dressed(),
                pith,
                like.ringWidth(),
                knots,
                like.shape(),
                like.seed());
    }

    @Benchmark
    public List<ModelAnswer> judgeAndAllot() {
        return ModelAnswer.of(fitted, JOBS);
    }

    @Benchmark
    public KnotFit oneKnot() {
        MeasuredBoard board = measured.get(0);
        Measured knot = board.knots().get(0);
        Pith pith = Objects.requireNonNull(board.bare().pith());
        return KnotFit.of(knot.id(), knot.shows(), pith, board.bare().size());
    }

    @Benchmark
    public RackAllotment fromReadings() {
        return RackAllotment.of(job, new RackFile(measured), JOBS);
    }
}
