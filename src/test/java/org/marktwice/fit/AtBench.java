package org.marktwice.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.marktwice.bench.Action;
import org.marktwice.bench.Action.Datum;
import org.marktwice.bench.Bench;
import org.marktwice.bench.CannotDo;
import org.marktwice.bench.Marker;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Trim;
import org.marktwice.scenario.Scenario;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;

/** What is done at a bench, step by step; the time of each is its number. */
final class AtBench {
    private final Scenario scenario;
    private final List<Action> actions = new ArrayList<>();

    private AtBench(Scenario scenario) {
        this.scenario = scenario;
    }

    static AtBench of(Scenario scenario) {
        return new AtBench(scenario);
    }

    AtBench does(Action... more) {
        actions.addAll(Arrays.asList(more));
        return this;
    }

    AtBench names(String board, String part) {
        return does(new Action.Name(t(), board, part, new SurfacePoint(Surface.FACE_1, 1, 1)));
    }

    AtBench turns(String board, Surface one, Direction looks, Surface other, Direction otherLooks, Trim trim) {
        return does(new Action.Turning(t(), board, Map.of(one, looks, other, otherLooks), trim));
    }

    /** In knife, so far from an end. */
    AtBench line(String board, Surface on, Surface stock, Surface end, double at) {
        return does(new Action.Line(t(), board, on, stock, new Datum.End(end), at, null, Marker.KNIFE));
    }

    /** In knife, so far from an earlier line. */
    AtBench line(String board, Surface on, Surface stock, int step, double at) {
        return does(new Action.Line(t(), board, on, stock, new Datum.Step(step), at, null, Marker.KNIFE));
    }

    AtBench mate(String board, Surface on, Surface stock, int step, String mate) {
        return does(new Action.Line(t(), board, on, stock, new Datum.Step(step), null, mate, Marker.KNIFE));
    }

    AtBench gauge(String board, Surface on, Surface fence, double set) {
        return does(new Action.Gauge(t(), board, on, fence, set));
    }

    AtBench waste(String board, String joint, int between, int and) {
        return does(new Action.Waste(t(), board, joint, between, and));
    }

    private double t() {
        return actions.size() + 1;
    }

    Bench bench() {
        Bench bench = Bench.of(scenario);
        for (Action action : actions) {
            try {
                bench = bench.after(action);
            } catch (CannotDo e) {
                throw new AssertionError("step " + (bench.steps() + 1) + ": " + e.getMessage(), e);
            }
        }
        return bench;
    }

    /** The line that a step left on a board. */
    TrueLine line(String board, int step) {
        return lines(board).at(step).orElseThrow();
    }

    TrueLines lines(String board) {
        return TrueLines.of(bench(), bench().board(board));
    }
}
