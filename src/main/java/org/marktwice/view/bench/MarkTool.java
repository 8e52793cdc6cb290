package org.marktwice.view.bench;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.marktwice.bench.Action;
import org.marktwice.bench.Mark;
import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;
import org.marktwice.view.Commands.Command;

/**
 * Makes a face-side or a face-edge mark. By mouse its tail goes to the nearest long arris of the surface pointed at; by keys
 * the arrows choose the surface, and with Shift the arris.
 */
final class MarkTool implements BenchTool {
    private final BenchModel model;
    private final Mark.Kind kind;
    private @Nullable Surface on;
    private @Nullable Surface towards;

    MarkTool(BenchModel model, Mark.Kind kind) {
        this.model = model;
        this.kind = kind;
    }

    @Override
    public Command command() {
        return kind == Mark.Kind.FACE_SIDE ? BenchCommands.FACE_SIDE : BenchCommands.FACE_EDGE;
    }

    @Override
    public String hint() {
        String what = kind == Mark.Kind.FACE_SIDE ? "its tail" : "its point";
        return "Point at the " + kind.spoken() + ", near the arris that " + what
                + " goes to, and click. Keys: arrows, Shift+arrows, Enter.";
    }

    @Override
    public void takenUp() {
        on = null;
        towards = null;
    }

    @Override
    public void point(@Nullable Aim aim) {
        if (aim == null) {
            takenUp();
            return;
        }
        on = aim.surface();
        towards = nearestLong(model.board().board(), aim.at());
    }

    /** The adjoining long surface whose arris lies nearest to the point. */
    static Surface nearestLong(Board board, SurfacePoint at) {
        Surface surface = at.surface();
        Surface best = Surface.FACE_1;
        double least = Double.POSITIVE_INFINITY;
        for (Surface other : Surface.LONG) {
            if (!other.adjoins(surface)) continue;
            double place = surface.uAxis() == other.axis() ? at.u() : at.v();
            double extent = board.size().along(other.axis());
            double away = other.sign() > 0 ? extent - place : place;
            if (away < least) {
                least = away;
                best = other;
            }
        }
        return best;
    }

    @Override
    public void release(Aim aim) {
        point(aim);
        make(aim.at());
    }

    @Override
    public boolean key(ToolKey key) {
        Surface now = on == null ? model.lie().up() : on;
        switch (key.stroke()) {
            case ENTER -> {
                if (on == null) choose(now, firstTowards(now));
                else make(markPlace());
            }
            case LEFT, RIGHT, UP, DOWN -> {
                if (key.shift()) {
                    Surface across = Caret.across(now, key.stroke());
                    if (!across.isEnd()) choose(now, across);
                } else {
                    Surface next = on == null ? now : Caret.towards(now, key.stroke());
                    choose(next, firstTowards(next));
                }
            }
            default -> {
                return false;
            }
        }
        return true;
    }

    private Surface firstTowards(Surface surface) {
        Surface below = Caret.across(surface, ToolKey.Stroke.DOWN);
        return model.lie().near().adjoins(surface) ? model.lie().near() : below;
    }

    private void choose(Surface surface, Surface arris) {
        on = surface;
        towards = arris;
        model.moveCaret(markPlace());
        model.say(Note.plain(
                Words.capital(Words.surface(model.board(), surface)) + ", towards the " + Words.arris(surface, arris)));
    }

    /** Where the mark comes to lie, for what is said about it. */
    private SurfacePoint markPlace() {
        Surface surface = on == null ? model.lie().up() : on;
        return Caret.middle(model.board().board(), surface);
    }

    private void make(SurfacePoint where) {
        Surface surface = on;
        Surface arris = towards;
        if (surface == null || arris == null) return;
        String board = model.board().board().id();
        model.perform(
                where,
                t -> kind == Mark.Kind.FACE_SIDE
                        ? new Action.FaceSide(t, board, surface, arris)
                        : new Action.FaceEdge(t, board, surface, arris),
                kind.spoken() + " marked on " + surface.spoken() + ", towards " + arris.spoken());
    }

    @Override
    public List<Overlay> overlays() {
        Surface surface = on;
        Surface arris = towards;
        if (surface == null || arris == null || alreadyThere(surface, arris)) return List.of();
        return List.of(new Overlay.SurfacePicked(surface), new Overlay.GhostMark(kind, surface, arris));
    }

    private boolean alreadyThere(Surface surface, Surface arris) {
        return model.board().marks(kind).anyMatch(m -> m.on() == surface && m.towards() == arris);
    }
}
