package org.marktwice.view.bench;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.marktwice.bench.Action;
import org.marktwice.bench.Tool;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;
import org.marktwice.view.Commands.Command;

/** Straight-edge, winding sticks or try-square, laid on a surface to be read. A straight-edge drawn along the grain lies along it. */
final class ProveTool implements BenchTool {
    /** Drawn farther than this along the grain, the straight-edge lies along the board, millimetres. */
    private static final double ALONG = 25;

    private final BenchModel model;
    private final Tool tool;
    private @Nullable SurfacePoint pressed;
    private @Nullable SurfacePoint place;
    private boolean along;

    ProveTool(BenchModel model, Tool tool) {
        this.model = model;
        this.tool = tool;
    }

    @Override
    public Command command() {
        return switch (tool) {
            case STRAIGHT_EDGE -> BenchCommands.STRAIGHT_EDGE;
            case WINDING_STICKS -> BenchCommands.WINDING_STICKS;
            case TRY_SQUARE -> BenchCommands.TRY_SQUARE;
        };
    }

    @Override
    public String hint() {
        return switch (tool) {
            case STRAIGHT_EDGE ->
                "Click to lay it across a surface, draw along the grain to lay it along. Keys: arrows, Shift+←→ moves it,"
                        + " Shift+↑↓ lays it along, Enter.";
            case WINDING_STICKS -> "Click a face to sight over the sticks. Keys: arrows choose the surface, Enter.";
            case TRY_SQUARE ->
                "Click the surface to be tried against the face side. Keys: arrows choose it, Shift+←→ moves it, Enter.";
        };
    }

    @Override
    public void takenUp() {
        pressed = null;
        place = null;
        along = false;
    }

    @Override
    public @Nullable Surface holding() {
        SurfacePoint start = pressed;
        return start == null ? null : start.surface();
    }

    @Override
    public void point(@Nullable Aim aim) {
        if (aim != null && pressed == null) {
            place = aim.at();
            along = false;
        } else if (aim == null && !model.byKeys()) {
            place = null;
        }
    }

    @Override
    public void press(Aim aim) {
        pressed = aim.at();
        place = aim.at();
    }

    @Override
    public void drag(Aim aim) {
        SurfacePoint start = pressed;
        boolean drawn =
                start != null && !start.surface().isEnd() && Math.abs(aim.at().u() - start.u()) > ALONG;
        along = tool == Tool.STRAIGHT_EDGE && drawn;
    }

    @Override
    public void release(Aim aim) {
        pressed = null;
        lay();
    }

    private void lay() {
        SurfacePoint at = place;
        if (at == null) return;
        String board = model.board().board().id();
        Surface on = at.surface();
        boolean whole = along || tool == Tool.WINDING_STICKS || on.isEnd();
        Double x = whole ? null : Reading.toHalf(at.u());
        Action.Test test = new Action.Test(0, board, tool, on, x);
        boolean done = model.perform(at, t -> new Action.Test(t, board, tool, on, x));
        if (done && model.callout().isEmpty()) {
            model.say(Note.read(Words.capital(Reading.of(model.board(), test))));
        }
    }

    @Override
    public boolean key(ToolKey key) {
        SurfacePoint now = place;
        switch (key.stroke()) {
            case ENTER -> {
                if (now == null) choose(model.lie().up());
                else lay();
            }
            case LEFT, RIGHT, UP, DOWN -> {
                if (now == null) choose(model.lie().up());
                else if (!key.shift()) choose(Caret.towards(now.surface(), key.stroke()));
                else shift(now, key);
            }
            default -> {
                return false;
            }
        }
        return true;
    }

    private void shift(SurfacePoint now, ToolKey key) {
        if (key.stroke() == ToolKey.Stroke.UP || key.stroke() == ToolKey.Stroke.DOWN) {
            along = tool == Tool.STRAIGHT_EDGE && !along;
            announce(now);
            return;
        }
        double step = (key.stroke() == ToolKey.Stroke.LEFT ? -1 : 1) * (key.wide() ? 1 : 10);
        announce(Caret.moved(model.board().board(), now, step, 0));
    }

    private void choose(Surface surface) {
        along = false;
        announce(Caret.middle(model.board().board(), surface));
    }

    private void announce(SurfacePoint at) {
        place = at;
        model.moveCaret(at);
        String lies = along ? " along " : at.surface().isEnd() ? " on " : " at " + Reading.mm(at.u()) + " on ";
        model.say(Note.plain(Words.capital(tool.spoken()) + lies + Words.surface(model.board(), at.surface())));
    }

    @Override
    public List<Overlay> overlays() {
        SurfacePoint at = place;
        if (at == null) return List.of();
        List<Overlay> found = new ArrayList<>();
        found.add(new Overlay.SurfacePicked(at.surface()));
        boolean whole = along || at.surface().isEnd();
        switch (tool) {
            case STRAIGHT_EDGE ->
                found.add(new Overlay.StraightEdge(at.surface(), whole ? null : Double.valueOf(at.u())));
            case WINDING_STICKS -> found.add(new Overlay.WindingSticks(at.surface()));
            case TRY_SQUARE ->
                found.add(new Overlay.TrySquare(Reading.stockFor(model.board(), at.surface()), at.surface(), at.u()));
        }
        return found;
    }
}
