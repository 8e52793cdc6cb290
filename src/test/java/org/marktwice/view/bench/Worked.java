package org.marktwice.view.bench;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.marktwice.Fixtures;
import org.marktwice.bench.Action;
import org.marktwice.bench.Attempt;
import org.marktwice.bench.CannotDo;
import org.marktwice.bench.Tool;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Trim;
import org.marktwice.scenario.Scenario;
import org.marktwice.scenario.Stage;
import org.marktwice.timber.Board;
import org.marktwice.timber.Shape;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;
import org.marktwice.view.Session;

/** Sessions for the tests of the bench. */
final class Worked {
    private Worked() {}

    /** A session on a scenario that nothing was done in yet. */
    static Session fresh(Scenario scenario) {
        Attempt attempt = new Attempt(scenario.id(), "", "P07", "2026-01-12T09:30:00Z", List.of());
        try {
            return Session.of(scenario, attempt, Session.Sink.none(), () -> 0L);
        } catch (CannotDo e) {
            throw new AssertionError(e);
        }
    }

    /** The porch shelf with all aids, half done: A is the right upright and D the shelf, both settled. */
    static Session porchShelf() throws CannotDo {
        return halfDone(Fixtures.withAids(Fixtures.porchShelf()));
    }

    /** The same with a board B that nobody has trued well: bowed, sprung, in wind, tapered, and out of square. */
    static Session outOfTrue() throws CannotDo {
        return halfDone(withBoardOutOfTrue());
    }

    /** With that board B, and nothing done yet. */
    static Session outOfTrueSession() {
        return fresh(withBoardOutOfTrue());
    }

    /** The porch shelf with all aids, marked, named and turned, to be set out; board B tapers and is out of square. */
    static Session settingOut() throws CannotDo {
        Scenario s = withBoardOutOfTrue();
        List<Stage> stages = List.of(Stage.FACES, Stage.NAMES, Stage.TURNS, Stage.SETTING_OUT, Stage.FIT);
        Session session = fresh(new Scenario(
                s.id(), "Porch shelf", 3, s.brief(), stages, s.practice(), s.drawing(), s.boards(), s.digest()));
        part(session, "C", "upright-right", Direction.LEFT);
        part(session, "B", "upright-left", Direction.RIGHT);
        part(session, "D", "shelf", Direction.TOP);
        return session;
    }

    private static void part(Session session, String board, String part, Direction side) throws CannotDo {
        mark(session, board);
        session.perform(t -> new Action.Name(t, board, part, new SurfacePoint(Surface.FACE_1, 200, 60)));
        turn(session, board, side, null);
    }

    private static Scenario withBoardOutOfTrue() {
        Scenario plain = Fixtures.withAids(Fixtures.porchShelf());
        List<Board> boards = plain.boards().stream()
                .map(b -> b.id().equals("B") ? outOfTrue(b.facts()) : b)
                .toList();
        return new Scenario(
                plain.id(),
                plain.title(),
                plain.level(),
                plain.brief(),
                plain.stages(),
                plain.practice(),
                plain.drawing(),
                boards,
                "");
    }

    private static Board outOfTrue(Board.Facts f) {
        Shape shape = new Shape(
                0.7, -0.6, 0.9, 0.5, 0.2, Map.of(Surface.EDGE_1, -0.6, Surface.EDGE_2, 0.5, Surface.END_2, 0.4));
        return Board.of(new Board.Facts(
                f.id(),
                f.stuff(),
                f.species(),
                f.size(),
                f.planedAt(),
                8,
                f.dressed(),
                f.pith(),
                f.ringWidth(),
                f.knots(),
                shape,
                f.seed()));
    }

    private static Session halfDone(Scenario plain) throws CannotDo {
        Session session = fresh(new Scenario(
                plain.id(),
                "Porch shelf",
                2,
                "Two uprights, one shelf, one board to spare.",
                plain.stages(),
                plain.practice(),
                plain.drawing(),
                plain.boards(),
                ""));
        session.perform(t -> new Action.Test(t, "A", Tool.WINDING_STICKS, Surface.FACE_1, null));
        session.perform(t -> new Action.Test(t, "A", Tool.STRAIGHT_EDGE, Surface.FACE_1, 150.0));
        session.perform(t -> new Action.Test(t, "A", Tool.TRY_SQUARE, Surface.EDGE_1, 150.0));
        mark(session, "A");
        session.perform(t -> new Action.Name(t, "A", "upright-right", new SurfacePoint(Surface.FACE_1, 220, 60)));
        turn(session, "A", Direction.LEFT, new Trim(Surface.END_1, 6));
        mark(session, "D");
        session.perform(t -> new Action.Name(t, "D", "shelf", new SurfacePoint(Surface.FACE_1, 250, 60)));
        turn(session, "D", Direction.TOP, null);
        session.perform(t -> new Action.FaceSide(t, "C", Surface.FACE_1, Surface.EDGE_1));
        return session;
    }

    private static void mark(Session session, String board) throws CannotDo {
        session.perform(t -> new Action.FaceSide(t, board, Surface.FACE_1, Surface.EDGE_1));
        session.perform(t -> new Action.FaceEdge(t, board, Surface.EDGE_1, Surface.FACE_1));
    }

    private static void turn(Session session, String board, Direction side, @Nullable Trim trim) throws CannotDo {
        session.perform(
                t -> new Action.Turning(t, board, Map.of(Surface.FACE_1, side, Surface.EDGE_1, Direction.FRONT), trim));
    }
}
