package org.marktwice.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.marktwice.Fixtures;
import org.marktwice.advice.ModelAnswer;
import org.marktwice.advice.Option;
import org.marktwice.bench.Action;
import org.marktwice.bench.Bench;
import org.marktwice.bench.CannotDo;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Drawing;
import org.marktwice.drawing.JobAxis;
import org.marktwice.drawing.Joint;
import org.marktwice.drawing.Overall;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Turn;
import org.marktwice.rulebook.MarkSheet;
import org.marktwice.rulebook.RuleBook;
import org.marktwice.rulebook.Situation;
import org.marktwice.scenario.Scenario;
import org.marktwice.timber.Board;
import org.marktwice.timber.Knot;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;
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
 * The whole rule book judged again after one more action: 12 parts (two uprights and ten shelves in housings), 40 knots;
 * the budget is 2 ms. Once with everything as the model answer has it, once with every board turned end for end (so that
 * nearly everything is wrong and has to be told better), and once with the boards named only.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class JudgingBenchmark {
    private static final int SHELVES = 10;

    private Situation sound = Situation.of(Bench.of(Fixtures.porchShelf()));
    private Situation wrong = sound;
    private Situation named = sound;

    @Setup
    public void play() throws CannotDo {
        Scenario scenario = Fixtures.scenario("rack", rack(), boards());
        ModelAnswer model = ModelAnswer.of(scenario);
        Bench bench = Bench.of(scenario);
        for (Option option : model.placings()) {
            bench = bench.after(new Action.Name(
                    1,
                    option.placing().board().id(),
                    option.placing().part().id(),
                    new SurfacePoint(Surface.FACE_1, 150, 60)));
        }
        named = judgedOnce(Situation.of(bench));
        sound = judgedOnce(named.at(turned(bench, model, false)));
        wrong = judgedOnce(named.at(turned(bench, model, true)));
    }

    private static Situation judgedOnce(Situation situation) {
        RuleBook.judge(situation);
        return situation;
    }

    private static Bench turned(Bench from, ModelAnswer model, boolean endForEnd) throws CannotDo {
        Bench bench = from;
        for (Option option : model.placings()) {
            String board = option.placing().board().id();
            Turn turn = option.placing().turn();
            Part part = option.placing().part();
            Surface side = turn.looking(part.faceSide().get(0));
            Surface edge = turn.looking(part.faceEdge().get(0));
            Direction looks = turn.of(side);
            bench = bench.after(new Action.FaceSide(2, board, side, edge))
                    .after(new Action.FaceEdge(3, board, edge, side));
            Map<Surface, Direction> facing =
                    Map.of(side, looks, edge, endForEnd ? turn.of(edge).opposite() : turn.of(edge));
            bench = bench.after(new Action.Turning(4, board, facing, null));
        }
        return bench;
    }

    static Drawing rack() {
        List<Part> parts = new ArrayList<>();
        List<Joint> joints = new ArrayList<>();
        double high = 100.0 * SHELVES + 100;
        parts.add(upright("left", "Left upright", 0, high, Direction.RIGHT));
        parts.add(upright("right", "Right upright", 482, high, Direction.LEFT));
        for (int i = 0; i < SHELVES; i++) {
            String id = "shelf-" + i;
            parts.add(Fixtures.timber(id, "Shelf " + i)
                    .size(476, 120, 18)
                    .at(12, 0, 80 + 100.0 * i)
                    .runs(JobAxis.ACROSS, JobAxis.DEEP)
                    .marks(List.of(Direction.TOP), List.of(Direction.FRONT))
                    .part());
            joints.add(new Joint.ThroughHousing("left-" + i, "left", id));
            joints.add(new Joint.ThroughHousing("right-" + i, "right", id));
        }
        return Fixtures.drawing(new Overall(500, 120, high), parts, joints.toArray(Joint[]::new));
    }

    private static Part upright(String id, String name, double x, double high, Direction side) {
        return Fixtures.timber(id, name)
                .size(high, 120, 18)
                .at(x, 0, 0)
                .runs(JobAxis.HIGH, JobAxis.DEEP)
                .marks(List.of(side), List.of(Direction.FRONT))
                .part();
    }

    private static List<Board> boards() {
        List<Board> boards = new ArrayList<>();
        for (int i = 0; i < SHELVES + 2; i++) {
            double length = i < 2 ? 100.0 * SHELVES + 108 : 484;
            Knot[] knots = new Knot[i < 4 ? 4 : 3];
            for (int k = 0; k < knots.length; k++) {
                knots[k] = Fixtures.knot("k" + k, 30 + 25 * i % 50 + k * length / 4.5, 80 + 3 * k, 80);
            }
            boards.add(
                    Fixtures.board("B" + i).size(length, 120, 18).knots(knots).board());
        }
        return boards;
    }

    @Benchmark
    public MarkSheet asTheModelAnswer() {
        return RuleBook.judge(sound.at(sound.bench()));
    }

    @Benchmark
    public MarkSheet turnedEndForEnd() {
        return RuleBook.judge(wrong.at(wrong.bench()));
    }

    @Benchmark
    public MarkSheet namedOnly() {
        return RuleBook.judge(named.at(named.bench()));
    }
}
