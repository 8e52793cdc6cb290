package org.marktwice.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.marktwice.Fixtures;
import org.marktwice.advice.ModelAnswer;
import org.marktwice.advice.Option;
import org.marktwice.bench.Action;
import org.marktwice.bench.Attempt;
import org.marktwice.bench.Bench;
import org.marktwice.bench.CannotDo;
import org.marktwice.bench.Marker;
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
import org.marktwice.rulebook.WorkedAttempt;
import org.marktwice.scenario.Practice;
import org.marktwice.scenario.Scenario;
import org.marktwice.scenario.Stage;
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
 * nearly everything is wrong and has to be told better), once with the boards named only, and once with all twenty joints
 * set out too, so that the dry fit is judged.
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
    private Situation setOut = sound;
    private String upright = "";
    private int again;

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
        setOut = setOut(scenario);
        upright = setOut.bench()
                .namedAs(scenario.drawing().parts().get(0))
                .get(0)
                .board()
                .id();
    }

    /** Everything set out as well, and judged by how it fits. */
    private static Situation setOut(Scenario s) throws CannotDo {
        Scenario all = new Scenario(
                s.id(),
                s.title(),
                s.level(),
                s.brief(),
                List.of(Stage.values()),
                // whatever the knots: every board is to be set out
                s.practice().with(new Practice.KnotMargin(0, 0)),
                s.drawing(),
                s.boards(),
                s.digest());
        Attempt good = WorkedAttempt.of(all, "P01", "2026-02-03T09:10:00Z");
        Attempt open = good.upTo(good.actions().size() - 1);
        return judgedOnce(Situation.of(Bench.after(all, open)));
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

    /** One line more on the left upright, each time elsewhere, so that nothing found before can serve for that board. */
    @Benchmark
    public MarkSheet setOut() throws CannotDo {
        double at = 30 + again++ % 1_000_000 * 1e-5;
        Action line = new Action.Line(
                9000,
                upright,
                Surface.FACE_1,
                Surface.EDGE_1,
                new Action.Datum.End(Surface.END_1),
                at,
                null,
                Marker.PENCIL);
        return RuleBook.judge(setOut.at(setOut.bench().after(line)));
    }
}
