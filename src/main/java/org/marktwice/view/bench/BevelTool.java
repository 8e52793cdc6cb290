package org.marktwice.view.bench;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.marktwice.bench.Action;
import org.marktwice.bench.Action.Datum;
import org.marktwice.bench.Marker;
import org.marktwice.fit.TrueLine;
import org.marktwice.fit.TrueLines;
import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;
import org.marktwice.view.Commands.Command;

/**
 * The sliding bevel: a line at an angle, from a place on the arris that its stock bears along. Drawn from there it is set to
 * the angle drawn; once set it stays set.
 */
final class BevelTool implements BenchTool {
    /** What is set by going on to the next: the mitre, and the usual slopes. */
    private static final List<Double> USUAL = List.of(45.0, 60.0, 75.0, 80.5, 90.0, 99.5, 105.0, 120.0, 135.0);

    /** What the pointer must be drawn before it sets the bevel, millimetres. */
    private static final double DRAWN = 8;

    private final BenchModel model;
    private final Typed typed = new Typed();
    private double degrees = 45;
    private @Nullable Surface on;
    private @Nullable Surface stock;
    private double x;
    private @Nullable SurfacePoint pressed;

    BevelTool(BenchModel model) {
        this.model = model;
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
    public void takenUp() {
        on = null;
        stock = null;
        pressed = null;
        typed.clear();
    }

    private Board board() {
        return model.board().board();
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
        typed.clear();
        degrees = USUAL.stream().filter(d -> d > degrees + 0.01).findFirst().orElse(USUAL.get(0));
        say();
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
            if (!model.byKeys()) on = null;
            return;
        }
        on = aim.surface();
        if (aim.surface().isEnd()) return;
        stock = Surface.on(aim.surface().vAxis(), aim.at().v() > board().vExtent(aim.surface()) / 2 ? 1 : -1);
        x = Math.rint(aim.at().u());
    }

    @Override
    public void press(Aim aim) {
        point(aim);
        pressed = aim.at();
    }

    @Override
    public void drag(Aim aim) {
        SurfacePoint start = pressed;
        if (start == null || start.surface().isEnd()) return;
        double along = aim.at().u() - x;
        double in = Math.abs(aim.at().v() - arris(start.surface()));
        if (Math.hypot(along, in) < DRAWN || Math.abs(aim.at().v() - start.v()) < DRAWN / 2) return;
        typed.clear();
        set(Math.rint(Math.toDegrees(Math.atan2(in, along))));
        say();
    }

    private double arris(Surface surface) {
        return stockNow().sign() > 0 ? board().vExtent(surface) : 0;
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
        if (on == null) place(model.lie().up());
        boolean meant = typed.type(c);
        OptionalDouble value = typed.value();
        if (value.isPresent()) degrees = value.getAsDouble();
        if (meant) say();
        return meant;
    }

    @Override
    public boolean key(ToolKey key) {
        Surface now = on;
        if (now == null || now.isEnd()) {
            place(model.lie().up());
            say();
            return true;
        }
        int way = key.stroke() == ToolKey.Stroke.LEFT ? -1 : 1;
        switch (key.stroke()) {
            case ENTER -> {
                strike();
                return true;
            }
            case LEFT, RIGHT -> {
                if (key.shift()) set(degrees + way * (key.wide() ? 5 : 1));
                else x = Math.max(0, Math.min(board().size().length(), x + way * (key.wide() ? 10 : 1)));
            }
            case UP, DOWN -> {
                if (key.shift()) stock = Setting.next(Setting.beside(now), stockNow());
                else on = Caret.towards(now, key.stroke());
                model.show(on == null ? now : on);
            }
            default -> {
                return false;
            }
        }
        say();
        return true;
    }

    private void place(Surface surface) {
        on = surface;
        stock = Setting.usualStock(model.board(), surface);
        x = Math.rint(board().size().length() / 2);
        model.moveCaret(Caret.middle(board(), surface));
    }

    private void set(double to) {
        typed.clear();
        degrees = Math.max(Action.Bevel.FLATTEST, Math.min(180 - Action.Bevel.FLATTEST, to));
    }

    // The line

    private Surface stockNow() {
        Surface surface = on == null ? Surface.FACE_1 : on;
        Surface bears = stock;
        return bears != null && bears.adjoins(surface) ? bears : Setting.usualStock(model.board(), surface);
    }

    private Action.Bevel bevel(Surface surface) {
        return new Action.Bevel(
                0, board().id(), surface, stockNow(), new Datum.End(Surface.END_1), x, degrees, model.marker());
    }

    private String words(Action.Bevel b) {
        return b.with().spoken() + " line at " + angle() + " across " + b.on().spoken() + ", " + Reading.mm(b.at())
                + " from end 1, stock on " + Words.called(model.board(), b.stock());
    }

    private void say() {
        Surface surface = on;
        if (surface != null) model.say(Note.plain(Words.capital(words(bevel(surface)))));
    }

    private void strike() {
        Surface surface = on;
        if (surface == null) return;
        Action.Bevel b = bevel(surface);
        boolean done = model.perform(
                Caret.within(board(), new SurfacePoint(surface, x, board().vExtent(surface) / 2)),
                t -> new Action.Bevel(t, b.board(), b.on(), b.stock(), b.from(), b.at(), b.degrees(), b.with()));
        if (!done) return;
        typed.clear();
        if (model.callout().isEmpty()) model.say(Note.read(Words.capital(words(b))));
    }

    @Override
    public List<Overlay> overlays() {
        Surface surface = on;
        double flattest = Action.Bevel.FLATTEST;
        if (surface == null || surface.isEnd() || degrees < flattest || degrees > 180 - flattest) return List.of();
        TrueLine lands = TrueLines.of(model.session().bench(), model.board()).trial(bevel(surface));
        return List.of(new Overlay.SquareLaid(lands, 1, model.marker() == Marker.KNIFE, angle()));
    }
}
