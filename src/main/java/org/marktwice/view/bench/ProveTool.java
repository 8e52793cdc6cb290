package org.marktwice.view.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.marktwice.bench.Action;
import org.marktwice.bench.Tool;
import org.marktwice.bench.ToolReading;
import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;
import org.marktwice.view.Commands.Command;

/**
 * Straight-edge, winding sticks, try-square or the eye on the end grain, laid on a surface to be read. A straight-edge drawn
 * along the grain, or laid with Shift, lies along it. A try-square's stock bears on the usual surface, or on the one whose
 * arris it is laid near.
 */
final class ProveTool implements BenchTool {
    /** Drawn farther than this along the grain, the straight-edge lies along the board, millimetres. */
    private static final double ALONG = 25;
    /** Within this share of the surface from an arris, the try-square's stock bears beyond that arris. */
    private static final double NEAR_ARRIS = 0.28;

    private final BenchModel model;
    private final Tool tool;
    private @Nullable SurfacePoint pressed;
    private @Nullable SurfacePoint place;
    private @Nullable Surface stock;
    private boolean along;
    private Action.@Nullable Test laid;

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
            case END_GRAIN -> BenchCommands.END_GRAIN;
        };
    }

    @Override
    public String hint() {
        return switch (tool) {
            case STRAIGHT_EDGE ->
                "Click to lay it across a surface; Shift+click, or draw along the grain, to lay it along. Keys: arrows,"
                        + " Shift+←→ moves it, Shift+↑↓ lays it along, Enter.";
            case WINDING_STICKS -> "Click a face to sight over the sticks. Keys: arrows choose the surface, Enter.";
            case TRY_SQUARE ->
                "Click the surface to be tried; near an arris, the stock bears beyond it. Keys: arrows, Shift+←→ moves it,"
                        + " Shift+↑↓ changes the stock's side, Enter.";
            case END_GRAIN -> "Click an end to follow its arcs to the pith. Keys: ← and → choose the end, Enter.";
        };
    }

    @Override
    public void takenUp() {
        pressed = null;
        place = null;
        stock = null;
        along = false;
        laid = null;
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
            along = aim.shift() && canLieAlong(aim.surface());
            stock = tool == Tool.TRY_SQUARE ? stockNear(aim.at()) : null;
        } else if (aim == null && !model.byKeys()) {
            place = null;
        }
    }

    private boolean canLieAlong(Surface on) {
        return tool == Tool.STRAIGHT_EDGE && !on.isEnd();
    }

    /** The long surface beyond the arris that the point is near to; null where it is near none. */
    private @Nullable Surface stockNear(SurfacePoint at) {
        Board board = model.board().board();
        Surface near = MarkTool.nearestLong(board, at);
        boolean overU = near.axis() == at.surface().uAxis();
        double extent = board.size().along(near.axis());
        double from = near.sign() > 0 ? extent - (overU ? at.u() : at.v()) : overU ? at.u() : at.v();
        return from < NEAR_ARRIS * extent ? near : null;
    }

    @Override
    public void press(Aim aim) {
        point(aim);
        pressed = aim.at();
        laid = null;
    }

    @Override
    public void drag(Aim aim) {
        SurfacePoint start = pressed;
        if (start == null || !canLieAlong(start.surface())) return;
        along = aim.shift() || Math.abs(aim.at().u() - start.u()) > ALONG;
    }

    @Override
    public void release(Aim aim) {
        if (pressed == null) point(aim);
        pressed = null;
        lay();
    }

    private void lay() {
        SurfacePoint at = place;
        if (at == null) return;
        Action.Test test = test(at);
        if (!Proving.perform(
                model, at, t -> new Action.Test(t, test.board(), tool, test.on(), test.at(), test.from(), null))) {
            return;
        }
        laid = test;
        model.changed();
    }

    /** The tool as it lies at a place. */
    private Action.Test test(SurfacePoint at) {
        Surface on = at.surface();
        boolean whole = along || tool == Tool.WINDING_STICKS || on.isEnd();
        Surface from = tool == Tool.TRY_SQUARE ? stockFor(on) : null;
        return new Action.Test(
                0, model.board().board().id(), tool, on, whole ? null : Reading.toHalf(at.u()), from, null);
    }

    private Surface stockFor(Surface on) {
        return Optional.ofNullable(stock).filter(on::adjoins).orElse(ToolReading.usualStock(model.board(), on));
    }

    @Override
    public boolean key(ToolKey key) {
        SurfacePoint now = place;
        switch (key.stroke()) {
            case ENTER -> {
                if (now == null) choose(first());
                else lay();
            }
            case LEFT, RIGHT, UP, DOWN -> {
                laid = null;
                if (now == null) choose(first());
                else if (tool == Tool.END_GRAIN) choose(end(now.surface(), key.stroke()));
                else if (!key.shift()) choose(Caret.towards(now.surface(), key.stroke()));
                else shift(now, key);
            }
            default -> {
                return false;
            }
        }
        return true;
    }

    private Surface first() {
        return tool == Tool.END_GRAIN ? model.lie().left() : model.lie().up();
    }

    private static Surface end(Surface now, ToolKey.Stroke stroke) {
        return switch (stroke) {
            case LEFT -> Surface.END_1;
            case RIGHT -> Surface.END_2;
            default -> now;
        };
    }

    private void shift(SurfacePoint now, ToolKey key) {
        boolean upright = key.stroke() == ToolKey.Stroke.UP || key.stroke() == ToolKey.Stroke.DOWN;
        if (upright && tool == Tool.TRY_SQUARE) {
            stock = nextStock(now.surface());
            announce(now);
        } else if (upright) {
            along = canLieAlong(now.surface()) && !along;
            announce(now);
        } else {
            double step = (key.stroke() == ToolKey.Stroke.LEFT ? -1 : 1) * (key.wide() ? 1 : 10);
            announce(Caret.moved(model.board().board(), now, step, 0));
        }
    }

    private Surface nextStock(Surface on) {
        List<Surface> all = Surface.LONG.stream().filter(on::adjoins).toList();
        return all.get((all.indexOf(stockFor(on)) + 1) % all.size());
    }

    private void choose(Surface surface) {
        along = false;
        stock = null;
        announce(Caret.middle(model.board().board(), surface));
    }

    private void announce(SurfacePoint at) {
        place = at;
        model.moveCaret(at);
        Surface on = at.surface();
        String lies = along ? " along " : on.isEnd() ? " on " : " at " + Reading.mm(at.u()) + " on ";
        String bears = tool == Tool.TRY_SQUARE ? "; stock on " + stockFor(on).spoken() : "";
        model.say(Note.plain(Words.capital(tool.spoken()) + lies + Words.surface(model.board(), on) + bears));
    }

    @Override
    public List<Overlay> overlays() {
        List<Overlay> found = new ArrayList<>();
        Action.Test lying = laid;
        SurfacePoint at = place;
        if (lying != null) found.add(Overlay.ToolLaid.of(model.board(), lying, true));
        if (at == null) return found;
        Action.Test next = test(at);
        if (!next.equals(lying)) {
            found.add(0, new Overlay.SurfacePicked(at.surface()));
            if (lying == null || isElsewhere(next, lying)) {
                found.add(Overlay.ToolLaid.of(model.board(), next, false));
            }
        }
        return found;
    }

    /** Whether the tool to be laid next lies clear of the one that was laid last. */
    private static boolean isElsewhere(Action.Test next, Action.Test last) {
        Double there = next.at();
        Double here = last.at();
        if (next.on() != last.on()) return true;
        return there == null || here == null || Math.abs(there - here) > ALONG;
    }
}
