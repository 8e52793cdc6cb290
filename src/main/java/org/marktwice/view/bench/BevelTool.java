package org.marktwice.view.bench;

import java.util.List;
import java.util.Optional;
import org.marktwice.bench.Action;
import org.marktwice.bench.Action.Datum;
import org.marktwice.bench.Marker;
import org.marktwice.fit.TrueLine;
import org.marktwice.fit.TrueLines;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;
import org.marktwice.view.Commands.Command;

/** The sliding bevel: a line at an angle, from a place on the arris that its stock bears along. */
final class BevelTool extends SetTool {
    /** What is set by going on to the next: the mitre, and the usual slopes. */
    private static final List<Double> USUAL = List.of(45.0, 60.0, 75.0, 80.5, 90.0, 99.5, 105.0, 120.0, 135.0);

    /** What the pointer must be drawn before it sets the bevel, millimetres. */
    private static final double DRAWN = 8;

    private double degrees = 45;

    BevelTool(BenchModel model) {
        super(model);
    }

    @Override
    public Command command() {
        return BenchCommands.BEVEL;
    }

    @Override
    public String hint() {
        return "Click where the line begins, near the arris that the stock bears on; draw from there, or type, to set the angle."
                + " Keys: ←→ 1 mm (Ctrl 10), Shift+←→ 1°, ↑↓ surface, Shift+↑↓ the stock's side, Enter.";
    }

    @Override
    public boolean strikes() {
        return true;
    }

    @Override
    public Optional<String> choice() {
        return Optional.of("set to " + angle());
    }

    private String angle() {
        return Reading.number(degrees) + "°";
    }

    @Override
    public void chooseNext() {
        forgetTyped();
        degrees = USUAL.stream().filter(d -> d > degrees + 0.01).findFirst().orElse(USUAL.get(0));
        say();
    }

    @Override
    void setTo(double figure) {
        degrees = figure;
    }

    private void setAnew(double to) {
        forgetTyped();
        degrees = Math.max(Action.Bevel.FLATTEST, Math.min(180 - Action.Bevel.FLATTEST, to));
    }

    @Override
    Optional<Surface> bearsAt(SurfacePoint place) {
        if (place.surface().isEnd()) return Optional.empty();
        boolean upper = place.v() > board().vExtent(place.surface()) / 2;
        return Optional.of(Surface.on(place.surface().vAxis(), upper ? 1 : -1));
    }

    @Override
    void drawn(SurfacePoint from, SurfacePoint to) {
        Surface surface = from.surface();
        if (surface.isEnd()) return;
        double along = to.u() - place(from);
        double arris = bearsNow(surface).sign() > 0 ? board().vExtent(surface) : 0;
        double in = Math.abs(to.v() - arris);
        if (Math.hypot(along, in) < DRAWN || Math.abs(to.v() - from.v()) < DRAWN / 2) return;
        setAnew(Math.rint(Math.toDegrees(Math.atan2(in, along))));
        say();
    }

    @Override
    Surface firstByKeys() {
        return model.lie().up();
    }

    @Override
    boolean canLie(Surface surface) {
        return !surface.isEnd();
    }

    @Override
    boolean moved(ToolKey key, SurfacePoint lies) {
        Surface on = lies.surface();
        int way = key.stroke() == ToolKey.Stroke.LEFT ? -1 : 1;
        switch (key.stroke()) {
            case LEFT, RIGHT -> {
                if (key.shift()) setAnew(degrees + way * (key.wide() ? 5 : 1));
                else along(on, place(lies) + way * (key.wide() ? 10 : 1));
            }
            case UP, DOWN -> {
                if (key.shift()) bearOnNext(on);
                else {
                    Surface next = Caret.towards(on, key.stroke());
                    along(next, place(lies));
                    model.show(next);
                }
            }
            default -> {
                return false;
            }
        }
        return true;
    }

    private void along(Surface on, double x) {
        double held = Math.max(0, Math.min(board().size().length(), x));
        lay(new SurfacePoint(on, held, board().vExtent(on) / 2));
    }

    /** Where along the grain the line begins: a whole millimetre from end 1. */
    private static double place(SurfacePoint lies) {
        return Math.rint(lies.u());
    }

    @Override
    SurfacePoint tried(SurfacePoint lies) {
        Surface on = lies.surface();
        return Caret.within(board(), new SurfacePoint(on, place(lies), board().vExtent(on) / 2));
    }

    @Override
    Action.Bevel action(double t, SurfacePoint lies) {
        Surface on = lies.surface();
        Datum from = new Datum.End(Surface.END_1);
        return new Action.Bevel(t, board().id(), on, bearsNow(on), from, place(lies), degrees, model.marker());
    }

    @Override
    String words(SurfacePoint lies) {
        Action.Bevel b = action(0, lies);
        return b.with().spoken() + " line at " + angle() + " across " + b.on().spoken() + ", " + Reading.mm(b.at())
                + " from end 1, stock on " + Words.called(model.board(), b.stock());
    }

    @Override
    public List<Overlay> overlays() {
        SurfacePoint now = lies();
        double flattest = Action.Bevel.FLATTEST;
        if (now == null || !canLie(now.surface()) || degrees < flattest || degrees > 180 - flattest) return List.of();
        TrueLine lands = TrueLines.of(model.session().bench(), model.board()).trial(action(0, now));
        return List.of(new Overlay.SquareLaid(lands, 1, model.marker() == Marker.KNIFE, angle()));
    }
}
