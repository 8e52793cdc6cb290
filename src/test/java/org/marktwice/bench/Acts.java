package org.marktwice.bench;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Trim;
import org.marktwice.scenario.Scenario;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;

/** Actions in short, all at the first second. */
final class Acts {
    private Acts() {}

    static Bench bench(Scenario scenario, Action... actions) {
        try {
            return Bench.after(scenario, attempt(actions));
        } catch (CannotDo e) {
            throw new AssertionError(e.getMessage(), e);
        }
    }

    static Attempt attempt(Action... actions) {
        return new Attempt("any", "", "P01", "2026-01-12T09:30:00Z", List.of(actions));
    }

    static Action faceSide(String board, Surface on, Surface towards) {
        return new Action.FaceSide(1, board, on, towards);
    }

    static Action faceEdge(String board, Surface on, Surface towards) {
        return new Action.FaceEdge(1, board, on, towards);
    }

    static Action name(String board, String part) {
        return new Action.Name(1, board, part, new SurfacePoint(Surface.FACE_1, 150, 40));
    }

    static Action name(String board, String part, Surface on, double u, double v) {
        return new Action.Name(1, board, part, new SurfacePoint(on, u, v));
    }

    static Action turn(String board, Direction face1, Direction edge1) {
        return turn(board, face1, edge1, null);
    }

    static Action turn(String board, Direction face1, Direction edge1, @Nullable Trim trim) {
        return new Action.Turning(1, board, Map.of(Surface.FACE_1, face1, Surface.EDGE_1, edge1), trim);
    }

    static Action aside(String board) {
        return new Action.SetAside(1, board, Reason.NOT_NEEDED);
    }

    static Action rub(int step) {
        return new Action.RubOut(1, step);
    }

    static Action undo() {
        return new Action.Undo(1);
    }

    static Action redo() {
        return new Action.Redo(1);
    }

    static Action handIn() {
        return new Action.HandIn(1);
    }

    static Action measure(String board, Surface on, double u0, double v0, double u1, double v1) {
        return new Action.Measure(1, board, new SurfacePoint(on, u0, v0), new SurfacePoint(on, u1, v1));
    }

    static Action test(String board, Tool with, Surface on, @Nullable Double at) {
        return new Action.Test(1, board, with, on, at);
    }

    static Action line(String board, Surface on, Surface square, Surface end, double at, Marker with) {
        return new Action.Line(1, board, on, square, new Action.Datum.End(end), at, null, with);
    }

    static Action lineFrom(String board, int step, double at) {
        return new Action.Line(
                1, board, Surface.FACE_1, Surface.EDGE_1, new Action.Datum.Step(step), at, null, Marker.KNIFE);
    }

    static Action lineMate(String board, int step, String mate) {
        return new Action.Line(
                1, board, Surface.FACE_1, Surface.EDGE_1, new Action.Datum.Step(step), null, mate, Marker.KNIFE);
    }

    static Action gauge(String board, Surface on, Surface fence, double set) {
        return new Action.Gauge(1, board, on, fence, set);
    }

    static Action waste(String board, String joint, int between, int and) {
        return new Action.Waste(1, board, joint, between, and);
    }
}
