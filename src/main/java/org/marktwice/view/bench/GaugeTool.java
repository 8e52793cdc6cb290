package org.marktwice.view.bench;

import java.util.List;
import java.util.Optional;
import org.marktwice.bench.Action;
import org.marktwice.fit.TrueLine;
import org.marktwice.fit.TrueLines;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;
import org.marktwice.view.Commands.Command;

/** The marking gauge: set from fence to spur by the rule, its fence run along a surface. */
final class GaugeTool extends SetTool {
    private static final double FIRST = 6;
    private static final double LEAST = 0.5;
    /** What the pointer must be drawn before it sets the gauge, millimetres. */
    private static final double DRAWN = 2.5;

    private double set = FIRST;

    GaugeTool(BenchModel model) {
        super(model);
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
    public Optional<String> choice() {
        SurfacePoint now = lies();
        return Optional.of(
                now == null ? "fence" : "fence on " + bearsNow(now.surface()).spoken());
    }

    @Override
    public void chooseNext() {
        SurfacePoint now = lies();
        if (now == null) return;
        bearOnNext(now.surface());
        say();
    }

    @Override
    void setTo(double figure) {
        set = figure;
    }

    private void setAnew(double mm) {
        forgetTyped();
        set = Math.max(LEAST, mm);
    }

    @Override
    Optional<Surface> bearsAt(SurfacePoint place) {
        return Optional.of(MarkTool.nearestLong(board(), place));
    }

    @Override
    void drawn(SurfacePoint from, SurfacePoint to) {
        Surface fence = bearsNow(from.surface());
        if (Math.abs(from(fence, to) - from(fence, from)) < DRAWN) return;
        setAnew(Reading.toHalf(from(fence, to)));
        lay(to);
        say();
    }

    /** How far a point of the surface lies from the one the fence runs along. */
    private double from(Surface fence, SurfacePoint point) {
        double place = fence.axis() == point.surface().uAxis() ? point.u() : point.v();
        return fence.sign() > 0 ? board().size().along(fence.axis()) - place : place;
    }

    @Override
    Surface firstByKeys() {
        return model.lie().near();
    }

    @Override
    boolean moved(ToolKey key, SurfacePoint lies) {
        double step = key.wide() ? 5 : 0.5;
        switch (key.stroke()) {
            case LEFT -> setAnew(set - step);
            case RIGHT -> setAnew(set + step);
            case UP, DOWN -> {
                if (key.shift()) bearOnNext(lies.surface());
                else layInMiddle(Caret.towards(lies.surface(), key.stroke()));
            }
            default -> {
                return false;
            }
        }
        return true;
    }

    @Override
    Action.Gauge action(double t, SurfacePoint lies) {
        return new Action.Gauge(t, board().id(), lies.surface(), bearsNow(lies.surface()), set);
    }

    @Override
    String words(SurfacePoint lies) {
        Action.Gauge gauge = action(0, lies);
        return "gauge set to " + Reading.mm(gauge.set()) + ", line along "
                + gauge.on().spoken() + ", fence on " + Words.called(model.board(), gauge.fence());
    }

    @Override
    public List<Overlay> overlays() {
        SurfacePoint now = lies();
        if (now == null) return List.of();
        Action.Gauge gauge = action(0, now);
        if (!(set < board().size().along(gauge.fence().axis())))
            return List.of(new Overlay.SurfacePicked(now.surface()));
        TrueLine lands = TrueLines.of(model.session().bench(), model.board()).trial(gauge);
        return List.of(new Overlay.GaugeLaid(lands, now, Reading.mm(set)));
    }
}
