package org.marktwice.view.bench;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.marktwice.bench.Action;
import org.marktwice.fit.TrueLine;
import org.marktwice.fit.TrueLines;
import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;
import org.marktwice.view.Commands.Command;

/**
 * The marking gauge: set from fence to spur by the rule, its fence run along a surface. Once set it stays set, from board to
 * board, until it is set anew by drawing it out or by typing.
 */
final class GaugeTool implements BenchTool {
    private static final double FIRST = 6;
    /** What the pointer must be drawn before it sets the gauge, millimetres. */
    private static final double DRAWN = 2.5;

    private final BenchModel model;
    private final Typed typed = new Typed();
    private double set = FIRST;
    private @Nullable SurfacePoint at;
    private @Nullable Surface fence;
    private @Nullable SurfacePoint pressed;

    GaugeTool(BenchModel model) {
        this.model = model;
    }

    @Override
    public Command command() {
        return BenchCommands.GAUGE;
    }

    @Override
    public String hint() {
        return "Set to " + Reading.mm(set)
                + ". Click a surface near the arris that the fence runs along; draw away from it,"
                + " or type, to set the gauge. Keys: ←→ by 0.5 mm (Ctrl 5), ↑↓ surface, Shift+↑↓ fence, Enter.";
    }

    @Override
    public void takenUp() {
        at = null;
        fence = null;
        pressed = null;
        typed.clear();
    }

    private Board board() {
        return model.board().board();
    }

    @Override
    public Optional<String> choice() {
        SurfacePoint now = at;
        return Optional.of(
                now == null ? "fence" : "fence on " + fenceNow(now.surface()).spoken());
    }

    @Override
    public void chooseNext() {
        SurfacePoint now = at;
        if (now == null) return;
        fence = Setting.next(fences(now.surface()), fenceNow(now.surface()));
        say();
    }

    private static List<Surface> fences(Surface on) {
        return Setting.beside(on);
    }

    private Surface fenceNow(Surface on) {
        Surface bears = fence;
        return bears != null && bears.adjoins(on) ? bears : Setting.usualStock(model.board(), on);
    }

    // The mouse

    @Override
    public @Nullable Surface holding() {
        SurfacePoint start = pressed;
        return start == null ? null : start.surface();
    }

    @Override
    public void point(@Nullable Aim aim) {
        if (pressed != null) return;
        if (aim == null) {
            if (!model.byKeys()) at = null;
            return;
        }
        at = aim.at();
        fence = MarkTool.nearestLong(board(), aim.at());
    }

    @Override
    public void press(Aim aim) {
        point(aim);
        pressed = aim.at();
    }

    @Override
    public void drag(Aim aim) {
        SurfacePoint start = pressed;
        if (start == null) return;
        Surface bears = fenceNow(start.surface());
        if (Math.abs(from(bears, aim.at()) - from(bears, start)) < DRAWN) return;
        set = Math.max(0.5, Reading.toHalf(from(bears, aim.at())));
        typed.clear();
        at = aim.at();
        say();
    }

    /** How far a point of the surface lies from the one the fence runs along. */
    private double from(Surface bears, SurfacePoint point) {
        double place = bears.axis() == point.surface().uAxis() ? point.u() : point.v();
        return bears.sign() > 0 ? board().size().along(bears.axis()) - place : place;
    }

    @Override
    public void release(Aim aim) {
        if (pressed == null) point(aim);
        pressed = null;
        strike();
    }

    // Keys

    @Override
    public boolean type(char c) {
        if (at == null) choose(model.lie().near());
        boolean meant = typed.type(c);
        OptionalDouble value = typed.value();
        if (value.isPresent()) set = value.getAsDouble();
        if (meant) say();
        return meant;
    }

    @Override
    public boolean key(ToolKey key) {
        SurfacePoint now = at;
        if (now == null) {
            choose(model.lie().near());
            say();
            return true;
        }
        double step = key.wide() ? 5 : 0.5;
        switch (key.stroke()) {
            case ENTER -> {
                strike();
                return true;
            }
            case LEFT -> set(set - step);
            case RIGHT -> set(set + step);
            case UP, DOWN -> {
                if (key.shift()) fence = Setting.next(fences(now.surface()), fenceNow(now.surface()));
                else choose(Caret.towards(now.surface(), key.stroke()));
            }
            default -> {
                return false;
            }
        }
        say();
        return true;
    }

    private void set(double mm) {
        typed.clear();
        set = Math.max(0.5, mm);
    }

    private void choose(Surface surface) {
        fence = null;
        at = Caret.middle(board(), surface);
        model.moveCaret(Caret.middle(board(), surface));
    }

    private void say() {
        SurfacePoint now = at;
        if (now != null) model.say(Note.plain(Words.capital(words(gauge(now.surface())))));
    }

    private Action.Gauge gauge(Surface on) {
        return new Action.Gauge(0, board().id(), on, fenceNow(on), set);
    }

    private String words(Action.Gauge gauge) {
        return "gauge set to " + Reading.mm(gauge.set()) + ", line along "
                + gauge.on().spoken() + ", fence on " + Words.called(model.board(), gauge.fence());
    }

    private void strike() {
        SurfacePoint now = at;
        if (now == null) return;
        Action.Gauge gauge = gauge(now.surface());
        boolean done =
                model.perform(now, t -> new Action.Gauge(t, gauge.board(), gauge.on(), gauge.fence(), gauge.set()));
        if (!done) return;
        typed.clear();
        if (model.callout().isEmpty()) model.say(Note.read(Words.capital(words(gauge))));
    }

    @Override
    public List<Overlay> overlays() {
        SurfacePoint now = at;
        if (now == null) return List.of();
        Action.Gauge gauge = gauge(now.surface());
        if (!(set < board().size().along(gauge.fence().axis())))
            return List.of(new Overlay.SurfacePicked(now.surface()));
        TrueLine lands = TrueLines.of(model.session().bench(), model.board()).trial(gauge);
        return List.of(new Overlay.GaugeLaid(lands, now, Reading.mm(set)));
    }
}
