package org.marktwice.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleFunction;
import org.marktwice.advice.ModelAnswer;
import org.marktwice.advice.Option;
import org.marktwice.bench.Action;
import org.marktwice.bench.Mark;
import org.marktwice.bench.Reason;
import org.marktwice.bench.Tool;
import org.marktwice.drawing.Placing;
import org.marktwice.picture.BoardPicture;
import org.marktwice.scenario.Scenario;
import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;

/** Attempts at any scenario, worked from its model answer. */
final class Worked {
    private Worked() {}

    /** All parts as the model answer has them, or the second of them turned over with its tests left out. */
    static List<DoubleFunction<Action>> actions(Scenario scenario, boolean slips) {
        List<DoubleFunction<Action>> done = new ArrayList<>();
        int count = 0;
        ModelAnswer answer = ModelAnswer.of(scenario);
        for (Option option : answer.placings()) {
            part(done, option, slips && count == 1);
            count++;
        }
        for (Board board : scenario.boards()) {
            if (answer.of(board).isEmpty() && !slips) {
                done.add(t -> new Action.SetAside(t, board.id(), Reason.KNOT_IN_EVERY_TURN));
            }
        }
        return done;
    }

    private static void part(List<DoubleFunction<Action>> done, Option option, boolean slip) {
        Placing p = option.placing();
        String id = p.board().id();
        BoardPicture marked = Pictures.model(option);
        for (Mark mark : marked.state().marks()) {
            boolean side = mark.kind() == Mark.Kind.FACE_SIDE;
            if (!slip) {
                if (side) {
                    done.add(t -> new Action.Test(t, id, Tool.STRAIGHT_EDGE, mark.on(), null));
                    done.add(t -> new Action.Test(t, id, Tool.WINDING_STICKS, mark.on(), null));
                } else {
                    done.add(t -> new Action.Test(t, id, Tool.TRY_SQUARE, mark.on(), null));
                }
            }
            Surface towards = slip && side ? mark.towards().opposite() : mark.towards();
            done.add(t -> side
                    ? new Action.FaceSide(t, id, mark.on(), towards)
                    : new Action.FaceEdge(t, id, mark.on(), mark.towards()));
        }
        SurfacePoint middle = new SurfacePoint(
                Surface.FACE_1, p.board().size().length() / 2, p.board().size().width() / 2);
        done.add(t -> new Action.Name(t, id, p.part().id(), middle));
        if (!slip) {
            p.board().traces().stream()
                    .limit(2)
                    .forEach(trace -> done.add(t -> new Action.Measure(
                            t,
                            id,
                            new SurfacePoint(trace.surface(), 0, trace.middle().v()),
                            trace.middle())));
        }
        var turn = slip
                ? Map.of(
                        Surface.FACE_1, p.turn().of(Surface.FACE_2),
                        Surface.EDGE_1, p.turn().of(Surface.EDGE_1))
                : p.turn().named();
        done.add(t -> new Action.Turning(t, id, turn, p.surplus() > 0.5 ? p.trim() : null));
    }
}
